// SPDX-License-Identifier: GPL-3.0-or-later
// Every column of a signed job's rows, changed in turn in the file itself: noticed by the check or by the
// signature.
#include "core/exchange/job_signing.h"
#include "core/exchange/signing.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using Mode = HistoryStore::Mode;
namespace fs = std::filesystem;

/// The whole job with a genuine signature, in a history without any rule of its own.
void writeSignedHistory(const fs::path& file)
{
    model::Job job = wholeJobWithVoidMeasurement();
    job.number = job.openedAs = 118;
    const auto key = exchange::createKey("a passphrase", exchange::GuessCost::minimum());
    ASSERT_TRUE(key);
    model::Person reviewer;
    reviewer.id = fixedId<model::PersonId>(9);
    reviewer.name = "Brook";
    reviewer.role = "reviewer";
    reviewer.publicKey = key->publicKey.text();
    reviewer.sealedKey = key->text();
    job.signatures.clear();
    model::ReviewEntry submitted = reviewEntry(model::ReviewStep::Submitted);
    job.review.insert(job.review.begin(), submitted);
    const auto signature =
        exchange::signJob({sampleObject(), job}, {{samplePicture().sha256, "png"}}, reviewer, "a passphrase",
                          {"reviewer", "seen and agreed", moment(95)});
    ASSERT_TRUE(signature) << signature.error().message;
    job.signatures = {*signature};
    HistoryStore store = openAt(file, Mode::Create);
    ASSERT_TRUE(store.putPerson(reviewer));
    const Status taken = store.importJob(sampleObject(), job, {samplePicture()});
    ASSERT_TRUE(taken) << taken.error().message;
}

std::vector<std::string> texts(SQLite::Database& database, const std::string& sql)
{
    std::vector<std::string> result;
    SQLite::Statement select(database, sql);
    while (select.executeStep())
        result.push_back(select.getColumn(0).getString());
    return result;
}

void dropRules(const fs::path& file)
{
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
    for (const std::string& name : texts(database, "SELECT name FROM sqlite_master WHERE type = 'trigger'"))
        database.exec("DROP TRIGGER " + name);
}

/// Everything the check and the signatures have against the history.
std::set<std::string> complaints(const fs::path& file)
{
    std::set<std::string> all;
    const HistoryStore store = openAt(file, Mode::ReadOnly);
    if (const auto problems = store.check())
        all.insert(problems->begin(), problems->end());
    else
        all.insert(problems.error().message);
    const auto id = store.findJob("118");
    if (!id)
        return all.insert(id.error().message), all;
    const auto job = store.job(*id);
    if (!job)
        return all.insert(job.error().message), all;
    const auto object = store.object(job->object);
    if (!object)
        return all.insert(object.error().message), all;
    const auto picture = store.picture(samplePicture().sha256);
    if (!picture)
        return all.insert(picture.error().message), all;
    const auto verification =
        exchange::verifyRecord({*object, *job}, {{picture->sha256, picture->extension}});
    all.insert(verification.problems.begin(), verification.problems.end());
    if (job->state != model::JobState::Signed)
        all.insert("not signed");
    return all;
}

/// A value of the same type that differs by as little as possible, as SQL over the column.
std::string nearly(const std::string& type, const std::string& name)
{
    if (type == "INTEGER")
        return fmt::format("coalesce({0}, 0) + 1", name);
    if (type == "REAL")
        return fmt::format("coalesce({0} * (1 + 1e-12) + 1e-300, 1.0)", name);
    if (name == "object" && type == "TEXT")
        return "replace(object, 'Hall 3', 'Hall 4')"; // white space means nothing in it
    if (type == "TEXT")
        return fmt::format("coalesce({0}, '') || ' '", name);
    // the last byte of a blob; an empty one gets 16 bytes
    return fmt::format("CASE WHEN length(coalesce({0}, x'')) = 0 THEN randomblob(16) ELSE "
                       "CAST(substr({0}, 1, length({0}) - 1) || CASE substr({0}, -1) WHEN x'01' THEN x'02' "
                       "ELSE x'01' END AS BLOB) END",
                       name);
}

// Property
TEST(Tampering, ByAnyColumnOfASignedJobIsNoticed)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    writeSignedHistory(file);
    EXPECT_EQ(complaints(file), std::set<std::string>{});
    dropRules(file);
    const std::set<std::string> before = complaints(file);
    const std::string bytes = bytesOf(file);

    std::vector<std::array<std::string, 3>> columns; // table, column, type
    {
        SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
        for (const std::string& table :
             texts(database,
                   "SELECT m.name FROM sqlite_master AS m, pragma_table_info(m.name) AS c WHERE m.type = "
                   "'table' AND c.name = 'job' AND m.name NOT IN ('job_summary', 'trace') UNION SELECT "
                   "'job' UNION SELECT 'picture'"))
            for (const std::string& name :
                 texts(database, "SELECT name FROM pragma_table_info('" + table + "')"))
                columns.push_back(
                    {table, name,
                     texts(database, fmt::format("SELECT type FROM pragma_table_info('{}') WHERE name = "
                                                 "'{}'",
                                                 table, name))
                         .front()});
    }
    EXPECT_GT(columns.size(), 200U);
    std::string blocked;
    for (const auto& [table, name, type] : columns) {
        writeBytes(file, bytes);
        {
            SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
            database.exec("PRAGMA foreign_keys = OFF");
            try {
                // one row only, the last: the others must not cover for it
                SQLite::Statement update(
                    database, fmt::format("UPDATE {0} SET {1} = {2} WHERE {3} = (SELECT max({3}) FROM {0})",
                                          table, name, nearly(type, name),
                                          table == "reading"      ? "sequence"
                                          : table == "kind_limit" ? "kind"
                                          : table == "setup"      ? "job"
                                          : table == "picture"    ? "sha256"
                                                                  : "id"));
                EXPECT_EQ(update.exec(), 1) << table << "." << name;
            } catch (const SQLite::Exception&) {
                blocked += table + "." + name + " "; // the table itself does not take it
                continue;
            }
        }
        if (name == "id" || (table == "job" && name == "number"))
            continue; // the file's own numbering; the record does not hold it
        if (table == "reading" && name == "sequence")
            continue; // moved to the end of its own list, where it is
        EXPECT_FALSE(complaints(file) == before) << table << "." << name;
    }
    EXPECT_LT(std::count(blocked.begin(), blocked.end(), ' '), 12) << blocked;
}

} // namespace
} // namespace sealwalk::tests
