// SPDX-License-Identifier: GPL-3.0-or-later
// What later rounds make of what was known of a point, and the pressure rise that goes with it.
#include "core/analysis/job_balance.h"
#include "core/analysis/round_summary.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

using tests::addValue;
using tests::pointNumbered;

model::Reading inRound(const model::Job& job, int point, model::Outcome outcome)
{
    model::Reading reading;
    reading.id = model::ReadingId::create();
    reading.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
    reading.round = job.rounds.back().id;
    reading.point = pointNumbered(job, point);
    reading.at = job.readings.back().at;
    reading.at.utcMilliseconds += 60'000;
    reading.outcome = outcome;
    reading.reason = "behind the frame";
    return reading;
}

model::Round round(const model::Job& job, model::RoundKind kind)
{
    model::Round made = job.rounds.front();
    made.id = model::RoundId::create();
    made.number = static_cast<int>(job.rounds.size()) + 1;
    made.kind = kind;
    return made;
}

Finding findingOf(const model::Job& job, int point, Standing standing)
{
    for (const PointFinding& finding : summarise(job, model::TestObject(), standing))
        if (finding.number == point)
            return finding.finding;
    return Finding::NotSprayed;
}

// Regression: "not accessible" in a repeat took a leak over the limit out of the statement, as found and as
// left; in another condition it took the place of a point that was clear.
TEST(StandingOfAJob, AReasonForNoReadingReplacesNoAnswer)
{
    for (const model::RoundKind kind :
         {model::RoundKind::Repeat, model::RoundKind::AfterRepair, model::RoundKind::Condition})
        for (const model::Outcome outcome : {model::Outcome::NotAccessible, model::Outcome::NotTested}) {
            model::Job job = tests::ringJob(4);
            tests::calibrate(job);
            addValue(job, 2, 5e-6);
            addValue(job, 4, 1e-10);
            job.readings.back().outcome = model::Outcome::NoResponse;
            job.readings.back().peak.reset();
            const Finding leak = findingOf(job, 2, Standing::AsLeft);
            const Finding quiet = findingOf(job, 4, Standing::AsLeft);
            ASSERT_EQ(leak, Finding::Leak);
            job.rounds.push_back(round(job, kind));
            for (const int point : {1, 2, 4})
                job.readings.push_back(inRound(job, point, outcome));
            for (const Standing standing : {Standing::AsFound, Standing::AsLeft}) {
                EXPECT_EQ(findingOf(job, 2, standing), leak) << model::name(kind);
                EXPECT_EQ(findingOf(job, 4, standing), quiet) << model::name(kind);
            }
            // Of a point nothing is known of, the reason is better than nothing.
            EXPECT_EQ(findingOf(job, 1, Standing::AsLeft),
                      outcome == model::Outcome::NotAccessible ? Finding::NotAccessible : Finding::NotTested);
        }
}

// Property: any answer replaces a reason for having none.
TEST(StandingOfAJob, AnAnswerReplacesAReasonForNone)
{
    model::Job job = tests::ringJob(2);
    tests::calibrate(job);
    addValue(job, 1, 1e-10);
    job.readings.push_back(inRound(job, 2, model::Outcome::NotAccessible));
    EXPECT_EQ(findingOf(job, 2, Standing::AsLeft), Finding::NotAccessible);
    job.rounds.push_back(round(job, model::RoundKind::Condition));
    job.readings.push_back(inRound(job, 2, model::Outcome::NoResponse));
    EXPECT_NE(findingOf(job, 2, Standing::AsLeft), Finding::NotAccessible);
}

// Regression: sign-off judged the last record entered, Judge and report the one of the round in view.
TEST(StandingOfAJob, OnePressureRiseGoesWithAStanding)
{
    model::Job job = tests::ringJob(2);
    EXPECT_EQ(riseTestFor(job, Standing::AsLeft), nullptr);
    for (const int hour : {3, 1, 2}) { // not in the order of time
        model::RiseTest test;
        test.id = model::RiseTestId::create();
        test.at.utcMilliseconds = 3'600'000LL * hour;
        job.riseTests.push_back(test);
    }
    EXPECT_EQ(riseTestFor(job, Standing::AsFound), &job.riseTests[0]);
    EXPECT_EQ(riseTestFor(job, Standing::AsLeft), &job.riseTests[0]) << "nothing was repaired";
    model::Repair repair;
    repair.at.utcMilliseconds = 3'600'000LL * 2 + 1;
    job.repairs.push_back(repair);
    EXPECT_EQ(riseTestFor(job, Standing::AsFound), &job.riseTests[2]);
    EXPECT_EQ(riseTestFor(job, Standing::AsLeft), &job.riseTests[0]);
    repair.at.utcMilliseconds = 3'600'000LL * 4;
    job.repairs.push_back(repair);
    EXPECT_EQ(riseTestFor(job, Standing::AsLeft), nullptr) << "not measured since the last repair";
}

} // namespace
} // namespace sealwalk::analysis
