// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/repair_progress.h"

#include "core/analysis/job_balance.h"
#include "core/analysis/job_rise.h"

#include <algorithm>

namespace sealwalk::analysis {

namespace {

bool isAnswer(model::Outcome outcome)
{
    return outcome == model::Outcome::Value || outcome == model::Outcome::NoResponse ||
           outcome == model::Outcome::AboveRange;
}

/// Whether a point of it has that verdict as left, and nobody conceded it.
bool has(Verdict verdict, const model::Repair& repair, std::span<const PointFinding> asLeft)
{
    return std::any_of(asLeft.begin(), asLeft.end(), [&](const PointFinding& finding) {
        return finding.verdict == verdict && !finding.concession &&
               std::find(repair.points.begin(), repair.points.end(), finding.point) != repair.points.end();
    });
}

/// Whether every point of it was repaired again later.
bool isOvertaken(const model::Job& job, const model::Repair& repair)
{
    return std::all_of(repair.points.begin(), repair.points.end(), [&](model::PointId point) {
        return std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& later) {
            return repair.at < later.at &&
                   std::find(later.points.begin(), later.points.end(), point) != later.points.end();
        });
    });
}

/// Whether leak and outgassing part does not hang on the volume; one is taken where it is not known.
TotalSays saysOf(const model::RiseTest& test, const model::Job& job)
{
    model::TestObject object;
    object.volume = job.setup.volume.value_or(litres(1.0));
    const auto rise = judgeRise(test, job, object);
    const auto total = rise ? totalOf(*rise) : std::nullopt;
    if (!total)
        return TotalSays::Nothing;
    return total->rate ? TotalSays::Total : TotalSays::AtMost;
}

} // namespace

bool isOfSetup(const model::Job& job, const model::Repair& repair)
{
    return !repair.points.empty() && std::all_of(repair.points.begin(), repair.points.end(),
                                                 [&](model::PointId id) { return job.sketch.isOfSetup(id); });
}

Timestamp provableFrom(const model::Repair& repair)
{
    return repair.sprayableFrom ? std::max(repair.at, *repair.sprayableFrom) : repair.at;
}

std::unordered_set<model::PointId> sprayedSince(const model::Job& job, const Timestamp& at)
{
    std::unordered_set<model::PointId> sprayed;
    for (const model::Round& round : job.rounds)
        for (const model::Reading* reading : job.standing(round.id))
            if (reading->at >= at && isAnswer(reading->outcome))
                sprayed.insert(reading->point);
    return sprayed;
}

const model::Round* provingRound(const model::Job& job, const model::Repair& repair)
{
    const Timestamp from = provableFrom(repair);
    const model::Round* proving = nullptr;
    for (const model::Round& round : job.rounds)
        for (const model::Reading* reading : job.standing(round.id))
            if (reading->at >= from && isAnswer(reading->outcome) &&
                std::find(repair.points.begin(), repair.points.end(), reading->point) != repair.points.end())
                proving = &round;
    return proving;
}

std::vector<model::PointId> pointsToProve(const model::Repair& repair)
{
    std::vector<model::PointId> points;
    for (const auto* list : {&repair.points, &repair.disturbed})
        for (const model::PointId point : *list)
            if (std::find(points.begin(), points.end(), point) == points.end())
                points.push_back(point);
    return points;
}

RepairProgress progressOf(const model::Job& job, const model::Repair& repair,
                          std::span<const PointFinding> asLeft, const Timestamp& now)
{
    RepairProgress progress;
    const auto sprayed = sprayedSince(job, repair.at);
    const auto sprayedCured = sprayedSince(job, provableFrom(repair));
    for (const model::PointId point : pointsToProve(repair)) {
        const bool isRepaired =
            std::find(repair.points.begin(), repair.points.end(), point) != repair.points.end();
        if (isRepaired ? sprayedCured.contains(point) : sprayed.contains(point))
            continue;
        progress.toSpray.push_back(point);
        progress.sprayedTooEarly = progress.sprayedTooEarly || sprayed.contains(point);
    }
    for (const model::Round& round : job.rounds)
        if (round.repair == repair.id)
            progress.round = &round;
    for (const model::RiseTest* test : job.standingRiseTests())
        if (!(test->at < repair.at) && (progress.totalAfter == nullptr || progress.totalAfter->at < test->at))
            progress.totalAfter = test;
    if (!repair.points.empty() && isOvertaken(job, repair))
        progress.step = RepairStep::Overtaken;
    else if (!progress.toSpray.empty())
        progress.step = repair.sprayableFrom && now < *repair.sprayableFrom ? RepairStep::Cures
                                                                            : RepairStep::AwaitsRetest;
    else if (has(Verdict::Over, repair, asLeft))
        progress.step = RepairStep::StillLeaks;
    else if (has(Verdict::CannotSay, repair, asLeft))
        progress.step = RepairStep::CannotSay;
    else if (isOfSetup(job, repair)) {
        progress.step = RepairStep::Proven;
        progress.totalSays = TotalSays::NotConcerned;
    } else if (progress.totalAfter == nullptr)
        progress.step = RepairStep::AwaitsTotal;
    else {
        progress.step = RepairStep::Proven;
        progress.totalSays = saysOf(*progress.totalAfter, job);
    }
    return progress;
}

std::string progressWords(const RepairProgress& progress, const model::Repair& repair)
{
    switch (progress.step) {
    case RepairStep::Cures:
        return "open: cures until " + repair.sprayableFrom->date() + ' ' +
               repair.sprayableFrom->timeOfDay().substr(0, 5) +
               (progress.sprayedTooEarly ? "; sprayed too early" : "");
    case RepairStep::AwaitsRetest:
        return "open: not all sprayed again";
    case RepairStep::StillLeaks:
        return "open: sprayed again, still over the limit";
    case RepairStep::CannotSay:
        return "open: sprayed again, cannot say";
    case RepairStep::AwaitsTotal:
        return "sprayed again; no pressure rise since";
    case RepairStep::Proven:
        switch (progress.totalSays) {
        case TotalSays::Total:
            return "proven: sprayed again, total measured";
        case TotalSays::AtMost:
            return "proven: sprayed again; the total could not be told from outgassing";
        case TotalSays::Nothing:
            return "proven: sprayed again; the pressure rise gives no total";
        case TotalSays::NotConcerned:
            return "proven: sprayed again; no part of the object's total";
        }
        return {};
    case RepairStep::Overtaken:
        return "repaired again later";
    }
    return {};
}

} // namespace sealwalk::analysis
