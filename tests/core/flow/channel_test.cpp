// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/air_equivalent.h"
#include "core/flow/channel.h"
#include "core/flow/rarefaction.h"
#include "tests/support/check_row.h"

#include <limits>

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

const Temperature kRoom = degreesCelsius(20.0);

ChannelConditions channel(double length, double p1 = 1e5, double p2 = 0.0, double celsius = 20.0)
{
    return {metres(length), pascals(p1), pascals(p2), degreesCelsius(celsius)};
}

double lengthOnly(Gas gas, double d, const ChannelConditions& conditions)
{
    return longCapillaryFlow(gas, metres(d), conditions).si();
}

double heliumDiameter(double millibarLitres, double length, ChannelModel model)
{
    return channelDiameter(Gas::Helium, millibarLitresPerSecond(millibarLitres), channel(length), model)
        .value()
        .si();
}

ChannelFlow wideChannel(Gas gas)
{
    return channelFlow(gas, metres(heliumDiameter(1.0, 1e-3, ChannelModel::LengthAndExit)), channel(1e-3));
}

double ratioLengthOnly(double d, double length, double p1)
{
    return lengthOnly(Gas::Air, d, channel(length, p1)) / lengthOnly(Gas::Helium, d, channel(length, p1));
}

class ChannelRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(ChannelRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kKnudsen = "Knudsen, Ann. Phys. 28 (1909) 75, integrated numerically elsewhere";
constexpr const char* kExit = "length and exit in series, solved elsewhere with scipy";
constexpr const char* kOrifice =
    "gas dynamics of a choked orifice, worked out elsewhere; helium near the simulated 1.53";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, ChannelRows,
    testing::Values(
        CheckRow{"K_01", 1.787391e-05, 1e-5, kKnudsen,
                 [] { return lengthOnly(Gas::Helium, 1e-5, channel(5e-3)); }},
        CheckRow{"K_02", 1.546554e-05, 1e-5, kKnudsen,
                 [] { return lengthOnly(Gas::Air, 1e-5, channel(5e-3)); }},
        CheckRow{"K_03", 1.204528e-05, 1e-5, kKnudsen,
                 [] { return lengthOnly(Gas::Helium, 1e-5, channel(5e-3, 1e5, 5e4)); }},
        CheckRow{"K_04", 4.244058e-05, 1e-5, kKnudsen,
                 [] { return lengthOnly(Gas::Air, 1e-5, channel(5e-3, 2e5, 1e5)); }},
        CheckRow{"K_05", 1.485819e-05, 1e-5, kKnudsen,
                 [] { return lengthOnly(Gas::Air, 1e-5, channel(5e-3, 1e5, 0.0, 40.0)); }},
        CheckRow{"K_06", 0.9994277, 1e-5, kKnudsen,
                 [] {
                     const double d = 1e-9;
                     const double molecular =
                         3.14159265358979324 / 12.0 * meanSpeed(Gas::Helium, kRoom) * d * d * d / 1e-3 * 1e5;
                     return lengthOnly(Gas::Helium, d, channel(1e-3)) / molecular;
                 }},
        CheckRow{"K_07", 0.3717322, 1e-5, kKnudsen, [] { return ratioLengthOnly(1e-9, 1e-3, 100.0); }},
        CheckRow{"K_08", 1.076477, 1e-5, kKnudsen, [] { return ratioLengthOnly(5e-3, 10.0, 1e5); }},
        CheckRow{"K_09", 2.999418, 1e-5, kKnudsen,
                 [] {
                     return lengthOnly(Gas::Air, 5e-3, channel(10.0, 2e5, 1e5)) /
                            lengthOnly(Gas::Air, 5e-3, channel(10.0));
                 }},
        CheckRow{"K_10", 0.9988711, 1e-5, kKnudsen,
                 [] {
                     return lengthOnly(Gas::Helium, 1e-9, channel(1e-3, 2e5, 1e5)) /
                            lengthOnly(Gas::Helium, 1e-9, channel(1e-3));
                 }},
        CheckRow{"K_11", 2.288328e-06, 1e-5, kKnudsen,
                 [] { return heliumDiameter(1e-6, 5e-3, ChannelModel::LengthOnly); }},
        CheckRow{
            "K_12", 0.6092565, 1e-5, kKnudsen,
            [] { return ratioLengthOnly(heliumDiameter(1e-6, 5e-3, ChannelModel::LengthOnly), 5e-3, 1e5); }},
        CheckRow{"K_13", 2.288747e-06, 1e-5, kExit,
                 [] { return heliumDiameter(1e-6, 5e-3, ChannelModel::LengthAndExit); }},
        CheckRow{"K_14", 0.6092892, 1e-5, kExit,
                 [] { return airEquivalent(millibarLitresPerSecond(1e-6))->ratio; }},
        CheckRow{"K_15", 6.901198e-05, 1e-5, kExit,
                 [] { return heliumDiameter(1.0, 1e-3, ChannelModel::LengthAndExit); }},
        CheckRow{"K_16", 56791.8, 1e-4, kExit, [] { return wideChannel(Gas::Helium).exit.si(); }},
        CheckRow{"K_17", 81891.5, 1e-4, kExit, [] { return wideChannel(Gas::Air).exit.si(); }},
        CheckRow{"K_18", 0.05098604, 1e-5, kExit, [] { return wideChannel(Gas::Air).flow.si(); }},
        CheckRow{"K_19", 1.5290304, 1e-6, kOrifice, [] { return chokedOutflow(Gas::Helium); }},
        CheckRow{"K_20", 1.4417485, 1e-6, kOrifice, [] { return chokedOutflow(Gas::Air); }},
        CheckRow{"K_21", 0.35051295, 1e-6, kOrifice, [] { return chokedHoleRatio(Gas::Helium, Gas::Air); }},
        CheckRow{"K_22", 2.312401, 1e-5, "kinetic theory, worked out elsewhere",
                 [] { return rarefaction(Gas::Helium, kRoom, metres(1e-6), pascals(1e5)); }},
        CheckRow{"K_23", 6.700032, 1e-5, "kinetic theory, worked out elsewhere",
                 [] { return rarefaction(Gas::Air, kRoom, metres(1e-6), pascals(1e5)); }},
        CheckRow{"K_24", 0.06613602, 1e-5, "kinetic theory, worked out elsewhere",
                 [] { return meanFreePath(Gas::Air, kRoom, pascals(1e5)).si() / 1e-6; }}),
    tests::rowName);

