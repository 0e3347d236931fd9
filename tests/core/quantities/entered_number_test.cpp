// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/entered_number.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace sealwalk {
namespace {

using State = EnteredNumber::State;

TEST(EnteredNumber, AllShortFormsAreOneValue)
{
    for (const char* typed : {"3.2e-7", "3,2e-7", "3.2-7", "3.2 7", "3.2 -7", "3.2e7", "3,2E7", "3.2×10^-7",
                              "3.2x10^7", "3.2*10-7", "3.2×7", "3.2^7", "3.2−7", "3.2 × 10⁻⁷", "3.2×10⁻⁷",
                              "32-8", "0.32-6", "3.2E-07", "3.2 e-7"}) {
        const EnteredNumber entered = readEntered(typed);
        ASSERT_EQ(entered.state, State::Complete) << typed;
        EXPECT_EQ(*entered.value, 3.2e-7) << typed;
        EXPECT_EQ(entered.readBack, "3.2e-7") << typed;
    }
}

TEST(EnteredNumber, AnExponentAboveZeroNeedsItsPlus)
{
    EXPECT_EQ(*readEntered("1.5e+1").value, 15.0);
    EXPECT_EQ(*readEntered("1.5+1").value, 15.0);
    EXPECT_EQ(*readEntered("1.5 0").value, 1.5);
    EXPECT_EQ(readEntered("1.5+1").readBack, "1.5e+1");
}

// Regression: a value of 10 and more read back without its plus, and read again was taken as e-1.
TEST(EnteredNumber, WhatIsReadBackIsTheSameValueAgain)
{
    for (const char* mantissa : {"1", "2.5", "32", "0.4"})
        for (int exponent = -kLargestEnteredExponent; exponent <= kLargestEnteredExponent; ++exponent) {
            const EnteredNumber first = withExponent(readEntered(mantissa), exponent);
            const EnteredNumber again = readEntered(first.readBack);
            if (std::abs(first.shownExponent.value_or(99)) > kLargestEnteredExponent)
                continue; // 32e30 reads back as 3.2e+31, which nobody may type
            ASSERT_EQ(again.state, State::Complete) << first.readBack;
            EXPECT_EQ(again.value, first.value) << first.readBack;
            EXPECT_EQ(again.exponent, first.shownExponent) << first.readBack;
        }
}

TEST(EnteredNumber, TellsHowFarTheTypingHasCome)
{
    struct Row
    {
        const char* typed;
        State state;
    };
    const Row rows[] = {
        {"", State::Empty},          {" ", State::Empty},        {"3", State::Mantissa},
        {"3.", State::Mantissa},     {"3,2", State::Mantissa},   {"3.2e", State::Opened},
        {"3.2-", State::Opened},     {"3.2 ", State::Opened},    {"3.2×", State::Opened},
        {"3.2×1", State::Opened},    {"3.2×10", State::Opened},  {"3.2×10^", State::Opened},
        {"3.2×10^-", State::Opened}, {"0", State::Zero},         {"0.0", State::Zero},
        {"0-7", State::Zero},        {"-", State::Wrong},        {".5", State::Wrong},
        {"3.2.1", State::Wrong},     {"3,2,1", State::Wrong},    {"1,234.5", State::Wrong},
        {"3.2e7x", State::Wrong},    {"3.2ee7", State::Wrong},   {"3.2--7", State::Wrong},
        {"3.2-99", State::Wrong},    {"3.2-7 1", State::Wrong},  {"abc", State::Wrong},
        {"nan", State::Wrong},       {"3.2e-7-8", State::Wrong},
    };
    for (const Row& row : rows) {
        EXPECT_EQ(readEntered(row.typed).state, row.state) << row.typed;
        EXPECT_FALSE(readEntered(row.typed).value.has_value()) << row.typed;
    }
}

TEST(EnteredNumber, AMantissaTakesTheOfferedExponent)
{
    const EnteredNumber entered = withExponent(readEntered("4,5"), -9);
    ASSERT_EQ(entered.state, State::Complete);
    EXPECT_EQ(*entered.value, 4.5e-9);
    EXPECT_EQ(withExponent(readEntered("0"), -9).state, State::Zero);
}

TEST(EnteredNumber, KeepsTheDigitsThatWereTyped)
{
    EXPECT_EQ(readEntered("3.20-7").readBack, "3.2e-7");
    EXPECT_EQ(readEntered("123.4-9").readBack, "1.234e-7");
    EXPECT_EQ(readEntered("1-10").readBack, "1e-10");
}

} // namespace
} // namespace sealwalk
