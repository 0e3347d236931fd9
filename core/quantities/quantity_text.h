// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities read from "value unit" and printed so, the same in every locale of the machine.
#pragma once

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <string>
#include <string_view>

namespace sealwalk {

/// Which kind of unit a quantity type is written with; specialised below for every type that has text.
template <class Q>
struct KindOf;
template <>
struct KindOf<Pressure>
{
    static constexpr UnitKind value = UnitKind::Pressures;
};
template <>
struct KindOf<Volume>
{
    static constexpr UnitKind value = UnitKind::Volumes;
};
template <>
struct KindOf<PumpingSpeed>
{
    static constexpr UnitKind value = UnitKind::VolumeFlows;
};
template <>
struct KindOf<Conductance>
{
    static constexpr UnitKind value = UnitKind::VolumeFlows;
};
template <>
struct KindOf<Length>
{
    static constexpr UnitKind value = UnitKind::Lengths;
};
template <>
struct KindOf<Duration>
{
    static constexpr UnitKind value = UnitKind::Times;
};
template <>
struct KindOf<Temperature>
{
    static constexpr UnitKind value = UnitKind::Temperatures;
};
template <>
struct KindOf<TemperatureDifference>
{
    static constexpr UnitKind value = UnitKind::TemperatureDifferences;
};
template <>
struct KindOf<Fraction>
{
    static constexpr UnitKind value = UnitKind::Fractions;
};

/// A number with the unit it was written in.
struct NumberWithUnit
{
    double number = 0.0;
    Unit unit;
};

/// Splits "2.5e-7 mbar l/s" and reads both halves; a unit is required.
Result<NumberWithUnit> readQuantity(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// The SI value, or a refusal: not finite, a pressure or volume below zero, a temperature below 0 K. For all
/// kinds but leak rates, which need a FlowBasis.
Result<double> checkedSi(double number, const Unit& unit);

/// SI value of a text with unit of `kind`; a bare number is taken in `unitOfBareNumber` if that is given and
/// refused otherwise. Shares are between 0 and 1 and may be bare: "0.25" is "25 %".
Result<double> parseSi(std::string_view text, UnitKind kind, const Unit* unitOfBareNumber = nullptr,
                       DecimalMark mark = DecimalMark::Point);

/// parse<Pressure>("5 Pa"), parse<Length>("5 mm"), parse<Fraction>("25 %") …
template <class Q>
Result<Q> parse(std::string_view text, DecimalMark mark = DecimalMark::Point)
{
    return parseSi(text, KindOf<Q>::value, nullptr, mark).map([](double si) { return Q::fromSi(si); });
}

/// "2.5e-7 mbar l/s" as pV flow at basis.gas. A negative rate is legal.
Result<LeakRate> parseLeakRate(std::string_view text, const FlowBasis& basis = {},
                               DecimalMark mark = DecimalMark::Point);

/// "4.6e-4 mbar": `digits` significant digits and the unit's id. The unit must be of the quantity's kind.
template <class Q>
std::string text(Q quantity, const Unit& unit, int digits = 3);
std::string text(LeakRate rate, LeakRateUnit unit, int digits = 3, const FlowBasis& basis = {});

/// The number in a unit of commonUnits() or any other spelling; an unknown unit or another kind breaks the
/// contract, so use it with names written in code.
template <class Q>
double numberIn(Q quantity, std::string_view unit);

namespace detail {
std::string textOfSi(double si, UnitKind kind, const Unit& unit, int digits);
double numberOfSi(double si, UnitKind kind, std::string_view unit);
} // namespace detail

template <class Q>
std::string text(Q quantity, const Unit& unit, int digits)
{
    return detail::textOfSi(quantity.si(), KindOf<Q>::value, unit, digits);
}

template <class Q>
double numberIn(Q quantity, std::string_view unit)
{
    return detail::numberOfSi(quantity.si(), KindOf<Q>::value, unit);
}

} // namespace sealwalk
