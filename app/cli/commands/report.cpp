// SPDX-License-Identifier: GPL-3.0-or-later
// report: the report of a job as PDF. One of the two commands that create Qt objects; needs no display.
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/offscreen.h"
#include "core/exchange/files.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/transfer/report_facts.h"
#include "ui/render/report_pdf.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string job;
    std::string pdf;
    std::string unit;
    std::string paper = "a4";
};

Result<Verdict> run(const Arguments& arguments, const Console& console)
{
    render::PdfOptions paper;
    if (arguments.paper == "letter")
        paper.paper = render::Paper::Letter;
    else if (arguments.paper != "a4")
        return fail(ErrorCode::BadInput,
                    "--paper: \"" + arguments.paper + "\" is not known; a4 or letter would be right");
    if (!arguments.unit.empty())
        if (const auto unit = leakRateUnit(arguments.unit); !unit)
            return fail(unit.error().in("--unit"));
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto job = store->findJob(arguments.job);
    if (!job)
        return fail(job.error());
    auto facts = transfer::reportFacts(*store, *job, Timestamp::now());
    if (!facts)
        return fail(facts.error());
    facts->options.unit = arguments.unit;

    const Offscreen qt;
    paper.pictures = [&facts](const std::string& sha256) -> Result<model::Picture> {
        for (const model::Picture& picture : facts->pictures)
            if (picture.sha256 == sha256)
                return picture;
        return fail(ErrorCode::NotFound, "no picture " + sha256);
    };
    const report::ReportContent content =
        report::reportOf(facts->record.job, facts->record.object, facts->options);
    if (const Status ok = exchange::writeFile(arguments.pdf, render::reportPdf(content, paper)); !ok)
        return fail(ok.error());
    nlohmann::ordered_json document;
    document["written"] = nlohmann::ordered_json::array({arguments.pdf});
    console.answer(document, "written " + arguments.pdf);
    return Verdict::Yes;
}

} // namespace

void addReport(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("report", "the report of a job as PDF");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID")->required();
    command->add_option("--pdf", arguments->pdf, "file to write")->required();
    command->add_option("--unit", arguments->unit, "of leak rate (default: the job's)");
    command->add_option("--paper", arguments->paper, "a4 or letter")->capture_default_str();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli report 164 --pdf report.pdf --history demo.sealwalk");
    command->callback([&chosen, arguments] {
        chosen = [arguments](const Console& console) { return run(*arguments, console); };
    });
}

} // namespace sealwalk::cli
