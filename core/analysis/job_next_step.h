// SPDX-License-Identifier: GPL-3.0-or-later
// What to do next in a round of a job; see next_step.h.
#pragma once

#include "core/analysis/next_step.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

namespace sealwalk::analysis {

struct JobNextStep
{
    StepKind kind = StepKind::Done;
    model::PointId point; ///< to spray; nil when done
    model::PointId other; ///< the leak that is the reason; nil: none
    Duration wait;        ///< before it
    std::string because;  ///< a sentence
};

/// The best next step of the round at `now`, in the round's order.
JobNextStep jobNextStep(const model::Job& job, const model::TestObject& object, model::RoundId round,
                        Timestamp now);

} // namespace sealwalk::analysis
