// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/background_file.h"

#include <gtest/gtest.h>

#include <string>

namespace sealwalk::exchange {

// Property: the same series, however it is written down.
TEST(BackgroundFile, ReadsValuesAloneAndWithTimes)
{
    const struct
    {
        const char* text;
        DecimalMark mark;
    } rows[] = {
        {"1.5e-9\n1.6e-9\n1.4e-9\n1.5e-9\n1.7e-9\n", DecimalMark::Point},
        {"1.5-9\n1.6-9\n\n1.4-9\n# pause\n1.5-9\n1.7-9", DecimalMark::Point},
        {"time_s,rate\r\n0,1.5e-9\r\n2,1.6e-9\r\n4,1.4e-9\r\n6,1.5e-9\r\n8,1.7e-9\r\n", DecimalMark::Point},
        {"10;1,5e-9\n12;1,6e-9\n14;1,4e-9\n16;1,5e-9\n18;1,7e-9", DecimalMark::Comma},
        {"0 1,5e-9\n2 1,6e-9\n4 1,4e-9\n6 1,5e-9\n8 1,7e-9", DecimalMark::Comma},
    };
    for (const auto& row : rows) {
        BackgroundOptions options;
        options.mark = row.mark;
        options.interval = 2.0;
        const auto series = parseBackground(row.text, options);
        ASSERT_TRUE(series) << row.text << series.error().message;
        EXPECT_EQ(series->times, (std::vector<double>{0, 2, 4, 6, 8})) << row.text;
        ASSERT_EQ(series->values.size(), 5U);
        EXPECT_NEAR(inMillibarLitresPerSecond(series->values[4]), 1.7e-9, 1e-18) << row.text;
    }
}

// Property: level and swing as seen, however the sign is typed.
TEST(BackgroundFile, ReadsLevelAndSwing)
{
    // Regression: such a sign in a remark or a heading took a whole series for level and swing.
    for (const char* text : {"# noise +- 2e-8\n1e-9\n1e-9\n1e-9\n1e-9\n1e-9\n",
                             "value(+-10%)\n1e-9\n1e-9\n1e-9\n1e-9\n1e-9\n"}) {
        const auto series = parseBackground(text, {});
        ASSERT_TRUE(series) << series.error().message;
        EXPECT_EQ(series->values.size(), 5U);
        EXPECT_FALSE(series->swing);
    }
    for (const char* text :
         {"1e-7 +- 2e-8", "# by eye\n1e-7 +- 2e-8", "1-7 \u00B1 2-8\n", "\n1.0e-7 +/- 0.2e-7 "}) {
        const auto read = parseBackground(text, {});
        ASSERT_TRUE(read) << text << read.error().message;
        ASSERT_EQ(read->values.size(), 1U);
        EXPECT_EQ(read->times, std::vector<double>{0.0});
        EXPECT_NEAR(inMillibarLitresPerSecond(read->values.front()), 1e-7, 1e-16);
        ASSERT_TRUE(read->swing);
        EXPECT_NEAR(inMillibarLitresPerSecond(*read->swing), 2e-8, 1e-16);
    }
    for (const char* text :
         {"1e-7 +- 0", "1e-7 +- -2e-8", "+- 2e-8", "1e-7 +-", "1e-7\n2e-7 +- 1e-8", "a +- 1e-8"})
        EXPECT_EQ(parseBackground(text, {}).error().code, ErrorCode::BadInput) << text;
}

// Property: what cannot be read is refused with its line.
TEST(BackgroundFile, RefusesWithTheLine)
{
    const struct
    {
        const char* text;
        const char* says;
    } rows[] = {
        {"1e-9\n1e-9\nquiet\n1e-9\n1e-9\n", "line 3"},
        {"0 1e-9\n1 1e-9\n1 1e-9\n2 1e-9\n3 1e-9\n", "line 3: times must increase"},
        {"0 1e-9\n1e-9\n", "line 2: every line needs a time"},
        {"0 1e-9 3\n", "line 1 has 3 numbers"},
        {"1e-9\n1e-9\n", "at least 5 values"},
        {"", "at least 5 values"},
        {"1e-9\nnan\n1e-9\n1e-9\n1e-9\n", "line 2"},
    };
    for (const auto& row : rows) {
        const auto series = parseBackground(row.text, {});
        ASSERT_FALSE(series) << row.text;
        EXPECT_EQ(series.error().code, ErrorCode::BadInput);
        EXPECT_NE(series.error().message.find(row.says), std::string::npos) << series.error().message;
    }
}

} // namespace sealwalk::exchange
