// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/units.h"

#include <gtest/gtest.h>

namespace sealwalk {
namespace {

struct Spelling
{
    const char* written;
    const char* id;
};

// Property: every written form of a unit is one unit.
TEST(Units, ReadAllSpellingsOfTheTrade)
{
    const Spelling rows[] = {
        {"mbar·l/s", "mbar l/s"},
        {"mbar l/s", "mbar l/s"},
        {"mbar.L/s", "mbar l/s"},
        {"mbar*l/s", "mbar l/s"},
        {"mbar⋅l/s", "mbar l/s"},
        {"mbar l / s", "mbar l/s"},
        {"mbar·l·s⁻¹", "mbar l/s"},
        {"mbar l s-1", "mbar l/s"},
        {"mbar l s^-1", "mbar l/s"},
        {"  mbar   l/s ", "mbar l/s"},
        {"l mbar/s", "mbar l/s"},
        {"hPa l/s", "mbar l/s"},
        {"Pa m3/s", "Pa m3/s"},
        {"Pa·m³/s", "Pa m3/s"},
        {"Pa.m3/s", "Pa m3/s"},
        {"Pa m^3/s", "Pa m3/s"},
        {"W", "Pa m3/s"},
        {"torr l/s", "Torr l/s"},
        {"Torr·L/s", "Torr l/s"},
        {"TORR L/s", "Torr l/s"},
        {"atm cc/s", "atm cm3/s"},
        {"atm·cm³/s", "atm cm3/s"},
        {"atm.cc/sec", "atm cm3/s"},
        {"std cc/s", "std cm3/s"},
        {"std cm³/s", "std cm3/s"},
        {"scc/s", "std cm3/s"},
        {"sccs", "std cm3/s"},
        {"standard cm3/s", "std cm3/s"},
        {"SCCM", "sccm"},
        {"scc/min", "sccm"},
        {"std cm3/min", "sccm"},
        {"slm", "slpm"},
        {"SLPM", "slpm"},
        {"molecules/s", "molecules/s"},
        {"g/a", "g/yr"},
        {"g/year", "g/yr"},
        {"mol/s", "mol/s"},
        {"micron l/s", "lusec"},
        {"mbar-l/s", "mbar l/s"},
        {"atm-cc/s", "atm cm3/s"},
        {"Torr-L/s", "Torr l/s"},
        {"Pa-m³/s", "Pa m3/s"},
        {"mbarl/s", "mbar l/s"},
        {"mbar l s⁻¹", "mbar l/s"},
        {"kpa", "kPa"},
        {"Celsius", "degC"},
        {"torr", "Torr"},
        {"mtorr", "mTorr"},
        {"microns", "mTorr"},
        {"µmHg", "mTorr"},
        {"µbar", "ubar"},
        {"μbar", "ubar"},
        {"kgf/cm²", "at"},
        {"mm Hg", "mmHg"},
        {"in Hg", "inHg"},
        {"psia", "psi"},
        {"L", "l"},
        {"liter", "l"},
        {"m³", "m3"},
        {"ml", "cm3"},
        {"cc", "cm3"},
        {"CFM", "ft3/min"},
        {"cfm", "ft3/min"},
        {"ft³/min", "ft3/min"},
        {"lpm", "l/min"},
        {"m³/h", "m3/h"},
        {"m3/hr", "m3/h"},
        {"L/s", "l/s"},
        {"µm", "um"},
        {"inch", "in"},
        {"sec", "s"},
        {"year", "yr"},
        {"°C", "degC"},
        {"℃", "degC"},
        {"deg C", "degC"},
        {"C", "degC"},
        {"°F", "degF"},
        {"K", "K"},
        {"%", "%"},
        {"ppm", "ppm"},
    };
    for (const Spelling& row : rows) {
        const auto unit = readUnit(row.written);
        ASSERT_TRUE(unit.has_value()) << row.written << ": " << unit.error().message;
        EXPECT_EQ(unit->id, row.id) << row.written;
    }
}

TEST(Units, ComposeWhatIsNotInTheList)
{
    const Unit unit = readUnit("Torr·l/min").value();
    EXPECT_EQ(unit.kind, UnitKind::LeakRates);
    EXPECT_EQ(unit.flowClass, FlowClass::PV);
    EXPECT_NEAR(unit.factor, 101325.0 / 760.0 * 1e-3 / 60.0, 1e-18);
    EXPECT_EQ(unit.id, "Torr l/min");
    EXPECT_EQ(readUnit(unit.id).value(), unit);
}

TEST(Units, EveryCommonUnitReadsBackFromIdAndSymbol)
{
    for (const UnitKind kind :
         {UnitKind::LeakRates, UnitKind::Pressures, UnitKind::Volumes, UnitKind::VolumeFlows,
          UnitKind::Lengths, UnitKind::Times, UnitKind::Temperatures, UnitKind::TemperatureDifferences,
          UnitKind::Fractions}) {
        EXPECT_FALSE(commonUnits(kind).empty());
        for (const Unit& unit : commonUnits(kind)) {
            EXPECT_EQ(readUnit(unit.id, kind).value(), unit) << unit.id;
            if (!unit.symbol.empty()) {
                EXPECT_EQ(readUnit(unit.symbol, kind).value(), unit) << unit.symbol;
            }
        }
    }
}

TEST(Units, RefuseWhatIsNoUnit)
{
    for (const char* text :
         {"",     " ",   "furlong", "mbar l/s/s",   "mbar/s l", "mbar l",    "l s", "/s", "mbar l/",
          "Mbar", "mpa", "std",     "std mbar l/s", "degC/s",   "mbar degC", "kgs", "m0", "m33",
          "1/s",  "l l", "torrs",   "ccm",          "mbar-",    "-l/s",      "7",   "e"})
        EXPECT_FALSE(readUnit(text).has_value()) << text;
}

TEST(Units, RefuseAnotherKindNamingBoth)
{
    const auto unit = readUnit("mbar", UnitKind::LeakRates);
    ASSERT_FALSE(unit.has_value());
    EXPECT_EQ(unit.error().message,
              "\"mbar\" is the unit of a pressure, but a leak rate is asked for, such as \"1e-9 mbar l/s\"");
}

} // namespace
} // namespace sealwalk
