// SPDX-License-Identifier: GPL-3.0-or-later
// The gases the trade meets, and what of them depends on temperature only.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <span>
#include <string_view>

namespace sealwalk::flow {

enum class Gas
{
    Helium,
    Air,
    Nitrogen,
    Argon,
    Hydrogen,
    Neon,
    CarbonDioxide,
    WaterVapour,
};

/// Viscosity by Sutherland: viscosityAt20 · (T/293.15)^1.5 · (293.15 + S)/(T + S). Within 0.5 % of the cited
/// correlation (water vapour 1 %) from 250 K to 350 K (water vapour from 270 K) below 2 bar.
struct GasProperties
{
    Gas gas = Gas::Helium;
    std::string_view name;      ///< "helium"
    std::string_view symbol;    ///< "He"
    double molarMass = 0.0;     ///< kg/mol
    double viscosityAt20 = 0.0; ///< Pa·s at 293.15 K
    double sutherland = 0.0;    ///< K
    double heatRatio = 0.0;     ///< cp/cv
    std::string_view source;
};

/// Helium first, then air, then the rest.
std::span<const GasProperties> allGases();
const GasProperties& propertiesOf(Gas gas);
/// By name or symbol in any case: "helium", "He", "N2", "carbon dioxide".
Result<Gas> gasNamed(std::string_view text);

/// Pa·s
double viscosity(Gas gas, Temperature temperature);
/// Mean thermal speed sqrt(8RT/(pi M)), m/s
double meanSpeed(Gas gas, Temperature temperature);
/// Most probable speed sqrt(2RT/M), m/s
double likelySpeed(Gas gas, Temperature temperature);

/// Whether `temperature` is where the viscosities hold, 250 K to 350 K; the error names the range.
Status checkFlowTemperature(Temperature temperature);

} // namespace sealwalk::flow
