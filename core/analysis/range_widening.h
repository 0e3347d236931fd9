// SPDX-License-Identifier: GPL-3.0-or-later
// What moves the upper end of a range away from the reading itself, in words.
#pragma once

#include "core/analysis/point_finding.h"

#include <string>
#include <string_view>

namespace sealwalk::analysis {

/// How such words begin.
inline constexpr std::string_view kWideningReason = "Its reading and checks alone would end the range at";

/// Why the range of `finding` ends well above `ofReading`, the upper end which the reading with its noise,
/// dwell and factors has alone; empty where it does not. `unit` as in rateWords().
std::string wideningWords(const PointFinding& finding, LeakRate ofReading, std::string_view unit);

} // namespace sealwalk::analysis
