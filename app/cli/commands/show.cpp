// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/round_argument.h"
#include "core/exchange/job_json.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {
namespace {

nlohmann::ordered_json wholeDocument(const exchange::JobRecord& opened)
{
    const nlohmann::json record = exchange::jobToJson(opened.object, opened.job);
    nlohmann::ordered_json document;
    document["number"] = opened.job.number;
    document["uuid"] = opened.job.id.text();
    document["state"] = model::name(opened.job.state);
    for (const auto& part : record.items())
        document[part.key()] = part.value();
    document["signatures"] = exchange::signaturesToJson(opened.job.signatures)["signatures"];
    return document;
}

std::string readingText(const model::Job& job, const model::Reading& reading, const std::string& unit,
                        LeakRate one)
{
    const model::TestPoint* point = job.sketch.point(reading.point);
    std::string text =
        fmt::format("  {:>5}  {}  point {:>3}  {:<14}", reading.sequence, shortTime(reading.at),
                    point == nullptr ? 0 : point->number, model::name(reading.outcome));
    if (reading.peak)
        text += fmt::format(" {:.2g} {}", *reading.peak / one, unit);
    if (reading.background)
        text += fmt::format(", background {:.2g}", *reading.background / one);
    if (reading.condition != model::Condition::AtRest)
        text += ", " + std::string(model::name(reading.condition));
    if (job.isVoid(reading.id))
        text += ", void";
    if (const model::Reading* later = job.correctionOf(reading.id))
        text += fmt::format(", corrected by {}", later->sequence);
    if (!reading.reason.empty())
        text += ": " + reading.reason;
    return text + "\n";
}

std::string wholeText(const exchange::JobRecord& opened)
{
    const model::Job& job = opened.job;
    constexpr const char* kUnit = "mbar l/s";
    const LeakRate one = millibarLitresPerSecond(1.0);
    std::string text = fmt::format("job {} on {}, {}: {}\n", job.number, opened.object.name,
                                   model::name(job.state), job.setup.purpose);
    text += fmt::format("opened {}, {} points on {} sheets\n", shortTime(job.opened),
                        job.sketch.activePoints().size(), job.sketch.sheets.size());
    for (const model::Round& round : job.rounds) {
        text += fmt::format("round {}, {}{}, as shown by the detector:\n", round.number,
                            model::name(round.kind), round.title.empty() ? "" : " (" + round.title + ")");
        for (const model::Reading& reading : job.readings)
            if (reading.round == round.id)
                text += readingText(job, reading, kUnit, one);
    }
    for (const model::Repair& repair : job.repairs)
        text += fmt::format("repair {}: {}{}\n", shortTime(repair.at), repair.action,
                            repair.permanent ? "" : ", temporary");
    for (const model::ReviewEntry& entry : job.review)
        text += fmt::format("{} {}: {}: {}\n", shortTime(entry.at), model::name(entry.step), entry.by,
                            entry.text);
    for (const model::Signature& signature : job.signatures)
        text += fmt::format("signed {} by {}, {}\n", shortTime(signature.at), signature.name, signature.role);
    text.pop_back();
    return text;
}

Result<Verdict> answerShow(const std::string& job, const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto opened = loadJob(*store, job);
    if (!opened)
        return fail(opened.error());
    console.answer(wholeDocument(*opened), wholeText(*opened));
    return Verdict::Yes;
}

} // namespace

void addShow(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("show", "one job, whole");
    auto job = std::make_shared<std::string>();
    command->add_option("job", *job, "number or UUID")->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk show 118 --json");
    command->callback(
        [job, &chosen] { chosen = [job](const Console& console) { return answerShow(*job, console); }; });
}

} // namespace sealwalk::cli
