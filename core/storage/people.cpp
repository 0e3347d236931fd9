// SPDX-License-Identifier: GPL-3.0-or-later
// People of the history, and its settings.
#include "core/storage/connection.h"

#include <fmt/format.h>

namespace sealwalk::storage {
namespace {

const std::string& personColumns()
{
    static const std::string columns = joined(columnNames<model::Person>());
    return columns;
}

std::optional<model::Person> stored(SQLite::Database& database, model::PersonId id)
{
    SQLite::Statement select(database, "SELECT " + personColumns() + " FROM person WHERE uuid = ?");
    ColumnBinder bind(select);
    bind("uuid", id);
    if (!select.executeStep())
        return std::nullopt;
    model::Person person;
    ColumnReader read(select);
    Rows<model::Person>::fields(read, person);
    return person;
}

void write(SQLite::Database& database, const model::Person& person, bool isNew)
{
    const std::vector<std::string> names = columnNames<model::Person>();
    std::string marks;
    for (std::size_t i = 0; i < names.size(); ++i)
        marks += marks.empty() ? "?" : ", ?";
    SQLite::Statement statement(database,
                                isNew ? "INSERT INTO person (" + personColumns() + ") VALUES (" + marks + ")"
                                      : "UPDATE person SET " + joined(names, " = ?") + " WHERE uuid = ?");
    ColumnBinder bind(statement);
    Rows<model::Person>::fields(bind, person);
    if (!isNew)
        bind("uuid", person.id);
    statement.exec();
}

/// What changed, in words of the record; nothing when only spelling or qualification did.
std::vector<std::string> changesOf(const std::optional<model::Person>& before, const model::Person& now)
{
    if (!before)
        return {std::string(model::kPersonAdded)};
    std::vector<std::string> changes;
    if (before->active != now.active)
        changes.emplace_back(now.active ? "came back" : "left");
    if (before->name != now.name)
        changes.push_back("named " + now.name + " instead of " + before->name);
    if (before->role != now.role)
        changes.push_back("role " + now.role + " instead of " + before->role);
    if (before->publicKey != now.publicKey)
        changes.emplace_back("got a signing key");
    else if (before->sealedKey != now.sealedKey)
        changes.emplace_back("new passphrase");
    return changes;
}

void note(SQLite::Database& database, const model::PersonEntry& entry)
{
    static const std::vector<std::string> names = columnNames<model::PersonEntry>();
    std::string marks;
    for (std::size_t i = 0; i < names.size(); ++i)
        marks += marks.empty() ? "?" : ", ?";
    SQLite::Statement insert(database,
                             "INSERT INTO person_entry (" + joined(names) + ") VALUES (" + marks + ")");
    ColumnBinder bind(insert);
    Rows<model::PersonEntry>::fields(bind, entry);
    insert.exec();
}

} // namespace

Result<std::vector<model::Person>> HistoryStore::people() const
{
    return m_connection->read([&]() -> Result<std::vector<model::Person>> {
        SQLite::Statement select(m_connection->database,
                                 "SELECT " + personColumns() + " FROM person ORDER BY name, id");
        std::vector<model::Person> people;
        while (select.executeStep()) {
            ColumnReader read(select);
            Rows<model::Person>::fields(read, people.emplace_back());
        }
        return people;
    });
}

Result<std::vector<model::PersonEntry>> HistoryStore::personEntries() const
{
    return m_connection->read([&]() -> Result<std::vector<model::PersonEntry>> {
        SQLite::Statement select(m_connection->database,
                                 "SELECT " + joined(columnNames<model::PersonEntry>()) +
                                     " FROM person_entry ORDER BY " + Rows<model::PersonEntry>::order);
        std::vector<model::PersonEntry> entries;
        while (select.executeStep()) {
            ColumnReader read(select);
            Rows<model::PersonEntry>::fields(read, entries.emplace_back());
        }
        return entries;
    });
}

Status HistoryStore::putPerson(const model::Person& person, const std::string& by)
{
    return m_connection->write([&]() -> Status {
        if (person.id.isNil() || person.name.empty())
            return fail(ErrorCode::BadInput, "a person needs a name");
        const std::optional<model::Person> before = stored(m_connection->database, person.id);
        // A new key under an old name would make what was signed before look forged.
        if (before && !before->publicKey.empty() && before->publicKey != person.publicKey)
            return fail(
                ErrorCode::Conflict,
                fmt::format(
                    "{} has a signing key already; to sign with another one, add the person anew under "
                    "a name that tells the two apart",
                    before->name));
        write(m_connection->database, person, !before);
        const Timestamp at = !before && person.since.isSet() ? person.since : Timestamp::now();
        for (const std::string& change : changesOf(before, person))
            note(m_connection->database, {person.id, change, by, at});
        return {};
    });
}

Result<std::string> HistoryStore::setting(const std::string& name) const
{
    return m_connection->read([&]() -> Result<std::string> {
        SQLite::Statement select(m_connection->database, "SELECT value FROM setting WHERE name = ?");
        select.bind(1, name);
        return select.executeStep() ? select.getColumn(0).getString() : std::string{};
    });
}

Result<std::map<std::string, std::string>> HistoryStore::settingsNamed(const std::string& beginning) const
{
    return m_connection->read([&]() -> Result<std::map<std::string, std::string>> {
        SQLite::Statement select(m_connection->database,
                                 "SELECT name, value FROM setting WHERE substr(name, 1, length(?1)) = ?1");
        select.bind(1, beginning);
        std::map<std::string, std::string> settings;
        while (select.executeStep())
            settings[select.getColumn(0).getString()] = select.getColumn(1).getString();
        return settings;
    });
}

Status HistoryStore::putSetting(const std::string& name, const std::string& value)
{
    return m_connection->write([&]() -> Status {
        putSettingRow(m_connection->database, name, value);
        return {};
    });
}

void putSettingRow(SQLite::Database& database, const std::string& name, const std::string& value)
{
    SQLite::Statement put(database, "INSERT INTO setting (name, value) VALUES (?, ?) "
                                    "ON CONFLICT (name) DO UPDATE SET value = excluded.value");
    put.bind(1, name);
    put.bind(2, value);
    put.exec();
}

} // namespace sealwalk::storage
