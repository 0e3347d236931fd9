// SPDX-License-Identifier: GPL-3.0-or-later
// INSERT, UPDATE and SELECT made from the one description of a record's columns.
#pragma once

#include "core/storage/columns.h"
#include "core/storage/rows.h"

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::storage {

/// The key of a job within its file.
using JobKey = std::int64_t;

template <class T>
std::vector<std::string> columnNames()
{
    ColumnNames collector;
    T sample;
    Rows<T>::fields(collector, sample);
    return collector.names;
}

/// "a, b, c" with `between`, each wrapped as `before` + name + `after`.
inline std::string joined(const std::vector<std::string>& names, const std::string& after = {})
{
    std::string result;
    for (const std::string& name : names)
        result += (result.empty() ? "" : ", ") + name + after;
    return result;
}

/// "INSERT INTO reading (job, …) VALUES (?, …)".
template <class T>
const std::string& insertSql()
{
    static const std::string sql = [] {
        const std::vector<std::string> names = columnNames<T>();
        std::string marks = "?";
        for (std::size_t i = 0; i < names.size(); ++i)
            marks += ", ?";
        return std::string("INSERT INTO ") + Rows<T>::table + " (job, " + joined(names) + ") VALUES (" +
               marks + ")";
    }();
    return sql;
}

/// Inserts a record of the job by a statement of `insertSql`.
template <class T>
void insertWith(SQLite::Statement& insert, JobKey job, const T& record)
{
    insert.bind(1, job);
    ColumnBinder binder(insert, 2);
    Rows<T>::fields(binder, record);
    insert.exec();
}

/// Inserts records of the job, in their order.
template <class T>
void insertRows(SQLite::Database& database, JobKey job, const std::vector<T>& records)
{
    if (records.empty())
        return;
    SQLite::Statement insert(database, insertSql<T>());
    for (const T& record : records) {
        insertWith(insert, job, record);
        insert.reset();
    }
}

/// Inserts one record of the job.
template <class T>
void insertRow(SQLite::Database& database, JobKey job, const T& record)
{
    insertRows(database, job, std::vector<T>{record});
}

/// Overwrites the record of the job that has the same uuid. @return whether there is one
template <class T>
bool updateRow(SQLite::Database& database, JobKey job, const T& record)
{
    SQLite::Statement update(database, std::string("UPDATE ") + Rows<T>::table + " SET " +
                                           joined(columnNames<T>(), " = ?") + " WHERE job = ? AND uuid = ?");
    ColumnBinder binder(update);
    Rows<T>::fields(binder, record);
    ColumnBinder where(update, binder.next());
    where("job", job);
    where("uuid", record.id);
    return update.exec() > 0;
}

/// The records of a job, those that match `condition` ("AND sequence > 12") only.
template <class T>
std::vector<T> loadRows(SQLite::Database& database, JobKey job, const std::string& condition = {})
{
    SQLite::Statement select(database, "SELECT " + joined(columnNames<T>()) + " FROM " + Rows<T>::table +
                                           " WHERE job = ? " + condition + " ORDER BY " + Rows<T>::order);
    select.bind(1, job);
    std::vector<T> records;
    while (select.executeStep()) {
        ColumnReader reader(select);
        Rows<T>::fields(reader, records.emplace_back());
    }
    return records;
}

} // namespace sealwalk::storage
