// SPDX-License-Identifier: GPL-3.0-or-later
// rise: judges a pressure-rise record.
#include "app/cli/commands.h"
#include "core/analysis/pressure_rise.h"
#include "core/exchange/rise_file.h"
#include "core/quantities/quantity_text.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string file;
    std::string volume;
    std::string volumeUncertainty = "0 %";
    std::string temperature;
    std::string unit = "mbar l/s";
};

struct Request
{
    analysis::RiseOptions options;
    LeakRateUnit unit = LeakRateUnit::MillibarLitrePerSecond;
};

Result<Request> read(const Arguments& arguments)
{
    Request request;
    const auto volume = parse<Volume>(arguments.volume);
    if (!volume)
        return fail(volume.error().in("--volume"));
    request.options.volume = *volume;
    const auto uncertainty = parse<Fraction>(arguments.volumeUncertainty);
    if (!uncertainty)
        return fail(uncertainty.error().in("--volume-uncertainty"));
    request.options.volumeUncertainty = uncertainty->si();
    if (!arguments.temperature.empty()) {
        const auto temperature = parse<Temperature>(arguments.temperature);
        if (!temperature)
            return fail(temperature.error().in("--temperature"));
        request.options.temperature = *temperature;
    }
    const auto unit = leakRateUnit(arguments.unit);
    if (!unit)
        return fail(unit.error().in("--unit"));
    request.unit = *unit;
    return request;
}

std::string sentences(const analysis::RiseSummary& summary, const std::string& rate, const std::string& low,
                      const std::string& high, const std::string& start, const std::string& end)
{
    std::string text = fmt::format("verdict      {}\n", analysis::nameOf(summary.verdict));
    if (summary.separable && summary.leakRate.si() > 0.0)
        text += fmt::format("leak         {} (95 % range {} to {})\n", rate, low, high);
    else
        text += fmt::format("leak         {} to {} (95 % range)\n", low, high);
    text += fmt::format("outgassing   {} at the start, {} at the end\n", start, end);
    text += fmt::format("reading      {}", summary.model);
    for (const std::string& advice : summary.advice)
        text += "\n" + advice;
    return text;
}

Result<Verdict> run(const Arguments& arguments, const Console& console)
{
    const auto request = read(arguments);
    if (!request)
        return fail(request.error());
    const auto record = exchange::readRiseFile(arguments.file);
    if (!record)
        return fail(record.error());
    const auto summary = analysis::analyseRise(*record, request->options);
    if (!summary)
        return fail(summary.error().in(arguments.file));

    FlowBasis basis;
    if (summary->temperature)
        basis.gas = *summary->temperature;
    std::array<double, 5> numbers = {};
    std::array<std::string, 5> texts;
    const std::array<LeakRate, 5> rates = {summary->leakRate, summary->low, summary->high,
                                           summary->outgassingStart, summary->outgassingEnd};
    for (std::size_t i = 0; i < rates.size(); ++i) {
        const auto number = numberIn(rates[i], request->unit, basis);
        if (!number)
            return fail(number.error().in("--unit"));
        numbers[i] = *number;
        texts[i] = text(rates[i], request->unit, 3, basis);
    }
    nlohmann::ordered_json document;
    // A middle of what cannot be told from outgassing would be read as the leak.
    document["leak_rate"] =
        summary->separable ? nlohmann::ordered_json(numbers[0]) : nlohmann::ordered_json(nullptr);
    document["low"] = numbers[1];
    document["high"] = numbers[2];
    document["unit"] = idOf(request->unit);
    document["separable"] = summary->separable;
    document["outgassing_rate_start"] = numbers[3];
    document["outgassing_rate_end"] = numbers[4];
    document["model"] = summary->model;
    document["advice"] = summary->advice;
    console.answer(document, sentences(*summary, texts[0], texts[1], texts[2], texts[3], texts[4]));
    return Verdict::Yes;
}

} // namespace

void addRise(CLI::App& root, Work& chosen)
{
    auto arguments = std::make_shared<Arguments>(); // lives as long as the callbacks that read it
    CLI::App* command = root.add_subcommand("rise", "Tell leak from outgassing in a pressure-rise record.");
    command->add_option("file", arguments->file, "CSV: time_s,pressure_mbar and, if logged, temperature_degC")
        ->required();
    command->add_option("--volume", arguments->volume, "volume shut off, with its unit: \"120 l\"")
        ->required();
    command->add_option("--volume-uncertainty", arguments->volumeUncertainty,
                        "standard uncertainty of the volume: \"3 %\"");
    command->add_option(
        "--temperature", arguments->temperature,
        "gas temperature the leak rate is stated at: \"20 degC\" (default: mean of the logged ones)");
    command->add_option("--unit", arguments->unit, "unit of leak rate to answer in (default: mbar l/s)");
    command->footer(
        "Example:\n"
        "  printf 'time_s,pressure_Pa\\n0,0.50\\n60,0.62\\n120,0.74\\n180,0.86\\n240,0.98\\n' > rise.csv\n"
        "  sealwalk-cli rise rise.csv --volume \"120 l\" --json");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return run(*arguments, console); };
    });
}

} // namespace sealwalk::cli
