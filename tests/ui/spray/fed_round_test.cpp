// SPDX-License-Identifier: GPL-3.0-or-later
// A round with a live feed, through the real widgets: two keys a reading, and what happens when it fails.
#include "tests/support/fed_detector.h"
#include "tests/support/temporary_history.h"
#include "ui/render/plot_view.h"
#include "ui/spray/call_panel.h"
#include "ui/spray/entry_field.h"
#include "ui/spray/live_trace.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/state_bar.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace sealwalk::ui {
namespace {

class FedRound : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(6);
        history.calibrate();
        model::Setup setup = history.session.job().setup;
        setup.response = seconds(0.2); // dwell 3 s, wait 0.9 s
        ASSERT_TRUE(history.session.changeSetup(setup));
        controller = std::make_unique<SprayController>(history.session);
        panel = std::make_unique<CallPanel>(history.session, *controller);
        panel->resize(476, 644);
        panel->show();
        feed.setPatience({20, 100, 500, 1000});
        controller->setFeed(feed);
        QObject::connect(controller.get(), &SprayController::soundWanted, controller.get(),
                         [this](SpraySound sound) { sounds.push_back(sound); });
    }

    void start()
    {
        feed::FeedProfile profile;
        profile.name = "bench detector";
        profile.source.kind = feed::SourceKind::Pipe;
        profile.source.path = detector.pipe();
        feed.start(profile);
        detector.talk();
        ASSERT_TRUE(QTest::qWaitFor([this] { return feed.isLive(); }));
        QTest::qWait(300); // a background to look back on
    }

    void press(Qt::Key key) { QTest::keyClick(&panel->field(), key); }
    void type(const QString& keys) { QTest::keyClicks(&panel->field(), keys); }
    bool reaches(CallState state)
    {
        return QTest::qWaitFor([&] { return controller->machine().state() == state; }, 10000);
    }
    [[nodiscard]] const model::Reading& last() const { return history.session.job().readings.back(); }
    [[nodiscard]] std::size_t stored() const { return history.session.job().readings.size(); }
    [[nodiscard]] bool heard(SpraySound sound) const
    {
        return std::find(sounds.begin(), sounds.end(), sound) != sounds.end();
    }

    tests::TemporaryHistory history;
    tests::FedDetector detector;
    FeedSession feed;
    std::unique_ptr<SprayController> controller;
    std::unique_ptr<CallPanel> panel;
    std::vector<SpraySound> sounds;
};

// The count that matters at the bench: with the feed a reading is two keys, and the trace of it is kept.
TEST_F(FedRound, AReadingTakesTwoKeys)
{
    start();
    detector.leak = 5e-7;
    press(Qt::Key_Space);
    QTest::qWait(200);
    detector.helium = true;
    ASSERT_TRUE(reaches(CallState::Read)) << "the dwell ends by itself";
    ASSERT_TRUE(controller->offered());
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().entry, model::Entry::Feed);
    EXPECT_EQ(last().outcome, model::Outcome::Value);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 5e-7, 5e-9);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 1e-10, 1e-12);
    ASSERT_TRUE(last().delay);
    EXPECT_GT(inSeconds(*last().delay), 0.15);
    EXPECT_LT(inSeconds(*last().delay), 1.5);
    EXPECT_FALSE(last().cleanUp) << "helium is still on";
    EXPECT_NE(last().entered.find("mbar l/s"), std::string::npos);

    ASSERT_FALSE(last().trace.empty());
    const auto trace = history.session.history().trace(history.session.job().id, last().trace);
    ASSERT_TRUE(trace);
    ASSERT_GT(trace->times.size(), 100u);
    EXPECT_LT(trace->times.front(), 0.0) << "it shows the background before";
    EXPECT_GT(trace->times.back(), 2.9);
    EXPECT_NEAR(*std::max_element(trace->values.begin(), trace->values.end()), last().peak->si(),
                last().peak->si() * 0.005);
}

// Property: the wait ends when it is over and the background is back, not before.
TEST_F(FedRound, TheWaitWaitsForTheBackground)
{
    start();
    detector.leak = 5e-7;
    detector.helium = true;
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    QTest::qWait(1500); // longer than the wait; helium still flows
    EXPECT_EQ(controller->machine().state(), CallState::Wait);
    EXPECT_EQ(controller->machine().left(controller->now()), 0.0);
    detector.helium = false;
    EXPECT_TRUE(reaches(CallState::Go));
    EXPECT_TRUE(heard(SpraySound::Go));
}

