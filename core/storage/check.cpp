// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a history is sound: the file, its rules, and what they cannot say.
#include "core/storage/connection.h"
#include "core/storage/migrations.h"
#include "core/storage/picture_name.h"
#include "core/storage/trace_name.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>

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

std::set<std::string> linesOf(const std::string& text)
{
    std::set<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        lines.insert(line);
    return lines;
}

/// A name that is part of another word is not put into the list once more, so each line is looked for as a
/// part; what the list has besides belongs to no job. A list of an earlier release need not have them all.
bool findsBy(const std::string& words, const std::string& least, const std::string& all)
{
    const std::set<std::string> wanted = linesOf(least);
    const std::set<std::string> lines = linesOf(all);
    const std::set<std::string> found = linesOf(words);
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const std::string& line) { return words.find(line) != std::string::npos; }) &&
           std::includes(lines.begin(), lines.end(), found.begin(), found.end());
}

void lookAtSummary(SQLite::Database& database, JobKey key, const model::Job& job, Problems& problems)
{
    const auto tellOfList = [&](const char* what) {
        problems.push_back(
            fmt::format("job {}: the history's own list, which searches use, {}; the record is "
                        "not concerned, and check --remake-list makes the list anew",
                        job.number, what));
    };
    SQLite::Statement select(database, "SELECT points, readings, words FROM job_summary WHERE job = ?");
    select.bind(1, key);
    if (!select.executeStep()) {
        tellOfList("does not have it");
        return;
    }
    if (select.getColumn(0).getInt64() != static_cast<std::int64_t>(job.sketch.activePoints().size()) ||
        select.getColumn(1).getInt64() != static_cast<std::int64_t>(job.readings.size()))
        tellOfList("counts wrongly");
    if (!findsBy(select.getColumn(2).getString(), searchWords(database, key, SearchWords::Least),
                 searchWords(database, key, SearchWords::All)))
        tellOfList("has other words");
}

void lookAtTraces(SQLite::Database& database, JobKey key, const model::Job& job, Problems& problems)
{
    for (const NamedTrace& trace : loadTraces(database, key))
        if (isTelling(trace.name) && !holdsWhatItSays(trace))
            problems.push_back(
                fmt::format("job {}: trace \"{}\" does not hold what its name says", job.number, trace.name));
}

/// The number a history shows is the one the job was opened under, which signatures cover. Where that was
/// taken already the job got the number after the highest: jobs are never removed, so this can be told for
/// ever. Histories that were put together before this was kept may have given others, so it is told as what
/// it is, not as a change.
void lookAtNumber(SQLite::Database& database, JobKey key, Problems& problems)
{
    SQLite::Statement select(
        database, "SELECT number, opened_as, (SELECT max(number) FROM job AS e WHERE e.id < job.id), "
                  "EXISTS (SELECT 1 FROM job AS e WHERE e.id < job.id AND e.number = job.opened_as) "
                  "FROM job WHERE id = ?");
    select.bind(1, key);
    if (!select.executeStep())
        return;
    const std::int64_t number = select.getColumn(0).getInt64();
    const std::int64_t openedAs = select.getColumn(1).getInt64();
    if (openedAs == 0 || openedAs == number)
        return;
    if (const bool wasTaken = select.getColumn(3).getInt() != 0; !wasTaken)
        problems.push_back(fmt::format(
            "job {}: stands under another number than it was opened under, {}, which is free here: "
            "an early release took it in so, or the number was changed since",
            number, openedAs));
    else if (const std::int64_t given = select.getColumn(2).getInt64() + 1; number != given)
        problems.push_back(fmt::format(
            "job {}: stands under another number than it was opened under, {}, and than the one it "
            "would be given here, {}: an early release took it in so, or the number was changed "
            "since",
            number, openedAs, given));
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
        lookAtTraces(database, key, job, problems);
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

Result<std::vector<std::string>> HistoryStore::checkBeside(model::JobId job) const
{
    return m_connection->read([&]() -> Result<std::vector<std::string>> {
        Problems problems;
        SQLite::Database& database = m_connection->database;
        const JobKey key = m_connection->head(job).key;
        lookAtTraces(database, key, loadJob(database, key), problems);
        lookAtNumber(database, key, problems);
        return problems;
    });
}

} // namespace sealwalk::storage
