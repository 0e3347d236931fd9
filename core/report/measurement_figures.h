// SPDX-License-Identifier: GPL-3.0-or-later
// The plots of what is measured besides the points: a watched background, a pressure rise.
#pragma once

#include "core/analysis/background_series.h"
#include "core/analysis/pressure_rise.h"
#include "core/model/measurement.h"
#include "core/quantities/units.h"
#include "core/report/figure.h"

namespace sealwalk::report {

/// Trace, fitted level and the band of `noiseFactor` times the noise about it, in `unit` (a unit of leak
/// rate).
Figure backgroundFigure(const model::BackgroundWatch& watch, const analysis::BackgroundSummary& summary,
                        double noiseFactor, const Unit& unit);

/// Points, their sum, the leak and what exhausts itself, in mbar over minutes, residuals below. Where the
/// record does not tell leak from outgassing, the wedge between them is hatched and says how much longer to
/// run.
Figure riseFigure(const analysis::RiseSummary& summary);

} // namespace sealwalk::report
