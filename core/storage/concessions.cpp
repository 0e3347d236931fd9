// SPDX-License-Identifier: GPL-3.0-or-later
// Concessions of past jobs that come to an end, and whether anything was done about them since.
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

#include <algorithm>

namespace sealwalk::storage {
namespace {

/// Whether the point was conceded again, or repaired for good, after `since`.
/// @param entries  of the object, for IN
bool isDealtWith(SQLite::Database& database, const std::string& entries, model::PointId point,
                 const Timestamp& since)
{
    const std::string ofObject = " AS x JOIN job AS j ON j.id = x.job WHERE j.object IN " + entries +
                                 " AND x.at > ?1 AND instr(x.points, ?2)";
    SQLite::Statement later(database, "SELECT EXISTS (SELECT 1 FROM concession" + ofObject +
                                          ") OR EXISTS (SELECT 1 FROM repair" + ofObject +
                                          " AND x.permanent)");
    std::string uuid;
    packUuid(uuid, point.uuid());
    later.bind(1, since.utcMilliseconds);
    later.bind(2, static_cast<const void*>(uuid.data()), static_cast<int>(uuid.size()));
    return later.executeStep() && later.getColumn(0).getInt() != 0;
}

} // namespace

Result<std::vector<EndingConcession>>
HistoryStore::concessionsEndingBy(const Timestamp& day, const std::optional<model::ObjectId>& object) const
{
    return m_connection->read([&]() -> Result<std::vector<EndingConcession>> {
        SQLite::Database& database = m_connection->database;
        const ObjectEntries same(database);
        SQLite::Statement jobs(
            database, std::string("SELECT job.id, job.object, job.uuid, job.number, object.name FROM job "
                                  "JOIN object ON object.id = job.object WHERE job.id IN "
                                  "(SELECT job FROM concession WHERE until <= ?)") +
                          (object ? " AND job.object IN " + same.listOf(m_connection->objectKey(*object))
                                  : std::string()));
        jobs.bind(1, day.utcMilliseconds);
        std::vector<EndingConcession> ending;
        while (jobs.executeStep()) {
            JobKey key = 0;
            std::int64_t owner = 0;
            EndingConcession found;
            ColumnReader read(jobs);
            read("id", key);
            read("object", owner);
            read("uuid", found.job);
            read("number", found.jobNumber);
            read("name", found.objectName);
            for (model::Concession& concession : loadRows<model::Concession>(database, key)) {
                if (!concession.until || day < *concession.until)
                    continue;
                std::erase_if(concession.points, [&](model::PointId point) {
                    return isDealtWith(database, same.listOf(owner), point, concession.at);
                });
                if (concession.points.empty())
                    continue;
                found.concession = std::move(concession);
                ending.push_back(found);
            }
        }
        std::stable_sort(ending.begin(), ending.end(), [](const auto& a, const auto& b) {
            return *a.concession.until < *b.concession.until;
        });
        return ending;
    });
}

} // namespace sealwalk::storage
