// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_gauge.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <functional>

namespace sealwalk::analysis {

namespace {

constexpr double kMadToSigma = 1.4826;       // of a normal distribution
constexpr double kUniformSigma = 0.28867513; // 1/sqrt(12): standard deviation of rounding to whole steps
constexpr std::size_t kSegmentLook = 400;    // samples looked at per segment; more tell nothing new
// Noise of this many steps dithers: the first harmonic of the rounding error dies as exp(-2 pi^2 s^2/q^2), a
// tenth.
constexpr double kDither = 0.34;
constexpr std::size_t kSegmentsAtMost = 8;
constexpr std::size_t kSamplesPerSegment = 25;

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

GaugeStretch look(std::span<const double> time, std::span<const double> pressure)
{
    const std::size_t n = std::min(time.size(), kSegmentLook);
    const std::size_t skip = (time.size() - n) / 2;
    GaugeStretch stretch;
    stretch.centre = 0.5 * (time.front() + time.back());
    stretch.step = roundingStep(pressure.subspan(skip, n));
    const double rms = neighbourNoise(time.subspan(skip, n), pressure.subspan(skip, n), stretch.step);
    const double rounded = stretch.step * kUniformSigma;
    stretch.white = std::sqrt(std::max(0.0, rms * rms - rounded * rounded));
    return stretch;
}

} // namespace

bool GaugeStretch::stuck() const
{
    return step > 0.0 && white < kDither * step;
}

double GaugeStretch::sigma() const
{
    return std::hypot(white, step * kUniformSigma);
}

Gauge::Gauge(std::span<const double> time, std::span<const double> pressure)
{
    const std::size_t count = std::clamp<std::size_t>(time.size() / kSamplesPerSegment, 1, kSegmentsAtMost);
    std::vector<bool> constant;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = i * time.size() / count;
        const std::size_t to = (i + 1) * time.size() / count;
        m_stretches.push_back(look(time.subspan(from, to - from), pressure.subspan(from, to - from)));
        const auto here = pressure.subspan(from, to - from);
        constant.push_back(std::adjacent_find(here.begin(), here.end(), std::not_equal_to<>()) == here.end());
    }
    // A stretch that shows one number throughout is stuck: its step is that of its neighbours.
    for (std::size_t i = 1; i < count; ++i)
        if (constant[i] && m_stretches[i].step <= 0.0)
            m_stretches[i].step = m_stretches[i - 1].step;
    for (std::size_t i = count - 1; i-- > 0;)
        if (constant[i] && m_stretches[i].step <= 0.0)
            m_stretches[i].step = m_stretches[i + 1].step;
}

GaugeStretch Gauge::at(double time) const
{
    if (time <= m_stretches.front().centre)
        return m_stretches.front();
    for (std::size_t i = 1; i < m_stretches.size(); ++i) {
        const GaugeStretch& a = m_stretches[i - 1];
        const GaugeStretch& b = m_stretches[i];
        if (time <= b.centre) {
            const double w = (time - a.centre) / (b.centre - a.centre);
            return {time, (1.0 - w) * a.white + w * b.white, (1.0 - w) * a.step + w * b.step};
        }
    }
    return m_stretches.back();
}

double Gauge::largestSigma() const
{
    double largest = 0.0;
    for (const GaugeStretch& stretch : m_stretches)
        largest = std::max(largest, stretch.sigma());
    return largest;
}

bool Gauge::sticksAnywhere() const
{
    return std::any_of(m_stretches.begin(), m_stretches.end(),
                       [](const GaugeStretch& s) { return s.stuck(); });
}

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

} // namespace sealwalk::analysis
