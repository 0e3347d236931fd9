// SPDX-License-Identifier: GPL-3.0-or-later
// What the review says of several rounds, set-ups and checks: no more than the record carries.
#include "tests/core/analysis/reviewed_job.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace sealwalk::analysis {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using tests::pointNumbered;

constexpr std::int64_t kMinute = 60'000;

/// The point is repaired after the last reading, with a round of its own.
void repair(model::Job& job, int point)
{
    model::Repair made;
    made.id = model::RepairId::create();
    made.points = {pointNumbered(job, point)};
    made.at = job.readings.back().at;
    made.at.utcMilliseconds += kMinute;
    model::Round round;
    round.id = model::RoundId::create();
    round.number = static_cast<int>(job.rounds.size()) + 1;
    round.kind = model::RoundKind::AfterRepair;
    round.repair = made.id;
    round.points = made.points;
    round.opened = made.at;
    job.repairs.push_back(made);
    job.rounds.push_back(round);
}

/// No response in the last round, and the last check after it.
model::Reading& sprayAgain(model::Job& job, int point)
{
    model::Reading reading = job.readings.back();
    reading.id = model::ReadingId::create();
    reading.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
    reading.round = job.rounds.back().id;
    reading.point = pointNumbered(job, point);
    reading.at.utcMilliseconds += 2 * kMinute;
    reading.outcome = model::Outcome::NoResponse;
    reading.peak.reset();
    reading.delay.reset();
    reading.dwell = seconds(8.0);
    job.readings.push_back(reading);
    job.calibrations.back().at.utcMilliseconds = reading.at.utcMilliseconds + kMinute;
    return job.readings.back();
}

model::Reading& answers(model::Job& job, int point, double peak)
{
    model::Reading& reading = job.readings[static_cast<std::size_t>(point) - 1];
    reading.outcome = model::Outcome::Value;
    reading.peak = millibarLitresPerSecond(peak);
    return reading;
}

// Regression: a hose that answered once, over the limit, and was repaired went as "answered twice".
TEST(ReviewOfRecord, WhatAnsweredOnceBeforeItsRepairIsSaid)
{
    model::Job job = goodJob();
    answers(job, 2, 3e-6);
    repair(job, 2);
    EXPECT_EQ(check(job, "confirmed").state, CheckState::NeedsWord) << "not sprayed again yet";
    sprayAgain(job, 2);
    const ReviewCheck once = check(job, "confirmed");
    EXPECT_EQ(once.state, CheckState::InOrder) << once.answer;
    EXPECT_THAT(once.answer, HasSubstr("repaired and sprayed again"));
    EXPECT_THAT(once.answer, HasSubstr("point 2"));

    job.readings[1].confirmed = true;
    EXPECT_THAT(check(job, "confirmed").answer, Not(HasSubstr("point 2")));
}

// Regression: an answer over the limit that a later round did not give again was forgotten.
TEST(ReviewOfRecord, WhatDidNotAnswerAgainIsNotConfirmed)
{
    model::Job job = goodJob();
    answers(job, 3, 3e-6);
    model::Round again = job.rounds.front();
    again.id = model::RoundId::create();
    again.number = 2;
    again.kind = model::RoundKind::Repeat;
    job.rounds.push_back(again);
    sprayAgain(job, 3);
    const ReviewCheck open = check(job, "confirmed");
    EXPECT_EQ(open.state, CheckState::NeedsWord);
    EXPECT_THAT(open.answer, HasSubstr("point 3"));

    job.judgements.push_back({model::JudgementId::create(),
                              pointNumbered(job, 3),
                              job.rounds.front().id,
                              "other source",
                              "within",
                              "hose clamp",
                              "Brook",
                              {},
                              {}});
    EXPECT_EQ(check(job, "confirmed").state, CheckState::InOrder) << "judged";
}

TEST(ReviewOfRecord, NothingOverTheLimitIsNotCalledConfirmed)
{
    EXPECT_EQ(check(goodJob(), "confirmed").answer, "No response over the limit.");
}

