// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/go_to.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QListWidget>
#include <QtTest>

namespace sealwalk::ui {

// Property: every typed word must be there, in any order; what begins with the text comes first.
TEST(GoTo, FindsByWordsAndGoesThereOnEnter)
{
    int gone = 0;
    std::vector<Destination> places{
        {QStringLiteral("12   Door seal, 3 o'clock"), QStringLiteral("point"), [&gone] { gone = 12; }},
        {QStringLiteral("2   Door seal, 1 o'clock"), QStringLiteral("point"), [&gone] { gone = 2; }},
        {QStringLiteral("Door seal"), QStringLiteral("joint"), [&gone] { gone = 100; }},
        {QStringLiteral("Who is logging"), QStringLiteral("command"), [&gone] { gone = 200; }},
    };
    GoTo dialog(places, nullptr);
    EXPECT_EQ(dialog.matches(QStringLiteral("seal door")), (std::vector<std::size_t>{0, 1, 2}));
    EXPECT_EQ(dialog.matches(QStringLiteral("2")), (std::vector<std::size_t>{1, 0}));
    EXPECT_EQ(dialog.matches(QStringLiteral("joint door")), (std::vector<std::size_t>{2}));
    EXPECT_TRUE(dialog.matches(QStringLiteral("pump")).empty());
    auto* field = dialog.findChild<QLineEdit*>();
    QTest::keyClicks(field, QStringLiteral("door"));
    QTest::keyClick(field, Qt::Key_Down);
    QTest::keyClick(field, Qt::Key_Down);
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(gone, 2);
}

// Regression: a text that nothing matches is answered with words, and Enter goes nowhere.
TEST(GoTo, SaysWhenNothingIsCalledSo)
{
    bool gone = false;
    GoTo dialog({{QStringLiteral("Door seal"), QStringLiteral("joint"), [&gone] { gone = true; }}}, nullptr);
    auto* field = dialog.findChild<QLineEdit*>();
    QTest::keyClicks(field, QStringLiteral("pump"));
    QTest::keyClick(field, Qt::Key_Down);
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_FALSE(gone);
    EXPECT_EQ(dialog.findChild<QListWidget*>()->count(), 1);
}

} // namespace sealwalk::ui
