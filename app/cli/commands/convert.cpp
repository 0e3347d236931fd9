// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/commands/gas_argument.h"
#include "core/quantities/conversion.h"
#include "core/quantities/quantity_text.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string quantity;
    std::string unit;
    std::string gas;
    std::string temperature = "20 degC";
    std::string standard = "0 degC";
};

Result<Temperature> temperatureArgument(const std::string& text, const char* option)
{
    auto temperature = parse<Temperature>(text);
    if (!temperature)
        return fail(temperature.error().in(option));
    if (!(temperature->si() > 0.0))
        return fail(ErrorCode::BadInput,
                    std::string(option) + ": a gas is above 0 K, for instance at \"20 degC\"");
    return temperature;
}

Result<Verdict> convertQuantity(const Arguments& arguments, const Console& console)
{
    const auto from = readQuantity(arguments.quantity);
    if (!from)
        return fail(from.error());
    const auto to = readUnit(arguments.unit);
    if (!to)
        return fail(to.error());
    const auto gasTemperature = temperatureArgument(arguments.temperature, "--temperature");
    if (!gasTemperature)
        return fail(gasTemperature.error());
    const auto standard = temperatureArgument(arguments.standard, "--standard-temperature");
    if (!standard)
        return fail(standard.error());
    FlowBasis basis;
    basis.gas = *gasTemperature;
    basis.standard = *standard;
    std::string gasName;
    if (!arguments.gas.empty()) {
        const auto gas = gasArgument(arguments.gas);
        if (!gas)
            return fail(gas.error());
        basis.molarMass = gas->molarMass;
        gasName = gas->name;
    }
    const auto converted = convert(from->number, from->unit, *to, basis, gasName);
    if (!converted) {
        Error error = converted.error();
        if (error.message.find("needs the gas named") != std::string::npos)
            error.message += " with --gas";
        return fail(error);
    }
    nlohmann::ordered_json document;
    document["value"] = converted->number;
    document["unit"] = to->id;
    document["assumptions"] = converted->assumptions;
    std::string text = trimmedText(converted->number, 12) + ' ' + to->id;
    for (const std::string& assumption : converted->assumptions)
        text += "\n  with " + assumption;
    console.answer(document, text);
    return Verdict::Yes;
}

} // namespace

void addConvert(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("convert", "a leak rate, pressure, volume, flow, length, time, temperature or "
                                       "share into another unit");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("quantity", arguments->quantity, "value and unit, such as \"2.5e-7 mbar l/s\"")
        ->required();
    command->add_option("unit", arguments->unit, "the unit wanted, such as \"sccm\"")->required();
    command->add_option("--gas", arguments->gas, "gas of a mass flow, by name or as \"102.03 g/mol\"");
    command->add_option("--temperature", arguments->temperature, "of the flowing gas")->capture_default_str();
    command->add_option("--standard-temperature", arguments->standard, "of standard volumes")
        ->capture_default_str();
    command->footer(
        "Example:\n  sealwalk-cli convert \"1 std cm3/s\" \"mbar l/s\" --temperature \"20 degC\"\n"
        "  sealwalk-cli convert \"5 g/yr\" \"mbar l/s\" --gas \"102.03 g/mol\"");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return convertQuantity(*arguments, console); };
    });
}

} // namespace sealwalk::cli
