// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/hose.h"

#include "core/flow/conductance.h"
#include "core/flow/find_root.h"

#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

// The hose as a channel without exit loss. Its pressures may be far below those of a leak, so the channel's
// own checks do not apply; the flow law is the same.
double hoseFlow(Gas gas, Temperature temperature, const Hose& hose, double p1, double p2)
{
    const double mean = 0.5 * (p1 + p2);
    const double laminar =
        laminarTubeConductance(gas, temperature, hose.diameter, hose.length, pascals(mean)).si() * (p1 - p2);
    const double molecular = longTubeConductance(gas, temperature, hose.diameter, hose.length).si();
    constexpr double kKappa = 1.235;
    const double b = kKappa * hose.diameter.si() /
                     (viscosity(gas, temperature) * likelySpeed(gas, temperature) / std::numbers::sqrt2);
    const double slip = (std::log1p(b * p1) - std::log1p(b * p2)) / b;
    return laminar + molecular * ((p1 - p2) / kKappa + (1.0 - 1.0 / kKappa) * slip);
}

Status check(const Hose& hose, PumpingSpeed pump, Pressure chamber, Temperature temperature)
{
    if (const Status ok = flow::check(hose); !ok)
        return ok;
    if (!(pump.si() > 0.0 && std::isfinite(pump.si())))
        return fail(ErrorCode::BadInput, "the pumping speed must be above zero");
    if (!(chamber.si() >= 0.0 && std::isfinite(chamber.si())))
        return fail(ErrorCode::BadInput, "the pressure must be zero or above");
    return checkFlowTemperature(temperature);
}

} // namespace

Status check(const Hose& hose)
{
    if (!(hose.diameter.si() >= 1e-4 && hose.diameter.si() <= 1.0))
        return fail(ErrorCode::BadInput, "the inner diameter of the hose must be between 0.1 mm and 1 m");
    if (!(hose.length.si() >= 1e-3 && hose.length.si() <= 1e3))
        return fail(ErrorCode::BadInput, "the length of the hose must be between 1 mm and 1 km");
    return {};
}

Result<LeakRate> flowThroughHose(Gas gas, Temperature temperature, const Hose& hose, PumpingSpeed pump,
                                 Pressure chamber)
{
    if (const Status ok = check(hose, pump, chamber, temperature); !ok)
        return fail(ok.error());
    const double p = chamber.si();
    if (p == 0.0)
        return LeakRate{};
    const double scale = pump.si() * p;
    const double atPump = findRoot(
        [&](double inlet) {
            return (hoseFlow(gas, temperature, hose, p, inlet) - pump.si() * inlet) / scale;
        },
        0.0, p, 1e-15 * p);
    return LeakRate::fromSi(pump.si() * atPump);
}

Result<PumpingSpeed> speedAtChamber(Gas gas, Temperature temperature, const Hose& hose, PumpingSpeed pump,
                                    Pressure chamber)
{
    if (const Status ok = check(hose, pump, chamber, temperature); !ok)
        return fail(ok.error());
    if (chamber.si() == 0.0)
        return speedThrough(pump, longTubeConductance(gas, temperature, hose.diameter, hose.length));
    return flowThroughHose(gas, temperature, hose, pump, chamber).map([&](LeakRate flow) {
        return PumpingSpeed::fromSi(flow.si() / chamber.si());
    });
}

} // namespace sealwalk::flow
