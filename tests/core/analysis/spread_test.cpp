// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/hypothesis.h"
#include "core/analysis/spread.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {
namespace {

// Published: Chen and Rodi, Vertical Turbulent Buoyant Jets (1980): concentration on the axis of a turbulent
// round plume falls as height^(-5/3), of a round jet as 1/x; Yih (1951): of a laminar plume as 1/height.
// Slopes are taken a hundred origins up, where the virtual origin no longer bends them.
TEST(Spread, DilutesByThePublishedLaws)
{
    const auto slope = [](auto law) { return std::log(law(200.0) / law(100.0)) / std::log(2.0); };
    const double origin = 0.05;
    EXPECT_NEAR(slope([&](double h) { return plumeDilution(h * origin * 10.0, origin, 5.0 / 3.0); }),
                -5.0 / 3.0, 2e-3);
    EXPECT_NEAR(slope([&](double h) { return plumeDilution(h * origin * 10.0, origin, 1.0); }), -1.0, 2e-3);
    EXPECT_NEAR(slope([](double x) { return jetDilution(x * 0.001, 0.002); }), -1.0, 1e-12);
    EXPECT_DOUBLE_EQ(plumeDilution(0.0, origin, 5.0 / 3.0), 1.0);
    EXPECT_DOUBLE_EQ(jetDilution(0.001, 0.002), 1.0);
}

// Property: far up the axis, where nothing but the plume is left, a state of the air follows the plume's law.
TEST(Spread, FollowsThePlumeFarUp)
{
    Spread spread = usualSpread();
    spread[Spread::PlumeExponent] = 5.0 / 3.0;
    spread[Spread::ScatterShare] = 1e-5;
    spread[Spread::ScatterPower] = 5.0;
    const double near = spread.share(0.0, 20.0);
    const double far = spread.share(0.0, 40.0);
    EXPECT_NEAR(std::log(far / near) / std::log(2.0), -5.0 / 3.0, 0.01);
    // It widens in proportion to height: at a half width to the side the share is 1/e of the axis.
    const double halfWidth = spread[Spread::NearWidth] + spread[Spread::PlumeWidening] * 20.0;
    EXPECT_NEAR(spread.share(halfWidth, 20.0) / near, std::exp(-1.0), 1e-3);
}

// Property: whatever the air, all of the helium is at the probe, none of it grows on the way, and up reaches
// farther than down.
TEST(Spread, NeverGrowsWithDistance)
{
    Random random(3);
    for (int run = 0; run < 200; ++run) {
        Spread spread = drawSpread(random);
        spread[Spread::Tilt] = 0.0;
        EXPECT_NEAR(spread.share(0.0, 0.0), 1.0, 1e-12);
        double before = 1.0;
        for (double d = 0.01; d < 3.0; d *= 1.4) {
            const double aside = spread.share(d, 0.0);
            EXPECT_LE(aside, before + 1e-12);
            if (d > 3.0 * spread[Spread::NearWidth]) { // inside the near cloud there is no up
                EXPECT_GE(spread.share(0.0, d), spread.share(0.0, -d) - 1e-12);
            }
            EXPECT_DOUBLE_EQ(aside, spread.share(-d, 0.0));
            before = aside;
        }
    }
}

// Property: draws and steps stay inside the bounds.
TEST(Spread, StaysInsideItsBounds)
{
    Random random(4);
    Spread spread = usualSpread();
    for (int run = 0; run < 2000; ++run) {
        spread = run % 3 == 0   ? drawSpread(random)
                 : run % 3 == 1 ? moveSpread(spread, random, 0.5)
                                : crossSpread(spread, usualSpread(), drawSpread(random), 1.0, random);
        for (std::size_t i = 0; i < Spread::Count; ++i) {
            EXPECT_GE(spread.value[i],
                      spreadBounds()[i].low * (spreadBounds()[i].low > 0.0 ? 1.0 - 1e-9 : 1.0))
                << i;
            EXPECT_LE(spread.value[i], spreadBounds()[i].high * (1.0 + 1e-9)) << i;
        }
    }
}

// Property: freak air brings no more than all, and less with distance.
TEST(Spread, FreakAirHasItsLimits)
{
    for (double d = 0.0; d < 2.0; d += 0.05) {
        EXPECT_LE(freakShare(d, 0.0), 1.0);
        EXPECT_LE(freakShare(d + 0.05, 0.0), freakShare(d, 0.0));
        EXPECT_GE(freakShare(0.0, d), freakShare(0.0, -d));
    }
    EXPECT_LT(freakShare(0.5, 0.0), 0.001);
}

} // namespace
} // namespace sealwalk::analysis
