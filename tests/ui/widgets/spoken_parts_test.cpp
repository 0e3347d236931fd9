// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/spoken_parts.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace sealwalk::ui {

// Regression: the field inside an editable list and the button inside a search field had no name, and a list
// without a label was known by the value it showed only.
TEST(SpokenParts, AreNamedAsTheyComeIntoSight)
{
    SpokenParts parts;
    qApp->installEventFilter(&parts);
    QWidget window;
    auto* form = new QFormLayout(&window);
    auto* labelled = new QComboBox(&window);
    labelled->setEditable(true);
    form->addRow(QStringLiteral("&Defect seen"), labelled);
    auto* named = new QComboBox(&window);
    named->setEditable(true);
    named->setAccessibleName(QStringLiteral("purpose"));
    auto* plain = new QComboBox(&window);
    plain->setAccessibleName(QStringLiteral("which record"));
    auto* search = new QLineEdit(&window);
    search->setClearButtonEnabled(true);
    search->setText(QStringLiteral("17"));
    for (QWidget* row : std::initializer_list<QWidget*>{named, plain, search})
        form->addRow(row);
    window.show();
    EXPECT_EQ(labelled->lineEdit()->accessibleName(), QStringLiteral("Defect seen"));
    EXPECT_EQ(labelled->accessibleDescription(), QString()) << "its label says it";
    EXPECT_EQ(named->lineEdit()->accessibleName(), QStringLiteral("purpose"));
    EXPECT_EQ(plain->accessibleDescription(), QStringLiteral("which record"));
    ASSERT_NE(search->findChild<QToolButton*>(), nullptr);
    EXPECT_EQ(search->findChild<QToolButton*>()->accessibleName(), QStringLiteral("Clear"));
}

} // namespace sealwalk::ui
