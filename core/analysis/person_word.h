// SPDX-License-Identifier: GPL-3.0-or-later
// A person's verdict over what was worked out: what it does to the figures of a point.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <vector>

namespace sealwalk::analysis {

/// Over the findings of one round as they were worked out. Of several verdicts on a point the last one
/// counts; each is named in `because`. Words that this program does not know are passed over.
///
/// A word that says there is a leak keeps the rate; where the search gave none, the leak is as large as its
/// reading shows by itself, and it loses the bound, which held only without a leak. Any other answer loses
/// the rate, for what was read is no leak of this place, and keeps the bound where one was worked out; it
/// gets no bound from a rate. A word for "no answer" loses both. What was read stays in `asRead`.
void applyJudgements(const model::Job& job, const model::TestObject& object, model::RoundId round,
                     std::vector<PointFinding>& findings);

} // namespace sealwalk::analysis
