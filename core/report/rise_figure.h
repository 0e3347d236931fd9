// SPDX-License-Identifier: GPL-3.0-or-later
// A judged pressure-rise record as a plot: points, fitted sum, its parts, residuals below.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/report/figure.h"
#include "core/report/shown_unit.h"

namespace sealwalk::report {

/// Minutes against mbar, the same in the window and in the report. Where leak and outgassing cannot be told
/// apart, the range the leak may have is hatched.
Figure riseFigure(const analysis::RiseSummary& rise, const ShownUnit& unit);

/// "6.1 × 10⁻⁴ mbar·l/s air (5.7 × 10⁻⁴ … 6.5 × 10⁻⁴)", "not separable: at most …".
std::string riseHeadline(const analysis::RiseSummary& rise, const ShownUnit& unit);

} // namespace sealwalk::report
