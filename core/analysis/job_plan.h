// SPDX-License-Identifier: GPL-3.0-or-later
// The walk of a round as a plan: order, dwell, wait, time and helium; see plan.h.
#pragma once

#include "core/analysis/plan.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <span>
#include <vector>

namespace sealwalk::analysis {

struct JobPlannedSpray
{
    model::PointId point;
    int number = 0;
    Duration dwell;
    Duration wait;
    std::string because; ///< may be empty
};

struct JobPlan
{
    std::vector<JobPlannedSpray> order;
    Duration total;
    Volume helium;
};

/// The order Sealwalk would take through the points of a round. Helium is counted at the job's flow, or at
/// the usual one where none is set.
JobPlan proposedPlan(const model::Job& job, const model::TestObject& object, model::RoundId round);

/// The points in an order of one's own.
JobPlan planAsOrdered(const model::Job& job, const model::TestObject& object, model::RoundId round,
                      std::span<const model::PointId> order);

} // namespace sealwalk::analysis
