// SPDX-License-Identifier: GPL-3.0-or-later
// A quiet watch of the display, no helium given: level, noise and drift.
#pragma once

#include "core/base/result.h"
#include "core/model/measurement.h"
#include "core/quantities/kinds.h"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

struct BackgroundSummary
{
    std::size_t count = 0;
    Duration span;
    LeakRate level;                    ///< mean
    LeakRate noise;                    ///< standard deviation about the straight line through the series
    LeakRate driftPerSecond;           ///< slope of that line, with its sign
    LeakRate driftUncertainty;         ///< standard, of the slope
    LeakRate variation;                ///< highest less lowest
    std::vector<std::string> warnings; ///< fewer than 20 readings, shorter than a minute, drifting
};

/// At least 5 readings, as many times (seconds, increasing) as values, all finite. The noise is taken about
/// the line because the drift is counted on its own; 20 readings and a minute are common practice.
Result<BackgroundSummary> summariseBackground(std::span<const double> times,
                                              std::span<const LeakRate> values);

/// The same of a watch as it is recorded. A swing read by eye is taken as the bounds of a rectangular
/// distribution (JCGM 100:2008, 4.3.7): the noise is swing / sqrt(3); nothing is known of drift, which is a
/// warning.
Result<BackgroundSummary> summariseBackground(const model::BackgroundWatch& watch);

} // namespace sealwalk::analysis
