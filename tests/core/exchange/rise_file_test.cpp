// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rise_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sealwalk::exchange {
namespace {

using testing::DoubleEq;
using testing::ElementsAre;

TEST(RiseFile, ReadsTheTwoColumnsInTheirUnits)
{
    const auto record = parseRise("time_s,pressure_mbar\n0,0.01\n10,0.02\n20.5,3e-2\n").value();
    EXPECT_THAT(record.time, ElementsAre(0.0, 10.0, 20.5));
    EXPECT_THAT(record.pressure, ElementsAre(DoubleEq(1.0), DoubleEq(2.0), DoubleEq(3.0)));
    EXPECT_TRUE(record.temperature.empty());
}

struct Accepted
{
    const char* name;
    const char* text;
    double time;        // s, of the second sample
    double pressure;    // Pa, of the second sample
    double temperature; // K, 0 when there is none
};

class RiseFileAccepts : public testing::TestWithParam<Accepted>
{};

TEST_P(RiseFileAccepts, TheSameRecordHoweverItIsWritten)
{
    const Accepted& row = GetParam();
    const auto record = parseRise(row.text);
    ASSERT_TRUE(record.has_value()) << record.error().message;
    ASSERT_EQ(record->time.size(), 2u);
    EXPECT_DOUBLE_EQ(record->time[1], row.time);
    EXPECT_NEAR(record->pressure[1], row.pressure, 1e-12 * row.pressure);
    if (row.temperature > 0.0) {
        EXPECT_DOUBLE_EQ(record->temperature.at(1), row.temperature);
    }
}

INSTANTIATE_TEST_SUITE_P(
    Written, RiseFileAccepts,
    testing::Values(
        Accepted{"Pascals", "time_s,pressure_Pa\n0,1\n10,2\n", 10, 2, 0},
        Accepted{"Torr", "time_s,pressure_Torr\n0,1\n10,2\n", 10, 2 * 101325.0 / 760.0, 0},
        Accepted{"MilliTorrAndMinutes", "time_min,pressure_mTorr\n0,1\n10,2\n", 600, 2 * 0.101325 / 0.760, 0},
        Accepted{"Hours", "time_h,pressure_Pa\n0,1\n10,2\n", 36000, 2, 0},
        Accepted{"Temperature", "time_s,pressure_Pa,temperature_degC\n0,1,20\n10,2,21.5\n", 10, 2, 294.65},
        Accepted{"OtherOrder", "temperature_degC,pressure_Pa,time_s\n20,1,0\n21.5,2,10\n", 10, 2, 294.65},
        Accepted{"WindowsLines", "time_s,pressure_Pa\r\n0,1\r\n10,2\r\n", 10, 2, 0},
        Accepted{"ByteOrderMark", "\xEF\xBB\xBFtime_s,pressure_Pa\n0,1\n10,2\n", 10, 2, 0},
        Accepted{"Semicolons", "time_s;pressure_Pa\n0;1.0\n10;2.5\n", 10, 2.5, 0},
        Accepted{"DecimalCommas", "time_s;pressure_Pa\n0,5;1,0\n10,25;2,5e0\n", 10.25, 2.5, 0},
        Accepted{"Comments", "# chamber 2\ntime_s,pressure_Pa\n# start\n0,1\n\n10,2\n# end", 10, 2, 0},
        Accepted{"BlanksAndQuotes", " \"time_s\" , \"pressure_Pa\" \n 0 , \"1\"\n\t10, 2 \n", 10, 2, 0},
        Accepted{"NoLastNewline", "time_s,pressure_Pa\n0,1\n10,2", 10, 2, 0},
        Accepted{"BelowZero", "time_s,pressure_Pa\n-5,-1\n+10,2\n", 10, 2, 0}),
    [](const auto& row) { return std::string(row.param.name); });

struct Refused
{
    const char* name;
    const char* text;
    const char* says;
};

class RiseFileRefuses : public testing::TestWithParam<Refused>
{};

TEST_P(RiseFileRefuses, InASentenceThatNamesTheLine)
{
    const auto record = parseRise(GetParam().text);
    ASSERT_FALSE(record.has_value());
    EXPECT_EQ(record.error().code, ErrorCode::BadInput);
    EXPECT_THAT(record.error().message, testing::HasSubstr(GetParam().says));
    EXPECT_THAT(record.error().message, testing::Not(testing::HasSubstr("\n")));
}

INSTANTIATE_TEST_SUITE_P(
    Bad, RiseFileRefuses,
    testing::Values(
        Refused{"Empty", "", "the record is empty"},
        Refused{"OnlyComments", "# nothing\n", "the record is empty"},
        Refused{"OnlyHeader", "time_s,pressure_Pa\n", "no samples"},
        Refused{"NoHeader", "0,1\n10,2\n", "line 1: \"0\" is no column known here"},
        Refused{"NoPressure", "time_s,temperature_degC\n0,20\n",
                "line 1: a column for time or pressure is missing"},
        Refused{"UnknownColumn", "time_s,pressure_Pa,humidity_percent\n",
                "line 1: \"humidity_percent\" is no column"},
        Refused{"NoUnit", "time,pressure_Pa\n", "line 1: \"time\" is no column"},
        Refused{"UnknownUnit", "time_s,pressure_furlong\n", "line 1: column \"pressure_furlong\""},
        Refused{"WrongKind", "time_s,pressure_s\n", "line 1: column \"pressure_s\""},
        Refused{"Twice", "time_s,pressure_Pa,pressure_mbar\n", "line 1: the column pressure comes twice"},
        Refused{"NotANumber", "time_s,pressure_Pa\n0,1\n10,abc\n",
                "line 3: \"abc\" is not a number such as 0.25"},
        Refused{"Nan", "time_s,pressure_Pa\n0,nan\n", "line 2: \"nan\" is not a number"},
        Refused{"Infinite", "time_s,pressure_Pa\n0,inf\n", "line 2: \"inf\" is not a number"},
        Refused{"TooLarge", "time_s,pressure_Pa\n0,1e999\n", "line 2: \"1e999\" is not a number"},
        Refused{"EmptyValue", "time_s,pressure_Pa\n0,\n", "line 2: \"\" is not a number"},
        Refused{"TooFew", "time_s,pressure_Pa\n0,1\n10\n", "line 3: 1 values where the header names 2"},
        Refused{"CommaDecimalsWithCommas", "time_s,pressure_Pa\n0,1\n10,2,5\n",
                "decimal commas need semicolons"},
        Refused{"GroupedThousands", "time_s;pressure_Pa\n0;1\n10;1.234,5\n",
                "line 3: \"1.234,5\" is not a number"},
        Refused{"Backwards", "# x\ntime_s,pressure_Pa\n0,1\n20,2\n10,3\n",
                "line 5: the time does not lie after"},
        Refused{"SameTime", "time_s,pressure_Pa\n0,1\n0,2\n", "line 3: the time does not lie after"},
        Refused{"Frozen", "time_s,pressure_Pa,temperature_degC\n0,1,-200\n",
                "line 2: the temperature must be"}),
    [](const auto& row) { return std::string(row.param.name); });

// Property: numbers without a head line are read in the units that were chosen, however they are parted.
TEST(RiseFile, BareNumbersTakeTheUnitsThatWereChosen)
{
    const RiseUnits units{readUnit("min", UnitKind::Times).value(),
                          readUnit("mbar", UnitKind::Pressures).value()};
    for (const char* typed :
         {"0 1e-2\n2 3e-2\n", "0,1e-2\n2,3e-2", "0, 0.01\n2, 0.03", "0 ,0.01\n2 , 0.03",
          " 0\t0,01 \r\n2\t 0,03\r\n\n", "0;0,01\n2;0,03\n", "\n\n0   1e-2\n# a remark\n2   3e-2\n",
          "\xEF\xBB\xBF"
          "0 1e-2\n2 3e-2\n"}) {
        EXPECT_TRUE(isBareRise(typed)) << typed;
        const auto record = parseRise(typed, units);
        ASSERT_TRUE(record.has_value()) << typed << ": " << record.error().message;
        EXPECT_THAT(record->time, ElementsAre(0.0, 120.0)) << typed;
        EXPECT_THAT(record->pressure, ElementsAre(DoubleEq(1.0), DoubleEq(3.0))) << typed;
        EXPECT_FALSE(parseRise(typed).has_value()) << "a file says its units";
    }
    for (const char* typed :
         {"", " \n", "time_s,pressure_Pa\n0,1\n", "# a remark\ntime_s,pressure_Pa\n0,1\n", "hello"})
        EXPECT_FALSE(isBareRise(typed)) << typed;
    EXPECT_THAT(parseRise("time_s,pressure_Pa\n0,1\n2,3\n", units)->time, ElementsAre(0.0, 2.0))
        << "its own units hold";
    // Regression: the line was counted from a header that nobody had typed.
    for (const char* typed : {"0 1\n1 x\n", "0 1\n1 2 3\n"})
        EXPECT_THAT(parseRise(typed, units).error().message, testing::HasSubstr("line 2: ")) << typed;
}

TEST(RiseFile, NamesTheFileThatIsNotThere)
{
    const auto record = readRiseFile("/nowhere/rise.csv");
    ASSERT_FALSE(record.has_value());
    EXPECT_EQ(record.error().code, ErrorCode::NotFound);
    EXPECT_THAT(record.error().message, testing::HasSubstr("/nowhere/rise.csv"));
}

} // namespace
} // namespace sealwalk::exchange
