// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_balance.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::analysis {

namespace {

bool serves(const model::RiseTest& test, bool afterRepair)
{
    return (test.moment == model::TestMoment::AsFound) != afterRepair;
}

const model::RiseTest* lastServing(const model::Job& job, bool afterRepair)
{
    const model::RiseTest* chosen = nullptr;
    for (const model::RiseTest* test : job.standingRiseTests()) {
        const bool better =
            chosen == nullptr || (serves(*test, afterRepair) && !serves(*chosen, afterRepair)) ||
            (serves(*test, afterRepair) == serves(*chosen, afterRepair) && test->at >= chosen->at);
        if (better)
            chosen = test;
    }
    return chosen;
}

RepairEffectOptions effectOptions(const model::Job& job, const model::TestObject& object,
                                  const model::RiseTest* test, const std::optional<RiseSummary>& rise)
{
    RepairEffectOptions options;
    options.volume = job.setup.volume ? job.setup.volume : object.volume;
    options.airSpeed = object.airSpeed;
    options.blankOff = object.pumpBlankOff.value_or(Pressure{});
    options.wantedPressure = object.wantedPressure;
    options.totalLimit = job.setup.totalLimit ? job.setup.totalLimit : object.totalLimit;
    if (test != nullptr)
        options.basePressureNow = test->basePressure;
    // The gas that exhausts itself at its last, slowest rate.
    if (rise && rise->separable)
        options.outgassing = rise->outgassingEnd;
    return options;
}

// Where what is missing may hide: points that gave no figure.
void nameBlindSpots(std::span<const PointFinding> findings, std::vector<std::string>& notes)
{
    const auto name = [&](std::initializer_list<Finding> kinds, const char* what) {
        std::string numbers;
        for (const PointFinding& finding : findings)
            if (std::find(kinds.begin(), kinds.end(), finding.finding) != kinds.end())
                numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", finding.number);
        if (!numbers.empty())
            notes.push_back(fmt::format("{}: {}", what, numbers));
    };
    name({Finding::NotSprayed, Finding::NotAccessible, Finding::NotTested}, "points without a reading");
    name({Finding::Void}, "points whose readings are void");
    name({Finding::Masked, Finding::BelowDetectable}, "points that could hide a leak");
}

} // namespace

const model::RiseTest* riseTestFor(const model::Job& job, model::RoundId roundId)
{
    const model::Round* round = job.round(roundId);
    return lastServing(job, round != nullptr && round->kind == model::RoundKind::AfterRepair);
}

const model::RiseTest* riseTestFor(const model::Job& job, Standing standing)
{
    const auto fits = [&](const model::RiseTest& test) {
        return std::all_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
            return (test.at < repair.at) == (standing == Standing::AsFound);
        });
    };
    const model::RiseTest* chosen = nullptr;
    for (const model::RiseTest* test : job.standingRiseTests())
        if (fits(*test) && (chosen == nullptr || test->at >= chosen->at))
            chosen = test;
    return chosen;
}

std::optional<MissedPressure> missedPressure(const model::Job& job, const model::TestObject& object)
{
    const model::RiseTest* test = riseTestFor(job, Standing::AsLeft);
    if (test == nullptr || !test->basePressure || !object.wantedPressure ||
        *test->basePressure <= *object.wantedPressure)
        return std::nullopt;
    for (const int digits : {2, 3, 4})
        if (fmt::format("{:.{}e}", test->basePressure->si(), digits - 1) !=
            fmt::format("{:.{}e}", object.wantedPressure->si(), digits - 1))
            return MissedPressure{*test->basePressure, *object.wantedPressure, digits};
    return std::nullopt; // no gauge tells them apart
}

std::optional<RiseTotal> totalOf(const RiseSummary& rise)
{
    if (!(rise.high.si() > 0.0))
        return std::nullopt;
    RiseTotal total;
    total.low = rise.separable ? std::max(LeakRate{}, rise.low) : LeakRate{};
    total.high = rise.high;
    if (rise.separable)
        total.rate = std::clamp(rise.leakRate, total.low, total.high);
    return total;
}

namespace {

/// Why repairing this point changes no figure: it has no leak of its own, or one that is counted elsewhere.
void noteNotCounted(const model::Sketch& sketch, std::span<const PointFinding> findings,
                    const model::TestPoint& point, JobBalance& result)
{
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const PointFinding& finding) { return finding.point == point.id; });
    if (found != findings.end() && found->finding == Finding::Shared)
        for (const model::PointId with : found->of) {
            const model::TestPoint* partner = sketch.point(with);
            const std::string label = partner == nullptr ? "" : fmt::format("point {}", partner->number);
            for (const LeakAsAir& leak : result.balance.leaks)
                if (leak.label == label) {
                    result.notes.push_back(fmt::format(
                        "the leak that point {} shares with {} is counted once", point.number, label));
                    return;
                }
        }
    result.notes.push_back(
        fmt::format("point {} has no located leak; repairing it changes no figure here", point.number));
}

} // namespace

Result<JobBalance> balanceOfJob(const model::Job& job, const model::TestObject& object,
                                std::span<const PointFinding> findings, const model::RiseTest* test,
                                const std::optional<RiseSummary>& rise,
                                std::span<const model::PointId> ticked)
{
    JobBalance result;
    auto balance = jobBalance(job, object, findings, rise ? totalOf(*rise) : std::nullopt);
    if (!balance)
        return fail(balance.error());
    result.balance = *std::move(balance);

    RepairEffectOptions options = effectOptions(job, object, test, rise);
    for (const model::PointId point : ticked) {
        const model::TestPoint* known = job.sketch.point(point);
        if (known == nullptr)
            return fail(ErrorCode::NotFound, "a point that is not in the sketch cannot be ticked for repair");
        const std::string label = fmt::format("point {}", known->number);
        const auto located = std::find_if(result.balance.leaks.begin(), result.balance.leaks.end(),
                                          [&](const LeakAsAir& leak) { return leak.label == label; });
        if (located != result.balance.leaks.end())
            options.repaired.push_back(label);
        else
            noteNotCounted(job.sketch, findings, *known, result);
    }
    options.balance = result.balance;
    auto effect = repairEffect(options);
    if (!effect)
        return fail(effect.error());
    result.effect = *std::move(effect);

    if (!ticked.empty())
        result.notes.emplace_back(
            "what is left after the repairs is projected, not measured: a new pressure rise proves it");
    nameBlindSpots(findings, result.notes);
    if (test == nullptr && !job.standingRiseTests().empty())
        result.notes.emplace_back("the pressure rise on record was measured on the other side of a repair: "
                                  "the total of this state is not known until it is measured again");
    if (!options.volume)
        result.notes.emplace_back("without the volume the pressure rise cannot be worked out");
    if (!options.airSpeed)
        result.notes.emplace_back(
            "without the pumping speed for air at the chamber the base pressure cannot be worked out");
    else if (result.effect.totalKnown && !options.basePressureNow && !object.pumpBlankOff)
        result.notes.emplace_back("the base pressure was not measured and what the pumps alone reach is not "
                                  "known: it is worked out without it");
    return result;
}

} // namespace sealwalk::analysis
