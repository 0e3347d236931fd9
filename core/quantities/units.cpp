// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/units.h"

#include "core/quantities/unit_names.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <utility>
#include <vector>

namespace sealwalk {

namespace {

using detail::Dimension;
using detail::UnitPart;

struct Replacement
{
    std::string_view from;
    std::string_view to;
};

// Written forms brought to the one the table of parts uses. A blank separates factors.
constexpr Replacement kReplacements[] = {
    {"·", " "},    {"⋅", " "},        {"∙", " "},        {"×", " "},        {"*", " "},
    {".", " "},    {"\u00a0", " "},   {"³", "3"},        {"²", "2"},        {"⁻", "-"},
    {"¹", "1"},    {"−", "-"},        {"^", ""},         {"(", " "},        {")", " "},
    {"µ", "u"},    {"μ", "u"},        {"°", "deg"},      {"℃", "degC"},     {"℉", "degF"},
    {"per ", "/"}, {"in Hg", "inHg"}, {"mm Hg", "mmHg"}, {"um Hg", "umHg"}, {"deg ", "deg"},
};

std::string plain(std::string_view spelling)
{
    std::string text(spelling);
    for (const Replacement& replacement : kReplacements) {
        for (std::size_t at = text.find(replacement.from); at != std::string::npos;
             at = text.find(replacement.from, at + replacement.to.size()))
            text.replace(at, replacement.from.size(), replacement.to);
    }
    // "atm-cc/s": a hyphen in front of a letter parts factors, in front of a digit it is a sign.
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == '-' && text[i - 1] != ' ' && text[i + 1] != ' ' &&
            !(text[i + 1] >= '0' && text[i + 1] <= '9'))
            text[i] = ' ';
    return text;
}

// "cm3" is cm to the third; "s-1" is s to the minus first.
struct PartPower
{
    UnitPart part;
    int power = 1;
};

std::optional<PartPower> partPower(std::string_view token)
{
    if (const auto whole = detail::findUnitPart(token))
        return PartPower{*whole, 1};
    std::size_t digits = token.size();
    while (digits > 0 && token[digits - 1] >= '0' && token[digits - 1] <= '9')
        --digits;
    if (token.size() - digits != 1)
        return std::nullopt;
    int power = token[digits] - '0';
    if (digits > 0 && token[digits - 1] == '-') {
        --digits;
        power = -power;
    }
    const auto part = detail::findUnitPart(token.substr(0, digits));
    if (!part || power == 0 || part->offset != 0.0)
        return std::nullopt;
    return PartPower{*part, power};
}

struct Product
{
    Dimension dimension = detail::kNoDimension;
    double factor = 1.0;
    double offset = 0.0;
    int parts = 0;
};

void multiply(Product& product, const PartPower& with, int sign)
{
    const int power = with.power * sign;
    for (std::size_t i = 0; i < product.dimension.size(); ++i)
        product.dimension[i] += power * with.part.dimension[i];
    for (int i = 0; i < std::abs(power); ++i)
        product.factor = power > 0 ? product.factor * with.part.factor : product.factor / with.part.factor;
    product.offset = with.part.offset;
    ++product.parts;
}

std::vector<std::string_view> tokens(std::string_view text)
{
    std::vector<std::string_view> found;
    std::size_t at = 0;
    while (at < text.size()) {
        if (text[at] == ' ' || text[at] == '\t') {
            ++at;
            continue;
        }
        if (text[at] == '/') {
            found.push_back(text.substr(at++, 1));
            continue;
        }
        const std::size_t end = std::min(text.find_first_of(" \t/", at), text.size());
        found.push_back(text.substr(at, end - at));
        at = end;
    }
    return found;
}

std::optional<Product> productOf(std::string_view text)
{
    Product product;
    // Force per area would need a force; the two pressures written so are parts of their own.
    std::string joined;
    for (const char c : text)
        if (c != ' ')
            joined += c;
    if (const auto whole = detail::findUnitPart(joined)) {
        multiply(product, PartPower{*whole, 1}, 1);
        return product;
    }
    bool divided = false;
    const auto all = tokens(text);
    for (std::size_t i = 0; i < all.size(); ++i) {
        int sign = 1;
        if (all[i] == "/") {
            // More after the divisor would leave open on which side of the bar it belongs.
            if (divided || i == 0 || i + 2 != all.size())
                return std::nullopt;
            divided = true;
            sign = -1;
            ++i;
        }
        const auto part = partPower(all[i]);
        if (!part)
            return std::nullopt;
        multiply(product, *part, sign);
    }
    if (product.parts == 0 || (product.offset != 0.0 && product.parts > 1))
        return std::nullopt;
    return product;
}

struct KindOfDimension
{
    Dimension dimension;
    UnitKind kind;
    FlowClass flowClass;
};

constexpr KindOfDimension kKinds[] = {
    {{1, 3, -1, 0, 0, 0, 0}, UnitKind::LeakRates, FlowClass::PV},
    {{0, 0, -1, 1, 0, 0, 0}, UnitKind::LeakRates, FlowClass::Amount},
    {{0, 0, -1, 0, 0, 0, 1}, UnitKind::LeakRates, FlowClass::Standard},
    {{0, 0, -1, 0, 1, 0, 0}, UnitKind::LeakRates, FlowClass::Mass},
    {{1, 0, 0, 0, 0, 0, 0}, UnitKind::Pressures, FlowClass::None},
    {{0, 3, 0, 0, 0, 0, 0}, UnitKind::Volumes, FlowClass::None},
    {{0, 3, -1, 0, 0, 0, 0}, UnitKind::VolumeFlows, FlowClass::None},
    {{0, 1, 0, 0, 0, 0, 0}, UnitKind::Lengths, FlowClass::None},
    {{0, 0, 1, 0, 0, 0, 0}, UnitKind::Times, FlowClass::None},
    {{0, 0, 0, 0, 0, 1, 0}, UnitKind::Temperatures, FlowClass::None},
    {{0, 0, 0, 0, 0, 0, 0}, UnitKind::Fractions, FlowClass::None},
};

struct NamesOfKind
{
    UnitKind kind;
    std::string_view name;
    std::string_view example;
};

constexpr NamesOfKind kNames[] = {
    {UnitKind::LeakRates, "a leak rate", "1e-9 mbar l/s"},
    {UnitKind::Pressures, "a pressure", "5 Pa"},
    {UnitKind::Volumes, "a volume", "120 l"},
    {UnitKind::VolumeFlows, "a volume flow", "2.5 l/s"},
    {UnitKind::Lengths, "a length", "5 mm"},
    {UnitKind::Times, "a time", "30 s"},
    {UnitKind::Temperatures, "a temperature", "20 degC"},
    {UnitKind::TemperatureDifferences, "a temperature difference", "2 K"},
    {UnitKind::Fractions, "a share", "25 %"},
};

const NamesOfKind& namesOf(UnitKind kind)
{
    return *std::find_if(std::begin(kNames), std::end(kNames),
                         [kind](const NamesOfKind& names) { return names.kind == kind; });
}

struct CommonUnit
{
    UnitKind kind;
    const char* id;
    const char* symbol;
};

constexpr CommonUnit kCommon[] = {
    {UnitKind::LeakRates, "mbar l/s", "mbar·l/s"},
    {UnitKind::LeakRates, "Pa m3/s", "Pa·m³/s"},
    {UnitKind::LeakRates, "Torr l/s", "Torr·l/s"},
    {UnitKind::LeakRates, "atm cm3/s", "atm·cm³/s"},
    {UnitKind::LeakRates, "std cm3/s", "std cm³/s"},
    {UnitKind::LeakRates, "sccm", "sccm"},
    {UnitKind::LeakRates, "slpm", "slpm"},
    {UnitKind::LeakRates, "lusec", "lusec"},
    {UnitKind::LeakRates, "mol/s", "mol/s"},
    {UnitKind::LeakRates, "molecules/s", "molecules/s"},
    {UnitKind::LeakRates, "g/yr", "g/yr"},
    {UnitKind::LeakRates, "kg/s", "kg/s"},
    {UnitKind::Pressures, "mbar", "mbar"},
    {UnitKind::Pressures, "Pa", "Pa"},
    {UnitKind::Pressures, "hPa", "hPa"},
    {UnitKind::Pressures, "kPa", "kPa"},
    {UnitKind::Pressures, "bar", "bar"},
    {UnitKind::Pressures, "Torr", "Torr"},
    {UnitKind::Pressures, "mTorr", "mTorr"},
    {UnitKind::Pressures, "micron", "micron"},
    {UnitKind::Pressures, "ubar", "µbar"},
    {UnitKind::Pressures, "atm", "atm"},
    {UnitKind::Pressures, "at", "at"},
    {UnitKind::Pressures, "psi", "psi"},
    {UnitKind::Pressures, "inHg", "inHg"},
    {UnitKind::Pressures, "mmHg", "mmHg"},
    {UnitKind::Volumes, "l", "l"},
    {UnitKind::Volumes, "m3", "m³"},
    {UnitKind::Volumes, "cm3", "cm³"},
    {UnitKind::Volumes, "mm3", "mm³"},
    {UnitKind::Volumes, "ft3", "ft³"},
    {UnitKind::VolumeFlows, "l/s", "l/s"},
    {UnitKind::VolumeFlows, "m3/s", "m³/s"},
    {UnitKind::VolumeFlows, "m3/h", "m³/h"},
    {UnitKind::VolumeFlows, "l/min", "l/min"},
    {UnitKind::VolumeFlows, "ft3/min", "ft³/min"},
    {UnitKind::Lengths, "mm", "mm"},
    {UnitKind::Lengths, "m", "m"},
    {UnitKind::Lengths, "cm", "cm"},
    {UnitKind::Lengths, "um", "µm"},
    {UnitKind::Lengths, "in", "in"},
    {UnitKind::Lengths, "ft", "ft"},
    {UnitKind::Times, "s", "s"},
    {UnitKind::Times, "min", "min"},
    {UnitKind::Times, "h", "h"},
    {UnitKind::Times, "d", "d"},
    {UnitKind::Times, "yr", "yr"},
    {UnitKind::Temperatures, "degC", "°C"},
    {UnitKind::Temperatures, "K", "K"},
    {UnitKind::Temperatures, "degF", "°F"},
    {UnitKind::TemperatureDifferences, "K", "K"},
    {UnitKind::TemperatureDifferences, "degC", "°C"},
    {UnitKind::TemperatureDifferences, "degF", "°F"},
    {UnitKind::Fractions, "%", "%"},
    {UnitKind::Fractions, "1", ""},
    {UnitKind::Fractions, "ppm", "ppm"},
    {UnitKind::Fractions, "ppb", "ppb"},
};

std::optional<Unit> composed(std::string_view spelling)
{
    const auto product = productOf(plain(spelling));
    if (!product)
        return std::nullopt;
    const auto* kind = std::find_if(std::begin(kKinds), std::end(kKinds), [&](const KindOfDimension& known) {
        return known.dimension == product->dimension;
    });
    if (kind == std::end(kKinds))
        return std::nullopt;
    Unit unit;
    unit.kind = kind->kind;
    unit.flowClass = kind->flowClass;
    unit.factor = product->factor;
    unit.offset = product->offset;
    return unit;
}

std::vector<Unit> readCommon(UnitKind kind)
{
    std::vector<Unit> units;
    for (const CommonUnit& common : kCommon) {
        if (common.kind != kind)
            continue;
        Unit unit = *composed(common.id);
        unit.kind = kind;
        if (kind == UnitKind::TemperatureDifferences)
            unit.offset = 0.0;
        unit.id = common.id;
        unit.symbol = common.symbol;
        units.push_back(std::move(unit));
    }
    return units;
}

// The spelling a unit is stored under when it is not a common one: the parts as typed, in plain ASCII.
std::string ownId(std::string_view spelling)
{
    std::string id;
    const std::string text = plain(spelling);
    for (const std::string_view token : tokens(text)) {
        if (!id.empty() && token != "/" && id.back() != '/')
            id += ' ';
        id += token;
    }
    return id;
}

void name(Unit& unit, std::string_view spelling)
{
    const auto common = commonUnits(unit.kind);
    // The spelling first: micron and mTorr are one size and keep their own names.
    const std::string own = ownId(spelling);
    auto known = std::find_if(common.begin(), common.end(), [&](const Unit& c) { return c.id == own; });
    if (known == common.end()) {
        known = std::find_if(common.begin(), common.end(), [&](const Unit& c) {
            return c.flowClass == unit.flowClass && c.offset == unit.offset &&
                   std::abs(c.factor - unit.factor) <= 1e-14 * c.factor;
        });
    }
    if (known != common.end()) {
        unit = *known;
        return;
    }
    unit.id = own;
    unit.symbol = own;
}

} // namespace

