// SPDX-License-Identifier: GPL-3.0-or-later
// A leak as one round channel: a long capillary by Knudsen's flow law, in series with its exit aperture.
//
// Local law (Knudsen, Ann. Phys. 28 (1909) 75; constants from memory):
//   Q dz = -[ pi d^4 p/(128 eta) + (d^3/6) sqrt(2 pi R T/M) (1 + X)/(1 + kappa X) ] dp,
//   X = d p sqrt(M/(R T))/eta, kappa = 1.235,
// integrated exactly over the length. It is high against kinetic theory (linearised BGK equation) by at most
// 6 %, near delta = 3; in the ratio of two gases most of that cancels.
#pragma once

#include "core/flow/gas.h"

namespace sealwalk::flow {

struct ChannelConditions
{
    Length length = millimetres(5.0);             ///< of the channel; above 0, at most 10 m
    Pressure upstream = pascals(1e5);             ///< 1 Pa to 2e6 Pa
    Pressure downstream = pascals(0.0);           ///< 0 or more, below upstream
    Temperature temperature = degreesCelsius(20); ///< of the gas, 250 K to 350 K

    bool operator==(const ChannelConditions&) const = default;
};

/// Names field, value and what would be right.
Status check(const ChannelConditions& conditions);

/// Flow through the length alone. Holds for length/diameter from 20 and an exit far from choking.
/// Conditions must pass check(); `diameter` is above 0.
LeakRate longCapillaryFlow(Gas gas, Length diameter, const ChannelConditions& conditions);

/// Most that the exit lets pass, over its molecular value: C_d · sqrt(gamma) ·
/// (2/(gamma+1))^((gamma+1)/(2(gamma-1))) · sqrt(2 pi) with C_d = 0.84. Simulated outflow of helium into
/// vacuum gives about 1.53 (from memory).
double chokedOutflow(Gas gas);
/// Outflow through an aperture over its molecular value at rarefaction delta: 1 + (chokedOutflow -
/// 1)·delta/(delta + 3). The form between the limits is ours, within about 4 % of simulations (from memory).
double outflowFactor(Gas gas, double rarefaction);

struct ChannelFlow
{
    LeakRate flow;
    Pressure exit;          ///< inside the channel, just before it opens
    bool choked = false;    ///< exit above 0.3 of upstream and not molecular: then ±20 %, else ±6 %
    bool turbulent = false; ///< Reynolds number above 2000: not modelled, the flow is overstated
};

/// Flow through the length and the exit aperture in series. Where downstream is above half of upstream the
/// exit loss is small and left out, as the aperture law does not hold there.
ChannelFlow channelFlow(Gas gas, Length diameter, const ChannelConditions& conditions);

enum class ChannelModel
{
    LengthOnly,
    LengthAndExit
};

/// The diameter that passes `flow`. Fails when conditions do not pass check(), and when no channel from 1e-10
/// m to 0.05 m passes that flow; `flow` must be above zero.
Result<Length> channelDiameter(Gas gas, LeakRate flow, const ChannelConditions& conditions,
                               ChannelModel model = ChannelModel::LengthAndExit);

} // namespace sealwalk::flow
