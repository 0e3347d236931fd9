// SPDX-License-Identifier: GPL-3.0-or-later
// What a sample of hypotheses says of every point: how sure a leak there is, how big, and what its readings
// owe to leaks elsewhere.
#pragma once

#include "core/analysis/hypothesis.h"
#include "core/analysis/source_search.h"

#include <cstddef>
#include <map>
#include <vector>

namespace sealwalk::analysis {

/// One possible size of a leak.
struct PossibleRate
{
    double weight = 0.0;
    double logRate = 0.0; ///< ln(Pa·m³/s)
    double spread = 0.0;  ///< standard deviation of it
};

struct PointPosterior
{
    double leak = 0.0;               ///< probability that a leak lies on this stretch
    double big = 0.0;                ///< probability of a leak here that matters against the limit
    std::vector<PossibleRate> rates; ///< given that there is a leak; weights need no sum
    /// By neighbour with a higher index: probability that a leak lies on this stretch or that one, where
    /// which is open.
    std::map<std::size_t, double> pairs;
    std::map<std::size_t, double> owes; ///< by source point, share of the strongest reading here
    double owesCarried = 0.0;           ///< share of tail and room air
    std::size_t reading = 0;            ///< the strongest reading, index in Scene::readings
    double explained = 0.0;             ///< Pa·m³/s expected there without a leak of its own
    double mostExplained = 0.0;         ///< what the widest of the hypotheses would explain
};

/// Weights of the hypotheses of a sample, not empty; they add up to 1.
std::vector<double> weightsOf(const std::vector<Hypothesis>& sample);

/// One for each point of the scene; points without readings keep the defaults.
std::vector<PointPosterior> posteriorOf(const Judge& judge, const std::vector<Hypothesis>& sample,
                                        const SearchEffort& effort);

/// Quantile of a mixture of rates in ln(Pa·m³/s); `share` strictly between 0 and 1, at least one part.
double quantileOf(const std::vector<PossibleRate>& rates, double share);

} // namespace sealwalk::analysis
