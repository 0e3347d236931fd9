// SPDX-License-Identifier: GPL-3.0-or-later
// Which of several findings is the largest leak, also where a leak has no figure or only a least one.
#pragma once

#include "core/analysis/point_finding.h"

#include <optional>

namespace sealwalk::analysis {

/// What a leak at the point is sized by: its rate, or beyond the detector's range the least it is. None where
/// there is no leak, or where it could not be sized.
std::optional<LeakRate> sizeOf(const PointFinding& finding);

/// A leak in words alone: it could not be sized at all.
bool isUnsizedLeak(const PointFinding& finding);

/// Whether the finding can be ranked: a leak, or a bound.
bool isRanked(const PointFinding& finding);

/// A sized leak before one without a figure, any leak before a bound; among the like the larger, unsized ones
/// by what was shown.
bool outweighs(const PointFinding& a, const PointFinding& b);

} // namespace sealwalk::analysis
