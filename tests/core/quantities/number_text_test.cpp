// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/number_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace sealwalk {
namespace {

struct Read
{
    const char* text;
    double point; ///< by a writer of points
    double comma; ///< by a writer of commas
};

TEST(NumberText, ReadsPointAndComma)
{
    const Read rows[] = {
        {"0", 0, 0},
        {"120", 120, 120},
        {"-3", -3, -3},
        {"+3", 3, 3},
        {"−3", -3, -3},
        {".5", 0.5, 0.5},
        {"5.", 5, 5},
        {"3.2e-7", 3.2e-7, 3.2e-7},
        {"3,2e-7", 3.2e-7, 3.2e-7},
        {"3,2E-7", 3.2e-7, 3.2e-7},
        {"3.2×10^-7", 3.2e-7, 3.2e-7},
        {"3.2 × 10⁻⁷", 3.2e-7, 3.2e-7},
        {"3,2·10⁻⁷", 3.2e-7, 3.2e-7},
        {"3.2*10^-7", 3.2e-7, 3.2e-7},
        {"3.2x10^7", 3.2e7, 3.2e7},
        {"1,234e-7", 1.234e-7, 1.234e-7},
        {"1.234e-7", 1.234e-7, 1.234e-7},
        {"0,234", 0.234, 0.234},
        {"0.234", 0.234, 0.234},
        {"12,5", 12.5, 12.5},
        {"12.5", 12.5, 12.5},
        {"1234,567", 1234.567, 1234.567},
        {"1234.567", 1234.567, 1234.567},
    };
    for (const Read& row : rows) {
        EXPECT_EQ(parseNumber(row.text, DecimalMark::Point).value(), row.point) << row.text;
        EXPECT_EQ(parseNumber(row.text, DecimalMark::Comma).value(), row.comma) << row.text;
    }
    EXPECT_EQ(parseNumber("1.234", DecimalMark::Point).value(), 1.234);
    EXPECT_EQ(parseNumber("1,234", DecimalMark::Comma).value(), 1.234);
}

TEST(NumberText, RefusesWhatHasTwoReadings)
{
    const auto points = parseNumber("1,234", DecimalMark::Point);
    ASSERT_FALSE(points.has_value());
    EXPECT_EQ(points.error().message, "\"1,234\" can be read as 1234 or as 1.234; write 1234 or 1.2340");
    const auto commas = parseNumber("1.234", DecimalMark::Comma);
    ASSERT_FALSE(commas.has_value());
    EXPECT_EQ(commas.error().message, "\"1.234\" can be read as 1234 or as 1,234; write 1234 or 1,2340");
}

TEST(NumberText, RefusesWhatIsNoNumber)
{
    for (const char* text :
         {"",      " ",      "abc",  "1,234.5", "1.234,5", "1.2.3",   "1,2,3",      "1 234",    "1'234",
          "--3",   "e-7",    ".",    "-",       "nan",     "inf",     "-inf",       "infinity", "0x10",
          "1e999", "1e-999", "3.2e", "3.2e-",   "3.2×10",  "3.2×10^", "12,345,678", "5 Pa",     "١"}) {
        EXPECT_FALSE(parseNumber(text, DecimalMark::Point).has_value()) << text;
        EXPECT_FALSE(parseNumber(text, DecimalMark::Comma).has_value()) << text;
    }
}

// Property: the exact text reads back to the very same bits.
TEST(NumberText, ExactTextReadsBackUnchanged)
{
    std::mt19937_64 random(20260301);
    std::uniform_real_distribution<double> mantissa(-10.0, 10.0);
    std::uniform_int_distribution<int> exponent(-30, 30);
    for (int i = 0; i < 20000; ++i) {
        const double x = mantissa(random) * std::pow(10.0, exponent(random));
        ASSERT_EQ(parseNumber(exactText(x)).value(), x) << exactText(x);
    }
    EXPECT_EQ(exactText(4.6e-4), "4.6e-4");
    EXPECT_EQ(exactText(0.25), "0.25");
    EXPECT_EQ(exactText(120), "120");
    EXPECT_EQ(exactText(2.5e20), "2.5e20");
}

TEST(NumberText, RoundsToSignificantDigits)
{
    EXPECT_EQ(roundedText(4.6e-4, 2), "4.6e-4");
    EXPECT_EQ(roundedText(4.6e-4, 3), "4.60e-4");
    EXPECT_EQ(roundedText(0.25, 3), "0.250");
    EXPECT_EQ(roundedText(9.996, 3), "10.0");
    EXPECT_EQ(roundedText(120.4, 3), "120");
    EXPECT_EQ(roundedText(98765.0, 3), "9.88e4");
    EXPECT_EQ(roundedText(-3.14159e-10, 4), "-3.142e-10");
    EXPECT_EQ(roundedText(0.0, 3), "0");
    EXPECT_EQ(trimmedText(4.6e-4, 5), "4.6e-4");
    EXPECT_EQ(trimmedText(120.0, 6), "120");
    EXPECT_EQ(trimmedText(1e-9, 6), "1e-9");
    EXPECT_EQ(trimmedText(0.1, 3), "0.1");
}

} // namespace
} // namespace sealwalk
