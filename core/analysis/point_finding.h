// SPDX-License-Identifier: GPL-3.0-or-later
// What the readings say of one point: the one set of figures that the screen, the command line and the report
// show.
#pragma once

#include "core/analysis/corrected_rate.h"
#include "core/model/enum_names.h"
#include "core/model/ids.h"
#include "core/model/reading.h"
#include "core/model/repair.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::analysis {

enum class Finding
{
    Leak,
    Shared, ///< one leak between neighbours
    Echo,
    Masked,
    Permeation,
    Clear,           ///< no response above what could be seen at that moment, and that was below the limit
    BelowDetectable, ///< no response, but the moment was too blind to pass the limit
    Void,
    NotAccessible,
    NotTested, ///< left out on purpose, with a reason
    NotSprayed,
    OtherSource, ///< by a person only: the test set-up, a neighbour's helium; not the object's
    VirtualLeak, ///< by a person only: gas trapped inside, which helium from outside cannot size
};

/// Against the limit, with the guard band.
enum class Verdict
{
    Over,
    CannotSay,
    Within,
    NoAnswer,   ///< void, not accessible, not sprayed, or no limit set
    NotCounted, ///< by a person only: of the test set-up, which the object's limit is not about
};

/// Part of a point's strongest reading that belongs to a leak elsewhere.
struct Owed
{
    model::PointId to;  ///< the leak's point; nil: tails of earlier responses and helium in the room
    double share = 0.0; ///< of the reading
    bool operator==(const Owed&) const = default;
};

/// What was worked out, where a person decided otherwise, and that decision.
struct Overruled
{
    Finding finding = Finding::NotSprayed; ///< as worked out
    Verdict verdict = Verdict::NoAnswer;   ///< as worked out
    std::string by;
    Timestamp at;
    std::string reason;
    bool operator==(const Overruled&) const = default;
};

struct PointFinding
{
    model::PointId point;
    int number = 0;
    Finding finding = Finding::NotSprayed;
    Verdict verdict = Verdict::NoAnswer;
    model::Condition condition = model::Condition::AtRest; ///< of the reading that counts: the worst
    std::optional<LeakRate>
        asRead; ///< net on the chamber, helium, before echoes are taken out; none without value
    std::optional<LeakRate>
        rate; ///< the point's own leak, helium, on the chamber; none when only a bound is known
    std::optional<LeakRate> low;         ///< 95 %
    std::optional<LeakRate> high;        ///< 95 %
    std::optional<LeakRate> surelyAbove; ///< one-sided 95 %, where the search gave the range: decides "over"
    std::optional<LeakRate> surelyBelow; ///< one-sided 95 %, with `surelyAbove`: decides "within"
    std::optional<LeakRate> bound; ///< the own part is below this (echo, masked, clear, below detectable)
    std::optional<LeakRate>
        atLeast; ///< in place of `rate`: beyond the detector's range, no smaller than this with 97.5 %
    std::vector<model::PointId>
        of;                 ///< the leaks an echo or a masked point owes to; partners of a shared leak
    std::vector<Owed> owes; ///< what its reading owes to whom, the most first
    std::vector<FactorUsed> factors; ///< from the display to the chamber, in order; empty: no usable check
    std::optional<LeakRate> smallestDetectable; ///< of that moment, on the chamber
    std::optional<double> conformance;          ///< probability to be within the limit, with `rate`
    std::vector<std::string> because;           ///< sentences
    std::optional<model::ReadingId> reading;    ///< the reading that counts
    bool judgedByPerson = false;                ///< finding and verdict are a person's; `because` names both
    std::optional<Overruled> overruled;         ///< with `judgedByPerson`
    bool temporaryRepair = false;               ///< a temporary repair is in place
    bool concession = false;                    ///< accepted above the limit, for a time
    std::optional<Timestamp> concededUntil;     ///< the last day of the concession; none: without end
    bool awaitsRetest = false;                  ///< repaired, not sprayed since

    bool operator==(const PointFinding&) const = default;
};

} // namespace sealwalk::analysis

namespace sealwalk::model {

template <>
struct EnumNames<analysis::Finding>
{
    static constexpr std::string_view what = "finding";
    static constexpr std::array<std::pair<analysis::Finding, std::string_view>, 13> table{{
        {analysis::Finding::Leak, "leak"},
        {analysis::Finding::Shared, "shared"},
        {analysis::Finding::Echo, "echo"},
        {analysis::Finding::Masked, "masked"},
        {analysis::Finding::Permeation, "permeation"},
        {analysis::Finding::Clear, "clear"},
        {analysis::Finding::BelowDetectable, "below detectable"},
        {analysis::Finding::Void, "void"},
        {analysis::Finding::NotAccessible, "not accessible"},
        {analysis::Finding::NotTested, "not tested"},
        {analysis::Finding::NotSprayed, "not sprayed"},
        {analysis::Finding::OtherSource, "other source"},
        {analysis::Finding::VirtualLeak, "virtual leak"},
    }};
};

template <>
struct EnumNames<analysis::Verdict>
{
    static constexpr std::string_view what = "verdict";
    static constexpr std::array<std::pair<analysis::Verdict, std::string_view>, 5> table{{
        {analysis::Verdict::Over, "over"},
        {analysis::Verdict::CannotSay, "cannot say"},
        {analysis::Verdict::Within, "within"},
        {analysis::Verdict::NoAnswer, "no answer"},
        {analysis::Verdict::NotCounted, kVerdictNotCounted},
    }};
};

} // namespace sealwalk::model
