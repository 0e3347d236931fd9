// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/blind_sprays.h"

#include "core/analysis/earlier_delay.h"
#include "core/analysis/job_factor.h"
#include "core/analysis/job_view.h"
#include "core/analysis/rate_range.h"
#include "core/analysis/slow_rise.h"
#include "core/flow/response.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::analysis {

namespace {

/// The longest spray without an answer of the same round, point and condition.
const model::Reading* longestOf(const model::Job& job, const model::Reading& counted)
{
    const model::Reading* longest = &counted;
    for (const model::Reading* other : job.standing(counted.round))
        if (other->point == counted.point && other->condition == counted.condition &&
            other->outcome == model::Outcome::NoResponse &&
            other->dwell.value_or(Duration()) > longest->dwell.value_or(Duration()))
            longest = other;
    return longest;
}

double dwellMultiplier(const std::vector<FactorUsed>& factors)
{
    for (const FactorUsed& factor : factors)
        if (factor.name == "dwell")
            return factor.multiplier;
    return 1.0;
}

void takeAway(PointFinding& finding, std::optional<LeakRate> limit, std::string because)
{
    if (finding.finding == Finding::Clear)
        finding.finding = Finding::BelowDetectable;
    finding.verdict = limit ? Verdict::CannotSay : Verdict::NoAnswer;
    finding.bound.reset();
    finding.smallestDetectable.reset();
    finding.because = {std::move(because)};
}

void weigh(const model::Job& job, const model::TestObject& object, const SprayTiming& timing, Duration delay,
           PointFinding& finding)
{
    const model::Reading& counted = *job.reading(*finding.reading);
    const model::Reading& reading = *longestOf(job, counted);
    const auto limit = job.limitOf(finding.point);
    const double needed = inSeconds(dwellAfter(delay, timing));
    if (!reading.dwell)
        return takeAway(finding, limit,
                        fmt::format("No response, but the spray was not timed and this point had answered "
                                    "{:.0f} s after the helium: spray again for {:.0f} s.",
                                    inSeconds(delay), needed));
    const model::TestPoint* point = job.sketch.point(finding.point);
    const auto known =
        detail::responseOf(job, object, point == nullptr ? model::JointId() : point->joint, reading.at);
    const auto left = flow::correctDwell(*reading.dwell, known ? known->time : timing.response,
                                         known ? known->relativeUncertainty : 0.0, delay);
    if (*reading.dwell <= delay || !left)
        return takeAway(
            finding, limit,
            fmt::format("No response within {:.0f} s proves nothing here: this point had answered "
                        "{:.0f} s after the helium. Spray again for {:.0f} s.",
                        inSeconds(*reading.dwell), inSeconds(delay), needed));
    if (&reading != &counted) {
        const CorrectedReading corrected = correctedReading(job, object, reading);
        if (!corrected.below)
            return;
        finding.reading = reading.id;
        finding.bound = corrected.below;
        finding.smallestDetectable = corrected.smallestDetectable;
        finding.factors = corrected.factors;
    }
    const double more = 1.0 / left->fraction / dwellMultiplier(finding.factors);
    if (!(more > 1.0) || !finding.bound)
        return;
    finding.bound = *finding.bound * more;
    if (finding.smallestDetectable)
        finding.smallestDetectable = *finding.smallestDetectable * more;
    finding.verdict = verdictOf({{}, {}, *finding.bound, *finding.bound}, limit);
    if (finding.finding == Finding::Clear && finding.verdict == Verdict::CannotSay)
        finding.finding = Finding::BelowDetectable;
    finding.because = {fmt::format("{} {:.0f} s after the helium, and the bound is for what was left of {:.0f} s "
                                   "then.",
                                   kLateAnswerReason, inSeconds(delay), inSeconds(*reading.dwell))};
}

} // namespace

void boundLateAnswers(const model::Job& job, const model::TestObject& object,
                      std::vector<PointFinding>& findings)
{
    const SprayTiming timing = sprayTiming(job, object);
    const EarlierDelays delays(job, timing.response);
    if (delays.isEmpty())
        return;
    for (PointFinding& finding : findings) {
        const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
        if (reading == nullptr || reading->outcome != model::Outcome::NoResponse || !finding.bound)
            continue;
        const auto delay = delays.before(*reading);
        if (!delay)
            continue;
        // A prompt rise is part of the response that the dwell is corrected for already.
        const bool isShort = reading->dwell && *reading->dwell < *delay;
        if (isShort || isLate(*delay, timing.response) || isAsLateAsPermeation(*delay, timing.response))
            weigh(job, object, timing, *delay, finding);
    }
}

} // namespace sealwalk::analysis
