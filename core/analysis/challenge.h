// SPDX-License-Identifier: GPL-3.0-or-later
// The question that decides a doubtful point: with any air that is plausible, is it better explained with a
// leak of its own or without?
#pragma once

#include "core/analysis/hypothesis.h"

#include <cstddef>
#include <span>
#include <vector>

namespace sealwalk::analysis {

/// Logarithm of the odds for a leak on any of the stretches of `points` (one, or neighbours that may share
/// one): the best evidence with one against the best without, the air adapted to each in `steps` steps.
/// `sample` is not empty; where it starts from.
double challenge(const Judge& judge, const std::vector<Hypothesis>& sample,
                 std::span<const std::size_t> points, int steps);

} // namespace sealwalk::analysis
