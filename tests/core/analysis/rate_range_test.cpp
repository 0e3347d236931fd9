// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/decision.h"
#include "core/analysis/rate_range.h"
#include "core/analysis/uncertainty.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {
namespace {

LeakRate rated(double rate)
{
    return millibarLitresPerSecond(rate);
}

RateRange between(double low, double surelyAbove, double surelyBelow, double high)
{
    return {rated(low), rated(surelyAbove), rated(surelyBelow), rated(high)};
}

// Published: with both sides lognormal the range decides as JCGM 106:2012 does for a lognormal value, at the
// same risk and with the same probability of conformance.
TEST(RateRange, DecidesAsTheGuideWhereBothSidesAreAlike)
{
    const LeakRate limit = rated(1e-8);
    int within = 0;
    int over = 0;
    for (const double relative : {0.35, 0.5, 1.0}) {
        const double two = std::exp(2.0 * logSpread(relative));
        for (double rate = 1e-10; rate < 1e-6; rate *= 1.11) {
            const RateRange range = lognormalRange(rated(rate), rated(rate / two), rated(rate * two));
            const auto guide = decide({rated(rate), rated(relative * rate), limit});
            ASSERT_TRUE(guide);
            EXPECT_EQ(verdictOf(range, limit), guide->verdict) << rate;
            EXPECT_NEAR(conformanceOf(range, rated(rate), limit).value(), guide->conformance, 1e-9) << rate;
            within += guide->verdict == Verdict::Within ? 1 : 0;
            over += guide->verdict == Verdict::Over ? 1 : 0;
        }
    }
    EXPECT_GT(within, 10);
    EXPECT_GT(over, 10);
}

// Property: within is a conformance of 95 % at least and over one of 5 % at most, however unlike the sides.
TEST(RateRange, VerdictAndConformanceAgree)
{
    const RateRange range = between(5e-9, 6e-9, 2.2e-8, 4.0e-8);
    const LeakRate rate = rated(1e-8);
    for (double limit = 1e-9; limit < 1e-7; limit *= 1.05) {
        const double conformance = conformanceOf(range, rate, rated(limit)).value();
        switch (verdictOf(range, rated(limit))) {
        case Verdict::Within:
            EXPECT_GE(conformance, 0.95 - 1e-12) << limit;
            break;
        case Verdict::Over:
            EXPECT_LE(conformance, 0.05 + 1e-12) << limit;
            break;
        default:
            EXPECT_GT(conformance, 0.05 - 1e-12) << limit;
            EXPECT_LT(conformance, 0.95 + 1e-12) << limit;
        }
    }
    EXPECT_EQ(verdictOf(range, std::nullopt), Verdict::NoAnswer);
}

// Regression: a rare probe that passed badly lengthens the two-sided end; what lies within the limit with
// 95 % stays within.
TEST(RateRange, ALongTailDecidesByItsOneSidedEnd)
{
    EXPECT_EQ(verdictOf(between(1e-9, 1.2e-9, 4.5e-9, 8e-9), rated(5e-9)), Verdict::Within);
    EXPECT_EQ(verdictOf(between(1e-9, 1.2e-9, 5.5e-9, 8e-9), rated(5e-9)), Verdict::CannotSay);
    EXPECT_EQ(verdictOf(between(1e-9, 5.1e-9, 7e-9, 8e-9), rated(5e-9)), Verdict::Over);
}

// Property: widening moves every end outwards, keeps their order, and adds as independent spreads do.
TEST(RateRange, WidensByIndependentUncertainty)
{
    const LeakRate rate = rated(1e-8);
    const RateRange range = between(5e-9, 6e-9, 2.2e-8, 4.0e-8);
    const RateRange wide = widened(range, rate, 0.4);
    EXPECT_LT(wide.low, range.low);
    EXPECT_LT(wide.surelyAbove, range.surelyAbove);
    EXPECT_GT(wide.surelyBelow, range.surelyBelow);
    EXPECT_GT(wide.high, range.high);
    EXPECT_LT(wide.low, wide.surelyAbove);
    EXPECT_LT(wide.surelyBelow, wide.high);
    const double two[] = {0.3, 0.4};
    const RateRange once = widened(lognormalRange(rate, rate, rate), rate, 0.3);
    const double up = std::log(widened(once, rate, 0.4).high / rate) / 2.0;
    EXPECT_NEAR(up, std::hypot(logSpread(two[0]), logSpread(two[1])), 1e-12);
    EXPECT_EQ(widened(between(0.0, 0.0, 1e-8, 2e-8), rate, 0.4).low, LeakRate());
    const RateRange same = widened(range, rate, 0.0);
    EXPECT_EQ(same.low, range.low);
    EXPECT_EQ(same.high, range.high);
}

// Property: a range that reaches down to nothing never says over, and has no probability to be below.
TEST(RateRange, ThatReachesNothingSpeaksForNoLeak)
{
    const RateRange range = lognormalRange(rated(2e-8), rated(0.0), rated(5e-8));
    EXPECT_EQ(verdictOf(range, rated(1e-8)), Verdict::CannotSay);
    EXPECT_EQ(verdictOf(range, rated(6e-8)), Verdict::Within);
    EXPECT_FALSE(conformanceOf(range, rated(2e-8), rated(1e-8)));
}

} // namespace
} // namespace sealwalk::analysis