// Regression: with the foreline throttled between two checks "before", 0.4, 0.8 and 0.788 were "3 checks,
// steady."
TEST(ReviewOfRecord, AStepBetweenChecksIsNamed)
{
    model::Job job = goodJob();
    model::Calibration first = tests::systemCheck(job.calibrations.front().at, 1.0 / 0.4);
    first.leak.certificate = "C-1";
    first.at.utcMilliseconds -= 29 * kMinute;
    first.leak.certificateDate = first.at;
    job.calibrations.front().leak.value = millibarLitresPerSecond(1e-7 / 0.8);
    job.calibrations.back().leak.value = millibarLitresPerSecond(1e-7 / 0.788);
    job.calibrations.insert(job.calibrations.begin(), first);
    const ReviewCheck closed = check(job, "calibration");
    EXPECT_EQ(closed.state, CheckState::InOrder) << closed.answer;
    EXPECT_THAT(closed.answer, HasSubstr("factor 0.8 ("));
    EXPECT_THAT(closed.answer, HasSubstr("and 0.788 ("));
    EXPECT_THAT(closed.answer, HasSubstr("from 0.4 to 0.8 between"));
    EXPECT_THAT(closed.answer, HasSubstr("No reading that counts"));
    const auto views = checks(job);
    ASSERT_EQ(views.size(), 3u);
    EXPECT_FALSE(views[1].change.has_value());
    ASSERT_TRUE(views[1].step.has_value());
    EXPECT_NEAR(views[1].step->change, 1.0, 1e-6);

    // The first two points were read before the step: nothing closes their set-up.
    for (const std::size_t i : {0u, 1u})
        job.readings[i].at.utcMilliseconds = first.at.utcMilliseconds + kMinute;
    const ReviewCheck open = check(job, "calibration");
    EXPECT_EQ(open.state, CheckState::NeedsWord) << open.answer;
    EXPECT_THAT(open.answer, HasSubstr("points 1 and 2"));
    EXPECT_THAT(open.answer, HasSubstr("0.4"));
}

// Property: a change that widens the ranges is not called steady.
TEST(ReviewOfRecord, AFactorThatMovedIsNotCalledSteady)
{
    model::Job job = goodJob();
    EXPECT_THAT(check(job, "calibration").answer, HasSubstr("agree"));
    job.calibrations.back().shown = millibarLitresPerSecond(0.8e-7);
    const ReviewCheck moved = check(job, "calibration");
    EXPECT_EQ(moved.state, CheckState::InOrder);
    EXPECT_THAT(moved.answer, Not(HasSubstr("agree")));
    EXPECT_THAT(moved.answer, HasSubstr("widens"));
}

// Regression: what was sprayed after the last check was as good as bracketed.
TEST(ReviewOfRecord, ReadingsAfterTheLastCheckAreNamed)
{
    model::Job job = goodJob();
    job.calibrations.back().at.utcMilliseconds = job.readings[2].at.utcMilliseconds + 1;
    job.calibrations.back().leak.certificateDate = job.calibrations.front().at;
    const ReviewCheck open = check(job, "calibration");
    EXPECT_EQ(open.state, CheckState::NeedsWord);
    EXPECT_THAT(open.answer, HasSubstr("point 4"));
}

// Regression: an hour of pressure rise, entered nine minutes after the job began and a minute after the last
// spray, was taken as it stood.
TEST(ReviewOfRecord, APressureRiseBesideItsTimesIsAskedAbout)
{
    model::Job job = goodJob();
    model::RiseTest rise;
    rise.at = job.readings.front().at;
    for (int minute = 0; minute <= 60; ++minute) {
        rise.times.push_back(60.0 * minute);
        rise.pressures.push_back(1.0 + 0.01 * minute);
    }
    job.riseTests.push_back(rise);
    const auto says = [&](const Timestamp& now) {
        ReviewOptions with = options();
        with.now = now;
        std::string all;
        for (const ReviewMatter& matter : check(job, "balance", with).matters) {
            EXPECT_EQ(matter.state, CheckState::NeedsWord);
            all += matter.says + '\n';
        }
        return all;
    };
    Timestamp now = job.readings.back().at;
    EXPECT_THAT(says(now), HasSubstr("would have ended after now"));
    EXPECT_THAT(says(now), HasSubstr("Helium was sprayed during the pressure rise of"));
    EXPECT_THAT(says(now), HasSubstr("points 1, 2, 3 and 4"));
    now.utcMilliseconds += 90 * kMinute;
    EXPECT_THAT(says(now), Not(HasSubstr("would have ended")));
    job.riseTests.back().at.utcMilliseconds += 10 * kMinute;
    EXPECT_THAT(says(now), Not(HasSubstr("Helium was sprayed")));
    job.riseTests.back().at.utcMilliseconds = job.opened.utcMilliseconds - 61 * kMinute;
    EXPECT_THAT(says(now), HasSubstr("began before the job was opened"));
}

} // namespace
} // namespace sealwalk::analysis
