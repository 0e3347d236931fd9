// SPDX-License-Identifier: GPL-3.0-or-later
// Puts what the source search says of a round into its findings: echoes taken out, masked points named.
#pragma once

#include "core/analysis/job_survey.h"
#include "core/analysis/point_finding.h"

#include <vector>

namespace sealwalk::analysis {

/// Rewrites finding, verdict, rates, bound, partners and sentences of every point in `findings` that has a
/// standing reading with a value or no response; the rest is left as it is. Readings above the detector's
/// range stay leaks.
void applySources(const model::Job& job, const model::TestObject& object, model::RoundId round,
                  const ChamberFactor& factor, std::vector<PointFinding>& findings);

} // namespace sealwalk::analysis