TEST_F(FedRound, TheHighestCanBeTakenIntoTheField)
{
    start();
    detector.leak = 2e-8;
    detector.helium = true;
    press(Qt::Key_H);
    EXPECT_TRUE(panel->field().text().isEmpty()) << "nothing was sprayed yet";
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    press(Qt::Key_H);
    EXPECT_EQ(panel->field().text(), QStringLiteral("2.01e-8"));
    EXPECT_EQ(stored(), 0u);
    press(Qt::Key_Up); // changed by hand: no longer the feed's
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().entry, model::Entry::Typed);
    EXPECT_EQ(last().entered, "2.01e-7 mbar l/s");
    EXPECT_FALSE(last().trace.empty());
}

// Regression: a highest of 10 and more in the detector's unit was stored with its exponent's sign turned.
TEST_F(FedRound, AHighestAboveTenKeepsItsDecade)
{
    start();
    detector.leak = 250.0;
    detector.helium = true;
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    press(Qt::Key_Return); // takes it; that it is far above everything else is asked once
    if (stored() == 0)
        press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 250.0, 2.5);
    EXPECT_EQ(last().entered, "2.50e+2 mbar l/s");
}

// Property: where the feed saw nothing, Enter stores nothing; N says it, with the background of that moment.
TEST_F(FedRound, NoRiseIsNoValue)
{
    start();
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    EXPECT_FALSE(controller->offered());
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 0u);
    press(Qt::Key_N);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_EQ(last().entry, model::Entry::Feed);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 1e-10, 1e-12);
    EXPECT_FALSE(last().delay);
}

// Property: the background typed for a reading stands, and stopping by hand tells when helium went off.
TEST_F(FedRound, WhatIsDoneByHandStands)
{
    start();
    detector.leak = 5e-8;
    detector.helium = true;
    press(Qt::Key_Space);
    QTest::qWait(1000);
    press(Qt::Key_Space);
    detector.helium = false;
    EXPECT_EQ(controller->machine().state(), CallState::Read);
    press(Qt::Key_B);
    type(QStringLiteral("2-10"));
    press(Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([this] { return controller->offer().cleanUp.has_value(); }));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 2e-10, 1e-20);
    ASSERT_TRUE(last().cleanUp);
    EXPECT_LT(inSeconds(*last().cleanUp), 3.0);
}

// Property: a lost feed holds the round for no longer than it takes to type; it comes back by itself.
TEST_F(FedRound, ALostFeedLosesNothing)
{
    start();
    detector.goAway();
    ASSERT_TRUE(reaches(CallState::Hold));
    EXPECT_TRUE(heard(SpraySound::FeedLost));
    type(QStringLiteral("3-9"));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().entry, model::Entry::Typed);
    EXPECT_FALSE(last().outOfTurn);
    press(Qt::Key_Space); // the round goes on without it
    EXPECT_EQ(controller->machine().state(), CallState::Spray);
    type(QStringLiteral("4-9"));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 2u);
    QTest::qWait(2500);
    detector.talk();
    ASSERT_TRUE(QTest::qWaitFor([this] { return feed.isLive(); }));
    EXPECT_TRUE(reaches(CallState::Go));
    QTest::qWait(150);
    const report::Figure& figure = panel->trace().plot().figure();
    ASSERT_EQ(figure.strips.size(), 1u) << "the time without values is hatched";
    EXPECT_TRUE(figure.strips.front().hatched);
    EXPECT_GT(*figure.strips.front().to - *figure.strips.front().from, 2.0);
}

// Property: of a spray in which values are missing the feed offers nothing: its highest may be among them.
TEST_F(FedRound, AGapInTheSprayOffersNothing)
{
    start();
    detector.leak = 5e-8;
    press(Qt::Key_Space);
    QTest::qWait(500);
    detector.goAway();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !feed.isLive(); }));
    detector.helium = true;
    detector.talk();
    ASSERT_TRUE(QTest::qWaitFor([this] { return feed.isLive(); }));
    ASSERT_TRUE(reaches(CallState::Read));
    EXPECT_FALSE(controller->offered());
    EXPECT_FALSE(controller->offer().sawNoRise);
    type(QStringLiteral("5-8"));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().entry, model::Entry::Typed);
    EXPECT_FALSE(last().delay);
    EXPECT_FALSE(last().trace.empty()) << "what came is kept all the same";
}

