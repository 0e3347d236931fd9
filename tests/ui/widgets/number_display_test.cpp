// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/number_display.h"

#include <gtest/gtest.h>

#include <QLocale>

namespace sealwalk::ui {

// Property: mantissa and decade come apart, and rounding up carries into the decade.
TEST(RateParts, SplitMantissaAndDecade)
{
    const struct
    {
        double number;
        int digits;
        const char* plain;
    } rows[] = {
        {4.6e-4, 2, "4.6e−4"},   {9.96e-7, 2, "1.0e−6"}, {9.94e-7, 2, "9.9e−7"}, {1e-10, 1, "1e−10"},
        {-2.5e-9, 2, "-2.5e−9"}, {12.0, 2, "1.2e1"},     {0.0, 2, "0"},
    };
    for (const auto& row : rows)
        EXPECT_EQ(rateParts(row.number, row.digits).plain(), QString::fromUtf8(row.plain)) << row.number;
    EXPECT_EQ(rateParts(4.6e-4).rich(), QString::fromUtf8("4.6e<b>−4</b>"));
    EXPECT_EQ(spokenRate(4.6e-4), QStringLiteral("4.6e-4"));
}

// Property: what is shown in a field reads back to the same number, without digits nobody typed.
TEST(TypedText, IsWhatAPersonWouldHaveTyped)
{
    EXPECT_EQ(typedText(480.0), QStringLiteral("480"));
    EXPECT_EQ(typedText(100.0), QStringLiteral("100")); // Regression: 1e2
    EXPECT_EQ(typedText(99999.0), QStringLiteral("99999"));
    EXPECT_EQ(typedText(2e7), QStringLiteral("2e7"));
    EXPECT_EQ(typedText(0.1 + 0.2), QStringLiteral("0.3"));
    EXPECT_EQ(typedText(1e-6 * 0.1 / 0.1), QStringLiteral("1e-6"));
    EXPECT_EQ(typedText(2.25), QStringLiteral("2.25"));
    EXPECT_EQ(typedText(0.0), QStringLiteral("0"));
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(typedText(2.25), QStringLiteral("2,25"));
    QLocale::setDefault(QLocale::c());
}

} // namespace sealwalk::ui
