// SPDX-License-Identifier: GPL-3.0-or-later
// Which facts of its object a job is worked out with.
#pragma once

#include "core/exchange/job_json.h"
#include "core/storage/history_store.h"

namespace sealwalk::transfer {

/// For a signed job the object as it was approved with, where that signature holds: its volume, limits and
/// pumps may be others by now, and what was signed stays as it was. Otherwise `now`, as the history has it.
model::TestObject judgedObject(const storage::HistoryStore& store, const model::TestObject& now,
                               const model::Job& job);

/// A job of the history with that object: what findings, balance, tables, map and comparison are made of.
Result<exchange::JobRecord> loadJudged(const storage::HistoryStore& store, model::JobId job);

} // namespace sealwalk::transfer
