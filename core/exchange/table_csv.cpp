// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_csv.h"

namespace sealwalk::exchange {

std::string neverFormula(std::string text)
{
    if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos)
        text.insert(text.begin(), '\'');
    return text;
}

namespace {

std::string field(const std::string& text)
{
    std::string safe = neverFormula(text);
    if (safe.find_first_of(",\"\r\n") == std::string::npos)
        return safe;
    std::string quoted = "\"";
    for (const char c : safe) {
        if (c == '"')
            quoted.push_back('"');
        quoted.push_back(c);
    }
    return quoted + "\"";
}

std::string field(const TableCell& cell, CellKind kind)
{
    if (const auto* number = std::get_if<double>(&cell))
        return tableNumber(*number, kind);
    if (const auto* text = std::get_if<std::string>(&cell))
        return field(*text);
    if (const auto* moment = std::get_if<Timestamp>(&cell))
        return moment->text();
    return {};
}

} // namespace

Result<std::string> csvOf(const Table& table)
{
    if (const Status right = checkTable(table); !right)
        return fail(right.error());
    std::string out;
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        out += (c > 0 ? "," : "") + field(heading(table.columns[c]));
    out += "\r\n";
    for (const TableRow& row : table.rows) {
        // A row of one empty cell would be an empty line, which readers skip.
        if (row.cells.size() == 1 && field(row.cells[0], table.columns[0].kind).empty()) {
            out += "\"\"\r\n";
            continue;
        }
        for (std::size_t c = 0; c < row.cells.size(); ++c)
            out += (c > 0 ? "," : "") + field(row.cells[c], table.columns[c].kind);
        out += "\r\n";
    }
    return out;
}

} // namespace sealwalk::exchange
