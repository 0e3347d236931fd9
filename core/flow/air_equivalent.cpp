// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/air_equivalent.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::flow {

namespace {

constexpr double kLeastUncertainty = 0.05;

} // namespace

double molecularRatio(Gas from, Gas to)
{
    return std::sqrt(propertiesOf(from).molarMass / propertiesOf(to).molarMass);
}

double laminarRatio(Gas from, Gas to, Temperature temperature)
{
    return viscosity(from, temperature) / viscosity(to, temperature);
}

double chokedHoleRatio(Gas from, Gas to)
{
    return chokedOutflow(to) / chokedOutflow(from) * molecularRatio(from, to);
}

Result<AirEquivalent> airEquivalent(LeakRate rate, const AirEquivalentOptions& options)
{
    const auto diameter = channelDiameter(options.from, rate, options.conditions);
    if (!diameter)
        return fail(diameter.error());
    if (options.elsewhere)
        if (const Status ok = check(*options.elsewhere); !ok)
            return fail(ok.error());

    const ChannelConditions& here = options.conditions;
    const ChannelConditions& there = options.elsewhere.value_or(here);
    const ChannelFlow measured = channelFlow(options.from, *diameter, here);
    const ChannelFlow wanted = channelFlow(options.to, *diameter, there);

    AirEquivalent result;
    result.diameter = *diameter;
    result.rate = wanted.flow;
    result.ratio = wanted.flow / rate;
    const Pressure mean = pascals(0.5 * (here.upstream.si() + measured.exit.si()));
    result.regime = regimeOf(rarefaction(options.from, here.temperature, *diameter, mean));
    const bool choked = measured.choked || wanted.choked;
    if (choked)
        result.regime = Regime::Choked;
    result.turbulent = measured.turbulent || wanted.turbulent;

    // Other pressures and temperatures move molecular and laminar leaks each by their own law.
    const double dp = (there.upstream - there.downstream).si() / (here.upstream - here.downstream).si();
    const double meanPressures =
        (there.upstream + there.downstream).si() / (here.upstream + here.downstream).si();
    const double molecular = molecularRatio(options.from, options.to) * dp *
                             std::sqrt(there.temperature.si() / here.temperature.si());
    const double laminar = viscosity(options.from, here.temperature) /
                           viscosity(options.to, there.temperature) * dp * meanPressures;
    const double hole = chokedHoleRatio(options.from, options.to) * there.upstream.si() / here.upstream.si() *
                        std::sqrt(there.temperature.si() / here.temperature.si());
    // The flow minimum between the regimes can leave the two limits by a per cent or two.
    double low = std::min({molecular, laminar, result.ratio});
    double high = std::max({molecular, laminar, result.ratio});
    if (choked) {
        low = std::min(low, hole);
        high = std::max(high, hole);
    }
    result.ratioLow = low;
    result.ratioHigh = high;
    const double log = std::log(result.ratio);
    const double nearer = std::min(std::abs(log - std::log(low)), std::abs(std::log(high) - log));
    result.relativeUncertainty = std::max(kLeastUncertainty, 0.5 * nearer);
    if (options.from == options.to && !options.elsewhere) {
        result.ratioLow = 1.0;
        result.ratioHigh = 1.0;
        result.relativeUncertainty = 0.0;
    }
    result.notes.push_back("the channel is equivalent: real leaks are cracks and scratches, not round holes");
    if (choked)
        result.notes.push_back("the exit of the channel chokes; the model is good to about 20 %");
    if (result.turbulent)
        result.notes.push_back("the flow would be turbulent, which is not modelled");
    if (here.length / *diameter < 20.0)
        result.notes.push_back("the channel is shorter than 20 diameters; the model is good to about 20 %");
    return result;
}

} // namespace sealwalk::flow
