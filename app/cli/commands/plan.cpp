// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/plan.h"

#include "app/cli/commands.h"
#include "core/exchange/survey_file.h"
#include "core/quantities/quantity_text.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string file;
    std::string flow = "4 ml/min";
};

Result<PumpingSpeed> flowArgument(const std::string& text)
{
    const Result<PumpingSpeed> flow = parse<PumpingSpeed>(text);
    if (!flow)
        return fail(flow.error().in("--flow"));
    if (!(flow->si() > 0.0))
        return fail(ErrorCode::BadInput, "--flow: helium must flow, for instance at \"4 ml/min\"");
    return flow;
}

Result<Verdict> run(const Arguments& arguments, const Console& console)
{
    const Result<PumpingSpeed> flow = flowArgument(arguments.flow);
    if (!flow)
        return fail(flow.error());
    const Result<analysis::Survey> survey = exchange::readSurveyFile(arguments.file);
    if (!survey)
        return fail(survey.error());
    const analysis::Plan plan = analysis::planWalk(*survey, {*flow});
    nlohmann::ordered_json document;
    document["order"] = nlohmann::ordered_json::array();
    std::string text;
    for (const analysis::PlannedSpray& spray : plan.order) {
        document["order"].push_back({{"point", spray.point},
                                     {"dwell_s", inSeconds(spray.dwell)},
                                     {"wait_s", inSeconds(spray.wait)},
                                     {"because", spray.because}});
        text += fmt::format("{:>5}  spray {:.0f} s, wait {:.0f} s  {}\n", spray.point, inSeconds(spray.dwell),
                            std::ceil(inSeconds(spray.wait)), spray.because);
    }
    document["total_s"] = inSeconds(plan.total);
    document["helium_l"] = inLitres(plan.helium);
    text += fmt::format("{:.0f} min of spraying and waiting, {:.2g} l of helium at {}.",
                        inSeconds(plan.total) / 60.0, inLitres(plan.helium), arguments.flow);
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addPlan(CLI::App& root, Work& chosen)
{
    auto arguments = std::make_shared<Arguments>(); // lives as long as the callbacks that read it
    CLI::App* command =
        root.add_subcommand("plan", "Put the points of a survey in order, with dwell, wait and helium.");
    command
        ->add_option("file", arguments->file,
                     "survey file (sealwalk-survey-1, JSON); readings are not needed")
        ->required();
    command->add_option("--flow", arguments->flow, "helium while the spray is on, at room pressure")
        ->capture_default_str();
    command->footer("Example:\n"
                    "  echo '{\"format\": \"sealwalk-survey-1\", \"unit\": \"mbar l/s\", \"limit\": 1e-8, "
                    "\"response_s\": 2,\n"
                    "   \"points\": [{\"number\": 1, \"joint\": \"door\", \"view\": \"front\", \"x_mm\": 0, "
                    "\"up_mm\": 10,\n"
                    "    \"half_length_mm\": 40}, {\"number\": 2, \"joint\": \"door\", \"view\": \"front\", "
                    "\"x_mm\": 0,\n"
                    "    \"up_mm\": 900, \"half_length_mm\": 40}]}' > walk.json\n"
                    "  sealwalk-cli plan walk.json");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return run(*arguments, console); };
    });
}

} // namespace sealwalk::cli
