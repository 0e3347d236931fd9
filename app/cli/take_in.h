// SPDX-License-Identifier: GPL-3.0-or-later
// Taking a job from elsewhere into a history, and saying what a person should know about it.
#pragma once

#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"

#include <string>

namespace sealwalk::cli {

struct TakenIn
{
    exchange::Verification result; ///< what was found before, with problems and notes of the taking in
    std::string done;              ///< one sentence
};

/// Stores `file`, whose verification is `result`, unless its signatures are broken, its keys are not those of
/// the people in `store`, or the job is there already. Nothing that is there is changed.
Result<TakenIn> takeIn(storage::HistoryStore& store, const exchange::JobFile& file,
                       exchange::Verification result);

} // namespace sealwalk::cli
