// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/take_in.h"
#include "app/cli/verification.h"
#include "core/exchange/files.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace sealwalk::cli {

namespace {

using exchange::JobFile;
using exchange::Verification;
using storage::HistoryStore;

Result<Verdict> unpackFile(const std::string& path, const std::string& bytes, const Console& console)
{
    const Result<JobFile> file = exchange::readJobFile(bytes);
    if (!file)
        return fail(file.error().in(path));
    Result<Verification> result = exchange::verifyJobFile(bytes);
    if (!result)
        return fail(result.error().in(path));
    // Packing is the packer's business once the content is known to be whole.
    result->notes.insert(result->notes.end(), result->form.begin(), result->form.end());
    result->form.clear();
    if (!result->ok()) // before a history is made for it
        return answerVerification(console, *result, path + ": not taken in");
    auto store = openHistory(console, HistoryStore::Mode::Create);
    if (!store)
        return fail(store.error());
    const Result<TakenIn> taken = takeIn(*store, *file, std::move(*result));
    if (!taken)
        return fail(taken.error().in(path));
    return answerVerification(console, taken->result, taken->done);
}

/// One job of another history, with what is wrong with it there.
Result<TakenIn> takeFrom(const HistoryStore& from, const storage::JobRow& row, HistoryStore& into)
{
    Result<exchange::JobRecord> record = loadJob(from, row.id.text());
    if (!record)
        return fail(record.error());
    std::vector<std::string> missing;
    JobFile file{std::move(*record), {}};
    file.pictures = loadPictures(from, file.record.job, missing);
    Verification result = exchange::verifyRecord(file.record, exchange::namesOf(file.pictures));
    result.problems.insert(result.problems.end(), missing.begin(), missing.end());
    return takeIn(into, file, std::move(result));
}

/// Every job of a second laptop's history, the oldest first. What cannot be taken in is said; the rest goes
/// on.
Result<Verdict> mergeHistory(const std::string& path, const Console& console)
{
    const auto from = HistoryStore::open(path, HistoryStore::Mode::ReadOnly);
    if (!from)
        return fail(from.error());
    auto jobs = from->jobs();
    if (!jobs)
        return fail(jobs.error());
    std::reverse(jobs->begin(), jobs->end());
    auto into = openHistory(console, HistoryStore::Mode::Create);
    if (!into)
        return fail(into.error());
    Verification all;
    std::string done = fmt::format("{} from {}", counted(jobs->size(), "job"), path);
    for (const storage::JobRow& row : *jobs) {
        const Result<TakenIn> taken = takeFrom(*from, row, *into);
        if (!taken)
            return fail(taken.error().in(path));
        done += "\n  " + taken->done;
        const auto label = [&](const std::string& text) {
            return fmt::format("job {}: {}", row.number, text);
        };
        for (const std::string& problem : taken->result.problems)
            all.problems.push_back(label(problem));
        for (const std::string& note : taken->result.notes)
            all.notes.push_back(label(note));
        all.signatures.insert(all.signatures.end(), taken->result.signatures.begin(),
                              taken->result.signatures.end());
    }
    return answerVerification(console, all, done);
}

Result<Verdict> unpack(const std::string& path, const Console& console)
{
    const Result<std::string> bytes = exchange::readFile(path);
    if (!bytes)
        return fail(bytes.error());
    if (bytes->starts_with("SQLite format 3"))
        return mergeHistory(path, console);
    return unpackFile(path, *bytes, console);
}

} // namespace

void addUnpack(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand(
        "unpack", "the job of a job file, or every job of another history, into a history");
    auto file = std::make_shared<std::string>();
    command->add_option("file", *file, "job file (.sealjob), or a history from another computer")->required();
    command->footer(
        "The history is made when it does not exist. Jobs that are there already stay as they are.\n"
        "Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
        "  sealwalk-cli pack 118 -o job-118.sealjob --history demo.sealwalk\n"
        "  sealwalk-cli unpack job-118.sealjob --history other.sealwalk\n"
        "  sealwalk-cli unpack demo.sealwalk --history other.sealwalk");
    command->callback(
        [file, &chosen] { chosen = [file](const Console& console) { return unpack(*file, console); }; });
}

} // namespace sealwalk::cli
