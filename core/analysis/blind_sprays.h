// SPDX-License-Identifier: GPL-3.0-or-later
// Sprays without an answer that were too short for a point that had answered late before.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <string_view>
#include <vector>

namespace sealwalk::analysis {

/// How the reason of a bound begins that is larger than its reading's own.
inline constexpr std::string_view kLateAnswerReason = "No response; this point had answered";

/// Where the reading that counts got no answer and the point answered late before, the helium had less time
/// to arrive than elsewhere: the bound is given for what was left of the dwell after that delay, and none
/// where too little or nothing was. A longer spray of the same round and condition counts before a short one.
void boundLateAnswers(const model::Job& job, const model::TestObject& object,
                      std::vector<PointFinding>& findings);

} // namespace sealwalk::analysis
