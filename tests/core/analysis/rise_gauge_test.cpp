// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_gauge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace sealwalk::analysis {
namespace {

struct Made
{
    std::vector<double> time;
    std::vector<double> pressure;
};

Made ramp(int n, double slope, double noise, double step)
{
    std::mt19937_64 engine(7);
    std::normal_distribution<double> normal(0.0, 1.0);
    Made made;
    for (int i = 0; i < n; ++i) {
        const double p = 1.0 + slope * i + noise * normal(engine);
        made.time.push_back(i);
        made.pressure.push_back(step > 0.0 ? step * std::round(p / step) : p);
    }
    return made;
}

// Property: the noise put in is the noise found, whatever the slope.
TEST(RiseGauge, FindsTheNoiseOfOneSample)
{
    for (const double slope : {0.0, 1e-3, 0.1}) {
        const Made made = ramp(2000, slope, 0.02, 0.0);
        const Gauge gauge(made.time, made.pressure);
        EXPECT_NEAR(gauge.at(1000.0).white, 0.02, 0.003) << slope;
        EXPECT_EQ(gauge.at(1000.0).step, 0.0);
        EXPECT_FALSE(gauge.sticksAnywhere());
    }
}

// Property: a display's step is found in any unit, and told from noise.
TEST(RiseGauge, FindsTheStepOfTheDisplay)
{
    EXPECT_NEAR(roundingStep(ramp(300, 1e-3, 0.002, 0.01).pressure), 0.01, 1e-12);
    EXPECT_NEAR(roundingStep(ramp(300, 1e-3, 0.002, 0.0133322368).pressure), 0.0133322368, 1e-12);
    EXPECT_EQ(roundingStep(ramp(300, 1e-3, 0.002, 0.0).pressure), 0.0);
    EXPECT_EQ(roundingStep(std::vector<double>(50, 3.0)), 0.0);
}

// Property: where rounding hides the noise, the moments of change give the line back to far better than a
// step.
TEST(RiseGauge, AStuckDisplayIsReadAtItsChanges)
{
    const double step = 0.05;
    const Made made = ramp(1000, 1e-3, 0.0, step);
    EXPECT_TRUE(Gauge(made.time, made.pressure).sticksAnywhere());
    const CompressedRise rise = compressRise(made.time, made.pressure);
    EXPECT_LT(rise.bins.size(), 30u); // 20 steps and the two ends
    for (std::size_t i = 1; i + 1 < rise.bins.size(); ++i) {
        EXPECT_NEAR(rise.bins[i].pressure, 1.0 + 1e-3 * rise.bins[i].time, 0.05 * step);
        EXPECT_LT(rise.bins[i].uncertainty, 0.3 * step);
    }
}

// Property: compressing keeps the mean curve and the information: n samples of noise s give s/sqrt(n).
TEST(RiseGauge, BinsCarryTheNoiseOfTheirSamples)
{
    const Made made = ramp(100'000, 1e-6, 0.02, 0.0);
    const CompressedRise rise = compressRise(made.time, made.pressure);
    EXPECT_LT(rise.bins.size(), 300u);
    double chiSquare = 0.0;
    std::size_t samples = 0;
    for (const RiseBin& bin : rise.bins) {
        samples += bin.samples;
        const double off = (bin.pressure - 1.0 - 1e-6 * bin.time) / bin.uncertainty;
        chiSquare += off * off;
    }
    EXPECT_EQ(samples, made.time.size());
    const auto bins = static_cast<double>(rise.bins.size());
    EXPECT_NEAR(chiSquare / bins, 1.0, 4.0 * std::sqrt(2.0 / bins)); // four standard deviations of chi square
}

} // namespace
} // namespace sealwalk::analysis
