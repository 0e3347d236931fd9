// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_compress.h"

#include "core/analysis/rise_gauge.h"
#include "core/base/contract.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

/// A sample, or a moment at which a stuck display moved on.
struct Point
{
    double time = 0.0; // s from the first sample
    double pressure = 0.0;
    double sigma = 0.0;
};

constexpr double kCrossingSigma = 0.15; // of the change of the display: how well its middle is met
constexpr std::size_t kFewestCrossings = 6;
constexpr double kEndSigma = 0.29; // of a step: anywhere between two changes

/// Where rounding hides the noise the display says most when it changes: then the pressure is half-way
/// between the two numbers. Changes to and fro between the same two are one crossing, in the middle of all of
/// them.
std::vector<Point> crossings(std::span<const double> time, std::span<const double> pressure,
                             const Gauge& gauge)
{
    std::vector<Point> points;
    const std::size_t n = time.size();
    const auto shown = [&](std::size_t i) {
        const GaugeStretch there = gauge.at(time[i]);
        points.push_back({time[i] - time.front(), pressure[i],
                          there.stuck() ? std::hypot(there.white, kEndSigma * there.step) : there.sigma()});
    };
    shown(0);
    std::size_t changes = 0; // of the crossing being gathered
    double middle = 0.0;
    double sum = 0.0;
    for (std::size_t i = 1; i < n; ++i) {
        const GaugeStretch there = gauge.at(time[i]);
        if (!there.stuck()) {
            changes = 0;
            shown(i);
            continue;
        }
        if (pressure[i] == pressure[i - 1])
            continue;
        const double half = 0.5 * (pressure[i] + pressure[i - 1]);
        const double moment = 0.5 * (time[i] + time[i - 1]) - time.front();
        if (changes > 0 && std::abs(half - middle) < 0.25 * there.step) {
            ++changes;
            sum += moment;
            points.back().time = sum / static_cast<double>(changes);
            continue;
        }
        changes = 1;
        middle = half;
        sum = moment;
        points.push_back({moment, half,
                          std::hypot(there.white, kCrossingSigma * std::abs(pressure[i] - pressure[i - 1]))});
    }
    if (gauge.at(time.back()).stuck())
        shown(n - 1);
    return points;
}

/// All samples as they are; the gauge is asked once a bin.
struct Samples
{
    std::span<const double> times;
    std::span<const double> pressures;
    const Gauge& gauge;

    [[nodiscard]] std::size_t size() const { return times.size(); }
    [[nodiscard]] double time(std::size_t i) const { return times[i] - times.front(); }
    [[nodiscard]] double pressure(std::size_t i) const { return pressures[i]; }
    [[nodiscard]] double variance(std::size_t from, std::size_t to, double floor) const
    {
        const double sigma = std::max(floor, gauge.at(times[from + (to - from) / 2]).sigma());
        return static_cast<double>(to - from) * sigma * sigma;
    }
};

struct Crossings
{
    const std::vector<Point>& points;

    [[nodiscard]] std::size_t size() const { return points.size(); }
    [[nodiscard]] double time(std::size_t i) const { return points[i].time; }
    [[nodiscard]] double pressure(std::size_t i) const { return points[i].pressure; }
    [[nodiscard]] double variance(std::size_t from, std::size_t to, double floor) const
    {
        double sum = 0.0;
        for (std::size_t i = from; i < to; ++i) {
            const double sigma = std::max(floor, points[i].sigma);
            sum += sigma * sigma;
        }
        return sum;
    }
};

template <class Points>
std::vector<RiseBin> binned(const Points& points, double length, double floor)
{
    const double widest = length / 80.0;
    const double narrowest = length / 2000.0;
    // A huge gap would leave one bin on either side of it: no bin holds more than its share of the samples.
    const std::size_t most = std::max<std::size_t>(1, points.size() / 70);
    std::vector<RiseBin> bins;
    for (std::size_t i = 0; i < points.size();) {
        const std::size_t from = i;
        const double start = points.time(from);
        const double limit = std::clamp(0.09 * start, narrowest, widest);
        RiseBin bin;
        for (; i < points.size() && (i == from || (points.time(i) - start < limit && i - from < most)); ++i) {
            bin.time += points.time(i);
            bin.pressure += points.pressure(i);
        }
        bin.samples = i - from;
        const auto n = static_cast<double>(bin.samples);
        bin.time /= n;
        bin.pressure /= n;
        bin.uncertainty = std::sqrt(points.variance(from, i, floor)) / n;
        bins.push_back(bin);
    }
    return bins;
}

} // namespace

CompressedRise compressRise(std::span<const double> time, std::span<const double> pressure)
{
    SEALWALK_EXPECT(time.size() >= 3 && time.size() == pressure.size());
    CompressedRise result;
    result.samples = time.size();
    result.length = time.back() - time.front();
    result.interval = result.length / static_cast<double>(time.size() - 1);
    const Gauge gauge(time, pressure);
    result.rounding = gauge.last().step;
    result.noise = gauge.last().sigma();

    double lowest = pressure.front();
    double highest = pressure.front();
    constexpr std::size_t kLooks = 2000; // enough to know the span by
    for (std::size_t i = 0; i < pressure.size(); i += 1 + pressure.size() / kLooks) {
        lowest = std::min(lowest, pressure[i]);
        highest = std::max(highest, pressure[i]);
    }
    // A record without any visible noise still comes from a gauge: no figure is better than a few 1e-6 of the
    // span.
    const double floor =
        std::max({0.1 * gauge.largestSigma(), 3e-6 * (highest - lowest), 1e-12 * std::abs(highest), 1e-300});
    if (gauge.sticksAnywhere()) {
        const std::vector<Point> points = crossings(time, pressure, gauge);
        if (points.size() >= kFewestCrossings)
            result.bins = binned(Crossings{points}, result.length, floor);
    }
    if (result.bins.size() < 3)
        result.bins = binned(Samples{time, pressure, gauge}, result.length, floor);
    return result;
}

} // namespace sealwalk::analysis
