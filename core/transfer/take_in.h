// SPDX-License-Identifier: GPL-3.0-or-later
// Taking a job from elsewhere into a history, and saying what a person should know about it.
#pragma once

#include "core/exchange/continuation.h"
#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::transfer {

enum class Outcome
{
    Came,     ///< the job is in the history now
    WentOn,   ///< it was here, and has now what the other record had more
    Known,    ///< it was here, the same or further on; nothing was added
    NotTaken, ///< for what the result names as its problems
};

struct TakenIn
{
    exchange::Verification result; ///< what was found before, with problems and notes of the taking in
    std::string done;              ///< one sentence
    model::JobId job;              ///< the job concerned; nil: what was said there of points and objects
    Outcome outcome = Outcome::NotTaken;
    bool isRenumbered = false;                ///< its own number was taken here
    int number = 0;                           ///< here; of one not taken in the number it came with
    std::string object = {};                  ///< what the job's object is called
    exchange::Continuation continuation = {}; ///< how it stood to the one that was here

    [[nodiscard]] bool isOfJob() const { return !job.isNil(); }
    /// By at least one signature; of a job that was taken in they hold.
    [[nodiscard]] bool isSigned() const { return !result.signatures.empty(); }
    /// Refused for having gone on in both places.
    [[nodiscard]] bool isForked() const { return continuation.standing == exchange::Standing::Forked; }
};

/// Stores `file`, whose verification is `result`, unless its signatures are broken, its keys are not those of
/// the people in `store`, or the job is there already in another state. Where the job is there and `file`
/// goes on from it (exchange/continuation.h), what it has more is added; nothing else that is there is
/// changed. Of `traces` those come that hold what their names say, also the ones that were missing of a job
/// that is there and still worked on; a note tells of the others.
Result<TakenIn> takeIn(storage::HistoryStore& store, const exchange::JobFile& file,
                       exchange::Verification result, std::vector<storage::NamedTrace> traces = {});

/// How a job stands to the one that is in the history; none when it is not there.
Result<std::optional<exchange::Continuation>> standingOf(const storage::HistoryStore& store,
                                                         const exchange::JobRecord& record);

/// What a job is ahead by, for people: "12 readings, 1 repair, submitted, set-up changed".
std::string aheadBy(const exchange::Continuation& continuation);

/// Reads and checks a job file before any history is touched. A file that is whole but packed or spelt
/// otherwise is fine, with a note.
struct Checked
{
    exchange::JobFile file;
    exchange::Verification result;
};
Result<Checked> checkFile(std::string_view bytes);

/// Every job of another history, the oldest first; one answer for each. What cannot be taken in is a problem
/// of its answer, and the rest goes on. Then what was said there of points and objects; where that cannot be
/// taken in, one answer more, of no job. Stopped, it answers for the jobs until then, which stay, and takes
/// nothing else. Fails only when the jobs of `from` cannot be listed.
/// @param progress  told after each job: how many of how many
Result<std::vector<TakenIn>> takeInAll(storage::HistoryStore& store, const storage::HistoryStore& from,
                                       const std::stop_token& stop = {},
                                       const std::function<void(std::size_t, std::size_t)>& progress = {});

} // namespace sealwalk::transfer
