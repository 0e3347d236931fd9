// SPDX-License-Identifier: GPL-3.0-or-later
// How far a repair is from being proven: sprayed again with what it disturbed, and the total measured.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"

#include <optional>
#include <span>
#include <string>
#include <unordered_set>
#include <vector>

namespace sealwalk::analysis {

enum class RepairStep
{
    Cures,        ///< may not be sprayed yet
    AwaitsRetest, ///< a point of it, or one it disturbed, was not sprayed since
    StillLeaks,   ///< sprayed again, and still over the limit without a concession
    CannotSay,    ///< sprayed again, and the answer does not say on which side of the limit it is
    AwaitsTotal,  ///< sprayed again and well; no pressure rise since
    Proven,
    Overtaken, ///< its points were repaired again; the later repair has to be proven
};

/// What a pressure rise after the repair says of the total.
enum class TotalSays
{
    Total,       ///< with its range
    AtMost,      ///< not to be told from outgassing
    Nothing,     ///< the record cannot be judged
    NotConcerned ///< the repair is of the test set-up: no part of the object's total
};

struct RepairProgress
{
    RepairStep step = RepairStep::AwaitsRetest;
    std::vector<model::PointId> toSpray;         ///< not sprayed since, in the order of the repair
    bool sprayedTooEarly = false;                ///< one of those was, but before the repair had cured
    const model::Round* round = nullptr;         ///< the one that proves it
    const model::RiseTest* totalAfter = nullptr; ///< the last pressure rise after it
    TotalSays totalSays = TotalSays::Nothing;    ///< where it is proven
    [[nodiscard]] bool isOpen() const { return step != RepairStep::Proven && step != RepairStep::Overtaken; }
};

/// `asLeft` are the job's findings as left. Pointers live as long as `job` is unchanged.
RepairProgress progressOf(const model::Job& job, const model::Repair& repair,
                          std::span<const PointFinding> asLeft, const Timestamp& now);

/// Whether all points of the repair are of the test set-up: a pressure rise of the object says nothing of it.
bool isOfSetup(const model::Job& job, const model::Repair& repair);

/// From when an answer of a repaired point says anything of the repair: not before it has cured.
Timestamp provableFrom(const model::Repair& repair);

/// Points with a standing answer of the detector since `at`, in whatever round.
std::unordered_set<model::PointId> sprayedSince(const model::Job& job, const Timestamp& at);

/// The last round in which a repaired point was sprayed again; nullptr: none was, whatever rounds were
/// opened. Lives as long as `job` is unchanged.
const model::Round* provingRound(const model::Job& job, const model::Repair& repair);

/// What the round that proves a repair calls: its points, then what was disturbed, each once.
std::vector<model::PointId> pointsToProve(const model::Repair& repair);

/// A phrase without points: "proven", "sprayed again, still over the limit", "cures until 2026-03-03 14:05".
std::string progressWords(const RepairProgress& progress, const model::Repair& repair);

} // namespace sealwalk::analysis
