// SPDX-License-Identifier: GPL-3.0-or-later
// What to do after each reading of a round, and after the round.
#pragma once

#include "core/analysis/sources.h"
#include "core/analysis/survey.h"

#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

enum class StepKind
{
    Spray,        ///< the next point in order
    Wait,         ///< until the tail of the last response is down, then `point`
    LeaveOrder,   ///< helium hangs where the next point is: spray `point` first
    RepeatGentle, ///< spray `point` again with less helium to tell it from its neighbour
    SealFirst,    ///< every point left lies in the shadow of `other`: seal or bag it, then `point`
    Done,         ///< nothing is left
};

struct NextStep
{
    StepKind kind = StepKind::Done;
    int point = 0; ///< to spray; 0 when done
    int other = 0; ///< the leak that is the reason; 0: none
    Duration wait; ///< before it, from `now`
    std::string because;
    bool operator==(const NextStep&) const = default;
};

/// The best next step.
/// @param survey  the points and the readings so far
/// @param order   numbers of the points in the wanted order; points with a reading that is not void are done
/// @param now     on the clock of the readings
NextStep nextStep(const Survey& survey, std::span<const int> order, Duration now);

/// Time after the end of a spray until its response has fallen to 5 % of the limit:
/// tau·ln(signal/(0.05·limit)), at least one response. Source: exponential clean-up of one well-mixed volume.
Duration clearingTime(LeakRate signal, LeakRate limit, Duration response);

/// One entry of the list that settles what a round left open.
struct SettlingStep
{
    std::vector<int> seal;  ///< seal or bag these first; may be empty
    std::vector<int> spray; ///< then spray these
    std::string how;        ///< the sentence
    bool operator==(const SettlingStep&) const = default;
};

/// The shortest list of sprays that settles masked, shared, slow and blind points; empty when nothing is
/// open.
std::vector<SettlingStep> settlingSteps(const Survey& survey, const Sources& sources);

/// A run of readings taken while the background moved: indices of Survey::readings, first and last.
struct MovedBackground
{
    std::size_t first = 0;
    std::size_t last = 0;
    std::string because;
    bool operator==(const MovedBackground&) const = default;
};

/// Runs of at least two readings that are not void whose background stands well above that of the rest of the
/// survey, not as the tail of a response: they may be voided together and sprayed again.
std::vector<MovedBackground> movedBackgrounds(const Survey& survey);

} // namespace sealwalk::analysis
