// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/channel.h"

#include "core/base/contract.h"
#include "core/flow/find_root.h"
#include "core/flow/rarefaction.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kKappa = 1.235;
constexpr double kDischarge = 0.84;
// Where the outflow is half way between molecular and choked, in delta.
constexpr double kOutflowMiddle = 3.0;
constexpr double kSmallestDiameter = 1e-10;
constexpr double kLargestDiameter = 5e-2;
constexpr double kLogTolerance = 1e-14;
constexpr double kChokedShare = 0.3;
constexpr double kTurbulentReynolds = 2000.0;

// What of gas and temperature enters the flow law; computed once per solve.
struct Law
{
    double viscosity;
    double thermal; // sqrt(2 pi R T/M)
    double perSlip; // sqrt(M/(R T))/eta, so that X = d p perSlip
    double meanSpeed;
    double choked;
    double likelySpeed;

    Law(Gas gas, Temperature temperature)
        : viscosity(flow::viscosity(gas, temperature))
        , thermal(std::sqrt(2.0 * kPi * kMolarGasConstant * temperature.si() / propertiesOf(gas).molarMass))
        , perSlip(std::sqrt(propertiesOf(gas).molarMass / (kMolarGasConstant * temperature.si())) / viscosity)
        , meanSpeed(flow::meanSpeed(gas, temperature))
        , choked(chokedOutflow(gas))
        , likelySpeed(flow::likelySpeed(gas, temperature))
    {}

    [[nodiscard]] double tube(double d, double length, double p1, double p2) const
    {
        const double d3 = d * d * d;
        const double viscous = kPi * d3 * d * (p1 - p2) * (p1 + p2) / (256.0 * viscosity * length);
        const double b = kKappa * d * perSlip;
        const double slip = (std::log1p(b * p1) - std::log1p(b * p2)) / b;
        const double molecular =
            d3 / (6.0 * length) * thermal * ((p1 - p2) / kKappa + (1.0 - 1.0 / kKappa) * slip);
        return viscous + molecular;
    }

    [[nodiscard]] double outflow(double d, double pe, double p2) const
    {
        const double delta = d * pe / (2.0 * viscosity * likelySpeed);
        const double factor = 1.0 + (choked - 1.0) * delta / (delta + kOutflowMiddle);
        return 0.25 * kPi * d * d * 0.25 * meanSpeed * factor * (pe - p2);
    }

    [[nodiscard]] double exitPressure(double d, double length, double p1, double p2) const
    {
        // Both sides in units of the largest tube flow, so that the search sees numbers near 1.
        const double scale = tube(d, length, p1, p2);
        return findRoot([&](double pe) { return (tube(d, length, p1, pe) - outflow(d, pe, p2)) / scale; }, p2,
                        p1, 1e-16 * p1);
    }

    [[nodiscard]] double flowOf(double d, const ChannelConditions& c, ChannelModel model) const
    {
        const double p1 = c.upstream.si();
        const double p2 = c.downstream.si();
        const double length = c.length.si();
        if (model == ChannelModel::LengthOnly || p2 > 0.5 * p1)
            return tube(d, length, p1, p2);
        // Of the two sides the outflow is the one without cancellation when the exit loss is small, the tube
        // when it is large; the tube's differences of squares are exact enough for both.
        return tube(d, length, p1, exitPressure(d, length, p1, p2));
    }
};

std::string shown(double number)
{
    return std::isfinite(number) ? roundedText(number, 4) : std::string("not a finite number");
}

} // namespace

