// SPDX-License-Identifier: GPL-3.0-or-later
// From a path to an open, current, safely set database, or one clear sentence and an untouched file.
#pragma once

#include "core/storage/history_store.h"
#include "core/storage/migrations.h"

#include <SQLiteCpp/Database.h>

#include <chrono>

namespace sealwalk::storage {

struct OpeningOptions
{
    HistoryStore::Mode mode = HistoryStore::Mode::ReadWrite;
    std::chrono::milliseconds patience{5000}; ///< how long to wait for another program's lock
    std::span<const SchemaStep> steps = schemaSteps();
};

/// WAL, full synchronous and foreign keys are set and read back; older versions are brought up to date (not
/// in ReadOnly mode, which refuses them).
Result<SQLite::Database> openDatabase(const std::filesystem::path& file, const OpeningOptions& options);

} // namespace sealwalk::storage
