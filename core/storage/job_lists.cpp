// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of objects and jobs, and finding by typed words.
#include "core/storage/connection.h"

#include <algorithm>

namespace sealwalk::storage {
namespace {

std::vector<std::string> typedWords(const std::string& typed)
{
    std::vector<std::string> words;
    const std::string text = folded(typed);
    std::size_t from = 0;
    while ((from = text.find_first_not_of(" \t\r\n", from)) != std::string::npos) {
        const std::size_t to = text.find_first_of(" \t\r\n", from);
        words.push_back(text.substr(from, to == std::string::npos ? to : to - from));
        from = to == std::string::npos ? text.size() : to;
    }
    return words;
}

/// "instr(words, ?) AND instr(words, ?) …", true when there is no word.
std::string everyWordIn(const char* column, std::size_t words)
{
    std::string condition = "1";
    for (std::size_t i = 0; i < words; ++i)
        condition += std::string(" AND instr(") + column + ", ?)";
    return condition;
}

constexpr const char* kJobRows =
    "SELECT job.uuid, job.number, object.uuid, object.name, object.tag, setup.purpose, job.opened, "
    "job.opened_offset, job.state, job_summary.points, job_summary.readings FROM job "
    "JOIN object ON object.id = job.object JOIN setup ON setup.job = job.id "
    "JOIN job_summary ON job_summary.job = job.id ";

std::vector<JobRow> jobRows(SQLite::Statement& select)
{
    std::vector<JobRow> rows;
    while (select.executeStep()) {
        JobRow row;
        ColumnReader read(select);
        read("uuid", row.id);
        read("number", row.number);
        read("object", row.object);
        read("name", row.objectName);
        read("tag", row.objectTag);
        read("purpose", row.purpose);
        read("opened", row.opened);
        read("state", row.state);
        read("points", row.points);
        read("readings", row.readings);
        rows.push_back(std::move(row));
    }
    return rows;
}

/// A temporary repair is open until one of its own job, or of another on the object, has made it good;
/// `repair` belongs to the job `j`.
constexpr const char* kIsOpen = "NOT repair.permanent AND repair.made_good_by IS NULL AND NOT EXISTS "
                                "(SELECT 1 FROM repair AS later JOIN job AS k ON k.id = later.job "
                                "WHERE k.object = j.object AND instr(later.makes_good, repair.uuid))";

} // namespace

Result<std::vector<ObjectRow>> HistoryStore::objects(const std::string& typed) const
{
    return m_connection->read([&]() -> Result<std::vector<ObjectRow>> {
        SQLite::Statement select(
            m_connection->database,
            std::string("SELECT uuid, name, tag, place, (SELECT count(*) FROM job WHERE object = object.id), "
                        "(SELECT count(*) FROM repair JOIN job AS j ON j.id = repair.job "
                        "WHERE j.object = object.id AND ") +
                kIsOpen +
                "), (SELECT opened FROM job WHERE object = object.id ORDER BY opened DESC LIMIT 1), "
                "(SELECT opened_offset FROM job WHERE object = object.id ORDER BY opened DESC LIMIT 1) "
                "FROM object ORDER BY name, id");
        const std::vector<std::string> words = typedWords(typed);
        std::vector<ObjectRow> rows;
        while (select.executeStep()) {
            ObjectRow row;
            ColumnReader read(select);
            read("uuid", row.id);
            read("name", row.name);
            read("tag", row.tag);
            read("place", row.place);
            read("jobs", row.jobs);
            read("open", row.openTemporaryRepairs);
            read("opened", row.lastOpened);
            const std::string text = folded(row.name + '\n' + row.tag + '\n' + row.place);
            if (std::all_of(words.begin(), words.end(),
                            [&](const std::string& word) { return text.find(word) != std::string::npos; }))
                rows.push_back(std::move(row));
        }
        return rows;
    });
}

Result<std::vector<JobRow>> HistoryStore::jobs(const std::string& typed) const
{
    return m_connection->read([&]() -> Result<std::vector<JobRow>> {
        const std::vector<std::string> words = typedWords(typed);
        SQLite::Statement select(m_connection->database,
                                 kJobRows + ("WHERE " + everyWordIn("job_summary.words", words.size())) +
                                     " ORDER BY job.opened DESC, job.number DESC");
        int next = 1;
        for (const std::string& word : words)
            select.bind(next++, word);
        return jobRows(select);
    });
}

Result<std::vector<JobRow>> HistoryStore::jobsOf(model::ObjectId object) const
{
    return m_connection->read([&]() -> Result<std::vector<JobRow>> {
        SQLite::Statement select(m_connection->database,
                                 std::string(kJobRows) +
                                     "WHERE job.object = ? ORDER BY job.opened DESC, job.number DESC");
        select.bind(1, m_connection->objectKey(object));
        return jobRows(select);
    });
}

Result<std::vector<model::PointId>> HistoryStore::pointsRead(model::ObjectId object) const
{
    return m_connection->read([&]() -> Result<std::vector<model::PointId>> {
        SQLite::Statement select(
            m_connection->database,
            "SELECT DISTINCT reading.point AS point FROM reading JOIN job ON job.id = reading.job "
            "WHERE job.object = ?");
        select.bind(1, m_connection->objectKey(object));
        std::vector<model::PointId> points;
        while (select.executeStep()) {
            model::PointId point;
            ColumnReader read(select);
            read("point", point);
            points.push_back(point);
        }
        return points;
    });
}

Result<std::vector<OpenRepair>> HistoryStore::openTemporaryRepairs(model::ObjectId object) const
{
    return m_connection->read([&]() -> Result<std::vector<OpenRepair>> {
        SQLite::Database& database = m_connection->database;
        std::vector<OpenRepair> open;
        SQLite::Statement jobs(database,
                               "SELECT id, uuid, number FROM job WHERE object = ? ORDER BY opened, id");
        jobs.bind(1, m_connection->objectKey(object));
        while (jobs.executeStep()) {
            JobKey key = 0;
            OpenRepair found;
            ColumnReader read(jobs);
            read("id", key);
            read("uuid", found.job);
            read("number", found.jobNumber);
            const std::string isOpen = std::string("AND id IN (SELECT repair.id FROM repair JOIN job AS j "
                                                   "ON j.id = repair.job WHERE ") +
                                       kIsOpen + ")";
            for (model::Repair& repair : loadRows<model::Repair>(database, key, isOpen)) {
                found.repair = std::move(repair);
                open.push_back(found);
            }
        }
        return open;
    });
}

} // namespace sealwalk::storage
