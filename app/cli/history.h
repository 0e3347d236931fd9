// SPDX-License-Identifier: GPL-3.0-or-later
// The history a command works on, and the job it names.
#pragma once

#include "app/cli/command.h"
#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"

#include <string>

namespace sealwalk::cli {

/// --history, or the user's own; the error names the file.
Result<storage::HistoryStore> openHistory(const Console& console, storage::HistoryStore::Mode mode);

/// A job by number or UUID, with its object.
Result<exchange::JobRecord> loadJob(const storage::HistoryStore& store, const std::string& numberOrUuid);

} // namespace sealwalk::cli
