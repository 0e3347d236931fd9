// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/round_argument.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_view.h"
#include "core/exchange/survey_unit.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {
namespace {

struct Arguments
{
    std::string job;
    std::string round;
    std::string unit = "mbar l/s";
    bool asFound = false;
};

nlohmann::ordered_json rateOrNull(const std::optional<LeakRate>& rate, LeakRate one)
{
    return rate ? nlohmann::ordered_json(*rate / one) : nlohmann::ordered_json(nullptr);
}

nlohmann::ordered_json findingDocument(const exchange::JobRecord& record,
                                       const analysis::PointFinding& finding, LeakRate one)
{
    const model::Job& job = record.job;
    const model::TestPoint* point = job.sketch.point(finding.point);
    const model::Joint* joint = point == nullptr ? nullptr : job.sketch.joint(point->joint);
    nlohmann::ordered_json document;
    document["point"] = finding.number;
    document["joint"] = joint == nullptr ? "" : joint->name;
    document["place"] = point == nullptr ? "" : placeText(job.sketch, *point);
    document["finding"] = model::name(finding.finding);
    document["verdict"] = model::name(finding.verdict);
    document["condition"] = model::name(finding.condition);
    document["as_read"] = rateOrNull(finding.asRead, one);
    document["leak_rate"] = rateOrNull(finding.rate, one);
    document["low"] = rateOrNull(finding.low, one);
    document["high"] = rateOrNull(finding.high, one);
    const auto air = analysis::asAir(job, record.object, finding);
    document["air"] = rateOrNull(air ? std::optional(air->air) : std::nullopt, one);
    document["air_low"] = rateOrNull(air ? std::optional(air->low) : std::nullopt, one);
    document["air_high"] = rateOrNull(air ? std::optional(air->high) : std::nullopt, one);
    document["bound"] = rateOrNull(finding.bound, one);
    document["at_least"] = rateOrNull(finding.atLeast, one); // beyond the detector's range
    document["smallest_detectable"] = rateOrNull(finding.smallestDetectable, one);
    document["conformance"] =
        finding.conformance ? nlohmann::ordered_json(*finding.conformance) : nlohmann::ordered_json(nullptr);
    document["factors"] = nlohmann::ordered_json::array();
    for (const analysis::FactorUsed& factor : finding.factors)
        document["factors"].push_back({{"name", factor.name},
                                       {"multiplier", factor.multiplier},
                                       {"relative_uncertainty", factor.relativeUncertainty},
                                       {"from", factor.from}});
    document["of"] = nlohmann::ordered_json::array();
    for (const model::PointId other : finding.of)
        if (const model::TestPoint* owed = job.sketch.point(other))
            document["of"].push_back(owed->number);
    document["because"] = finding.because;
    document["judged_by_person"] = finding.judgedByPerson;
    document["worked_out"] = nullptr; // what a person's word stands over
    if (finding.overruled)
        document["worked_out"] = {{"finding", model::name(finding.overruled->finding)},
                                  {"verdict", model::name(finding.overruled->verdict)},
                                  {"decided_by", finding.overruled->by},
                                  {"reason", finding.overruled->reason}};
    document["temporary_repair"] = finding.temporaryRepair;
    document["concession"] = finding.concession;
    document["awaits_retest"] = finding.awaitsRetest;
    return document;
}

std::string findingText(const exchange::JobRecord& record, const analysis::PointFinding& finding,
                        const std::string& unit, LeakRate one)
{
    const model::Job& job = record.job;
    const model::Joint* joint = job.sketch.jointOf(finding.point);
    std::string text =
        fmt::format("{:>5}  {:<22} {:<16} {:<10}", finding.number, joint == nullptr ? "" : joint->name,
                    model::name(finding.finding), model::name(finding.verdict));
    if (finding.rate) {
        text += fmt::format(" {:.2g} {}", *finding.rate / one, unit);
        if (finding.low && finding.high)
            text += fmt::format(" ({:.2g} to {:.2g})", *finding.low / one, *finding.high / one);
        if (const auto air = analysis::asAir(job, record.object, finding))
            text += fmt::format(", as air {:.2g} ({:.2g} to {:.2g})", air->air / one, air->low / one,
                                air->high / one);
    } else if (finding.atLeast) {
        text += fmt::format(" at least {:.2g} {}", *finding.atLeast / one, unit);
    } else if (finding.bound) {
        text += fmt::format(" below {:.2g} {}", *finding.bound / one, unit);
    }
    for (const std::string& sentence : finding.because)
        text += "\n         " + sentence;
    return text + "\n";
}

Result<Verdict> answerFindings(const Arguments& arguments, const Console& console)
{
    const Result<LeakRate> one = exchange::oneOfUnit(arguments.unit);
    if (!one)
        return fail(one.error().in("--unit"));
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto opened = loadJob(*store, arguments.job);
    if (!opened)
        return fail(opened.error());
    const auto scope = findScope(opened->job, arguments.round, arguments.asFound);
    if (!scope)
        return fail(scope.error());
    nlohmann::ordered_json document;
    document["job"] = opened->job.number;
    document["of"] = scope->word();
    document["round"] = scope->round != nullptr ? nlohmann::ordered_json(scope->round->number)
                                                : nlohmann::ordered_json(nullptr);
    document["unit"] = arguments.unit;
    document["findings"] = nlohmann::ordered_json::array();
    std::string text = fmt::format("job {}, {}; helium on the chamber\n", opened->job.number, scope->word());
    for (const auto& finding : scope->findings(*opened)) {
        document["findings"].push_back(findingDocument(*opened, finding, *one));
        text += findingText(*opened, finding, arguments.unit, *one);
    }
    text.pop_back();
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addFindings(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("findings", "what the readings of a job say of each point");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID")->required();
    command->add_option("--round", arguments->round,
                        "number or UUID: this round alone (default: the whole job)");
    command->add_flag("--as-found", arguments->asFound, "the whole job before repairs (default: as left)");
    command->add_option("--unit", arguments->unit, "of the rates in the answer")->capture_default_str();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk findings 164");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerFindings(*arguments, console); };
    });
}

} // namespace sealwalk::cli
