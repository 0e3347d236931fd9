// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/safety.h"
#include "core/flow/spray.h"
#include "core/quantities/leak_rate_unit.h"
#include "tests/support/check_row.h"

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

constexpr double kRoomOverStandard = 293.15 / 273.15;

// Volume flow at 20 °C of so many standard cm³/min at 0 °C.
PumpingSpeed sccm(double number)
{
    return PumpingSpeed::fromSi(number * 1e-6 / 60.0 * kRoomOverStandard);
}

double bubblesInSccm(double diameter)
{
    return bubbleFlow(1.0, millimetres(diameter)).si() * 60.0 * 1e6 / kRoomOverStandard;
}

const Volume kRoomVolume = cubicMetres(50.0);
constexpr double kPerHour = 1.0 / 3600.0;

class SprayRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(SprayRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kGeometry = "geometry and the gas law, worked out elsewhere";
constexpr const char* kDiffusion = "CRC Handbook, Diffusion in Gases: 0.697 cm2/s at 20 degC; point source";
constexpr const char* kJet = "similarity solution (Schlichting; Yih), coefficients derived again elsewhere";
constexpr const char* kNatural = "U.S. Standard Atmosphere: 5.24 ppm helium";
constexpr const char* kOsha = "29 CFR 1910.134: oxygen-deficient below 19.5 %";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, SprayRows,
    testing::Values(
        CheckRow{"H_01", 33.510321638, 1e-9, kGeometry,
                 [] { return bubbleFlow(1.0, millimetres(4.0)).si() * 1e9; }},
        CheckRow{"H_02", 0.7903599829, 1e-8, kGeometry, [] { return bubblesInSccm(3.0); }},
        CheckRow{"H_03", 1.873445885, 1e-8, kGeometry, [] { return bubblesInSccm(4.0); }},
        CheckRow{"H_04", 3.659073995, 1e-8, kGeometry, [] { return bubblesInSccm(5.0); }},
        CheckRow{"H_05", 4.4688056, 1e-6, "Tate's law, water at 20 degC",
                 [] { return detachedBubble(millimetres(2.0), 0.0728, 998.2).si() * 1e3; }},
        CheckRow{"H_06", 8.4515166, 1e-6, kGeometry, [] { return reducedGravity(); }},
        CheckRow{"H_07", 0.040843674, 1e-6, kDiffusion,
                 [] { return concentrationAt(sccm(10.0), millimetres(5.0)); }},
        CheckRow{"H_08", 0.20421837, 1e-6, kDiffusion,
                 [] { return concentrationAt(sccm(10.0), millimetres(1.0)); }},
        CheckRow{"H_09", 0.00040843674, 1e-6, kDiffusion, [] { return distanceFor(0.5, sccm(10.0)).si(); }},
        CheckRow{"H_10", 0.11936621, 1e-6, kJet, [] { return laminarJetSpread(1.0); }},
        CheckRow{"H_11", 0.26310485, 1e-6, kJet, [] { return laminarJetSpread(0.2168); }},
        CheckRow{"H_12", 0.1061033, 1e-6, kJet, [] { return laminarPlumeSpread(); }},
        CheckRow{"H_13", 0.2167862, 1e-5, kJet, [] { return schmidtNumber(); }},
        CheckRow{"H_14", 0.0014950088, 1e-6, "Chen and Rodi (1980), from memory",
                 [] { return jetToPlumeLength(sccm(10.0), millimetres(0.5)).si(); }},
        CheckRow{"H_15", 96.70559, 1e-5, kGeometry,
                 [] { return jetReynolds(sccm(1000.0), millimetres(2.0), degreesCelsius(20.0)); }},
        CheckRow{"H_16", 0.21838156, 1e-6,
                 "Richards and Pitts, J. Fluid Mech. (1993), scaling; decay from memory",
                 [] { return turbulentJetFraction(metres(0.2), millimetres(4.0)); }},
        CheckRow{"H_17", 262.0, 1e-9, kNatural, [] { return kNaturalHelium * kRoomVolume.si() * 1e6; }},
        CheckRow{"H_18", 1464.751151, 1e-8, kNatural,
                 [] { return kNaturalHelium * kRoomVolume.si() / sccm(10.0).si(); }},
        CheckRow{"H_19", 1287.863811, 1e-8, kGeometry,
                 [] { return roomExcessSteady(sccm(1000.0), kRoomVolume, kPerHour) * 1e6; }},
        CheckRow{"H_20", 197.7106309, 1e-8, kGeometry,
                 [] { return roomExcess(sccm(1000.0), kRoomVolume, kPerHour, seconds(600.0)) * 1e6; }},
        CheckRow{"H_21", 5.24e-07, 1e-9, kNatural,
                 [] { return inMillibarLitresPerSecond(naturalBackground(millibarLitresPerSecond(0.1))); }},
        CheckRow{"H_22", 1.4096153e-06, 1e-6, kNatural,
                 [] {
                     return inMillibarLitresPerSecond(
                         naturalBackgroundMolecular(millibarLitresPerSecond(0.1)));
                 }},
        CheckRow{
            "H_23", 1e-07, 1e-9, kGeometry,
            [] { return inMillibarLitresPerSecond(strayResponse(millibarLitresPerSecond(1e-4), 1e-3)); }},
        CheckRow{"S_01", 0.069212411, 1e-6, kOsha, [] { return heliumForLeastOxygen(); }},
        CheckRow{"S_02", 16.76, 1e-9, kGeometry, [] { return oxygenWith(0.2); }},
        CheckRow{"S_03", 3.586209, 1e-6, kOsha, [] { return heliumVolumeForLeastOxygen(kRoomVolume).si(); }},
        CheckRow{"S_04", 55.692365, 1e-6, kOsha,
                 [] { return timeToLeastOxygen(kRoomVolume, sccm(1000.0)).si() / 3600.0; }}),
    tests::rowName);

// Property: distance and concentration are inverse; touching the tip is never more than pure helium.
TEST(Spray, ConcentrationFallsWithDistanceAndNeverPassesOne)
{
    EXPECT_EQ(concentrationAt(sccm(10.0), millimetres(0.01)), 1.0);
    double last = 1.1;
    for (double x = 0.3; x < 100.0; x *= 1.5) {
        const double c = concentrationAt(sccm(10.0), millimetres(x));
        EXPECT_LT(c, last);
        last = c;
    }
    EXPECT_NEAR(concentrationAt(sccm(10.0), distanceFor(0.1, sccm(10.0))), 0.1, 1e-12);
}

// Property: a room without change of air is the limit of little change.
TEST(Spray, RoomFillsAlikeWithoutAndWithLittleVentilation)
{
    const double still = roomExcess(sccm(1000.0), kRoomVolume, 0.0, seconds(600.0));
    EXPECT_NEAR(roomExcess(sccm(1000.0), kRoomVolume, 1e-9, seconds(600.0)), still, 1e-6 * still);
}

} // namespace
} // namespace sealwalk::flow
