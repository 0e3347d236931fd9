// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/touch_buttons.h"
#include "ui/spray/touch_size.h"
#include "ui/widgets/fit_screen.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

namespace sealwalk::ui {
namespace {

/// A dialog whose buttons stand below lines of text.
class Question : public QDialog
{
public:
    explicit Question(int lines)
    {
        auto* column = new QVBoxLayout(this);
        for (int i = 0; i < lines; ++i)
            column->addWidget(new QLabel(QStringLiteral("line %1").arg(i), this));
        auto* box = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
        column->addWidget(box);
        ok = box->button(QDialogButtonBox::Ok);
    }
    QPushButton* ok = nullptr;
};

// Regression: a round walked by touch met dialogs whose buttons were made for a mouse. Published: 20 mm for
// gloved fingers (see touch_size.h).
TEST(TouchButtons, GrowInDialogsWhereTheBenchIsWorkedByTouch)
{
    bool isOn = false;
    TouchButtons touch([&isOn] { return isOn; }, nullptr);
    qApp->installEventFilter(&touch);
    const int target = pixelsOn(QGuiApplication::primaryScreen(), kGloveMillimetres);

    Question before(3);
    before.show();
    EXPECT_LT(before.ok->height(), target);
    isOn = true;
    Question after(3);
    after.show();
    EXPECT_GE(after.ok->height(), target);
}

// Property: with large buttons a long dialog still ends within its screen, its buttons in sight.
TEST(TouchButtons, LeaveLongDialogsWithinTheScreen)
{
    FitScreen fit;
    TouchButtons touch([] { return true; }, nullptr);
    qApp->installEventFilter(&fit);
    qApp->installEventFilter(&touch);
    Question dialog(60);
    dialog.show();
    EXPECT_LE(dialog.height(), roomOn(dialog).height());
    EXPECT_GE(dialog.ok->height(), pixelsOn(dialog.screen(), kGloveMillimetres));
    EXPECT_LE(dialog.ok->mapTo(&dialog, QPoint(0, dialog.ok->height())).y(), dialog.height());
}

} // namespace
} // namespace sealwalk::ui
