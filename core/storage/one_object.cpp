// SPDX-License-Identifier: GPL-3.0-or-later
// Saying that two entries are one object, and taking it back.
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

namespace sealwalk::storage {
namespace {

model::ObjectId idOf(SQLite::Database& database, std::int64_t key)
{
    return loadObject(database, key).id;
}

void put(SQLite::Database& database, model::ObjectId entry, const std::string& head)
{
    putSettingRow(database, oneObjectSetting(entry), head);
}

} // namespace

std::string HistoryStore::Connection::entriesOf(model::ObjectId object) const
{
    return ObjectEntries(database).listOf(objectKey(object));
}

Status HistoryStore::sayOneObject(model::ObjectId entry, model::ObjectId object)
{
    return m_connection->write([&]() -> Status {
        SQLite::Database& database = m_connection->database;
        const ObjectEntries same(database);
        const std::int64_t one = same.headOf(m_connection->objectKey(entry));
        const std::int64_t other = same.headOf(m_connection->objectKey(object));
        if (entry == object)
            return fail(ErrorCode::BadInput,
                        "an object cannot be said to be the same as itself; choose another");
        if (one == other)
            return {};
        // Heads are linked, so that what hangs under either comes along and no ring can form.
        put(database, idOf(database, one), idOf(database, other).text());
        // A number belongs to one point of the object: those still being drawn count on behind both.
        constexpr JobKey kNone = 0;
        countOnFrom(database, other, kNone, highestPointNumber(database, other));
        return {};
    });
}

Result<bool> HistoryStore::areOneObject(model::ObjectId one, model::ObjectId other) const
{
    return m_connection->read([&]() -> Result<bool> {
        const ObjectEntries same(m_connection->database);
        return same.headOf(m_connection->objectKey(one)) == same.headOf(m_connection->objectKey(other));
    });
}

Result<bool> HistoryStore::saidOfEntry(model::ObjectId entry) const
{
    return m_connection->read([&]() -> Result<bool> {
        SQLite::Statement select(m_connection->database, "SELECT 1 FROM setting WHERE name = ?");
        select.bind(1, oneObjectSetting(entry));
        return select.executeStep();
    });
}

Status HistoryStore::sayTwoObjects(model::ObjectId entry)
{
    return m_connection->write([&]() -> Status {
        SQLite::Database& database = m_connection->database;
        const std::int64_t key = m_connection->objectKey(entry);
        const ObjectEntries same(database);
        std::int64_t keeper = same.headOf(key);
        for (const std::int64_t left : same.directlyUnder(key)) {
            const bool isNewHead = keeper == key; // the first of those that are left behind
            put(database, idOf(database, left), isNewHead ? std::string() : idOf(database, keeper).text());
            if (isNewHead)
                keeper = left;
        }
        if (same.headOf(key) != key)
            put(database, entry, {});
        return {};
    });
}

} // namespace sealwalk::storage
