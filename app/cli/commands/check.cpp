// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/transfer/hand_out.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

namespace sealwalk::cli {
namespace {

Result<Verdict> answerCheck(const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto problems = transfer::problemsOf(*store);
    if (!problems)
        return fail(problems.error());
    nlohmann::ordered_json document;
    document["ok"] = problems->empty();
    document["problems"] = *problems;
    std::string text = store->file().string() + (problems->empty() ? ": sound" : ": not sound");
    for (const std::string& problem : *problems)
        text += "\n  " + problem;
    console.answer(document, text);
    return problems->empty() ? Verdict::Yes : Verdict::No;
}

} // namespace

void addCheck(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("check", "whether a history is sound: file, records, signatures");
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk check");
    command->callback([&chosen] { chosen = answerCheck; });
}

} // namespace sealwalk::cli
