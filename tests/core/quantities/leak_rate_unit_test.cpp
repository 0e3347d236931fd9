// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/conversion.h"
#include "core/quantities/quantity_text.h"
#include "tests/support/check_row.h"

#include <limits>

namespace sealwalk {
namespace {

using tests::CheckRow;

double converted(double number, const char* from, const char* to, const FlowBasis& basis = {})
{
    return convert(number, readUnit(from).value(), readUnit(to).value(), basis).value().number;
}

FlowBasis standardAt(double celsius)
{
    FlowBasis basis;
    basis.standard = degreesCelsius(celsius);
    return basis;
}

FlowBasis gasAt(double celsius)
{
    FlowBasis basis;
    basis.gas = degreesCelsius(celsius);
    return basis;
}

FlowBasis massOf(double gramsPerMole)
{
    FlowBasis basis;
    basis.molarMass = gramsPerMole / 1000.0;
    return basis;
}

class UnitRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(UnitRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kSp811 = "NIST SP 811 (2008) appendix B.8";
constexpr const char* kDefinition = "exact definitions of the SI and of the unit";
constexpr const char* kNistLeaks = "NIST, leak artifacts: standard at 0 degC and 101325 Pa, 4.46e-5 mol/s";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, UnitRows,
    testing::Values(
        CheckRow{"U_01", 0.1, 1e-12, kDefinition, [] { return converted(1, "mbar l/s", "Pa m3/s"); }},
        CheckRow{"U_02", 0.13332236842, 1e-9, kSp811, [] { return converted(1, "Torr l/s", "Pa m3/s"); }},
        CheckRow{"U_03", 0.101325, 1e-12, kSp811, [] { return converted(1, "atm cm3/s", "Pa m3/s"); }},
        CheckRow{"U_04", 0.00013332236842, 1e-9, kDefinition,
                 [] { return converted(1, "lusec", "Pa m3/s"); }},
        CheckRow{"U_05", 0.7500616827, 1e-9, kDefinition,
                 [] { return converted(1, "mbar l/s", "Torr l/s"); }},
        CheckRow{"U_06", 0.98692326672, 1e-9, kDefinition,
                 [] { return converted(1, "mbar l/s", "atm cm3/s"); }},
        CheckRow{"U_07", 7.4358389009e-07, 1e-9, kDefinition, [] { return converted(1, "sccm", "mol/s"); }},
        CheckRow{"U_08", 6.9285328186e-07, 1e-9, kDefinition,
                 [] { return converted(1, "sccm", "mol/s", standardAt(20)); }},
        CheckRow{"U_09", 6.8123407539e-07, 1e-9, kDefinition,
                 [] { return converted(1, "sccm", "mol/s", standardAt(25)); }},
        CheckRow{"U_10", 4.4615033405e-05, 1e-9, kNistLeaks,
                 [] { return converted(1, "std cm3/s", "mol/s"); }},
        CheckRow{"U_11", 0.10874400055, 1e-9, kDefinition,
                 [] { return converted(1, "std cm3/s", "Pa m3/s"); }},
        CheckRow{"U_12", 0.0018124000092, 1e-9, kDefinition, [] { return converted(1, "sccm", "Pa m3/s"); }},
        CheckRow{"U_13", 0.018124000092, 1e-9, kDefinition, [] { return converted(1, "sccm", "mbar l/s"); }},
        CheckRow{"U_14", 0.00074358389009, 1e-9, kDefinition, [] { return converted(1, "slpm", "mol/s"); }},
        CheckRow{"U_15", 0.00041027581458, 1e-9, kDefinition,
                 [] { return converted(1, "Pa m3/s", "mol/s"); }},
        CheckRow{"U_16", 0.00044031614513, 1e-9, kDefinition,
                 [] { return converted(1, "Pa m3/s", "mol/s", gasAt(0)); }},
        CheckRow{"U_17", 2.4707387058e+19, 1e-9, kDefinition,
                 [] { return converted(1, "mbar l/s", "molecules/s"); }},
        CheckRow{"U_18", 5178.7498, 1e-6, kDefinition,
                 [] { return converted(1, "mbar l/s", "g/yr", massOf(4.002602)); }},
        CheckRow{"U_19", 37476.891, 1e-6, kDefinition,
                 [] { return converted(1, "mbar l/s", "g/yr", massOf(28.9655)); }},
        CheckRow{"U_20", 3.7874864e-05, 1e-6, kDefinition,
                 [] { return converted(5, "g/yr", "mbar l/s", massOf(102.032)); }},
        CheckRow{"U_21", 0.022413969545, 1e-9,
                 "CODATA 2018 molar volume of the ideal gas, 273.15 K, 101325 Pa",
                 [] { return 1e-6 / converted(1, "std cm3/s", "mol/s"); }},
        CheckRow{"U_22", 3386.3886403, 1e-9, kSp811, [] { return converted(1, "inHg", "Pa"); }},
        CheckRow{"U_23", 133.32238742, 1e-9, kSp811, [] { return converted(1, "mmHg", "Pa"); }},
        CheckRow{"U_24", 133.32236842, 1e-9, kSp811, [] { return converted(1, "Torr", "Pa"); }},
        CheckRow{"U_25", 6894.7572932, 1e-9, kSp811, [] { return converted(1, "psi", "Pa"); }},
        CheckRow{"U_26", 98066.5, 1e-12, kSp811, [] { return converted(1, "kgf/cm2", "Pa"); }},
        CheckRow{"U_27", 760.0, 1e-12, kSp811, [] { return converted(1, "atm", "Torr"); }},
        CheckRow{"U_28", 14.503773773, 1e-9, kDefinition, [] { return converted(1, "bar", "psi"); }},
        CheckRow{"U_29", 0.0004719474432, 1e-9, kDefinition, [] { return converted(1, "ft3/min", "m3/s"); }},
        CheckRow{"U_30", 0.4719474432, 1e-9, kDefinition, [] { return converted(1, "CFM", "l/s"); }},
        CheckRow{"U_31", 0.27777777778, 1e-9, kDefinition, [] { return converted(1, "m3/h", "l/s"); }},
        CheckRow{"U_32", 1.6990107955, 1e-9, kDefinition, [] { return converted(1, "ft3/min", "m3/h"); }},
        CheckRow{"U_33", 18.665131579, 1e-9, kDefinition, [] { return converted(140, "mTorr", "Pa"); }},
        CheckRow{"U_34", 0.073219842577, 1e-9, kDefinition,
                 [] {
                     return converted(1, "std cm3/s", "Pa m3/s") / converted(1, "atm cm3/s", "Pa m3/s") - 1.0;
                 }}),
    tests::rowName);

// Property: there and back is the same number.
TEST(Conversion, RoundTripsEveryPairOfOneKind)
{
    FlowBasis basis = massOf(4.002602);
    basis.gas = degreesCelsius(31.7);
    basis.standard = degreesCelsius(25.0);
    constexpr double kRounding = 1e-14;
    for (const UnitKind kind :
         {UnitKind::LeakRates, UnitKind::Pressures, UnitKind::Volumes, UnitKind::VolumeFlows,
          UnitKind::Lengths, UnitKind::Times, UnitKind::Fractions}) {
        for (const Unit& a : commonUnits(kind)) {
            for (const Unit& b : commonUnits(kind)) {
                for (const double x : {1.0, 3.2e-7, 4.56789e3}) {
                    const double there = convert(x, a, b, basis).value().number;
                    const double back = convert(there, b, a, basis).value().number;
                    EXPECT_NEAR(back, x, kRounding * x) << a.id << " <-> " << b.id;
                }
            }
        }
    }
}

TEST(Conversion, TemperaturesRoundTripAndMeetTheFixedPoints)
{
    EXPECT_NEAR(converted(20, "degC", "degF"), 68.0, 1e-12);
    EXPECT_NEAR(converted(-40, "°F", "°C"), -40.0, 1e-12);
    EXPECT_NEAR(converted(0, "K", "degC"), -273.15, 1e-12);
    EXPECT_NEAR(converted(-459.67, "degF", "K"), 0.0, 1e-12);
    const Unit span = readUnit("K", UnitKind::TemperatureDifferences).value();
    EXPECT_NEAR(convert(9, readUnit("degF").value(), span).value().number, 5.0, 1e-12);
}

TEST(Conversion, CarriesNegativeNetLeakRates)
{
    EXPECT_NEAR(converted(-3e-11, "mbar l/s", "Pa m3/s"), -3e-12, 1e-26);
}

struct Refused
{
    double number;
    const char* from;
    const char* to;
    const char* says;
};

// Property: what cannot be converted is refused in a sentence that names both sides.
TEST(Conversion, RefusesWhatHasNoMeaning)
{
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    const Refused rows[] = {
        {1, "mbar", "mbar l/s", "a pressure in mbar cannot be converted to a leak rate (mbar l/s)"},
        {1, "l/s", "mbar l/s", "a volume flow in l/s cannot be converted to a leak rate (mbar l/s)"},
        {1, "um", "micron", "a length in um cannot be converted to a pressure (micron)"},
        {1, "mbar l/s", "g/yr", "\"g/yr\" is a mass flow and needs the gas named, such as helium"},
        {-1, "mbar", "Pa", "-1 mbar is below zero; a pressure is at least 0 mbar, counted from vacuum"},
        {-1, "K", "degC", "-1 K is below absolute zero; a temperature is at least 0 K (-273.15 degC)"},
        {-274, "degC", "K", "-274 degC is below absolute zero; a temperature is at least 0 K (-273.15 degC)"},
        {kNan, "mbar l/s", "Pa m3/s", "a leak rate must be a finite number"},
        {kInfinity, "mbar", "Pa", "a pressure must be a finite number"},
    };
    for (const Refused& row : rows) {
        const auto result = convert(row.number, readUnit(row.from).value(), readUnit(row.to).value());
        ASSERT_FALSE(result.has_value()) << row.from << " to " << row.to;
        EXPECT_EQ(result.error().message, row.says);
        EXPECT_EQ(result.error().code, ErrorCode::BadInput);
    }
    FlowBasis cold;
    cold.gas = kelvins(0.0);
    EXPECT_FALSE(leakRate(1.0, LeakRateUnit::MolePerSecond, cold).has_value());
}

TEST(Conversion, NamesWhatItAssumed)
{
    const auto exact = convert(1, readUnit("mbar l/s").value(), readUnit("Pa m3/s").value());
    EXPECT_TRUE(exact->assumptions.empty());
    const auto standard = convert(1, readUnit("sccm").value(), readUnit("mbar l/s").value());
    ASSERT_EQ(standard->assumptions.size(), 2U);
    EXPECT_EQ(standard->assumptions[0], "gas temperature 20 degC (293.15 K)");
    EXPECT_EQ(standard->assumptions[1], "standard volumes at 101325 Pa and 0 degC (273.15 K)");
    const auto mass =
        convert(1, readUnit("mbar l/s").value(), readUnit("g/yr").value(), massOf(4.002602), "helium");
    ASSERT_EQ(mass->assumptions.size(), 3U);
    EXPECT_EQ(mass->assumptions[1], "gas helium, molar mass 4.002602 g/mol");
}

TEST(LeakRateUnit, IdsReadBackAndAmountsAgreeWithTheGasLaw)
{
    for (const LeakRateUnit unit : allLeakRateUnits()) {
        EXPECT_EQ(leakRateUnit(idOf(unit)).value(), unit);
        EXPECT_EQ(leakRateUnit(unitOf(unit).symbol).value(), unit);
    }
    const Temperature room = degreesCelsius(20.0);
    EXPECT_DOUBLE_EQ(leakRate(amountFlow(millibarLitresPerSecond(2e-6), room), room).si(), 2e-7);
}

} // namespace
} // namespace sealwalk
