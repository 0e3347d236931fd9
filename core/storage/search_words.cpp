// SPDX-License-Identifier: GPL-3.0-or-later
// The words a job is found by, folded to lower case. A plain text column: at 5,000 jobs it is searched in a
// few milliseconds (tests/bench), and it finds parts of words, which people type.
#include "core/storage/connection.h"

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
    // At a point, beyond its value; most readings have nothing of it.
    "UNION ALL SELECT DISTINCT iif(outcome IN ('value', 'no response'), '', outcome) || char(10) || "
    "iif(condition = 'at rest', '', condition) || char(10) || reason || char(10) || remark FROM reading "
    "WHERE job = ?1";

} // namespace

std::string searchWords(SQLite::Database& database, JobKey key, SearchWords which)
{
    std::string words;
    for (const char* part : {kWords, kMoreWords}) {
        if (part == kMoreWords && which == SearchWords::Least)
            break;
        SQLite::Statement select(database, part);
        select.bind(1, key);
        while (select.executeStep())
            words += select.getColumn(0).getString() + '\n';
    }
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
