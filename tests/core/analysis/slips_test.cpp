// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/slips.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

using tests::addValue;
using tests::pointNumbered;

std::optional<std::string> slipAt(const model::Job& job, int point, double peak, double background = 1e-10)
{
    return slip(job, job.rounds.front().id, pointNumbered(job, point), millibarLitresPerSecond(peak),
                millibarLitresPerSecond(background));
}

TEST(Slip, LetsAnOrdinaryValuePass)
{
    model::Job job = tests::ringJob(4);
    addValue(job, 1, 2e-9);
    EXPECT_FALSE(slipAt(job, 2, 5e-8).has_value());
}

// Regression: on a joint with one point a mistyped decade or three was stored without a question.
TEST(Slip, AsksAboutAThousandTimesTheRoundWhereAJointHasOnePoint)
{
    model::Job job = tests::ringJob(5);
    for (std::size_t i = 0; i < job.sketch.points.size(); ++i) { // each on a joint of its own
        model::Joint joint = job.sketch.joints.front();
        joint.id = model::JointId::create();
        job.sketch.points[i].joint = joint.id;
        job.sketch.joints.push_back(joint);
    }
    addValue(job, 1, 3e-8);
    addValue(job, 2, 2e-8);
    EXPECT_FALSE(slipAt(job, 4, 3e-5).has_value()) << "two are no rule";
    addValue(job, 3, 4e-8);
    const auto asked = slipAt(job, 4, 3e-5);
    ASSERT_TRUE(asked.has_value());
    EXPECT_NE(asked->find("usual in this round"), std::string::npos) << *asked;
    EXPECT_FALSE(slipAt(job, 4, 9e-6).has_value());
}

TEST(Slip, AsksAboutAThousandTimesTheNeighbours)
{
    model::Job job = tests::ringJob(4);
    addValue(job, 1, 3e-8);
    addValue(job, 2, 4e-8);
    EXPECT_TRUE(slipAt(job, 3, 4e-5).has_value());
    EXPECT_TRUE(slipAt(job, 3, 2e-11, 1e-11).has_value());
    EXPECT_FALSE(slipAt(job, 3, 2e-5).has_value());
    addValue(job, 4, 1e-5); // one warm neighbour makes a hot one believable
    EXPECT_FALSE(slipAt(job, 3, 4e-5).has_value());
}

TEST(Slip, AsksWhenAPointJumpsByThreeDecades)
{
    model::Job job = tests::ringJob(1);
    addValue(job, 1, 3e-8);
    EXPECT_TRUE(slipAt(job, 1, 3e-5).has_value());
    EXPECT_FALSE(slipAt(job, 1, 3e-7).has_value());
}

// Regression: who corrected a mistyped exponent was asked whether it was right, against the one mistyped.
TEST(Slip, ComparesNothingWithWhatIsCorrected)
{
    model::Job job = tests::ringJob(1);
    addValue(job, 1, 3e-5);
    const model::ReadingId mistyped = job.readings.back().id;
    const auto corrected = [&](double peak) {
        return slip(job, job.rounds.front().id, pointNumbered(job, 1), millibarLitresPerSecond(peak), {},
                    mistyped);
    };
    EXPECT_FALSE(corrected(3e-8).has_value());
    addValue(job, 1, 3e-8);
    EXPECT_TRUE(corrected(3e-5).has_value()) << "the one that stands";
}

TEST(Slip, AsksWhenThePeakIsBelowTheBackgroundOrOutOfRange)
{
    model::Job job = tests::ringJob(1);
    EXPECT_TRUE(slipAt(job, 1, 1e-10, 2e-10).has_value());
    job.setup.rangeTop = millibarLitresPerSecond(1e-4);
    job.setup.rangeBottom = millibarLitresPerSecond(1e-11);
    EXPECT_TRUE(slipAt(job, 1, 2e-4).has_value());
    EXPECT_TRUE(slipAt(job, 1, 5e-12, 1e-12).has_value());
    EXPECT_FALSE(slipAt(job, 1, 5e-9).has_value());
}

TEST(Gaps, NamesWhatAReviewerWouldMiss)
{
    model::Reading reading;
    reading.peak = millibarLitresPerSecond(1e-9);
    EXPECT_EQ(gapsOf(reading, seconds(2.0)).size(), 2u);
    reading.background = millibarLitresPerSecond(1e-10);
    reading.dwell = seconds(1.0);
    EXPECT_EQ(gapsOf(reading, seconds(2.0)).size(), 1u);
    reading.dwell = seconds(6.0);
    EXPECT_TRUE(gapsOf(reading, seconds(2.0)).empty());
    model::Reading unreachable;
    unreachable.outcome = model::Outcome::NotAccessible;
    EXPECT_TRUE(gapsOf(unreachable, seconds(2.0)).empty());
}

} // namespace
} // namespace sealwalk::analysis
