// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "demo/history/demo_history.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {
namespace {

Result<Verdict> answerDemo(const std::string& file, const Console& console)
{
    if (const Status written = demo::writeDemoHistory(file); !written)
        return fail(written.error());
    nlohmann::ordered_json document;
    document["written"] = {file};
    console.answer(document,
                   file +
                       ": an invented box coater with two jobs, 118 (signed) and 164 (in progress).\n"
                       "The people in it sign with the passphrase \"" +
                       std::string(demo::kDemoPassphrase) + "\".");
    return Verdict::Yes;
}

} // namespace

void addDemo(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("demo", "write the demo history, all data invented");
    auto file = std::make_shared<std::string>();
    command->add_option("-o,--output", *file, "new file for the history")->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk");
    command->callback(
        [file, &chosen] { chosen = [file](const Console& console) { return answerDemo(*file, console); }; });
}

} // namespace sealwalk::cli
