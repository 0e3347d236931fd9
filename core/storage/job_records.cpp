// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/connection.h"

#include <algorithm>
#include <unordered_set>

namespace sealwalk::storage {
namespace {

void loadHead(SQLite::Database& database, JobKey key, model::Job& job)
{
    SQLite::Statement select(database,
                             "SELECT job.uuid, number, opened_as, object.uuid, opened, opened_offset, state "
                             "FROM job JOIN object ON object.id = job.object WHERE job.id = ?");
    select.bind(1, key);
    if (!select.executeStep())
        throw Refusal(ErrorCode::NotFound, "the job is no longer there");
    ColumnReader read(select);
    read("uuid", job.id);
    read("number", job.number);
    read("opened_as", job.openedAs);
    read("object", job.object);
    read("opened", job.opened);
    read("state", job.state);
}

/// A round may call points that were taken out of the sketch again before they had a reading.
void dropUnknownPoints(model::Job& job)
{
    std::unordered_set<model::PointId> known;
    for (const model::TestPoint& point : job.sketch.points)
        known.insert(point.id);
    for (model::Round& round : job.rounds)
        std::erase_if(round.points, [&](model::PointId point) { return !known.contains(point); });
}

} // namespace

model::Setup loadSetup(SQLite::Database& database, JobKey key)
{
    std::vector<model::Setup> found = loadRows<model::Setup>(database, key);
    if (found.empty())
        throw Refusal(ErrorCode::DamagedFile, "a job of the history has lost its set-up");
    model::Setup setup = std::move(found.front());
    setup.instruments = loadRows<model::Instrument>(database, key);
    setup.cautions = loadRows<model::CautionTick>(database, key);
    SQLite::Statement limits(database, "SELECT kind, rate FROM kind_limit WHERE job = ?");
    limits.bind(1, key);
    while (limits.executeStep()) {
        ColumnReader read(limits);
        model::JointKind kind{};
        read("kind", kind);
        read("rate", setup.kindLimits[kind]);
    }
    return setup;
}

void insertSetup(SQLite::Database& database, JobKey key, const model::Setup& setup)
{
    insertRow(database, key, setup);
    for (const model::Instrument& instrument : setup.instruments)
        insertRow(database, key, instrument);
    for (const model::CautionTick& tick : setup.cautions)
        insertRow(database, key, tick);
    for (const auto& limit : setup.kindLimits) {
        SQLite::Statement insert(database, "INSERT INTO kind_limit (job, kind, rate) VALUES (?, ?, ?)");
        insert.bind(1, key);
        ColumnBinder bind(insert, 2);
        bind("kind", limit.first);
        bind("rate", limit.second);
        insert.exec();
    }
}

void deleteSetup(SQLite::Database& database, JobKey key)
{
    for (const char* table : {"setup", "instrument", "caution_tick", "kind_limit"}) {
        SQLite::Statement remove(database, std::string("DELETE FROM ") + table + " WHERE job = ?");
        remove.bind(1, key);
        remove.exec();
    }
}

model::Job loadJob(SQLite::Database& database, JobKey key)
{
    model::Job job;
    loadHead(database, key, job);
    job.setup = loadSetup(database, key);
    job.sketch = loadSketch(database, key);
    job.rounds = loadRows<model::Round>(database, key);
    job.readings = loadRows<model::Reading>(database, key);
    job.voids = loadRows<model::VoidMark>(database, key);
    job.calibrations = loadRows<model::Calibration>(database, key);
    job.backgrounds = loadRows<model::BackgroundWatch>(database, key);
    job.riseTests = loadRows<model::RiseTest>(database, key);
    job.voidMeasurements = loadRows<model::MeasurementVoid>(database, key);
    job.repairs = loadRows<model::Repair>(database, key);
    job.judgements = loadRows<model::Judgement>(database, key);
    job.concessions = loadRows<model::Concession>(database, key);
    job.review = loadRows<model::ReviewEntry>(database, key);
    job.signatures = loadRows<model::Signature>(database, key);
    dropUnknownPoints(job);
    return job;
}

JobKey insertJobHead(SQLite::Database& database, std::int64_t object, const model::Job& job)
{
    SQLite::Statement insert(
        database, "INSERT INTO job (object, uuid, number, opened_as, opened, opened_offset, state, "
                  "sketch_revision, last_point_number) VALUES (?, ?, ?, ?, ?, ?, 'open', ?, ?)");
    insert.bind(1, object);
    ColumnBinder bind(insert, 2);
    bind("uuid", job.id);
    bind("number", job.number);
    bind("opened_as", job.openedAs);
    bind("opened", job.opened);
    bind("sketch_revision", job.sketch.revision);
    bind("last_point_number", job.sketch.lastNumber);
    insert.exec();
    return database.getLastInsertRowid();
}

int nextJobNumber(SQLite::Database& database)
{
    return database.execAndGet("SELECT coalesce(max(number), 0) + 1 FROM job").getInt();
}

void setState(SQLite::Database& database, JobKey key, model::JobState state)
{
    SQLite::Statement update(database, "UPDATE job SET state = ? WHERE id = ?");
    ColumnBinder bind(update);
    bind("state", state);
    bind("id", key);
    update.exec();
}

} // namespace sealwalk::storage
