// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/reading_line.h"
#include "app/cli/round_argument.h"
#include "core/exchange/survey_unit.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <iostream>
#include <memory>

namespace sealwalk::cli {
namespace {

struct Arguments
{
    std::string job;
    std::string round;
    std::string unit = "mbar l/s";
    std::string by;
    bool fromStdin = false;
};

bool isBlank(const std::string& line)
{
    return line.find_first_not_of(" \t\r") == std::string::npos;
}

/// Stores line after line. Each is answered only when it is on disk; a bad one stops the work, and what was
/// stored before it stays.
Result<Verdict> storeLines(storage::HistoryStore& store, const LineFrame& frame)
{
    std::string line;
    int number = 0;
    while (std::getline(std::cin, line)) {
        ++number;
        if (isBlank(line))
            continue;
        const auto reading = readingFromLine(line, frame);
        if (!reading)
            return fail(reading.error().in(fmt::format("line {}", number)));
        const auto stored = store.addReading(frame.job->id, *reading);
        if (!stored)
            return fail(stored.error().in(fmt::format("line {}", number)));
        nlohmann::ordered_json answer;
        answer["stored"] = stored->sequence;
        std::cout << answer.dump() << std::endl; // flushed: the other side waits for it
    }
    return Verdict::Yes;
}

Result<Verdict> answerLog(const Arguments& arguments, const Console& console)
{
    const Result<LeakRate> one = exchange::oneOfUnit(arguments.unit);
    if (!one)
        return fail(one.error().in("--unit"));
    auto store = openHistory(console, storage::HistoryStore::Mode::ReadWrite);
    if (!store)
        return fail(store.error());
    const auto opened = loadJob(*store, arguments.job);
    if (!opened)
        return fail(opened.error());
    const auto round = findRound(opened->job, arguments.round);
    if (!round)
        return fail(round.error());
    if ((*round)->closed)
        return fail(ErrorCode::NotAllowed, fmt::format("round {} of job {} is closed; open another",
                                                       (*round)->number, opened->job.number));
    LineFrame frame;
    frame.job = &opened->job;
    frame.round = (*round)->id;
    frame.one = *one;
    frame.unit = arguments.unit;
    frame.by = arguments.by;
    return storeLines(*store, frame);
}

} // namespace

void addLog(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("log", "readings from stdin into a round, one JSON line each");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID")->required();
    command->add_option("round", arguments->round, "number or UUID")->required();
    command->add_flag("--stdin", arguments->fromStdin, "read the lines from stdin (there is no other way)")
        ->required();
    command->add_option("--unit", arguments->unit, "of peak and background")->capture_default_str();
    command->add_option("--by", arguments->by,
                        "who logs, where a line does not say (default: the user's login name)");
    command->footer(
        "Each line is answered by {\"stored\":n} once it is on disk. \"taped_off\":[38, 40] names "
        "points no helium reached meanwhile. Example:\n"
        "  sealwalk-cli demo -o demo.sealwalk\n"
        "  echo '{\"point\":58,\"background\":1.5e-9,\"peak\":5.2e-9,\"dwell_s\":8}' | "
        "sealwalk-cli --history demo.sealwalk log 164 1 --stdin");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerLog(*arguments, console); };
    });
}

} // namespace sealwalk::cli
