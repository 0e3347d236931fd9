// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_gas.h"

#include "core/analysis/job_view.h"
#include "core/analysis/uncertainty.h"

#include <cmath>

namespace sealwalk::report {

namespace {

constexpr double kCoverage = 2.0; // 95 %, as in the balance

LeakRate turned(LeakRate rate, flow::Gas from, flow::Gas to, const flow::ChannelConditions& channel)
{
    if (rate.si() > 0.0)
        if (const auto answer = flow::airEquivalent(rate, {from, to, channel, std::nullopt}))
            return answer->rate;
    // Nothing, below nothing, or finer than any channel: all molecular.
    return rate * flow::molecularRatio(from, to);
}

} // namespace

ShownGas::ShownGas(const model::Setup& setup)
    : m_basis(setup.gasBasis)
{
    const flow::ChannelConditions channel = analysis::channelConditions(setup);
    if (flow::check(channel))
        m_channel = channel;
}

LeakRate ShownGas::ofHelium(LeakRate helium) const
{
    return isAir() ? turned(helium, flow::Gas::Helium, flow::Gas::Air, m_channel) : helium;
}

LeakRate ShownGas::toHelium(LeakRate shown) const
{
    return isAir() ? turned(shown, flow::Gas::Air, flow::Gas::Helium, m_channel) : shown;
}

ShownGas::Range ShownGas::range(LeakRate helium, LeakRate low, LeakRate high) const
{
    if (!isAir() || !(low.si() > 0.0) || !(helium.si() > 0.0))
        return {ofHelium(low), ofHelium(high)};
    const auto air =
        flow::airEquivalent(helium, {flow::Gas::Helium, flow::Gas::Air, m_channel, std::nullopt});
    if (!air)
        return {ofHelium(low), ofHelium(high)};
    const double form = kCoverage * analysis::logSpread(air->relativeUncertainty);
    return {air->rate * std::exp(-std::hypot(std::log(helium / low), form)),
            air->rate * std::exp(std::hypot(std::log(high / helium), form))};
}

} // namespace sealwalk::report
