// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/rate_text.h"
#include "core/report/report_builder.h"
#include "core/report/shown_unit.h"

#include <gtest/gtest.h>

namespace sealwalk::report {
namespace {

struct Row
{
    double number;
    const char* screen;
    const char* print;
    const char* plain;
};

// Property: mantissa with two digits, decade apart, carried over where rounding fills it up.
TEST(RateText, WritesMantissaAndDecade)
{
    const Row rows[] = {
        {4.6e-4, "4.6e\u22124", "4.6 \u00D7 10\u207B\u2074", "4.6e-4"},
        {9.96e-7, "1.0e\u22126", "1.0 \u00D7 10\u207B\u2076", "1.0e-6"},
        {0.0, "0", "0", "0"},
        {2.5, "2.5e0", "2.5 \u00D7 10\u2070", "2.5e0"},
        {-3.2e-12, "\u22123.2e\u221212", "\u22123.2 \u00D7 10\u207B\u00B9\u00B2", "-3.2e-12"},
        {1.25e13, "1.2e13", "1.2 \u00D7 10\u00B9\u00B3", "1.2e13"},
    };
    for (const Row& row : rows) {
        EXPECT_EQ(screenRate(row.number), row.screen);
        EXPECT_EQ(printRate(row.number), row.print);
        EXPECT_EQ(plainRate(row.number), row.plain);
    }
}

// Regression: names of things that look like numbers were respelt, and one with ten digits ended the program.
TEST(RateText, LeavesNamesOfThingsAlone)
{
    for (const char* name :
         {"Reference leak A7e512", "RL-4e07", "SN 5e12345678901", "valve 12e3b", "hose 3/4e02", "row 2e3100"})
        EXPECT_EQ(onScreen(name), name);
    EXPECT_EQ(onScreen("from 2.3e-08 (1e-8 to 5e+02)."), "from 2.3e\u22128 (1e\u22128 to 5e2).");
    EXPECT_EQ(onScreen("limit 5e-07 mbar l/s"), "limit 5e\u22127 mbar\u00B7l/s");
}

struct RangeRow
{
    double number;
    double low;
    double high;
    const char* beside;
    const char* print;
};

// Property: a range beside its value is in the value's decade with two digits and says it; what is too far
// away for that is written out.
TEST(RateText, WritesARangeInTheDecadeOfItsValue)
{
    const RangeRow rows[] = {
        {3.5e-4, 2.6e-4, 1.1e-3, "(2.6\u201311)e\u22124", "(2.6\u201311) \u00D7 10\u207B\u2074"},
        {1.2e-4, 8.14e-5, 1.83e-4, "(0.81\u20131.8)e\u22124", "(0.81\u20131.8) \u00D7 10\u207B\u2074"},
        {2.0e-7, 4.06e-9, 1.18e-5, "(0.041\u2013120)e\u22127", "(0.041\u2013120) \u00D7 10\u207B\u2077"},
        {9.96e-7, 9.949e-7, 9.96e-6, "(0.99\u201310)e\u22126",
         "(0.99\u201310) \u00D7 10\u207B\u2076"}, // the value rounds up to the next decade
        {5.0e-9, 0.0, 2.0e-8, "(0\u201320)e\u22129", "(0\u201320) \u00D7 10\u207B\u2079"},
        {2.0e-7, 1.0e-10, 4.0e-7, "1.0e\u221210 \u2026 4.0e\u22127",
         "1.0 \u00D7 10\u207B\u00B9\u2070 \u2026 4.0 \u00D7 10\u207B\u2077"},
        {2.0e-7, 1.0e-7, 3.0e-4, "1.0e\u22127 \u2026 3.0e\u22124",
         "1.0 \u00D7 10\u207B\u2077 \u2026 3.0 \u00D7 10\u207B\u2074"},
        {0.0, 0.0, 2.0e-8, "0 \u2026 2.0e\u22128", "0 \u2026 2.0 \u00D7 10\u207B\u2078"},
    };
    for (const RangeRow& row : rows) {
        EXPECT_EQ(rangeBeside(row.number, row.low, row.high), row.beside);
        EXPECT_EQ(printRange(row.number, row.low, row.high), row.print);
    }
    EXPECT_EQ(plainRange(2.6e-4, 1.1e-3), "2.6e-4 to 1.1e-3");
}

// Property: sentences of the analysis come out in print spelling; words with an e in them stay.
TEST(RateText, SentencesAreSetForPrint)
{
    EXPECT_EQ(inPrint("No response above 2.2e-08 mbar l/s at 3 points."),
              "No response above 2.2 \u00D7 10\u207B\u2078 mbar\u00B7l/s at 3 points.");
    EXPECT_EQ(onScreen("2.3e-08 mbar l/s then, 1e+2 now"), "2.3e\u22128 mbar\u00B7l/s then, 1e2 now");
    EXPECT_EQ(inPrint("the 3rd one e-mailed"), "the 3rd one e-mailed");
    EXPECT_EQ(asSentence("run 40 min longer"), "Run 40 min longer.");
    EXPECT_EQ(asSentence(""), "");
}

// Published: 1 mbar = 100 Pa and 1 Torr = 101325/760 Pa exactly, so 1 Pa·m³/s is 10 mbar·l/s and 7.50062
// Torr·l/s.
TEST(ShownUnit, FollowsTheUnitOfTheJob)
{
    model::Setup setup;
    EXPECT_DOUBLE_EQ(shownUnit(setup).perSi, 10.0);
    EXPECT_DOUBLE_EQ(shownUnit(setup, "Pa m3/s").perSi, 1.0);
    EXPECT_NEAR(shownUnit(setup, "Torr l/s").perSi, 7.500617, 1e-6);
    EXPECT_EQ(shownUnit(setup, "no unit at all").symbol, "mbar\u00B7l/s");
}

} // namespace
} // namespace sealwalk::report
