// SPDX-License-Identifier: GPL-3.0-or-later
// What the detector showed at a point, as recorded. Readings are never changed or removed: a later one
// corrects.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/enum_names.h"
#include "core/model/ids.h"
#include "core/quantities/kinds.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::model {

enum class Outcome
{
    Value,         ///< `peak` holds the highest value shown
    NoResponse,    ///< nothing above the background; the bound of that moment counts, never zero
    AboveRange,    ///< more than the detector can show; `peak` holds the end of its range
    NotAccessible, ///< could not be reached; `reason` says why
    NotTested,     ///< left out on purpose; `reason` says why
};

template <>
struct EnumNames<Outcome>
{
    static constexpr std::string_view what = "reading outcome";
    static constexpr std::array<std::pair<Outcome, std::string_view>, 5> table{{
        {Outcome::Value, "value"},
        {Outcome::NoResponse, "no response"},
        {Outcome::AboveRange, "above range"},
        {Outcome::NotAccessible, "not accessible"},
        {Outcome::NotTested, "not tested"},
    }};
};

/// Whether the detector was watched with helium on; the others say why not.
constexpr bool wasSprayed(Outcome outcome)
{
    return outcome == Outcome::Value || outcome == Outcome::NoResponse || outcome == Outcome::AboveRange;
}

enum class Condition
{
    AtRest,
    Flexed,
    Extended,
    Angle,
    Hot,
    Cold,
    Wet,
    Dried,
    Open,
    HalfOpen,
    Shut,
    Taped,
    Bagged,
    Other,
};

template <>
struct EnumNames<Condition>
{
    static constexpr std::string_view what = "condition";
    static constexpr std::array<std::pair<Condition, std::string_view>, 14> table{{
        {Condition::AtRest, "at rest"},
        {Condition::Flexed, "flexed"},
        {Condition::Extended, "extended"},
        {Condition::Angle, "at an angle"},
        {Condition::Hot, "hot"},
        {Condition::Cold, "cold"},
        {Condition::Wet, "wet"},
        {Condition::Dried, "dried"},
        {Condition::Open, "open"},
        {Condition::HalfOpen, "half open"},
        {Condition::Shut, "shut"},
        {Condition::Taped, "taped"},
        {Condition::Bagged, "bagged"},
        {Condition::Other, "other"},
    }};
};

enum class Entry
{
    Typed,
    Feed,
    CommandLine,
    Transcribed
};

template <>
struct EnumNames<Entry>
{
    static constexpr std::string_view what = "way of entry";
    static constexpr std::array<std::pair<Entry, std::string_view>, 4> table{{
        {Entry::Typed, "typed"},
        {Entry::Feed, "feed"},
        {Entry::CommandLine, "command line"},
        {Entry::Transcribed, "transcribed from paper"},
    }};
};

/// Rates are what the detector showed, helium, before any correction to the chamber.
struct Reading
{
    ReadingId id;
    std::int64_t sequence = 0; ///< given by the history when stored; order of storing
    RoundId round;
    PointId point;
    Timestamp at; ///< start of the spray, or the moment of entry
    Outcome outcome = Outcome::Value;
    Condition condition = Condition::AtRest;
    std::string conditionDetail;        ///< "140°", "4 mm offset"
    std::optional<LeakRate> background; ///< just before
    std::optional<LeakRate> peak;       ///< highest while spraying
    std::string entered;                ///< the peak exactly as typed, with its unit
    std::optional<Duration> dwell;
    std::optional<Duration> delay;   ///< helium on to first rise
    std::optional<Duration> cleanUp; ///< helium off to background
    bool gentle = false;             ///< repeated with less helium to pinpoint
    bool confirmed = false;          ///< answers a second time from a clean background
    bool outOfTurn = false;          ///< went on although the wait was not over; noted
    Entry entry = Entry::Typed;
    std::string by;     ///< who logged it
    std::string reason; ///< for not accessible, not tested, and for corrections
    std::string remark;
    std::optional<ReadingId> corrects; ///< the earlier reading this one takes the place of
    std::string trace;                 ///< name of the stored feed trace; empty: none
    std::vector<PointId> shielded;     ///< taped or bagged off meanwhile: no helium got there
    bool operator==(const Reading&) const = default;
};

/// Says that a reading proves nothing, and why. Kept beside the reading, which stays.
struct VoidMark
{
    ReadingId reading;
    std::string reason;
    std::string by;
    Timestamp at;
    bool operator==(const VoidMark&) const = default;
};

enum class RoundKind
{
    AsFound,
    AfterRepair,
    Condition,
    Repeat
};

template <>
struct EnumNames<RoundKind>
{
    static constexpr std::string_view what = "kind of round";
    static constexpr std::array<std::pair<RoundKind, std::string_view>, 4> table{{
        {RoundKind::AsFound, "as found"},
        {RoundKind::AfterRepair, "after repair"},
        {RoundKind::Condition, "in another condition"},
        {RoundKind::Repeat, "repeat"},
    }};
};

/// One walk with the probe over points.
struct Round
{
    RoundId id;
    int number = 1; ///< 1, 2 … in the job
    RoundKind kind = RoundKind::AsFound;
    std::string title;              ///< "door taped", may be empty
    std::vector<PointId> points;    ///< the points called, in the planned order
    std::optional<RepairId> repair; ///< the repair this round proves
    std::string by;
    Timestamp opened;
    std::optional<Timestamp> closed;
    bool operator==(const Round&) const = default;
};

} // namespace sealwalk::model
