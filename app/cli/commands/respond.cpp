// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "core/flow/response.h"
#include "core/quantities/quantity_text.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string volume;
    std::string pump;
    std::string auxiliary;
    std::string hoseDiameter;
    std::string hoseLength;
    std::string pressure = "0 mbar";
    std::string temperature = "20 degC";
};

template <class Q>
Status read(const std::string& text, const char* option, Q& into)
{
    const auto value = parse<Q>(text);
    if (!value)
        return fail(value.error().in(option));
    into = *value;
    return {};
}

Result<flow::ResponseOptions> optionsOf(const Arguments& arguments)
{
    flow::ResponseOptions options;
    if (const Status ok = read(arguments.volume, "--volume", options.volume); !ok)
        return fail(ok.error());
    if (const Status ok = read(arguments.pump, "--pump", options.pump); !ok)
        return fail(ok.error());
    if (const Status ok = read(arguments.pressure, "--pressure", options.linePressure); !ok)
        return fail(ok.error());
    if (const Status ok = read(arguments.temperature, "--temperature", options.temperature); !ok)
        return fail(ok.error());
    if (!arguments.auxiliary.empty())
        if (const Status ok = read(arguments.auxiliary, "--auxiliary-pump", options.auxiliary); !ok)
            return fail(ok.error());
    Length length;
    if (!arguments.hoseDiameter.empty()) {
        if (const Status ok = read(arguments.hoseDiameter, "--hose-diameter", length); !ok)
            return fail(ok.error());
        options.hoseDiameter = length;
    }
    if (!arguments.hoseLength.empty()) {
        if (const Status ok = read(arguments.hoseLength, "--hose-length", length); !ok)
            return fail(ok.error());
        options.hoseLength = length;
    }
    return options;
}

Result<Verdict> answerRespond(const Arguments& arguments, const Console& console)
{
    const auto options = optionsOf(arguments);
    if (!options)
        return fail(options.error());
    const auto summary = flow::respond(*options);
    if (!summary)
        return fail(summary.error());

    nlohmann::ordered_json document;
    document["response_s"] = summary->response.si();
    document["dwell_s"] = summary->dwell.si();
    document["wait_s"] = summary->wait.si();
    document["share"] = summary->share;
    document["effective_speed"] = inLitresPerSecond(summary->effective);
    document["unit"] = "l/s";
    std::string text =
        fmt::format("response {} s (63 % of a step)\n", trimmedText(summary->response.si(), 4)) +
        fmt::format("dwell    {} s ({} % of the final value, to size a leak)\n",
                    trimmedText(summary->dwell.si(), 4), trimmedText(options->sizing * 100.0, 3)) +
        fmt::format("wait     {} s (down to {} % of the last signal)\n", trimmedText(summary->wait.si(), 4),
                    trimmedText(options->residual * 100.0, 3)) +
        fmt::format("share    {} of the helium reaches the detector\n", trimmedText(summary->share, 4)) +
        fmt::format("speed    {} l/s of the detector for helium, at the chamber",
                    trimmedText(inLitresPerSecond(summary->effective), 4));
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addRespond(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("respond", "response and clean-up time, and the share reaching the detector");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("--volume", arguments->volume, "of the chamber, such as \"50 l\"")->required();
    command->add_option("--pump", arguments->pump, "speed of the detector for helium, such as \"2.5 l/s\"")
        ->required();
    command->add_option("--auxiliary-pump", arguments->auxiliary,
                        "speed for helium of a pump beside it, at the chamber");
    command->add_option("--hose-diameter", arguments->hoseDiameter, "inner, of the detector's hose");
    command->add_option("--hose-length", arguments->hoseLength, "of the detector's hose");
    command->add_option("--pressure", arguments->pressure, "mean pressure in the hose")
        ->capture_default_str();
    command->add_option("--temperature", arguments->temperature, "of the gas")->capture_default_str();
    command->footer(
        "Example:\n  sealwalk-cli respond --volume \"50 l\" --pump \"2.5 l/s\" --auxiliary-pump \"10 l/s\" "
        "--hose-diameter \"25 mm\" --hose-length \"1 m\"");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerRespond(*arguments, console); };
    });
}

} // namespace sealwalk::cli
