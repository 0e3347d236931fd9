// SPDX-License-Identifier: GPL-3.0-or-later
// What a HistoryStore holds: the open database, and the frame every call runs in.
#pragma once

#include "core/base/folded.h"
#include "core/storage/history_store.h"
#include "core/storage/kept_statements.h"
#include "core/storage/own_files.h"
#include "core/storage/row_access.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include <filesystem>

namespace sealwalk::storage {

/// What must be known of a job before something is done to it.
struct JobHead
{
    JobKey key = 0;
    int number = 0;
    std::int64_t object = 0; ///< key of its object within the file
    model::JobState state = model::JobState::Open;
    int sketchRevision = 1;
};

/// Which states of a job allow a change.
enum class Allowed
{
    WhileOpenForWork, ///< open or returned
    UntilSigned,      ///< open, submitted or returned
    Always
};

struct HistoryStore::Connection
{
    std::filesystem::path file;
    Mode mode = Mode::ReadWrite;
    OwnFile own; ///< outlives the database
    mutable SQLite::Database database;
    mutable KeptStatements kept{database};

    /// One transaction that is on disk when this answers without an error.
    template <class Work>
    auto write(Work&& work) const -> decltype(work())
    {
        return guarded(file, [&]() -> decltype(work()) {
            requireWritable();
            SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
            auto result = work();
            if (result)
                transaction.commit();
            return result;
        });
    }

    /// One consistent look at the file.
    template <class Work>
    auto read(Work&& work) const -> decltype(work())
    {
        return guarded(file, [&]() -> decltype(work()) {
            const SQLite::Transaction look(database);
            return work();
        });
    }

    void requireWritable() const;
    [[nodiscard]] ChangeMark mark() const;
    [[nodiscard]] ChangeMark others() const;
    // NOLINTNEXTLINE(modernize-use-nodiscard): also asked only whether the job is there
    JobHead head(model::JobId job) const;
    /// The head of a job whose state allows the change; otherwise a Refusal that says what to do.
    [[nodiscard]] JobHead headFor(model::JobId job, Allowed allowed) const;
    [[nodiscard]] std::int64_t objectKey(model::ObjectId object) const;
    /// The keys of all entries of the object (object_entries.h), to stand behind IN.
    [[nodiscard]] std::string entriesOf(model::ObjectId object) const;
    /// The file's name, for messages.
    [[nodiscard]] std::string name() const { return file.string(); }
};

/// Everything of one job; `database` is inside a transaction.
model::Job loadJob(SQLite::Database& database, JobKey key);
model::Sketch loadSketch(SQLite::Database& database, JobKey key);
void insertSketch(SQLite::Database& database, JobKey key, const model::Sketch& sketch);
/// The highest number ever given to a point of the object, in any of its jobs; 0 when there is none.
int highestPointNumber(SQLite::Database& database, std::int64_t object);
/// Lets the other jobs on the object that are still drawn in count on from `number`: a number belongs to one
/// point of the object.
void countOnFrom(SQLite::Database& database, std::int64_t object, JobKey except, int number);
void deleteSketch(SQLite::Database& database, JobKey key);
model::Setup loadSetup(SQLite::Database& database, JobKey key);
void insertSetup(SQLite::Database& database, JobKey key, const model::Setup& setup);
void deleteSetup(SQLite::Database& database, JobKey key);
void insertObject(SQLite::Database& database, const model::TestObject& object);
model::TestObject loadObject(SQLite::Database& database, std::int64_t key);
/// Inserts the row of the job itself, with state "open" whatever the job's is.
JobKey insertJobHead(SQLite::Database& database, std::int64_t object, const model::Job& job);
int nextJobNumber(SQLite::Database& database);
void setState(SQLite::Database& database, JobKey key, model::JobState state);
std::vector<NamedTrace> loadTraces(SQLite::Database& database, JobKey key);
void insertTrace(SQLite::Database& database, JobKey key, const NamedTrace& trace);
/// Within the caller's transaction.
void putSettingRow(SQLite::Database& database, const std::string& name, const std::string& value);
void insertPicture(SQLite::Database& database, const model::Picture& picture);

/// Brings a file or folder to disk: SQLite does not wait for it when it writes a copy.
bool flushed(const std::filesystem::path& path, int flags);

/// Makes anew what lists and searches need of the job.
void refreshSummary(SQLite::Database& database, JobKey key);
/// Lets the job be found by the lines of `text` too, without reading its records.
void addWords(KeptStatements& in, JobKey key, const std::string& text);
/// Counts a reading just stored, and lets the job be found by it.
void addReadingToSummary(KeptStatements& in, JobKey key, std::int64_t sequence);
/// Makes the list of all jobs anew from their records where it was begun by an earlier release, or where
/// somebody asked for it (search_list.h). Without it searches find less, and nothing else: when it cannot be
/// done now, it is done at another opening.
void bringSearchListUpToDate(SQLite::Database& database, const std::filesystem::path& file);
/// What was typed into a search, folded, word by word.
std::vector<std::string> typedWords(const std::string& typed);
enum class SearchWords
{
    Least, ///< those that every list has, also one that nothing changed since the first releases
    All,
};

/// The words a job is found by, folded, a line each.
std::string searchWords(SQLite::Database& database, JobKey key, SearchWords which);

} // namespace sealwalk::storage
