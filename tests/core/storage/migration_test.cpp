// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/migrations.h"
#include "core/storage/opening.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using storage::SchemaStep;
namespace fs = std::filesystem;

/// Invented steps after the real ones; `broken` (0 … 2) is spoiled, another value spoils none.
std::vector<SchemaStep> stepsWithBroken(int broken)
{
    std::vector<SchemaStep> steps(storage::schemaSteps().begin(), storage::schemaSteps().end());
    const int last = storage::newestVersion(steps);
    // A table rebuilt the way tables are rebuilt: make new, copy, drop old, rename new.
    steps.push_back(
        {last + 1,
         "CREATE TABLE setting_new (name TEXT PRIMARY KEY, value TEXT NOT NULL, since INTEGER) STRICT;"
         "INSERT INTO setting_new SELECT name, value, 0 FROM setting;"
         "DROP TABLE setting; ALTER TABLE setting_new RENAME TO setting;"});
    steps.push_back({last + 2, "ALTER TABLE object ADD COLUMN colour TEXT NOT NULL DEFAULT 'grey';"});
    steps.push_back({last + 3, "CREATE TABLE child (job INTEGER REFERENCES job (id)) STRICT;"
                               "INSERT INTO child SELECT id FROM job;"});
    constexpr std::string_view kSpoiled[] = {"CREATE TABLE setting (name TEXT) STRICT;",
                                             "UPDATE object SET name = '';",
                                             "CREATE TABLE child (job INTEGER REFERENCES job (id)) STRICT;"
                                             "INSERT INTO child VALUES (12345);"};
    if (broken >= 0 && broken < 3)
        steps[steps.size() - 3 + static_cast<std::size_t>(broken)].sql = kSpoiled[broken];
    return steps;
}

void makeHistory(const fs::path& file)
{
    OpenedHistory opened(file);
    opened.add();
    EXPECT_TRUE(opened.store.putSetting("a", "b"));
}

std::string dump(const fs::path& file)
{
    const HistoryStore store = openAt(file, HistoryStore::Mode::ReadOnly);
    const auto rows = store.jobs();
    EXPECT_TRUE(rows);
    return fmt::format("{} {} {}", rows->size(), rows->front().readings, *store.setting("a"));
}

// Property: a step that fails leaves the file as it was, whichever step it is.
TEST(Migration, LeavesTheFileAsItWasWhenAnyStepFails)
{
    for (int broken = 0; broken < 3; ++broken) {
        const ScratchFolder folder;
        const fs::path file = folder / "a.sealwalk";
        makeHistory(file);
        const std::string before = dump(file);
        const std::string bytes = bytesOf(file);
        const auto steps = stepsWithBroken(broken);
        storage::OpeningOptions options;
        options.steps = steps;
        const auto opened = storage::openDatabase(file, options);
        ASSERT_FALSE(opened) << broken;
        EXPECT_EQ(bytesOf(file), bytes) << broken;
        EXPECT_EQ(dump(file), before) << broken;
        const int version = storage::newestVersion(storage::schemaSteps());
        EXPECT_FALSE(fs::exists(fmt::format("{}.version-{}", file.string(), version))) << broken;
    }
}

// Property
TEST(Migration, KeepsACopyOfTheOlderFileAndEveryRow)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    const std::string before = dump(file);
    const auto steps = stepsWithBroken(-1);
    storage::OpeningOptions options;
    options.steps = steps;
    {
        auto opened = storage::openDatabase(file, options);
        ASSERT_TRUE(opened) << opened.error().message;
        EXPECT_EQ(opened->execAndGet("PRAGMA user_version").getInt(), storage::newestVersion(steps));
        EXPECT_EQ(opened->execAndGet("SELECT value FROM setting WHERE name = 'a'").getString(), "b");
        EXPECT_EQ(opened->execAndGet("SELECT count(*) FROM child").getInt(), 1);
        EXPECT_EQ(opened->execAndGet("SELECT count(*) FROM reading").getInt(), 1);
        EXPECT_EQ(opened->execAndGet("PRAGMA foreign_keys").getInt(), 1);
    }
    const std::string version = std::to_string(storage::newestVersion(storage::schemaSteps()));
    EXPECT_EQ(dump(file.string() + ".version-" + version), before);
    // Today's program does not open what a newer one made of it.
    const auto older = HistoryStore::open(file, HistoryStore::Mode::ReadWrite);
    ASSERT_FALSE(older);
    EXPECT_EQ(older.error().code, ErrorCode::NewerVersion);
}

// Property
TEST(Migration, IsNotDoneByAReader)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    const std::string bytes = bytesOf(file);
    const auto steps = stepsWithBroken(-1);
    storage::OpeningOptions options;
    options.mode = HistoryStore::Mode::ReadOnly;
    options.steps = steps;
    const auto opened = storage::openDatabase(file, options);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::ReadOnly);
    EXPECT_EQ(bytesOf(file), bytes);
}

// Regression: a step that only changes what may be written does not shut older files to readers.
TEST(Migration, AReaderNeedsNoStepThatOnlyChangesRules)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    const std::string bytes = bytesOf(file);
    const auto known = storage::schemaSteps();
    std::vector<SchemaStep> steps(known.begin(), known.end());
    steps.push_back({steps.back().version + 1, "DROP TRIGGER signature_signed_insert;", true});
    storage::OpeningOptions options;
    options.mode = HistoryStore::Mode::ReadOnly;
    options.steps = steps;
    const auto opened = storage::openDatabase(file, options);
    EXPECT_TRUE(opened) << opened.error().message;
    EXPECT_EQ(bytesOf(file), bytes);
}

// Property
TEST(Migration, StepsAreInOrder)
{
    int last = 1;
    for (const SchemaStep& step : storage::schemaSteps()) {
        EXPECT_GE(step.version, last);
        EXPECT_LE(step.version, last + 1);
        last = step.version;
    }
}

} // namespace
} // namespace sealwalk::tests
