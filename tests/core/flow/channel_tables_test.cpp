// SPDX-License-Identifier: GPL-3.0-or-later
// Published: tables worked out elsewhere (scipy) from the same laws, and the dimensionless flow of long tubes
// from kinetic theory.
#include "core/flow/air_equivalent.h"
#include "core/flow/channel.h"
#include "core/flow/equivalent_hole.h"
#include "core/quantities/leak_rate_unit.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <ostream>

namespace sealwalk::flow {
namespace {

const Temperature kRoom = degreesCelsius(20.0);

struct AtLength
{
    double diameter; ///< um, length and exit
    double ratioLengthOnly;
    double ratio;
};

struct RatioRow
{
    const char* name;
    double helium;              ///< mbar l/s
    std::array<AtLength, 3> at; ///< 1, 5 and 20 mm
    double kinetic;             ///< ratio by kinetic theory (linearised BGK), 5 mm
};

void PrintTo(const RatioRow& row, std::ostream* out)
{
    *out << row.name;
}

class HeliumToAir : public testing::TestWithParam<RatioRow>
{};

TEST_P(HeliumToAir, DiameterAndRatioAgreeWithTheTable)
{
    // The table is rounded to four and five digits.
    constexpr double kRoundedDiameter = 1e-4;
    constexpr double kRoundedRatio = 1.5e-4;
    // Knudsen against kinetic theory, in the ratio.
    constexpr double kModelError = 0.023;
    const double lengths[] = {1.0, 5.0, 20.0};
    const RatioRow& row = GetParam();
    const LeakRate helium = millibarLitresPerSecond(row.helium);
    for (std::size_t i = 0; i < row.at.size(); ++i) {
        ChannelConditions conditions;
        conditions.length = millimetres(lengths[i]);
        const auto full = airEquivalent(helium, {Gas::Helium, Gas::Air, conditions});
        ASSERT_TRUE(full.has_value());
        EXPECT_NEAR(full->diameter.si() * 1e6, row.at[i].diameter, kRoundedDiameter * row.at[i].diameter);
        EXPECT_NEAR(full->ratio, row.at[i].ratio, kRoundedRatio * row.at[i].ratio);
        const Length d = channelDiameter(Gas::Helium, helium, conditions, ChannelModel::LengthOnly).value();
        const double lengthOnly = longCapillaryFlow(Gas::Air, d, conditions) / helium;
        EXPECT_NEAR(lengthOnly, row.at[i].ratioLengthOnly, kRoundedRatio * lengthOnly);
        if (lengths[i] == 5.0) {
            EXPECT_NEAR(lengthOnly, row.kinetic, kModelError * row.kinetic);
        }
    }
}

constexpr RatioRow kRatios[] = {
    {"He_1em12",
     1e-12,
     {{{0.014567, 0.3677, 0.3677}, {0.024947, 0.3663, 0.3663}, {0.039674, 0.3657, 0.3657}}},
     0.3630},
    {"He_1em11",
     1e-11,
     {{{0.031459, 0.3659, 0.3659}, {0.053926, 0.3659, 0.3659}, {0.085815, 0.3683, 0.3683}}},
     0.3635},
    {"He_1em10",
     1e-10,
     {{{0.068028, 0.3668, 0.3668}, {0.11665, 0.3718, 0.3718}, {0.18547, 0.3813, 0.3813}}},
     0.3698},
    {"He_1em9",
     1e-9,
     {{{0.14712, 0.3758, 0.3758}, {0.2517, 0.3912, 0.3912}, {0.39824, 0.4129, 0.4129}}},
     0.3885},
    {"He_1em8",
     1e-8,
     {{{0.31682, 0.4009, 0.4009}, {0.53774, 0.4328, 0.4328}, {0.84168, 0.4724, 0.4724}}},
     0.4298},
    {"He_1em7",
     1e-7,
     {{{0.67365, 0.4511, 0.4511}, {1.1261, 0.5053, 0.5053}, {1.7327, 0.5647, 0.5647}}},
     0.5057},
    {"He_1em6",
     1e-6,
     {{{1.3996, 0.5336, 0.5337}, {2.2887, 0.6093, 0.6093}, {3.4492, 0.6812, 0.6812}}},
     0.6177},
    {"He_1em5",
     1e-5,
     {{{2.8169, 0.6448, 0.6451}, {4.4938, 0.7293, 0.7293}, {6.6372, 0.7988, 0.7988}}},
     0.7456},
    {"He_1em4",
     1e-4,
     {{{5.4783, 0.7647, 0.7655}, {8.5454, 0.8408, 0.8410}, {12.42, 0.8963, 0.8964}}},
     0.8594},
    {"He_1em3",
     1e-3,
     {{{10.342, 0.8698, 0.8690}, {15.854, 0.9274, 0.9274}, {22.786, 0.9661, 0.9662}}},
     0.9433},
    {"He_1em2",
     1e-2,
     {{{19.12, 0.9479, 0.9209}, {28.935, 0.9867, 0.9806}, {41.277, 1.0114, 1.0098}}},
     0.9982},
    {"He_1em1", 1e-1, {{{35.19, 0.9999, 0.8004}, {52.37, 1.0241, 0.9615}, {74.243, 1.0390, 1.0210}}}, 1.0316},
    {"He_1e0", 1e0, {{{69.012, 1.0321, 0.5099}, {95.901, 1.0466, 0.7288}, {133.57, 1.0553, 0.9152}}}, 1.0512},
};

INSTANTIATE_TEST_SUITE_P(Table, HeliumToAir, testing::ValuesIn(kRatios),
                         [](const auto& row) { return std::string(row.param.name); });

struct TubeRow
{
    const char* name;
    double delta;
    double kinetic;   ///< linearised BGK equation, solved by collocation elsewhere
    double published; ///< Sharipov and Seleznev, J. Phys. Chem. Ref. Data 27 (1998) 657; 0: row not read
    double knudsen;
};

void PrintTo(const TubeRow& row, std::ostream* out)
{
    *out << row.name;
}

class LongTube : public testing::TestWithParam<TubeRow>
{};

// G of Q = (pi r^3 v0/2) G (-dp/dz), from our flow law over a short stretch of a long tube.
double dimensionlessFlow(double delta)
{
    ChannelConditions conditions;
    conditions.length = metres(1.0);
    const double mean = 1e3;
    const double half = 1e-3;
    conditions.upstream = pascals(mean * (1.0 + half));
    conditions.downstream = pascals(mean * (1.0 - half));
    const double speed = likelySpeed(Gas::Air, kRoom);
    const double d = 2.0 * viscosity(Gas::Air, kRoom) * speed * delta / mean;
    const double q = longCapillaryFlow(Gas::Air, metres(d), conditions).si();
    const double r = 0.5 * d;
    return q / (0.5 * std::numbers::pi * r * r * r * speed * 2.0 * half * mean);
}

TEST_P(LongTube, AgreesWithKnudsenAndIsNearKineticTheory)
{
    const TubeRow& row = GetParam();
    const double computed = dimensionlessFlow(row.delta);
    constexpr double kRounded = 5e-5;
    // The largest excess of Knudsen's formula over kinetic theory.
    constexpr double kLargestExcess = 0.0605;
    EXPECT_NEAR(computed, row.knudsen, kRounded * row.knudsen);
    EXPECT_GT(computed, row.kinetic);
    EXPECT_LT(computed, row.kinetic * (1.0 + kLargestExcess));
    if (row.published > 0.0) {
        EXPECT_NEAR(row.kinetic, row.published, 6e-4 * row.published);
    }
}

constexpr TubeRow kTubes[] = {
    {"delta_0p001", 0.001, 1.4995, 0, 1.5038},
    {"delta_0p01", 0.01, 1.4763, 1.4768, 1.4973},
    {"delta_0p02", 0.02, 1.4603, 1.4608, 1.4908},
    {"delta_0p04", 0.04, 1.4386, 1.4391, 1.4794},
    {"delta_0p08", 0.08, 1.4125, 1.4131, 1.4620},
    {"delta_0p1", 0.1, 1.4040, 0, 1.4554},
    {"delta_0p2", 0.2, 1.3816, 0, 1.4368},
    {"delta_0p4", 0.4, 1.3790, 0, 1.4376},
    {"delta_0p5", 0.5, 1.3867, 0, 1.4475},
    {"delta_0p8", 0.8, 1.4253, 0, 1.4937},
    {"delta_1", 1, 1.4583, 0, 1.5319},
    {"delta_2", 2, 1.6576, 0, 1.7541},
    {"delta_3", 3, 1.8800, 0, 1.9932},
    {"delta_4", 4, 2.1116, 0, 2.2373},
    {"delta_5", 5, 2.3483, 0, 2.4837},
    {"delta_8", 8, 3.0738, 0, 3.2281},
    {"delta_10", 10, 3.5641, 0, 3.7262},
    {"delta_20", 20, 6.0420, 0, 6.2223},
    {"delta_50", 50, 13.5269, 0, 13.7199},
    {"delta_100", 100, 26.0214, 0, 26.2190},
};

INSTANTIATE_TEST_SUITE_P(Table, LongTube, testing::ValuesIn(kTubes),
                         [](const auto& row) { return std::string(row.param.name); });

struct SizeRow
{
    const char* name;
    double air;       ///< mbar l/s
    double hole;      ///< um
    double capillary; ///< um, 5 mm long
    double seconds;   ///< for 1 cm3 at 1 atm
    double bubble;    ///< s between bubbles of 2 mm
    double grams;     ///< of air a year
};

void PrintTo(const SizeRow& row, std::ostream* out)
{
    *out << row.name;
}

class WhatItMeans : public testing::TestWithParam<SizeRow>
{};

TEST_P(WhatItMeans, AgreesWithTheTable)
{
    // Rounded to four and five digits.
    constexpr double kFour = 5.5e-4;
    constexpr double kFive = 5e-5;
    const SizeRow& row = GetParam();
    const LeakRate air = millibarLitresPerSecond(row.air);
    const Pressure atmosphere = pascals(kStandardPressure);
    EXPECT_NEAR(thinHoleDiameter(Gas::Air, air, pascals(1e5), kRoom).value().si() * 1e6, row.hole,
                kFour * row.hole);
    EXPECT_NEAR(channelDiameter(Gas::Air, air, {}).value().si() * 1e6, row.capillary, kFour * row.capillary);
    EXPECT_NEAR(timeToDeliver(air, cubicMetres(1e-6), atmosphere).si(), row.seconds, kFive * row.seconds);
    EXPECT_NEAR(timeToDeliver(air, bubbleVolume(millimetres(2.0)), atmosphere).si(), row.bubble,
                kFive * row.bubble);
    FlowBasis basis;
    basis.molarMass = propertiesOf(Gas::Air).molarMass;
    EXPECT_NEAR(numberIn(air, LeakRateUnit::GramPerYear, basis).value(), row.grams, kFour * row.grams);
}

constexpr SizeRow kSizes[] = {
    {"air_1e0", 1e0, 87.42, 107.2, 1.01325, 0.0042443, 3.748e+04},
    {"air_1em1", 1e-1, 27.69, 52.93, 10.1325, 0.042443, 3748},
    {"air_1em2", 1e-2, 8.801, 29.08, 101.325, 0.42443, 374.8},
    {"air_1em3", 1e-3, 2.822, 16.16, 1013.25, 4.2443, 37.48},
    {"air_1em4", 1e-4, 0.9209, 8.938, 10132.5, 42.443, 3.748},
    {"air_1em5", 1e-5, 0.3055, 4.887, 101325, 424.43, 0.3748},
    {"air_1em6", 1e-6, 0.1009, 2.625, 1.01325e+06, 4244.3, 0.03748},
    {"air_1em7", 1e-7, 0.03268, 1.373, 1.01325e+07, 42443, 0.003748},
    {"air_1em8", 1e-8, 0.01044, 0.6949, 1.01325e+08, 4.2443e+05, 0.0003748},
    {"air_1em9", 1e-9, 0.003312, 0.3398, 1.01325e+09, 4.2443e+06, 3.748e-05},
    {"air_1em10", 1e-10, 0.001048, 0.1616, 1.01325e+10, 4.2443e+07, 3.748e-06},
};

INSTANTIATE_TEST_SUITE_P(Table, WhatItMeans, testing::ValuesIn(kSizes),
                         [](const auto& row) { return std::string(row.param.name); });

} // namespace
} // namespace sealwalk::flow
