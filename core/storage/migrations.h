// SPDX-License-Identifier: GPL-3.0-or-later
// Numbered steps from one version of the schema to the next. A released step is never edited.
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

namespace sealwalk::storage {

/// "SlWk": says in the file's head that it is a history of ours.
inline constexpr int kApplicationId = 0x536c576b;

/// What leads to `version`; several steps may share one version and run in order.
struct SchemaStep
{
    int version = 0;
    std::string_view sql;
    /// Changes triggers and nothing else: a file without it reads the same, and need not be brought up to
    /// date to be looked at.
    bool rulesOnly = false;
    /// Temporary views through which a file without this step reads as if it had it; empty: it cannot be
    /// read.
    std::string_view look = {};
};

/// Every step there is, in order of version.
std::span<const SchemaStep> schemaSteps();

/// The version the last step leads to.
int newestVersion(std::span<const SchemaStep> steps);

/// The oldest version whose files can be read as they are.
int oldestReadable(std::span<const SchemaStep> steps);

/// Brings the database up to the newest version. An older history is first copied to a file beside it
/// ("history.sealwalk.version-1"); then all missing steps, the version and a check of the foreign keys are
/// one transaction. On failure the file is as it was. A new, empty database gets every step and no copy.
/// @return the copy's path, empty when none was made
Result<std::filesystem::path> migrate(SQLite::Database& database, const std::filesystem::path& file,
                                      std::span<const SchemaStep> steps);

} // namespace sealwalk::storage
