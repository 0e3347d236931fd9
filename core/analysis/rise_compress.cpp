// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_compress.h"

#include "core/base/contract.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

namespace {

constexpr double kMadToSigma = 1.4826;       // of a normal distribution
constexpr double kUniformSigma = 0.28867513; // 1/sqrt(12): standard deviation of rounding to whole steps
constexpr std::size_t kSegmentLook = 400;    // samples looked at per segment; more tell nothing new
constexpr std::size_t kSegmentsAtMost = 8;
constexpr std::size_t kSamplesPerSegment = 25;

/// What one stretch of the record says about its gauge.
struct Segment
{
    double centre = 0.0; // s
    double white = 0.0;  // Pa, noise without rounding
    double step = 0.0;   // Pa
    double slope = 0.0;  // Pa/s
};

double median(std::vector<double>& values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// Distance of each sample from the straight line through its neighbours, scaled to the noise of one sample.
double neighbourNoise(std::span<const double> time, std::span<const double> pressure, double step)
{
    std::vector<double> distance;
    distance.reserve(pressure.size());
    for (std::size_t i = 1; i + 1 < pressure.size(); ++i) {
        const double w = (time[i + 1] - time[i]) / (time[i + 1] - time[i - 1]);
        const double d = pressure[i] - w * pressure[i - 1] - (1.0 - w) * pressure[i + 1];
        distance.push_back(std::abs(d) / std::sqrt(1.0 + w * w + (1.0 - w) * (1.0 - w)));
    }
    if (distance.empty())
        return 0.0;
    std::vector<double> sorted = distance;
    const double typical = std::max(kMadToSigma * median(sorted), 0.5 * step);
    // Outliers are kept from ruling the estimate, rounding (most distances zero) from hiding the noise.
    double sum = 0.0;
    for (const double d : distance)
        sum += std::min(d * d, 9.0 * typical * typical);
    const double rms = std::sqrt(sum / static_cast<double>(distance.size()));
    return step > 0.0 ? rms : std::max(kMadToSigma * median(sorted), 0.8 * rms);
}

Segment look(std::span<const double> time, std::span<const double> pressure)
{
    const std::size_t n = std::min(time.size(), kSegmentLook);
    const std::size_t skip = (time.size() - n) / 2;
    const auto t = time.subspan(skip, n);
    const auto p = pressure.subspan(skip, n);
    Segment segment;
    segment.centre = 0.5 * (time.front() + time.back());
    segment.step = roundingStep(p);
    const double rms = neighbourNoise(t, p, segment.step);
    const double rounded = segment.step * kUniformSigma;
    segment.white = std::sqrt(std::max(0.0, rms * rms - rounded * rounded));
    segment.slope = (pressure.back() - pressure.front()) / std::max(time.back() - time.front(), 1e-300);
    return segment;
}

double between(const std::vector<Segment>& segments, double time, double Segment::*member)
{
    if (time <= segments.front().centre)
        return segments.front().*member;
    for (std::size_t i = 1; i < segments.size(); ++i) {
        if (time <= segments[i].centre) {
            const double w = (time - segments[i - 1].centre) / (segments[i].centre - segments[i - 1].centre);
            return (1.0 - w) * segments[i - 1].*member + w * segments[i].*member;
        }
    }
    return segments.back().*member;
}

/// Variance of the mean of `n` samples spread over `duration` where the display rounds to `step`.
double roundingVariance(double step, double white, double slope, double duration, double n, double length)
{
    if (step <= 0.0)
        return 0.0;
    const double one = step * step * kUniformSigma * kUniformSigma;
    // Noise of half a step or more dithers: the first harmonic of the rounding error dies as exp(-2 pi^2
    // s^2/q^2) and the error becomes as good as white. Without it the error is one draw per step crossed.
    const double ratio = white / step;
    const double stuck = std::exp(-2.0 * std::numbers::pi * std::numbers::pi * ratio * ratio);
    const double perStep = std::min(step / std::max(std::abs(slope), 1e-300), length);
    const double independent = duration / std::max(perStep, 1e-300);
    return one * ((1.0 - stuck) / n + stuck / std::clamp(independent, 1e-3, n));
}

} // namespace

double roundingStep(std::span<const double> values)
{
    constexpr std::size_t kEnough = 8;
    if (values.size() < kEnough)
        return 0.0;
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    const double scale = std::max(std::abs(sorted.front()), std::abs(sorted.back()));
    std::vector<double> gaps;
    for (std::size_t i = 1; i < sorted.size(); ++i) {
        const double gap = sorted[i] - sorted[i - 1];
        if (gap > 1e-9 * scale)
            gaps.push_back(gap);
    }
    if (gaps.empty())
        return 0.0;
    const double step = *std::min_element(gaps.begin(), gaps.end());
    // Few gaps larger than the smallest could be multiples of it by chance.
    for (const double gap : gaps) {
        const double multiple = gap / step;
        if (std::abs(multiple - std::round(multiple)) > 0.02)
            return 0.0;
    }
    const bool repeats = gaps.size() + 1 < sorted.size();
    return repeats || gaps.size() >= kEnough - 2 ? step : 0.0;
}

CompressedRise compressRise(std::span<const double> time, std::span<const double> pressure)
{
    SEALWALK_EXPECT(time.size() >= 3 && time.size() == pressure.size());
    CompressedRise result;
    result.samples = time.size();
    result.length = time.back() - time.front();
    result.interval = result.length / static_cast<double>(time.size() - 1);

    const std::size_t count = std::clamp<std::size_t>(time.size() / kSamplesPerSegment, 1, kSegmentsAtMost);
    std::vector<Segment> segments;
    double largest = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = i * time.size() / count;
        const std::size_t to = (i + 1) * time.size() / count;
        segments.push_back(look(time.subspan(from, to - from), pressure.subspan(from, to - from)));
        segments.back().centre -= time.front();
        largest = std::max({largest, segments.back().white, segments.back().step * kUniformSigma});
    }
    result.rounding = segments.back().step;
    result.noise = std::hypot(segments.back().white, segments.back().step * kUniformSigma);

