// SPDX-License-Identifier: GPL-3.0-or-later
// What a round of a job has left open and what would settle it; see next_step.h.
#pragma once

#include "core/analysis/job_moved_backgrounds.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Seal these, then spray those.
struct OpenEnd
{
    std::vector<model::PointId> seal; ///< may be empty
    std::vector<model::PointId> spray;
    std::string how; ///< the sentence
};

struct OpenEnds
{
    std::vector<OpenEnd> settle; ///< the shortest list of sprays that settles masked and doubtful points
    std::vector<MovedRun> moved;
};

/// Of one round, unknown rounds have none. Takes as long as finding the sources: not for the window's thread.
OpenEnds openEnds(const model::Job& job, const model::TestObject& object, model::RoundId round);

} // namespace sealwalk::analysis
