// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/take_in.h"

#include "core/exchange/job_import.h"
#include "core/storage/trace_name.h"
#include "core/transfer/hand_out.h"
#include "core/transfer/known_pairs.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>
#include <utility>

namespace sealwalk::transfer {

namespace {

using exchange::JobFile;
using exchange::JobRecord;
using exchange::Verification;
using storage::HistoryStore;

TakenIn notTaken(Verification result, const JobRecord& record)
{
    TakenIn answer;
    answer.result = std::move(result);
    answer.done = fmt::format("job {} was not taken in", record.job.number);
    answer.job = record.job.id;
    answer.number = record.job.number;
    answer.object = record.object.name;
    return answer;
}

/// Traces that hold what their names say; of the others a note is left. Early ones have names that say
/// nothing and come as they are.
std::vector<storage::NamedTrace> trueOnes(std::vector<storage::NamedTrace> traces,
                                          std::vector<std::string>& notes)
{
    std::erase_if(traces, [&](const storage::NamedTrace& trace) {
        if (!storage::isTelling(trace.name) || storage::holdsWhatItSays(trace))
            return false;
        notes.push_back(fmt::format(
            "the detector's trace \"{}\" does not hold what its name says and was left out", trace.name));
        return true;
    });
    return traces;
}

/// A job that came in a file has no traces; another history may bring them while work goes on. Only those
/// come that a reading here names and that hold what they are called.
Status addTraces(HistoryStore& store, const model::Job& here, const std::vector<storage::NamedTrace>& traces,
                 std::vector<std::string>& notes)
{
    if (traces.empty())
        return {};
    const auto kept = store.traces(here.id);
    if (!kept)
        return fail(kept.error());
    std::unordered_set<std::string> missing;
    for (const model::Reading& reading : here.readings)
        missing.insert(reading.trace);
    for (const storage::NamedTrace& trace : *kept)
        missing.erase(trace.name);
    std::size_t came = 0;
    for (const storage::NamedTrace& trace : traces) {
        if (!missing.contains(trace.name) || !storage::holdsWhatItSays(trace))
            continue;
        if (!here.isOpenForWork()) {
            notes.emplace_back(
                "detector's traces that are missing here stay so: the job is submitted or signed "
                "and takes no more");
            return {};
        }
        if (const Status added = store.addTrace(here.id, trace.name, trace.trace.times, trace.trace.values);
            !added)
            return added;
        ++came;
    }
    if (came > 0)
        notes.push_back(fmt::format("{} of the detector's traces came along, which were missing here", came));
    return {};
}

/// The job is in the history already: takes in what it has more, or says why not.
Result<TakenIn> answerKnown(HistoryStore& store, const JobFile& file, Verification result,
                            const std::vector<storage::NamedTrace>& traces)
{
    const Result<JobRecord> here = loadRecord(store, file.record.job.id);
    if (!here)
        return fail(here.error());
    const exchange::Continuation continuation = exchange::compareRecords(*here, file.record);
    const int number = here->job.number;
    const bool isFurtherHere = continuation.standing == exchange::Standing::Same ||
                               continuation.standing == exchange::Standing::Behind;
    if (isFurtherHere)
        if (const Status added = addTraces(store, here->job, traces, result.notes); !added)
            return fail(added.error());
    const auto answer = [&](std::string done, Outcome outcome) {
        TakenIn taken;
        taken.result = std::move(result);
        taken.done = std::move(done);
        taken.job = here->job.id;
        taken.outcome = outcome;
        taken.number = number;
        taken.object = here->object.name;
        taken.continuation = continuation;
        return taken;
    };
    switch (continuation.standing) {
    case exchange::Standing::Same:
        return answer(
            fmt::format("this job is in the history already, as number {}; nothing was added", number),
            Outcome::Known);
    case exchange::Standing::Behind:
        return answer(
            fmt::format("this job is in the history already, as number {}, and further on here by {}; "
                        "nothing was added",
                        number, aheadBy(continuation)),
            Outcome::Known);
    case exchange::Standing::Further:
        if (const Status done = store.continueJob(here->job, file.record.job, file.pictures, traces); !done)
            return fail(done.error());
        return answer(fmt::format("job {} went on: {}", number, aheadBy(continuation)), Outcome::WentOn);
    case exchange::Standing::Forked:
        break;
    }
    result.problems.push_back(fmt::format(
        "this job is in the history already, as number {}, and went on in both places, as far as can be "
        "told: "
        "they differ in {}; nothing was changed. Make that the same in both and take it in again, or go on "
        "with one of the two and enter what the other has more",
        number, exchange::partWords(continuation.differs)));
    TakenIn refused = notTaken(std::move(result), file.record);
    refused.continuation = continuation;
    return refused;
}

/// Numbers that mean other places than in any job of the object here: a point that the latest job no longer
/// has keeps its number in the older ones. Each number is told once, with the latest job it clashes with.
Status addClashes(const HistoryStore& store, const JobRecord& record, std::vector<std::string>& notes)
{
    const auto jobs = store.jobsOf(record.object.id); // the latest first
    if (!jobs)
        return fail(jobs.error());
    std::unordered_set<int> told;
    for (const storage::JobRow& row : *jobs) {
        const auto here = store.job(row.id);
        if (!here)
            return fail(here.error());
        std::vector<int> clashing = exchange::clashingPoints(here->sketch, record.job.sketch);
        std::erase_if(clashing, [&](int number) { return !told.insert(number).second; });
        if (!clashing.empty())
            notes.push_back(
                fmt::format("point numbers {} mean other places in this job than in job {}; points are "
                            "compared by identity, not by number",
                            fmt::join(clashing, ", "), here->number));
    }
    return {};
}

/// What a person should know about the object and the point numbers before two jobs are compared.
Status addNotes(const HistoryStore& store, const JobRecord& record, std::vector<std::string>& notes)
{
    const auto objects = store.objects();
    if (!objects)
        return fail(objects.error());
    for (const storage::ObjectRow& row : *objects) {
        const bool sameName = row.name == record.object.name && row.tag == record.object.tag;
        if (!row.has(record.object.id) && sameName)
            notes.push_back(fmt::format(
                "another object here is called \"{}\" too; they are kept apart until a person says "
                "in its facts that they are one",
                row.name));
    }
    const auto object = store.object(record.object.id);
    if (!object)
        return {}; // not known here yet
    for (std::string& sentence : exchange::objectDifferences(*object, record.object))
        notes.push_back(std::move(sentence));
    return addClashes(store, record, notes);
}

} // namespace

Result<TakenIn> takeIn(HistoryStore& store, const JobFile& file, Verification result,
                       std::vector<storage::NamedTrace> traces)
{
    const auto people = store.people();
    if (!people)
        return fail(people.error());
    checkKeys(result, *people);
    const int number = file.record.job.number;
    if (!result.ok())
        return notTaken(std::move(result), file.record);
    traces = trueOnes(std::move(traces), result.notes);
    if (store.findJob(file.record.job.id.text()))
        return answerKnown(store, file, std::move(result), traces);
    if (const Status said = addNotes(store, file.record, result.notes); !said)
        return fail(said.error());
    if (const Status taken = store.importJob(file.record.object, file.record.job, file.pictures, traces);
        !taken)
        return fail(taken.error().in(fmt::format("job {}", number)));
    const Result<model::Job> here = store.job(file.record.job.id);
    if (!here)
        return fail(here.error());
    const bool isRenumbered = here->number != number;
    if (isRenumbered)
        result.notes.push_back(fmt::format("number {} is taken here; the job is number {} in this history",
                                           number, here->number));
    TakenIn answer;
    answer.result = std::move(result);
    answer.done =
        fmt::format("job {} of {} is in {}", here->number, file.record.object.name, store.file().string());
    answer.job = here->id;
    answer.outcome = Outcome::Came;
    answer.isRenumbered = isRenumbered;
    answer.number = here->number;
    answer.object = file.record.object.name;
    return answer;
}

Result<std::optional<exchange::Continuation>> standingOf(const HistoryStore& store, const JobRecord& record)
{
    if (!store.findJob(record.job.id.text()))
        return std::nullopt;
    const Result<JobRecord> here = loadRecord(store, record.job.id);
    if (!here)
        return fail(here.error());
    return exchange::compareRecords(*here, record);
}

std::string aheadBy(const exchange::Continuation& continuation)
{
    std::vector<std::string> words;
    for (const exchange::Gain& gain : continuation.added)
        words.push_back(exchange::partWords(gain.part, gain.count));
    for (const exchange::Part part : continuation.replaced)
        words.push_back(exchange::partWords(part) + " changed");
    return fmt::format("{}", fmt::join(words, ", "));
}

Result<Checked> checkFile(std::string_view bytes)
{
    Result<JobFile> file = exchange::readJobFile(bytes);
    if (!file)
        return fail(file.error());
    Result<Verification> result = exchange::verifyJobFile(bytes);
    if (!result)
        return fail(result.error());
    // Packing is the packer's business once the content is known to be whole.
    result->notes.insert(result->notes.end(), result->form.begin(), result->form.end());
    result->form.clear();
    return Checked{std::move(*file), std::move(*result)};
}

Result<std::vector<TakenIn>> takeInAll(HistoryStore& store, const HistoryStore& from,
                                       const std::stop_token& stop,
                                       const std::function<void(std::size_t, std::size_t)>& progress)
{
    auto jobs = from.jobs();
    if (!jobs)
        return fail(jobs.error());
    std::reverse(jobs->begin(), jobs->end()); // they come newest first
    std::vector<TakenIn> answers;
    const auto cannot = [&](const storage::JobRow& row, const Error& error) {
        TakenIn answer;
        answer.result.problems.push_back(fmt::format("job {}: {}", row.number, error.message));
        answer.done = fmt::format("job {} was not taken in", row.number);
        answer.job = row.id;
        answer.number = row.number;
        answer.object = row.objectName;
        answers.push_back(std::move(answer));
    };
    for (const storage::JobRow& row : *jobs) {
        if (stop.stop_requested())
            break;
        if (progress)
            progress(answers.size(), jobs->size());
        Result<JobRecord> record = loadRecord(from, row.id);
        if (!record) {
            cannot(row, record.error());
            continue;
        }
        // As from a job file: under the number it was opened under, which its signatures cover.
        if (const int openedAs = std::exchange(record->job.openedAs, 0); openedAs > 0)
            record->job.number = openedAs;
        std::vector<std::string> missing;
        JobFile file{std::move(*record), {}};
        file.pictures = loadPictures(from, file.record.job, missing);
        Verification result = exchange::verifyRecord(file.record, exchange::namesOf(file.pictures));
        result.problems.insert(result.problems.end(), missing.begin(), missing.end());
        auto traces = from.traces(row.id);
        if (!traces) {
            cannot(row, traces.error());
            continue;
        }
        Result<TakenIn> taken = takeIn(store, file, std::move(result), std::move(*traces));
        if (taken)
            answers.push_back(std::move(*taken));
        else
            cannot(row, taken.error());
    }
    if (stop.stop_requested())
        return answers;
    TakenIn said;
    said.result.problems = takeSameObjects(store, from);
    for (std::string& problem : takePairs(store, from))
        said.result.problems.push_back(std::move(problem));
    if (!said.result.problems.empty()) {
        said.done = "not all that was said of points and objects there was taken in";
        answers.push_back(std::move(said));
    }
    return answers;
}

} // namespace sealwalk::transfer
