// SPDX-License-Identifier: GPL-3.0-or-later
// A job that is here already and went on elsewhere: what it has more is added.
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>

namespace sealwalk::storage {
namespace {

/// Stores what `there` has behind the first `here` records.
template <class T>
void insertFrom(SQLite::Database& database, JobKey key, const std::vector<T>& there, std::size_t here)
{
    if (there.size() > here)
        insertRows(database, key,
                   std::vector<T>(there.begin() + static_cast<std::ptrdiff_t>(here), there.end()));
}

template <class T>
void putAll(SQLite::Database& database, JobKey key, const std::vector<T>& there, const std::vector<T>& here)
{
    for (std::size_t i = 0; i < here.size() && i < there.size(); ++i)
        if (there[i] != here[i])
            updateRow(database, key, there[i]);
    insertFrom(database, key, there, here.size());
}

/// The highest point number that some other job of the object keeps.
int numberKeptBeside(SQLite::Database& database, const JobHead& head)
{
    SQLite::Statement select(
        database, "SELECT coalesce(max(last_point_number), 0) FROM job WHERE id <> ? AND object IN " +
                      ObjectEntries(database).listOf(head.object));
    select.bind(1, head.key);
    return select.executeStep() ? select.getColumn(0).getInt() : 0;
}

/// What belongs to this history stays: number, the readings' sequences, which count on, and the last point
/// number, which never goes back. Once signed the record is taken as it is, so another job must keep it.
model::Job asKeptHere(SQLite::Database& database, const JobHead& head, model::Job there,
                      const model::Job& here)
{
    const int last = here.sketch.lastNumber;
    if (there.signatures.empty())
        there.sketch.lastNumber = std::max(there.sketch.lastNumber, last);
    else if (there.sketch.lastNumber < last && numberKeptBeside(database, head) < last)
        throw Refusal(
            ErrorCode::Conflict,
            fmt::format("job {} was signed with {} as its last point number, and {} was given here; "
                        "number {} would be given again",
                        here.number, there.sketch.lastNumber, last, last));
    there.number = here.number;
    there.openedAs = here.openedAs;
    std::int64_t sequence = 0;
    for (std::size_t i = 0; i < there.readings.size(); ++i)
        sequence = there.readings[i].sequence =
            i < here.readings.size() ? here.readings[i].sequence : sequence + 1;
    return there;
}

void putWork(SQLite::Database& database, JobKey key, const model::Job& there, const model::Job& here)
{
    if (there.setup != here.setup) {
        deleteSetup(database, key);
        insertSetup(database, key, there.setup);
    }
    if (there.sketch != here.sketch) {
        database.exec("PRAGMA defer_foreign_keys = ON"); // readings keep pointing to their points meanwhile
        deleteSketch(database, key);
        insertSketch(database, key, there.sketch);
    }
    putAll(database, key, there.repairs, here.repairs); // rounds name the repair they prove
    putAll(database, key, there.rounds, here.rounds);
    insertFrom(database, key, there.readings, here.readings.size());
    insertFrom(database, key, there.voids, here.voids.size());
    insertFrom(database, key, there.calibrations, here.calibrations.size());
    insertFrom(database, key, there.backgrounds, here.backgrounds.size());
    insertFrom(database, key, there.riseTests, here.riseTests.size());
    insertFrom(database, key, there.voidMeasurements, here.voidMeasurements.size());
    insertFrom(database, key, there.judgements, here.judgements.size());
    insertFrom(database, key, there.concessions, here.concessions.size());
}

void insertNewTraces(SQLite::Database& database, JobKey key, const std::vector<NamedTrace>& traces)
{
    std::unordered_set<std::string> here;
    for (const NamedTrace& trace : loadTraces(database, key))
        here.insert(trace.name);
    for (const NamedTrace& trace : traces)
        if (!here.contains(trace.name))
            insertTrace(database, key, trace);
}

} // namespace

Status HistoryStore::continueJob(const model::Job& before, const model::Job& further,
                                 const std::vector<model::Picture>& pictures,
                                 const std::vector<NamedTrace>& traces)
{
    return m_connection->write([&]() -> Status {
        SQLite::Database& database = m_connection->database;
        const JobHead head = m_connection->head(before.id);
        if (loadJob(database, head.key) != before)
            return fail(
                ErrorCode::Conflict,
                fmt::format("job {} was changed in another window meanwhile; look again", head.number));
        const model::Job wanted = asKeptHere(database, head, further, before);
        for (const model::Picture& picture : pictures)
            insertPicture(database, picture);
        if (head.state != model::JobState::Signed) { // afterwards nothing but amendments follows
            putWork(database, head.key, wanted, before);
            insertNewTraces(database, head.key, traces);
        }
        insertFrom(database, head.key, wanted.review, before.review.size());
        insertFrom(database, head.key, wanted.signatures, before.signatures.size());
        if (wanted.state != before.state)
            setState(database, head.key, wanted.state); // last: a signed job takes no more rows
        countOnFrom(database, head.object, head.key, wanted.sketch.lastNumber);
        refreshSummary(database, head.key);
        if (loadJob(database, head.key) != wanted)
            return fail(
                ErrorCode::Conflict,
                fmt::format("job {} does not go on from what is here; nothing was changed", head.number));
        return {};
    });
}

} // namespace sealwalk::storage
