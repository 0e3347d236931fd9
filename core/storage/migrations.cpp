// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/migrations.h"

#include "core/storage/sqlite_errors.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::storage {
namespace {

int versionOf(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt();
}

/// A free name beside the file: "history.sealwalk.version-1", then "history.sealwalk.version-1.2" …
std::filesystem::path nameOfCopy(const std::filesystem::path& file, int version)
{
    const std::string base = file.string() + ".version-" + std::to_string(version);
    std::filesystem::path copy = base;
    for (int i = 2; std::filesystem::exists(copy); ++i)
        copy = base + "." + std::to_string(i);
    return copy;
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
    const auto lastOfTables =
        std::find_if(steps.rbegin(), steps.rend(), [](const SchemaStep& step) { return !step.rulesOnly; });
    return lastOfTables == steps.rend() ? 0 : lastOfTables->version;
}

Result<std::filesystem::path> migrate(SQLite::Database& database, const std::filesystem::path& file,
                                      std::span<const SchemaStep> steps)
{
    return guarded(file, [&]() -> Result<std::filesystem::path> {
        const int from = versionOf(database);
        if (from >= newestVersion(steps))
            return std::filesystem::path{};
        std::filesystem::path copy;
        if (from > 0) {
            copy = nameOfCopy(file, from);
            SQLite::Statement into(database, "VACUUM INTO ?");
            into.bind(1, copy.string());
            into.exec();
        }
        const Status done = guarded(file, [&]() -> Status {
            runSteps(database, steps);
            return {};
        });
        if (!done) {
            std::error_code ignored;
            if (!copy.empty())
                std::filesystem::remove(copy, ignored); // the file is as it was: nothing to go back to
            return fail(done.error());
        }
        return copy;
    });
}

} // namespace sealwalk::storage
