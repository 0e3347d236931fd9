// SPDX-License-Identifier: GPL-3.0-or-later
// One job that was worked on at two computers: which of two records of it goes on from the other.
#pragma once

#include "core/exchange/job_json.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::exchange {

enum class Standing
{
    Same,
    Further, ///< everything that is here is there, unchanged, and there is more
    Behind,  ///< the other way round
    Forked   ///< each has what the other has not, or nothing tells which is the later
};

/// A part of a job's record in which two of them may differ.
enum class Part
{
    Head, ///< number, object, day of opening
    Setup,
    Sketch,
    Rounds,
    RoundOrder,
    ClosedRounds,
    Readings,
    Voids,
    Calibrations,
    Backgrounds,
    RiseTests,
    VoidMeasurements,
    Repairs,
    Judgements,
    Concessions,
    Submitted,
    Returned,
    Approved,
    Remarks,
    Amendments,
    Review, ///< its turns altogether
    Signatures,
};

struct Gain
{
    Part part = Part::Readings;
    std::size_t count = 0;
    bool operator==(const Gain&) const = default;
};

struct Continuation
{
    Standing standing = Standing::Same;
    std::vector<Gain> added;    ///< what the one that is further has more
    std::vector<Part> replaced; ///< what may change while one works, and was filled in
    Part differs = Part::Head;  ///< when forked: what keeps the two from being one
};

/// "1 reading", "12 readings", "submitted"; without a count "readings".
std::string partWords(Part part, std::optional<std::size_t> count = std::nullopt);

/// How `there` stands to `here`, two records of one job. Readings, marks, measurements, decisions, turns of
/// the review and signatures only grow, so the record that lacks none of the other's is the later one; rounds
/// may have been closed. Set-up, sketch, repairs and round orders have no time of their own: there the later
/// record is the one that says all that the other says, and more (filled_in.h), the sketch with a higher
/// revision. Where that cannot be shown of every part, the two are forked, whichever has more readings. A
/// signed job goes on in amendments alone.
Continuation compareRecords(const JobRecord& here, const JobRecord& there);

} // namespace sealwalk::exchange
