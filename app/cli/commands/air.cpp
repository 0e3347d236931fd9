// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "core/flow/air_equivalent.h"
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
    std::string rate;
    std::string length = "5 mm";
    std::string upstream = "1000 mbar";
    std::string downstream = "0 mbar";
    std::string temperature = "20 degC";
    std::string from = "helium";
    std::string to = "air";
    std::string unit = "mbar l/s";
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

Result<flow::AirEquivalentOptions> optionsOf(const Arguments& arguments)
{
    flow::AirEquivalentOptions options;
    flow::ChannelConditions& conditions = options.conditions;
    for (const Status& status : {read(arguments.length, "--length", conditions.length),
                                 read(arguments.upstream, "--upstream", conditions.upstream),
                                 read(arguments.downstream, "--downstream", conditions.downstream),
                                 read(arguments.temperature, "--temperature", conditions.temperature)})
        if (!status)
            return fail(status.error());
    const auto from = flow::gasNamed(arguments.from);
    if (!from)
        return fail(from.error().in("--from"));
    const auto to = flow::gasNamed(arguments.to);
    if (!to)
        return fail(to.error().in("--to"));
    options.from = *from;
    options.to = *to;
    if (const Status ok = flow::check(conditions); !ok)
        return fail(ok.error());
    return options;
}

std::string textOf(const Arguments& arguments, const flow::AirEquivalentOptions& options,
                   const flow::AirEquivalent& result, double number, const Unit& unit)
{
    const double factor = std::exp(2.0 * result.relativeUncertainty);
    std::string text = fmt::format("{} passes {} {} of {}\n",
                                   arguments.rate + " of " + std::string(propertiesOf(options.from).name),
                                   trimmedText(number, 4), unit.id, propertiesOf(options.to).name);
    text += fmt::format("  95 % range {} to {} {}, because the shape of the leak is not known\n",
                        trimmedText(number / factor, 2), trimmedText(number * factor, 2), unit.id);
    text +=
        fmt::format("  ratio {} (from {} to {} over all shapes), flow {}\n", trimmedText(result.ratio, 4),
                    trimmedText(result.ratioLow, 4), trimmedText(result.ratioHigh, 4), nameOf(result.regime));
    text += fmt::format("  equivalent channel {} um wide, {} long; {} to {} at {}", //
                        trimmedText(result.diameter.si() * 1e6, 4), arguments.length, arguments.upstream,
                        arguments.downstream, arguments.temperature);
    for (const std::string& note : result.notes)
        text += "\n  " + note;
    return text;
}

Result<Verdict> answerAir(const Arguments& arguments, const Console& console)
{
    const auto options = optionsOf(arguments);
    if (!options)
        return fail(options.error());
    const auto unit = readUnit(arguments.unit, UnitKind::LeakRates);
    if (!unit)
        return fail(unit.error().in("--unit"));
    FlowBasis basis;
    basis.gas = options->conditions.temperature;
    basis.molarMass = flow::propertiesOf(options->from).molarMass;
    const auto rate = parseLeakRate(arguments.rate, basis);
    if (!rate)
        return fail(rate.error());
    const auto result = flow::airEquivalent(*rate, *options);
    if (!result)
        return fail(result.error());
    basis.molarMass = flow::propertiesOf(options->to).molarMass;
    const auto number = numberIn(result->rate, *unit, basis);
    if (!number)
        return fail(number.error());

    nlohmann::ordered_json document;
    document["leak_rate"] = *number;
    document["unit"] = unit->id;
    document["ratio"] = result->ratio;
    document["ratio_low"] = result->ratioLow;
    document["ratio_high"] = result->ratioHigh;
    document["regime"] = nameOf(result->regime);
    document["diameter_m"] = result->diameter.si();
    console.answer(document, textOf(arguments, *options, *result, *number, *unit));
    return Verdict::Yes;
}

} // namespace

void addAir(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("air", "what a leak measured with one gas passes of another");
    auto arguments = std::make_shared<Arguments>();
    command
        ->add_option("rate", arguments->rate,
                     "leak rate with undiluted gas outside, such as \"1e-6 mbar l/s\"")
        ->required();
    command->add_option("--length", arguments->length, "of the leak channel: wall or seal width")
        ->capture_default_str();
    command->add_option("--upstream", arguments->upstream, "pressure outside")->capture_default_str();
    command->add_option("--downstream", arguments->downstream, "pressure inside")->capture_default_str();
    command->add_option("--temperature", arguments->temperature, "of the gas")->capture_default_str();
    command->add_option("--from", arguments->from, "the gas it was measured with")->capture_default_str();
    command->add_option("--to", arguments->to, "the gas asked for")->capture_default_str();
    command->add_option("--unit", arguments->unit, "of the answer")->capture_default_str();
    command->footer("Example:\n  sealwalk-cli air \"1e-6 mbar l/s\" --length \"5 mm\"");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerAir(*arguments, console); };
    });
}

} // namespace sealwalk::cli