std::string_view nameOf(UnitKind kind)
{
    return namesOf(kind).name;
}

std::string_view exampleOf(UnitKind kind)
{
    return namesOf(kind).example;
}

Result<Unit> readUnit(std::string_view spelling)
{
    auto unit = composed(spelling);
    if (!unit)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is not a unit known here; right would be for instance \"mbar l/s\", "
                                "\"Pa m3/s\", \"sccm\", \"mbar\", \"l\", \"mm\" or \"degC\"",
                                spelling));
    name(*unit, spelling);
    return *unit;
}

Result<Unit> readUnit(std::string_view spelling, UnitKind kind)
{
    auto unit = readUnit(spelling);
    if (!unit)
        return unit;
    if (kind == UnitKind::TemperatureDifferences && unit->kind == UnitKind::Temperatures) {
        unit->kind = kind;
        unit->offset = 0.0;
    }
    if (unit->kind != kind)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is the unit of {}, but {} is asked for, such as \"{}\"", spelling,
                                nameOf(unit->kind), nameOf(kind), exampleOf(kind)));
    return unit;
}

std::span<const Unit> commonUnits(UnitKind kind)
{
    static const std::array<std::vector<Unit>, std::size(kNames)> all = [] {
        std::array<std::vector<Unit>, std::size(kNames)> units;
        for (std::size_t i = 0; i < std::size(kNames); ++i)
            units[i] = readCommon(kNames[i].kind);
        return units;
    }();
    return all[static_cast<std::size_t>(&namesOf(kind) - kNames)];
}

double toSi(double number, const Unit& unit)
{
    return unit.factor * (number + unit.offset);
}

double fromSi(double si, const Unit& unit)
{
    return si / unit.factor - unit.offset;
}

} // namespace sealwalk
