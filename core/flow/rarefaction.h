// SPDX-License-Identifier: GPL-3.0-or-later
// How far a gas in a channel is from behaving as a fluid.
#pragma once

#include "core/flow/gas.h"

#include <string_view>

namespace sealwalk::flow {

enum class Regime
{
    Molecular,
    Transitional,
    Viscous,
    Choked, ///< the exit, not the length, sets the flow
};

/// "molecular", "transitional", "viscous", "choked"
std::string_view nameOf(Regime regime);

/// Mean free path times pressure, Pa·m; from viscosity: eta · sqrt(pi R T/(2 M)).
double meanFreePathTimesPressure(Gas gas, Temperature temperature);
/// Mean free path at `pressure` above zero.
Length meanFreePath(Gas gas, Temperature temperature, Pressure pressure);
/// delta = d·p/(2·eta·v0) of a channel of this diameter; 0 at zero pressure.
double rarefaction(Gas gas, Temperature temperature, Length diameter, Pressure pressure);
/// Molecular below delta 0.1, viscous above 30, transitional between.
Regime regimeOf(double rarefaction);

} // namespace sealwalk::flow
