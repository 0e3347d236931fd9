// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/corrected_rate.h"

#include "core/analysis/uncertainty.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

namespace {

constexpr double kCoverage = 2.0; // 95 %

Status check(const CorrectionOptions& options)
{
    if (!std::isfinite(options.peak.si()) || !std::isfinite(options.background.si()))
        return fail(ErrorCode::BadInput, "peak and background must be finite numbers");
    if (!(options.noise.si() >= 0.0 && std::isfinite(options.noise.si())) ||
        !(options.driftPerSecond.si() >= 0.0 && std::isfinite(options.driftPerSecond.si())))
        return fail(ErrorCode::BadInput, "noise and drift of the background must be zero or above");
    if (!(options.dwell.si() >= 0.0 && std::isfinite(options.dwell.si())))
        return fail(ErrorCode::BadInput, "the dwell must be zero or above");
    if (!(options.repeatability >= 0.0))
        return fail(ErrorCode::BadInput, "the repeatability must be zero or above");
    for (const FactorUsed& factor : options.factors)
        if (!(factor.multiplier > 0.0 && std::isfinite(factor.multiplier)) ||
            !(factor.relativeUncertainty >= 0.0))
            return fail(
                ErrorCode::BadInput,
                fmt::format("the {} must be above zero, with an uncertainty of zero or above", factor.name));
    return {};
}

} // namespace

LeakRate CorrectedRate::uncertainty() const
{
    return LeakRate::fromSi(std::abs(rate.si()) * relativeUncertainty);
}

Result<CorrectedRate> correctRate(const CorrectionOptions& options)
{
    if (const Status ok = check(options); !ok)
        return fail(ok.error());
    CorrectedRate result;
    result.net = options.peak - options.background;
    result.factors = options.factors;
    if (options.repeatability > 0.0)
        result.factors.push_back({"repeatability", 1.0, options.repeatability, false,
                                  "probe, distance and speed from one spray to the next"});

    double shared = 0.0;
    double own = 0.0;
    for (const FactorUsed& factor : result.factors) {
        result.multiplier *= factor.multiplier;
        (factor.shared ? shared : own) += factor.relativeUncertainty * factor.relativeUncertainty;
    }
    // Peak and background each carry the noise; the drift during the dwell has an unknown sign (rectangular).
    const double drift = options.driftPerSecond.si() * options.dwell.si() / std::numbers::sqrt3;
    const double added = std::hypot(std::numbers::sqrt2 * options.noise.si(), drift);
    const double net = result.net.si();
    const double addedShare = net != 0.0 ? added / std::abs(net) : 0.0;
    const double multiplying = std::sqrt(shared + own);

    result.rate = result.net * result.multiplier;
    result.sharedUncertainty = std::sqrt(shared);
    result.ownUncertainty = std::hypot(std::sqrt(own), addedShare);
    result.relativeUncertainty = std::hypot(multiplying, addedShare);

    const double spread = logSpread(multiplying);
    const double up = std::hypot(std::expm1(kCoverage * spread) * std::abs(net), kCoverage * added);
    const double down = std::hypot(-std::expm1(-kCoverage * spread) * std::abs(net), kCoverage * added);
    result.high = LeakRate::fromSi(std::max(0.0, net + up) * result.multiplier);
    result.low = LeakRate::fromSi(std::max(0.0, net - down) * result.multiplier);

    const LeakRate onDisplay =
        options.noise * options.noiseFactor + options.driftPerSecond * options.dwell.si();
    result.smallestDetectable = onDisplay * result.multiplier;
    result.detected = net > 0.0 && result.rate >= result.smallestDetectable;
    return result;
}

} // namespace sealwalk::analysis
