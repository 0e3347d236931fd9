// SPDX-License-Identifier: GPL-3.0-or-later
// Puts into figures for people what a sample of hypotheses has learnt about the air of the day.
#pragma once

#include "core/analysis/hypothesis.h"
#include "core/analysis/sources.h"

#include <vector>

namespace sealwalk::analysis {

SpreadLearnt spreadLearnt(const Scene& scene, const std::vector<Hypothesis>& sample);

} // namespace sealwalk::analysis
