// SPDX-License-Identifier: GPL-3.0-or-later
// Looks for suppositions that bear a survey out: which leaks, under which states of the air.
#pragma once

#include "core/analysis/hypothesis.h"

#include <span>
#include <vector>

namespace sealwalk::analysis {

/// Moves one leak to the other places of its stretch and to the stretches beside it while the evidence grows;
/// true when it moved. It stays off the points `keepOff`.
bool relocate(const Judge& judge, Hypothesis& so, std::size_t which,
              std::span<const std::size_t> keepOff = {});

/// Adds, moves, merges and removes leaks while the evidence grows, going over all of them `sweeps` times at
/// most.
void improve(const Judge& judge, Hypothesis& so, int sweeps = 3);

/// How much work a search may take.
struct SearchEffort
{
    bool allStarts = true;    ///< false: one in six of the usual starts
    std::size_t drawn = 8;    ///< starts drawn at random beside the usual ones
    std::size_t members = 14; ///< of the population
    int generations = 48;     ///< the population is looked over a few times in them
    int challengeSteps = 48;
};

/// For one of many blocks of a large survey.
SearchEffort lightEffort();

/// A spread of hypotheses that stand for what the survey leaves open, the states of the air sampled in
/// proportion to their evidence. Never empty. Repeatable: the same scene gives the same answer.
std::vector<Hypothesis> searchSources(const Judge& judge, const SearchEffort& effort);

} // namespace sealwalk::analysis
