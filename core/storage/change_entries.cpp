// SPDX-License-Identifier: GPL-3.0-or-later
// What may be changed while a job is open.
#include "core/storage/connection.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>

namespace sealwalk::storage {
namespace {

/// Numbers of points that readings, judgements or remarks are of, or name, but that are not in `sketch`.
std::string neededPointMissingFrom(SQLite::Database& database, JobKey key, const model::Sketch& sketch)
{
    std::unordered_set<model::PointId> kept;
    for (const model::TestPoint& point : sketch.points)
        kept.insert(point.id);
    SQLite::Statement points(database, "SELECT uuid, number FROM point WHERE job = ? ORDER BY number");
    points.bind(1, key);
    // Asked of those that go only: what names a point beside its own has no index.
    SQLite::Statement needs(database, "SELECT EXISTS (SELECT 1 FROM reading WHERE job = ?1 AND point = ?2)"
                                      " OR EXISTS (SELECT 1 FROM judgement WHERE job = ?1"
                                      " AND (point = ?2 OR instr(of, ?2)))"
                                      " OR EXISTS (SELECT 1 FROM review WHERE job = ?1 AND point = ?2)"
                                      " OR EXISTS (SELECT 1 FROM reading WHERE job = ?1 AND shielded <> x''"
                                      " AND instr(shielded, ?2))");
    std::string numbers;
    while (points.executeStep()) {
        model::PointId id;
        int number = 0;
        ColumnReader read(points);
        read("uuid", id);
        read("number", number);
        if (kept.contains(id))
            continue;
        needs.reset();
        needs.bind(1, key);
        ColumnBinder bind(needs, 2);
        bind("point", id);
        if (needs.executeStep() && needs.getColumn(0).getInt() != 0)
            numbers += (numbers.empty() ? "" : ", ") + std::to_string(number);
    }
    return numbers;
}

void requireAllKnown(SQLite::Database& database, const JobHead& head,
                     const std::vector<model::PointId>& points)
{
    const std::vector<model::TestPoint> known = loadRows<model::TestPoint>(database, head.key);
    for (const model::PointId point : points)
        if (std::none_of(known.begin(), known.end(), [&](const auto& k) { return k.id == point; }))
            throw Refusal(ErrorCode::NotFound,
                          fmt::format("job {} has no point {}", head.number, point.text()));
}

model::Round roundOf(SQLite::Database& database, const JobHead& head, model::RoundId id)
{
    const std::vector<model::Round> rounds = loadRows<model::Round>(database, head.key);
    const auto found =
        std::find_if(rounds.begin(), rounds.end(), [&](const model::Round& r) { return r.id == id; });
    if (found == rounds.end())
        throw Refusal(ErrorCode::NotFound, fmt::format("job {} has no round {}", head.number, id.text()));
    return *found;
}

} // namespace

Result<int> HistoryStore::saveSketch(model::JobId job, const model::Sketch& sketch, int expectedRevision)
{
    return m_connection->write([&]() -> Result<int> {
        SQLite::Database& database = m_connection->database;
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        if (head.sketchRevision != expectedRevision)
            return fail(
                ErrorCode::Conflict,
                fmt::format("the sketch of job {} was changed in another window (revision {} there, {} "
                            "here); take that one over first",
                            head.number, head.sketchRevision, expectedRevision));
        if (const std::string wrong = complaint(sketch); !wrong.empty())
            return fail(ErrorCode::BadInput, wrong);
        if (const std::string numbers = neededPointMissingFrom(database, head.key, sketch); !numbers.empty())
            return fail(
                ErrorCode::NotAllowed,
                fmt::format("point {} of job {} has readings or remarks and cannot be taken out; retire it",
                            numbers, head.number));
        model::Sketch stored = sketch;
        stored.revision = expectedRevision + 1;
        // Readings keep pointing to their points while these are written anew.
        database.exec("PRAGMA defer_foreign_keys = ON");
        deleteSketch(database, head.key);
        insertSketch(database, head.key, stored);
        countOnFrom(database, head.object, head.key, stored.lastNumber);
        refreshSummary(database, head.key);
        return stored.revision;
    });
}

Status HistoryStore::saveSetup(model::JobId job, const model::Setup& setup,
                               const std::optional<model::Setup>& before)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        if (before && loadSetup(m_connection->database, head.key) != *before)
            return fail(ErrorCode::Conflict,
                        fmt::format("what job {} was set up with was changed in another window meanwhile; "
                                    "look again",
                                    head.number));
        deleteSetup(m_connection->database, head.key);
        insertSetup(m_connection->database, head.key, setup);
        refreshSummary(m_connection->database, head.key);
        return {};
    });
}

Result<model::Round> HistoryStore::addRound(model::JobId job, const model::Round& round)
{
    return m_connection->write([&]() -> Result<model::Round> {
        SQLite::Database& database = m_connection->database;
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        requireAllKnown(database, head, round.points);
        model::Round stored = round;
        if (stored.id.isNil())
            stored.id = model::RoundId::create();
        {
            SQLite::Statement next(database, "SELECT coalesce(max(number), 0) + 1 FROM round WHERE job = ?");
            next.bind(1, head.key);
            next.executeStep();
            stored.number = next.getColumn(0).getInt();
        }
        insertRow(database, head.key, stored);
        refreshSummary(database, head.key);
        return stored;
    });
}

Status HistoryStore::closeRound(model::JobId job, model::RoundId round, const Timestamp& at)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        model::Round stored = roundOf(m_connection->database, head, round);
        if (stored.closed)
            return {}; // the first one to close it is kept
        stored.closed = at;
        updateRow(m_connection->database, head.key, stored);
        return {};
    });
}

Status HistoryStore::orderRound(model::JobId job, model::RoundId round,
                                const std::vector<model::PointId>& points)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        model::Round stored = roundOf(m_connection->database, head, round);
        if (stored.closed)
            return fail(ErrorCode::NotAllowed, fmt::format("round {} of job {} is closed; open another",
                                                           stored.number, head.number));
        requireAllKnown(m_connection->database, head, points);
        stored.points = points;
        updateRow(m_connection->database, head.key, stored);
        return {};
    });
}

Status HistoryStore::putRepair(model::JobId job, const model::Repair& repair,
                               const std::optional<model::Repair>& before)
{
    return m_connection->write([&]() -> Status {
        SQLite::Database& database = m_connection->database;
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        if (repair.points.empty())
            return fail(ErrorCode::BadInput, "a repair names no point; name at least one");
        requireAllKnown(database, head, repair.points);
        requireAllKnown(database, head, repair.disturbed);
        if (!repair.permanent && (repair.owner.empty() || !repair.due))
            return fail(ErrorCode::BadInput, "a temporary repair needs somebody who owns it and a due date");
        if (before) {
            const auto repairs = loadRows<model::Repair>(database, head.key);
            if (std::find(repairs.begin(), repairs.end(), *before) == repairs.end())
                return fail(ErrorCode::Conflict,
                            "this repair was changed in another window meanwhile; look again");
        }
        if (!updateRow(database, head.key, repair))
            insertRow(database, head.key, repair);
        refreshSummary(database, head.key);
        return {};
    });
}

} // namespace sealwalk::storage
