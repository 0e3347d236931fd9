// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/migrations.h"

#include "core/base/partial_file.h"
#include "core/storage/connection.h"
#include "core/storage/sqlite_errors.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <system_error>

namespace sealwalk::storage {
namespace {

int versionOf(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt();
}

/// Gives the copy a free name beside the file: "history.sealwalk.version-1", then
/// "history.sealwalk.version-1.2" … A hard link never replaces what another window made meanwhile.
std::filesystem::path giveName(PartialFile& copy, const std::filesystem::path& file, int version)
{
    const std::string base = file.string() + ".version-" + std::to_string(version);
    for (int i = 1;; ++i) {
        std::filesystem::path name = i == 1 ? base : base + "." + std::to_string(i);
        if (std::filesystem::exists(name))
            continue;
        std::error_code problem;
        std::filesystem::create_hard_link(copy.path(), name, problem);
        if (problem == std::errc::file_exists)
            continue;
        if (problem) { // a file system without links
            std::filesystem::rename(copy.path(), name, problem);
            copy.handOver();
        }
        if (problem)
            throw Refusal(ErrorCode::MachineFailed,
                          name.string() + ": the safety copy cannot be written: " + problem.message());
        return name;
    }
}

void requireForeignKeysHold(SQLite::Database& database)
{
    SQLite::Statement broken(database, "PRAGMA foreign_key_check");
    if (broken.executeStep())
        throw Refusal(ErrorCode::DamagedFile,
                      fmt::format("the new version would leave a row of \"{}\" without what it belongs to",
                                  broken.getColumn(0).getString()));
}

/// A rebuilt table must not take its dependants' rows along, so the keys are checked at the end instead.
class ForeignKeysPaused
{
public:
    explicit ForeignKeysPaused(SQLite::Database& database)
        : m_database(database)
    {
        m_database.exec("PRAGMA foreign_keys = OFF");
    }
    ForeignKeysPaused(const ForeignKeysPaused&) = delete;
    ForeignKeysPaused& operator=(const ForeignKeysPaused&) = delete;
    ~ForeignKeysPaused() { m_database.tryExec("PRAGMA foreign_keys = ON"); }

private:
    SQLite::Database& m_database;
};

void runSteps(SQLite::Database& database, std::span<const SchemaStep> steps)
{
    const ForeignKeysPaused paused(database);
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    // Asked again inside the transaction: another window may have done it meanwhile.
    const int from = versionOf(database);
    if (from == 0 && database.execAndGet("SELECT count(*) FROM sqlite_master").getInt() > 0)
        throw Refusal(ErrorCode::ForeignFile, "the database of another program is no place for a history");
    for (const SchemaStep& step : steps)
        if (step.version > from)
            database.exec(std::string(step.sql));
    requireForeignKeysHold(database);
    if (from == 0)
        database.exec(fmt::format("PRAGMA application_id = {}", kApplicationId));
    database.exec(fmt::format("PRAGMA user_version = {}", std::max(from, newestVersion(steps))));
    transaction.commit();
}

} // namespace

int newestVersion(std::span<const SchemaStep> steps)
{
    return steps.empty() ? 0 : steps.back().version;
}

int oldestReadable(std::span<const SchemaStep> steps)
{
    const auto lastOfTables = std::find_if(steps.rbegin(), steps.rend(), [](const SchemaStep& step) {
        return !step.rulesOnly && step.look.empty();
    });
    return lastOfTables == steps.rend() ? 0 : lastOfTables->version;
}

Result<std::filesystem::path> migrate(SQLite::Database& database, const std::filesystem::path& file,
                                      std::span<const SchemaStep> steps)
{
    return guarded(file, [&]() -> Result<std::filesystem::path> {
        const int from = versionOf(database);
        if (from >= newestVersion(steps))
            return std::filesystem::path{};
        if (from == 0) {
            runSteps(database, steps);
            return std::filesystem::path{};
        }
        // Under a name of this process until the file is brought up to date: when that fails, also for want
        // of room, the file is as it was, and there is nothing to go back to.
        PartialFile partial(file.string() + fmt::format(".{}.partial", ::getpid()));
        {
            SQLite::Statement into(database, "VACUUM INTO ?");
            into.bind(1, partial.path());
            into.exec();
        }
        if (!flushed(partial.path(), O_RDWR))
            return fail(ErrorCode::MachineFailed, file.string() + ": the disk did not take the safety copy");
        const std::filesystem::path copy = giveName(partial, file, from);
        PartialFile named(copy.string());
        runSteps(database, steps);
        named.handOver();
        return copy;
    });
}

} // namespace sealwalk::storage
