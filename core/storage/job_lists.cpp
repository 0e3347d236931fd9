// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of objects and jobs, and finding by typed words.
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

#include <algorithm>
#include <map>

namespace sealwalk::storage {
namespace {

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
std::string isOpen(const ObjectEntries& same)
{
    return "NOT repair.permanent AND repair.made_good_by IS NULL AND NOT EXISTS "
           "(SELECT 1 FROM repair AS later JOIN job AS k ON k.id = later.job WHERE " +
           same.areOne("k.object", "j.object") + " AND instr(later.makes_good, repair.uuid))";
}

/// The row as which several entries of one object stand: named by the head, counted together.
void putUnder(ObjectRow& head, const ObjectRow& entry)
{
    head.jobs += entry.jobs;
    head.openTemporaryRepairs += entry.openTemporaryRepairs;
    if (entry.lastOpened && (!head.lastOpened || *head.lastOpened < *entry.lastOpened))
        head.lastOpened = entry.lastOpened;
    head.others.push_back({entry.id, entry.name, entry.tag, entry.place});
}

/// Whether each of the words stands in what the object or one of its entries is called.
bool isCalled(const ObjectRow& row, const std::vector<std::string>& words)
{
    std::string text = row.name + '\n' + row.tag + '\n' + row.place;
    for (const ObjectEntry& other : row.others)
        text += '\n' + other.name + '\n' + other.tag + '\n' + other.place;
    text = folded(text);
    return std::all_of(words.begin(), words.end(),
                       [&](const std::string& word) { return text.find(word) != std::string::npos; });
}

} // namespace

bool ObjectRow::has(model::ObjectId entry) const
{
    return entry == id || std::any_of(others.begin(), others.end(),
                                      [&](const ObjectEntry& other) { return other.id == entry; });
}

Result<std::vector<ObjectRow>> HistoryStore::objects(const std::string& typed) const
{
    return m_connection->read([&]() -> Result<std::vector<ObjectRow>> {
        const ObjectEntries same(m_connection->database);
        SQLite::Statement select(
            m_connection->database,
            "SELECT id, uuid, name, tag, place, (SELECT count(*) FROM job WHERE object = object.id), "
            "(SELECT count(*) FROM repair JOIN job AS j ON j.id = repair.job "
            "WHERE j.object = object.id AND " +
                isOpen(same) +
                "), (SELECT opened FROM job WHERE object = object.id ORDER BY opened DESC LIMIT 1), "
                "(SELECT opened_offset FROM job WHERE object = object.id ORDER BY opened DESC LIMIT 1) "
                "FROM object ORDER BY name, id");
        std::vector<std::pair<std::int64_t, ObjectRow>> entries;
        while (select.executeStep()) {
            auto& [key, row] = entries.emplace_back();
            ColumnReader read(select);
            read("id", key);
            read("uuid", row.id);
            read("name", row.name);
            read("tag", row.tag);
            read("place", row.place);
            read("jobs", row.jobs);
            read("open", row.openTemporaryRepairs);
            read("opened", row.lastOpened);
        }
        std::vector<ObjectRow> rows;
        std::map<std::int64_t, std::size_t> rowOf;
        for (auto& [key, row] : entries)
            if (same.headOf(key) == key) {
                rowOf[key] = rows.size();
                rows.push_back(std::move(row));
            }
        for (const auto& [key, row] : entries)
            if (const std::int64_t head = same.headOf(key); head != key)
                putUnder(rows[rowOf.at(head)], row);
        const std::vector<std::string> words = typedWords(typed);
        std::erase_if(rows, [&](const ObjectRow& row) { return !isCalled(row, words); });
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
        SQLite::Statement select(m_connection->database, std::string(kJobRows) + "WHERE job.object IN " +
                                                             m_connection->entriesOf(object) +
                                                             " ORDER BY job.opened DESC, job.number DESC");
        return jobRows(select);
    });
}

Result<std::vector<model::PointId>> HistoryStore::pointsRead(model::ObjectId object) const
{
    return m_connection->read([&]() -> Result<std::vector<model::PointId>> {
        SQLite::Statement select(
            m_connection->database,
            "SELECT DISTINCT reading.point AS point FROM reading JOIN job ON job.id = reading.job "
            "WHERE job.object IN " +
                m_connection->entriesOf(object));
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
        const ObjectEntries same(database);
        SQLite::Statement jobs(database, "SELECT id, uuid, number FROM job WHERE object IN " +
                                             same.listOf(m_connection->objectKey(object)) +
                                             " ORDER BY opened, id");
        const std::string whichAreOpen = "AND id IN (SELECT repair.id FROM repair JOIN job AS j "
                                         "ON j.id = repair.job WHERE " +
                                         isOpen(same) + ")";
        while (jobs.executeStep()) {
            JobKey key = 0;
            OpenRepair found;
            ColumnReader read(jobs);
            read("id", key);
            read("uuid", found.job);
            read("number", found.jobNumber);
            for (model::Repair& repair : loadRows<model::Repair>(database, key, whichAreOpen)) {
                found.repair = std::move(repair);
                open.push_back(found);
            }
        }
        return open;
    });
}

} // namespace sealwalk::storage