// Property: the exit never adds flow, and a wider channel and a higher pressure always do.
TEST(Channel, FlowGrowsWithDiameterAndPressureAndTheExitOnlyTakesAway)
{
    for (const Gas gas : {Gas::Helium, Gas::Air, Gas::Hydrogen}) {
        double last = 0.0;
        for (double d = 1e-9; d < 1e-3; d *= 1.3) {
            const double q = channelFlow(gas, metres(d), channel(5e-3)).flow.si();
            EXPECT_GT(q, last) << d;
            EXPECT_LE(q, lengthOnly(gas, d, channel(5e-3)) * (1.0 + 1e-12)) << d;
            last = q;
        }
        for (const double d : {1e-8, 1e-6, 1e-4}) {
            last = 0.0;
            for (double p = 1.0; p < 1e6; p *= 1.5) {
                const double q = channelFlow(gas, metres(d), channel(5e-3, p)).flow.si();
                EXPECT_GT(q, last) << d << ' ' << p;
                last = q;
            }
        }
    }
}

// Property: molecular flow follows the pressure difference, laminar flow the difference of squares.
TEST(Channel, FollowsTheLawsOfBothLimits)
{
    const double molecular = lengthOnly(Gas::Air, 1e-9, channel(5e-3, 3e3, 1e3)) / 2e3;
    EXPECT_NEAR(lengthOnly(Gas::Air, 1e-9, channel(5e-3, 9e3, 1e3)) / 8e3, molecular, 1e-3 * molecular);
    const double laminar = lengthOnly(Gas::Air, 1e-2, channel(10.0, 3e5, 1e5)) / (9e10 - 1e10);
    EXPECT_NEAR(lengthOnly(Gas::Air, 1e-2, channel(10.0, 6e5, 1e5)) / (36e10 - 1e10), laminar,
                1e-3 * laminar);
}

