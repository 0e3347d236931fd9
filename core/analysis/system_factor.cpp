// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/system_factor.h"

#include "core/analysis/uncertainty.h"
#include "core/base/contract.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

namespace {

constexpr double kSteadyWithin = 0.10;
constexpr double kLostBelow = 0.65;
constexpr double kGrownAbove = 1.0 / kLostBelow;

bool isFinite(LeakRate rate)
{
    return std::isfinite(rate.si());
}

} // namespace

double SystemFactor::relativeUncertainty() const
{
    const double parts[] = {readingUncertainty, referenceUncertainty};
    return combined(parts);
}

Result<SystemFactor> systemFactor(const SystemCheckOptions& options)
{
    if (!(options.reference.si() > 0.0) || !isFinite(options.reference))
        return fail(ErrorCode::BadInput, "the rate of the reference leak must be above zero");
    if (!isFinite(options.shown) || !isFinite(options.background) || !(options.shown > options.background))
        return fail(ErrorCode::BadInput,
                    "the display with the reference leak open must be above the background with it "
                    "closed");
    if (!(options.noise.si() >= 0.0) || !isFinite(options.noise) || !(options.referenceUncertainty >= 0.0))
        return fail(ErrorCode::BadInput, "noise and uncertainty must be zero or above");
    const LeakRate net = options.shown - options.background;
    SystemFactor factor;
    factor.factor = net / options.reference;
    factor.coefficient = options.reference / net;
    factor.readingUncertainty = std::numbers::sqrt2 * (options.noise / net);
    factor.referenceUncertainty = options.referenceUncertainty;
    return factor;
}

FactorChange compareFactors(const SystemFactor& before, const SystemFactor& after)
{
    SEALWALK_EXPECT(before.factor > 0.0 && after.factor > 0.0);
    FactorChange result;
    const double ratio = after.factor / before.factor;
    result.change = ratio - 1.0;
    result.driftUncertainty = std::abs(std::log(ratio)) / std::sqrt(12.0);
    result.between = before;
    result.between.factor = std::sqrt(before.factor * after.factor);
    result.between.coefficient = 1.0 / result.between.factor;
    result.between.readingUncertainty = 0.5 * std::hypot(before.readingUncertainty, after.readingUncertainty);
    const std::string percent = trimmedText(std::abs(result.change) * 100.0, 2) + " %";
    if (ratio < kLostBelow) {
        result.steadiness = Steadiness::Lost;
        result.advice =
            fmt::format("the response fell by {}: find the cause and spray again every point since the last "
                        "good check",
                        percent);
    } else if (ratio > kGrownAbove) {
        result.steadiness = Steadiness::Grown;
        result.advice =
            fmt::format("the response rose by {}: find the cause; readings before it may be too low and need "
                        "spraying again",
                        percent);
    } else if (std::abs(result.change) > kSteadyWithin) {
        result.steadiness = Steadiness::Moved;
        result.advice =
            fmt::format("the response moved by {}: the mean of both checks is used and the change widens "
                        "every range",
                        percent);
    } else {
        constexpr double kUnchanged = 5e-4; // what nobody would write down
        result.advice = std::abs(result.change) < kUnchanged
                            ? "the response did not move: steady"
                            : fmt::format("the response moved by {}: steady", percent);
    }
    return result;
}

Result<LeakRate> smallestDetectable(const DetectableOptions& o)
{
    if (!(o.factor > 0.0 && std::isfinite(o.factor)))
        return fail(ErrorCode::BadInput, "the system factor must be above zero");
    if (!(o.noise.si() >= 0.0) || !isFinite(o.noise) || !(o.driftPerSecond.si() >= 0.0) ||
        !isFinite(o.driftPerSecond))
        return fail(ErrorCode::BadInput, "noise and drift of the background must be zero or above");
    if (!(o.dwell.si() >= 0.0 && std::isfinite(o.dwell.si())))
        return fail(ErrorCode::BadInput, "the dwell must be zero or above");
    if (!(o.noiseFactor >= 1.0 && o.noiseFactor <= 10.0))
        return fail(ErrorCode::BadInput, "the noise factor must be between 1 and 10; 3 is usual");
    if (!(o.riseFraction >= 0.2 && o.riseFraction <= 1.0))
        return fail(ErrorCode::BadInput, "the dwell must show between 20 % and 100 % of the signal");
    if (!(o.heliumShare > 0.0 && o.heliumShare <= 1.0))
        return fail(ErrorCode::BadInput, "the helium share must be above 0 and at most 100 %");
    const LeakRate onDisplay = o.noise * o.noiseFactor + o.driftPerSecond * o.dwell.si();
    return onDisplay / (o.factor * o.riseFraction * o.heliumShare);
}

LeakRate smallestDetectableByHandbook(double factor, LeakRate noise, LeakRate drift, LeakRate variation)
{
    SEALWALK_EXPECT(factor > 0.0);
    return 2.0 * (noise + drift + variation) / factor;
}

} // namespace sealwalk::analysis
