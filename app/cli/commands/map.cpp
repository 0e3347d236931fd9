// SPDX-License-Identifier: GPL-3.0-or-later
// map: the leak map as SVG or PNG. One of the two commands that create Qt objects; needs no display.
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/offscreen.h"
#include "core/analysis/approval.h"
#include "core/analysis/round_summary.h"
#include "core/exchange/files.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/shown_unit.h"
#include "core/transfer/earlier_jobs.h"
#include "ui/render/map_export.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string job;
    std::string svg;
    std::string png;
    std::string sheet;
    std::string unit;
    bool asLeft = false;
    bool echoesTakenOut = false;
    double dotsPerInch = 192.0;
};

Result<render::MapPage> pageOf(const Arguments& arguments, const exchange::JobRecord& record,
                               const storage::HistoryStore& store)
{
    const model::Job& job = record.job;
    const auto standing = arguments.asLeft ? analysis::Standing::AsLeft : analysis::Standing::AsFound;
    const std::vector<analysis::PointFinding> findings = analysis::summarise(job, record.object, standing);
    report::MapOptions options = report::mapOptions(report::shownUnit(job.setup, arguments.unit));
    options.echoesTakenOut = arguments.echoesTakenOut;
    options.smallestDetectable = report::worstDetectable(job, record.object);
    options.now = analysis::approvalOf(job).value_or(Timestamp::now());
    options.carried = transfer::carriedRepairs(store, job);
    render::MapPage page;
    page.title = fmt::format("{}{}, job {}", record.object.name,
                             record.object.tag.empty() ? "" : ", asset " + record.object.tag, job.number);
    page.subtitle = fmt::format("Leak map, {}, {}, opened {}{}", arguments.asLeft ? "as left" : "as found",
                                arguments.echoesTakenOut ? "echoes taken out" : "as read", job.opened.date(),
                                record.object.invented ? "; invented data" : "");
    std::string known;
    for (const model::Sheet& sheet : job.sketch.sheets) {
        known += (known.empty() ? "\"" : ", \"") + sheet.name + '"';
        if (!arguments.sheet.empty() && arguments.sheet != sheet.name)
            continue;
        page.sheets.push_back(std::make_shared<const report::MapContent>(
            report::mapOf(job, record.object, sheet.id, findings, options)));
        page.underlays.push_back(
            render::underlayOf(sheet, [&](const std::string& sha256) -> Result<model::Picture> {
                return store.picture(sha256);
            }));
    }
    if (page.sheets.empty())
        return fail(ErrorCode::NotFound, job.sketch.sheets.empty()
                                             ? fmt::format("job {} has no sheet to draw", job.number)
                                             : fmt::format("job {} has no sheet \"{}\"; it has {}",
                                                           job.number, arguments.sheet, known));
    return page;
}

Result<Verdict> run(const Arguments& arguments, const Console& console)
{
    if (arguments.svg.empty() && arguments.png.empty())
        return fail(ErrorCode::BadInput, "map: give --svg FILE or --png FILE, or both");
    if (!(arguments.dotsPerInch >= 72.0 && arguments.dotsPerInch <= 1200.0))
        return fail(ErrorCode::BadInput, "--dpi: must be between 72 and 1200");
    if (!arguments.unit.empty())
        if (const auto unit = leakRateUnit(arguments.unit); !unit)
            return fail(unit.error().in("--unit"));
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto record = loadJob(*store, arguments.job);
    if (!record)
        return fail(record.error());
    const Offscreen qt;
    const auto page = pageOf(arguments, *record, *store);
    if (!page)
        return fail(page.error());
    nlohmann::ordered_json document;
    document["written"] = nlohmann::ordered_json::array();
    std::string text;
    std::string svg;
    std::string png;
    std::vector<exchange::FileToWrite> files;
    const auto add = [&](const std::string& file, const std::string& bytes) {
        document["written"].push_back(file);
        text += (text.empty() ? "written " : "\nwritten ") + file;
        files.push_back({file, bytes});
    };
    if (!arguments.svg.empty()) {
        svg = render::mapSvg(*page);
        add(arguments.svg, svg);
    }
    if (!arguments.png.empty()) {
        auto drawn = render::mapPng(*page, arguments.dotsPerInch);
        if (!drawn)
            return fail(drawn.error());
        png = std::move(*drawn);
        add(arguments.png, png);
    }
    if (const Status written = exchange::writeFiles(files); !written)
        return fail(written.error());
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addMap(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("map", "the leak map of a job as SVG or PNG");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID")->required();
    command->add_option("--svg", arguments->svg, "file to write, scalable");
    command->add_option("--png", arguments->png, "file to write, in dots");
    command->add_option("--sheet", arguments->sheet, "only the sheet of this name (default: all)");
    command->add_option("--unit", arguments->unit, "of leak rate (default: the job's)");
    command->add_option("--dpi", arguments->dotsPerInch, "dots per inch of the PNG")->capture_default_str();
    command->add_flag("--as-left", arguments->asLeft, "after repairs (default: as found)");
    command->add_flag("--echoes-out", arguments->echoesTakenOut, "echoes taken out (default: as read)");
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli map 164 --svg map.svg --history demo.sealwalk");
    command->callback([&chosen, arguments] {
        chosen = [arguments](const Console& console) { return run(*arguments, console); };
    });
}

} // namespace sealwalk::cli
