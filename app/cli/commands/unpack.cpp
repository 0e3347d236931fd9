// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/verification.h"
#include "core/exchange/files.h"
#include "core/exchange/job_import.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace sealwalk::cli {

namespace {

using exchange::JobFile;
using exchange::JobRecord;
using exchange::Verification;
using storage::HistoryStore;

/// The job is in the history already: says whether it is the same, and changes nothing.
Result<Verdict> answerKnown(const Console& console, const HistoryStore& store, const JobFile& file,
                            Verification result)
{
    const Result<JobRecord> here = loadJob(store, file.record.job.id.text());
    if (!here)
        return fail(here.error());
    if (exchange::isSameJob(*here, file.record))
        return answerVerification(
            console, result,
            fmt::format("this job is in the history already, as number {}; nothing was added",
                        here->job.number));
    result.problems.push_back(fmt::format(
        "this job is in the history already, as number {}, and differs: {} readings, {} turns of review and "
        "{} "
        "signatures here, {}, {} and {} in the file; nothing was changed",
        here->job.number, here->job.readings.size(), here->job.review.size(), here->job.signatures.size(),
        file.record.job.readings.size(), file.record.job.review.size(), file.record.job.signatures.size()));
    return answerVerification(console, result, "nothing was taken in");
}

/// What a person should know about the object and the point numbers before two jobs are compared.
Status addNotes(const HistoryStore& store, const JobRecord& record, std::vector<std::string>& notes)
{
    const auto objects = store.objects();
    if (!objects)
        return fail(objects.error());
    for (const storage::ObjectRow& row : *objects) {
        const bool sameName = row.name == record.object.name && row.tag == record.object.tag;
        if (row.id != record.object.id && sameName)
            notes.push_back(
                fmt::format("another object here is called \"{}\" too; they are kept apart", row.name));
    }
    const auto object = store.object(record.object.id);
    if (!object)
        return {}; // not known here yet
    for (std::string& sentence : exchange::objectDifferences(*object, record.object))
        notes.push_back(std::move(sentence));
    const auto jobs = store.jobsOf(record.object.id);
    if (!jobs)
        return fail(jobs.error());
    if (jobs->empty())
        return {};
    const auto latest = store.job(jobs->front().id);
    if (!latest)
        return fail(latest.error());
    const std::vector<int> clashing = exchange::clashingPoints(latest->sketch, record.job.sketch);
    if (!clashing.empty())
        notes.push_back(
            fmt::format("point numbers {} mean other places in this job than in job {}; points are "
                        "compared by identity, not by number",
                        fmt::join(clashing, ", "), latest->number));
    return {};
}

Result<Verdict> unpackFile(const std::string& path, const Console& console)
{
    const Result<std::string> bytes = exchange::readFile(path);
    if (!bytes)
        return fail(bytes.error());
    const Result<JobFile> file = exchange::readJobFile(*bytes);
    if (!file)
        return fail(file.error().in(path));
    Result<Verification> result = exchange::verifyJobFile(*bytes);
    if (!result)
        return fail(result.error().in(path));
    // Packing is the packer's business once the content is known to be whole.
    result->notes.insert(result->notes.end(), result->form.begin(), result->form.end());
    result->form.clear();
    if (!result->ok())
        return answerVerification(console, *result, path + ": not taken in");

    auto store = openHistory(console, HistoryStore::Mode::Create);
    if (!store)
        return fail(store.error());
    const auto people = store->people();
    if (!people)
        return fail(people.error());
    checkKeys(*result, *people);
    if (!result->ok())
        return answerVerification(console, *result, path + ": not taken in");
    if (store->findJob(file->record.job.id.text()))
        return answerKnown(console, *store, *file, std::move(*result));
    if (const Status said = addNotes(*store, file->record, result->notes); !said)
        return fail(said.error());
    const Status taken = store->importJob(file->record.object, file->record.job, file->pictures);
    if (!taken)
        return fail(taken.error().in(path));
    const Result<model::Job> here = store->job(file->record.job.id);
    if (!here)
        return fail(here.error());
    if (here->number != file->record.job.number)
        result->notes.push_back(fmt::format("number {} is taken here; the job is number {} in this history",
                                            file->record.job.number, here->number));
    return answerVerification(
        console, *result,
        fmt::format("job {} of {} is in {}", here->number, file->record.object.name, store->file().string()));
}

} // namespace

void addUnpack(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("unpack", "the job of a job file into a history, which is made if need be");
    auto file = std::make_shared<std::string>();
    command->add_option("file", *file, "job file (.sealjob)")->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli pack 118 -o job-118.sealjob --history demo.sealwalk\n"
                    "  sealwalk-cli unpack job-118.sealjob --history other.sealwalk");
    command->callback(
        [file, &chosen] { chosen = [file](const Console& console) { return unpackFile(*file, console); }; });
}

} // namespace sealwalk::cli
