// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/coater_jobs.h"

#include "core/base/contract.h"
#include "core/model/cautions.h"
#include "demo/history/coater_record.h"
#include "demo/history/spray_walk.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace sealwalk::demo {

using namespace model;

namespace {

constexpr double kOutgassing = 6e-4; // mbar

Job emptyJob(const TestObject& object, const Sketch& sketch, int number, const char* opened, Chance& chance)
{
    Job job;
    job.id = chance.id<JobId>();
    job.number = number;
    job.openedAs = number;
    job.object = object.id;
    job.opened = on(opened);
    job.setup = coaterSetup(object);
    constexpr double kQuarterOfAnHour = 900.0;
    for (const Caution& caution : cautions())
        job.setup.cautions.push_back(
            {std::string(caution.word), kTester, later(job.opened, kQuarterOfAnHour)});
    constexpr double kHalfAYear = 182.0 * 86400.0;
    job.setup.instruments = {{"detector", "LD-04", later(job.opened, kHalfAYear)},
                             {"gauge", "G-3, capacitance", later(job.opened, kHalfAYear)},
                             {"thermometer", "T-2", std::nullopt}};
    job.sketch = sketch;
    return job;
}

PointId point(const Job& job, int number)
{
    const TestPoint* found = job.sketch.pointNumbered(number);
    SEALWALK_EXPECT(found != nullptr);
    return found->id;
}

std::vector<PointId> points(const Job& job, const std::vector<int>& numbers)
{
    std::vector<PointId> ids;
    for (const int number : numbers)
        ids.push_back(point(job, number));
    return ids;
}

Round& openRound(Job& job, RoundKind kind, const Timestamp& at, std::vector<PointId> called, Chance& chance)
{
    Round round;
    round.id = chance.id<RoundId>();
    round.number = static_cast<int>(job.rounds.size()) + 1;
    round.kind = kind;
    round.points = std::move(called);
    round.by = kTester;
    round.opened = at;
    return job.rounds.emplace_back(round);
}

/// Sprays and then waits a little while, as one who writes does.
Reading& spray(SprayWalk& walk, const Spray& what)
{
    Reading& reading = walk.spray(what);
    constexpr double kWrites = 6.0; // s
    walk.rest(kWrites);
    return reading;
}

/// A bag over the window seal: long enough for helium to come through the rubber.
void bagWindow(SprayWalk& walk)
{
    Spray soak;
    soak.point = 27;
    soak.condition = Condition::Bagged;
    soak.dwell = 600.0;
    spray(walk, soak).remark = "rises slowly and goes on rising; a short burst gets no answer";
    walk.rest(300.0);
}

std::vector<int> numbersOf(const Job& job)
{
    std::vector<int> numbers;
    for (const TestPoint* p : job.sketch.activePoints())
        numbers.push_back(p->number);
    return numbers;
}

ReviewEntry turn(ReviewStep step, const char* by, const char* at, const char* text, Chance& chance)
{
    ReviewEntry entry;
    entry.id = chance.id<ReviewId>();
    entry.step = step;
    entry.by = by;
    entry.at = on(at);
    entry.text = text;
    return entry;
}

void walkAll2025(SprayWalk& walk, const Job& job)
{
    for (const int number : numbersOf(job)) {
        if (number == 36) {
            walk.note(number, Outcome::NotAccessible, "behind the pump frame");
            continue;
        }
        spray(walk, {number});
        if (number == 27)
            bagWindow(walk);
    }
}

Repair portSeal(const Job& job, Chance& chance)
{
    Repair repair;
    repair.id = chance.id<RepairId>();
    repair.points = points(job, {40});
    repair.disturbed = points(job, {38, 39, 41});
    repair.defect = "flat, with a nick at 6 o'clock";
    repair.action = "replace seal";
    repair.material = "O-ring FKM, new centring ring";
    repair.by = kTester;
    repair.at = on("2025-03-12T09:20:00+01:00");
    repair.sprayableFrom = on("2025-03-12T09:20:00+01:00");
    return repair;
}

Repair weldSealant(const Job& job, Chance& chance)
{
    Repair repair;
    repair.id = chance.id<RepairId>();
    repair.points = points(job, {56});
    repair.disturbed = points(job, {55, 57});
    repair.defect = "pore in the seam";
    repair.action = "vacuum sealant from outside";
    repair.material = "sealant, two coats";
    repair.permanent = false;
    repair.owner = "the workshop's welder (invented)";
    repair.due = on("2025-09-30T12:00:00+02:00");
    repair.by = kTester;
    repair.at = on("2025-03-12T10:05:00+01:00");
    repair.sprayableFrom = on("2025-03-13T10:05:00+01:00");
    repair.note = "re-weld at the shutdown";
    return repair;
}

/// What the reviewer missed, given as left out with its reason.
void noteNotFlexed(Job& job)
{
    constexpr std::uint64_t kOwnSeed = 20250313; // the draws of all that follows stay as they are
    Chance own(kOwnSeed);
    for (const int number : {60, 61, 62}) {
        Reading reading;
        reading.id = own.id<ReadingId>();
        reading.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
        reading.round = job.rounds.front().id;
        reading.point = job.sketch.pointNumbered(number)->id;
        reading.condition = Condition::Flexed;
        reading.outcome = Outcome::NotTested;
        reading.reason = "pump stand bolted down";
        reading.at = on("2025-03-13T14:20:00+01:00");
        reading.by = kTester;
        job.readings.push_back(std::move(reading));
    }
}

/// The reviewer's word on each question that wants one before a signature.
void giveWords(Job& job)
{
    constexpr std::uint64_t kOwnSeed = 1502;
    Chance own(kOwnSeed);
    constexpr std::pair<const char*, const char*> kWords[] = {
        {"coverage", "36 is behind the pump frame; the hose is to be flexed next time."},
        {"kinds", "The hose to the detector was capped and checked before."},
        {"outliers", "40 answered so on the day; its seal was replaced."},
        {"claim", "48 stays open: watched at the next check."},
    };
    for (const auto& [check, text] : kWords) {
        job.review.push_back(turn(ReviewStep::Remark, kReviewer, "2025-03-13T14:50:00+01:00", text, own));
        job.review.back().check = check;
    }
}

void review2025(Job& job, Chance& chance)
{
    job.review.push_back(
        turn(ReviewStep::Submitted, kTester, "2025-03-13T12:10:00+01:00", "Ready for review.", chance));
    job.review.push_back(turn(ReviewStep::Returned, kReviewer, "2025-03-13T14:02:00+01:00",
                              "Why was the hose sprayed at rest only?", chance));
    noteNotFlexed(job);
    job.review.push_back(
        turn(ReviewStep::Answer, kTester, "2025-03-13T14:30:00+01:00",
             "It could not be moved this time, the pump stand was bolted down. To be flexed at "
             "the next check.",
             chance));
    job.review.push_back(
        turn(ReviewStep::Submitted, kTester, "2025-03-13T14:31:00+01:00", "Answered.", chance));
    giveWords(job);
    job.state = JobState::Submitted;
}

} // namespace

