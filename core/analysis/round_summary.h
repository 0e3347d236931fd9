// SPDX-License-Identifier: GPL-3.0-or-later
// A job over all its rounds: as it was found, and as it was left.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <vector>

namespace sealwalk::analysis {

enum class Standing
{
    AsFound, ///< before any repair: the worst of the rounds that were not after a repair
    AsLeft, ///< the latest answer of each point; a round after a repair or a repeat replaces what was before,
            ///< unless it only says why there is no reading
};

/// One finding per active point, in order of number; points no round called are "not sprayed". A leak found
/// only in another condition counts, as the worst of its point.
std::vector<PointFinding> summarise(const model::Job& job, const model::TestObject& object,
                                    Standing standing);

/// The findings of every round, one list per round of the job in its order. Working them out is the long
/// part.
std::vector<std::vector<PointFinding>> findingsByRound(const model::Job& job,
                                                       const model::TestObject& object);
/// The same summary from findings worked out before by findingsByRound().
std::vector<PointFinding> summarise(const model::Job& job,
                                    const std::vector<std::vector<PointFinding>>& byRound, Standing standing);

/// The worse of two findings of one point: more to do, or more leak.
bool isWorse(const PointFinding& a, const PointFinding& b);

} // namespace sealwalk::analysis
