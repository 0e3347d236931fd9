// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/measurement_figures.h"

#include <gtest/gtest.h>

namespace sealwalk::report {

// Regression: a background read by eye, one value and its swing, was a block without its level.
TEST(BackgroundFigure, ALevelReadByEyeRunsThrough)
{
    model::BackgroundWatch watch;
    watch.times = {0.0};
    watch.values = {millibarLitresPerSecond(1e-8)};
    watch.swing = millibarLitresPerSecond(3e-9);
    const auto summary = analysis::summariseBackground(watch);
    ASSERT_TRUE(summary) << summary.error().message;
    const Unit unit = readUnit("mbar l/s", UnitKind::LeakRates).value();
    const Figure figure = backgroundFigure(watch, *summary, 3.0, unit);
    ASSERT_EQ(figure.strips.size(), 1U);
    ASSERT_EQ(figure.series.size(), 2U);
    const Series& level = figure.series.back();
    EXPECT_EQ(level.x, (std::vector<double>{figure.x.low, figure.x.high}));
    ASSERT_EQ(level.y.size(), 2U);
    EXPECT_NEAR(level.y.front(), 1e-8, 1e-14);
    EXPECT_EQ(level.y.front(), level.y.back());
    EXPECT_NEAR(figure.strips.front().high - level.y.front(), level.y.front() - figure.strips.front().low,
                1e-16);
}

} // namespace sealwalk::report