// Property: dimensions. Length, diameter and pressure scaled so that delta and L/d stay give Q as d²·p.
TEST(Channel, ScalesWithDimensions)
{
    const double q = channelFlow(Gas::Helium, metres(2e-6), channel(5e-3, 1e5)).flow.si();
    for (const double k : {0.1, 3.0, 7.5}) {
        const double scaled =
            channelFlow(Gas::Helium, metres(2e-6 * k), channel(5e-3 * k, 1e5 / k)).flow.si();
        EXPECT_NEAR(scaled, q * k, 1e-12 * scaled);
    }
}

// Property: series formula of molecular flow, 1/C = 1/C_tube + 1/C_aperture.
TEST(Channel, IsTheSeriesOfTubeAndApertureInMolecularFlow)
{
    const double d = 1e-3;
    const double length = 5e-3;
    const double p = 1.0; // Pa: delta about 0.02
    const double tube = lengthOnly(Gas::Helium, d, channel(length, p));
    const double aperture = 3.14159265358979324 / 4.0 * d * d * meanSpeed(Gas::Helium, kRoom) / 4.0 * p;
    const double q = channelFlow(Gas::Helium, metres(d), channel(length, p)).flow.si();
    EXPECT_NEAR(q, 1.0 / (1.0 / tube + 1.0 / aperture), 0.01 * q);
}

// Property: diameter from helium and helium from that diameter is the same rate.
TEST(Channel, SolvesBackToTheRateItWasGiven)
{
    for (const double length : {1e-4, 1e-3, 5e-3, 0.1}) {
        for (double q = 1e-14; q < 10.0; q *= 7.0) {
            for (const double p2 : {0.0, 2e4, 7e4}) {
                const ChannelConditions conditions = channel(length, 1e5, p2);
                const auto d = channelDiameter(Gas::Helium, LeakRate::fromSi(q), conditions);
                ASSERT_TRUE(d.has_value()) << q << ' ' << length;
                EXPECT_NEAR(channelFlow(Gas::Helium, *d, conditions).flow.si(), q, 1e-9 * q);
            }
        }
    }
}

TEST(Channel, SaysWhenItLeavesItsGround)
{
    const ChannelFlow choked = wideChannel(Gas::Air);
    EXPECT_TRUE(choked.choked);
    EXPECT_FALSE(channelFlow(Gas::Air, metres(2e-6), channel(5e-3)).choked);
    EXPECT_TRUE(channelFlow(Gas::Air, metres(1e-3), channel(5e-3)).turbulent);
    EXPECT_FALSE(channelFlow(Gas::Air, metres(2e-6), channel(5e-3)).turbulent);
}

TEST(Channel, RefusesConditionsNamingTheField)
{
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    struct Row
    {
        ChannelConditions conditions;
        const char* names;
    };
    const Row rows[] = {
        {channel(0.0), "length of the leak channel"},      {channel(-1.0), "length of the leak channel"},
        {channel(20.0), "length of the leak channel"},     {channel(kNan), "length of the leak channel"},
        {channel(5e-3, 0.0), "upstream pressure"},         {channel(5e-3, 1e9), "upstream pressure"},
        {channel(5e-3, kNan), "upstream pressure"},        {channel(5e-3, 1e5, 1e5), "downstream pressure"},
        {channel(5e-3, 1e5, -1.0), "downstream pressure"}, {channel(5e-3, 1e5, 2e5), "downstream pressure"},
        {channel(5e-3, 1e5, 0.0, -100.0), "temperature"},  {channel(5e-3, 1e5, 0.0, 200.0), "temperature"},
    };
    for (const Row& row : rows) {
        const auto d = channelDiameter(Gas::Helium, millibarLitresPerSecond(1e-6), row.conditions);
        ASSERT_FALSE(d.has_value()) << row.names;
        EXPECT_NE(d.error().message.find(row.names), std::string::npos) << d.error().message;
    }
    for (const double rate : {0.0, -1e-9, kNan, std::numeric_limits<double>::infinity()})
        EXPECT_FALSE(channelDiameter(Gas::Helium, LeakRate::fromSi(rate), channel(5e-3)).has_value()) << rate;
    const auto huge = channelDiameter(Gas::Helium, LeakRate::fromSi(1e9), channel(5e-3));
    ASSERT_FALSE(huge.has_value());
    EXPECT_EQ(huge.error().code, ErrorCode::NoAnswer);
}

} // namespace
} // namespace sealwalk::flow
