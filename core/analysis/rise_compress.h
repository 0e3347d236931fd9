// SPDX-License-Identifier: GPL-3.0-or-later
// A pressure record of any length as at most a few hundred bins, each with the uncertainty of its mean as the
// record itself shows it. Of a display that rounds its noise away only the moments of change are used.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace sealwalk::analysis {

/// One stretch of the record.
struct RiseBin
{
    double time = 0.0;        ///< mean of the samples' times, s from the first sample
    double pressure = 0.0;    ///< mean of the samples' pressures, Pa
    double uncertainty = 0.0; ///< standard uncertainty of `pressure`, Pa; above 0
    std::size_t samples = 0;
};

/// The record in bins.
struct CompressedRise
{
    std::vector<RiseBin> bins;
    double length = 0.0;   ///< s from first to last sample
    double interval = 0.0; ///< mean distance of two samples, s
    double noise = 0.0;    ///< standard deviation of one sample in the last quarter, Pa, rounding included
    double rounding = 0.0; ///< step of the display in the last quarter, Pa; 0 when none is seen
    std::size_t samples = 0;
};

/// @param time      s, strictly increasing, at least 3 values
/// @param pressure  Pa, finite, as many
CompressedRise compressRise(std::span<const double> time, std::span<const double> pressure);

} // namespace sealwalk::analysis
