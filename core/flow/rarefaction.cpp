// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/rarefaction.h"

#include "core/base/contract.h"
#include "core/quantities/leak_rate_unit.h"

#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

constexpr double kMolecularBelow = 0.1;
constexpr double kViscousAbove = 30.0;

} // namespace

std::string_view nameOf(Regime regime)
{
    switch (regime) {
    case Regime::Molecular:
        return "molecular";
    case Regime::Transitional:
        return "transitional";
    case Regime::Viscous:
        return "viscous";
    case Regime::Choked:
        return "choked";
    }
    return {};
}

double meanFreePathTimesPressure(Gas gas, Temperature temperature)
{
    return viscosity(gas, temperature) * std::sqrt(std::numbers::pi * kMolarGasConstant * temperature.si() /
                                                   (2.0 * propertiesOf(gas).molarMass));
}

Length meanFreePath(Gas gas, Temperature temperature, Pressure pressure)
{
    SEALWALK_EXPECT(pressure.si() > 0.0);
    return metres(meanFreePathTimesPressure(gas, temperature) / pressure.si());
}

double rarefaction(Gas gas, Temperature temperature, Length diameter, Pressure pressure)
{
    return diameter.si() * pressure.si() /
           (2.0 * viscosity(gas, temperature) * likelySpeed(gas, temperature));
}

Regime regimeOf(double rarefaction)
{
    if (rarefaction < kMolecularBelow)
        return Regime::Molecular;
    return rarefaction > kViscousAbove ? Regime::Viscous : Regime::Transitional;
}

} // namespace sealwalk::flow
