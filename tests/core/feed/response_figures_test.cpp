// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/response_figures.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace sealwalk::feed {
namespace {

/// One value a second from 0 on.
std::vector<Sample> eachSecond(const std::vector<double>& rates)
{
    std::vector<Sample> samples;
    for (std::size_t i = 0; i < rates.size(); ++i)
        samples.push_back({static_cast<double>(i), rates[i]});
    return samples;
}

// Property: worked out by hand. Background 1, 2, 1, 3, 1 before second 5: median 1, distances 0 1 0 2 0,
// median 0. Threshold 1.05. Rise at once but broken by a single low value, then steady from 8 on.
TEST(ResponseFigures, AWorkedExample)
{
    const auto samples = eachSecond({1, 2, 1, 3, 1, 1, 9, 1, 5, 8, 10, 6, 3, 1, 1, 1, 1});
    const ResponseFigures figures = responseFigures(samples, 5.0, 10.0);
    ASSERT_TRUE(figures.background);
    EXPECT_EQ(figures.background->rate, 1.0);
    EXPECT_EQ(figures.background->noise, 0.0);
    EXPECT_EQ(figures.highest->rate, 10.0);
    EXPECT_EQ(figures.highest->time, 10.0);
    EXPECT_EQ(figures.delay, 3.0);
    EXPECT_EQ(figures.cleanUp, 3.0);
}

// Property: worked out by hand. 2 4 6 8: median 5, distances 3 1 1 3, median 2.
TEST(ResponseFigures, LevelIsMedianAndScatter)
{
    const auto samples = eachSecond({2, 4, 6, 8, 100});
    const auto level = levelOf(samples, 0.0, 4.0);
    ASSERT_TRUE(level);
    EXPECT_EQ(level->rate, 5.0);
    EXPECT_DOUBLE_EQ(level->noise, 2.0 * 1.4826);
    EXPECT_DOUBLE_EQ(riseThreshold(*level), 5.0 + 8.0 * 1.4826);
    EXPECT_FALSE(levelOf(samples, 0.0, 2.0)) << "two values are no level";
    EXPECT_TRUE(isBack(*level, 16.8));
    EXPECT_FALSE(isBack(*level, 16.9));
}

// Property: a value every four seconds still has a background; one a minute has none.
TEST(ResponseFigures, SlowFeedsLookFurtherBack)
{
    std::vector<Sample> slow;
    for (int i = 0; i < 10; ++i)
        slow.push_back({4.0 * i, 1.0 + i});
    EXPECT_EQ(backgroundBefore(slow, 37.0)->rate, 9.0);
    for (Sample& sample : slow)
        sample.time *= 15.0;
    EXPECT_FALSE(backgroundBefore(slow, 541.0));
}

TEST(ResponseFigures, NothingIsMadeUp)
{
    EXPECT_FALSE(responseFigures({}, 0.0, std::nullopt).highest);
    const auto quiet = eachSecond(std::vector<double>(20, 1e-10));
    const ResponseFigures figures = responseFigures(quiet, 10.0, 16.0);
    EXPECT_TRUE(figures.background);
    EXPECT_FALSE(figures.delay) << "no rise";
    EXPECT_FALSE(figures.cleanUp);
    EXPECT_FALSE(figures.fallTime);
    const ResponseFigures early = responseFigures(quiet, 1.0, 5.0);
    EXPECT_FALSE(early.background);
    EXPECT_EQ(early.highest->rate, 1e-10);
    EXPECT_FALSE(early.delay) << "without a background there is no rise to see";
}

// Property: worked out by hand. 16 8 4 2 1 above a background of 0 each second: time constant 1/ln 2.
TEST(ResponseFigures, AnExactFallGivesItsTimeConstant)
{
    std::vector<double> rates;
    for (int i = 0; i < 12; ++i)
        rates.push_back(std::pow(2.0, 10 - i));
    const auto tau = fallTime(eachSecond(rates), 0.0, {0.0, 0.0});
    ASSERT_TRUE(tau);
    EXPECT_NEAR(*tau, 1.0 / std::log(2.0), 1e-9);
    EXPECT_NEAR(*timeToFall(eachSecond(rates), 0.0, 128.0), 3.0, 1e-12);
    EXPECT_FALSE(timeToFall(eachSecond(rates), 0.0, 0.1));
    EXPECT_FALSE(fallTime(eachSecond({5, 6, 7, 8}), 0.0, {0.0, 0.0}));
}

struct Response
{
    double background;
    double peak; ///< end value above the background
    double dead; ///< s before anything arrives
    double tau;  ///< s, up and down
    double rate; ///< samples per second
    double noise;
};

/// First-order response to helium from 20 s to 20 s + dwell.
std::vector<Sample> respond(const Response& r, double dwell, unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, r.noise);
    std::vector<Sample> samples;
    for (double time = 0.0; time < 20.0 + dwell + 16.0 * r.tau; time += 1.0 / r.rate) {
        const double on = time - 20.0 - r.dead;
        double rise = on > 0.0 ? 1.0 - std::exp(-on / r.tau) : 0.0;
        if (on > dwell)
            rise = (1.0 - std::exp(-dwell / r.tau)) * std::exp(-(on - dwell) / r.tau);
        samples.push_back({time, r.background + r.peak * rise + noise(random)});
    }
    return samples;
}

// Property: of synthetic first-order responses with noise the figures are those put in.
TEST(ResponseFigures, RecoversFirstOrderResponses)
{
    const Response responses[] = {
        {1e-10, 1e-6, 1.0, 2.0, 10.0, 2e-12},
        {3e-10, 1e-8, 0.5, 1.0, 100.0, 1e-11},
        {1e-9, 5e-8, 2.0, 4.0, 5.0, 3e-11},
    };
    for (const Response& r : responses)
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const double dwell = 3.0 * r.tau;
            const auto samples = respond(r, dwell, seed);
            const ResponseFigures figures = responseFigures(samples, 20.0, 20.0 + dwell);
            ASSERT_TRUE(figures.background && figures.highest && figures.delay && figures.cleanUp &&
                        figures.fallTime);
            EXPECT_NEAR(figures.background->rate, r.background, 2.0 * r.noise);
            const double most = r.background + r.peak * (1.0 - std::exp(-dwell / r.tau));
            EXPECT_NEAR(figures.highest->rate, most, 0.02 * most + 5.0 * r.noise);
            // It is seen when it stands out of the noise: dead time, what it takes to climb there, a sample.
            const double climb =
                -r.tau * std::log(1.0 - (riseThreshold(*figures.background) - r.background) / r.peak);
            EXPECT_GE(*figures.delay, r.dead - 1e-9);
            EXPECT_LE(*figures.delay, r.dead + 2.0 * climb + 2.0 / r.rate);
            EXPECT_NEAR(*figures.fallTime, r.tau, 0.1 * r.tau);
            // Back within the threshold: the logarithm of how far it had to fall.
            const double fall =
                r.tau * std::log((most - r.background) / (riseThreshold(*figures.background) - r.background));
            EXPECT_NEAR(*figures.cleanUp, r.dead + fall, 0.15 * fall + 3.0 / r.rate);
        }
}

// Property: noise alone is taken for a rise in none of a thousand minutes.
TEST(ResponseFigures, NoiseIsNoRise)
{
    int rises = 0;
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        const auto samples = respond({1e-10, 0.0, 0.0, 3.0, 10.0, 5e-12}, 24.0, seed);
        rises += responseFigures(samples, 20.0, 44.0).delay ? 1 : 0;
    }
    EXPECT_EQ(rises, 0);
}

} // namespace
} // namespace sealwalk::feed
