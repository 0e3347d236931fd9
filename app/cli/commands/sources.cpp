// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/sources.h"

#include "app/cli/commands.h"
#include "core/analysis/finding_words.h"
#include "core/analysis/next_step.h"
#include "core/exchange/survey_file.h"
#include "core/exchange/survey_unit.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <memory>

namespace sealwalk::cli {

namespace {

using analysis::SourceFinding;
using analysis::SourceVerdict;

struct Arguments
{
    std::string file;
    std::string unit = "mbar l/s";
};

bool isClaimed(const SourceFinding& finding)
{
    return finding.verdict == SourceVerdict::Leak || finding.verdict == SourceVerdict::Shared ||
           finding.verdict == SourceVerdict::Permeation;
}

bool wasRead(const SourceFinding& finding)
{
    return finding.verdict != SourceVerdict::Void && finding.verdict != SourceVerdict::NotSprayed;
}

/// `one` is the leak rate that is 1 in the unit asked for.
nlohmann::ordered_json findingDocument(const SourceFinding& finding, LeakRate one)
{
    nlohmann::ordered_json document;
    document["point"] = finding.point;
    document["verdict"] = analysis::wordOf(finding.verdict);
    // What is not known is null, never 0.
    document["leak_rate"] = nullptr;
    document["low"] = nullptr;
    document["high"] = nullptr;
    if (isClaimed(finding))
        document["leak_rate"] = finding.rate / one;
    if (wasRead(finding)) {
        document["low"] = finding.low / one;
        document["high"] = finding.high / one;
    }
    document["because"] = finding.because;
    return document;
}

nlohmann::ordered_json spreadDocument(const analysis::SpreadLearnt& spread)
{
    nlohmann::ordered_json document;
    document["known"] = spread.known;
    document["near_width_mm"] = inMillimetres(spread.nearWidth);
    document["reach_sideways_mm"] = inMillimetres(spread.reachSideways);
    document["reach_upwards_mm"] = inMillimetres(spread.reachUpwards);
    document["echo_factor"] = spread.echoFactor;
    document["tail_share"] = spread.tail.si();
    document["room_share"] = spread.room.si();
    return document;
}

std::string findingText(const SourceFinding& finding, const std::string& unit)
{
    std::string text = fmt::format("{:>5}  {:<11}", finding.point, analysis::wordOf(finding.verdict));
    if (isClaimed(finding))
        text += fmt::format("  {} ({} to {})", analysis::rateWords(finding.rate, unit),
                            analysis::rateWords(finding.low, unit), analysis::rateWords(finding.high, unit));
    else if (wasRead(finding))
        text += fmt::format("  below {}", analysis::rateWords(finding.high, unit));
    for (const std::string& sentence : finding.because)
        text += "\n         " + sentence;
    return text;
}

std::string spreadText(const analysis::SpreadLearnt& spread)
{
    if (!spread.known)
        return "No response was strong enough to learn how the helium travelled.";
    return fmt::format(
        "Helium: a hundredth reaches {:.0f} mm sideways and {:.0f} mm upwards; echoes stray from that "
        "by a factor of {:.1f}.",
        inMillimetres(spread.reachSideways), inMillimetres(spread.reachUpwards), spread.echoFactor);
}

/// What to do next, for people.
std::string adviceText(const analysis::Survey& survey, const analysis::Sources& sources)
{
    std::string text;
    for (const analysis::MovedBackground& moved : analysis::movedBackgrounds(survey))
        text += moved.because + "\n";
    for (const analysis::SettlingStep& step : analysis::settlingSteps(survey, sources))
        text += "To settle it: " + step.how + "\n";
    return text;
}

Result<Verdict> run(const Arguments& arguments, const Console& console)
{
    const Result<LeakRate> one = exchange::oneOfUnit(arguments.unit);
    if (!one)
        return fail(one.error().in("--unit"));
    const Result<analysis::Survey> survey = exchange::readSurveyFile(arguments.file);
    if (!survey)
        return fail(survey.error());
    analysis::Survey asked = *survey;
    asked.unit = arguments.unit; // the sentences speak in the unit asked for
    const Result<analysis::Sources> sources = analysis::findSources(asked);
    if (!sources)
        return fail(sources.error().in(arguments.file));
    nlohmann::ordered_json document;
    document["unit"] = arguments.unit;
    document["findings"] = nlohmann::ordered_json::array();
    std::string text;
    for (const SourceFinding& finding : sources->findings) {
        document["findings"].push_back(findingDocument(finding, *one));
        text += findingText(finding, arguments.unit) + "\n";
    }
    document["spread"] = spreadDocument(sources->spread);
    console.answer(document, text + adviceText(asked, *sources) + spreadText(sources->spread));
    return Verdict::Yes;
}

} // namespace

void addSources(CLI::App& root, Work& chosen)
{
    auto arguments = std::make_shared<Arguments>(); // lives as long as the callbacks that read it
    CLI::App* command =
        root.add_subcommand("sources", "Tell which points of a survey really leak, and how much.");
    command->add_option("file", arguments->file, "survey file (sealwalk-survey-1, JSON)")->required();
    command->add_option("--unit", arguments->unit, "unit of leak rate to answer in")->capture_default_str();
    command->footer("Example:\n"
                    "  echo '{\"format\": \"sealwalk-survey-1\", \"unit\": \"mbar l/s\", \"limit\": 1e-8, "
                    "\"response_s\": 2,\n"
                    "   \"points\": [{\"number\": 1, \"joint\": \"door\", \"view\": \"front\", \"x_mm\": 0, "
                    "\"up_mm\": 90,\n"
                    "    \"half_length_mm\": 40}, {\"number\": 2, \"joint\": \"door\", \"view\": \"front\", "
                    "\"x_mm\": 0,\n"
                    "    \"up_mm\": 10, \"half_length_mm\": 40}],\n"
                    "   \"readings\": [{\"point\": 1, \"start_s\": 0, \"dwell_s\": 6, \"background\": 3e-10, "
                    "\"peak\": 5e-6},\n"
                    "    {\"point\": 2, \"start_s\": 40, \"dwell_s\": 6, \"background\": 3e-10, \"peak\": "
                    "3e-8}]}' > survey.json\n"
                    "  sealwalk-cli sources survey.json");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return run(*arguments, console); };
    });
}

} // namespace sealwalk::cli
