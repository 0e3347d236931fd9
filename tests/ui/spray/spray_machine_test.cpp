// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_machine.h"

#include <gtest/gtest.h>

namespace sealwalk::ui {
namespace {

SprayMachine machine()
{
    SprayMachine result;
    result.setTimes({6.0, 9.0});
    return result;
}

TEST(SprayMachine, RunsOneCallFromGoToGo)
{
    SprayMachine m = machine();
    EXPECT_EQ(m.state(), CallState::Go);
    EXPECT_TRUE(m.toggle(100.0));
    EXPECT_EQ(m.state(), CallState::Spray);
    EXPECT_NEAR(m.left(102.0), 4.0, 1e-12);
    EXPECT_FALSE(m.tick(105.9));
    EXPECT_TRUE(m.tick(106.0));
    EXPECT_EQ(m.state(), CallState::Read);
    EXPECT_NEAR(*m.sprayed(109.0), 6.0, 1e-12);
    m.stored(109.0);
    EXPECT_EQ(m.state(), CallState::Wait);
    EXPECT_NEAR(m.progress(113.5), 0.5, 1e-12);
    EXPECT_TRUE(m.tick(118.0));
    EXPECT_EQ(m.state(), CallState::Go);
    EXPECT_FALSE(m.isOutOfTurn());
}

TEST(SprayMachine, StopsEarlyAndKeepsTheRealDwell)
{
    SprayMachine m = machine();
    m.toggle(0.0);
    EXPECT_TRUE(m.toggle(2.5));
    EXPECT_EQ(m.state(), CallState::Read);
    EXPECT_NEAR(*m.sprayed(50.0), 2.5, 1e-12);
}

TEST(SprayMachine, DoesNotSprayOntoAFallingSignal)
{
    SprayMachine m = machine();
    m.toggle(0.0);
    m.tick(6.0);
    m.stored(7.0);
    EXPECT_FALSE(m.toggle(8.0));
    EXPECT_TRUE(m.goOnAnyway());
    EXPECT_TRUE(m.isOutOfTurn());
    EXPECT_TRUE(m.toggle(8.0));
}

TEST(SprayMachine, NeedsNoWaitWhenNothingWasSprayed)
{
    SprayMachine m = machine();
    m.stored(5.0);
    EXPECT_EQ(m.state(), CallState::Go);
}

TEST(SprayMachine, KeepsTheWaitWhenAnotherPointIsCalled)
{
    SprayMachine m = machine();
    m.toggle(0.0);
    m.tick(6.0);
    m.stored(7.0);
    m.call(8.0);
    EXPECT_EQ(m.state(), CallState::Wait);
    EXPECT_NEAR(m.left(8.0), m.times().wait - 1.0, 1e-12) << "it runs on";
}

// Regression: helium given at a point that was left went unheeded.
TEST(SprayMachine, WaitsForTheHeliumOfAPointThatWasLeft)
{
    for (const bool reads : {false, true}) {
        SprayMachine m = machine();
        m.toggle(0.0);
        if (reads)
            m.tick(6.0);
        m.call(7.0);
        EXPECT_EQ(m.state(), CallState::Wait);
        EXPECT_NEAR(m.left(7.0), m.times().wait, 1e-12);
        EXPECT_FALSE(m.sprayed(7.0).has_value());
    }
}

TEST(SprayMachine, MarksTheFirstRise)
{
    SprayMachine m = machine();
    EXPECT_FALSE(m.markRise(1.0));
    m.toggle(10.0);
    EXPECT_TRUE(m.markRise(11.5));
    EXPECT_NEAR(*m.delay(), 1.5, 1e-12);
}

TEST(SprayMachine, HoldsWhileTheBackgroundMoves)
{
    SprayMachine m = machine();
    m.hold();
    EXPECT_EQ(m.state(), CallState::Hold);
    EXPECT_FALSE(m.toggle(1.0));
    m.quiet();
    EXPECT_EQ(m.state(), CallState::Go);
    m.toggle(2.0);
    m.hold(); // a spray that runs is not stopped
    EXPECT_EQ(m.state(), CallState::Spray);
}

TEST(SprayMachine, WaitsUntilTheBackgroundIsBack)
{
    SprayMachine m = machine();
    m.toggle(0.0);
    m.tick(6.0);
    m.stored(7.0);
    m.setClear(false);
    EXPECT_FALSE(m.tick(20.0));
    EXPECT_EQ(m.state(), CallState::Wait);
    m.setClear(true);
    EXPECT_TRUE(m.tick(20.1));
    EXPECT_EQ(m.state(), CallState::Go);
}

// Regression: a hold that began while helium cleared let the next spray start into it.
TEST(SprayMachine, AHoldDoesNotShortenTheWait)
{
    SprayMachine m = machine();
    m.toggle(0.0);
    m.tick(6.0);
    m.stored(7.0);
    m.hold();
    m.quiet();
    EXPECT_EQ(m.state(), CallState::Wait);
    EXPECT_FALSE(m.tick(15.9));
    EXPECT_TRUE(m.tick(16.0));
}

TEST(SprayMachine, WaitsInFullAfterARestart)
{
    SprayMachine m = machine();
    m.resume(50.0);
    EXPECT_EQ(m.state(), CallState::Wait);
    EXPECT_NEAR(m.left(50.0), 9.0, 1e-12);
}

// Regression: a rise marked after the dwell was over stood beside a spray that had ended before it.
TEST(SprayMachine, ARiseAfterTheDwellKeepsTheHeliumOn)
{
    SprayMachine m;
    m.setTimes({6.0, 9.0});
    m.toggle(0.0);
    m.tick(6.0);
    ASSERT_EQ(m.state(), CallState::Read);
    EXPECT_TRUE(m.markRise(8.0));
    EXPECT_DOUBLE_EQ(*m.sprayed(20.0), 8.0);
    m.toggle(20.0);
    m.toggle(24.0); // ended by hand: then it was off
    EXPECT_TRUE(m.markRise(25.0));
    EXPECT_DOUBLE_EQ(*m.sprayed(30.0), 4.0);
}

// Regression: after a point that did not answer the whole clean-up ran, though there was nothing to clear; who
// went on was marked as out of turn.
TEST(SprayMachine, WaitsShortlyWhereNothingAnswered)
{
    SprayMachine m;
    m.setTimes({6.0, 9.0, 2.0});
    m.toggle(0.0);
    m.tick(6.0);
    m.stored(7.0, false);
    EXPECT_EQ(m.state(), CallState::Wait);
    EXPECT_FALSE(m.tick(8.9));
    EXPECT_TRUE(m.tick(9.1));
    m.toggle(10.0);
    m.tick(16.0);
    m.stored(17.0, true);
    EXPECT_FALSE(m.tick(25.9));
    EXPECT_TRUE(m.tick(26.1));
    EXPECT_FALSE(m.isOutOfTurn());
}

} // namespace
} // namespace sealwalk::ui
