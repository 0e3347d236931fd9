// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/exchange/files.h"
#include "core/exchange/job_tables.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/table_xlsx.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string job;
    std::string csv;
    std::string xlsx;
    std::string unit;
    bool readings = false;
};

Result<Verdict> writeTable(const Arguments& arguments, const Console& console)
{
    if (arguments.csv.empty() && arguments.xlsx.empty())
        return fail(ErrorCode::BadInput, "table: say where to, with --csv FILE or --xlsx FILE or both");
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const Result<exchange::JobRecord> record = loadJob(*store, arguments.job);
    if (!record)
        return fail(record.error());
    const auto unit = leakRateUnit(arguments.unit.empty() ? record->job.setup.unit : arguments.unit);
    if (!unit)
        return fail(unit.error().in("--unit"));
    const Result<exchange::JobTables> tables = exchange::jobTables(*record, *unit);
    if (!tables)
        return fail(tables.error().in("--unit"));

    // Both are made before either is written, so that bad input leaves nothing behind.
    Result<std::string> csv;
    Result<std::string> xlsx;
    if (!arguments.csv.empty())
        csv = exchange::csvOf(arguments.readings ? tables->readings : tables->findings);
    if (!arguments.xlsx.empty())
        xlsx = exchange::xlsxOf(tables->all(), record->job.opened);
    if (!csv || !xlsx)
        return fail(!csv ? csv.error() : xlsx.error());
    nlohmann::ordered_json document;
    document["written"] = nlohmann::ordered_json::array();
    std::string text =
        fmt::format("{} findings, {} readings", tables->findings.rows.size(), tables->readings.rows.size());
    std::vector<exchange::FileToWrite> files;
    const auto add = [&](const std::string& path, const std::string& bytes) {
        if (path.empty())
            return;
        document["written"].push_back(path);
        text += "\n  " + path;
        files.push_back({path, bytes});
    };
    add(arguments.csv, *csv);
    add(arguments.xlsx, *xlsx);
    if (const Status written = exchange::writeFiles(files); !written)
        return fail(written.error());
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addTable(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("table", "findings and readings of a job as CSV or as an XLSX workbook");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID of the job")->required();
    command->add_option("--csv", arguments->csv, "CSV file to write: the findings");
    command->add_option("--xlsx", arguments->xlsx,
                        "workbook to write: as left, findings by round, readings, repairs, verdicts, "
                        "concessions, voids, points not tested; a sheet each");
    command->add_option("--unit", arguments->unit, "unit of leak rates (default: the job's)");
    command->add_flag("--readings", arguments->readings,
                      "the CSV holds the readings instead of the findings");
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli table 164 --csv findings.csv --xlsx job.xlsx --history demo.sealwalk");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return writeTable(*arguments, console); };
    });
}

} // namespace sealwalk::cli
