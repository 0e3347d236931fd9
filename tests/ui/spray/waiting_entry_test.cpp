// SPDX-License-Identifier: GPL-3.0-or-later
// An entry that waits for another program to let go of the history: what is said about it meanwhile goes with
// it, the clock does not drop it, and whoever drops it is told.
#include "tests/ui/spray/spray_page_fixture.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include <QApplication>
#include <QInputDialog>
#include <QTimer>

#include <cmath>

namespace sealwalk::ui {
namespace {

constexpr int kPatience = 20000; // ms

class WaitingEntry : public SprayPageTest
{
protected:
    void SetUp() override
    {
        SprayPageTest::SetUp();
        QObject::connect(&controller(), &SprayController::said, page.get(),
                         [this](SprayController::Weight, const QString& text) { said << text; });
        QObject::connect(&controller(), &SprayController::soundWanted, page.get(),
                         [this](SpraySound sound) { sounds.push_back(sound); });
    }
    void hold()
    {
        other.emplace(history.file().string(), SQLite::OPEN_READWRITE);
        lock.emplace(*other, SQLite::TransactionBehavior::IMMEDIATE);
    }
    void letGo() { lock.reset(); }
    [[nodiscard]] bool isStored(std::size_t count)
    {
        return QTest::qWaitFor([&] { return stored() == count; }, kPatience);
    }
    [[nodiscard]] bool waitsNoMore()
    {
        return QTest::qWaitFor([&] { return !controller().isTryingAgain(); }, kPatience);
    }
    [[nodiscard]] model::PointId point(int number) const
    {
        return history.session.job().sketch.pointNumbered(number)->id;
    }

    std::optional<SQLite::Database> other;
    std::optional<SQLite::Transaction> lock;
    QStringList said;
    std::vector<SpraySound> sounds;
};

// Regression: stored by a later try, a reading from paper was not "the one before" to the next: with an empty
// time that one stood at a moment nobody had written.
TEST_F(WaitingEntry, APaperTimeThatWaitedIsTheOneBeforeTheNext)
{
    const QDate day = QDate::currentDate().addDays(-1);
    controller().setTranscribing(true, day);
    enterValue(QStringLiteral("3.2-9"));
    hold();
    enterValue(QStringLiteral("1432"));
    ASSERT_TRUE(controller().isTryingAgain());
    letGo();
    ASSERT_TRUE(isStored(1));
    EXPECT_EQ(controller().field(), SprayController::Field::Peak);
    const Timestamp first = last().at;
    enterValue(QStringLiteral("3.3-9"));
    press(Qt::Key_Return); // no time: at the usual pace after the one before
    ASSERT_EQ(stored(), 2u);
    const double pace = inSeconds(analysis::walkTime(controller().timing(), 1)); // most points do not answer
    EXPECT_EQ(last().at.utcMilliseconds - first.utcMilliseconds, 1000 * std::llround(std::ceil(pace)))
        << "in whole seconds";
}

// Regression: a remark typed while NOT STORED stood there was lost, another condition passed over.
TEST_F(WaitingEntry, WhatIsSaidMeanwhileGoesWithIt)
{
    hold();
    press(Qt::Key_N);
    ASSERT_TRUE(controller().isTryingAgain());
    controller().remark(QStringLiteral("from the north side"));
    press(Qt::Key_T);
    press(Qt::Key_B);
    QTest::qWait(900); // a question is open: it may still change the entry
    enterValue(QStringLiteral("1.5-9"));
    letGo();
    ASSERT_TRUE(isStored(1));
    EXPECT_EQ(last().remark, "from the north side");
    EXPECT_EQ(last().condition, model::Condition::Taped);
    ASSERT_TRUE(last().background);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 1.5e-9, 1e-18);
    EXPECT_TRUE(controller().remark().isEmpty()) << "it is not on the next point";
}

// Regression: the entry was stored while the remark on it was being typed, which then stood on the next
// point.
TEST_F(WaitingEntry, ARemarkBeingTypedIsWaitedFor)
{
    hold();
    enterValue(QStringLiteral("3.2-9"));
    std::size_t whileTyping = 9;
    QTimer::singleShot(0, page.get(), [&] {
        auto* dialog = qobject_cast<QInputDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        letGo();
        QTest::qWait(1200);
        whileTyping = stored();
        dialog->setTextValue(QStringLiteral("a hair on the seal"));
        dialog->accept();
    });
    emit page->findChild<CallPanel*>()->remarkWanted(); // as the menu does it, a number in the field
    EXPECT_EQ(whileTyping, 0u);
    ASSERT_TRUE(isStored(1));
    EXPECT_EQ(last().remark, "a hair on the seal");
    EXPECT_TRUE(controller().remark().isEmpty());
}

// Property: a remark typed about a point that is called no more is not put on another one.
TEST_F(WaitingEntry, ARemarkOnACallThatMovedIsDroppedWithAWord)
{
    QTimer::singleShot(0, page.get(), [&] {
        auto* dialog = qobject_cast<QInputDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        controller().callPoint(point(4));
        dialog->setTextValue(QStringLiteral("a hair on the seal"));
        dialog->accept();
    });
    press(Qt::Key_M);
    EXPECT_EQ(called(), 4);
    EXPECT_TRUE(controller().remark().isEmpty());
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().contains(QStringLiteral("point 1"))) << said.last().toStdString();
}

// Regression: the end of the dwell dropped the entry that waited, without a word.
TEST_F(WaitingEntry, TheClockDoesNotDropIt)
{
    model::Setup setup = history.session.job().setup;
    setup.response = seconds(0.2); // dwell 3 s
    ASSERT_TRUE(history.session.changeSetup(setup));
    press(Qt::Key_Space);
    hold();
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_TRUE(controller().isTryingAgain());
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return controller().machine().state() == CallState::Read; }, kPatience));
    QTest::qWait(900);
    EXPECT_TRUE(controller().isTryingAgain());
    letGo();
    ASSERT_TRUE(isStored(1));
    ASSERT_TRUE(last().dwell);
    EXPECT_LT(inSeconds(*last().dwell), 2.9) << "as it was at Enter";
}

// Regression: an entry that was meant no more went without a word.
TEST_F(WaitingEntry, WhateverDropsItSaysSo)
{
    const std::vector<std::function<void()>> ways{
        [&] { press(Qt::Key_Escape); },
        [&] { controller().callPoint(point(5)); },
        [&] { type(QStringLiteral("4")); },
        [&] { press(Qt::Key_Space); },
    };
    for (std::size_t i = 0; i < ways.size(); ++i) {
        controller().callPoint(point(1));
        hold();
        i == 3 ? press(Qt::Key_N) : enterValue(QStringLiteral("3.2-9"));
        ASSERT_TRUE(controller().isTryingAgain()) << i;
        said.clear();
        sounds.clear();
        ways[i]();
        letGo();
        ASSERT_TRUE(waitsNoMore()) << i;
        EXPECT_EQ(stored(), 0u) << i;
        ASSERT_FALSE(said.isEmpty()) << i;
        EXPECT_TRUE(said.last().startsWith(QStringLiteral("Not stored: 1, "))) << said.last().toStdString();
        ASSERT_FALSE(sounds.empty()) << i;
        EXPECT_EQ(sounds.back(), SpraySound::Refused) << i;
        press(Qt::Key_Escape);
        press(Qt::Key_Escape);
    }
}

} // namespace
} // namespace sealwalk::ui
