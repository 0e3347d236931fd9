// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/walk.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

using tests::addValue;
using tests::pointNumbered;
using tests::ringJob;

model::RoundId firstRound(const model::Job& job)
{
    return job.rounds.front().id;
}

std::vector<int> calledNumbers(model::Job job)
{
    std::vector<int> numbers;
    model::PointId last;
    while (const auto next = nextCall(walk(job, firstRound(job)), last, {})) {
        numbers.push_back(next->number);
        last = next->point;
        addValue(job, next->number, 1e-9, 1e-10, next->condition);
    }
    return numbers;
}

// Property: following the calls visits every point once, in the round's order.
TEST(Walk, VisitsEveryPointOnceInOrder)
{
    model::Job job = ringJob(5);
    std::swap(job.rounds.front().points[1], job.rounds.front().points[3]);
    EXPECT_EQ(calledNumbers(job), (std::vector<int>{1, 4, 3, 2, 5}));
}

TEST(Walk, CallsAPointAgainInEachConditionItsJointAsksFor)
{
    model::Job job = ringJob(3);
    job.sketch.joints.front().requiredConditions = {"at rest", "flexed"};
    EXPECT_EQ(calledNumbers(job), (std::vector<int>{1, 1, 2, 2, 3, 3}));
}

// Regression: a reading in a condition nobody had asked for stood nowhere in the walk.
TEST(Walk, AReadingInAnotherConditionHasAStepOfItsOwn)
{
    model::Job job = ringJob(3);
    addValue(job, 2, 9e-9, 1e-10, model::Condition::Hot);
    const auto steps = walk(job, firstRound(job));
    ASSERT_EQ(steps.size(), 4u);
    EXPECT_EQ(steps[2].number, 2);
    EXPECT_EQ(steps[2].condition, model::Condition::Hot);
    EXPECT_FALSE(steps[2].isAsked);
    EXPECT_TRUE(steps[2].isDone());
    EXPECT_FALSE(steps[1].isDone()) << "what is asked for is still to be sprayed";
    EXPECT_EQ(nextCall(steps, pointNumbered(job, 1), {})->number, 1);
    ASSERT_EQ(openRounds(job).size(), 1u);
    EXPECT_EQ(openRounds(job).front().left, 3);
}

TEST(Walk, CallsSkippedPointsLast)
{
    model::Job job = ringJob(3);
    const auto steps = walk(job, firstRound(job));
    EXPECT_EQ(nextCall(steps, {}, {pointNumbered(job, 1)})->number, 2);
    addValue(job, 2, 1e-9);
    addValue(job, 3, 1e-9);
    const auto later = walk(job, firstRound(job));
    EXPECT_EQ(nextCall(later, pointNumbered(job, 3), {pointNumbered(job, 1)})->number, 1);
}

TEST(Walk, CallsAVoidPointAgain)
{
    model::Job job = ringJob(2);
    const model::ReadingId reading = addValue(job, 1, 1e-9);
    addValue(job, 2, 1e-9);
    EXPECT_FALSE(nextCall(walk(job, firstRound(job)), {}, {}).has_value());
    job.voids.push_back({reading, "background moved", "T. Tester", {}});
    const auto steps = walk(job, firstRound(job));
    EXPECT_TRUE(steps[0].wasVoid);
    EXPECT_EQ(nextCall(steps, {}, {})->number, 1);
}

TEST(Walk, TakesACorrectionForItsReading)
{
    model::Job job = ringJob(1);
    const model::ReadingId wrong = addValue(job, 1, 1e-4);
    const model::ReadingId right = addValue(job, 1, 1e-7);
    job.readings.back().corrects = wrong;
    const auto steps = walk(job, firstRound(job));
    ASSERT_TRUE(steps[0].isDone());
    EXPECT_EQ(steps[0].reading->id, right);
}

TEST(Walk, LeavesRetiredPointsOut)
{
    model::Job job = ringJob(3);
    job.sketch.points[1].retired = true;
    EXPECT_EQ(calledNumbers(job), (std::vector<int>{1, 3}));
}

TEST(Walk, IsEmptyForAnUnknownRound)
{
    EXPECT_TRUE(walk(ringJob(3), model::RoundId::create()).empty());
    EXPECT_FALSE(nextCall({}, {}, {}).has_value());
}

} // namespace
} // namespace sealwalk::analysis
