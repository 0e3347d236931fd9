// SPDX-License-Identifier: GPL-3.0-or-later
// The plot of a watched background.
#pragma once

#include "core/analysis/background_series.h"
#include "core/model/measurement.h"
#include "core/quantities/units.h"
#include "core/report/figure.h"

namespace sealwalk::report {

/// Trace, fitted level and the band of `noiseFactor` times the noise about it, in `unit` (a unit of leak
/// rate).
Figure backgroundFigure(const model::BackgroundWatch& watch, const analysis::BackgroundSummary& summary,
                        double noiseFactor, const Unit& unit);

} // namespace sealwalk::report