// Regression: a rise that was seen was forgotten when the feed was lost later in the spray, and H said that
// it had given no value.
TEST_F(FedRound, WhatWasSeenBeforeALossStandsOffered)
{
    for (const bool returns : {false, true}) {
        detector.leak = 5e-8;
        start();
        ASSERT_TRUE(reaches(CallState::Go));
        press(Qt::Key_Space);
        QTest::qWait(200);
        detector.helium = true;
        QTest::qWait(1200);
        detector.goAway();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !feed.isLive(); }));
        detector.helium = false;
        if (returns) {
            detector.talk();
            ASSERT_TRUE(QTest::qWaitFor([this] { return feed.isLive(); }));
        }
        ASSERT_TRUE(reaches(CallState::Read));
        ASSERT_TRUE(controller->offered());
        EXPECT_TRUE(controller->offer().wasLost);
        press(Qt::Key_Return);
        ASSERT_EQ(stored(), returns ? 2u : 1u);
        EXPECT_EQ(last().entry, model::Entry::Feed);
        EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 5e-8, 1e-9);
        EXPECT_TRUE(last().delay);
        EXPECT_FALSE(last().cleanUp);
        EXPECT_NE(last().remark.find("the feed was lost during the spray"), std::string::npos)
            << last().remark;
    }
}

// Regression: a detector that shows zero gave readings with neither a background nor a word, and the axis of
// the trace dived to 1e-15.
TEST_F(FedRound, ADisplayAtZeroIsSaid)
{
    QStringList said;
    QObject::connect(controller.get(), &SprayController::said, controller.get(),
                     [&](SprayController::Weight, const QString& text) { said << text; });
    detector.background = 0.0;
    start();
    QTest::qWait(300);
    ASSERT_EQ(said.filter(QStringLiteral("zero or below")).size(), 1) << "once, not ten times a second";
    EXPECT_EQ(panel->stateBar().shown().figureHint, QStringLiteral("zeroed? no background"));
    const report::Figure& figure = panel->trace().plot().figure();
    EXPECT_EQ(figure.empty, "the display shows zero or below");
    detector.leak = 5e-8;
    detector.helium = true;
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    QTest::qWait(150);
    EXPECT_TRUE(figure.empty.empty());
    EXPECT_GE(figure.y.low, 1e-17) << "Pa·m³/s, seven decades below the highest";
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_FALSE(last().background);
    EXPECT_NE(last().remark.find("zero or below"), std::string::npos) << last().remark;
}

// Property: a background that climbs without helium holds the next spray.
TEST_F(FedRound, HoldsWhileTheBackgroundClimbs)
{
    start();
    QTest::qWait(4500); // something to climb from
    EXPECT_EQ(controller->machine().state(), CallState::Go);
    detector.background = 2e-10;
    ASSERT_TRUE(reaches(CallState::Hold));
    EXPECT_TRUE(heard(SpraySound::Hold));
    press(Qt::Key_Space);
    EXPECT_EQ(controller->machine().state(), CallState::Hold);
    press(Qt::Key_I);
    EXPECT_EQ(controller->machine().state(), CallState::Go);
    press(Qt::Key_Space);
    EXPECT_EQ(controller->machine().state(), CallState::Spray);
}

// Property: what the end of the range hides is not stored as a value.
TEST_F(FedRound, TheEndOfTheRangeIsNoValue)
{
    model::Setup setup = history.session.job().setup;
    setup.rangeTop = millibarLitresPerSecond(1e-7);
    ASSERT_TRUE(history.session.changeSetup(setup));
    start();
    detector.leak = 1e-7;
    detector.helium = true;
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 0u);
    press(Qt::Key_Plus);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::AboveRange);
}

TEST_F(FedRound, TheTraceShowsSpraysAndTheirNumbers)
{
    auto* none = panel->findChild<QLabel*>(QStringLiteral("noFeed"));
    ASSERT_NE(none, nullptr);
    EXPECT_TRUE(none->isVisible());
    QSignalSpy wanted(panel.get(), &CallPanel::feedWanted);
    emit none->linkActivated(QStringLiteral("feed"));
    EXPECT_EQ(wanted.count(), 1);
    start();
    detector.leak = 5e-8;
    detector.helium = true;
    press(Qt::Key_Space);
    ASSERT_TRUE(reaches(CallState::Read));
    QTest::qWait(150);
    EXPECT_FALSE(none->isVisible());
    const report::Figure& figure = panel->trace().plot().figure();
    EXPECT_TRUE(figure.empty.empty());
    ASSERT_EQ(figure.spans.size(), 1u);
    EXPECT_EQ(figure.spans.front().text, "1");
    EXPECT_EQ(figure.flags.size(), 1u);
    ASSERT_EQ(figure.levels.size(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(LeakRate::fromSi(figure.levels.front().at)), 1e-8 + 1e-10, 2e-10);
    EXPECT_TRUE(figure.y.logarithmic);
    EXPECT_LE(figure.y.low, 1e-11);
    EXPECT_GE(figure.y.high, 5e-9);
}

} // namespace
} // namespace sealwalk::ui
