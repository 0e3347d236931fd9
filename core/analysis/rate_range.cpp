// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rate_range.h"

#include "core/analysis/uncertainty.h"
#include "core/base/contract.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kTwoSided = 2.0; // coverage factor of the ranges shown, as JCGM 100 has it

double oneSided()
{
    return normalQuantile(0.95);
}

/// An end moved away from the rate by a spread of the logarithm; a negative one moves it down.
LeakRate movedOut(LeakRate end, LeakRate rate, double spread)
{
    if (!(end.si() > 0.0))
        return end;
    const double way = std::log(end / rate);
    const bool isBeyond = (way < 0.0) == (spread < 0.0);
    return rate * std::exp(std::copysign(std::hypot(isBeyond ? way : 0.0, spread), spread));
}

} // namespace

RateRange lognormalRange(LeakRate rate, LeakRate low, LeakRate high)
{
    SEALWALK_EXPECT(rate.si() > 0.0);
    const auto drawnIn = [&](LeakRate end) {
        return end.si() > 0.0 ? rate * std::pow(end / rate, oneSided() / kTwoSided) : end;
    };
    return {low, drawnIn(low), drawnIn(high), high};
}

RateRange widened(const RateRange& range, LeakRate rate, double relativeUncertainty)
{
    SEALWALK_EXPECT(rate.si() > 0.0 && relativeUncertainty >= 0.0);
    const double spread = logSpread(relativeUncertainty);
    if (spread == 0.0)
        return range; // its sign tells up from down below
    return {movedOut(range.low, rate, -kTwoSided * spread),
            movedOut(range.surelyAbove, rate, -oneSided() * spread),
            movedOut(range.surelyBelow, rate, oneSided() * spread),
            movedOut(range.high, rate, kTwoSided * spread)};
}

RateRange hull(const RateRange& one, const RateRange& other)
{
    return {std::min(one.low, other.low), std::min(one.surelyAbove, other.surelyAbove),
            std::max(one.surelyBelow, other.surelyBelow), std::max(one.high, other.high)};
}

std::optional<RateRange> rangeOf(const PointFinding& finding)
{
    if (!finding.rate || !finding.low || !finding.high || !(finding.rate->si() > 0.0))
        return std::nullopt;
    RateRange range = lognormalRange(*finding.rate, *finding.low, *finding.high);
    range.surelyAbove = finding.surelyAbove.value_or(range.surelyAbove);
    range.surelyBelow = finding.surelyBelow.value_or(range.surelyBelow);
    return range;
}

void setRange(PointFinding& finding, const RateRange& range)
{
    finding.low = range.low;
    finding.high = range.high;
    finding.surelyAbove = range.surelyAbove;
    finding.surelyBelow = range.surelyBelow;
}

Verdict verdictOf(const RateRange& range, std::optional<LeakRate> limit)
{
    if (!limit)
        return Verdict::NoAnswer;
    if (range.surelyAbove > *limit)
        return Verdict::Over;
    return range.surelyBelow <= *limit ? Verdict::Within : Verdict::CannotSay;
}

std::optional<double> conformanceOf(const RateRange& range, LeakRate rate, LeakRate limit)
{
    const LeakRate end = limit < rate ? range.surelyAbove : range.surelyBelow;
    if (!(end.si() > 0.0) || end == rate)
        return std::nullopt;
    const double spread = std::abs(std::log(end / rate)) / oneSided();
    return normalProbability(std::log(limit / rate) / spread);
}

} // namespace sealwalk::analysis
