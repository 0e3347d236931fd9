// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/exchange/job_signing.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace sealwalk::cli {
namespace {

using Problems = std::vector<std::string>;

/// Whether the keys that signed are those of people of this history.
void lookAtKeys(const model::Job& job, const std::vector<model::Person>& people, Problems& problems)
{
    for (const model::Signature& signature : job.signatures) {
        const auto known = std::find_if(people.begin(), people.end(),
                                        [&](const model::Person& p) { return p.id == signature.person; });
        if (known != people.end() && known->publicKey != signature.publicKey)
            problems.push_back(fmt::format("job {}: the key that signed is not the key of {} in this history",
                                           job.number, known->name));
    }
}

Status lookAtSignatures(const storage::HistoryStore& store, Problems& problems)
{
    const auto people = store.people();
    if (!people)
        return fail(people.error());
    const auto rows = store.jobs();
    if (!rows)
        return fail(rows.error());
    for (const storage::JobRow& row : *rows) {
        if (row.state != model::JobState::Signed)
            continue;
        const auto opened = loadJob(store, row.id.text());
        if (!opened) {
            problems.push_back(fmt::format("job {}: {}", row.number, opened.error().message));
            continue;
        }
        Problems missing;
        const auto pictures = exchange::namesOf(loadPictures(store, opened->job, missing));
        for (const std::string& problem : missing)
            problems.push_back(fmt::format("job {}: {}", row.number, problem));
        const auto verification = exchange::verifyRecord(*opened, pictures);
        for (const std::string& problem : verification.problems)
            problems.push_back(fmt::format("job {}: {}", row.number, problem));
        lookAtKeys(opened->job, *people, problems);
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
