// SPDX-License-Identifier: GPL-3.0-or-later
// Units of measurement by their spelling: what kind of quantity a unit belongs to and its factor to SI.
#pragma once

#include "core/base/result.h"

#include <span>
#include <string>
#include <string_view>

namespace sealwalk {

enum class UnitKind
{
    LeakRates,
    Pressures,
    Volumes,
    VolumeFlows,
    Lengths,
    Times,
    Temperatures,
    TemperatureDifferences,
    Fractions,
};

/// "a leak rate", "a pressure" …, for sentences.
std::string_view nameOf(UnitKind kind);
/// A value with its unit that would be right, for sentences: "1e-9 mbar l/s".
std::string_view exampleOf(UnitKind kind);

/// What a unit of leak rate counts. The classes convert into one another only with a gas temperature, a
/// standard temperature or a molar mass; see FlowBasis.
enum class FlowClass
{
    None,     ///< not a unit of leak rate
    PV,       ///< pressure times volume at the temperature of the gas
    Amount,   ///< moles or molecules
    Standard, ///< volume at 101325 Pa and the standard temperature
    Mass,     ///< mass of a named gas
};

/// SI value = factor · (number + offset). SI here: Pa·m³/s, mol/s, standard m³/s or kg/s by flow class; Pa,
/// m³, m³/s, m, s, K, 1 for the other kinds.
struct Unit
{
    UnitKind kind = UnitKind::Fractions;
    FlowClass flowClass = FlowClass::None;
    double factor = 1.0;
    double offset = 0.0;
    std::string id;     ///< plain ASCII: "mbar l/s"; readUnit(id) gives the unit back
    std::string symbol; ///< for screens and print, UTF-8: "mbar·l/s"

    bool operator==(const Unit&) const = default;
};

/// Reads a unit in any spelling of the trade: middle dots, points, blanks or stars between the parts,
/// superscripts or plain digits, L for l. Units not in commonUnits() are composed of known parts
/// ("Torr l/min"). A lone temperature unit reads as Temperature. Refuses what it does not know by name.
Result<Unit> readUnit(std::string_view spelling);

/// As above, and refuses a unit of another kind in a sentence that names both. A temperature unit is taken as
/// TemperatureDifference when that is asked for.
Result<Unit> readUnit(std::string_view spelling, UnitKind kind);

/// The units a person chooses from, the usual first.
std::span<const Unit> commonUnits(UnitKind kind);

double toSi(double number, const Unit& unit);
double fromSi(double si, const Unit& unit);

} // namespace sealwalk
