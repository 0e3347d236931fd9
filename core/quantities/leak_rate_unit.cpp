// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/leak_rate_unit.h"

#include "core/base/contract.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace sealwalk {

namespace {

struct Named
{
    LeakRateUnit unit;
    std::string_view id;
};

constexpr std::array kNamed = {
    Named{LeakRateUnit::MillibarLitrePerSecond, "mbar l/s"},
    Named{LeakRateUnit::PascalCubicMetrePerSecond, "Pa m3/s"},
    Named{LeakRateUnit::TorrLitrePerSecond, "Torr l/s"},
    Named{LeakRateUnit::AtmosphereCubicCentimetrePerSecond, "atm cm3/s"},
    Named{LeakRateUnit::StandardCubicCentimetrePerSecond, "std cm3/s"},
    Named{LeakRateUnit::StandardCubicCentimetrePerMinute, "sccm"},
    Named{LeakRateUnit::StandardLitrePerMinute, "slpm"},
    Named{LeakRateUnit::Lusec, "lusec"},
    Named{LeakRateUnit::MolePerSecond, "mol/s"},
    Named{LeakRateUnit::MoleculePerSecond, "molecules/s"},
    Named{LeakRateUnit::GramPerYear, "g/yr"},
    Named{LeakRateUnit::KilogramPerSecond, "kg/s"},
};

// Pa·m³/s per SI unit of the flow class, or why there is none.
Result<double> pvPerClassUnit(const Unit& unit, const FlowBasis& basis)
{
    if (unit.kind != UnitKind::LeakRates)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is the unit of {}, but a leak rate is asked for, "
                                "such as \"1e-9 mbar l/s\"",
                                unit.id, nameOf(unit.kind)));
    if (unit.flowClass == FlowClass::PV)
        return 1.0;
    const double gas = basis.gas.si();
    const double standard = basis.standard.si();
    if (!(gas > 0.0 && std::isfinite(gas)) || !(standard > 0.0 && std::isfinite(standard)))
        return fail(ErrorCode::BadInput, "the gas and standard temperatures must be above 0 K");
    if (unit.flowClass == FlowClass::Amount)
        return kMolarGasConstant * gas;
    if (unit.flowClass == FlowClass::Standard)
        return kStandardPressure * gas / standard;
    if (!basis.molarMass)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is a mass flow and needs the gas named, such as helium", unit.id));
    if (!(*basis.molarMass > 0.0 && std::isfinite(*basis.molarMass)))
        return fail(ErrorCode::BadInput, "the molar mass of the gas must be above zero");
    return kMolarGasConstant * gas / *basis.molarMass;
}

} // namespace

std::span<const LeakRateUnit> allLeakRateUnits()
{
    static constexpr auto kAll = [] {
        std::array<LeakRateUnit, kNamed.size()> all{};
        for (std::size_t i = 0; i < kNamed.size(); ++i)
            all[i] = kNamed[i].unit;
        return all;
    }();
    return kAll;
}

std::string_view idOf(LeakRateUnit unit)
{
    const auto found =
        std::find_if(kNamed.begin(), kNamed.end(), [unit](const Named& named) { return named.unit == unit; });
    SEALWALK_EXPECT(found != kNamed.end());
    return found->id;
}

const Unit& unitOf(LeakRateUnit unit)
{
    const auto common = commonUnits(UnitKind::LeakRates);
    const auto found = std::find_if(common.begin(), common.end(),
                                    [id = idOf(unit)](const Unit& known) { return known.id == id; });
    SEALWALK_EXPECT(found != common.end());
    return *found;
}

Result<LeakRateUnit> leakRateUnit(std::string_view spelling)
{
    const auto unit = readUnit(spelling, UnitKind::LeakRates);
    if (!unit)
        return fail(unit.error());
    for (const Named& named : kNamed)
        if (named.id == unit->id)
            return named.unit;
    return fail(
        ErrorCode::BadInput,
        fmt::format("\"{}\" is a unit of leak rate, but not one a job can report in; right would be for "
                    "instance \"mbar l/s\", \"Pa m3/s\" or \"sccm\"",
                    spelling));
}

Result<LeakRate> leakRate(double number, const Unit& unit, const FlowBasis& basis)
{
    const auto scale = pvPerClassUnit(unit, basis);
    if (!scale)
        return fail(scale.error());
    const double si = toSi(number, unit) * *scale;
    if (!std::isfinite(si))
        return fail(ErrorCode::BadInput, "a leak rate must be a finite number");
    return LeakRate::fromSi(si);
}

Result<LeakRate> leakRate(double number, LeakRateUnit unit, const FlowBasis& basis)
{
    return leakRate(number, unitOf(unit), basis);
}

Result<double> numberIn(LeakRate rate, const Unit& unit, const FlowBasis& basis)
{
    const auto scale = pvPerClassUnit(unit, basis);
    if (!scale)
        return fail(scale.error());
    const double number = fromSi(rate.si() / *scale, unit);
    if (!std::isfinite(number))
        return fail(ErrorCode::BadInput, "a leak rate must be a finite number");
    return number;
}

Result<double> numberIn(LeakRate rate, LeakRateUnit unit, const FlowBasis& basis)
{
    return numberIn(rate, unitOf(unit), basis);
}

AmountFlow amountFlow(LeakRate rate, Temperature gas)
{
    SEALWALK_EXPECT(gas.si() > 0.0);
    return AmountFlow::fromSi(rate.si() / (kMolarGasConstant * gas.si()));
}

LeakRate leakRate(AmountFlow flow, Temperature gas)
{
    SEALWALK_EXPECT(gas.si() > 0.0);
    return LeakRate::fromSi(flow.si() * kMolarGasConstant * gas.si());
}

} // namespace sealwalk
