// SPDX-License-Identifier: GPL-3.0-or-later
// What several rounds make of a point, and which rounds were left before their end.
#include "core/analysis/finding_words.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/repair_progress.h"
#include "core/analysis/repair_words.h"
#include "core/analysis/round_summary.h"
#include "core/analysis/walk.h"
#include "tests/support/jobs.h"
#include "tests/support/rise_sets.h"

#include <gmock/gmock.h>

namespace sealwalk::analysis {
namespace {

using tests::addValue;
using tests::pointNumbered;

/// Six points; the limit is 1e-9, what can be seen is far below it.
class Rounds : public ::testing::Test
{
protected:
    Rounds()
        : job(tests::ringJob(6))
    {
        object.name = "Vessel";
        object.volume = litres(100.0);
        job.setup.pointLimit = millibarLitresPerSecond(1e-9);
    }

    void addQuiet(int point)
    {
        addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
    }

    model::RoundId addRound(model::RoundKind kind, std::vector<int> numbers)
    {
        model::Round round;
        round.id = model::RoundId::create();
        round.number = static_cast<int>(job.rounds.size()) + 1;
        round.kind = kind;
        round.opened = job.readings.back().at;
        for (const int number : numbers)
            round.points.push_back(pointNumbered(job, number));
        job.rounds.push_back(round);
        return round.id;
    }

    model::Repair& addRepair(int number)
    {
        model::Repair repair;
        repair.id = model::RepairId::create();
        repair.at = job.readings.back().at;
        repair.at.utcMilliseconds += 1;
        repair.points = {pointNumbered(job, number)};
        job.repairs.push_back(repair);
        return job.repairs.back();
    }

    [[nodiscard]] PointFinding found(Standing standing, int number) const
    {
        for (const PointFinding& finding : summarise(job, object, standing))
            if (finding.number == number)
                return finding;
        ADD_FAILURE() << "no finding at " << number;
        return {};
    }

    model::Job job;
    model::TestObject object;
};

// Regression: a leak first met in the round after a repair was in no map and no table "as found".
TEST_F(Rounds, APointFirstSprayedAfterARepairElsewhereIsFoundThere)
{
    for (int point = 1; point <= 3; ++point)
        addQuiet(point);
    tests::calibrate(job);
    addRepair(1);
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1, 4});
    addValue(job, 4, 5e-8);
    job.readings.back().round = after;
    EXPECT_EQ(found(Standing::AsFound, 4).finding, Finding::Leak);
    EXPECT_EQ(found(Standing::AsFound, 4).verdict, Verdict::Over);
    EXPECT_EQ(found(Standing::AsFound, 5).finding, Finding::NotSprayed);
}

TEST_F(Rounds, ARepairedPointThatWasNeverSprayedBeforeIsNotAsFound)
{
    for (int point = 1; point <= 3; ++point)
        addQuiet(point);
    tests::calibrate(job);
    addRepair(4);
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {4});
    addQuiet(4);
    job.readings.back().round = after;
    EXPECT_EQ(found(Standing::AsFound, 4).finding, Finding::NotSprayed);
    EXPECT_NE(found(Standing::AsLeft, 4).finding, Finding::NotSprayed);
}

// Regression: a round that was opened and never walked stood in the report as the re-test.
TEST_F(Rounds, OnlyASprayedRoundProvesARepair)
{
    addValue(job, 1, 5e-8);
    tests::calibrate(job);
    const model::Repair repair = addRepair(1);
    addRound(model::RoundKind::AfterRepair, {1});
    EXPECT_EQ(provingRound(job, repair), nullptr);
    EXPECT_TRUE(found(Standing::AsLeft, 1).awaitsRetest);
    const model::RoundId walked = addRound(model::RoundKind::AfterRepair, {1});
    addQuiet(1);
    job.readings.back().round = walked;
    ASSERT_NE(provingRound(job, repair), nullptr);
    EXPECT_EQ(provingRound(job, repair)->id, walked);
    EXPECT_FALSE(found(Standing::AsLeft, 1).awaitsRetest);
}

