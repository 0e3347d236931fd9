// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/conversion.h"

#include "core/quantities/number_text.h"
#include "core/quantities/quantity_text.h"

#include <fmt/format.h>

#include <cmath>

namespace sealwalk {

namespace {

std::string celsius(Temperature t)
{
    return fmt::format("{} degC ({} K)", trimmedText(inDegreesCelsius(t), 6), trimmedText(t.si(), 6));
}

std::vector<std::string> assumptions(const Unit& from, const Unit& to, const FlowBasis& basis,
                                     std::string_view gasName)
{
    std::vector<std::string> said;
    const FlowClass a = from.flowClass;
    const FlowClass b = to.flowClass;
    if (a == b)
        return said;
    if (a == FlowClass::PV || b == FlowClass::PV)
        said.push_back("gas temperature " + celsius(basis.gas));
    if (a == FlowClass::Standard || b == FlowClass::Standard)
        said.push_back("standard volumes at 101325 Pa and " + celsius(basis.standard));
    if ((a == FlowClass::Mass || b == FlowClass::Mass) && basis.molarMass) {
        const std::string mass = trimmedText(*basis.molarMass * 1000.0, 7) + " g/mol";
        said.push_back(gasName.empty() ? "molar mass " + mass
                                       : fmt::format("gas {}, molar mass {}", gasName, mass));
    }
    if (from.id.ends_with("/yr") || to.id.ends_with("/yr") || from.id.ends_with("/a") ||
        to.id.ends_with("/a"))
        said.push_back("a year of 365 days");
    return said;
}

} // namespace

Result<Conversion> convert(double number, const Unit& from, const Unit& to, const FlowBasis& basis,
                           std::string_view gasName)
{
    Unit source = from;
    // A span of temperature is only told from a point by what the other side is.
    if (from.kind == UnitKind::Temperatures && to.kind == UnitKind::TemperatureDifferences) {
        source.kind = to.kind;
        source.offset = 0.0;
    }
    if (source.kind != to.kind)
        return fail(ErrorCode::BadInput, fmt::format("{} in {} cannot be converted to {} ({})",
                                                     nameOf(source.kind), from.id, nameOf(to.kind), to.id));
    Conversion result;
    if (from.kind == UnitKind::LeakRates) {
        if (from.flowClass == to.flowClass) {
            // Within a class no temperature enters.
            if (!std::isfinite(number))
                return fail(ErrorCode::BadInput, "a leak rate must be a finite number");
            result.number = fromSi(toSi(number, from), to);
        } else {
            const auto rate = leakRate(number, from, basis);
            if (!rate)
                return fail(rate.error());
            const auto converted = numberIn(*rate, to, basis);
            if (!converted)
                return fail(converted.error());
            result.number = *converted;
        }
        result.assumptions = assumptions(from, to, basis, gasName);
    } else {
        const auto si = checkedSi(number, source);
        if (!si)
            return fail(si.error());
        result.number = fromSi(*si, to);
    }
    if (!std::isfinite(result.number))
        return fail(ErrorCode::BadInput,
                    fmt::format("{} {} is too large to be written in {}", exactText(number), from.id, to.id));
    return result;
}

} // namespace sealwalk
