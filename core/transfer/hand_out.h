// SPDX-License-Identifier: GPL-3.0-or-later
// A job of a history looked at as a whole: with its object and pictures, checked, and packed to be handed on.
#pragma once

#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"

#include <stop_token>
#include <string>
#include <vector>

namespace sealwalk::transfer {

/// A job with its object.
Result<exchange::JobRecord> loadRecord(const storage::HistoryStore& store, model::JobId job);

/// The pictures a job refers to. One that is not in the history, or whose bytes no longer match its name, is
/// left out and told in `problems`.
std::vector<model::Picture> loadPictures(const storage::HistoryStore& store, const model::Job& job,
                                         std::vector<std::string>& problems);

/// Compares signing keys with those `people` of a history are known by: another key than a person's own is a
/// problem, an unknown one a note.
void checkKeys(exchange::Verification& result, const std::vector<model::Person>& people);

/// Whether a job of the history is what was signed: signatures, keys, pictures, state, and that its parts
/// fit.
Result<exchange::Verification> verifyIn(const storage::HistoryStore& store, model::JobId job);

/// What is wrong with a whole history, one sentence each: the file, its rules and records, and every
/// signature in it; fewer when it is stopped before the end. The window and the command line ask here.
Result<std::vector<std::string>> problemsOf(const storage::HistoryStore& store,
                                            const std::stop_token& stop = {});

struct HandedOut
{
    std::string bytes; ///< of the job file
    exchange::JobRecord record;
    std::size_t pictures = 0;
    exchange::Verification result; ///< a broken signature does not keep a record from being handed on
};

/// One job as a job file. Refused when a picture is missing or was changed.
Result<HandedOut> handOut(const storage::HistoryStore& store, model::JobId job);

} // namespace sealwalk::transfer
