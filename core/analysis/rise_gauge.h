// SPDX-License-Identifier: GPL-3.0-or-later
// What a pressure record says about its gauge: noise and the step its display rounds to, along the record.
#pragma once

#include <span>
#include <vector>

namespace sealwalk::analysis {

/// Noise and rounding of one stretch.
struct GaugeStretch
{
    double centre = 0.0; ///< s, on the record's clock
    double white = 0.0;  ///< Pa, standard deviation of one sample without rounding
    double step = 0.0;   ///< Pa; 0 when the values are not visibly rounded

    /// Rounding hides the noise: neighbours show the same number, and averaging them gains nothing.
    [[nodiscard]] bool stuck() const;
    /// Standard deviation of one sample, rounding included, where that is as good as noise.
    [[nodiscard]] double sigma() const;
};

class Gauge
{
public:
    /// @param time  s, strictly increasing, at least 3; @param pressure  Pa, as many
    Gauge(std::span<const double> time, std::span<const double> pressure);

    /// Interpolated between the middles of the stretches.
    [[nodiscard]] GaugeStretch at(double time) const;
    [[nodiscard]] const GaugeStretch& last() const { return m_stretches.back(); }
    [[nodiscard]] bool sticksAnywhere() const;
    [[nodiscard]] double largestSigma() const;

private:
    std::vector<GaugeStretch> m_stretches;
};

/// The step all `values` are multiples of, in their unit; 0 when they are not visibly rounded.
double roundingStep(std::span<const double> values);

} // namespace sealwalk::analysis
