// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table.h"

#include "core/base/utf8.h"
#include "core/exchange/canonical_json.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <set>

namespace sealwalk::exchange {

std::string heading(const TableColumn& column)
{
    return column.unit.empty() ? column.title : column.title + " (" + column.unit + ")";
}

std::string tableNumber(double number, CellKind kind)
{
    // A unit's factor leaves dust in the last digits (3.2000000000000003e-7), and no rate is known to four.
    const int digits = kind == CellKind::Rate ? 4 : 6;
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                   std::chars_format::scientific, digits - 1)
                         .ptr;
    double rounded = 0.0;
    std::from_chars(buffer.data(), end, rounded);
    if (kind != CellKind::Rate || rounded == 0.0)
        return ecmaScriptNumber(rounded);
    // A column of rates reads best when each one shows its power of ten.
    const auto shortest =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), rounded, std::chars_format::scientific)
            .ptr;
    const std::string_view text(buffer.data(), static_cast<std::size_t>(shortest - buffer.data()));
    const std::size_t e = text.find('e');
    const char* digitsOfPower = text.data() + e + (text[e + 1] == '+' ? 2 : 1);
    int power = 0;
    std::from_chars(digitsOfPower, shortest, power);
    return fmt::format("{}e{}", text.substr(0, e), power);
}

Status checkTable(const Table& table)
{
    constexpr std::size_t kLongestTitle = 31;
    const auto refuse = [&](const std::string& why) {
        return fail(ErrorCode::BadInput, "table \"" + table.title + "\": " + why);
    };
    if (table.title.empty() || table.title.size() > kLongestTitle ||
        table.title.find_first_of("[]:*?/\\") != std::string::npos || !isUtf8(table.title))
        return refuse("a title has 1 to 31 characters and none of []:*?/\\");
    if (table.columns.empty())
        return refuse("it has no columns");
    std::set<std::string> headings;
    for (const TableColumn& column : table.columns)
        if (!isUtf8(heading(column)) || !headings.insert(heading(column)).second)
            return refuse("the heading \"" + heading(column) + "\" is there twice");
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        const auto& cells = table.rows[r].cells;
        if (cells.size() != table.columns.size())
            return refuse(
                fmt::format("row {} has {} cells for {} columns", r + 1, cells.size(), table.columns.size()));
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::string place = fmt::format("row {}, {}", r + 1, table.columns[c].title);
            const auto* number = std::get_if<double>(&cells[c]);
            const auto* text = std::get_if<std::string>(&cells[c]);
            if (number != nullptr && (!std::isfinite(*number) || table.columns[c].kind == CellKind::Text ||
                                      table.columns[c].kind == CellKind::Moment))
                return refuse(place + ": a finite number in a column of numbers is right");
            if (std::holds_alternative<Timestamp>(cells[c]) && table.columns[c].kind != CellKind::Moment)
                return refuse(place + ": a time in a column of times is right");
            if (text != nullptr && (!isUtf8(*text) || table.columns[c].kind != CellKind::Text))
                return refuse(place + ": UTF-8 text in a column of text is right");
        }
    }
    for (const Highlight& highlight : table.highlights)
        if (highlight.column >= table.columns.size())
            return refuse("a highlight names a column that is not there");
    return {};
}

} // namespace sealwalk::exchange