// Regression: a second repair of a point left it "within" by the answer of before.
TEST_F(Rounds, APointRepairedAgainAwaitsItsRetestAgain)
{
    addValue(job, 1, 5e-8);
    tests::calibrate(job);
    addRepair(1);
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1});
    addQuiet(1);
    job.readings.back().round = after;
    addRepair(1);
    EXPECT_TRUE(found(Standing::AsLeft, 1).awaitsRetest);
}

// Regression: answers that agreed to the last digit claimed to see ten times less than the watched
// background.
TEST_F(Rounds, AQuietPointHidesAtLeastWhatTheBackgroundHides)
{
    for (int point = 1; point <= 6; ++point)
        addQuiet(point);
    tests::calibrate(job);
    for (std::size_t i = 0; i < job.backgrounds.front().values.size(); ++i) // a noisy watch: quiet by luck
        job.backgrounds.front().values[i] = millibarLitresPerSecond(1e-10 + (i % 2 == 0 ? 8e-11 : -8e-11));
    for (int number = 1; number <= 6; ++number) {
        const PointFinding finding = found(Standing::AsLeft, number);
        ASSERT_TRUE(finding.smallestDetectable.has_value());
        ASSERT_TRUE(finding.bound.has_value());
        EXPECT_GE(*finding.bound, *finding.smallestDetectable) << number;
        const std::string seen = rateWords(*finding.smallestDetectable, job.setup.unit);
        EXPECT_THAT(finding.because.front(), ::testing::HasSubstr(seen)) << number;
    }
}

// Regression: a repair whose point gave no verdict when it was sprayed again was called proven.
TEST_F(Rounds, ARepairIsProvenOnlyByAVerdict)
{
    addQuiet(1);
    addRepair(1);
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1});
    addQuiet(1);
    job.readings.back().round = after;
    const model::Repair& repair = job.repairs.front();
    const Timestamp now{job.readings.back().at.utcMilliseconds + 60'000, 0};
    model::RiseTest rise;
    rise.at = now;
    job.riseTests.push_back(rise);
    PointFinding finding;
    finding.point = pointNumbered(job, 1);
    finding.finding = Finding::Leak;
    const auto step = [&](Verdict verdict, bool conceded = false) {
        finding.verdict = verdict;
        finding.concession = conceded;
        return progressOf(job, repair, std::span(&finding, 1), now).step;
    };
    EXPECT_EQ(step(Verdict::Within), RepairStep::Proven);
    EXPECT_EQ(step(Verdict::Over), RepairStep::StillLeaks);
    EXPECT_EQ(step(Verdict::CannotSay), RepairStep::CannotSay);
    EXPECT_EQ(step(Verdict::CannotSay, true), RepairStep::Proven);
}

// Regression: a total that could not be told from outgassing proved every repair, those of the detector's
// hose too.
TEST_F(Rounds, WhatThePressureRiseProvesIsSaid)
{
    addQuiet(1);
    addRepair(1);
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1});
    addQuiet(1);
    job.readings.back().round = after;
    const model::Repair& repair = job.repairs.front();
    const Timestamp now{job.readings.back().at.utcMilliseconds + 60'000, 0};
    const auto words = [&] { return progressWords(progressOf(job, repair, {}, now), repair); };
    EXPECT_EQ(words(), "sprayed again; no pressure rise since");
    model::RiseTest rise;
    rise.at = now;
    job.riseTests.push_back(rise);
    EXPECT_EQ(words(), "proven: sprayed again; the pressure rise gives no total");
    const auto record = [&](const tests::RiseSet& set) {
        const RiseRecord made = tests::recordOf(set);
        job.riseTests.back().times = made.time;
        job.riseTests.back().pressures = made.pressure;
    };
    record(tests::kD1);
    EXPECT_EQ(words(), "proven: sprayed again, total measured");
    record(tests::kD4);
    EXPECT_EQ(words(), "proven: sprayed again; the total could not be told from outgassing");
    job.sketch.joints.front().isSetup = true;
    EXPECT_EQ(words(), "proven: sprayed again; no part of the object's total");
    job.riseTests.clear();
    EXPECT_EQ(words(), "proven: sprayed again; no part of the object's total") << "none is asked for";
}

