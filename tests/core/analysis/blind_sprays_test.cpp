// SPDX-License-Identifier: GPL-3.0-or-later
// A spray shorter than the delay with which its point had answered proves nothing, nor does one nobody timed.
#include "core/analysis/earlier_delay.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_plan.h"
#include "core/analysis/repair_progress.h"
#include "tests/core/analysis/reviewed_job.h"

#include <gmock/gmock.h>

#include <cmath>

namespace sealwalk::analysis {
namespace {

using ::testing::HasSubstr;
using tests::pointNumbered;

constexpr std::int64_t kMinute = 60'000;

/// Point 2 of the good job answered 12 s after the helium (response 2 s) and was repaired.
model::Job repairedJob()
{
    model::Job job = goodJob();
    model::Reading& late = job.readings[1];
    late.outcome = model::Outcome::Value;
    late.peak = millibarLitresPerSecond(3e-7);
    late.delay = seconds(12.0);
    late.dwell = seconds(20.0);
    model::Repair repair;
    repair.id = model::RepairId::create();
    repair.points = {pointNumbered(job, 2)};
    repair.at = job.readings.back().at;
    repair.at.utcMilliseconds += kMinute;
    model::Round round;
    round.id = model::RoundId::create();
    round.number = 2;
    round.kind = model::RoundKind::AfterRepair;
    round.repair = repair.id;
    round.points = repair.points;
    round.opened = repair.at;
    job.repairs.push_back(repair);
    job.rounds.push_back(round);
    return job;
}

void sprayAgain(model::Job& job, std::optional<Duration> dwell)
{
    model::Reading reading = job.readings.front();
    reading.id = model::ReadingId::create();
    reading.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
    reading.round = job.rounds.back().id;
    reading.point = pointNumbered(job, 2);
    reading.at = job.readings.back().at;
    reading.at.utcMilliseconds += 2 * kMinute;
    reading.dwell = dwell;
    job.readings.push_back(reading);
}

PointFinding secondAsLeft(const model::Job& job)
{
    return summarise(job, object(), Standing::AsLeft).at(1);
}

// Regression: a point that had answered after 12 s was clear, with a bound, after 9 s of helium.
TEST(BlindSprays, ShorterThanTheEarlierDelayProvesNothing)
{
    model::Job job = repairedJob();
    sprayAgain(job, seconds(9.0));
    const PointFinding blind = secondAsLeft(job);
    EXPECT_EQ(blind.finding, Finding::BelowDetectable);
    EXPECT_EQ(blind.verdict, Verdict::CannotSay);
    EXPECT_FALSE(blind.bound.has_value());
    ASSERT_FALSE(blind.because.empty());
    EXPECT_THAT(blind.because.front(), HasSubstr("answered 12 s after the helium"));
    const ReviewCheck whole = check(job, "whole");
    EXPECT_EQ(whole.state, CheckState::NeedsWord);
    EXPECT_THAT(whole.answer, HasSubstr("Sprayed 9.0 s, but it had answered after 12.0 s and needs 18.0 s"));
    const auto findings = summarise(job, object(), Standing::AsLeft);
    EXPECT_EQ(progressOf(job, job.repairs.front(), findings, Timestamp::now()).step, RepairStep::CannotSay);

    sprayAgain(job, seconds(18.0));
    const PointFinding seen = secondAsLeft(job);
    EXPECT_EQ(seen.finding, Finding::Clear) << "a long spray of the same round makes it good";
    EXPECT_TRUE(seen.bound.has_value());
    EXPECT_EQ(check(job, "whole").state, CheckState::InOrder);
}

// Property: what was left of the dwell after the delay is what the bound is for.
TEST(BlindSprays, TheBoundIsForWhatWasLeftOfTheDwell)
{
    const auto boundAfter = [](double dwell) {
        model::Job job = repairedJob();
        sprayAgain(job, seconds(dwell));
        return secondAsLeft(job).bound;
    };
    ASSERT_TRUE(boundAfter(14.0) && boundAfter(40.0));
    EXPECT_FALSE(boundAfter(12.2)) << "a tenth of the signal sizes nothing";
    // 2 s at a response of 2 s: 63 %; the drift of the quiet watch is none.
    EXPECT_NEAR(*boundAfter(14.0) / *boundAfter(40.0), 1.0 / 0.632, 0.03);
    model::Job prompt = repairedJob();
    prompt.readings[1].delay = seconds(1.0);
    sprayAgain(prompt, seconds(14.0));
    EXPECT_LT(*secondAsLeft(prompt).bound, *boundAfter(14.0)) << "a prompt answer costs nothing";
}

// Property: a short burst that tells permeation from a leak is given on purpose.
TEST(BlindSprays, ABurstAfterPermeationIsNoGap)
{
    model::Job job = goodJob();
    job.readings[1].outcome = model::Outcome::Value;
    job.readings[1].peak = millibarLitresPerSecond(3e-9);
    job.readings[1].delay = seconds(120.0);
    job.readings[1].dwell = seconds(180.0);
    const EarlierDelays delays(job, seconds(2.0));
    const SprayTiming timing = sprayTiming(job, object());
    const model::PointId point = pointNumbered(job, 2);
    EXPECT_EQ(delays.dwellAt(point, job.rounds.front().id, timing), timing.dwell);
    EXPECT_EQ(delays.dwellAt(point, model::RoundId::create(), timing), timing.dwell + seconds(120.0));
}

// Property: the plan and the dwell asked for give the helium time to arrive; elsewhere nothing changes.
TEST(BlindSprays, TheDwellAskedForIsLongerWhereAPointAnsweredLate)
{
    const model::Job job = repairedJob();
    const SprayTiming timing = sprayTiming(job, object());
    const EarlierDelays delays(job, timing.response);
    const model::RoundId round = job.rounds.back().id;
    EXPECT_EQ(delays.dwellAt(pointNumbered(job, 2), round, timing), timing.dwell + seconds(12.0));
    EXPECT_EQ(delays.dwellAt(pointNumbered(job, 1), round, timing), timing.dwell);
    const JobPlan plan = proposedPlan(job, object(), round);
    ASSERT_EQ(plan.order.size(), 1u);
    EXPECT_EQ(plan.order.front().dwell, timing.dwell + seconds(12.0));
    model::Job voided = job;
    voided.voids.push_back({job.readings[1].id, "drift", "T. Tester", {}});
    EXPECT_TRUE(EarlierDelays(voided, timing.response).isEmpty());
}

// Regression: a spray that nobody timed had a better bound than the timed ones beside it.
TEST(BlindSprays, AnUnknownDwellNeverGivesABetterBound)
{
    model::Job job = goodJob();
    const auto boundOfFirst = [&] {
        return correctedReading(job, object(), job.readings.front()).below.value();
    };
    job.readings.front().dwell.reset();
    const LeakRate untimed = boundOfFirst();
    EXPECT_THAT(correctedReading(job, object(), job.readings.front()).because.back(), HasSubstr("not timed"));
    for (const double dwell : {2.0, 4.0, 6.0, 60.0}) {
        job.readings.front().dwell = seconds(dwell);
        EXPECT_GE(untimed.si(), boundOfFirst().si() * (1.0 - 1e-9)) << dwell << " s";
    }
}

// Regression: with a response of 100 s a point where nobody started the clock was "clear, within", and one
// that was sprayed 4 s by the clock could not be said.
TEST(BlindSprays, UntimedOnASlowSystemProvesNoMoreThanAShortSpray)
{
    model::Job job = goodJob();
    job.setup.response = seconds(100.0);
    job.setup.pointLimit = millibarLitresPerSecond(1e-3); // far above all that could show
    model::Reading& first = job.readings.front();
    for (const std::optional<Duration> dwell : {std::optional(seconds(4.0)), std::optional<Duration>()}) {
        first.dwell = dwell;
        const CorrectedReading alone = correctedReading(job, object(), first);
        EXPECT_EQ(alone.verdict, Verdict::CannotSay);
        EXPECT_FALSE(alone.below.has_value());
        const PointFinding found =
            jobFindings(job, object(), job.rounds.front().id, Timestamp::now()).front();
        EXPECT_EQ(found.verdict, Verdict::CannotSay);
        EXPECT_EQ(found.finding, Finding::BelowDetectable);
    }
    first.dwell = seconds(300.0);
    EXPECT_EQ(correctedReading(job, object(), first).verdict, Verdict::Within);
    // Between: what would have shown is that of 3 s, and the shorter the response the better.
    first.dwell.reset();
    const auto bound = [&](double response) {
        job.setup.response = seconds(response);
        return correctedReading(job, object(), first).below.value_or(LeakRate()).si();
    };
    EXPECT_NEAR(bound(10.0) / bound(2.0), (1.0 - std::exp(-1.0)) / (1.0 - std::exp(-0.3)), 0.3);
}

// Property: a value read without a clock may be far from its height on a slow system, and is not passed for
// it; neither alone nor among the others.
TEST(BlindSprays, AnUntimedValueOfASlowSystemIsNotPassed)
{
    model::Job job = goodJob();
    model::Reading& first = job.readings.front();
    first.outcome = model::Outcome::Value;
    first.peak = millibarLitresPerSecond(1e-7);
    first.dwell.reset();
    job.setup.pointLimit = millibarLitresPerSecond(1e-6);
    const auto found = [&] {
        return jobFindings(job, object(), job.rounds.front().id, Timestamp::now()).front();
    };
    job.setup.response = seconds(1.0);
    const CorrectedReading fast = correctedReading(job, object(), first);
    EXPECT_EQ(fast.verdict, Verdict::Within);
    EXPECT_EQ(found().verdict, Verdict::Within);
    job.setup.response = seconds(100.0);
    const CorrectedReading slow = correctedReading(job, object(), first);
    EXPECT_EQ(slow.verdict, Verdict::CannotSay);
    EXPECT_FALSE(slow.conformance.has_value());
    ASSERT_TRUE(slow.high && fast.high);
    EXPECT_NEAR(slow.unseen, 1.0 / (1.0 - std::exp(-0.03)), 1e-6);
    EXPECT_THAT(slow.because.back(), HasSubstr("spray not timed: a leak 34 times as large"));
    EXPECT_EQ(found().verdict, Verdict::CannotSay);
    EXPECT_THAT(found().because, ::testing::Contains(HasSubstr("spray not timed: a leak 34 times as large")));
    first.peak = millibarLitresPerSecond(1e-5);
    EXPECT_EQ(correctedReading(job, object(), first).verdict, Verdict::Over) << "it is at least that";
    EXPECT_EQ(found().verdict, Verdict::Over);
}

} // namespace
} // namespace sealwalk::analysis
