// SPDX-License-Identifier: GPL-3.0-or-later
// report: the report of a job as PDF. One of the two commands that create Qt objects; needs no display.
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/offscreen.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/report_builder.h"
#include "core/transfer/hand_out.h"
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

/// The latest job of the object that was opened before this one.
std::optional<model::Job> lastJobOf(const storage::HistoryStore& store, const model::Job& job)
{
    const auto rows = store.jobsOf(job.object);
    if (!rows)
        return std::nullopt;
    const storage::JobRow* last = nullptr;
    for (const storage::JobRow& row : *rows)
        if (row.id != job.id && row.opened < job.opened && (last == nullptr || last->opened < row.opened))
            last = &row;
    if (last == nullptr)
        return std::nullopt;
    auto loaded = store.job(last->id);
    return loaded ? std::optional(std::move(*loaded)) : std::nullopt;
}

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
    const auto record = loadJob(*store, arguments.job);
    if (!record)
        return fail(record.error());

    report::ReportOptions options;
    options.unit = arguments.unit;
    options.now = Timestamp::now();
    options.lastJob = lastJobOf(*store, record->job);
    options.carried = carriedRepairs(*store, record->job);
    std::vector<std::string> missing; // named by the check below as well
    const std::vector<model::Picture> pictures = transfer::loadPictures(*store, record->job, missing);
    if (const auto digest = exchange::jobDigest(record->object, record->job, exchange::namesOf(pictures)))
        options.digest = *digest;
    const auto checked = transfer::verifyIn(*store, record->job.id);
    if (!checked)
        return fail(checked.error());
    options.problems = checked->problems;
    for (const exchange::CheckedSignature& signature : checked->signatures)
        options.signatures.push_back({signature.signature.id, signature.ok, signature.says});

    const Offscreen qt;
    paper.pictures = [&pictures](const std::string& sha256) -> Result<model::Picture> {
        for (const model::Picture& picture : pictures)
            if (picture.sha256 == sha256)
                return picture;
        return fail(ErrorCode::NotFound, "no picture " + sha256);
    };
    const report::ReportContent content = report::reportOf(record->job, record->object, options);
    if (const Status ok = render::writeReportPdf(content, arguments.pdf, paper); !ok)
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
