// SPDX-License-Identifier: GPL-3.0-or-later
// What the database itself refuses, asked by SQL and not through our own code.
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;

std::vector<std::string> column(SQLite::Database& database, const std::string& sql)
{
    std::vector<std::string> values;
    SQLite::Statement select(database, sql);
    while (select.executeStep())
        values.push_back(select.getColumn(0).getString());
    return values;
}

/// Tables of a job's record: every table with a column "job", and the job itself.
std::vector<std::string> recordTables(SQLite::Database& database)
{
    return column(database,
                  "SELECT m.name FROM sqlite_master AS m, pragma_table_info(m.name) AS c WHERE m.type = "
                  "'table' AND c.name = 'job' AND m.name <> 'job_summary' UNION SELECT 'job'");
}

::testing::AssertionResult refuses(SQLite::Database& database, const std::string& sql)
{
    try {
        if (database.exec(sql) == 0)
            return ::testing::AssertionFailure() << "changed no row: " << sql;
    } catch (const SQLite::Exception&) {
        return ::testing::AssertionSuccess();
    }
    return ::testing::AssertionFailure() << "was allowed: " << sql;
}

/// A history that holds the whole job, signed, and beside it an open one.
class Guards : public ::testing::Test
{
protected:
    Guards()
        : m_file(m_folder / "a.sealwalk")
    {
        HistoryStore store = openAt(m_file, HistoryStore::Mode::Create);
        EXPECT_TRUE(store.importJob(sampleObject(), wholeJobWithVoidMeasurement(), {samplePicture()}));
        model::Job open = wholeJobWithVoidMeasurement();
        open.id = fixedId<model::JobId>(5);
        open.number = 119;
        open.state = model::JobState::Open;
        open.review.clear();
        EXPECT_TRUE(store.importJob(sampleObject(), open, {}));
        m_database = std::make_unique<SQLite::Database>(m_file.string(), SQLite::OPEN_READWRITE);
        m_database->exec("PRAGMA foreign_keys = ON");
        m_signed = m_database->execAndGet("SELECT id FROM job WHERE state = 'signed'").getInt();
        m_database->exec(
            fmt::format("DROP TRIGGER trace_signed_insert; INSERT INTO trace VALUES (1, {}, 't', "
                        "x'0000000000000000', x'00000000')",
                        m_signed));
    }

    [[nodiscard]] std::string rowsOf(const std::string& table) const
    {
        return table == "job" ? fmt::format("id = {}", m_signed) : fmt::format("job = {}", m_signed);
    }

    ScratchFolder m_folder;
    std::filesystem::path m_file;
    std::unique_ptr<SQLite::Database> m_database;
    int m_signed = 0;
};

// Property
TEST_F(Guards, NoColumnOfASignedJobCanBeChanged)
{
    int tried = 0;
    for (const std::string& table : recordTables(*m_database))
        for (const std::string& name :
             column(*m_database, "SELECT name FROM pragma_table_info('" + table + "')")) {
            EXPECT_TRUE(refuses(
                *m_database, fmt::format("UPDATE {0} SET {1} = {1} WHERE {2}", table, name, rowsOf(table))));
            ++tried;
        }
    EXPECT_GT(tried, 200);
}

// Property
TEST_F(Guards, NoRowOfASignedJobCanBeRemoved)
{
    for (const std::string& table : recordTables(*m_database))
        EXPECT_TRUE(refuses(*m_database, fmt::format("DELETE FROM {} WHERE {}", table, rowsOf(table))));
}

// Property: a copy of each row, with another identity where there is one.
TEST_F(Guards, NoRowCanBeAddedToASignedJob)
{
    for (const std::string& table : recordTables(*m_database)) {
        if (table == "job" || table == "trace")
            continue;
        std::string names;
        std::string values;
        for (const std::string& name :
             column(*m_database, "SELECT name FROM pragma_table_info('" + table + "') WHERE name <> 'id'")) {
            names += (names.empty() ? "" : ", ") + name;
            const std::string value = name == "uuid"       ? "randomblob(16)"
                                      : name == "sequence" ? "sequence + 100"
                                      : name == "number"   ? "number + 100"
                                                           : name;
            values += (values.empty() ? "" : ", ") + value;
        }
        EXPECT_TRUE(refuses(*m_database, fmt::format("INSERT INTO {0} ({1}) SELECT {2} FROM {0} WHERE {3}",
                                                     table, names, values, rowsOf(table))));
    }
}

