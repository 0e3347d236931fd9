// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/finding_figures.h"

#include "core/analysis/blind_sprays.h"
#include "core/analysis/job_view.h"
#include "core/analysis/range_widening.h"
#include "core/analysis/rate_range.h"
#include "core/analysis/uncertainty.h"

namespace sealwalk::analysis {

namespace {

// Of a reading, the part that is the point's own leak: the rest it owes to leaks elsewhere.
double ownShare(const PointFinding& finding)
{
    double own = 1.0;
    for (const Owed& owed : finding.owes)
        own -= owed.share;
    return own;
}

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

// The search answers for a leak anywhere on its stretch, of which the probe may have missed the middle; its
// best estimate lies above the reading. The figure people compare is the reading on the chamber, less what it
// owes to leaks elsewhere; the range still says what else it may be.
void rateByReading(PointFinding& finding, const CorrectedReading& corrected)
{
    constexpr double kMostlyOwn = 0.5;
    const double own = ownShare(finding);
    if (finding.finding != Finding::Leak || !corrected.rate || !(own > kMostlyOwn))
        return;
    finding.rate = *corrected.rate * own;
    setRange(finding, hull(*rangeOf(finding),
                           lognormalRange(*finding.rate, *corrected.low * own, *corrected.high * own)));
}

void decideByRange(PointFinding& finding, std::optional<LeakRate> limit)
{
    const RateRange range = *rangeOf(finding);
    finding.verdict = verdictOf(range, limit);
    if (limit)
        finding.conformance = conformanceOf(range, *finding.rate, *limit);
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
        const auto range = rangeOf(finding);
        if (!range)
            continue;
        setRange(finding, widened(*range, *finding.rate, ownUncertainty(corrected.factors)));
        rateByReading(finding, corrected);
        decideByRange(finding, corrected.limit);
        if (corrected.high && ownShare(finding) > 0.0)
            if (std::string words =
                    wideningWords(finding, *corrected.high * ownShare(finding), job.setup.unit);
                !words.empty())
                finding.because.push_back(std::move(words));
    }
    boundLateAnswers(job, object, findings);
}

} // namespace sealwalk::analysis
