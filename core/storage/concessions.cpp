// SPDX-License-Identifier: GPL-3.0-or-later
// Concessions of past jobs that come to an end, and whether anything was done about them since.
#include "core/storage/connection.h"

#include <algorithm>

namespace sealwalk::storage {
namespace {

/// Whether the point was conceded again, or repaired for good, after `since`.
bool isDealtWith(SQLite::Database& database, std::int64_t object, model::PointId point,
                 const Timestamp& since)
{
    SQLite::Statement later(database,
                            "SELECT EXISTS (SELECT 1 FROM concession AS c JOIN job AS j ON j.id = c.job "
                            "WHERE j.object = ?1 AND c.at > ?2 AND instr(c.points, ?3)) OR "
                            "EXISTS (SELECT 1 FROM repair AS r JOIN job AS j ON j.id = r.job "
                            "WHERE j.object = ?1 AND r.at > ?2 AND r.permanent AND instr(r.points, ?3))");
    std::string uuid;
    packUuid(uuid, point.uuid());
    later.bind(1, object);
    later.bind(2, since.utcMilliseconds);
    later.bind(3, static_cast<const void*>(uuid.data()), static_cast<int>(uuid.size()));
    return later.executeStep() && later.getColumn(0).getInt() != 0;
}

} // namespace

Result<std::vector<EndingConcession>>
HistoryStore::concessionsEndingBy(const Timestamp& day, const std::optional<model::ObjectId>& object) const
{
    return m_connection->read([&]() -> Result<std::vector<EndingConcession>> {
        SQLite::Database& database = m_connection->database;
        SQLite::Statement jobs(
            database, std::string("SELECT job.id, job.object, job.uuid, job.number, object.name FROM job "
                                  "JOIN object ON object.id = job.object WHERE job.id IN "
                                  "(SELECT job FROM concession WHERE until <= ?)") +
                          (object ? " AND job.object = ?" : ""));
        jobs.bind(1, day.utcMilliseconds);
        if (object)
            jobs.bind(2, m_connection->objectKey(*object));
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
                    return isDealtWith(database, owner, point, concession.at);
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
