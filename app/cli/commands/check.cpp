// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/transfer/hand_out.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace sealwalk::cli {
namespace {

using Problems = std::vector<std::string>;

Status lookAtSignatures(const storage::HistoryStore& store, Problems& problems)
{
    const auto rows = store.jobs();
    if (!rows)
        return fail(rows.error());
    // All of them: a job that somebody set back from signed is found by its review.
    for (const storage::JobRow& row : *rows) {
        const auto verification = transfer::verifyIn(store, row.id);
        if (!verification) {
            problems.push_back(fmt::format("job {}: {}", row.number, verification.error().message));
            continue;
        }
        for (const std::string& problem : verification->problems)
            problems.push_back(fmt::format("job {}: {}", row.number, problem));
    }
    return {};
}

Result<Verdict> answerCheck(const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto problems = store->check();
    if (!problems)
        return fail(problems.error());
    if (const Status looked = lookAtSignatures(*store, *problems); !looked)
        problems->push_back(looked.error().message);
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
