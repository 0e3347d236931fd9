// SPDX-License-Identifier: GPL-3.0-or-later
// One description of a record's columns serves its INSERT, UPDATE and SELECT: ColumnNames, ColumnBinder and
// ColumnReader walk the same list of fields (rows.h) in the same order.
#pragma once

#include "core/base/timestamp.h"
#include "core/base/utf8.h"
#include "core/base/uuid.h"
#include "core/geometry/shape.h"
#include "core/model/enum_names.h"
#include "core/quantities/kinds.h"
#include "core/storage/packing.h"
#include "core/storage/shape_text.h"
#include "core/storage/sqlite_errors.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace sealwalk::storage {

template <class T>
struct IsOptional : std::false_type
{};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type
{
    using Value = T;
};

/// A time takes two columns: the moment and the offset of the wall clock.
template <class T>
constexpr bool kTakesTwoColumns = std::is_same_v<std::remove_cvref_t<T>, Timestamp> ||
                                  std::is_same_v<std::remove_cvref_t<T>, std::optional<Timestamp>>;

/// Collects the names of the columns.
class ColumnNames
{
public:
    template <class T>
    void operator()(const char* name, const T&)
    {
        names.emplace_back(name);
        if constexpr (kTakesTwoColumns<T>)
            names.push_back(std::string(name) + "_offset");
    }

    std::vector<std::string> names;
};

/// Binds a record's fields to the parameters of a statement, from `first` on.
class ColumnBinder
{
public:
    explicit ColumnBinder(SQLite::Statement& statement, int first = 1)
        : m_statement(statement)
        , m_next(first)
    {}

    template <class T>
    void operator()(const char* name, const T& value)
    {
        m_name = name;
        put(value);
    }

    [[nodiscard]] int next() const { return m_next; }

private:
    void put(const std::string& text)
    {
        // Such bytes could be stored, but a job with them can never be signed or written as a job file.
        if (!isUtf8(text))
            throw Refusal(ErrorCode::BadInput,
                          std::string("the text to store as ") + m_name + " is not UTF-8; give it in UTF-8");
        m_statement.bind(m_next++, text);
    }
    void put(bool value) { m_statement.bind(m_next++, static_cast<std::int32_t>(value)); }
    void put(int value) { m_statement.bind(m_next++, static_cast<std::int32_t>(value)); }
    void put(std::int64_t value) { m_statement.bind(m_next++, value); }
    void put(double value)
    {
        // SQLite would quietly store NaN as "none".
        if (!std::isfinite(value))
            throw Refusal(ErrorCode::BadInput,
                          std::string("the ") + m_name + " to store is not a finite number");
        m_statement.bind(m_next++, value);
    }
    template <class Tag>
    void put(const Quantity<Tag>& quantity)
    {
        put(quantity.si());
    }
    template <class Tag, class Difference>
    void put(const QuantityPoint<Tag, Difference>& quantity)
    {
        put(quantity.si());
    }
    template <class Tag>
    void put(const Id<Tag>& id)
    {
        std::string bytes;
        packUuid(bytes, id.uuid());
        putBlob(bytes);
    }
    template <class E>
    requires std::is_enum_v<E>
    void put(E value) { put(std::string(model::name(value))); }
    void put(const Timestamp& at)
    {
        put(at.utcMilliseconds);
        put(at.offsetMinutes);
    }
    template <class T>
    void put(const std::optional<T>& value)
    {
        if (value) {
            put(*value);
            return;
        }
        m_statement.bind(m_next++);
        if constexpr (kTakesTwoColumns<T>)
            m_statement.bind(m_next++);
    }
    void put(const std::vector<double>& values)
    {
        for (const double value : values)
            if (!std::isfinite(value))
                throw Refusal(ErrorCode::BadInput,
                              std::string("the ") + m_name + " to store hold a number that is not finite");
        putBlob(packDoubles(values));
    }
    template <class Tag>
    void put(const std::vector<Quantity<Tag>>& quantities)
    {
        std::vector<double> values;
        values.reserve(quantities.size());
        for (const Quantity<Tag>& quantity : quantities)
            values.push_back(quantity.si());
        put(values);
    }
    template <class Tag>
    void put(const std::vector<Id<Tag>>& ids)
    {
        std::string bytes;
        for (const Id<Tag>& id : ids)
            packUuid(bytes, id.uuid());
        putBlob(bytes);
    }
    void put(const std::vector<std::string>& lines) { put(packLines(lines)); }
    void put(const geometry::Shape& shape) { put(shapeText(shape)); }
    void put(const std::vector<geometry::FreePath>& outlines) { put(outlinesText(outlines)); }

