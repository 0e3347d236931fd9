// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_xlsx.h"

#include "core/base/partial_file.h"
#include "core/base/uuid.h"
#include "core/exchange/files.h"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <memory>
#include <set>
#include <string>

namespace sealwalk::exchange {

namespace {

constexpr std::size_t kMostRows = 1'048'000;
constexpr std::size_t kLongestText = 32'767;

struct Formats
{
    lxw_format* title = nullptr;
    lxw_format* whole = nullptr;
    lxw_format* rate = nullptr;
    lxw_format* plain = nullptr;
    lxw_format* text = nullptr;
    lxw_format* moment = nullptr;
    std::array<lxw_format*, 4> shades{}; ///< in the order of Shade

    [[nodiscard]] lxw_format* of(CellKind kind) const
    {
        switch (kind) {
        case CellKind::Whole:
            return whole;
        case CellKind::Rate:
            return rate;
        case CellKind::Plain:
            return plain;
        case CellKind::Moment:
            return moment;
        case CellKind::Text:
            break;
        }
        return text;
    }
};

lxw_format* numberFormat(lxw_workbook* book, const char* pattern)
{
    lxw_format* format = workbook_add_format(book);
    format_set_num_format(format, pattern);
    format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
    return format;
}

lxw_format* shadeFormat(lxw_workbook* book, lxw_color_t fill, lxw_color_t font)
{
    lxw_format* format = workbook_add_format(book);
    format_set_bg_color(format, fill);
    format_set_font_color(format, font);
    return format;
}

Formats makeFormats(lxw_workbook* book)
{
    Formats formats;
    formats.title = workbook_add_format(book);
    format_set_bold(formats.title);
    format_set_font_size(formats.title, 14);
    formats.whole = numberFormat(book, "0");
    formats.rate = numberFormat(book, "0.0E+00");
    formats.plain = numberFormat(book, "0.0##");
    formats.moment = numberFormat(book, "yyyy\\-mm\\-dd\\ hh:mm:ss");
    formats.text = workbook_add_format(book);
    format_set_text_wrap(formats.text);
    format_set_align(formats.text, LXW_ALIGN_VERTICAL_TOP);
    formats.shades = {shadeFormat(book, 0xF6C9C2, 0x7A1D10), shadeFormat(book, 0xFBE7B2, 0x614700),
                      shadeFormat(book, 0xCDE8D8, 0x14512F), shadeFormat(book, 0xE3E6EA, 0x4A5260)};
    return formats;
}

/// Days since 1899-12-30, of the clock on the wall: what spreadsheets count time in.
double spreadsheetDay(const Timestamp& at)
{
    constexpr double kDayOfEpoch = 25569.0; // 1970-01-01
    constexpr double kSecondsPerDay = 86'400.0;
    const auto seconds = static_cast<double>(at.utcMilliseconds / 1000 + std::int64_t{60} * at.offsetMinutes);
    return kDayOfEpoch + seconds / kSecondsPerDay;
}

/// Without the last digits that units leave behind: 12.02, not 12.01999999999998.
double readable(double number)
{
    constexpr int kDigits = 12; // far finer than any reading
    if (number == 0.0 || !std::isfinite(number))
        return number;
    return std::stod(fmt::format("{:.{}g}", number, kDigits));
}

void writeRows(lxw_worksheet* sheet, const Table& table, const Formats& formats, lxw_row_t first)
{
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const TableCell& cell = table.rows[r].cells[c];
            const auto row = static_cast<lxw_row_t>(first + r);
            const auto column = static_cast<lxw_col_t>(c);
            lxw_format* format = formats.of(table.columns[c].kind);
            if (const auto* number = std::get_if<double>(&cell))
                worksheet_write_number(sheet, row, column, readable(*number), format);
            else if (const auto* text = std::get_if<std::string>(&cell))
                worksheet_write_string(sheet, row, column, text->c_str(), format);
            else if (const auto* moment = std::get_if<Timestamp>(&cell))
                worksheet_write_number(sheet, row, column, spreadsheetDay(*moment), format);
        }
    }
}

void addTable(lxw_worksheet* sheet, const Table& table, const Formats& formats, lxw_row_t headRow,
              lxw_row_t lastRow)
{
    std::vector<std::string> headings;
    std::vector<lxw_table_column> columns(table.columns.size());
    std::vector<lxw_table_column*> pointers;
    headings.reserve(table.columns.size());
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        headings.push_back(heading(table.columns[c]));
        columns[c].header = headings.back().data();
        columns[c].format = formats.of(table.columns[c].kind);
        pointers.push_back(&columns[c]);
    }
    pointers.push_back(nullptr);
    lxw_table_options options{};
    options.style_type = LXW_TABLE_STYLE_TYPE_LIGHT;
    options.style_type_number = 1;
    options.columns = pointers.data();
    worksheet_add_table(sheet, headRow, 0, lastRow, static_cast<lxw_col_t>(table.columns.size() - 1),
                        &options);
}

