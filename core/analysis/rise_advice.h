// SPDX-License-Identifier: GPL-3.0-or-later
// What a pressure-rise result means for the person who ran the test, in sentences.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/analysis/rise_range.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Name of a reading: "straight line", "leak and exponential source", "logarithmic and hyperbolic source" …
std::string describe(const RiseReading& reading, RiseVerdict verdict);

/// For how much longer to record before leak and gas can be told apart, upwards to a figure people say; only with
/// `runOnFor`.
long minutesToRunOn(const RiseSummary& summary);

std::vector<std::string> riseAdvice(const RiseSummary& summary, const CompressedRise& rise,
                                    const LeakRange& range);

} // namespace sealwalk::analysis
