// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/equivalent_hole.h"

#include "core/base/contract.h"
#include "core/flow/find_root.h"
#include "core/flow/rarefaction.h"

#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kSmallest = 1e-10;
constexpr double kLargest = 5e-2;

} // namespace

LeakRate thinHoleFlow(Gas gas, Length diameter, Pressure upstream, Temperature temperature)
{
    SEALWALK_EXPECT(diameter.si() > 0.0 && upstream.si() > 0.0);
    const double area = 0.25 * kPi * diameter.si() * diameter.si();
    const double factor = outflowFactor(gas, rarefaction(gas, temperature, diameter, upstream));
    return LeakRate::fromSi(area * upstream.si() * 0.25 * meanSpeed(gas, temperature) * factor);
}

Result<Length> thinHoleDiameter(Gas gas, LeakRate flow, Pressure upstream, Temperature temperature)
{
    if (!(flow.si() > 0.0 && std::isfinite(flow.si())))
        return fail(ErrorCode::BadInput, "a hole can be worked out for a leak rate above zero only");
    if (!(upstream.si() > 0.0 && std::isfinite(upstream.si())))
        return fail(ErrorCode::BadInput, "the upstream pressure must be above zero");
    if (const Status ok = checkFlowTemperature(temperature); !ok)
        return fail(ok.error());
    const auto excess = [&](double logDiameter) {
        return std::log(thinHoleFlow(gas, metres(std::exp(logDiameter)), upstream, temperature) / flow);
    };
    if (excess(std::log(kSmallest)) > 0.0 || excess(std::log(kLargest)) < 0.0)
        return fail(ErrorCode::NoAnswer, "no hole between 0.1 nm and 50 mm passes this leak rate");
    return metres(std::exp(findRoot(excess, std::log(kSmallest), std::log(kLargest), 1e-14)));
}

Duration timeToDeliver(LeakRate flow, Volume volume, Pressure pressure)
{
    SEALWALK_EXPECT(flow.si() > 0.0);
    return seconds(volume.si() * pressure.si() / flow.si());
}

Volume bubbleVolume(Length diameter)
{
    const double d = diameter.si();
    return cubicMetres(kPi / 6.0 * d * d * d);
}

Pressure pressureGained(LeakRate flow, Volume volume, Duration time)
{
    SEALWALK_EXPECT(volume.si() > 0.0);
    return pascals(flow.si() * time.si() / volume.si());
}

} // namespace sealwalk::flow
