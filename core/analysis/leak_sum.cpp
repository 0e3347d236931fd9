// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/leak_sum.h"

#include "core/analysis/job_view.h"
#include "core/analysis/leak_rank.h"
#include "core/analysis/uncertainty.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace sealwalk::analysis {

namespace {

constexpr double kCoverage = 2.0; // 95 %

bool isLocated(const PointFinding& finding)
{
    return finding.finding == Finding::Leak || finding.finding == Finding::Shared;
}

/// Whether the point may leak more than what its finding adds to the sum.
bool canHide(const model::Job& job, const PointFinding& finding)
{
    if (!isAnswer(finding) || finding.finding == Finding::Masked)
        return true;
    const bool isBeside = isLocated(finding) && besideOf(job, finding) != Beside::Nothing;
    return !finding.rate && !finding.bound && !isBeside;
}

std::optional<LeakSum::Sum> heliumSum(std::span<const LocatedLeak> leaks)
{
    double sum = 0.0;
    std::vector<SumTerm> below;
    std::vector<SumTerm> above;
    for (const LocatedLeak& leak : leaks) {
        if (!leak.beside.empty())
            continue;
        const double rate = leak.helium.si();
        sum += rate;
        below.push_back({rate, leak.sharedUncertainty, leak.ownUncertainty});
        above.push_back({rate, leak.sharedUncertainty, leak.ownAbove.value_or(leak.ownUncertainty)});
    }
    if (!(sum > 0.0))
        return std::nullopt;
    return LeakSum::Sum{LeakRate::fromSi(sum),
                        LeakRate::fromSi(sum * std::exp(-kCoverage * spreadOfSum(below))),
                        LeakRate::fromSi(sum * std::exp(kCoverage * spreadOfSum(above)))};
}

std::optional<LeakSum::Sum> airSum(const model::Job& job, std::span<const LocatedLeak> leaks)
{
    const auto balance = balanceLeaks(leaks, std::nullopt, channelConditions(job.setup));
    if (!balance || !(balance->located > LeakRate()))
        return std::nullopt;
    return LeakSum::Sum{balance->located, balance->locatedLow, balance->locatedHigh};
}

LocatedLeak asLeak(LeakRate helium)
{
    LocatedLeak leak;
    leak.helium = helium;
    return leak;
}

/// What leaks beyond the detector's range are at the least. One between neighbours of which the other was
/// sized is in the sum with that.
std::vector<LocatedLeak> beyondRange(const model::Job& job, std::span<const PointFinding> answers)
{
    const auto isSizedBeside = [&](model::PointId point) {
        return std::any_of(answers.begin(), answers.end(), [&](const PointFinding& other) {
            return other.finding == Finding::Shared && other.rate &&
                   std::find(other.of.begin(), other.of.end(), point) != other.of.end();
        });
    };
    std::vector<LocatedLeak> leaks;
    for (const PointFinding& finding : answers)
        if (isLocated(finding) && !finding.rate && finding.atLeast &&
            besideOf(job, finding) == Beside::Nothing && !isSizedBeside(finding.point))
            leaks.push_back(asLeak(*finding.atLeast));
    return leaks;
}

/// `sum` with what comes on top of it at the least: then it has no upper end any more.
std::optional<LeakSum::Sum> with(std::optional<LeakSum::Sum> sum, const std::optional<LeakSum::Sum>& least)
{
    if (!least)
        return sum;
    const LeakRate rate = least->rate + (sum ? sum->rate : LeakRate());
    return LeakSum::Sum{rate, rate, rate};
}

void count(const model::Job& job, const PointFinding& finding, LeakSum& result)
{
    if (!isLocated(finding))
        return;
    switch (besideOf(job, finding)) {
    case Beside::Nothing:
        result.unsized += isUnsizedLeak(finding) ? 1 : 0;
        break;
    case Beside::Setup:
        ++result.ofSetup;
        break;
    case Beside::OtherCondition:
        ++result.otherCondition;
        break;
    }
}

} // namespace

SumState LeakSum::state() const
{
    return isGap()              ? SumState::NotTested
           : helium             ? SumState::Sum
           : unsized > 0        ? SumState::Unsized
           : otherCondition > 0 ? SumState::OtherCondition
           : ofSetup > 0        ? SumState::SetupOnly
           : below              ? SumState::Below
                                : SumState::NoLeak;
}

LeakSum leakSum(const model::Job& job, const model::TestObject& object,
                std::span<const PointFinding> findings)
{
    LeakSum result;
    std::vector<PointFinding> answers;
    std::vector<LocatedLeak> bounds;
    bool isBounded = true;
    for (const PointFinding& finding : findings) {
        ++result.points;
        result.isAtLeast = result.isAtLeast || canHide(job, finding);
        isBounded = isBounded && isAnswer(finding) && finding.bound && !finding.rate;
        if (!isAnswer(finding))
            continue;
        ++result.answered;
        count(job, finding, result);
        if (finding.bound && *finding.bound > LeakRate())
            bounds.push_back(asLeak(*finding.bound));
        if (isRanked(finding) && (!result.worst || outweighs(finding, *result.worst)))
            result.worst = finding;
        answers.push_back(finding);
    }
    const std::vector<LocatedLeak> leaks = locatedLeaks(job, object, answers);
    const std::vector<LocatedLeak> least = beyondRange(job, answers);
    result.helium = with(heliumSum(leaks), heliumSum(least));
    result.air = with(airSum(job, leaks), airSum(job, least));
    if (isBounded && result.answered > 0) {
        const auto below = heliumSum(bounds);
        const auto belowAir = airSum(job, bounds);
        result.below = below ? below->rate : LeakRate();
        if (belowAir)
            result.belowAir = belowAir->rate;
    }
    return result;
}

} // namespace sealwalk::analysis
