// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/object_entries.h"

#include "core/storage/connection.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstring>
#include <optional>
#include <set>

namespace sealwalk::storage {
namespace {

std::optional<std::int64_t> keyOf(SQLite::Database& database, std::string_view uuid)
{
    const auto id = model::ObjectId::parse(uuid);
    if (!id)
        return std::nullopt;
    SQLite::Statement select(database, "SELECT id FROM object WHERE uuid = ?");
    ColumnBinder bind(select);
    bind("uuid", *id);
    return select.executeStep() ? std::optional(select.getColumn(0).getInt64()) : std::nullopt;
}

std::vector<std::pair<std::string, std::string>> linksIn(SQLite::Database& database)
{
    SQLite::Statement select(database, "SELECT name, value FROM setting WHERE name GLOB ? ORDER BY name");
    select.bind(1, std::string(kOneObject) + '*');
    std::vector<std::pair<std::string, std::string>> links;
    while (select.executeStep())
        links.emplace_back(select.getColumn(0).getString().substr(std::strlen(kOneObject)),
                           select.getColumn(1).getString());
    return links;
}

} // namespace

std::string oneObjectSetting(model::ObjectId entry)
{
    return kOneObject + entry.text();
}

ObjectEntries::ObjectEntries(SQLite::Database& database)
{
    for (const auto& [entry, head] : linksIn(database)) {
        if (head.empty())
            continue; // said to be two again
        const auto one = keyOf(database, entry);
        const auto other = keyOf(database, head);
        if (one && other && headOf(*other) != *one) // a ring has no head
            m_under.emplace(*one, *other);
    }
}

std::int64_t ObjectEntries::headOf(std::int64_t entry) const
{
    for (auto link = m_under.find(entry); link != m_under.end(); link = m_under.find(entry))
        entry = link->second;
    return entry;
}

std::vector<std::int64_t> ObjectEntries::entriesOf(std::int64_t entry) const
{
    const std::int64_t head = headOf(entry);
    std::vector<std::int64_t> entries{head};
    for (const auto& [one, under] : m_under)
        if (headOf(one) == head)
            entries.push_back(one);
    return entries;
}

std::vector<std::int64_t> ObjectEntries::directlyUnder(std::int64_t entry) const
{
    std::vector<std::int64_t> found;
    for (const auto& [one, under] : m_under)
        if (under == entry)
            found.push_back(one);
    return found;
}

std::string ObjectEntries::listOf(std::int64_t entry) const
{
    return fmt::format("({})", fmt::join(entriesOf(entry), ", "));
}

std::string ObjectEntries::areOne(const std::string& a, const std::string& b) const
{
    std::vector<std::string> pairs;
    for (const auto& [one, under] : m_under)
        for (const std::int64_t other : entriesOf(one))
            if (other != one) {
                pairs.push_back(fmt::format("({}, {})", one, other));
                pairs.push_back(fmt::format("({}, {})", other, one));
            }
    if (pairs.empty())
        return fmt::format("{} = {}", a, b);
    return fmt::format("{} IN (SELECT {} UNION ALL SELECT column2 FROM (VALUES {}) WHERE column1 = {})", a, b,
                       fmt::join(pairs, ", "), b);
}

} // namespace sealwalk::storage
