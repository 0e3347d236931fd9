// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/opening.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/ordinary_user.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using Mode = HistoryStore::Mode;
namespace fs = std::filesystem;

struct Refused
{
    const char* what;
    std::function<void(const fs::path&)> prepare;
    ErrorCode code;
    const char* says;
};

void makeHistory(const fs::path& file)
{
    OpenedHistory opened(file);
    opened.add();
}

void execute(const fs::path& file, const std::string& sql)
{
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(sql);
}

const std::vector<Refused>& refusals()
{
    static const std::vector<Refused> table{
        {"no such file", [](const fs::path&) {}, ErrorCode::NotFound, "no such file"},
        {"a folder", [](const fs::path& file) { fs::create_directory(file); }, ErrorCode::BadInput, "folder"},
        {"empty", [](const fs::path& file) { writeBytes(file, ""); }, ErrorCode::DamagedFile, "empty"},
        {"not a database", [](const fs::path& file) { writeBytes(file, std::string(4096, 'x')); },
         ErrorCode::ForeignFile, "not a Sealwalk history"},
        {"a few bytes", [](const fs::path& file) { writeBytes(file, "SQLite"); }, ErrorCode::ForeignFile,
         "not a Sealwalk history"},
        {"another program's database", [](const fs::path& file) { execute(file, "CREATE TABLE a (b)"); },
         ErrorCode::ForeignFile, "another program"},
        {"another program's small database",
         [](const fs::path& file) { execute(file, "PRAGMA page_size = 512; CREATE TABLE a (b)"); },
         ErrorCode::ForeignFile, "another program"},
        {"a newer version",
         [](const fs::path& file) {
             makeHistory(file);
             execute(file, "PRAGMA user_version = 99");
         },
         ErrorCode::NewerVersion, "version 99"},
        {"cut short",
         [](const fs::path& file) {
             makeHistory(file);
             fs::resize_file(file, fs::file_size(file) - 5000);
         },
         ErrorCode::DamagedFile, "cut short"},
        {"cut to its head",
         [](const fs::path& file) {
             makeHistory(file);
             fs::resize_file(file, 100);
         },
         ErrorCode::DamagedFile, "cut short"},
    };
    return table;
}

std::vector<std::string> namesIn(const fs::path& folder)
{
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder))
        names.push_back(entry.path().filename());
    std::sort(names.begin(), names.end());
    return names;
}

// Property: whatever is refused gets one sentence that names the file, and is not touched.
TEST(Opening, RefusesWithOneSentenceAndLeavesTheFileAlone)
{
    for (const Refused& row : refusals())
        for (const Mode mode : {Mode::ReadWrite, Mode::ReadOnly, Mode::Create}) {
            const bool isToBeMade =
                row.what == std::string("no such file") || row.what == std::string("empty");
            if (mode == Mode::Create && isToBeMade)
                continue;
            const ScratchFolder folder;
            const fs::path file = folder / "a.sealwalk";
            row.prepare(file);
            const std::string before = fs::is_regular_file(file) ? bytesOf(file) : "";
            const auto names = namesIn(folder.path());
            const auto store = HistoryStore::open(file, mode);
            ASSERT_FALSE(store) << row.what;
            EXPECT_EQ(store.error().code, row.code) << row.what << ": " << store.error().message;
            EXPECT_NE(store.error().message.find(row.says), std::string::npos) << store.error().message;
            EXPECT_NE(store.error().message.find(file.string()), std::string::npos) << store.error().message;
            EXPECT_EQ(store.error().message.find('\n'), std::string::npos);
            EXPECT_EQ(fs::is_regular_file(file) ? bytesOf(file) : "", before) << row.what;
            EXPECT_EQ(namesIn(folder.path()), names) << row.what;
        }
}

// Property
TEST(Opening, RefusesANewerVersionThatIsStillInTheLog)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    // A newer program that was killed: its version number is in the log only.
    fs::path copy = folder / "b.sealwalk";
    {
        SQLite::Database newer(file.string(), SQLite::OPEN_READWRITE);
        newer.exec("PRAGMA journal_mode = WAL");
        newer.exec("PRAGMA user_version = 7");
        fs::copy_file(file, copy);
        fs::copy_file(file.string() + "-wal", copy.string() + "-wal");
    }
    const std::string before = bytesOf(copy);
    const auto store = HistoryStore::open(copy, Mode::ReadWrite);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::NewerVersion);
    EXPECT_EQ(bytesOf(copy), before);
}

// Property
TEST(Opening, SaysWhenTheFileOrItsFolderMayNotBeWritten)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    const std::string before = bytesOf(file);
    fs::permissions(folder.path(), fs::perms(0755));
    for (const auto& [filePerms, folderPerms] :
         {std::pair{0444, 0755}, std::pair{0666, 0555}, std::pair{0444, 0555}}) {
        fs::permissions(file, fs::perms(filePerms));
        fs::permissions(folder.path(), fs::perms(folderPerms));
        const OrdinaryUser somebody;
        const auto store = HistoryStore::open(file, Mode::ReadWrite);
        ASSERT_FALSE(store);
        EXPECT_EQ(store.error().code, ErrorCode::ReadOnly) << store.error().message;
        const auto reader = HistoryStore::open(file, Mode::ReadOnly);
        ASSERT_TRUE(reader) << reader.error().message;
        EXPECT_EQ(reader->jobs()->size(), 1U);
        EXPECT_EQ(reader->jobs()->front().readings, 1);
    }
    fs::permissions(folder.path(), fs::perms(0755));
    EXPECT_EQ(bytesOf(file), before);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"a.sealwalk"});
}

