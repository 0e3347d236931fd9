// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/air_equivalent.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace sealwalk::flow {
namespace {

// The law of flow written down a second time, in rarefaction and radius, and integrated step by step; no code
// or formula is shared with the library but the gas properties.
double localFlow(Gas gas, double d, double p, double kelvin)
{
    const double v0 = likelySpeed(gas, kelvins(kelvin));
    const double eta = viscosity(gas, kelvins(kelvin));
    const double delta = d * p / (2.0 * eta * v0);
    const double x = 2.0 * std::numbers::sqrt2 * delta;
    const double g = delta / 4.0 + 8.0 / (3.0 * std::sqrt(std::numbers::pi)) * (1.0 + x) / (1.0 + 1.235 * x);
    const double r = d / 2.0;
    return 0.5 * std::numbers::pi * r * r * r * v0 * g;
}

// Gauss-Legendre, five points, over panels that grow with the pressure; the integrand is smooth.
double tubeFlow(Gas gas, double d, double length, double p1, double p2)
{
    constexpr double kNodes[] = {-0.9061798459386640, -0.5384693101056831, 0.0, 0.5384693101056831,
                                 0.9061798459386640};
    constexpr double kWeights[] = {0.2369268850561891, 0.4786286704993665, 0.5688888888888889,
                                   0.4786286704993665, 0.2369268850561891};
    constexpr int kPanels = 40;
    double sum = 0.0;
    for (int i = 0; i < kPanels; ++i) {
        const double a = p2 + (p1 - p2) * std::pow(double(i) / kPanels, 3);
        const double b = p2 + (p1 - p2) * std::pow(double(i + 1) / kPanels, 3);
        for (int k = 0; k < 5; ++k)
            sum += 0.5 * (b - a) * kWeights[k] *
                   localFlow(gas, d, 0.5 * (a + b) + 0.5 * (b - a) * kNodes[k], 293.15);
    }
    return sum / length;
}

double diameterByBisection(Gas gas, double flow, double length)
{
    double low = 1e-9;
    double high = 1e-3;
    for (int i = 0; i < 200; ++i) {
        const double middle = std::sqrt(low * high);
        (tubeFlow(gas, middle, length, 1e5, 0.0) < flow ? low : high) = middle;
    }
    return std::sqrt(low * high);
}

// Published: the same law by independent quadrature; 2 % is what the tool promises.
TEST(AirEquivalent, AgreesWithQuadratureOfTheLocalLawWithinTwoPerCent)
{
    constexpr double kPromise = 0.02;
    for (const double length : {2e-3, 4e-3, 7e-3, 12e-3}) {
        for (double rate = 1e-10; rate < 1.5e-3; rate *= 10.0) {
            ChannelConditions conditions;
            conditions.length = metres(length);
            const auto ours =
                airEquivalent(millibarLitresPerSecond(rate), {Gas::Helium, Gas::Air, conditions});
            ASSERT_TRUE(ours.has_value());
            const double d = diameterByBisection(Gas::Helium, rate * 0.1, length);
            const double theirs = tubeFlow(Gas::Air, d, length, 1e5, 0.0);
            EXPECT_NEAR(ours->rate.si(), theirs, kPromise * theirs) << length << ' ' << rate;
            EXPECT_NEAR(ours->diameter.si(), d, kPromise * d) << length << ' ' << rate;
        }
    }
}

// Property: the integral solved in closed form is the quadrature to rounding.
TEST(AirEquivalent, ClosedFormIsTheQuadratureToRounding)
{
    for (const double d : {1e-9, 1e-7, 3e-6, 1e-4}) {
        const ChannelConditions conditions{millimetres(5.0), pascals(1e5), pascals(1e3),
                                           degreesCelsius(20.0)};
        const double theirs = tubeFlow(Gas::Air, d, 5e-3, 1e5, 1e3);
        EXPECT_NEAR(longCapillaryFlow(Gas::Air, metres(d), conditions).si(), theirs, 1e-9 * theirs) << d;
    }
}

// Property: between the limits of one molecular and one laminar channel or choked hole, always.
TEST(AirEquivalent, RatioStaysInsideItsBracket)
{
    for (const double length : {1e-3, 5e-3, 2e-2}) {
        for (double rate = 1e-12; rate < 2.0; rate *= 3.0) {
            ChannelConditions conditions;
            conditions.length = metres(length);
            const auto result =
                airEquivalent(millibarLitresPerSecond(rate), {Gas::Helium, Gas::Air, conditions});
            ASSERT_TRUE(result.has_value());
            EXPECT_GE(result->ratio, 0.35);
            EXPECT_LE(result->ratio, 1.0771);
            EXPECT_LE(result->ratioLow, result->ratio);
            EXPECT_GE(result->ratioHigh, result->ratio);
            EXPECT_GE(result->relativeUncertainty, 0.05);
            EXPECT_LE(result->relativeUncertainty, 0.5 * std::log(1.0771 / 0.35));
        }
    }
}

TEST(AirEquivalent, TendsToTheMolecularRatioForTheSmallestLeaks)
{
    const auto result = airEquivalent(millibarLitresPerSecond(1e-17));
    EXPECT_NEAR(result->ratio, 0.3717326, 3e-3);
    EXPECT_EQ(result->regime, Regime::Molecular);
    EXPECT_NEAR(result->relativeUncertainty, 0.05, 1e-12);
}

// Property: from helium to air and back is the rate that was given.
TEST(AirEquivalent, GoesThereAndBack)
{
    for (double rate = 1e-12; rate < 1.0; rate *= 11.0) {
        const auto air = airEquivalent(millibarLitresPerSecond(rate), {Gas::Helium, Gas::Air, {}});
        const auto back = airEquivalent(air->rate, {Gas::Air, Gas::Helium, {}});
        EXPECT_NEAR(inMillibarLitresPerSecond(back->rate), rate, 1e-9 * rate);
    }
}

TEST(AirEquivalent, KnowsThatOneGasIsItself)
{
    const auto same = airEquivalent(millibarLitresPerSecond(3e-7), {Gas::Helium, Gas::Helium, {}});
    EXPECT_NEAR(same->ratio, 1.0, 1e-9);
    EXPECT_EQ(same->relativeUncertainty, 0.0);
}

// Property: a channel measured at one pressure and asked for at another follows its regime.
TEST(AirEquivalent, CarriesAChannelToOtherPressures)
{
    AirEquivalentOptions options;
    options.to = Gas::Helium;
    options.elsewhere = ChannelConditions{};
    options.elsewhere->upstream = pascals(2e5);
    const auto fine = airEquivalent(millibarLitresPerSecond(1e-16), options);
    EXPECT_NEAR(fine->ratio, 2.0, 0.02);
    options.conditions.length = metres(5.0);
    options.elsewhere->length = metres(5.0);
    const auto coarse = airEquivalent(millibarLitresPerSecond(10.0), options);
    EXPECT_NEAR(coarse->ratio, 4.0, 0.1);
}

} // namespace
} // namespace sealwalk::flow
