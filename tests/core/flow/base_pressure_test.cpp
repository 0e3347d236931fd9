// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/base_pressure.h"
#include "core/flow/equivalent_hole.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/quantity_text.h"
#include "tests/support/check_row.h"

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

const Temperature kRoom = degreesCelsius(20.0);
const PumpedChamber kChamber{litresPerSecond(1.2), pascals(2.0), millibarLitresPerSecond(0.01)};

LeakRate removedAt(double cubicFeetPerMinute)
{
    const PumpingSpeed speed = PumpingSpeed::fromSi(cubicFeetPerMinute * 4.719474432e-4);
    return removedLeak(speed, pascals(25.0), pascals(25.0 - 140.0 * 0.101325 / 0.76));
}

class BaseRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(BaseRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kBalance = "gas balance of a pumped chamber, worked out elsewhere";
constexpr const char* kOrifice = "kinetic theory and gas dynamics of a hole, worked out elsewhere";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, BaseRows,
    testing::Values(
        CheckRow{"B_01", 7.0, 1e-9, kBalance,
                 [] { return basePressure(kChamber, millibarLitresPerSecond(0.05)).si(); }},
        CheckRow{"B_02", 0.017617922251, 1e-9, kBalance, [] { return removedAt(2.0).si(); }},
        CheckRow{"B_03", 0.026426883377, 1e-9, kBalance, [] { return removedAt(3.0).si(); }},
        CheckRow{"B_04", 0.1321452841, 1e-9, kBalance,
                 [] { return numberIn(removedAt(2.0), LeakRateUnit::TorrLitrePerSecond).value(); }},
        CheckRow{
            "B_05", 9.720769235, 1e-8, kBalance,
            [] { return numberIn(removedAt(2.0), LeakRateUnit::StandardCubicCentimetrePerMinute).value(); }},
        CheckRow{
            "B_06", 14.58115385, 1e-8, kBalance,
            [] { return numberIn(removedAt(3.0), LeakRateUnit::StandardCubicCentimetrePerMinute).value(); }},
        CheckRow{"B_07", 3.673454e-05, 1e-5, kOrifice,
                 [] { return thinHoleDiameter(Gas::Air, removedAt(2.0), pascals(1e5), kRoom).value().si(); }},
        CheckRow{"B_08", 0.0026, 1e-9, kBalance,
                 [] {
                     const PumpedChamber chamber{litresPerSecond(1.2), pascals(2.0), LeakRate::fromSi(1e-3)};
                     return allowedLeak(chamber, pascals(5.0)).si();
                 }},
        CheckRow{"B_09", 10.0, 1e-9, kBalance,
                 [] {
                     return basePressureWithout(litresPerSecond(1.2), pascals(25.0), LeakRate::fromSi(1.8e-2))
                         .si();
                 }},
        CheckRow{"E_01", 1013.25, 1e-9, kBalance,
                 [] {
                     return timeToDeliver(millibarLitresPerSecond(1e-3), cubicMetres(1e-6),
                                          pascals(kStandardPressure))
                         .si();
                 }},
        CheckRow{"E_02", 4.1887902048, 1e-9, "volume of a sphere",
                 [] { return bubbleVolume(millimetres(2.0)).si() * 1e9; }},
        CheckRow{"E_03", 0.001293214, 1e-5, kOrifice,
                 [] { return thinHoleFlow(Gas::Air, metres(1e-5), pascals(1e5), kRoom).si(); }},
        CheckRow{"E_04", 0.003590039, 1e-5, kOrifice,
                 [] { return thinHoleFlow(Gas::Helium, metres(1e-5), pascals(1e5), kRoom).si(); }},
        CheckRow{"E_05", 3.1536, 1e-9, kBalance,
                 [] {
                     return pressureGained(millibarLitresPerSecond(1e-8), litres(10.0),
                                           seconds(365.0 * 86400.0))
                         .si();
                 }}),
    tests::rowName);

// Property: the allowed leak is the leak that brings the base pressure to the target.
TEST(BasePressure, AllowedLeakMeetsTheTarget)
{
    const Pressure target = pascals(5.0);
    EXPECT_NEAR(basePressure(kChamber, allowedLeak(kChamber, target)).si(), 5.0, 1e-12);
    EXPECT_LT(allowedLeak(kChamber, pascals(2.5)).si(), 0.0);
}

// Property: hole and flow are inverse.
TEST(EquivalentHole, SolvesBackToTheFlow)
{
    for (double q = 1e-13; q < 1.0; q *= 10.0) {
        const Length d = thinHoleDiameter(Gas::Air, LeakRate::fromSi(q), pascals(1e5), kRoom).value();
        EXPECT_NEAR(thinHoleFlow(Gas::Air, d, pascals(1e5), kRoom).si(), q, 1e-9 * q);
    }
    EXPECT_FALSE(thinHoleDiameter(Gas::Air, LeakRate{}, pascals(1e5), kRoom).has_value());
    EXPECT_FALSE(thinHoleDiameter(Gas::Air, LeakRate::fromSi(1e6), pascals(1e5), kRoom).has_value());
}

} // namespace
} // namespace sealwalk::flow
