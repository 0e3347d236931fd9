// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_reader.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace sealwalk::feed {
namespace {

LineFormat column(int number, Separator separator)
{
    LineFormat format;
    format.column = number;
    format.separator = separator;
    return format;
}

struct Row
{
    const char* line;
    LineFormat format;
    double rate; ///< mbar·l/s
};

// Property: worked out by hand.
TEST(LineReader, ReadsTheColumn)
{
    const Row rows[] = {
        {"2.9e-4", column(1, Separator::Blank), 2.9e-4},
        {"  12:30:05 \t 2.9E-04  OK", column(2, Separator::Blank), 2.9e-4},
        {"3.5;1,2e-9;x", column(2, Separator::Semicolon), 1.2e-9},
        {"3.5;1,5;x", column(2, Separator::Semicolon), 1.5},
        {"a,b, 4e-10 ,c", column(3, Separator::Comma), 4e-10},
        {"a\t\t-3e-11", column(3, Separator::Tab), -3e-11},
        {"7e-9 mbar*l/s", column(1, Separator::Comma), 7e-9},
        {"2.9×10^-4", column(1, Separator::Blank), 2.9e-4},
        {"+1.0E-09", column(1, Separator::Blank), 1e-9},
        {"0", column(1, Separator::Blank), 0.0},
    };
    for (const Row& row : rows) {
        const auto value = LineReader(row.format).read(row.line);
        ASSERT_TRUE(value) << row.line << ": " << value.error().message;
        EXPECT_NEAR(inMillibarLitresPerSecond(value->rate), row.rate, std::abs(row.rate) * 1e-12) << row.line;
        EXPECT_FALSE(value->time);
    }
}

struct Refused
{
    const char* line;
    LineFormat format;
    const char* says;
};

TEST(LineReader, SaysWhyALineIsRefused)
{
    LineFormat volts = column(1, Separator::Comma);
    volts.meaning = Meaning::DecadeVolts;
    LineFormat pattern;
    pattern.byPattern = true;
    pattern.pattern = "now #";
    LineFormat anywhere = pattern;
    anywhere.pattern = "now #*";
    LineFormat faulty = pattern;
    faulty.pattern = "now";
    LineFormat timed = column(2, Separator::Comma);
    timed.timeColumn = 1;
    const Refused rows[] = {
        {"1e-9", column(2, Separator::Blank), "no column 2"},
        {"a;b", column(3, Separator::Semicolon), "no column 3"},
        {"OVER", column(1, Separator::Blank), "\"OVER\" is not a number"},
        {"", column(1, Separator::Blank), "no column 1"},
        {";", column(1, Separator::Semicolon), "is not a number"},
        {"nan", column(1, Separator::Blank), "is not a number"},
        {"inf", column(1, Separator::Blank), "is not a number"},
        {"1e999", column(1, Separator::Blank), ""},
        {"1e60", column(1, Separator::Blank), "too much"},
        {"1,234", column(1, Separator::Blank), ""}, // a decimal comma or thousands: nobody can tell
        {"1.2.3", column(1, Separator::Blank), ""},
        {"1e-9?", column(1, Separator::Blank), "is not one number"},
        {"1.2?e-9", column(1, Separator::Blank), "is not one number"}, // damaged on the way
        {"1.2e?-9", column(1, Separator::Blank), "is not one number"},
        {"1.2e", column(1, Separator::Blank), "is not one number"},
        {"2e-9 Pa m3/s", column(1, Separator::Comma), "Pa m3/s is written, mbar l/s is set up"},
        {"2 mbar l/s", volts, "volts are set up"},
        {"now 1.2?e-9", anywhere, "is damaged"},
        {"now 1.2e?-9", anywhere, "is damaged"},
        {"XX 1e-9", pattern, "does not fit the pattern"},
        {"now 1e-9", faulty, "one #"},
        {"soon,1e-9", timed, "\"soon\" is not a time"},
    };
    for (const Refused& row : rows) {
        const auto value = LineReader(row.format).read(row.line);
        ASSERT_FALSE(value) << row.line;
        EXPECT_NE(value.error().message.find(row.says), std::string::npos)
            << row.line << ": " << value.error().message;
        EXPECT_FALSE(value.error().message.empty());
    }
}

// Regression: with blanks between the columns, by pattern, and with the unit in a column of its own, another
// unit than the one set up was not noticed: ten times too low.
TEST(LineReader, RefusesAnotherUnitWhereverItFollows)
{
    LineFormat pattern;
    pattern.byPattern = true;
    pattern.pattern = "now # *";
    const Row same[] = {
        {"3.2E-9 mbar*l/s", column(1, Separator::Blank), 3.2e-9},
        {"3.2E-9 mbar l/s OK", column(1, Separator::Blank), 3.2e-9},
        {"7 3.2E-9 12:30", column(2, Separator::Blank), 3.2e-9},
        {"3.2E-9 4.5E-3 mbar", column(1, Separator::Blank), 3.2e-9},
        {"3.2E-9;mbar.l/s;4", column(1, Separator::Semicolon), 3.2e-9},
        {"3.2E-9;OK;Pa m3/s", column(1, Separator::Semicolon), 3.2e-9}, // of something else
        {"now 3.2E-9 mbar*l/s", pattern, 3.2e-9},
    };
    for (const Row& row : same) {
        const auto value = LineReader(row.format).read(row.line);
        ASSERT_TRUE(value) << row.line << ": " << value.error().message;
        EXPECT_NEAR(inMillibarLitresPerSecond(value->rate), row.rate, row.rate * 1e-12) << row.line;
    }
    LineFormat volts = column(1, Separator::Blank);
    volts.meaning = Meaning::LinearVolts;
    const Refused other[] = {
        {"3.2E-9 Pa*m3/s", column(1, Separator::Blank), "Pa m3/s is written, mbar l/s is set up"},
        {"3.2E-9 Pa m3/s OK", column(1, Separator::Blank), "Pa m3/s is written, mbar l/s is set up"},
        {"7\t3.2E-9\tsccm", column(2, Separator::Blank), "sccm is written"},
        {"3.2E-9,Pa m3/s,4", column(1, Separator::Comma), "Pa m3/s is written"},
        {"3.2E-9\tatm cm3/s", column(1, Separator::Tab), "atm cm3/s is written"},
        {"now 3.2E-9 Pa m3/s", pattern, "Pa m3/s is written"},
        {"3.2 mbar l/s", volts, "volts are set up"},
    };
    for (const Refused& row : other) {
        const auto value = LineReader(row.format).read(row.line);
        ASSERT_FALSE(value) << row.line;
        EXPECT_NE(value.error().message.find(row.says), std::string::npos)
            << row.line << ": " << value.error().message;
    }
}

// Property: worked out by hand. A logarithmic output of one decade per volt with 0 V at 1e-12 mbar·l/s shows
// 1e-8 at 4 V; half a decade per volt shows 1e-10 there.
TEST(LineReader, TurnsVoltsIntoLeakRate)
{
    LineFormat format = column(1, Separator::Blank);
    format.meaning = Meaning::DecadeVolts;
    const auto rate = [&](const char* line) {
        return inMillibarLitresPerSecond(LineReader(format).read(line)->rate);
    };
    EXPECT_NEAR(rate("4.0"), 1e-8, 1e-20);
    format.decadesPerVolt = 0.5;
    EXPECT_NEAR(rate("4.0"), 1e-10, 1e-22);
    format.unit = "Pa m3/s";
    EXPECT_NEAR(rate("4.0"), 1e-9, 1e-21);
    format.unit = "mbar l/s";
    format.meaning = Meaning::LinearVolts;
    format.factor = 2e-6;
    format.offset = -1e-7;
    EXPECT_NEAR(rate("0.5"), 9e-7, 1e-19);
}

// Published: 1 mbar·l/s of helium at 20 °C is 5178.7498 g/yr of 365 days (M 4.002602, exact R).
TEST(LineReader, KnowsUnitsThatNeedTheGas)
{
    LineFormat format = column(1, Separator::Blank);
    format.unit = "g/yr";
    EXPECT_FALSE(LineReader(format).read("5178.7498"));
    FlowBasis helium;
    helium.molarMass = 4.002602e-3;
    const auto value = LineReader(format, helium).read("5178.7498");
    ASSERT_TRUE(value) << value.error().message;
    EXPECT_NEAR(inMillibarLitresPerSecond(value->rate), 1.0, 1e-6);
}

TEST(LineReader, ReadsTheTimeOfARecordedFile)
{
    LineFormat format = column(2, Separator::Comma);
    format.timeColumn = 1;
    EXPECT_EQ(LineReader(format).read("12.5,1e-9")->time, 12.5);
    const auto later = LineReader(format).read("2026-03-01T14:05:09.250+01:00,1e-9")->time;
    const auto earlier = LineReader(format).read("2026-03-01T13:05:08.000Z,1e-9")->time;
    EXPECT_NEAR(*later - *earlier, 1.25, 1e-6);
}

// Property: no line whatever throws or gives a rate that is not a number.
TEST(LineReader, TakesAnyLine)
{
    std::mt19937 random(23);
    const std::string letters = "0123456789.,-+eE xX*;:\t^?µ";
    LineFormat pattern;
    pattern.byPattern = true;
    pattern.pattern = "* # *";
    const LineReader readers[] = {LineReader(column(1, Separator::Blank)),
                                  LineReader(column(2, Separator::Comma)),
                                  LineReader(column(1, Separator::Semicolon)), LineReader(pattern)};
    int read = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string line(random() % 24, ' ');
        for (char& c : line)
            c = letters[random() % letters.size()];
        for (const LineReader& reader : readers)
            if (const auto value = reader.read(line)) {
                ++read;
                ASSERT_TRUE(std::isfinite(value->rate.si())) << line;
            }
    }
    EXPECT_GT(read, 100) << "the lines must not all be refused";
}

} // namespace
} // namespace sealwalk::feed
