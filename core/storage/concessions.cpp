// SPDX-License-Identifier: GPL-3.0-or-later
// Concessions of past jobs that come to an end, and whether anything was done about them since.
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

#include <algorithm>

namespace sealwalk::storage {
namespace {

/// Whether nothing is left to remind of at the point: it is no longer sprayed, was conceded again, a person
/// found it within its limit, it was sprayed later without a response, or a later job was signed that has a
/// reading of it, whose sign-off asked for what was over. A repair alone says nothing before the point was
/// sprayed again; whether a value of the same job is within the limit is the analysis's to say, and the
/// reminder stays until one of these does.
/// @param entries  of the object, for IN
/// @param granted  the job of the concession
bool isDealtWith(SQLite::Database& database, const std::string& entries, JobKey granted, model::PointId point,
                 const Timestamp& since)
{
    const std::string jobs = "(SELECT id FROM job WHERE object IN " + entries + ")";
    SQLite::Statement later(
        database,
        "WITH standing AS (SELECT x.job, x.outcome, x.at FROM reading AS x WHERE x.job IN " + jobs +
            " AND x.point = ?2 AND x.at > ?1 "
            "AND NOT EXISTS (SELECT 1 FROM void_mark AS v WHERE v.job = x.job AND v.reading = x.uuid) "
            "AND NOT EXISTS (SELECT 1 FROM reading AS c WHERE c.job = x.job AND c.point = x.point "
            "AND c.corrects = x.uuid)) "
            "SELECT EXISTS (SELECT 1 FROM point WHERE uuid = ?2 AND retired AND job = (SELECT id FROM job "
            "WHERE object IN " +
            entries +
            " ORDER BY opened DESC, id DESC LIMIT 1)) "
            "OR EXISTS (SELECT 1 FROM concession WHERE job IN " +
            jobs +
            " AND at > ?1 AND instr(points, ?2)) "
            "OR EXISTS (SELECT 1 FROM judgement WHERE job IN " +
            jobs +
            " AND at > ?1 AND point = ?2 AND verdict IN ('within', 'not counted')) "
            "OR coalesce((SELECT outcome FROM standing ORDER BY at DESC LIMIT 1), '') = 'no response' "
            "OR EXISTS (SELECT 1 FROM standing JOIN job ON job.id = standing.job "
            "WHERE job.id <> ?3 AND job.state = 'signed')");
    std::string uuid;
    packUuid(uuid, point.uuid());
    later.bind(1, since.utcMilliseconds);
    later.bind(2, static_cast<const void*>(uuid.data()), static_cast<int>(uuid.size()));
    later.bind(3, granted);
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
                    return isDealtWith(database, same.listOf(owner), key, point, concession.at);
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
