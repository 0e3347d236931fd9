// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fit_screen.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFontMetrics>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QtTest>

namespace sealwalk::ui {

namespace {

/// So many fields, and its buttons below.
class Form : public QDialog
{
public:
    Form(int fields, bool buttonBox, int width = 200)
    {
        setMinimumWidth(width);
        auto* form = new QFormLayout;
        for (int i = 0; i < fields; ++i) {
            last = new QLineEdit(this);
            form->addRow(QString::number(i), last);
        }
        auto* column = new QVBoxLayout(this);
        column->addLayout(form);
        if (buttonBox) {
            auto* box = new QDialogButtonBox(QDialogButtonBox::Ok, this);
            store = box->button(QDialogButtonBox::Ok);
            column->addWidget(box);
        } else {
            auto* row = new QHBoxLayout;
            row->addStretch();
            store = new QPushButton(QStringLiteral("Store"), this);
            row->addWidget(store);
            column->addLayout(row);
        }
    }

    QLineEdit* last = nullptr;
    QPushButton* store = nullptr;
};

bool isInSight(const QWidget& part)
{
    return part.isVisible() && part.visibleRegion().boundingRect().size() == part.size();
}

} // namespace

// Regression: "Picture underneath" over a field for a page number was cut to "Pictur…neath".
TEST(FitScreen, GivesATitleItsRoom)
{
    QInputDialog page;
    page.setInputMode(QInputDialog::IntInput);
    page.setLabelText(QStringLiteral("Page"));
    (void)page.sizeHint(); // it makes its fields only then
    Form form(1, true, 60);
    for (QDialog* dialog : std::initializer_list<QDialog*>{&page, &form}) {
        dialog->setWindowTitle(QStringLiteral("Readings of the paper sheet, one by one"));
        FitScreen::fit(*dialog, {1366, 740});
        dialog->show();
        QFont font = dialog->font();
        font.setBold(true);
        EXPECT_GE(dialog->width(), QFontMetrics(font).horizontalAdvance(dialog->windowTitle()) + 100);
        EXPECT_LE(dialog->width(), 740);
    }
}

// Regression: on a screen enlarged to 683 x 384 the buttons of a dialog were out of reach.
TEST(FitScreen, ScrollsADialogThatIsTooLarge)
{
    const QSize room(683, 356);
    for (const bool buttonBox : {true, false}) {
        Form form(40, buttonBox, 940);
        FitScreen::fit(form, room);
        form.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&form));
        EXPECT_LE(form.width(), room.width());
        EXPECT_LE(form.height(), room.height());
        EXPECT_TRUE(isInSight(*form.store));
        EXPECT_FALSE(isInSight(*form.last));
        form.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
        // Tab goes through all of it, and what has the keyboard comes into sight.
        for (int i = 0; i < 60 && !form.last->hasFocus(); ++i)
            QTest::keyClick(form.focusWidget() == nullptr ? &form : form.focusWidget(), Qt::Key_Tab);
        ASSERT_TRUE(form.last->hasFocus());
        EXPECT_GT(form.last->visibleRegion().boundingRect().height(), 0);
        QTest::keyClick(form.last, Qt::Key_Tab);
        EXPECT_TRUE(form.store->hasFocus());
    }
}

// Property: one that fits is left as it is.
TEST(FitScreen, LeavesADialogThatFits)
{
    Form form(3, true);
    const QLayout* before = form.layout();
    const QSize wanted = form.sizeHint().expandedTo(form.minimumSize());
    FitScreen::fit(form, QSize(683, 356));
    form.show();
    EXPECT_EQ(form.layout(), before);
    EXPECT_EQ(form.size(), wanted);
}

// Property: a size that was wished for, not needed, is bounded without scrolling.
TEST(FitScreen, BoundsAWish)
{
    Form form(3, true);
    const QLayout* before = form.layout();
    form.resize(1200, 900);
    FitScreen::fit(form, QSize(683, 356));
    EXPECT_EQ(form.layout(), before);
    EXPECT_EQ(form.size(), QSize(683, 356));
}

// Property: installed on the application it does so for whatever opens.
TEST(FitScreen, LooksAfterEveryDialog)
{
    FitScreen guard;
    qApp->installEventFilter(&guard);
    Form form(80, true);
    form.show();
    EXPECT_LE(form.height(), form.screen()->availableSize().height());
    EXPECT_TRUE(isInSight(*form.store));
    QWidget window;
    window.resize(2732, 1480);
    EXPECT_TRUE(boundToScreen(window));
    EXPECT_EQ(window.size(), roomOn(window));
    EXPECT_FALSE(boundToScreen(window));
}

} // namespace sealwalk::ui
