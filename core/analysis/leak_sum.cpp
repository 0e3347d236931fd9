// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/leak_sum.h"

#include "core/analysis/job_view.h"
#include "core/analysis/uncertainty.h"

#include <cmath>
#include <vector>

namespace sealwalk::analysis {

namespace {

constexpr double kCoverage = 2.0; // 95 %

bool isWeightier(const PointFinding& a, const PointFinding& b)
{
    if (a.rate.has_value() != b.rate.has_value())
        return a.rate.has_value();
    return a.rate ? *a.rate > *b.rate : a.bound.value_or(LeakRate()) > b.bound.value_or(LeakRate());
}

/// Whether the point may leak more than what its finding adds to the sum.
bool canHide(const PointFinding& finding)
{
    return !isAnswer(finding) || finding.finding == Finding::Masked || (!finding.rate && !finding.bound);
}

std::optional<LeakSum::Sum> heliumSum(std::span<const LocatedLeak> leaks)
{
    double sum = 0.0;
    double shared = 0.0;
    double ownBelow = 0.0;
    double ownAbove = 0.0;
    for (const LocatedLeak& leak : leaks) {
        if (!leak.beside.empty())
            continue;
        const double rate = leak.helium.si();
        sum += rate;
        shared += rate * leak.sharedUncertainty;
        ownBelow = std::hypot(ownBelow, rate * leak.ownUncertainty);
        ownAbove = std::hypot(ownAbove, rate * leak.ownAbove.value_or(leak.ownUncertainty));
    }
    if (!(sum > 0.0))
        return std::nullopt;
    const auto spread = [&](double own) { return kCoverage * logSpread(std::hypot(shared, own) / sum); };
    return LeakSum::Sum{LeakRate::fromSi(sum), LeakRate::fromSi(sum * std::exp(-spread(ownBelow))),
                        LeakRate::fromSi(sum * std::exp(spread(ownAbove)))};
}

} // namespace

LeakSum leakSum(const model::Job& job, const model::TestObject& object,
                std::span<const PointFinding> findings)
{
    LeakSum result;
    std::vector<PointFinding> answers;
    LeakRate bounds;
    bool isBounded = true;
    for (const PointFinding& finding : findings) {
        ++result.points;
        result.isAtLeast = result.isAtLeast || canHide(finding);
        isBounded = isBounded && isAnswer(finding) && finding.bound && !finding.rate;
        if (!isAnswer(finding))
            continue;
        ++result.answered;
        bounds += finding.bound.value_or(LeakRate());
        if ((finding.rate || finding.bound) && (!result.worst || isWeightier(finding, *result.worst)))
            result.worst = finding;
        answers.push_back(finding);
    }
    const std::vector<LocatedLeak> leaks = locatedLeaks(job, object, answers);
    result.helium = heliumSum(leaks);
    if (result.helium)
        if (const auto air = balanceLeaks(leaks, std::nullopt, channelConditions(job.setup)))
            result.air = LeakSum::Sum{air->located, air->locatedLow, air->locatedHigh};
    if (isBounded && result.answered > 0)
        result.below = bounds;
    return result;
}

} // namespace sealwalk::analysis
