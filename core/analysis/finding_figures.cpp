// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/finding_figures.h"

#include "core/analysis/decision.h"
#include "core/analysis/job_view.h"
#include "core/analysis/uncertainty.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kCoverage = 2.0; // 95 %

// What the set-up leaves open for one rate alone. What it leaves open for all alike, the dwell and the noise
// are in the range already.
double ownUncertainty(const std::vector<FactorUsed>& factors)
{
    std::vector<double> parts;
    for (const FactorUsed& factor : factors)
        if (!factor.shared && factor.name != "dwell")
            parts.push_back(factor.relativeUncertainty);
    return combined(parts);
}

void widen(PointFinding& finding, double relative)
{
    const double spread = kCoverage * logSpread(relative);
    const double rate = finding.rate->si();
    const double up = std::max(0.0, std::log(finding.high->si() / rate));
    finding.high = LeakRate::fromSi(rate * std::exp(std::hypot(up, spread)));
    if (!(finding.low->si() > 0.0))
        return;
    const double down = std::max(0.0, std::log(rate / finding.low->si()));
    finding.low = LeakRate::fromSi(rate * std::exp(-std::hypot(down, spread)));
}

// The search answers for a leak anywhere on its stretch, of which the probe may have missed the middle; its
// best estimate lies above the reading. The figure people compare is the reading on the chamber, less what it
// owes to leaks elsewhere; the range still says what else it may be.
void rateByReading(PointFinding& finding, const CorrectedReading& corrected)
{
    double own = 1.0;
    for (const Owed& owed : finding.owes)
        own -= owed.share;
    constexpr double kMostlyOwn = 0.5;
    if (finding.finding != Finding::Leak || !corrected.rate || !(own > kMostlyOwn))
        return;
    finding.rate = *corrected.rate * own;
    finding.low = std::min(*finding.low, *corrected.low * own);
    finding.high = std::max(*finding.high, *corrected.high * own);
}

void decideByRange(PointFinding& finding, std::optional<LeakRate> limit)
{
    finding.verdict = Verdict::NoAnswer;
    if (!limit)
        return;
    // A range that reaches down to nothing is no evidence of a leak over the limit.
    if (!(finding.low->si() > 0.0)) {
        finding.verdict = *finding.high <= *limit ? Verdict::Within : Verdict::CannotSay;
        return;
    }
    const double spread = std::log(*finding.high / *finding.low) / (2.0 * kCoverage);
    const double relative = std::sqrt(std::expm1(spread * spread));
    const LeakRate middle = LeakRate::fromSi(std::sqrt(finding.high->si() * finding.low->si()));
    const auto decision = decide({middle, middle * relative, *limit});
    if (!decision)
        return;
    finding.verdict = decision->verdict;
    finding.conformance = decision->conformance;
}

} // namespace

void addFigures(const model::Job& job, const model::TestObject& object, std::vector<PointFinding>& findings)
{
    for (PointFinding& finding : findings) {
        const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
        if (reading == nullptr)
            continue;
        const CorrectedReading corrected = correctedReading(job, object, *reading);
        finding.factors = corrected.factors;
        finding.smallestDetectable = corrected.smallestDetectable;
        finding.conformance.reset();
        if (!finding.rate || !finding.low || !finding.high || !(finding.rate->si() > 0.0))
            continue;
        widen(finding, ownUncertainty(corrected.factors));
        rateByReading(finding, corrected);
        decideByRange(finding, corrected.limit);
    }
}

} // namespace sealwalk::analysis
