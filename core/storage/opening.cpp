// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/opening.h"

#include "core/storage/file_head.h"
#include "core/storage/own_files.h"
#include "core/storage/sqlite_errors.h"

#include <SQLiteCpp/Statement.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace sealwalk::storage {
namespace {

namespace fs = std::filesystem;
using Mode = HistoryStore::Mode;

[[noreturn]] void refuse(ErrorCode code, const fs::path& file, std::string_view what)
{
    throw Refusal(code, file.string() + ": " + std::string(what));
}

bool hasContent(const fs::path& file)
{
    std::error_code ignored;
    const auto size = fs::file_size(file, ignored);
    return !ignored && size > 0;
}

fs::path logBeside(const fs::path& file)
{
    return file.string() + "-wal";
}

/// Only while a new history is being made, before it gets its log.
fs::path journalBeside(const fs::path& file)
{
    return file.string() + "-journal";
}

fs::path folderOf(const fs::path& file)
{
    const fs::path parent = file.parent_path();
    return parent.empty() ? fs::path(".") : parent;
}

bool mayWrite(const fs::path& path)
{
    return ::access(path.c_str(), W_OK) == 0;
}

bool mayWriteWithFolder(const fs::path& file)
{
    return mayWrite(file) && mayWrite(folderOf(file));
}

[[noreturn]] void refuseToWrite(const fs::path& file)
{
    refuse(ErrorCode::ReadOnly, file,
           "may not be written; give the file and its folder write permission, or open it to read only");
}

/// What can be known without SQLite. `fresh` is set when a new history is to be made.
void lookAt(const fs::path& file, const OpeningOptions& options, bool& fresh)
{
    std::error_code problem;
    const fs::file_status status = fs::status(file, problem);
    fresh = false;
    if (!fs::exists(status)) {
        if (problem && problem != std::errc::no_such_file_or_directory &&
            problem != std::errc::not_a_directory)
            refuse(ErrorCode::MachineFailed, file, "cannot be looked at: " + problem.message());
        if (options.mode != Mode::Create)
            refuse(ErrorCode::NotFound, file, "there is no such file; name a history that exists");
        fresh = true;
        return;
    }
    if (fs::is_directory(status))
        refuse(ErrorCode::BadInput, file, "is a folder; name the history file in it");
    if (!fs::is_regular_file(status))
        refuse(ErrorCode::BadInput, file, "is not an ordinary file; name a history file");
    if (isOwnFile(file)) { // looked at when it was opened first, and not to be opened past SQLite again
        if (options.mode != Mode::ReadOnly && !mayWriteWithFolder(file))
            refuseToWrite(file);
        return;
    }
    const Result<FileHead> head = readFileHead(file);
    if (!head)
        throw Refusal(head.error());
    if (head->empty) {
        if (options.mode != Mode::Create)
            refuse(ErrorCode::DamagedFile, file, "is empty; name a history, or let a new one be made");
        fresh = true;
        return;
    }
    if (!head->isSqlite)
        refuse(ErrorCode::ForeignFile, file, "is not a Sealwalk history; name a file that Sealwalk made");
    if (head->applicationId != static_cast<std::uint32_t>(kApplicationId)) {
        // Cut off while it was being made, it has neither id nor room for a table and may be made anew.
        if (options.mode == Mode::Create && head->applicationId == 0 && head->userVersion == 0 &&
            head->pages <= 1) {
            fresh = true;
            return;
        }
        refuse(ErrorCode::ForeignFile, file,
               "is a database of another program, not a Sealwalk history; name a file that Sealwalk made");
    }
    if (head->userVersion > static_cast<std::uint32_t>(newestVersion(options.steps)))
        refuse(ErrorCode::NewerVersion, file,
               fmt::format("was written by a newer Sealwalk (version {} of the file, this program knows {}); "
                           "open it with that one",
                           head->userVersion, newestVersion(options.steps)));
    if (head->size < head->promised && !hasContent(logBeside(file)) && !hasContent(journalBeside(file)))
        refuse(ErrorCode::DamagedFile, file,
               fmt::format("is cut short: {} of {} bytes are there; go back to its last backup", head->size,
                           head->promised));
    if (options.mode != Mode::ReadOnly && !mayWriteWithFolder(file))
        refuseToWrite(file);
}

void makeFolders(const fs::path& file)
{
    std::error_code problem;
    fs::create_directories(folderOf(file), problem);
    if (problem)
        refuse(ErrorCode::MachineFailed, file, "its folder cannot be made: " + problem.message());
    if (!mayWrite(folderOf(file)))
        refuse(ErrorCode::ReadOnly, file,
               "its folder may not be written; choose another, or give permission");
}

int patienceOf(const OpeningOptions& options)
{
    return static_cast<int>(options.patience.count());
}

SQLite::Database connect(const fs::path& file, const OpeningOptions& options)
{
    if (options.mode == Mode::Create)
        return {file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, patienceOf(options)};
    // A reader with write permission opens like a writer and is forbidden to write below: only so does SQLite
    // clear its side files away when the last one leaves.
    if (options.mode == Mode::ReadWrite || mayWriteWithFolder(file))
        return {file.string(), SQLite::OPEN_READWRITE, patienceOf(options)};
    if (hasContent(logBeside(file)))
        return {file.string(), SQLite::OPEN_READONLY, patienceOf(options)};
    // Nobody can write here and nothing waits in a log: the file is read as it lies.
    std::string uri = "file:";
    for (const char c : fs::absolute(file).string())
        uri += (c == '%' || c == '?' || c == '#') ? fmt::format("%{:02x}", static_cast<unsigned char>(c))
                                                  : std::string(1, c);
    return {uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI, patienceOf(options)};
}

void expectPragma(SQLite::Database& database, const fs::path& file, const char* name, std::string_view wanted)
{
    const std::string got = database.execAndGet(std::string("PRAGMA ") + name).getString();
    if (got != wanted)
        refuse(
            ErrorCode::MachineFailed, file,
            fmt::format("cannot be kept safely where it is ({} is {} instead of {}); move it to a local disk",
                        name, got, wanted));
}

void makeSafe(SQLite::Database& database, const fs::path& file, Mode mode)
{
    database.exec("PRAGMA foreign_keys = ON");
    database.exec("PRAGMA trusted_schema = OFF");
    if (mode == Mode::ReadOnly) {
        database.exec("PRAGMA query_only = ON");
        return;
    }
    database.exec("PRAGMA journal_mode = WAL");
    database.exec("PRAGMA synchronous = FULL");
    expectPragma(database, file, "journal_mode", "wal");
    constexpr std::string_view kFull = "2";
    expectPragma(database, file, "synchronous", kFull);
    expectPragma(database, file, "foreign_keys", "1");
}

/// The version as it stands with what is still in the log.
int versionWithLog(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt();
}

void refuseNewerInLog(const fs::path& file, const OpeningOptions& options)
{
    // Opened to read only, so that a log written by a newer version is not folded into the file by us.
    if (!hasContent(logBeside(file)))
        return;
    SQLite::Database look(file.string(), SQLite::OPEN_READONLY, patienceOf(options));
    const int version = versionWithLog(look);
    if (version > newestVersion(options.steps))
        refuse(ErrorCode::NewerVersion, file,
               fmt::format("was written by a newer Sealwalk (version {} of the file, this program knows {}); "
                           "open it with that one",
                           version, newestVersion(options.steps)));
}

} // namespace

Result<SQLite::Database> openDatabase(const fs::path& file, const OpeningOptions& options)
{
    return guarded(file, [&]() -> Result<SQLite::Database> {
        bool fresh = false;
        lookAt(file, options, fresh);
        if (fresh)
            makeFolders(file);
        else
            refuseNewerInLog(file, options);
        SQLite::Database database = connect(file, options);
        // A new history gets its schema before it gets a log, so that its head names it from the first
        // moment.
        if (fresh) {
            if (const auto made = migrate(database, file, options.steps); !made)
                return fail(made.error());
        }
        if (options.mode == Mode::ReadOnly) {
            const int version = versionWithLog(database);
            if (version < oldestReadable(options.steps))
                refuse(
                    ErrorCode::ReadOnly, file,
                    fmt::format("is of the older version {} and must be brought up to date; open it where it "
                                "may be written",
                                version));
            for (const SchemaStep& step : options.steps)
                if (step.version > version && !step.look.empty())
                    database.exec(std::string(step.look));
        }
        makeSafe(database, file, options.mode);
        if (options.mode == Mode::ReadOnly)
            return database;
        if (const auto moved = migrate(database, file, options.steps); !moved)
            return fail(moved.error());
        return database;
    });
}

} // namespace sealwalk::storage
