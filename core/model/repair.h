// SPDX-License-Identifier: GPL-3.0-or-later
// What was done to a joint, and what people decided over the computed verdict.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::model {

struct Repair
{
    RepairId id;
    std::vector<PointId> points;    ///< the points concerned, at least one
    std::vector<PointId> disturbed; ///< neighbours that must be sprayed again too
    std::string defect;             ///< nick, scratch, flat, dirt, crack, pore, over-tightened …
    std::string action;             ///< replace seal, re-tighten, clean and re-seat, epoxy …
    std::string material;           ///< parts, grease, filler
    bool permanent = true;
    std::string owner;                      ///< required when temporary
    std::optional<Timestamp> due;           ///< required when temporary
    std::optional<Timestamp> sprayableFrom; ///< when cured or settled
    std::string by;
    Timestamp at;
    std::string note;
    std::vector<std::string> pictures; ///< SHA-256 of photos
    std::optional<RepairId>
        madeGoodBy; ///< the later permanent repair of this job that replaced a temporary one
    /// Temporary repairs of earlier jobs that this one replaces; those jobs are signed and cannot say so
    /// themselves.
    std::vector<RepairId> makesGood;
    bool operator==(const Repair&) const = default;
};

/// The verdict of a place of the test set-up whose leak is none of the object's.
inline constexpr std::string_view kVerdictNotCounted = "not counted";

/// A verdict by a person over the computed one; both are shown.
struct Judgement
{
    JudgementId id;
    PointId point;
    RoundId round;
    std::string finding; ///< a word of the findings list: leak, permeation, void …
    std::string verdict; ///< over, within, cannot say, not counted
    std::string reason;  ///< never empty
    std::string by;
    Timestamp at;
    std::vector<PointId> of; ///< the leaks an echo, or a masked point, belongs to; empty: not said
    bool operator==(const Judgement&) const = default;
};

/// Leave to accept a point above its limit.
struct Concession
{
    ConcessionId id;
    std::vector<PointId> points;
    std::string grantedBy;
    std::optional<Timestamp> until;
    std::string reason;
    std::string by; ///< who wrote it down
    Timestamp at;
    bool operator==(const Concession&) const = default;
};

} // namespace sealwalk::model