    const auto [lowest, highest] = std::minmax_element(pressure.begin(), pressure.end());
    // A record without any visible noise still comes from a gauge: no figure is better than a few 1e-6 of the
    // span.
    const double floor =
        std::max({0.1 * largest, 3e-6 * (*highest - *lowest), 1e-12 * std::abs(*highest), 1e-300});

    const double widest = result.length / 80.0;
    const double narrowest = result.length / 2000.0;
    const std::size_t most =
        std::max<std::size_t>(1, time.size() / 70); // or a huge gap would leave a bin on either side
    std::size_t i = 0;
    while (i < time.size()) {
        RiseBin bin;
        const double start = time[i];
        const double limit = std::clamp(0.09 * (start - time.front()), narrowest, widest);
        double sumT = 0.0;
        double sumP = 0.0;
        std::size_t n = 0;
        for (; i < time.size() && (n == 0 || (time[i] - start < limit && n < most)); ++i, ++n) {
            sumT += time[i] - time.front();
            sumP += pressure[i];
        }
        const double weight = static_cast<double>(n);
        bin.samples = n;
        bin.time = sumT / weight;
        bin.pressure = sumP / weight;
        const double white = std::max(between(segments, bin.time, &Segment::white), floor);
        const double step = between(segments, bin.time, &Segment::step);
        const double slope = between(segments, bin.time, &Segment::slope);
        const double duration = std::max(time[i - 1] - start, result.interval);
        bin.uncertainty = std::sqrt(white * white / weight +
                                    roundingVariance(step, white, slope, duration, weight, result.length));
        result.bins.push_back(bin);
    }
    return result;
}

} // namespace sealwalk::analysis