Job jobOf2025(const TestObject& object, const Sketch& sketch, Chance& chance)
{
    Job job = emptyJob(object, sketch, 118, "2025-03-11T08:10:00+01:00", chance);
    job.setup.purpose = "yearly check";
    job.setup.lastTouched = "port B opened for cleaning, 2025-02-20";
    DetectorDay day;
    day.factor = 1.58;
    day.noise = 3.9e-10;
    day.base = 1.2e-9;
    Detector detector(day, chance);
    const ReferenceLeak leak = referenceLeak("RL-11/2024", "2024-10-20", 5.0e-8);
    Rise rise{airThrough(leaksOf2025(sketch)), kOutgassing, 240.0};
    job.riseTests.push_back(
        riseTest(object, rise, TestMoment::AsFound, on("2025-03-11T08:30:00+01:00"), chance));
    job.calibrations.push_back(systemCheck(sketch, leak, CalibrationMoment::Before,
                                           on("2025-03-11T09:15:00+01:00"), detector, chance));
    job.backgrounds.push_back(watch(on("2025-03-11T09:22:00+01:00"), detector, chance));

    openRound(job, RoundKind::AsFound, on("2025-03-11T09:30:00+01:00"), points(job, numbersOf(job)), chance);
    SprayWalk walk(job, leaksOf2025(sketch), detector, chance);
    walk.startRound(job.rounds[0].id, on("2025-03-11T09:31:00+01:00"), kTester);
    walkAll2025(walk, job);
    job.rounds[0].closed = walk.now();

    job.repairs = {portSeal(job, chance), weldSealant(job, chance)};
    Round& again = openRound(job, RoundKind::AfterRepair, on("2025-03-13T10:20:00+01:00"),
                             points(job, {38, 39, 40, 41, 55, 56, 57}), chance);
    again.repair = job.repairs[0].id;
    SprayWalk retest(job, leaksAfterRepair(sketch), detector, chance);
    retest.startRound(again.id, on("2025-03-13T10:21:00+01:00"), kTester);
    for (const int number : {38, 39, 40, 41, 55, 56, 57})
        spray(retest, {number});
    job.rounds[1].closed = retest.now();
    job.calibrations.push_back(systemCheck(sketch, leak, CalibrationMoment::After,
                                           on("2025-03-13T10:55:00+01:00"), detector, chance));
    rise.air = airThrough(leaksAfterRepair(sketch));
    job.riseTests.push_back(
        riseTest(object, rise, TestMoment::AsLeft, on("2025-03-13T11:15:00+01:00"), chance));
    review2025(job, chance);
    return job;
}

