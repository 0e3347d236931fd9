// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/background_series.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr std::size_t kFewest = 5;
constexpr std::size_t kEnough = 20;
constexpr double kLongEnough = 60.0;

} // namespace

Result<BackgroundSummary> summariseBackground(std::span<const double> times, std::span<const LeakRate> values)
{
    if (times.size() != values.size())
        return fail(ErrorCode::BadInput,
                    fmt::format("the background has {} times and {} values; right is one time for "
                                "each value",
                                times.size(), values.size()));
    if (times.size() < kFewest)
        return fail(ErrorCode::BadInput,
                    fmt::format("the background has {} readings; at least {} are needed, 20 are "
                                "usual",
                                times.size(), kFewest));
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (!std::isfinite(times[i]) || !std::isfinite(values[i].si()))
            return fail(ErrorCode::BadInput,
                        fmt::format("background reading {} is not a finite number", i + 1));
        if (i > 0 && !(times[i] > times[i - 1]))
            return fail(ErrorCode::BadInput,
                        fmt::format("background reading {} is not later than the one before it", i + 1));
    }
    const double n = double(times.size());
    double meanTime = 0.0;
    double mean = 0.0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        meanTime += times[i] / n;
        mean += values[i].si() / n;
    }
    double tt = 0.0;
    double tv = 0.0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        tt += (times[i] - meanTime) * (times[i] - meanTime);
        tv += (times[i] - meanTime) * (values[i].si() - mean);
    }
    double slope = tv / tt;
    double squares = 0.0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const double residual = values[i].si() - mean - slope * (times[i] - meanTime);
        squares += residual * residual;
    }
    const auto [lowest, highest] = std::minmax_element(values.begin(), values.end());
    BackgroundSummary summary;
    summary.count = times.size();
    summary.span = seconds(times.back() - times.front());
    summary.level = LeakRate::fromSi(mean);
    summary.noise = LeakRate::fromSi(std::sqrt(squares / (n - 2.0)));
    // Values that are all alike leave a slope of rounding.
    constexpr double kRounding = 1e-9;
    if (std::abs(slope) * (times.back() - times.front()) < kRounding * std::abs(summary.level.si()))
        slope = 0.0;
    summary.driftPerSecond = LeakRate::fromSi(slope);
    summary.driftUncertainty = summary.noise / std::sqrt(tt);
    summary.variation = *highest - *lowest;
    if (summary.count < kEnough)
        summary.warnings.push_back(fmt::format(
            "only {} readings of the background; the noise is uncertain below {}", summary.count, kEnough));
    // Twenty values every three seconds are a minute, though the last is written after 57 s.
    if (summary.span.si() * n / (n - 1.0) < kLongEnough)
        summary.warnings.push_back(
            "the background was watched for less than a minute; slow drift does not show");
    if (std::abs(slope) > 3.0 * summary.driftUncertainty.si() &&
        std::abs(slope) * summary.span.si() > summary.noise.si())
        summary.warnings.push_back("the background drifts by more than its noise; wait until it is steady");
    return summary;
}

Result<BackgroundSummary> summariseBackground(const model::BackgroundWatch& watch)
{
    if (!watch.swing)
        return summariseBackground(watch.times, watch.values);
    if (watch.values.size() != 1 || !std::isfinite(watch.values.front().si()) || !(watch.swing->si() > 0.0) ||
        !std::isfinite(watch.swing->si()))
        return fail(ErrorCode::BadInput,
                    "a background read by eye is one level and a swing above zero, as 1e-7 +- 2e-8");
    BackgroundSummary summary;
    summary.count = 1;
    summary.level = watch.values.front();
    summary.noise = *watch.swing / std::sqrt(3.0);
    summary.variation = 2.0 * *watch.swing;
    summary.warnings.push_back(
        "level and swing of the background were read by eye; slow drift does not show");
    return summary;
}

} // namespace sealwalk::analysis
