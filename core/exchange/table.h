// SPDX-License-Identifier: GPL-3.0-or-later
// A table as plain data, for CSV and XLSX; who fills it decides what it says.
#pragma once

#include "core/base/result.h"
#include "core/base/timestamp.h"

#include <string>
#include <variant>
#include <vector>

namespace sealwalk::exchange {

enum class CellKind
{
    Text,
    Whole,  ///< a count or number of a point, without decimals
    Rate,   ///< spans decades: mantissa and power of ten
    Plain,  ///< any other number
    Moment, ///< a time by the clock on the wall; its zone belongs in a column of its own
};

struct TableColumn
{
    std::string title; ///< unique in its table
    std::string unit;  ///< shown in brackets behind the title; empty: none
    CellKind kind = CellKind::Text;
    double width = 12.0; ///< about so many characters
};

/// Empty, text, or a number in the column's unit. A value that is only a bound belongs in a column of its
/// own.
using TableCell = std::variant<std::monostate, std::string, double, Timestamp>;

struct TableRow
{
    std::vector<TableCell> cells; ///< as many as there are columns
};

/// How a cell looks that holds a certain word; the word stays readable without colour.
enum class Shade
{
    Alarm,
    Caution,
    Good,
    Quiet
};

struct Highlight
{
    std::size_t column = 0;
    std::string word;
    Shade shade = Shade::Quiet;
};

struct Table
{
    std::string title;              ///< at most 31 characters, none of []:*?/\ (a spreadsheet's sheet name)
    std::vector<std::string> notes; ///< lines above the table: object, job, limit; not in CSV
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::vector<Highlight> highlights;
};

/// The column's heading: "leak rate (mbar l/s)".
std::string heading(const TableColumn& column);

/// Whether the table keeps the promises above, holds UTF-8 text and finite numbers, and numbers only in
/// columns of numbers. The error names table, row and column.
Status checkTable(const Table& table);

/// Shortest form of `number` rounded to what its kind can carry (rates four significant digits, others six),
/// in the C locale: "3.2e-7", "1013.25"; rates always with their power of ten.
std::string tableNumber(double number, CellKind kind);

} // namespace sealwalk::exchange
