// SPDX-License-Identifier: GPL-3.0-or-later
// The words a job is found by, folded to lower case. A plain text column: at 5,000 jobs it is searched in a
// few milliseconds (tests/bench), and it finds parts of words, which people type.
#include "core/storage/connection.h"

#include <cstdint>
#include <string_view>

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

struct Decoded
{
    std::uint32_t code = 0;
    std::size_t length = 1;
    bool valid = false;
};

/// The character at the front; what is not UTF-8 is taken byte by byte and left alone.
Decoded decode(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const auto continues = [&](std::size_t i) { return i < text.size() && (byte(i) & 0xC0U) == 0x80U; };
    if (byte(0) < 0x80U)
        return {byte(0), 1, true};
    if ((byte(0) & 0xE0U) == 0xC0U && continues(1))
        return {((byte(0) & 0x1FU) << 6U) | (byte(1) & 0x3FU), 2, true};
    return {};
}

bool within(std::uint32_t code, std::uint32_t first, std::uint32_t last)
{
    return code >= first && code <= last;
}

/// Lower case of the letters below U+0460, by the ranges of the Unicode charts.
std::uint32_t lower(std::uint32_t c)
{
    if (within(c, 'A', 'Z') || (within(c, 0xC0, 0xDE) && c != 0xD7))
        return c + 32;
    if (c == 0x178)
        return 0xFF;
    if (within(c, 0x139, 0x148) || within(c, 0x179, 0x17E))
        return c % 2 == 1 ? c + 1 : c;
    if ((within(c, 0x100, 0x137) && !within(c, 0x130, 0x131)) || within(c, 0x14A, 0x177))
        return c % 2 == 0 ? c + 1 : c;
    if (within(c, 0x391, 0x3AB) || within(c, 0x410, 0x42F))
        return c + 32;
    if (c == 0x386)
        return 0x3AC;
    if (within(c, 0x388, 0x38A))
        return c + 37;
    if (c == 0x38C)
        return 0x3CC;
    if (within(c, 0x38E, 0x38F))
        return c + 63;
    if (within(c, 0x400, 0x40F))
        return c + 80;
    return c;
}

} // namespace

std::string folded(std::string_view text)
{
    std::string result;
    result.reserve(text.size());
    while (!text.empty()) {
        const Decoded d = decode(text);
        if (!d.valid) {
            result += text.front();
        } else if (const std::uint32_t c = lower(d.code); c < 0x80U) {
            result += static_cast<char>(c);
        } else {
            result += static_cast<char>(0xC0U | (c >> 6U));
            result += static_cast<char>(0x80U | (c & 0x3FU));
        }
        text.remove_prefix(d.length);
    }
    return result;
}

void refreshSummary(SQLite::Database& database, JobKey key)
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
    SQLite::Statement put(
        database, "INSERT INTO job_summary (job, points, readings, words) VALUES (?1, "
                  "(SELECT count(*) FROM point WHERE job = ?1 AND NOT retired), "
                  "(SELECT count(*) FROM reading WHERE job = ?1), ?2) ON CONFLICT (job) DO UPDATE SET "
                  "points = excluded.points, readings = excluded.readings, words = excluded.words");
    put.bind(1, key);
    put.bind(2, folded(words));
    put.exec();
}

} // namespace sealwalk::storage
