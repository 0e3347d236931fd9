// SPDX-License-Identifier: GPL-3.0-or-later
// Readings of a round that were taken while the background moved; see next_step.h.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Readings that follow one another and prove little, because the background had moved under all of them.
struct MovedRun
{
    std::vector<model::ReadingId> readings; ///< standing ones, in order of time
    int firstPoint = 0;                     ///< numbers of the points of the first and the last
    int lastPoint = 0;
    std::string because; ///< a sentence
    bool operator==(const MovedRun&) const = default;
};

/// Every such run of the round; they may be voided together and sprayed again.
std::vector<MovedRun> jobMovedBackgrounds(const model::Job& job, const model::TestObject& object,
                                          model::RoundId round);

} // namespace sealwalk::analysis
