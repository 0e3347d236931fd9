// SPDX-License-Identifier: GPL-3.0-or-later
// The words a job is found by, folded to lower case. A plain text column: at 5,000 jobs it is searched in a
// few milliseconds (tests/bench), and it finds parts of words, which people type.
#include "core/storage/connection.h"
#include "core/storage/search_list.h"
#include "core/storage/sqlite_errors.h"

#include <algorithm>
#include <optional>
#include <sstream>

namespace sealwalk::storage {
namespace {

/// What every list has, a line each; ?1 is the job.
constexpr const char* kWords =
    "SELECT 'job ' || number FROM job WHERE id = ?1 "
    "UNION ALL SELECT o.name || char(10) || o.tag || char(10) || o.place FROM object AS o JOIN job AS j "
    "ON j.object = o.id WHERE j.id = ?1 "
    "UNION ALL SELECT purpose || char(10) || last_touched FROM setup WHERE job = ?1 "
    "UNION ALL SELECT state FROM job WHERE id = ?1 "
    "UNION ALL SELECT DISTINCT name FROM joint WHERE job = ?1 "
    "UNION ALL SELECT title FROM round WHERE job = ?1 "
    "UNION ALL SELECT defect || char(10) || action FROM repair WHERE job = ?1 "
    "UNION ALL SELECT finding FROM judgement WHERE job = ?1 "
    "UNION ALL SELECT by FROM (SELECT by FROM round WHERE job = ?1 UNION SELECT by FROM reading WHERE job = "
    "?1 "
    "UNION SELECT by FROM review WHERE job = ?1 UNION SELECT by FROM repair WHERE job = ?1 "
    "UNION SELECT name FROM signature WHERE job = ?1 UNION SELECT granted_by FROM concession WHERE job = ?1)";

/// What was found, and other words that lists written by the first releases do not have.
constexpr const char* kMoreWords =
    "SELECT DISTINCT kind FROM joint WHERE job = ?1 "
    "UNION ALL SELECT material || char(10) || note || char(10) || iif(permanent, '', 'temporary') "
    "FROM repair WHERE job = ?1 "
    "UNION ALL SELECT verdict || char(10) || reason FROM judgement WHERE job = ?1 "
    "UNION ALL SELECT 'concession' || char(10) || reason FROM concession WHERE job = ?1 "
    "UNION ALL SELECT 'void' || char(10) || reason FROM void_mark WHERE job = ?1 "
    "UNION ALL SELECT note FROM rise_test WHERE job = ?1 "
    "UNION ALL SELECT 'void' || char(10) || reason FROM measurement_void WHERE job = ?1 "
    "UNION ALL SELECT leak_serial || char(10) || place || char(10) || note FROM calibration WHERE job = ?1 "
    "UNION ALL SELECT customer || char(10) || witness || char(10) || procedure || char(10) || excluded "
    "|| char(10) || limit_agreed_by || char(10) || detector FROM setup WHERE job = ?1 "
    "UNION ALL SELECT text FROM review WHERE job = ?1 "
    // At a point, beyond its value; most readings have nothing of it.
    "UNION ALL SELECT DISTINCT iif(outcome IN ('value', 'no response'), '', outcome) || char(10) || "
    "iif(condition = 'at rest', '', condition) || char(10) || reason || char(10) || remark FROM reading "
    "WHERE job = ?1";

/// One reading of these, found by its key.
constexpr const char* kReadingWords =
    "SELECT by || char(10) || iif(outcome IN ('value', 'no response'), '', outcome) || char(10) || "
    "iif(condition = 'at rest', '', condition) || char(10) || reason || char(10) || remark FROM reading "
    "WHERE job = ?1 AND sequence = ?2";

/// Counts what lists hold; raised when they get words that they did not have.
constexpr int kListVersion = 3;
constexpr const char* kListSetting = "search list";

/// The lines of `text` that the job's list does not have, each with a line's end before it; none when the
/// list itself is not there.
std::optional<std::string> missingLines(KeptStatements& in, JobKey key, const std::string& text)
{
    std::string missing;
    std::istringstream lines(folded(text));
    for (std::string line; std::getline(lines, line);) {
        if (line.empty() || (missing + '\n').find('\n' + line + '\n') != std::string::npos)
            continue;
        const auto known = in.lease("SELECT instr(words, ?) FROM job_summary WHERE job = ?");
        known->bind(1, line);
        known->bind(2, key);
        if (!known->executeStep())
            return std::nullopt;
        if (known->getColumn(0).getInt() == 0)
            missing += '\n' + line;
    }
    return missing;
}

/// The words of the job's record as they were written, a line each; some are empty.
std::vector<std::string> recordLines(SQLite::Database& database, JobKey key, SearchWords which)
{
    std::vector<std::string> lines;
    for (const char* part : {kWords, kMoreWords}) {
        if (part == kMoreWords && which == SearchWords::Least)
            break;
        SQLite::Statement select(database, part);
        select.bind(1, key);
        while (select.executeStep()) {
            const std::string text = select.getColumn(0).getString();
            std::size_t from = 0;
            for (std::size_t to = 0; to != std::string::npos; from = to + 1) {
                to = text.find('\n', from);
                lines.push_back(text.substr(from, to == std::string::npos ? to : to - from));
            }
        }
    }
    return lines;
}

/// For each word not seen yet the line that has it and most of the others, the first of those; none where a
/// word stands in no line.
/// @param plain  the lines, folded
std::optional<std::vector<std::string>> linesWithEach(const std::vector<std::string>& words,
                                                      const std::vector<std::string>& lines,
                                                      const std::vector<std::string>& plain)
{
    std::vector<std::string> found;
    std::string seen;
    const auto has = [](const std::string& line, const std::string& word) {
        return line.find(word) != std::string::npos;
    };
    for (const std::string& word : words) {
        if (has(seen, word))
            continue;
        std::size_t best = plain.size();
        std::ptrdiff_t most = 0;
        for (std::size_t i = 0; i < plain.size(); ++i) {
            if (!has(plain[i], word))
                continue;
            const auto count = std::count_if(words.begin(), words.end(),
                                             [&](const std::string& each) { return has(plain[i], each); });
            if (count > most) {
                most = count;
                best = i;
            }
        }
        if (best == plain.size())
            return std::nullopt;
        seen += plain[best] + '\n';
        found.push_back(lines[best]);
    }
    return found;
}

void makeAllAnew(SQLite::Database& database)
{
    std::vector<JobKey> jobs;
    {
        SQLite::Statement select(database, "SELECT id FROM job");
        while (select.executeStep())
            jobs.push_back(select.getColumn(0).getInt64());
    }
    database.exec("DELETE FROM job_summary");
    for (const JobKey job : jobs)
        refreshSummary(database, job);
    putSettingRow(database, kListSetting, std::to_string(kListVersion));
}

bool isOfToday(SQLite::Database& database)
{
    SQLite::Statement select(database, "SELECT value FROM setting WHERE name = ?");
    select.bind(1, kListSetting);
    return select.executeStep() && select.getColumn(0).getString() >= std::to_string(kListVersion);
}

} // namespace

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

Result<std::vector<std::string>> HistoryStore::foundIn(const JobRow& row,
                                                       const std::vector<std::string>& typed) const
{
    using Lines = std::vector<std::string>;
    const std::string shown =
        folded("job " + std::to_string(row.number) + '\n' + row.objectName + '\n' + row.objectTag + '\n' +
               row.purpose + '\n' + row.opened.date() + '\n' + std::string(model::name(row.state)));
    std::vector<std::vector<std::string>> ways;
    for (const std::string& way : typed) {
        std::vector<std::string> words = typedWords(way);
        std::erase_if(words, [&](const std::string& word) { return shown.find(word) != std::string::npos; });
        if (words.empty())
            return Lines();
        ways.push_back(std::move(words));
    }
    if (ways.empty())
        return Lines();
    return m_connection->read([&]() -> Result<Lines> {
        const JobKey key = m_connection->head(row.id).key;
        const Lines lines = recordLines(m_connection->database, key, SearchWords::All);
        Lines plain(lines.size());
        std::transform(lines.begin(), lines.end(), plain.begin(),
                       [](const std::string& line) { return folded(line); });
        for (const std::vector<std::string>& words : ways)
            if (auto found = linesWithEach(words, lines, plain))
                return std::move(*found);
        return Lines();
    });
}

std::string searchWords(SQLite::Database& database, JobKey key, SearchWords which)
{
    std::string words;
    for (const std::string& line : recordLines(database, key, which))
        words += line + '\n';
    {
        SQLite::Statement select(database, "SELECT opened, opened_offset FROM job WHERE id = ?");
        select.bind(1, key);
        if (select.executeStep()) {
            Timestamp opened;
            ColumnReader read(select);
            read("opened", opened);
            words += opened.date();
        }
    }
    return folded(words);
}

void addWords(KeptStatements& in, JobKey key, const std::string& text)
{
    const auto missing = missingLines(in, key, text);
    if (!missing) {
        refreshSummary(in.database(), key);
        return;
    }
    if (missing->empty())
        return;
    const auto put = in.lease("UPDATE job_summary SET words = words || ? WHERE job = ?");
    put->bind(1, *missing);
    put->bind(2, key);
    put->exec();
}

void addReadingToSummary(KeptStatements& in, JobKey key, std::int64_t sequence)
{
    std::string text;
    {
        const auto select = in.lease(kReadingWords);
        select->bind(1, key);
        select->bind(2, sequence);
        if (select->executeStep())
            text = select->getColumn(0).getString();
    }
    const auto missing = missingLines(in, key, text);
    if (!missing) {
        refreshSummary(in.database(), key);
        return;
    }
    const auto put =
        in.lease("UPDATE job_summary SET readings = readings + 1, words = words || ? WHERE job = ?");
    put->bind(1, *missing);
    put->bind(2, key);
    put->exec();
}

void bringSearchListUpToDate(SQLite::Database& database, const std::filesystem::path& file)
{
    static_cast<void>(guarded(file, [&]() -> Status {
        if (isOfToday(database))
            return {};
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        makeAllAnew(database);
        transaction.commit();
        return {};
    }));
}

Status makeSearchListAnew(const std::filesystem::path& file)
{
    {
        auto store = HistoryStore::open(file, HistoryStore::Mode::ReadWrite);
        if (!store)
            return fail(store.error());
        if (const Status asked = store->putSetting(kListSetting, "0"); !asked)
            return asked;
    }
    const auto store = HistoryStore::open(file, HistoryStore::Mode::ReadWrite);
    if (!store)
        return fail(store.error());
    const auto done = store->setting(kListSetting);
    if (!done)
        return fail(done.error());
    return *done == std::to_string(kListVersion)
               ? Status()
               : Status(fail(ErrorCode::Busy, file.string() + ": another program writes to it; try again"));
}

void refreshSummary(SQLite::Database& database, JobKey key)
{
    SQLite::Statement put(
        database, "INSERT INTO job_summary (job, points, readings, words) VALUES (?1, "
                  "(SELECT count(*) FROM point WHERE job = ?1 AND NOT retired), "
                  "(SELECT count(*) FROM reading WHERE job = ?1), ?2) ON CONFLICT (job) DO UPDATE SET "
                  "points = excluded.points, readings = excluded.readings, words = excluded.words");
    put.bind(1, key);
    put.bind(2, searchWords(database, key, SearchWords::All));
    put.exec();
}

} // namespace sealwalk::storage