    void putBlob(const std::string& bytes)
    {
        m_statement.bind(m_next++, static_cast<const void*>(bytes.data()), static_cast<int>(bytes.size()));
    }

    SQLite::Statement& m_statement;
    const char* m_name = "";
    int m_next;
};

/// Reads a record's fields from the columns of a row, from `first` on.
class ColumnReader
{
public:
    explicit ColumnReader(SQLite::Statement& statement, int first = 0)
        : m_statement(statement)
        , m_next(first)
    {}

    template <class T>
    void operator()(const char*, T& value)
    {
        take(value);
    }

private:
    SQLite::Column column() { return m_statement.getColumn(m_next++); }

    std::string bytes()
    {
        const SQLite::Column c = column();
        const void* data = c.getBlob();
        return data == nullptr
                   ? std::string{}
                   : std::string(static_cast<const char*>(data), static_cast<std::size_t>(c.getBytes()));
    }

    void take(std::string& text) { text = bytes(); }
    void take(bool& value)
    {
        const std::int64_t stored = column().getInt64();
        if (stored != 0 && stored != 1)
            throw Refusal(ErrorCode::DamagedFile, "a yes or no in the history is neither");
        value = stored == 1;
    }
    void take(std::int64_t& value) { value = column().getInt64(); }
    void take(int& value)
    {
        const std::int64_t wide = column().getInt64();
        if (wide < std::numeric_limits<int>::min() || wide > std::numeric_limits<int>::max())
            throw Refusal(ErrorCode::DamagedFile, "a whole number in the history is out of range");
        value = static_cast<int>(wide);
    }
    void take(double& value) { value = column().getDouble(); }
    template <class Tag>
    void take(Quantity<Tag>& quantity)
    {
        quantity = Quantity<Tag>::fromSi(column().getDouble());
    }
    template <class Tag, class Difference>
    void take(QuantityPoint<Tag, Difference>& quantity)
    {
        quantity = QuantityPoint<Tag, Difference>::fromSi(column().getDouble());
    }
    template <class Tag>
    void take(Id<Tag>& id)
    {
        id = Id<Tag>(unpackUuid(bytes()));
    }
    template <class E>
    requires std::is_enum_v<E>
    void take(E& value)
    {
        const Result<E> known = model::fromName<E>(bytes());
        if (!known)
            throw Refusal(ErrorCode::DamagedFile, "in the history, " + known.error().message);
        value = *known;
    }
    void take(Timestamp& at)
    {
        take(at.utcMilliseconds);
        take(at.offsetMinutes);
    }
    template <class T>
    void take(std::optional<T>& value)
    {
        if (m_statement.isColumnNull(m_next)) {
            value.reset();
            ++m_next;
            if constexpr (kTakesTwoColumns<T>)
                if (!m_statement.isColumnNull(m_next++))
                    throw Refusal(ErrorCode::DamagedFile, "a time in the history has lost its moment");
            return;
        }
        take(value.emplace());
    }
    void take(std::vector<double>& values) { values = unpackDoubles(bytes()); }
    template <class Tag>
    void take(std::vector<Quantity<Tag>>& quantities)
    {
        quantities.clear();
        for (const double value : unpackDoubles(bytes()))
            quantities.push_back(Quantity<Tag>::fromSi(value));
    }
    template <class Tag>
    void take(std::vector<Id<Tag>>& ids)
    {
        constexpr std::size_t kSize = 16;
        const std::string all = bytes();
        ids.clear();
        for (std::size_t at = 0; at < all.size(); at += kSize)
            ids.push_back(Id<Tag>(unpackUuid(std::string_view(all).substr(at, kSize))));
    }
    void take(std::vector<std::string>& lines) { lines = unpackLines(bytes()); }
    void take(geometry::Shape& shape) { shape = shapeFromText(bytes()); }
    void take(std::vector<geometry::FreePath>& outlines) { outlines = outlinesFromText(bytes()); }

    SQLite::Statement& m_statement;
    int m_next;
};

} // namespace sealwalk::storage
