// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/gas.h"

#include "core/base/contract.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace sealwalk::flow {

namespace {

// Molar masses: IUPAC/CIAAW standard atomic weights, from memory; air: CIPM-2007, 28.96546 g/mol. Viscosity
// at 20 °C and Sutherland's constant were fitted to the cited correlation at 0, 20 and 25 °C.
constexpr GasProperties kGases[] = {
    {Gas::Helium, "helium", "He", 4.002602e-3, 19.593e-6, 71.0, 5.0 / 3.0,
     "Petersen, The properties of helium, Risoe Report 224 (1970)"},
    {Gas::Air, "air", "air", 28.9655e-3, 18.191e-6, 116.0, 1.4,
     "Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21, dilute gas; dry air"},
    {Gas::Nitrogen, "nitrogen", "N2", 28.0134e-3, 17.560e-6, 112.0, 1.4,
     "Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21, dilute gas"},
    {Gas::Argon, "argon", "Ar", 39.948e-3, 22.289e-6, 149.0, 5.0 / 3.0,
     "Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21, dilute gas"},
    {Gas::Hydrogen, "hydrogen", "H2", 2.01588e-3, 8.796e-6, 67.5, 1.41,
     "Muzny, Huber and Kazakov, J. Chem. Eng. Data 58 (2013) 969, dilute gas"},
    {Gas::Neon, "neon", "Ne", 20.1797e-3, 31.349e-6, 60.0, 5.0 / 3.0,
     "Berg and Moldover, J. Phys. Chem. Ref. Data 41 (2012) 043104, from memory"},
    {Gas::CarbonDioxide, "carbon dioxide", "CO2", 44.0095e-3, 14.681e-6, 258.0, 1.29,
     "Fenghour, Wakeham and Vesovic, J. Phys. Chem. Ref. Data 27 (1998) 31, dilute gas"},
    {Gas::WaterVapour, "water vapour", "H2O", 18.0153e-3, 9.5505e-6, 350.0, 1.33,
     "Huber et al. 2009, IAPWS R12-08, dilute gas"},
};

constexpr double kTwentyCelsius = 293.15;
constexpr double kLowest = 250.0;
constexpr double kHighest = 350.0;

std::string lower(std::string_view text)
{
    std::string result(text);
    for (char& c : result)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return result;
}

} // namespace

std::span<const GasProperties> allGases()
{
    return kGases;
}

const GasProperties& propertiesOf(Gas gas)
{
    const auto* found =
        std::find_if(std::begin(kGases), std::end(kGases),
                     [gas](const GasProperties& properties) { return properties.gas == gas; });
    SEALWALK_EXPECT(found != std::end(kGases));
    return *found;
}

Result<Gas> gasNamed(std::string_view text)
{
    const std::string wanted = lower(text);
    std::string known;
    for (const GasProperties& properties : kGases) {
        if (wanted == lower(properties.name) || wanted == lower(properties.symbol))
            return properties.gas;
        known += known.empty() ? "" : ", ";
        known += properties.name;
    }
    if (wanted == "water")
        return Gas::WaterVapour;
    return fail(ErrorCode::BadInput,
                fmt::format("\"{}\" is not a gas known here; known are {}", text, known));
}

double viscosity(Gas gas, Temperature temperature)
{
    const GasProperties& properties = propertiesOf(gas);
    const double t = temperature.si();
    SEALWALK_EXPECT(t > 0.0);
    const double ratio = t / kTwentyCelsius;
    return properties.viscosityAt20 * ratio * std::sqrt(ratio) * (kTwentyCelsius + properties.sutherland) /
           (t + properties.sutherland);
}

double meanSpeed(Gas gas, Temperature temperature)
{
    SEALWALK_EXPECT(temperature.si() > 0.0);
    return std::sqrt(8.0 * kMolarGasConstant * temperature.si() /
                     (std::numbers::pi * propertiesOf(gas).molarMass));
}

double likelySpeed(Gas gas, Temperature temperature)
{
    SEALWALK_EXPECT(temperature.si() > 0.0);
    return std::sqrt(2.0 * kMolarGasConstant * temperature.si() / propertiesOf(gas).molarMass);
}

Status checkFlowTemperature(Temperature temperature)
{
    if (temperature.si() >= kLowest && temperature.si() <= kHighest)
        return {};
    return fail(
        ErrorCode::BadInput,
        fmt::format("a gas temperature of {} degC is outside -23 degC to 77 degC, where the viscosities "
                    "hold",
                    std::isfinite(temperature.si()) ? roundedText(inDegreesCelsius(temperature), 4)
                                                    : std::string("no number")));
}

} // namespace sealwalk::flow
