// SPDX-License-Identifier: GPL-3.0-or-later
// What the set-up of a job can see and how long the walk will take, before the first reading.
#pragma once

#include "core/analysis/job_view.h"
#include "core/analysis/spray_timing.h"

#include <optional>
#include <string>

namespace sealwalk::analysis {

enum class Outlook
{
    NotKnown,      ///< limit, calibration or background is missing
    GoodToStart,   ///< the limit is at least 10 times the smallest detectable leak
    StartWithCare, ///< 3 to 10 times
    CannotPass,    ///< below 3 times: faults can be searched, nothing can be passed
};

/// What would bring the smallest detectable leak down most.
enum class Remedy
{
    None,
    WatchLonger,      ///< drift over the dwell outweighs the noise
    ThrottleParallel, ///< most of the helium goes past the detector
    CalibrateNearer,  ///< the factor of the farthest place costs most
    QuietenDetector,  ///< the noise itself
};

inline constexpr double kGoodMargin = 10.0;
inline constexpr double kLeastMargin = 3.0;

struct SetupOutlook
{
    Outlook outlook = Outlook::NotKnown;
    Remedy remedy = Remedy::None; ///< only where the outlook is not good
    SprayTiming timing;
    double dwellShare = 1.0;                    ///< of the final signal that the dwell shows
    std::optional<double> heliumToDetector;     ///< 0 … 1, past the parallel pump
    bool parallelSpeedUnknown = false;          ///< a pump in parallel is stated, its speed is not
    std::optional<double> shownOfLeak; ///< 0 …: shown over true of the reference leak at the worst place, by
                                       ///< the latest system check: the share of helium and what the detector
                                       ///< makes of it
    bool shareIsInFactor = false;               ///< a system check holds it already; not to be counted twice
    std::optional<LeakRate> smallestDetectable; ///< at the worst place, on the chamber
    std::string worstPlace;                     ///< where the reference leak sat there; may be empty
    std::optional<LeakRate> limit;              ///< the lowest that applies there
    std::optional<double> margin;               ///< limit over smallest detectable
    bool needsCalibration = false;
    bool needsBackground = false;
    int points = 0;                     ///< to be sprayed
    Duration walk;                      ///< dwell and wait at every point
    std::optional<double> heliumLitres; ///< at 0 °C, while spraying; none without a flow
};

/// Whether the connection speaks of a pump in parallel whose speed nobody stated. A speed of nothing says
/// that there is no such pump; the offered words have "parallel" in them in every language of the program.
bool isParallelSpeedUnknown(const model::Setup& setup);

/// Takes checks and background as they are recorded; `object` gives the volume where the job has none.
SetupOutlook setupOutlook(const model::Job& job, const model::TestObject& object);

} // namespace sealwalk::analysis
