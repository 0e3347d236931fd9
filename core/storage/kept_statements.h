// SPDX-License-Identifier: GPL-3.0-or-later
// Prepared statements kept with their connection: what every reading asks is parsed once, not once a reading.
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <memory>
#include <string>
#include <unordered_map>

namespace sealwalk::storage {

class KeptStatements
{
public:
    /// A statement in use; ready for the next use when this goes.
    class Lease
    {
    public:
        explicit Lease(SQLite::Statement& statement)
            : m_statement(&statement)
        {}
        ~Lease()
        {
            // Never throws: what went wrong was told by the step itself.
            m_statement->tryReset();
        }
        Lease(const Lease&) = delete;
        Lease& operator=(const Lease&) = delete;

        SQLite::Statement& operator*() const { return *m_statement; }
        SQLite::Statement* operator->() const { return m_statement; }

    private:
        SQLite::Statement* m_statement;
    };

    /// @param database outlives this
    explicit KeptStatements(SQLite::Database& database)
        : m_database(database)
    {}

    [[nodiscard]] SQLite::Database& database() const { return m_database; }

    /// The statement of `sql`, not in use elsewhere. Its values of last time are bound still: bind all.
    Lease lease(const std::string& sql)
    {
        auto& kept = m_statements[sql];
        if (!kept)
            kept = std::make_unique<SQLite::Statement>(m_database, sql);
        return Lease(*kept);
    }

private:
    SQLite::Database& m_database;
    std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>> m_statements;
};

} // namespace sealwalk::storage
