// SPDX-License-Identifier: GPL-3.0-or-later
// The whole object job by job: what its leaks add up to, how the pressure rose, how low it came.
#pragma once

#include "core/analysis/job_balance.h"
#include "core/analysis/leak_sum.h"
#include "core/analysis/worked_job.h"

#include <optional>
#include <vector>

namespace sealwalk::analysis {

struct ObjectTotal
{
    int job = 0; ///< its number
    Timestamp at;
    Standing standing = Standing::AsFound;
    LeakSum leaks;
    std::optional<RiseTotal> rise; ///< as air; none: no record of that state, or none that says anything
    std::optional<Pressure> basePressure; ///< where it was recorded
};

/// When what was done in the job is seen: at the last reading of a point that was sprayed again, or at the
/// last repair.
Timestamp leftAt(const WorkedJob& worked);

/// As found, and as left where something was repaired; in order of time. Judging the pressure rises is the
/// long part.
std::vector<ObjectTotal> objectTotals(const WorkedJobs& jobs, const model::TestObject& object);

/// Whether the point was answered after its finding as found: else it has no state as left of its own.
bool wasTestedAgain(const WorkedJob& worked, const PointFinding& left);

} // namespace sealwalk::analysis
