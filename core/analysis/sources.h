// SPDX-License-Identifier: GPL-3.0-or-later
// Which points of a survey really leak and how much: the findings.
#pragma once

#include "core/analysis/spread.h"
#include "core/analysis/survey.h"
#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

enum class SourceVerdict
{
    Leak,
    Shared, ///< one leak between neighbours
    Echo,
    Masked,
    Permeation,
    Clear, ///< no response above the smallest detectable leak of that moment
    Void,
    NotSprayed,
};

/// "leak", "shared", "echo", "masked", "permeation", "clear", "void", "not sprayed".
std::string_view wordOf(SourceVerdict verdict);

/// Part of a point's strongest reading that belongs to a leak elsewhere.
struct Debt
{
    int toPoint = 0; ///< number of the source's point; 0: tails of earlier responses and helium in the room
    double share = 0.0; ///< of the reading, 0 or more
    bool operator==(const Debt&) const = default;
};

struct SourceFinding
{
    int point = 0;
    SourceVerdict verdict = SourceVerdict::NotSprayed;
    LeakRate rate;        ///< best estimate of the leak at this point at pure helium; 0 where none is claimed
    LeakRate low;         ///< 95 % range
    LeakRate high;        ///< for echo, masked and clear: what may be here without showing
    LeakRate surelyAbove; ///< a leak claimed here is larger than that with 95 %: the one-sided end
    LeakRate surelyBelow; ///< and smaller than that with 95 %
    std::vector<int> others; ///< echo of, masked by, shared with; the strongest first
    std::vector<Debt> owes;
    std::vector<std::string> because; ///< sentences for the technician
    double probability = 0.0;         ///< that a leak lies on this stretch
    bool tooBlind = false;            ///< clear, but a leak above the limit would not have shown
    bool operator==(const SourceFinding&) const = default;
};

/// What was learnt about how the helium travelled.
struct SpreadLearnt
{
    bool known = false;      ///< false when no response was strong enough to learn from
    Length nearWidth;        ///< the near cloud has fallen to 1/e
    Length reachSideways;    ///< a reading beside a leak has fallen to a hundredth
    Length reachUpwards;     ///< the same with the leak above the probe
    double echoFactor = 1.0; ///< echoes stray from the rule by this factor either way
    Fraction tail;           ///< share of a response that clears slowly
    Fraction room;           ///< helium share in the room at the end
};

struct Sources
{
    std::vector<SourceFinding> findings; ///< one for each point of the survey, in its order
    SpreadLearnt spread;
};

/// Finds the sources. Any consistent survey gets an answer (see survey_file.h for what is consistent).
/// Errors: BadInput for a reading of an unknown point, times out of order, numbers that are not finite.
Result<Sources> findSources(const Survey& survey);

} // namespace sealwalk::analysis
