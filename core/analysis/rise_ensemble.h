// SPDX-License-Identifier: GPL-3.0-or-later
// What a pressure-rise record says about the leak when nobody knows the law of the outgassing: every shape of
// rise_shapes.h, alone and up to three together, beside a constant leak, weighed by evidence.
#pragma once

#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_shapes.h"

#include <vector>

namespace sealwalk::analysis {

/// A source with the pressure it adds over the record.
struct RiseSource
{
    SourceShape shape;
    double rise = 0.0; ///< Pa over the length of the record, 0 or more
};

/// One way to read the record.
struct RiseReading
{
    double weight = 0.0; ///< share of belief after the record was seen
    double start = 0.0;  ///< pressure at the first sample, Pa
    double leak = 0.0;   ///< Pa over the length of the record, given the reading
    std::vector<RiseSource> sources;
};

/// The leak as all readings together see it, in Pa over the length of the record.
struct RisePosterior
{
    double low = 0.0; ///< exactly 0 when the record is compatible with no leak at all
    double middle = 0.0;
    double high = 0.0;
    double noLeak = 0.0;    ///< share of belief that there is no leak
    double inflation = 1.0; ///< variance of the residuals over what the gauge's noise explains, 1 or more
    double straight = 0.0;  ///< share of belief in a leak without any outgassing
    std::vector<RiseReading> readings; ///< the weightiest first, weights sum to at most 1; empty when
                                       ///< no leak and no source of 0 or more comes near the record
};

struct EnsembleOptions
{
    std::vector<SourceKind> without; ///< kinds of source left out, to see how much hangs on them
    double tail = 0.02;              ///< belief left out on either side of the range
    double tempering = 1.5; ///< factor on all variances: the best of many readings fits a little too well
};

/// @param rise  at least 3 bins
RisePosterior weighReadings(const CompressedRise& rise, const EnsembleOptions& options = {});

/// Rate of the exhausting sources at `x` lengths of the record, Pa per length, average of the readings.
double outgassingRate(const RisePosterior& posterior, double x);

} // namespace sealwalk::analysis
