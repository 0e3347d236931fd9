// SPDX-License-Identifier: GPL-3.0-or-later
// A reading with its time constants set free: from the nearest members of the grid to the best fit.
#pragma once

#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_projection.h"
#include "core/analysis/rise_shapes.h"

#include <optional>
#include <span>
#include <vector>

namespace sealwalk::analysis {

struct RefinedReading
{
    std::vector<SourceShape> shapes;
    ProjectedFit fit; ///< its uncertainties allow for the time constants
};

/// Fits start, leak, amounts and time constants together, beginning at `from`. Nothing when the record does
/// not determine them or an amount comes out below 0.
std::optional<RefinedReading> refineReading(const CompressedRise& rise, std::span<const SourceShape> shapes,
                                            const ProjectedFit& from);

} // namespace sealwalk::analysis
