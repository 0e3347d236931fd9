// SPDX-License-Identifier: GPL-3.0-or-later
// The range that goes with the rate of a finding wherever the rate is shown.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/report/shown_gas.h"

#include <optional>
#include <string>

namespace sealwalk::report {

struct ShownUnit;

/// 95 %, of the gas shown; none where the finding has no rate of its own.
std::optional<ShownGas::Range> rangeOf(const analysis::PointFinding& finding, const ShownGas& gas);

/// The same beside the rate in the unit shown: "2.6–11"; empty when there is none.
std::string rangeBeside(const analysis::PointFinding& finding, const ShownUnit& unit);
/// "2.6e-4 to 1.1e-3"; empty when there is none.
std::string plainRange(const analysis::PointFinding& finding, const ShownUnit& unit);

} // namespace sealwalk::report
