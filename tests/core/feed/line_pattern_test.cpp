// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_pattern.h"

#include <gtest/gtest.h>

#include <string>

namespace sealwalk::feed {
namespace {

struct Row
{
    const char* line;
    const char* pattern;
    const char* number; ///< nullptr: does not fit
};

// Property: worked out by hand.
TEST(LinePattern, FindsTheNumber)
{
    const Row rows[] = {
        {"1.2e-9", "#", "1.2e-9"},
        {"  1.2e-9  ", "#", "1.2e-9"},
        {"now 2.9E-4 mbar*l/s", "now # mbar*", "2.9E-4"},
        {"now\t 2.9E-4   mbar*l/s", "now # mbar*", "2.9E-4"},
        {"now=2.9E-4;P=3.1E-2", "now=#;*", "2.9E-4"},
        {"now=2.9E-4;P=3.1E-2", "*P=#", "3.1E-2"},
        {"ch1 7.5 ch2 8.5", "ch1 * ch2 #", "8.5"},
        {"ch1 7.5 ch2 8.5", "* #", "8.5"}, // the number must be the end of the line
        {"12:30:05 -1.5e-10 A", "* # A", "-1.5e-10"},
        {"1,5e-9 mbar", "# mbar", "1,5e-9"},
        {"now 2.9E-4 mbar*l/s", "now #", nullptr},
        {"now ---- mbar", "now # mbar", nullptr},
        {"NOW 1e-9", "now #", nullptr},
        {"now1e-9", "now #", nullptr},
        {"", "#", nullptr},
        {"now 12.5 34.5", "now # *", "12.5"},
    };
    for (const Row& row : rows) {
        ASSERT_TRUE(checkPattern(row.pattern)) << row.pattern;
        const auto found = numberIn(row.line, row.pattern);
        EXPECT_EQ(found.has_value(), row.number != nullptr) << row.line << " | " << row.pattern;
        if (found && row.number != nullptr) {
            EXPECT_EQ(*found, row.number) << row.line << " | " << row.pattern;
        }
    }
}

// Property: a number is taken whole or not at all.
TEST(LinePattern, NeverBeginsInTheMiddleOfANumber)
{
    EXPECT_EQ(numberIn("x12.5", "*#"), "12.5");
    EXPECT_EQ(numberIn("x-12.5", "*#"), "-12.5");
}

TEST(LinePattern, RefusesWhatCannotBeOne)
{
    for (const char* wrong : {"", "now", "now # #", "##"}) {
        const Status status = checkPattern(wrong);
        ASSERT_FALSE(status) << wrong;
        EXPECT_NE(status.error().message.find("one #"), std::string::npos);
    }
    EXPECT_FALSE(checkPattern("#" + std::string(kLongestPattern, '*')));
}

// Property: the worst line for the worst pattern still takes no time worth speaking of (it ends at all).
TEST(LinePattern, NoPatternRunsAway)
{
    std::string pattern;
    for (int i = 0; i < 29; ++i)
        pattern += "*a*1";
    pattern += "#b";
    std::string line;
    for (int i = 0; i < 128; ++i)
        line += "a1";
    ASSERT_TRUE(checkPattern(pattern));
    EXPECT_FALSE(numberIn(line, pattern));
}

} // namespace
} // namespace sealwalk::feed
