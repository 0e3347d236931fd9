// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/air_equivalent.h"
#include "core/flow/rarefaction.h"
#include "core/quantities/leak_rate_unit.h"
#include "tests/support/check_row.h"

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

const Temperature kRoom = degreesCelsius(20.0);

double micropascalSeconds(Gas gas, double kelvin)
{
    return viscosity(gas, kelvins(kelvin)) * 1e6;
}

constexpr const char* kFit = "Sutherland's formula with the constants of the table, worked out elsewhere";
constexpr const char* kKinetic = "kinetic theory with the SI constants of 2019, worked out elsewhere";
constexpr const char* kCrc = "CRC Handbook, Viscosity of Gases (Huber and Harvey), three digits at 300 K";
constexpr const char* kBergMoldover =
    "Berg and Moldover, J. Phys. Chem. Ref. Data 41 (2012) 043104, from memory";

class GasRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(GasRows, Agrees)
{
    tests::expectRow(GetParam());
}

// Published: each row names its source; rows 50 to 62 test the physics and not only the arithmetic.
INSTANTIATE_TEST_SUITE_P(
    Published, GasRows,
    testing::Values(
        CheckRow{"G_01", 18.64663, 1e-5, kFit, [] { return micropascalSeconds(Gas::Helium, 273.15); }},
        CheckRow{"G_02", 17.2024, 1e-5, kFit, [] { return micropascalSeconds(Gas::Air, 273.15); }},
        CheckRow{"G_03", 16.61412, 1e-5, kFit, [] { return micropascalSeconds(Gas::Nitrogen, 273.15); }},
        CheckRow{"G_04", 20.99715, 1e-5, kFit, [] { return micropascalSeconds(Gas::Argon, 273.15); }},
        CheckRow{"G_05", 8.375866, 1e-5, kFit, [] { return micropascalSeconds(Gas::Hydrogen, 273.15); }},
        CheckRow{"G_06", 29.88891, 1e-5, kFit, [] { return micropascalSeconds(Gas::Neon, 273.15); }},
        CheckRow{"G_07", 13.70172, 1e-5, kFit, [] { return micropascalSeconds(Gas::CarbonDioxide, 273.15); }},
        CheckRow{"G_08", 8.865694, 1e-5, kFit, [] { return micropascalSeconds(Gas::WaterVapour, 273.15); }},
        CheckRow{"G_09", 19.8242, 1e-5, kFit, [] { return micropascalSeconds(Gas::Helium, 298.15); }},
        CheckRow{"G_10", 18.43312, 1e-5, kFit, [] { return micropascalSeconds(Gas::Air, 298.15); }},
        CheckRow{"G_11", 17.7916, 1e-5, kFit, [] { return micropascalSeconds(Gas::Nitrogen, 298.15); }},
        CheckRow{"G_12", 22.60603, 1e-5, kFit, [] { return micropascalSeconds(Gas::Argon, 298.15); }},
        CheckRow{"G_13", 8.898626, 1e-5, kFit, [] { return micropascalSeconds(Gas::Hydrogen, 298.15); }},
        CheckRow{"G_14", 31.70555, 1e-5, kFit, [] { return micropascalSeconds(Gas::Neon, 298.15); }},
        CheckRow{"G_15", 14.92282, 1e-5, kFit, [] { return micropascalSeconds(Gas::CarbonDioxide, 298.15); }},
        CheckRow{"G_16", 9.720313, 1e-5, kFit, [] { return micropascalSeconds(Gas::WaterVapour, 298.15); }},
        CheckRow{"G_17", 1245.262, 1e-5, kKinetic, [] { return meanSpeed(Gas::Helium, kRoom); }},
        CheckRow{"G_18", 462.9047, 1e-5, kKinetic, [] { return meanSpeed(Gas::Air, kRoom); }},
        CheckRow{"G_19", 470.7054, 1e-5, kKinetic, [] { return meanSpeed(Gas::Nitrogen, kRoom); }},
        CheckRow{"G_20", 394.1709, 1e-5, kKinetic, [] { return meanSpeed(Gas::Argon, kRoom); }},
        CheckRow{"G_21", 1754.687, 1e-5, kKinetic, [] { return meanSpeed(Gas::Hydrogen, kRoom); }},
        CheckRow{"G_22", 554.5935, 1e-5, kKinetic, [] { return meanSpeed(Gas::Neon, kRoom); }},
        CheckRow{"G_23", 375.5423, 1e-5, kKinetic, [] { return meanSpeed(Gas::CarbonDioxide, kRoom); }},
        CheckRow{"G_24", 0.01916248, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Helium, kRoom); }},
        CheckRow{"G_25", 0.006613602, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Air, kRoom); }},
        CheckRow{"G_26", 0.006491777, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Nitrogen, kRoom); }},
        CheckRow{"G_27", 0.006900253, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Argon, kRoom); }},
        CheckRow{"G_28", 0.01212202, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Hydrogen, kRoom); }},
        CheckRow{"G_40", 6.527117e-08, 1e-5, kKinetic,
                 [] { return meanFreePath(Gas::Air, kRoom, pascals(kStandardPressure)).si(); }},
        CheckRow{"G_41", 6.613602e-05, 1e-5, kKinetic,
                 [] { return meanFreePathTimesPressure(Gas::Air, kRoom) / kPascalsPerMillibar; }},
        CheckRow{"G_42", 1.077071, 1e-5, kKinetic, [] { return laminarRatio(Gas::Helium, Gas::Air, kRoom); }},
        CheckRow{"G_43", 0.37173263, 1e-6, kKinetic, [] { return molecularRatio(Gas::Helium, Gas::Air); }},
        CheckRow{"G_44", 2.6901055, 1e-6, kKinetic, [] { return molecularRatio(Gas::Air, Gas::Helium); }},
        CheckRow{"G_50", 18.5, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Air, 300); }},
        CheckRow{"G_51", 22.7, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Argon, 300); }},
        CheckRow{"G_52", 8.9, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Hydrogen, 300); }},
        CheckRow{"G_53", 19.9, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Helium, 300); }},
        CheckRow{"G_54", 17.9, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Nitrogen, 300); }},
        CheckRow{"G_55", 31.9, 6e-3, kCrc, [] { return micropascalSeconds(Gas::Neon, 300); }},
        CheckRow{"G_56", 15, 6e-3, kCrc, [] { return micropascalSeconds(Gas::CarbonDioxide, 300); }},
        CheckRow{"G_57", 9.8, 6e-3, kCrc, [] { return micropascalSeconds(Gas::WaterVapour, 300); }},
        CheckRow{"G_58", 19.8253, 3e-3, kBergMoldover,
                 [] { return micropascalSeconds(Gas::Helium, 298.15); }},
        CheckRow{"G_59", 17.7494, 3e-3, kBergMoldover,
                 [] { return micropascalSeconds(Gas::Nitrogen, 298.15); }},
        CheckRow{"G_60", 22.5666, 3e-3, kBergMoldover, [] { return micropascalSeconds(Gas::Argon, 298.15); }},
        CheckRow{"G_61", 8.9154, 3e-3, kBergMoldover,
                 [] { return micropascalSeconds(Gas::Hydrogen, 298.15); }},
        CheckRow{"G_62", 31.7088, 3e-3, kBergMoldover, [] { return micropascalSeconds(Gas::Neon, 298.15); }}),
    tests::rowName);

