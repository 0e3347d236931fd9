// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/files.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/table_xlsx.h"
#include "tests/support/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <limits>

namespace sealwalk::exchange {
namespace {

Table findings()
{
    Table table;
    table.title = "Findings";
    table.notes = {"Box 3, job 12", "limit 1e-8 mbar·l/s"};
    table.columns = {{"point", "", CellKind::Whole, 8},
                     {"joint", "", CellKind::Text, 20},
                     {"leak rate", "mbar·l/s", CellKind::Rate, 14},
                     {"verdict", "", CellKind::Text, 12}};
    table.rows = {{{1.0, "door seal, \"left\"", 3.2000000000000003e-7, "over"}},
                  {{2.0, "=1+1", std::monostate{}, "within"}},
                  {{3.0, "line\nbreak · µ", -1.5e-10, "cannot say"}}};
    table.highlights = {
        {3, "over", Shade::Alarm}, {3, "cannot say", Shade::Caution}, {3, "within", Shade::Good}};
    return table;
}

// Published: the rules of RFC 4180 section 2: CRLF, quotes around comma, quote and line break, quotes
// doubled.
TEST(TableCsv, FollowsTheRulesOfTheFormat)
{
    EXPECT_EQ(csvOf(findings()).value(), "point,joint,leak rate (mbar·l/s),verdict\r\n"
                                         "1,\"door seal, \"\"left\"\"\",3.2e-7,over\r\n"
                                         "2,'=1+1,,within\r\n"
                                         "3,\"line\nbreak · µ\",-1.5e-10,cannot say\r\n");
}

TEST(TableCsv, TextCannotTurnIntoAFormula)
{
    Table table{"t", {}, {{"a", "", CellKind::Text, 5}}, {}, {}};
    for (const char* text : {"=HYPERLINK(\"x\")", "+1", "-1", "@x", "\tx", "\rx"})
        table.rows.push_back({{std::string(text)}});
    const std::string csv = csvOf(table).value();
    EXPECT_EQ(csv, "a\r\n\"'=HYPERLINK(\"\"x\"\")\"\r\n'+1\r\n'-1\r\n'@x\r\n'\tx\r\n\"'\rx\"\r\n");
}

TEST(TableCsv, AnEmptyCellAloneIsStillARow)
{
    const Table table{"t", {}, {{"a", "", CellKind::Text, 5}}, {{{std::monostate{}}}}, {}};
    EXPECT_EQ(csvOf(table).value(), "a\r\n\"\"\r\n");
}

TEST(Table, NumbersAreShortAndKnowNoLocale)
{
    EXPECT_EQ(tableNumber(0.1 * 3.2e-7, CellKind::Rate), "3.2e-8");
    EXPECT_EQ(tableNumber(3.72364e-9, CellKind::Rate), "3.724e-9");
    EXPECT_EQ(tableNumber(1e-6, CellKind::Rate), "1e-6");
    EXPECT_EQ(tableNumber(-2.5e4, CellKind::Rate), "-2.5e4");
    EXPECT_EQ(tableNumber(0.0, CellKind::Rate), "0");
    EXPECT_EQ(tableNumber(1013.25, CellKind::Plain), "1013.25");
    EXPECT_EQ(tableNumber(12, CellKind::Whole), "12");
    EXPECT_EQ(tableNumber(-4.6e-4, CellKind::Plain), "-0.00046");
    EXPECT_EQ(tableNumber(0, CellKind::Plain), "0");
}

TEST(Table, RefusesWhatNoReaderCouldMakeSenseOf)
{
    const auto with = [](auto change) {
        Table table = findings();
        change(table);
        return checkTable(table).has_value();
    };
    EXPECT_TRUE(with([](Table&) {}));
    EXPECT_FALSE(with([](Table& t) { t.title = "a/b"; }));
    EXPECT_FALSE(with([](Table& t) { t.title = ""; }));
    EXPECT_FALSE(with([](Table& t) { t.title = std::string(32, 'a'); }));
    EXPECT_FALSE(with([](Table& t) { t.columns.clear(); }));
    EXPECT_FALSE(with([](Table& t) { t.columns[1].title = "point"; }));
    EXPECT_FALSE(with([](Table& t) { t.rows[0].cells.pop_back(); }));
    EXPECT_FALSE(with([](Table& t) { t.rows[0].cells[0] = std::string("1"); }));
    EXPECT_FALSE(with([](Table& t) { t.rows[0].cells[1] = 1.0; }));
    EXPECT_FALSE(with([](Table& t) { t.rows[0].cells[1] = std::string("\xff"); }));
    EXPECT_FALSE(with([](Table& t) { t.rows[0].cells[2] = std::numeric_limits<double>::quiet_NaN(); }));
    EXPECT_FALSE(with([](Table& t) { t.highlights[0].column = 4; }));
}

/// What a second library (Python's openpyxl) reads out of the workbook.
nlohmann::json readByAnotherLibrary(const std::string& bytes)
{
    namespace fs = std::filesystem;
    const std::string path =
        (fs::temp_directory_path() / ("sealwalk-table-test-" + std::to_string(::getpid()) + ".xlsx"))
            .string();
    EXPECT_TRUE(writeFile(path, bytes).has_value());
    const char* script = R"(
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
out = {}
for sheet in book.worksheets:
    table = list(sheet.tables.values())[0]
    first, last = table.ref.split(":")
    rules = [(str(r.sqref), rule.operator, rule.formula[0], rule.dxf.fill.bgColor.rgb)
             for r in sheet.conditional_formatting for rule in r.rules]
    out[sheet.title] = {"ref": table.ref, "filter": table.autoFilter.ref if table.autoFilter else None,
        "headings": [c.name for c in table.tableColumns],
        "rows": [[c.value for c in row] for row in sheet[table.ref]][1:],
        "kinds": [c.data_type for c in sheet[table.ref][1]],
        "formats": [c.number_format for c in sheet[table.ref][1]],
        "notes": [sheet.cell(r, 1).value for r in range(1, sheet[first].row)],
        "rules": sorted(rules)}
print(json.dumps(out, default=str))
)";
    const tests::ProcessResult result = tests::runProcess({"/usr/bin/python3", "-c", script, path});
    fs::remove(path);
    EXPECT_EQ(result.status, 0) << result.err;
    return nlohmann::json::parse(result.out);
}

// Property: another library finds the same table, with its filter, number formats and fills.
TEST(TableXlsx, ReadsBackInAnotherLibrary)
{
    Table second = findings();
    second.title = "Readings";
    second.rows.clear();
    const auto bytes = xlsxOf({findings(), second}, {1'770'000'000'000, 60});
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto read = readByAnotherLibrary(*bytes);
    const auto& sheet = read["Findings"];
    EXPECT_EQ(sheet["notes"],
              nlohmann::json::parse(R"j(["Findings", "Box 3, job 12", "limit 1e-8 mbar·l/s", null])j"));
    EXPECT_EQ(sheet["headings"],
              nlohmann::json::parse(R"j(["point", "joint", "leak rate (mbar·l/s)", "verdict"])j"));
    EXPECT_EQ(sheet["filter"], sheet["ref"]);
    EXPECT_EQ(sheet["kinds"], nlohmann::json::parse(R"j(["n", "s", "n", "s"])j"));
    EXPECT_EQ(sheet["formats"], nlohmann::json::parse(R"j(["0", "General", "0.0E+00", "General"])j"));
    EXPECT_EQ(sheet["rows"][0][1], "door seal, \"left\"");
    EXPECT_DOUBLE_EQ(sheet["rows"][0][2].get<double>(), 3.2e-7);
    EXPECT_EQ(sheet["rows"][1][1], "=1+1") << "text stays text";
    EXPECT_EQ(sheet["rows"][1][2], nullptr);
    EXPECT_EQ(sheet["rows"][2][1], "line\nbreak · µ");
    EXPECT_EQ(sheet["rules"].size(), 3U);
    EXPECT_EQ(sheet["rules"][0][0], "D6:D8");
    EXPECT_EQ(sheet["rules"][0][1], "equal");
    EXPECT_EQ(read["Readings"]["rows"].size(), 1U) << "an empty table has one empty row";
}

// Regression: times were text; another library finds dates of the clock on the wall, with its number format.
TEST(TableXlsx, TimesAreDates)
{
    Table table;
    table.title = "Times";
    table.columns = {{"at", "", CellKind::Moment, 19}, {"zone", "", CellKind::Text, 8}};
    table.rows = {{{Timestamp::parse("2026-03-01T14:05:09+01:00").value(), std::string("UTC+01:00")}}};
    const auto bytes = xlsxOf({table}, {});
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto sheet = readByAnotherLibrary(*bytes)["Times"];
    EXPECT_EQ(sheet["rows"][0][0], "2026-03-01 14:05:09");
    EXPECT_EQ(sheet["kinds"][0], "d");
    EXPECT_EQ(sheet["formats"][0], "yyyy\\-mm\\-dd\\ hh:mm:ss");
    EXPECT_NE(csvOf(table).value().find("2026-03-01T14:05:09.000+01:00,UTC+01:00"), std::string::npos);
    table.columns[0].kind = CellKind::Text;
    EXPECT_FALSE(checkTable(table).has_value());
}

// Property: the same tables give the same bytes.
TEST(TableXlsx, IsTheSameEachTime)
{
    const Timestamp at{1'770'000'000'000, 60};
    EXPECT_EQ(xlsxOf({findings()}, at).value(), xlsxOf({findings()}, at).value());
}

TEST(TableXlsx, RefusesWhatASheetCannotHold)
{
    Table table = findings();
    EXPECT_FALSE(xlsxOf({}, {}).has_value());
    EXPECT_FALSE(xlsxOf({table, table}, {}).has_value());
    table.rows[0].cells[1] = std::string(32'768, 'a');
    EXPECT_FALSE(xlsxOf({table}, {}).has_value());
    EXPECT_TRUE(csvOf(table).has_value());
}

} // namespace
} // namespace sealwalk::exchange
