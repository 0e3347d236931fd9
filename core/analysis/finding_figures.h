// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of findings: factor chain, range and verdict, with what the set-up adds to what the source
// search knows.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <vector>

namespace sealwalk::analysis {

/// For every finding with a reading: the factors from the display to the chamber and the smallest detectable
/// leak of that moment. For every leak with a rate: its range widened by helium share and repeatability, the
/// reading on the chamber (less what it owes to leaks elsewhere) as its figure, and the verdict by guard band
/// (JCGM 106).
void addFigures(const model::Job& job, const model::TestObject& object, std::vector<PointFinding>& findings);

} // namespace sealwalk::analysis