Status check(const ChannelConditions& conditions)
{
    const double length = conditions.length.si();
    const double p1 = conditions.upstream.si();
    const double p2 = conditions.downstream.si();
    if (!(length >= 1e-7 && length <= 10.0))
        return fail(ErrorCode::BadInput,
                    fmt::format("the length of the leak channel is {} m; right is 0.1 um to "
                                "10 m",
                                shown(length)));
    if (!(p1 >= 1.0 && p1 <= 2e6))
        return fail(ErrorCode::BadInput,
                    fmt::format("the upstream pressure is {} Pa; right is 1 Pa to 20 bar", shown(p1)));
    if (!(p2 >= 0.0 && p2 < p1))
        return fail(
            ErrorCode::BadInput,
            fmt::format("the downstream pressure is {} Pa; right is 0 to below the upstream pressure, {} "
                        "Pa",
                        shown(p2), shown(p1)));
    return checkFlowTemperature(conditions.temperature);
}

LeakRate longCapillaryFlow(Gas gas, Length diameter, const ChannelConditions& conditions)
{
    SEALWALK_EXPECT(check(conditions).has_value() && diameter.si() > 0.0);
    return LeakRate::fromSi(
        Law(gas, conditions.temperature).flowOf(diameter.si(), conditions, ChannelModel::LengthOnly));
}

double chokedOutflow(Gas gas)
{
    const double gamma = propertiesOf(gas).heatRatio;
    return kDischarge * std::sqrt(gamma) *
           std::pow(2.0 / (gamma + 1.0), (gamma + 1.0) / (2.0 * (gamma - 1.0))) * std::sqrt(2.0 * kPi);
}

double outflowFactor(Gas gas, double rarefaction)
{
    return 1.0 + (chokedOutflow(gas) - 1.0) * rarefaction / (rarefaction + kOutflowMiddle);
}

ChannelFlow channelFlow(Gas gas, Length diameter, const ChannelConditions& conditions)
{
    SEALWALK_EXPECT(check(conditions).has_value() && diameter.si() > 0.0);
    const Law law(gas, conditions.temperature);
    const double d = diameter.si();
    const double p1 = conditions.upstream.si();
    const double p2 = conditions.downstream.si();
    const double length = conditions.length.si();
    ChannelFlow result;
    const double exit = p2 > 0.5 * p1 ? p2 : law.exitPressure(d, length, p1, p2);
    result.exit = pascals(exit);
    result.flow = LeakRate::fromSi(law.tube(d, length, p1, exit));
    const bool molecular =
        regimeOf(rarefaction(gas, conditions.temperature, diameter, result.exit)) == Regime::Molecular;
    result.choked = p2 <= 0.5 * p1 && exit - p2 > kChokedShare * (p1 - p2) && !molecular;
    const double massFlow =
        amountFlow(result.flow, conditions.temperature).si() * propertiesOf(gas).molarMass;
    result.turbulent = 4.0 * massFlow / (kPi * d * law.viscosity) > kTurbulentReynolds;
    return result;
}

Result<Length> channelDiameter(Gas gas, LeakRate flow, const ChannelConditions& conditions,
                               ChannelModel model)
{
    if (const Status ok = check(conditions); !ok)
        return fail(ok.error());
    const double wanted = flow.si();
    if (!(wanted > 0.0 && std::isfinite(wanted)))
        return fail(ErrorCode::BadInput,
                    fmt::format("a leak rate of {} Pa m3/s has no channel; right is a rate above zero",
                                shown(wanted)));
    const Law law(gas, conditions.temperature);
    const double least = law.flowOf(kSmallestDiameter, conditions, model);
    const double most = law.flowOf(kLargestDiameter, conditions, model);
    if (wanted < least || wanted > most)
        return fail(
            ErrorCode::NoAnswer,
            fmt::format("no round channel of {} mm length passes {} mbar l/s; channels from 0.1 nm to 50 mm "
                        "pass {} to {}",
                        shown(conditions.length.si() * 1e3), shown(wanted * 10.0), shown(least * 10.0),
                        shown(most * 10.0)));
    const double logWanted = std::log(wanted);
    const double x = findRoot(
        [&](double logDiameter) {
            return std::log(law.flowOf(std::exp(logDiameter), conditions, model)) - logWanted;
        },
        std::log(kSmallestDiameter), std::log(kLargestDiameter), kLogTolerance);
    return metres(std::exp(x));
}

} // namespace sealwalk::flow