// Property
TEST(Opening, SaysWhenTheFileMayNotEvenBeRead)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    fs::permissions(folder.path(), fs::perms(0755));
    fs::permissions(file, fs::perms(0000));
    const OrdinaryUser somebody;
    const auto store = HistoryStore::open(file, Mode::ReadOnly);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::MachineFailed) << store.error().message;
}

// Property
TEST(Opening, SaysWhenAnotherProgramHoldsTheFile)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    SQLite::Database other(file.string(), SQLite::OPEN_READWRITE);
    other.exec("PRAGMA locking_mode = EXCLUSIVE");
    other.exec("BEGIN EXCLUSIVE");
    const std::string before = bytesOf(file);
    const auto store = HistoryStore::open(file, Mode::ReadWrite, std::chrono::milliseconds(50));
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::Busy) << store.error().message;
    EXPECT_NE(store.error().message.find("in use"), std::string::npos) << store.error().message;
    EXPECT_EQ(bytesOf(file), before);
}

// Property
// Regression: a history moved, deleted or replaced while it was open went on "storing" where nobody finds it.
TEST(Opening, StoresNothingWhereNobodyFindsItAgain)
{
    using Trick = std::function<void(const std::filesystem::path&)>;
    const auto away = [](const std::filesystem::path& file) { return file.string() + ".away"; };
    const Trick move = [&](const auto& file) { std::filesystem::rename(file, away(file)); };
    const Trick remove = [](const auto& file) { std::filesystem::remove(file); };
    const Trick replace = [&](const auto& file) {
        std::ofstream(away(file)) << "another file";
        std::filesystem::rename(away(file), file);
    };
    for (const Trick& trick : {move, remove, replace}) {
        const ScratchFolder folder;
        OpenedHistory opened(folder / "a.sealwalk");
        ASSERT_TRUE(opened.store.putSetting("a", "before"));
        trick(folder / "a.sealwalk");
        const Status stored = opened.store.putSetting("a", "after");
        ASSERT_FALSE(stored);
        EXPECT_EQ(stored.error().code, ErrorCode::NotFound);
        EXPECT_EQ(opened.store.setting("a"), "before") << "what is there can still be read and backed up";
        EXPECT_TRUE(opened.store.backup(folder / "b.sealwalk"));
    }
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    move(folder / "a.sealwalk");
    std::filesystem::rename(away(folder / "a.sealwalk"), folder / "a.sealwalk");
    EXPECT_TRUE(opened.store.putSetting("a", "after")) << "it is back";
}

TEST(Opening, ReadOnlyLeavesNothingBehindAndRefusesToWrite)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    makeHistory(file);
    const std::string before = bytesOf(file);
    {
        HistoryStore store = openAt(file, Mode::ReadOnly);
        const auto jobs = store.jobs();
        ASSERT_TRUE(jobs);
        const Status refused = store.putSetting("a", "b");
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::ReadOnly);
    }
    EXPECT_EQ(bytesOf(file), before);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"a.sealwalk"});
}

// Property
TEST(Opening, MakesAHistoryWithItsFoldersAndFindsItAgain)
{
    const ScratchFolder folder;
    const fs::path file = folder / "new" / "deeper" / "a b %20?#.sealwalk";
    {
        HistoryStore store = openAt(file, Mode::Create);
        EXPECT_TRUE(store.putSetting("a", "b"));
    }
    const HistoryStore again = openAt(file, Mode::Create);
    EXPECT_EQ(again.setting("a"), "b");
}

// Property: its head names it from the first moment, also when the program dies before the first checkpoint.
TEST(Opening, AHistoryThatWasJustMadeNamesItselfInItsHead)
{
    const ScratchFolder folder;
    const fs::path file = folder / "a.sealwalk";
    const HistoryStore store = openAt(file, Mode::Create);
    constexpr std::size_t kApplicationIdAt = 68;
    EXPECT_EQ(bytesOf(file).substr(kApplicationIdAt, 4), "SlWk");
}

// Property: what makes a confirmed reading survive a power cut is set on every connection.
TEST(Opening, SetsWhatKeepsConfirmedReadings)
{
    const ScratchFolder folder;
    for (int i = 0; i < 2; ++i) {
        storage::OpeningOptions options;
        options.mode = Mode::Create;
        auto database = storage::openDatabase(folder / "a.sealwalk", options);
        ASSERT_TRUE(database);
        EXPECT_EQ(database->execAndGet("PRAGMA journal_mode").getString(), "wal");
        EXPECT_EQ(database->execAndGet("PRAGMA synchronous").getInt(), 2);
        EXPECT_EQ(database->execAndGet("PRAGMA foreign_keys").getInt(), 1);
    }
}

} // namespace
} // namespace sealwalk::tests
