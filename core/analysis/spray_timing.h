// SPDX-License-Identifier: GPL-3.0-or-later
// How long to spray and how long to wait, and where those times come from.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

#include <string>

namespace sealwalk::analysis {

enum class TimingSource
{
    Measured, ///< response of the latest system check
    Typed,    ///< typed in Prepare over everything else
    Computed, ///< volume over the pumping speed for helium
    Assumed,  ///< nothing is known yet
};

struct SprayTiming
{
    Duration response;
    Duration dwell; ///< helium on: three responses, at least 3 s
    Duration wait;  ///< helium off: until 1 % of the response is left, at least as long as the rise took
    TimingSource source = TimingSource::Assumed;
    bool operator==(const SprayTiming&) const = default;
};

/// A hand that passes with the probe gives a joint at least so much helium. Common practice, no source.
inline constexpr Duration kShortestSpray = seconds(3.0);

/// Times for the next reading. A typed response wins, then a measured one, then V/S through the hose,
/// then an assumed 2 s; the same response that readings are corrected with.
/// Dwell: 3 tau shows 95 % of the final signal; wait: 4.6 tau leaves 1 % (exponential build-up and clean-up
/// of one well-mixed volume); a measured clean-up time replaces the computed wait.
SprayTiming sprayTiming(const model::Job& job, const model::TestObject& object);

/// What so many points take: dwell, one response for a late rise, and writing down. Points that answer take
/// their wait besides; most do not.
Duration walkTime(const SprayTiming& timing, int points);

} // namespace sealwalk::analysis
