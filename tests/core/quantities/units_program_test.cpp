// SPDX-License-Identifier: GPL-3.0-or-later
// Published: GNU units 2.22, as Debian packages it, with its own table of definitions.
#include "core/quantities/conversion.h"
#include "tests/support/process.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace sealwalk {
namespace {

struct Pair
{
    const char* ours;
    std::string theirs;
};

double factorByUnits(const std::string& from, const std::string& to)
{
    const auto ran = tests::runProcess({"/usr/bin/units", "-o", "%.17g", "-t", from, to});
    EXPECT_EQ(ran.status, 0) << from << " to " << to << ": " << ran.out << ran.err
                             << " (the tests need Debian's package units)";
    const std::string line = ran.out.substr(0, ran.out.find('\n'));
    return std::stod(line);
}

void expectAllPairs(const std::vector<Pair>& units, const FlowBasis& basis, double tolerance)
{
    for (const Pair& from : units) {
        for (const Pair& to : units) {
            const double theirs = factorByUnits(from.theirs, to.theirs);
            const double ours =
                convert(1.0, readUnit(from.ours).value(), readUnit(to.ours).value(), basis).value().number;
            EXPECT_NEAR(ours, theirs, tolerance * theirs) << from.ours << " to " << to.ours;
        }
    }
}

constexpr double kTolerance = 1e-9;

TEST(UnitsProgram, AgreesOnEveryPairOfPressures)
{
    // "micron" is a length there; mTorr is written out because the prefix is not taken.
    expectAllPairs({{"Pa", "Pa"},
                    {"hPa", "hPa"},
                    {"kPa", "kPa"},
                    {"mbar", "mbar"},
                    {"ubar", "microbar"},
                    {"bar", "bar"},
                    {"Torr", "torr"},
                    {"mTorr", "1e-3 torr"},
                    {"micron", "1e-3 torr"},
                    {"atm", "atm"},
                    {"at", "at"},
                    {"kgf/cm2", "kgf/cm^2"},
                    {"psi", "psi"},
                    {"inHg", "inHg"},
                    {"mmHg", "mmHg"},
                    {"uTorr", "1e-6 torr"},
                    {"mmH2O", "mmH2O"},
                    {"cmH2O", "10 mmH2O"}},
                   {}, kTolerance);
}

TEST(UnitsProgram, AgreesOnEveryPairOfVolumesFlowsLengthsAndTimes)
{
    expectAllPairs({{"l", "liter"}, {"m3", "m^3"}, {"cm3", "cm^3"}, {"mm3", "mm^3"}, {"ft3", "ft^3"}}, {},
                   kTolerance);
    expectAllPairs(
        {{"l/s", "liter/s"}, {"m3/s", "m^3/s"}, {"m3/h", "m^3/hour"}, {"l/min", "liter/min"}, {"CFM", "cfm"}},
        {}, kTolerance);
    expectAllPairs({{"mm", "mm"},
                    {"m", "m"},
                    {"cm", "cm"},
                    {"um", "micrometer"},
                    {"in", "inch"},
                    {"ft", "ft"},
                    {"mil", "mil"}},
                   {}, kTolerance);
    expectAllPairs(
        {{"s", "s"}, {"min", "min"}, {"h", "hour"}, {"d", "day"}, {"week", "week"}, {"yr", "365 day"}}, {},
        kTolerance);
    expectAllPairs({{"1", "1"}, {"%", "percent"}, {"ppm", "ppm"}, {"ppb", "1e-9"}}, {}, kTolerance);
}

TEST(UnitsProgram, AgreesOnEveryPairOfLeakRates)
{
    // Theirs has no classes of flow, so the amounts are written out as pV flow with the gas law: gas at 20
    // °C, standard at 0 °C, helium. Its lusec is of conventional mercury, which is 1.4e-7 larger; so is not
    // used.
    FlowBasis basis;
    basis.molarMass = 4.002602e-3;
    const std::string gasLaw = "* avogadro boltzmann 293.15 K";
    expectAllPairs({{"mbar l/s", "mbar liter/s"},
                    {"Pa m3/s", "Pa m^3/s"},
                    {"Torr l/s", "torr liter/s"},
                    {"atm cm3/s", "atm cm^3/s"},
                    {"lusec", "1e-3 torr liter/s"},
                    {"std cm3/s", "atm cm^3/s * 293.15 / 273.15"},
                    {"sccm", "sccm * 293.15 / 273.15"},
                    {"slpm", "slpm * 293.15 / 273.15"},
                    {"mol/s", "(mol/s)" + gasLaw},
                    {"molecules/s", "(1/s) boltzmann 293.15 K"},
                    {"g/yr", "(g/(365 day)) / (4.002602 g/mol)" + gasLaw},
                    {"kg/s", "(kg/s) / (4.002602 g/mol)" + gasLaw}},
                   basis, kTolerance);
}

TEST(UnitsProgram, AgreesOnTemperatures)
{
    const auto ran = tests::runProcess({"/usr/bin/units", "-o", "%.17g", "-t", "tempC(21.5)", "tempF"});
    ASSERT_EQ(ran.status, 0);
    const double ours = convert(21.5, readUnit("degC").value(), readUnit("degF").value()).value().number;
    EXPECT_NEAR(ours, std::stod(ran.out), 1e-11);
}

} // namespace
} // namespace sealwalk
