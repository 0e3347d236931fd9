// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {
namespace {

Result<Verdict> answerBackup(const std::string& target, const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    if (const Status copied = store->backup(target); !copied)
        return fail(copied.error());
    nlohmann::ordered_json document;
    document["ok"] = true;
    document["problems"] = nlohmann::ordered_json::array();
    document["written"] = {target};
    console.answer(document, target + ": a copy of " + store->file().string());
    return Verdict::Yes;
}

} // namespace

void addBackup(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("backup", "safe copy of a history, also while it is in use");
    auto target = std::make_shared<std::string>();
    command->add_option("-o,--output", *target, "new file for the copy")->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk backup -o copy.sealwalk");
    command->callback([target, &chosen] {
        chosen = [target](const Console& console) { return answerBackup(*target, console); };
    });
}

} // namespace sealwalk::cli
