// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/storage/search_list.h"
#include "core/transfer/hand_out.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <memory>

namespace sealwalk::cli {
namespace {

Result<Verdict> answerCheck(const Console& console, bool remakeList)
{
    using Mode = storage::HistoryStore::Mode;
    if (remakeList) {
        const auto found = openHistory(console, Mode::ReadOnly);
        if (!found)
            return fail(found.error());
        const std::filesystem::path file = found->file();
        if (const Status made = storage::makeSearchListAnew(file); !made)
            return fail(made.error());
    }
    const auto store = openHistory(console, Mode::ReadOnly);
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
    auto remake = std::make_shared<bool>(false);
    command->add_flag("--remake-list", *remake,
                      "first make the list that searches use anew from the records; no record is changed");
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk check\n"
                    "  sealwalk-cli --history demo.sealwalk check --remake-list");
    command->callback([remake, &chosen] {
        chosen = [remake](const Console& console) { return answerCheck(console, *remake); };
    });
}

} // namespace sealwalk::cli
