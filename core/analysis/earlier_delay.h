// SPDX-License-Identifier: GPL-3.0-or-later
// How late a point answered before: a spray that was shorter shows nothing there.
#pragma once

#include "core/analysis/spray_timing.h"
#include "core/model/job.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace sealwalk::analysis {

/// The delays that stand in the record, by point. A delay as long as a seal takes to permeate does not count
/// within its own round: there a short burst is given on purpose, to tell permeation from a leak.
class EarlierDelays
{
public:
    EarlierDelays() = default;
    /// @param response  that the survey of `job` is worked out with
    EarlierDelays(const model::Job& job, Duration response);

    [[nodiscard]] bool isEmpty() const { return m_byPoint.empty(); }
    /// The longest with which the point answered before `at`; none: it had not answered, or nobody noted
    /// when.
    [[nodiscard]] std::optional<Duration> before(model::PointId point, model::RoundId round,
                                                 const Timestamp& at) const;
    [[nodiscard]] std::optional<Duration> before(const model::Reading& reading) const;
    /// Helium on at the point, called in `round` after all that is recorded: as always, and where it answered
    /// late before, so long after that delay.
    [[nodiscard]] Duration dwellAt(model::PointId point, model::RoundId round,
                                   const SprayTiming& timing) const;

private:
    struct Delay
    {
        Timestamp at;
        model::RoundId round;
        Duration delay;
    };
    std::unordered_map<model::PointId, std::vector<Delay>> m_byPoint;
    Duration m_response;
};

/// What it takes to see such an answer again: the delay, and the dwell of any other point.
Duration dwellAfter(Duration delay, const SprayTiming& timing);

} // namespace sealwalk::analysis
