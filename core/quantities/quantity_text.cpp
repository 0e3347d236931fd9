// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/quantity_text.h"

#include "core/base/contract.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>

namespace sealwalk {

namespace {

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

// Rounding of °C and °F to kelvins must not refuse absolute zero itself.
constexpr double kKelvinRounding = 1e-10;

struct Split
{
    std::string_view number;
    std::string_view unit;
};

Split split(std::string_view text)
{
    const std::string_view whole = trimmed(text);
    const std::size_t length = numberLength(whole);
    return {whole.substr(0, length), trimmed(whole.substr(length))};
}

Result<double> shareInRange(double share, std::string_view text)
{
    if (share < 0.0 || share > 1.0)
        return fail(
            ErrorCode::BadInput,
            fmt::format("\"{}\" is not a share; right is 0 to 100 %, written \"25 %\" or \"0.25\"", text));
    return share;
}

/// @param asked  what the unit is to be of, for the refusal of one that is not known; none: anything
Result<NumberWithUnit> readAsked(std::string_view text, DecimalMark mark, std::optional<UnitKind> asked)
{
    const Split parts = split(text);
    if (parts.number.empty())
        return fail(
            ErrorCode::BadInput,
            fmt::format("\"{}\" does not start with a number; right would be for instance \"2.5e-7 mbar "
                        "l/s\"",
                        text));
    // "1,234.5" or "1.2.3": what follows the number still looks like one.
    if (!parts.unit.empty() &&
        (numberLength(parts.unit) > 0 || parts.unit[0] == ',' || parts.unit[0] == '.') && parts.unit != "1")
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" does not hold one number and its unit; right would be for instance "
                                "\"2.5e-7 mbar l/s\"",
                                text));
    const auto number = parseNumber(parts.number, mark);
    if (!number)
        return fail(number.error());
    if (parts.unit.empty())
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" has no unit; right would be for instance \"{} mbar l/s\"", text,
                                parts.number));
    auto unit = readUnit(parts.unit);
    if (!unit && asked)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is not a unit known here; {} is asked for, such as \"{}\"",
                                parts.unit, nameOf(*asked), exampleOf(*asked)));
    if (!unit)
        return fail(unit.error());
    return NumberWithUnit{*number, *std::move(unit)};
}

} // namespace

Result<NumberWithUnit> readQuantity(std::string_view text, DecimalMark mark)
{
    return readAsked(text, mark, std::nullopt);
}

Result<double> checkedSi(double number, const Unit& unit)
{
    SEALWALK_EXPECT(unit.kind != UnitKind::LeakRates);
    double si = toSi(number, unit);
    if (!std::isfinite(si))
        return fail(ErrorCode::BadInput, fmt::format("{} must be a finite number", nameOf(unit.kind)));
    if (unit.kind == UnitKind::Temperatures && si < 0.0 && si > -kKelvinRounding)
        si = 0.0;
    const bool neverNegative = unit.kind == UnitKind::Pressures || unit.kind == UnitKind::Volumes ||
                               unit.kind == UnitKind::Temperatures;
    if (neverNegative && si < 0.0) {
        if (unit.kind == UnitKind::Temperatures)
            return fail(ErrorCode::BadInput, fmt::format("{} {} is below absolute zero; a temperature is at "
                                                         "least 0 K (-273.15 degC)",
                                                         exactText(number), unit.id));
        return fail(ErrorCode::BadInput,
                    fmt::format("{} {} is below zero; {} is at least 0 {}{}", exactText(number), unit.id,
                                nameOf(unit.kind), unit.id,
                                unit.kind == UnitKind::Pressures ? ", counted from vacuum" : ""));
    }
    return si;
}

Result<double> parseSi(std::string_view text, UnitKind kind, const Unit* unitOfBareNumber, DecimalMark mark)
{
    SEALWALK_EXPECT(kind != UnitKind::LeakRates);
    const Split parts = split(text);
    if (!parts.number.empty() && parts.unit.empty() && (unitOfBareNumber || kind == UnitKind::Fractions)) {
        const auto number = parseNumber(parts.number, mark);
        if (!number)
            return fail(number.error());
        if (kind == UnitKind::Fractions)
            return shareInRange(unitOfBareNumber ? toSi(*number, *unitOfBareNumber) : *number, text);
        return checkedSi(*number, *unitOfBareNumber);
    }
    if (!parts.number.empty() && parts.unit.empty())
        return fail(ErrorCode::BadInput, fmt::format("\"{}\" has no unit; {} is asked for, such as \"{}\"",
                                                     text, nameOf(kind), exampleOf(kind)));
    const auto read = readAsked(text, mark, kind);
    if (!read)
        return fail(read.error());
    const auto unit = readUnit(read->unit.id, kind);
    if (!unit)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is {}, but {} is asked for, such as \"{}\"", trimmed(text),
                                nameOf(read->unit.kind), nameOf(kind), exampleOf(kind)));
    const auto si = checkedSi(read->number, *unit);
    if (si && kind == UnitKind::Fractions)
        return shareInRange(*si, text);
    return si;
}

Result<LeakRate> parseLeakRate(std::string_view text, const FlowBasis& basis, DecimalMark mark)
{
    const auto read = readAsked(text, mark, UnitKind::LeakRates);
    if (!read)
        return fail(read.error());
    if (read->unit.kind != UnitKind::LeakRates)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is {}, but a leak rate is asked for, such as "
                                "\"{}\"",
                                trimmed(text), nameOf(read->unit.kind), exampleOf(UnitKind::LeakRates)));
    return leakRate(read->number, read->unit, basis);
}

std::string text(LeakRate rate, LeakRateUnit unit, int digits, const FlowBasis& basis)
{
    const auto number = numberIn(rate, unit, basis);
    SEALWALK_EXPECT(number.has_value());
    return roundedText(*number, digits) + ' ' + std::string(idOf(unit));
}

namespace detail {

std::string textOfSi(double si, UnitKind kind, const Unit& unit, int digits)
{
    SEALWALK_EXPECT(unit.kind == kind);
    const std::string number = roundedText(fromSi(si, unit), digits);
    return unit.id == "1" ? number : number + ' ' + unit.id;
}

double numberOfSi(double si, UnitKind kind, std::string_view unit)
{
    const auto known = readUnit(unit, kind);
    SEALWALK_EXPECT(known.has_value());
    return fromSi(si, *known);
}

} // namespace detail

} // namespace sealwalk
