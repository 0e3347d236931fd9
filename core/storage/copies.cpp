// SPDX-License-Identifier: GPL-3.0-or-later
// A consistent copy of a live history.
#include "core/base/partial_file.h"
#include "core/storage/connection.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <stop_token>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

namespace sealwalk::storage {
namespace {

namespace fs = std::filesystem;

} // namespace

bool flushed(const fs::path& path, int flags)
{
    const int descriptor =
        ::open(path.c_str(), flags | O_CLOEXEC); // NOLINT(cppcoreguidelines-pro-type-vararg)
    if (descriptor < 0)
        return false;
    const bool done = ::fsync(descriptor) == 0;
    ::close(descriptor);
    return done;
}

namespace {

/// A reader's connection refuses every write, also that of a copy; the copy is no write to the history.
class CopyAllowed
{
public:
    explicit CopyAllowed(SQLite::Database& database)
        : m_database(database)
        , m_before(database.execAndGet("PRAGMA query_only").getInt())
    {
        m_database.exec("PRAGMA query_only = OFF");
    }
    CopyAllowed(const CopyAllowed&) = delete;
    CopyAllowed& operator=(const CopyAllowed&) = delete;
    ~CopyAllowed()
    {
        m_database.tryExec(m_before != 0 ? "PRAGMA query_only = ON" : "PRAGMA query_only = OFF");
    }

private:
    SQLite::Database& m_database;
    int m_before;
};

/// An older history is looked at through views that bear its tables' names; a copy would take them for the
/// tables.
class ViewsSetAside
{
public:
    explicit ViewsSetAside(SQLite::Database& database)
        : m_database(database)
    {
        SQLite::Statement views(database, "SELECT name, sql FROM temp.sqlite_master WHERE type = 'view'");
        while (views.executeStep())
            m_views.emplace_back(views.getColumn(0).getString(), views.getColumn(1).getString());
        views.reset();
        for (const auto& [name, sql] : m_views)
            m_database.exec("DROP VIEW temp.\"" + name + '"');
    }
    ViewsSetAside(const ViewsSetAside&) = delete;
    ViewsSetAside& operator=(const ViewsSetAside&) = delete;
    ~ViewsSetAside()
    {
        for (const auto& [name, sql] : m_views) // kept without the word that makes them temporary
            m_database.tryExec("CREATE TEMP" + sql.substr(sql.find(' ')));
    }

private:
    SQLite::Database& m_database;
    std::vector<std::pair<std::string, std::string>> m_views;
};

} // namespace

Status HistoryStore::checkpoint()
{
    return guarded(m_connection->file, [&]() -> Status {
        m_connection->requireWritable();
        SQLite::Statement checkpoint(m_connection->database, "PRAGMA wal_checkpoint(PASSIVE)");
        while (checkpoint.executeStep()) {
        }
        return {};
    });
}

Status HistoryStore::backup(const fs::path& target, const std::stop_token& stop) const
{
    return guarded(target, [&]() -> Status {
        std::error_code problem;
        if (fs::exists(fs::symlink_status(target, problem)))
            return fail(ErrorCode::BadInput, target.string() + ": is there already; name a new file");
        const fs::path folder = target.parent_path().empty() ? fs::path(".") : target.parent_path();
        if (!fs::is_directory(folder, problem))
            return fail(ErrorCode::BadInput,
                        target.string() + ": its folder does not exist; name one that does");
        if (::access(folder.c_str(), W_OK) != 0)
            return fail(ErrorCode::MachineFailed, target.string() + ": its folder may not be written");
        PartialFile partial(target.string() + fmt::format(".{}.partial", ::getpid()));
        {
            const CopyAllowed allowed(m_connection->database);
            const ViewsSetAside aside(m_connection->database);
            const std::stop_callback interrupt(
                stop, [this] { ::sqlite3_interrupt(m_connection->database.getHandle()); });
            SQLite::Statement into(m_connection->database, "VACUUM INTO ?");
            into.bind(1, partial.path());
            into.exec();
        }
        if (!flushed(partial.path(), O_RDWR))
            return fail(ErrorCode::MachineFailed, target.string() + ": the disk did not take the copy");
        if (stop.stop_requested())
            return fail(ErrorCode::Cancelled, target.string() + ": not written");
        // A hard link never replaces a file that came up meanwhile.
        fs::create_hard_link(partial.path(), target, problem);
        if (problem && problem != std::errc::file_exists)
            fs::rename(partial.path(), target, problem); // file systems without links
        if (problem)
            return fail(ErrorCode::MachineFailed,
                        target.string() + ": cannot be written: " + problem.message());
        if (!flushed(folder, O_RDONLY | O_DIRECTORY))
            return fail(ErrorCode::MachineFailed, target.string() + ": the disk did not take the copy");
        return {};
    });
}

} // namespace sealwalk::storage