// Regression: a filler sprayed seconds after it was put on, hours before it had cured, closed its repair.
TEST_F(Rounds, ASprayBeforeTheRepairHasCuredProvesNothing)
{
    addValue(job, 1, 5e-8);
    tests::calibrate(job);
    addRepair(1).disturbed = {pointNumbered(job, 2)};
    model::Repair& repair = job.repairs.front();
    repair.sprayableFrom = Timestamp{repair.at.utcMilliseconds + 24 * 3'600'000, 0};
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1, 2});
    for (const int point : {1, 2}) {
        addQuiet(point);
        job.readings.back().round = after;
    }
    const auto progress = [&](const Timestamp& now) { return progressOf(job, repair, {}, now); };
    const Timestamp early = job.readings.back().at;
    EXPECT_EQ(progress(early).step, RepairStep::Cures);
    EXPECT_TRUE(progress(early).sprayedTooEarly);
    EXPECT_EQ(progress(early).toSpray, repair.points) << "what was only disturbed need not cure";
    EXPECT_THAT(progressWords(progress(early), repair), ::testing::EndsWith("; sprayed too early"));
    EXPECT_EQ(progress(*repair.sprayableFrom).step, RepairStep::AwaitsRetest);
    EXPECT_EQ(provingRound(job, repair), nullptr);
    EXPECT_TRUE(found(Standing::AsLeft, 1).awaitsRetest);
    addQuiet(1);
    job.readings.back().round = after;
    job.readings.back().at = *repair.sprayableFrom;
    EXPECT_EQ(progress(*repair.sprayableFrom).step, RepairStep::AwaitsTotal);
    EXPECT_FALSE(progress(*repair.sprayableFrom).sprayedTooEarly);
    EXPECT_FALSE(found(Standing::AsLeft, 1).awaitsRetest);
}

// Regression: only the very point warned, though the whole joint is tightened.
TEST_F(Rounds, AJointTightenedAnywhereIsTightenedAgain)
{
    addQuiet(1);
    addRepair(1).action = "re-tighten";
    const auto isAgain = [&](int number, const char* action) {
        return isTightenedAgain(job.sketch, job.repairs, {pointNumbered(job, number)}, action);
    };
    EXPECT_TRUE(isAgain(1, "re-tighten"));
    EXPECT_TRUE(isAgain(4, "re-tighten"));
    EXPECT_FALSE(isAgain(4, "replace seal"));
    job.sketch.points.back().joint = model::JointId::create();
    EXPECT_FALSE(isAgain(job.sketch.points.back().number, "re-tighten"));
}

// Regression: a repair in the middle of a round left no way back to it.
TEST_F(Rounds, ARoundLeftBeforeItsEndStaysOpen)
{
    addQuiet(1);
    addQuiet(2);
    addRepair(1);
    const model::RoundId first = job.rounds.front().id;
    const model::RoundId after = addRound(model::RoundKind::AfterRepair, {1, 3});
    auto open = openRounds(job);
    ASSERT_EQ(open.size(), 2u);
    EXPECT_EQ(open[0].round->id, after);
    EXPECT_EQ(open[0].left, 2);
    EXPECT_EQ(open[1].round->id, first);
    EXPECT_EQ(open[1].left, 4); // 3 to 6
    for (const int number : {1, 3}) {
        addQuiet(number);
        job.readings.back().round = after;
    }
    open = openRounds(job);
    ASSERT_EQ(open.size(), 1u);
    EXPECT_EQ(open[0].left, 3); // 3 was answered in the later round
    // Regression: gone back to, the round began with the point that had just been sprayed.
    const auto steps = walk(job, first);
    EXPECT_TRUE(steps[2].isReadLater);
    EXPECT_EQ(steps[2].reading, nullptr) << "no reading of this round";
    EXPECT_EQ(nextCall(steps, {}, {})->number, 4);
    EXPECT_FALSE(steps[0].isReadLater) << "it has its own";
    EXPECT_EQ(roundCalling(job, pointNumbered(job, 5), after), first);
    EXPECT_EQ(roundCalling(job, pointNumbered(job, 1), after), after);
}

} // namespace
} // namespace sealwalk::analysis
