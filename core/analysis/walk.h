// SPDX-License-Identifier: GPL-3.0-or-later
// The walk with the probe: what a round calls, what is done, and what comes next.
#pragma once

#include "core/model/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

/// One call of the walk: a point in one condition.
struct WalkStep
{
    model::PointId point;
    int number = 0;
    model::Condition condition = model::Condition::AtRest;
    const model::Reading* reading = nullptr; ///< the latest that stands; nullptr: still to be sprayed
    bool wasVoid = false;                    ///< had only void readings: it is called again
    bool isAsked = true;                     ///< by the joint; false: read in that condition all the same
    bool isReadLater = false;                ///< not here, but in a round opened since
    [[nodiscard]] bool isDone() const { return reading != nullptr || isReadLater; }
    bool operator==(const WalkStep&) const = default;
};

/// The calls of a round in its order: each point once per condition its joint asks for ("at rest" when it
/// asks for none), and after those once per other condition that has a reading. Retired points fall out.
/// Pointers live as long as `job` is unchanged.
std::vector<WalkStep> walk(const model::Job& job, model::RoundId round);

/// What the remark names as its check that leaves a point for the end of the round.
inline constexpr std::string_view kSkipped = "skipped";

struct SkippedPoint
{
    model::PointId point;
    std::string reason;
};

/// The points of a round that were skipped and not read since, in that order; one skipped twice keeps its
/// last reason.
std::vector<SkippedPoint> skippedPoints(const model::Job& job, model::RoundId round);

/// The call that follows `after` (nil: the first): the next open step in order, wrapping round, skipped
/// points last. None when everything is done.
std::optional<WalkStep> nextCall(const std::vector<WalkStep>& steps, model::PointId after,
                                 const std::vector<model::PointId>& skipped);

struct OpenRound
{
    const model::Round* round = nullptr;
    int left = 0; ///< calls of it that nobody answered, in it or in a later round
};

/// Rounds that were left before their end, the latest first. Pointers live as long as `job` is unchanged.
std::vector<OpenRound> openRounds(const model::Job& job);

/// The round that calls this point: `current` when it does, otherwise the latest that does. Nil: none.
model::RoundId roundCalling(const model::Job& job, model::PointId point, model::RoundId current);

} // namespace sealwalk::analysis
