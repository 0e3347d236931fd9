// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/note_line.h"

#include <gtest/gtest.h>

#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <chrono>

namespace sealwalk::ui {

// Property: ten are kept, the newest first, and the resting hint comes back after a word.
TEST(NoteLine, KeepsTheLastTenAndRestsOnTheHint)
{
    NoteLine line;
    line.setResting(QStringLiteral("Sketch lays points"));
    EXPECT_EQ(line.text(), QStringLiteral("Sketch lays points"));
    for (int i = 1; i <= 12; ++i)
        line.say(Severity::News, QStringLiteral("word %1").arg(i));
    EXPECT_EQ(line.lastTen().size(), 10U);
    EXPECT_EQ(line.lastTen().front().text, QStringLiteral("word 12"));
    EXPECT_EQ(line.text(), QStringLiteral("word 12"));
    line.clear();
    EXPECT_EQ(line.text(), QStringLiteral("Sketch lays points"));
}

// Regression: Escape left the last ten notes standing, and the keys of the page beneath went nowhere.
TEST(NoteLine, EscapeClosesTheLastTen)
{
    QWidget window;
    auto* line = new NoteLine(&window);
    window.resize(600, 200);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_F2}) {
        line->openLastTen();
        QPointer<QListWidget> list = window.findChild<QListWidget*>();
        ASSERT_NE(list, nullptr);
        QTest::keyClick(list.data(), key);
        EXPECT_TRUE(QTest::qWaitFor([&] { return list.isNull(); })) << key;
    }
}

// Regression: a caution of one stage stood through all others; what it was said of was long done with.
TEST(NoteLine, ACautionGoesWithItsPageAndAnErrorStays)
{
    NoteLine line;
    line.setResting(QStringLiteral("hint"));
    line.say(Severity::Caution, QStringLiteral("a repair is due"));
    line.turnTo();
    EXPECT_EQ(line.text(), QStringLiteral("a repair is due")) << "said just now: it is to be read first";
    line.say(Severity::Error, QStringLiteral("not on disk"));
    line.turnTo();
    QTest::qWait(50);
    EXPECT_EQ(line.text(), QStringLiteral("not on disk"));
    line.say(Severity::Caution, QStringLiteral("a repair is due"));
    line.setCautionTime(std::chrono::milliseconds(30));
    EXPECT_FALSE(QTest::qWaitFor([&] { return line.text() == QStringLiteral("hint"); }, 100))
        << "it stays as long as its page does";
    line.turnTo();
    EXPECT_TRUE(QTest::qWaitFor([&] { return line.text() == QStringLiteral("hint"); }));
}

// Property: work in progress does not lose the error that stood there.
TEST(NoteLine, ComesBackToTheErrorAfterProgress)
{
    NoteLine line;
    line.say(Severity::Error, QStringLiteral("not on disk"));
    line.showProgress(QStringLiteral("sealing 1 of 4"), 0.25);
    EXPECT_EQ(line.text(), QStringLiteral("sealing 1 of 4"));
    QSignalSpy cancelled(&line, &NoteLine::cancelled);
    line.findChild<QPushButton*>()->click();
    EXPECT_EQ(cancelled.count(), 1);
    line.endProgress();
    EXPECT_EQ(line.text(), QStringLiteral("not on disk"));
    EXPECT_EQ(line.severity(), Severity::Error);
}

} // namespace sealwalk::ui
