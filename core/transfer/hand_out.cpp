// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/hand_out.h"

#include "core/exchange/digest.h"
#include "core/exchange/signing.h"
#include "core/storage/trace_name.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

namespace sealwalk::transfer {

Result<exchange::JobRecord> loadRecord(const storage::HistoryStore& store, model::JobId id)
{
    auto look = store.look(id); // one look: nobody changes the object between the two
    if (!look)
        return fail(look.error());
    return exchange::JobRecord{std::move(look->object), std::move(look->job)};
}

std::vector<model::Picture> loadPictures(const storage::HistoryStore& store, const model::Job& job,
                                         std::vector<std::string>& problems)
{
    std::vector<model::Picture> pictures;
    for (const std::string& name : exchange::picturesOf(job)) {
        Result<model::Picture> picture = store.picture(name);
        if (!picture) {
            problems.push_back("picture " + name + " is missing: " + picture.error().message);
            continue;
        }
        const std::string_view bytes(reinterpret_cast<const char*>(picture->bytes.data()),
                                     picture->bytes.size());
        if (exchange::sha256Hex(bytes) != name) {
            problems.push_back("picture " + name + " was changed: its bytes do not match its name");
            continue;
        }
        pictures.push_back(std::move(*picture));
    }
    return pictures;
}

void checkKeys(exchange::Verification& result, const std::vector<model::Person>& people)
{
    for (exchange::CheckedSignature& checked : result.signatures) {
        if (!checked.ok)
            continue;
        const model::Signature& signature = checked.signature;
        const auto known = std::find_if(people.begin(), people.end(), [&](const model::Person& person) {
            return person.id == signature.person;
        });
        if (known == people.end()) {
            result.notes.push_back(
                fmt::format("{} is not among the people of this history; ask them whether their "
                            "key is {}",
                            signature.name, exchange::PublicKey::parse(signature.publicKey)->shortText()));
        } else if (known->publicKey != signature.publicKey) {
            checked.ok = false;
            checked.says =
                fmt::format("the signature of {} was made with another key than {} has in this history",
                            signature.name, known->name);
            result.problems.push_back(checked.says);
        } else if (known->name != signature.name) {
            result.notes.push_back(
                fmt::format("{} is called {} in this history now", signature.name, known->name));
        }
    }
}

namespace {

std::string signedObjectNote(const model::TestObject& then, const model::TestObject& now)
{
    if (then.name != now.name)
        return fmt::format("when this was signed the object was called \"{}\"; now it is \"{}\"", then.name,
                           now.name);
    if (then != now)
        return "the object's tag, place, volume, limits, pumps, scale or note were changed since this was "
               "signed; the signature keeps what they were";
    return {};
}

/// A file takes no traces along, and early ones have names that tell nothing: both are worth knowing.
Status addTraceNotes(const storage::HistoryStore& store, const model::Job& job,
                     std::vector<std::string>& notes)
{
    const auto traces = store.traces(job.id);
    if (!traces)
        return fail(traces.error());
    std::set<std::string> here;
    for (const storage::NamedTrace& trace : *traces)
        here.insert(trace.name);
    std::size_t missing = 0;
    std::size_t silent = 0;
    for (const model::Reading& reading : job.readings) {
        if (reading.trace.empty())
            continue;
        missing += here.contains(reading.trace) ? 0 : 1;
        silent += here.contains(reading.trace) && !storage::isTelling(reading.trace) ? 1 : 0;
    }
    if (missing > 0)
        notes.push_back(fmt::format("the detector's traces of {} readings are not in this history", missing));
    if (silent > 0)
        notes.push_back(
            fmt::format("the detector's traces of {} readings were kept without a digest: whether they were "
                        "changed cannot be told",
                        silent));
    return {};
}

/// All but what the history itself keeps of the job; see HistoryStore::checkBeside().
Result<exchange::Verification> lookAt(const storage::HistoryStore& store, model::JobId job)
{
    Result<exchange::JobRecord> record = loadRecord(store, job);
    if (!record)
        return fail(record.error());
    const auto people = store.people();
    if (!people)
        return fail(people.error());
    std::vector<std::string> missing;
    const std::vector<model::Picture> pictures = loadPictures(store, record->job, missing);
    exchange::Verification result = exchange::verifyRecord(*record, exchange::namesOf(pictures));
    result.problems.insert(result.problems.begin(), missing.begin(), missing.end());
    if (const Status fits = exchange::checkRecord(*record); !fits)
        result.problems.push_back(fits.error().message);
    checkKeys(result, *people);
    if (const auto then = exchange::approvedObject(record->job))
        if (std::string note = signedObjectNote(*then, record->object); !note.empty())
            result.notes.push_back(std::move(note));
    if (const Status told = addTraceNotes(store, record->job, result.notes); !told)
        return fail(told.error());
    return result;
}

void addNew(std::vector<std::string>& problems, std::string problem)
{
    if (std::find(problems.begin(), problems.end(), problem) == problems.end())
        problems.push_back(std::move(problem));
}

} // namespace

Result<exchange::Verification> verifyIn(const storage::HistoryStore& store, model::JobId job)
{
    auto looked = lookAt(store, job);
    if (!looked)
        return fail(looked.error());
    auto kept = store.checkBeside(job);
    if (!kept)
        return fail(kept.error());
    for (std::string& problem : *kept)
        looked->problems.push_back(std::move(problem));
    return looked;
}

Result<std::vector<std::string>> problemsOf(const storage::HistoryStore& store, const std::stop_token& stop)
{
    auto problems = store.check();
    if (!problems)
        return problems;
    const auto rows = store.jobs();
    if (!rows) {
        problems->push_back(rows.error().message);
        return problems;
    }
    // All of them: a job that somebody set back from signed is found by its review.
    for (const storage::JobRow& row : *rows) {
        if (stop.stop_requested())
            break;
        const auto looked = lookAt(store, row.id);
        auto kept = store.checkBeside(row.id);
        if (!looked || !kept) {
            const Error& error = looked ? kept.error() : looked.error();
            problems->push_back(fmt::format("job {}: {}", row.number, error.message));
            continue;
        }
        for (const std::string& problem : looked->problems)
            problems->push_back(fmt::format("job {}: {}", row.number, problem));
        for (std::string& problem : *kept)
            addNew(*problems, std::move(problem));
    }
    return problems;
}

Result<HandedOut> handOut(const storage::HistoryStore& store, model::JobId job)
{
    Result<exchange::JobRecord> record = loadRecord(store, job);
    if (!record)
        return fail(record.error());
    const auto people = store.people();
    if (!people)
        return fail(people.error());
    std::vector<std::string> missing;
    exchange::JobFile file{std::move(*record), {}};
    file.pictures = loadPictures(store, file.record.job, missing);
    if (!missing.empty())
        return fail(ErrorCode::DamagedFile, missing.front());
    Result<std::string> bytes = exchange::packJobFile(file);
    if (!bytes)
        return fail(bytes.error().in(fmt::format("job {}", file.record.job.number)));
    HandedOut out;
    out.bytes = std::move(*bytes);
    out.pictures = file.pictures.size();
    out.result = exchange::verifyRecord(file.record, exchange::namesOf(file.pictures));
    checkKeys(out.result, *people);
    out.record = std::move(file.record);
    return out;
}

} // namespace sealwalk::transfer
