// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/response.h"
#include "tests/support/check_row.h"

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

const Duration kTau = seconds(20.0);

class ResponseRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(ResponseRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kMixed = "the well-mixed volume, worked out elsewhere by an ODE solver";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, ResponseRows,
    testing::Values(
        CheckRow{"T_01", 20.0, 1e-9, kMixed,
                 [] { return responseTime(litres(50.0), litresPerSecond(2.5)).si(); }},
        CheckRow{"T_02", 0.63212055883, 1e-9, "ASTM E498: V/S is the time to 63 % of the signal",
                 [] { return riseFraction(kTau, kTau); }},
        CheckRow{"T_03", 46.05170186, 1e-9, kMixed, [] { return dwellFor(0.90, kTau).si(); }},
        CheckRow{"T_04", 59.914645471, 1e-9, kMixed, [] { return dwellFor(0.95, kTau).si(); }},
        CheckRow{"T_05", 92.10340372, 1e-9, kMixed, [] { return dwellFor(0.99, kTau).si(); }},
        CheckRow{"T_06", 0.39346934029, 1e-9, kMixed, [] { return riseFraction(seconds(10.0), kTau); }},
        CheckRow{"T_07", 8.1327810641e-08, 1e-9, kMixed,
                 [] { return 3.2e-8 / correctDwell(seconds(10.0), kTau, 0.1)->fraction; }},
        CheckRow{"T_08", 92.10340372, 1e-9, kMixed, [] { return fallTo(0.01, kTau).si(); }},
        CheckRow{"T_09", 0.13416410697, 1e-9, kMixed,
                 [] { return pulseFraction(seconds(15.0), seconds(5.0), kTau); }},
        CheckRow{"T_10", 0.32682570554, 1e-9, kMixed,
                 [] { return riseFractionTwoLags(seconds(10.0), seconds(20.0), seconds(2.0)); }},
        CheckRow{"T_11", 0.59399415029, 1e-9, kMixed,
                 [] { return riseFractionTwoLags(seconds(10.0), seconds(5.0), seconds(5.0)); }},
        CheckRow{"T_12", 0.2, 1e-9, kMixed,
                 [] { return detectorShare(litresPerSecond(2.5), litresPerSecond(10.0)); }},
        CheckRow{"T_13", 4.0, 1e-9, kMixed,
                 [] {
                     ResponseOptions options{litres(50.0), litresPerSecond(2.5), litresPerSecond(10.0)};
                     return respond(options)->response.si();
                 }},
        CheckRow{"T_15", 0.087794876912, 1e-9, kMixed,
                 [] { return pulseFraction(seconds(40.0), seconds(10.0), kTau); }},
        CheckRow{
            "T_16", 165.8809928, 1e-9, kMixed,
            [] {
                return waitFor(millibarLitresPerSecond(2e-6), millibarLitresPerSecond(1e-8), 0.05, kTau).si();
            }}),
    tests::rowName);

// Property: the rise grows from 0 and never reaches 1; dwell and rise are inverse.
TEST(Response, RisesMonotonically)
{
    double last = -1.0;
    for (double t = 0.0; t < 200.0; t += 0.5) {
        const double f = riseFraction(seconds(t), kTau, seconds(3.0));
        EXPECT_GE(f, last);
        EXPECT_GE(f, 0.0);
        EXPECT_LT(f, 1.0);
        last = f;
    }
    for (const double f : {0.0, 0.2, 0.5, 0.95, 0.999})
        EXPECT_NEAR(riseFraction(dwellFor(f, kTau), kTau), f, 1e-14);
}

// Property: the two-lag formula is symmetric and passes smoothly into its confluent form.
TEST(Response, TwoLagsAreContinuousWhereTheyMeet)
{
    const Duration t = seconds(10.0);
    EXPECT_NEAR(riseFractionTwoLags(t, seconds(5.0), seconds(5.00001)),
                riseFractionTwoLags(t, seconds(5.0), seconds(5.0)), 2e-6);
    EXPECT_NEAR(riseFractionTwoLags(t, seconds(2.0), seconds(20.0)),
                riseFractionTwoLags(t, seconds(20.0), seconds(2.0)), 1e-15);
}

TEST(Response, RefusesToCorrectADwellThatSawAlmostNothing)
{
    const auto tooShort = correctDwell(seconds(4.0), kTau, 0.1);
    ASSERT_FALSE(tooShort.has_value());
    EXPECT_EQ(tooShort.error().message,
              "the dwell of 4 s is too short for a response time of 20 s; at least 4.46 s is "
              "needed to size a leak");
    EXPECT_TRUE(correctDwell(seconds(4.5), kTau, 0.1).has_value());
    EXPECT_FALSE(correctDwell(seconds(0.0), kTau, 0.1).has_value());
    EXPECT_EQ(correctDwell(seconds(1.0), seconds(0.0), 0.1)->fraction, 1.0);
}

// Property: the uncertainty is the derivative of the fraction.
TEST(Response, DwellUncertaintyIsTheSlopeOfTheFraction)
{
    const double step = 1e-4;
    const auto at = [](double tau) { return riseFraction(seconds(15.0), seconds(tau)); };
    const double slope = (at(20.0 * (1 + step)) - at(20.0 * (1 - step))) / (2.0 * step) / at(20.0);
    EXPECT_NEAR(correctDwell(seconds(15.0), kTau, 1.0)->relativeUncertainty, std::abs(slope), 1e-6);
}

TEST(Response, RefusesNonsenseNamingIt)
{
    const ResponseOptions good{litres(50.0), litresPerSecond(2.5), {}};
    ASSERT_TRUE(respond(good).has_value());
    ResponseOptions bad = good;
    bad.volume = litres(0.0);
    EXPECT_EQ(respond(bad).error().message, "the volume must be above zero");
    bad = good;
    bad.pump = litresPerSecond(-1.0);
    EXPECT_EQ(respond(bad).error().message, "the pumping speed of the detector must be above zero");
    bad = good;
    bad.hoseLength = metres(1.0);
    EXPECT_EQ(respond(bad).error().message, "a hose needs both its inner diameter and its length");
    bad = good;
    bad.auxiliary = litresPerSecond(-1.0);
    EXPECT_FALSE(respond(bad).has_value());
    bad = good;
    bad.sizing = 1.0;
    EXPECT_FALSE(respond(bad).has_value());
}

} // namespace
} // namespace sealwalk::flow
