// SPDX-License-Identifier: GPL-3.0-or-later
// A whole job from elsewhere.
#include "core/storage/connection.h"

#include <fmt/format.h>

namespace sealwalk::storage {
namespace {

std::optional<std::int64_t> keyOf(SQLite::Database& database, const char* table, const Uuid& uuid)
{
    SQLite::Statement select(database, std::string("SELECT id FROM ") + table + " WHERE uuid = ?");
    std::string bytes;
    packUuid(bytes, uuid);
    select.bind(1, bytes.data(), static_cast<int>(bytes.size()));
    if (!select.executeStep())
        return std::nullopt;
    return select.getColumn(0).getInt64();
}

bool numberIsTaken(SQLite::Database& database, int number)
{
    SQLite::Statement select(database, "SELECT 1 FROM job WHERE number = ?");
    select.bind(1, number);
    return select.executeStep();
}

void requireWhole(const model::TestObject& object, const model::Job& job)
{
    if (job.object != object.id)
        throw Refusal(ErrorCode::BadInput,
                      "the job belongs to another test object than the one it came with");
    if (const std::string wrong = complaint(job.sketch); !wrong.empty())
        throw Refusal(ErrorCode::BadInput, wrong);
    std::int64_t last = 0;
    for (const model::Reading& reading : job.readings) {
        if (reading.sequence <= last)
            throw Refusal(ErrorCode::BadInput,
                          fmt::format("the readings are not in the order of storing: {} follows {}",
                                      reading.sequence, last));
        last = reading.sequence;
    }
}

void insertRecords(SQLite::Database& database, JobKey key, const model::Job& job)
{
    insertSetup(database, key, job.setup);
    insertSketch(database, key, job.sketch);
    insertRows(database, key, job.repairs); // rounds name the repair they prove
    insertRows(database, key, job.rounds);
    insertRows(database, key, job.readings);
    insertRows(database, key, job.voids);
    insertRows(database, key, job.calibrations);
    insertRows(database, key, job.backgrounds);
    insertRows(database, key, job.riseTests);
    insertRows(database, key, job.voidMeasurements);
    insertRows(database, key, job.judgements);
    insertRows(database, key, job.concessions);
    insertRows(database, key, job.review);
    insertRows(database, key, job.signatures);
}

} // namespace

Status HistoryStore::importJob(const model::TestObject& object, const model::Job& job,
                               const std::vector<model::Picture>& pictures,
                               const std::vector<NamedTrace>& traces)
{
    return m_connection->write([&]() -> Status {
        SQLite::Database& database = m_connection->database;
        requireWhole(object, job);
        if (keyOf(database, "job", job.id.uuid()))
            return fail(ErrorCode::Conflict, fmt::format("this job is in the history already, as number {}",
                                                         m_connection->head(job.id).number));
        if (!keyOf(database, "object", object.id.uuid()))
            insertObject(database, object);
        model::Job stored = job;
        if (stored.number <= 0 || numberIsTaken(database, stored.number)) {
            if (stored.openedAs == 0)
                stored.openedAs = stored.number;
            stored.number = nextJobNumber(database);
        }
        for (const model::Picture& picture : pictures)
            insertPicture(database, picture);
        const JobKey key = insertJobHead(database, m_connection->objectKey(object.id), stored);
        insertRecords(database, key, stored);
        for (const NamedTrace& trace : traces)
            insertTrace(database, key, trace);
        if (job.state != model::JobState::Open)
            setState(database, key, job.state); // last: a signed job takes no more rows
        refreshSummary(database, key);
        return {};
    });
}

} // namespace sealwalk::storage