TEST(Gas, IsFoundByNameAndSymbolInAnyCase)
{
    for (const GasProperties& properties : allGases()) {
        EXPECT_EQ(gasNamed(properties.name).value(), properties.gas);
        EXPECT_EQ(gasNamed(properties.symbol).value(), properties.gas);
    }
    EXPECT_EQ(gasNamed("HE").value(), Gas::Helium);
    EXPECT_EQ(gasNamed("co2").value(), Gas::CarbonDioxide);
    const auto unknown = gasNamed("phlogiston");
    ASSERT_FALSE(unknown.has_value());
    EXPECT_EQ(
        unknown.error().message,
        "\"phlogiston\" is not a gas known here; known are helium, air, nitrogen, argon, hydrogen, neon, "
        "carbon dioxide, water vapour");
}

TEST(Gas, RefusesTemperaturesWhereTheViscositiesDoNotHold)
{
    EXPECT_TRUE(checkFlowTemperature(kelvins(250.0)).has_value());
    EXPECT_TRUE(checkFlowTemperature(kelvins(350.0)).has_value());
    EXPECT_FALSE(checkFlowTemperature(kelvins(249.0)).has_value());
    EXPECT_FALSE(checkFlowTemperature(kelvins(351.0)).has_value());
    EXPECT_FALSE(checkFlowTemperature(kelvins(std::nan(""))).has_value());
}

// Property: rarefaction and mean free path are two names of one thing.
TEST(Rarefaction, IsTheMeanFreePathInOtherUnits)
{
    for (const GasProperties& properties : allGases()) {
        const double delta = rarefaction(properties.gas, kRoom, millimetres(3.0), pascals(7.0));
        const double path = meanFreePath(properties.gas, kRoom, pascals(7.0)).si();
        EXPECT_NEAR(delta, std::sqrt(3.14159265358979) * 0.003 / (4.0 * path), 1e-12 * delta);
    }
    EXPECT_EQ(regimeOf(0.05), Regime::Molecular);
    EXPECT_EQ(regimeOf(1.0), Regime::Transitional);
    EXPECT_EQ(regimeOf(50.0), Regime::Viscous);
}

} // namespace
} // namespace sealwalk::flow