void addHighlights(lxw_worksheet* sheet, const Table& table, const Formats& formats, lxw_row_t firstRow,
                   lxw_row_t lastRow)
{
    for (const Highlight& highlight : table.highlights) {
        std::string doubled;
        for (const char c : highlight.word)
            doubled += c == '"' ? "\"\"" : std::string(1, c);
        std::string word = "\"" + doubled + "\"";
        lxw_conditional_format rule{};
        rule.type = LXW_CONDITIONAL_TYPE_CELL;
        rule.criteria = LXW_CONDITIONAL_CRITERIA_EQUAL_TO;
        rule.value_string = word.data();
        rule.format = formats.shades[static_cast<std::size_t>(highlight.shade)];
        const auto column = static_cast<lxw_col_t>(highlight.column);
        worksheet_conditional_format_range(sheet, firstRow, column, lastRow, column, &rule);
    }
}

void fillSheet(lxw_worksheet* sheet, const Table& table, const Formats& formats)
{
    worksheet_write_string(sheet, 0, 0, table.title.c_str(), formats.title);
    lxw_row_t row = 1;
    for (const std::string& note : table.notes)
        worksheet_write_string(sheet, row++, 0, note.c_str(), nullptr);
    const lxw_row_t headRow = row + 1;
    // A table has at least one row, even when there is nothing to put in it.
    const auto lastRow = static_cast<lxw_row_t>(headRow + std::max<std::size_t>(table.rows.size(), 1));
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        worksheet_set_column(sheet, static_cast<lxw_col_t>(c), static_cast<lxw_col_t>(c),
                             table.columns[c].width, nullptr);
    addTable(sheet, table, formats, headRow, lastRow);
    writeRows(sheet, table, formats, headRow + 1);
    addHighlights(sheet, table, formats, headRow + 1, lastRow);
    worksheet_freeze_panes(sheet, headRow + 1, 0);
    worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    worksheet_repeat_rows(sheet, headRow, headRow);
}

Status checkLimits(const std::vector<Table>& tables)
{
    std::set<std::string> titles;
    for (const Table& table : tables) {
        if (Status right = checkTable(table); !right)
            return right;
        if (!titles.insert(table.title).second)
            return fail(ErrorCode::BadInput, "two tables are titled \"" + table.title + "\"");
        if (table.rows.size() > kMostRows)
            return fail(ErrorCode::BadInput,
                        fmt::format("table \"{}\" has {} rows; a sheet holds {}; use CSV", table.title,
                                    table.rows.size(), kMostRows));
        for (const TableRow& row : table.rows)
            for (const TableCell& cell : row.cells)
                if (const auto* text = std::get_if<std::string>(&cell);
                    text != nullptr && text->size() > kLongestText)
                    return fail(ErrorCode::BadInput,
                                fmt::format("table \"{}\" has a text over {} characters; use CSV",
                                            table.title, kLongestText));
    }
    if (tables.empty())
        return fail(ErrorCode::BadInput, "a workbook needs at least one table");
    return {};
}

} // namespace

Result<std::string> xlsxOf(const std::vector<Table>& tables, const Timestamp& created)
{
    if (const Status right = checkLimits(tables); !right)
        return fail(right.error());
    // The library of Debian 12 (1.1.4) can write to a named file only.
    const PartialFile file(
        (std::filesystem::temp_directory_path() / ("sealwalk-" + Uuid::random().text() + ".xlsx")).string());
    lxw_workbook* book = workbook_new(file.path().c_str());
    if (book == nullptr)
        return fail(ErrorCode::MachineFailed, "no memory is left to make the workbook");
    lxw_doc_properties properties{};
    properties.created = static_cast<time_t>(created.utcMilliseconds / 1000);
    workbook_set_properties(book, &properties);
    const Formats formats = makeFormats(book);
    for (const Table& table : tables)
        fillSheet(workbook_add_worksheet(book, table.title.c_str()), table, formats);
    if (const lxw_error error = workbook_close(book); error != LXW_NO_ERROR)
        return fail(ErrorCode::MachineFailed,
                    fmt::format("the workbook could not be written to the temporary "
                                "folder: {}",
                                lxw_strerror(error)));
    return readFile(file.path());
}

} // namespace sealwalk::exchange
