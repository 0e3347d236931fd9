// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/uncertainty.h"

#include "core/base/contract.h"

#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

double combined(std::span<const double> contributions)
{
    return combined(contributions, {});
}

double combined(std::span<const double> contributions, std::span<const Correlation> correlations)
{
    double sum = 0.0;
    for (const double contribution : contributions)
        sum += contribution * contribution;
    for (const Correlation& pair : correlations) {
        SEALWALK_EXPECT(pair.first < contributions.size() && pair.second < contributions.size());
        sum += 2.0 * pair.coefficient * contributions[pair.first] * contributions[pair.second];
    }
    // Perfect anticorrelation may leave a rounding error below zero.
    return std::sqrt(std::fmax(sum, 0.0));
}

double spreadOfSum(std::span<const SumTerm> terms)
{
    double sum = 0.0;
    double shared = 0.0;
    double own = 0.0;
    for (const SumTerm& term : terms) {
        sum += term.value;
        shared += term.value * term.shared;
        own = std::hypot(own, term.value * term.own);
    }
    return sum > 0.0 ? logSpread(std::hypot(shared, own) / sum) : 0.0;
}

double normalProbability(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

double normalQuantile(double probability)
{
    SEALWALK_EXPECT(probability > 0.0 && probability < 1.0);
    if (probability > 0.5)
        return -normalQuantile(1.0 - probability);
    // A rough start (Abramowitz and Stegun 26.2.23, error below 4.5e-4), then Newton on the exact
    // distribution.
    const double t = std::sqrt(-2.0 * std::log(probability));
    double z = -(t - (2.515517 + t * (0.802853 + t * 0.010328)) /
                         (1.0 + t * (1.432788 + t * (0.189269 + t * 0.001308))));
    constexpr int kSteps = 4;
    for (int i = 0; i < kSteps; ++i) {
        const double density = std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
        z -= (normalProbability(z) - probability) / density;
    }
    return z;
}

double logSpread(double relative)
{
    return std::sqrt(std::log1p(relative * relative));
}

} // namespace sealwalk::analysis