// Property: REPLACE would remove rows without asking the delete triggers.
TEST_F(Guards, NoRowCanBeReplaced)
{
    for (const std::string& table : recordTables(*m_database)) {
        EXPECT_TRUE(refuses(*m_database, fmt::format("INSERT OR REPLACE INTO {0} SELECT * FROM {0} WHERE {1}",
                                                     table, rowsOf(table))));
        if (table != "job" && table != "setup" && table != "kind_limit" && table != "reading" &&
            table != "trace") {
            // the signed job's row under its own id, handed to the open job
            std::string names;
            for (const std::string& name :
                 column(*m_database, "SELECT name FROM pragma_table_info('" + table + "')"))
                names +=
                    (names.empty() ? "" : ", ") +
                    (name == "job" ? fmt::format("(SELECT id FROM job WHERE id <> {})", m_signed) : name);
            EXPECT_TRUE(
                refuses(*m_database, fmt::format("INSERT OR REPLACE INTO {0} SELECT {2} FROM {0} WHERE {1}",
                                                 table, rowsOf(table), names)));
        }
    }
    EXPECT_TRUE(
        refuses(*m_database, "INSERT OR REPLACE INTO picture SELECT sha256, 'gif', bytes FROM picture"));
}

// Property
TEST_F(Guards, WhatWasMeasuredOrDecidedIsNeverChangedInOpenJobsEither)
{
    for (const char* table : {"reading", "void_mark", "calibration", "background_watch", "rise_test",
                              "measurement_void", "judgement", "concession", "signature"}) {
        EXPECT_TRUE(
            refuses(*m_database, fmt::format("UPDATE {0} SET job = job WHERE job <> {1}", table, m_signed)));
        EXPECT_TRUE(refuses(*m_database, fmt::format("DELETE FROM {0} WHERE job <> {1}", table, m_signed)));
    }
    for (const char* table : {"object", "job", "round", "repair", "picture"})
        EXPECT_TRUE(refuses(*m_database, fmt::format("DELETE FROM {0}", table)));
}

// Property
TEST_F(Guards, AmendmentsCanStillBeAddedToASignedJob)
{
    HistoryStore store = openAt(m_file, HistoryStore::Mode::ReadWrite);
    EXPECT_TRUE(store.addReview(wholeJob().id, reviewEntry(model::ReviewStep::Amendment)));
    EXPECT_EQ(store.job(wholeJob().id)->review.size(), 2U);
    EXPECT_EQ(store.job(wholeJob().id)->state, model::JobState::Signed);
}

// Property: whoever takes a rule out to change what it guards is found.
TEST_F(Guards, TheCheckNoticesRulesThatWereTakenOut)
{
    m_database->exec("DROP TRIGGER reading_kept_update");
    m_database->exec(
        "DROP TRIGGER round_signed_update; CREATE TRIGGER round_signed_update BEFORE UPDATE ON round WHEN 0 "
        "BEGIN SELECT 1; END");
    const HistoryStore store = openAt(m_file, HistoryStore::Mode::ReadOnly);
    const auto problems = store.check();
    ASSERT_TRUE(problems);
    const std::string all = fmt::format("{}", fmt::join(*problems, "\n"));
    EXPECT_NE(all.find("reading_kept_update of the history was taken out"), std::string::npos) << all;
    EXPECT_NE(all.find("round_signed_update of the history was changed"), std::string::npos) << all;
    EXPECT_NE(all.find("trace_signed_insert"), std::string::npos) << all;
    EXPECT_EQ(problems->size(), 3U) << all;
}

// Property: who added a person, and when, is neither changed nor taken out, not even by SQL.
TEST_F(Guards, WhatWasDoneWithAPersonStays)
{
    m_database->exec(
        "INSERT INTO person VALUES (1, x'00000000000000000000000000000001', 'Brook', 'reviewer', '', "
        "1, '', '', 0, 0)");
    m_database->exec(
        "INSERT INTO person_entry VALUES (1, x'00000000000000000000000000000001', 'added', 'Ada', 0, 0)");
    for (const std::string& name : column(*m_database, "SELECT name FROM pragma_table_info('person_entry')"))
        EXPECT_TRUE(refuses(*m_database, fmt::format("UPDATE person_entry SET {0} = {0}", name)));
    EXPECT_TRUE(refuses(*m_database, "DELETE FROM person_entry"));
    EXPECT_TRUE(refuses(*m_database,
                        "REPLACE INTO person_entry VALUES (1, x'00000000000000000000000000000001', "
                        "'added', 'Eve', 0, 0)"));
    EXPECT_TRUE(refuses(*m_database, "DELETE FROM person"));
}

} // namespace
} // namespace sealwalk::tests
