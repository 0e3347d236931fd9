// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/quantity_text.h"

#include <gtest/gtest.h>

namespace sealwalk {
namespace {

TEST(QuantityText, ReadsValueAndUnit)
{
    EXPECT_DOUBLE_EQ(parseLeakRate("2.5e-7 mbar l/s").value().si(), 2.5e-8);
    EXPECT_DOUBLE_EQ(parseLeakRate("2,5e-7mbar·l/s").value().si(), 2.5e-8);
    EXPECT_DOUBLE_EQ(parseLeakRate("2.5×10⁻⁷ mbar.L/s").value().si(), 2.5e-8);
    EXPECT_DOUBLE_EQ(parseLeakRate("-3e-11 mbar l/s").value().si(), -3e-12);
    EXPECT_DOUBLE_EQ(parse<Volume>("120 l").value().si(), 0.12);
    EXPECT_DOUBLE_EQ(parse<Length>("5 mm").value().si(), 0.005);
    EXPECT_DOUBLE_EQ(parse<Temperature>("20 degC").value().si(), 293.15);
    EXPECT_DOUBLE_EQ(parse<Temperature>("-10 °C").value().si(), 263.15);
    EXPECT_DOUBLE_EQ(parse<TemperatureDifference>("-2 °C").value().si(), -2.0);
    EXPECT_DOUBLE_EQ(parse<PumpingSpeed>("2.5 CFM").value().si(), 2.5 * 4.719474432e-4);
    EXPECT_DOUBLE_EQ(parse<Fraction>("25 %").value().si(), 0.25);
    EXPECT_DOUBLE_EQ(parse<Fraction>("0.25").value().si(), 0.25);
    EXPECT_DOUBLE_EQ(parse<Duration>("2 min").value().si(), 120.0);
    EXPECT_DOUBLE_EQ(parse<Pressure>("1.2e3 mbar").value().si(), 1.2e5);
}

TEST(QuantityText, TakesABareNumberOnlyWhereItsUnitIsAgreed)
{
    const Unit millimetres = readUnit("mm").value();
    EXPECT_DOUBLE_EQ(parseSi("5", UnitKind::Lengths, &millimetres).value(), 0.005);
    EXPECT_DOUBLE_EQ(parseSi("5 cm", UnitKind::Lengths, &millimetres).value(), 0.05);
    const auto bare = parse<Length>("5");
    ASSERT_FALSE(bare.has_value());
    EXPECT_EQ(bare.error().message, "\"5\" has no unit; a length is asked for, such as \"5 mm\"");
}

TEST(QuantityText, RefusesInOneSentence)
{
    struct Row
    {
        const char* text;
        const char* says;
    };
    const Row rows[] = {
        {"5 l", "\"5 l\" is a volume, but a pressure is asked for, such as \"5 Pa\""},
        {"-5 Pa", "-5 Pa is below zero; a pressure is at least 0 Pa, counted from vacuum"},
        {"1,234.5 Pa", "\"1,234.5\" has more than one decimal mark; write it without thousands separators"},
        {"1,234 Pa", "\"1,234\" can be read as 1234 or as 1.234; write 1234 or 1.2340"},
        {"mbar", "\"mbar\" does not start with a number; right would be for instance \"2.5e-7 mbar l/s\""},
        {"1 234 Pa", "\"1 234 Pa\" does not hold one number and its unit; right would be for instance "
                     "\"2.5e-7 mbar l/s\""},
    };
    for (const Row& row : rows) {
        const auto result = parse<Pressure>(row.text);
        ASSERT_FALSE(result.has_value()) << row.text;
        EXPECT_EQ(result.error().message, row.says);
    }
    EXPECT_FALSE(parse<Temperature>("-1 K").has_value());
    EXPECT_FALSE(parse<Fraction>("120 %").has_value());
    EXPECT_FALSE(parse<Fraction>("-0.1").has_value());
    EXPECT_FALSE(parseLeakRate("5 l/s").has_value());
    EXPECT_FALSE(parseLeakRate("nan mbar l/s").has_value());
    EXPECT_FALSE(parseLeakRate("inf mbar l/s").has_value());
}

TEST(QuantityText, PrintsNumberAndUnit)
{
    EXPECT_EQ(text(pascals(4.6e-2), readUnit("mbar").value(), 2), "4.6e-4 mbar");
    EXPECT_EQ(text(degreesCelsius(20.0), readUnit("degC").value(), 3), "20.0 degC");
    EXPECT_EQ(text(fraction(0.25), readUnit("%").value(), 3), "25.0 %");
    EXPECT_EQ(text(millibarLitresPerSecond(3.2e-7), LeakRateUnit::MillibarLitrePerSecond, 2),
              "3.2e-7 mbar l/s");
    EXPECT_EQ(text(millibarLitresPerSecond(3.2e-7), LeakRateUnit::PascalCubicMetrePerSecond, 2),
              "3.2e-8 Pa m3/s");
    EXPECT_DOUBLE_EQ(numberIn(litres(120.0), "m3"), 0.12);
}

// Property: what is printed in full reads back.
TEST(QuantityText, RoundTripsThroughText)
{
    for (const Unit& unit : commonUnits(UnitKind::Pressures)) {
        const Pressure p = pascals(123.456);
        EXPECT_NEAR(parse<Pressure>(text(p, unit, 17)).value().si(), p.si(), 1e-12) << unit.id;
    }
}

} // namespace
} // namespace sealwalk
