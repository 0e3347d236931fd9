// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a history is sound: the file, its rules, and what they cannot say.
#include "core/storage/connection.h"
#include "core/storage/migrations.h"
#include "core/storage/picture_name.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace sealwalk::storage {
namespace {

using Problems = std::vector<std::string>;

void lookAtPages(SQLite::Database& database, Problems& problems)
{
    SQLite::Statement check(database, "PRAGMA integrity_check(20)");
    while (check.executeStep())
        if (const std::string line = check.getColumn(0).getString(); line != "ok")
            problems.push_back("the file is damaged: " + line);
}

void lookAtForeignKeys(SQLite::Database& database, Problems& problems)
{
    SQLite::Statement check(database, "PRAGMA foreign_key_check");
    while (check.executeStep())
        problems.push_back(fmt::format("a row of \"{}\" belongs to a \"{}\" that is not there",
                                       check.getColumn(0).getString(), check.getColumn(2).getString()));
}

std::map<std::string, std::string> schemaOf(SQLite::Database& database)
{
    std::map<std::string, std::string> schema;
    SQLite::Statement select(database, "SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_master "
                                       "WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'");
    while (select.executeStep())
        schema.emplace(select.getColumn(0).getString(), select.getColumn(1).getString());
    return schema;
}

/// Somebody who takes a rule out of the file to change what it guards is seen here.
void lookAtSchema(SQLite::Database& database, Problems& problems)
{
    SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    // An older history that is only looked at is sound by the rules of its own version.
    const int version = database.execAndGet("PRAGMA user_version").getInt();
    for (const SchemaStep& step : schemaSteps())
        if (step.version <= version)
            fresh.exec(std::string(step.sql));
    const auto wanted = schemaOf(fresh);
    const auto found = schemaOf(database);
    for (const auto& rule : wanted) {
        const auto same = found.find(rule.first);
        if (same == found.end())
            problems.push_back(fmt::format("the {} of the history was taken out of the file", rule.first));
        else if (same->second != rule.second)
            problems.push_back(fmt::format("the {} of the history was changed in the file", rule.first));
    }
    for (const auto& rule : found)
        if (!wanted.contains(rule.first))
            problems.push_back(fmt::format("the {} does not belong into a history", rule.first));
}

void lookAtPictures(SQLite::Database& database, Problems& problems)
{
    SQLite::Statement select(database, "SELECT sha256, bytes FROM picture");
    while (select.executeStep()) {
        const SQLite::Column blob = select.getColumn(1);
        const auto* data = static_cast<const std::uint8_t*>(blob.getBlob());
        const std::string name = select.getColumn(0).getString();
        if (pictureName({data, data + blob.getBytes()}) != name)
            problems.push_back(fmt::format("picture {} does not hold what its name says", name));
    }
}

void lookAtReadings(const model::Job& job, Problems& problems)
{
    std::map<model::ReadingId, std::int64_t> sequences;
    for (const model::Reading& reading : job.readings) {
        if (reading.corrects) {
            const auto earlier = sequences.find(*reading.corrects);
            if (earlier == sequences.end())
                problems.push_back(
                    fmt::format("job {}: reading {} corrects one that was not stored before it", job.number,
                                reading.sequence));
        }
        const bool needsPeak =
            reading.outcome == model::Outcome::Value || reading.outcome == model::Outcome::AboveRange;
        if (needsPeak && !reading.peak)
            problems.push_back(fmt::format("job {}: reading {} has no value", job.number, reading.sequence));
        sequences.emplace(reading.id, reading.sequence);
    }
}

void lookAtReview(const model::Job& job, Problems& problems)
{
    const bool approved = std::any_of(job.review.begin(), job.review.end(), [](const model::ReviewEntry& e) {
        return e.step == model::ReviewStep::Approved;
    });
    if (job.state == model::JobState::Signed && (!approved || job.signatures.empty()))
        problems.push_back(
            fmt::format("job {}: is marked as signed without an approval and a signature", job.number));
    if (job.state != model::JobState::Signed && approved)
        problems.push_back(fmt::format("job {}: was approved but is not marked as signed", job.number));
}

void lookAtSummary(SQLite::Database& database, JobKey key, const model::Job& job, Problems& problems)
{
    SQLite::Statement select(database, "SELECT points, readings FROM job_summary WHERE job = ?");
    select.bind(1, key);
    if (!select.executeStep()) {
        problems.push_back(fmt::format("job {}: is missing from the list that searches use", job.number));
        return;
    }
    if (select.getColumn(0).getInt64() != static_cast<std::int64_t>(job.sketch.activePoints().size()) ||
        select.getColumn(1).getInt64() != static_cast<std::int64_t>(job.readings.size()))
        problems.push_back(fmt::format("job {}: the list that searches use counts wrongly", job.number));
}

void lookAtJob(SQLite::Database& database, JobKey key, Problems& problems)
{
    try {
        const model::Job job = loadJob(database, key);
        if (const std::string wrong = complaint(job.sketch); !wrong.empty())
            problems.push_back(fmt::format("job {}: {}", job.number, wrong));
        lookAtReadings(job, problems);
        lookAtReview(job, problems);
        lookAtSummary(database, key, job, problems);
    } catch (const Refusal& refusal) {
        problems.push_back(fmt::format("a job cannot be read: {}", refusal.error.message));
    }
}

std::vector<JobKey> allJobs(SQLite::Database& database)
{
    std::vector<JobKey> keys;
    SQLite::Statement select(database, "SELECT id FROM job ORDER BY number");
    while (select.executeStep())
        keys.push_back(select.getColumn(0).getInt64());
    return keys;
}

} // namespace

Result<std::vector<std::string>> HistoryStore::check() const
{
    return m_connection->read([&]() -> Result<std::vector<std::string>> {
        SQLite::Database& database = m_connection->database;
        Problems problems;
        lookAtPages(database, problems);
        lookAtForeignKeys(database, problems);
        lookAtSchema(database, problems);
        lookAtPictures(database, problems);
        for (const JobKey key : allJobs(database))
            lookAtJob(database, key, problems);
        return problems;
    });
}

} // namespace sealwalk::storage
