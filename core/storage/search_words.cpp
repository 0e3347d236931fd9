// SPDX-License-Identifier: GPL-3.0-or-later
// The words a job is found by, folded to lower case. A plain text column: at 5,000 jobs it is searched in a
// few milliseconds (tests/bench), and it finds parts of words, which people type.
#include "core/storage/connection.h"

namespace sealwalk::storage {
namespace {

/// Everything that is found by typing, a line each; ?1 is the job.
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

} // namespace

std::string searchWords(SQLite::Database& database, JobKey key)
{
    std::string words;
    {
        SQLite::Statement select(database, kWords);
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
    put.bind(2, searchWords(database, key));
    put.exec();
}

} // namespace sealwalk::storage