Job jobOf2026(const TestObject& object, const Sketch& sketch, Chance& chance)
{
    Job job = emptyJob(object, sketch, 164, "2026-03-17T12:40:00+01:00", chance);
    job.setup.purpose = "fault search: the base pressure is not reached";
    job.setup.lastTouched = "door seal cleaned, 2026-03-14";
    Detector detector(DetectorDay{}, chance);
    const ReferenceLeak leak = referenceLeak("RL-11/2025", "2025-10-22", 4.9e-8);
    const Rise rise{airThrough(leaksOf2026(sketch)), kOutgassing, 240.0};
    job.riseTests.push_back(
        riseTest(object, rise, TestMoment::AsFound, on("2026-03-17T12:55:00+01:00"), chance));
    job.calibrations.push_back(systemCheck(sketch, leak, CalibrationMoment::Before,
                                           on("2026-03-17T13:52:00+01:00"), detector, chance));
    job.backgrounds.push_back(watch(on("2026-03-17T13:56:00+01:00"), detector, chance));

    const RoundId round = openRound(job, RoundKind::AsFound, on("2026-03-17T14:00:00+01:00"),
                                    points(job, numbersOf(job)), chance)
                              .id;
    SprayWalk walk(job, leaksOf2026(sketch), detector, chance);
    walk.startRound(round, on("2026-03-17T14:00:30+01:00"), kTester);
    for (const int number : numbersOf(job)) {
        if (number == 58)
            continue; // forgotten
        if (number == 36) {
            walk.note(number, Outcome::NotAccessible, "behind the pump frame");
            continue;
        }
        if (number == 43)
            detector.disturb(2.4e-8); // somebody vents a helium bottle next door
        const ReadingId stored = spray(walk, {number}).id;
        if (number == 43)
            job.voids.push_back(
                {stored, "background moved: a helium bottle was vented next door", kTester, walk.now()});
        if (number == 9)
            walk.correct(number, "exponent mistyped", "1.5e-6 mbar l/s", 1.5e-6);
        if (number == 17)
            spray(walk, {number}).confirmed = true;
        if (number == 27)
            bagWindow(walk);
        if (number == 60) {
            Spray flexed{number, Condition::Flexed};
            spray(walk, flexed).conditionDetail = "bent by hand, 30°";
        }
    }
    return job;
}

} // namespace sealwalk::demo
