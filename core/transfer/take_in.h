// SPDX-License-Identifier: GPL-3.0-or-later
// Taking a job from elsewhere into a history, and saying what a person should know about it.
#pragma once

#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::transfer {

struct TakenIn
{
    exchange::Verification result; ///< what was found before, with problems and notes of the taking in
    std::string done;              ///< one sentence
    model::JobId job;              ///< the job concerned
    bool isKnown = false;          ///< it was in the history before; nothing was added
};

/// Stores `file`, whose verification is `result`, unless its signatures are broken, its keys are not those of
/// the people in `store`, or the job is there already. Nothing that is there is changed.
Result<TakenIn> takeIn(storage::HistoryStore& store, const exchange::JobFile& file,
                       exchange::Verification result, const std::vector<storage::NamedTrace>& traces = {});

/// Reads and checks a job file before any history is touched. A file that is whole but packed or spelt
/// otherwise is fine, with a note.
struct Checked
{
    exchange::JobFile file;
    exchange::Verification result;
};
Result<Checked> checkFile(std::string_view bytes);

/// Every job of another history, the oldest first; one answer for each. What cannot be taken in is a problem
/// of its answer, and the rest goes on. Fails only when the jobs of `from` cannot be listed.
Result<std::vector<TakenIn>> takeInAll(storage::HistoryStore& store, const storage::HistoryStore& from);

} // namespace sealwalk::transfer
