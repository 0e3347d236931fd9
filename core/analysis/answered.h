// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a finding is an answer of the detector. A point that could not be reached is no tighter for it.
#pragma once

#include "core/analysis/point_finding.h"

namespace sealwalk::analysis {

/// Whether the word says that the point itself passes gas from outside: then it has a rate.
bool isLeakWord(Finding finding);

/// Whether the word says that the helium belongs to a leak elsewhere.
bool isOwedWord(Finding finding);

/// Whether the finding says anything of a leak.
bool hasAnswer(const PointFinding& finding);

/// The same of the joint as it is now: not where it was repaired since and waits for its re-test.
bool isAnswer(const PointFinding& finding);

} // namespace sealwalk::analysis
