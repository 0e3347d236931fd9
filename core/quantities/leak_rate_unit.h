// SPDX-License-Identifier: GPL-3.0-or-later
// The units a job may report its leak rates in, and what it takes to convert between pV flow and amounts.
#pragma once

#include "core/quantities/kinds.h"
#include "core/quantities/units.h"

#include <optional>
#include <span>
#include <string_view>

namespace sealwalk {

/// Pressure of every "standard" volume unit, Pa.
inline constexpr double kStandardPressure = 101325.0;
/// R, J/(mol·K), exact since the SI of 2019.
inline constexpr double kMolarGasConstant = 8.31446261815324;

enum class LeakRateUnit
{
    MillibarLitrePerSecond,
    PascalCubicMetrePerSecond,
    TorrLitrePerSecond,
    AtmosphereCubicCentimetrePerSecond,
    StandardCubicCentimetrePerSecond,
    StandardCubicCentimetrePerMinute,
    StandardLitrePerMinute,
    Lusec,
    MolePerSecond,
    MoleculePerSecond,
    GramPerYear,
    KilogramPerSecond,
};

/// All of them, the usual first.
std::span<const LeakRateUnit> allLeakRateUnits();
/// The unit with its factor, stable ASCII id ("mbar l/s") and symbol ("mbar·l/s").
const Unit& unitOf(LeakRateUnit unit);
/// The id kept in files, equal to unitOf(unit).id.
std::string_view idOf(LeakRateUnit unit);
/// Reads an id or any other spelling of one of these units.
Result<LeakRateUnit> leakRateUnit(std::string_view spelling);

/// Temperatures and gas that tie pV flow to amounts, standard volumes and masses.
struct FlowBasis
{
    Temperature gas = degreesCelsius(20.0);     ///< of the flowing gas; above 0 K
    Temperature standard = degreesCelsius(0.0); ///< of "standard" volumes: 0, 20 or 25 °C in the trade
    std::optional<double> molarMass;            ///< kg/mol; needed for g/yr and kg/s only

    bool operator==(const FlowBasis&) const = default;
};

/// `number` of `unit` as pV flow at basis.gas. Refuses numbers that are not finite, a mass flow without molar
/// mass and temperatures not above 0 K. Negative net flows are legal: noise is what it is.
Result<LeakRate> leakRate(double number, const Unit& unit, const FlowBasis& basis = {});
Result<LeakRate> leakRate(double number, LeakRateUnit unit, const FlowBasis& basis = {});
/// The inverse of leakRate().
Result<double> numberIn(LeakRate rate, const Unit& unit, const FlowBasis& basis = {});
Result<double> numberIn(LeakRate rate, LeakRateUnit unit, const FlowBasis& basis = {});

/// Amount flow of a pV flow at `gas`: Q/(R·T).
AmountFlow amountFlow(LeakRate rate, Temperature gas);
LeakRate leakRate(AmountFlow flow, Temperature gas);

} // namespace sealwalk
