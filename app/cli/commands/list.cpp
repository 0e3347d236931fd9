// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {
namespace {

nlohmann::ordered_json objectDocument(const storage::ObjectRow& row)
{
    nlohmann::ordered_json document;
    document["uuid"] = row.id.text();
    document["name"] = row.name;
    document["tag"] = row.tag;
    document["place"] = row.place;
    document["jobs"] = row.jobs;
    document["open_temporary_repairs"] = row.openTemporaryRepairs;
    return document;
}

nlohmann::ordered_json jobDocument(const storage::JobRow& row)
{
    nlohmann::ordered_json document;
    document["number"] = row.number;
    document["uuid"] = row.id.text();
    document["object"] = row.object.text();
    document["purpose"] = row.purpose;
    document["opened"] = row.opened.text();
    document["state"] = model::name(row.state);
    document["points"] = row.points;
    document["readings"] = row.readings;
    return document;
}

std::string textOf(const std::vector<storage::ObjectRow>& objects, const std::vector<storage::JobRow>& jobs)
{
    std::string text;
    for (const storage::ObjectRow& row : objects) {
        text += row.name;
        text += row.tag.empty() ? "" : " [" + row.tag + "]";
        text += row.place.empty() ? "" : ", " + row.place;
        text += fmt::format(": {} job{}", row.jobs, row.jobs == 1 ? "" : "s");
        if (row.openTemporaryRepairs > 0)
            text += fmt::format(", {} temporary repair{} to make good", row.openTemporaryRepairs,
                                row.openTemporaryRepairs == 1 ? "" : "s");
        text += "\n";
    }
    for (const storage::JobRow& row : jobs)
        text +=
            fmt::format("{:>6}  {}  {:<9}  {}, {} points, {} readings: {}\n", row.number, row.opened.date(),
                        model::name(row.state), row.objectName, row.points, row.readings, row.purpose);
    if (text.empty())
        return "nothing found";
    text.pop_back();
    return text;
}

Result<Verdict> answerList(const std::vector<std::string>& words, const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    std::string typed;
    for (const std::string& word : words)
        typed += word + " ";
    const auto objects = store->objects(typed);
    if (!objects)
        return fail(objects.error());
    const auto jobs = store->jobs(typed);
    if (!jobs)
        return fail(jobs.error());
    nlohmann::ordered_json document;
    document["objects"] = nlohmann::ordered_json::array();
    for (const storage::ObjectRow& row : *objects)
        document["objects"].push_back(objectDocument(row));
    document["jobs"] = nlohmann::ordered_json::array();
    for (const storage::JobRow& row : *jobs)
        document["jobs"].push_back(jobDocument(row));
    console.answer(document, textOf(*objects, *jobs));
    return Verdict::Yes;
}

} // namespace

void addList(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand("list", "objects and jobs of a history, newest first");
    auto words = std::make_shared<std::vector<std::string>>();
    command->add_option("words", *words,
                        "only those that contain every word: object, tag, place, purpose, people, date");
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk list box coater");
    command->callback([words, &chosen] {
        chosen = [words](const Console& console) { return answerList(*words, console); };
    });
}

} // namespace sealwalk::cli
