// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/long_series.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <random>

namespace sealwalk::report {
namespace {

LongSeries noisy(std::size_t count, std::vector<float>& values)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<float> draw(-1.0F, 1.0F);
    LongSeries series;
    for (std::size_t i = 0; i < count; ++i) {
        values.push_back(draw(random));
        series.append(static_cast<double>(i), values.back());
    }
    return series;
}

// Property: least and greatest of any range are those of the samples in it, whatever the pyramid holds.
TEST(LongSeries, RangesAreThoseOfTheSamples)
{
    std::vector<float> values;
    const LongSeries series = noisy(5000, values);
    std::mt19937 random(3);
    for (int i = 0; i < 300; ++i) {
        std::size_t from = random() % values.size();
        std::size_t to = random() % values.size();
        if (from > to)
            std::swap(from, to);
        const auto range = series.range(static_cast<double>(from), static_cast<double>(to));
        ASSERT_TRUE(range.has_value());
        const auto [least, most] = std::minmax_element(values.begin() + static_cast<std::ptrdiff_t>(from),
                                                       values.begin() + static_cast<std::ptrdiff_t>(to) + 1);
        EXPECT_EQ(range->least, *least);
        EXPECT_EQ(range->greatest, *most);
    }
    EXPECT_FALSE(series.range(9000.0, 9001.0).has_value());
}

// Property: columns are in order of time, as few as asked for, and lose neither the least nor the greatest.
TEST(LongSeries, ThinningKeepsTheExtremes)
{
    std::vector<float> values;
    const LongSeries series = noisy(100000, values);
    for (const std::size_t columns : {1U, 7U, 800U}) {
        const auto thin = series.thinned(0.0, 99999.0, columns);
        ASSERT_LE(thin.size(), columns);
        float least = 1.0F;
        float greatest = -1.0F;
        double last = -1.0;
        for (const LongSeries::Column& column : thin) {
            EXPECT_GT(column.from, last);
            last = column.to;
            least = std::min(least, column.least);
            greatest = std::max(greatest, column.greatest);
        }
        EXPECT_EQ(least, *std::min_element(values.begin(), values.end()));
        EXPECT_EQ(greatest, *std::max_element(values.begin(), values.end()));
    }
}

// Property: a close look shows the samples themselves, one beyond either end included.
TEST(LongSeries, ACloseLookShowsEverySample)
{
    std::vector<float> values;
    const LongSeries series = noisy(1000, values);
    const auto close = series.thinned(500.5, 509.5, 100);
    ASSERT_EQ(close.size(), 11U);
    EXPECT_EQ(close.front().from, 500.0);
    EXPECT_EQ(close.back().from, 510.0);
    EXPECT_EQ(close[3].least, values[503]);
}

// Property: what is no sample is not kept.
TEST(LongSeries, RefusesWhatIsNoSample)
{
    LongSeries series;
    series.append(1.0, 2.0F);
    series.append(0.5, 3.0F);
    series.append(2.0, std::numeric_limits<float>::quiet_NaN());
    series.append(std::numeric_limits<double>::infinity(), 1.0F);
    EXPECT_EQ(series.size(), 1U);
}

} // namespace
} // namespace sealwalk::report
