// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_files.h"

#include "core/exchange/files.h"
#include "core/exchange/job_digest.h"
#include "core/exchange/job_file.h"
#include "core/exchange/job_import.h"
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

/// A signature proves who signed only if the key is the one that person has here.
Status checkKeys(const std::vector<model::Signature>& signatures, const std::vector<model::Person>& people,
                 std::vector<std::string>& notes)
{
    for (const model::Signature& signature : signatures) {
        const auto known = std::find_if(people.begin(), people.end(), [&](const model::Person& person) {
            return person.id == signature.person;
        });
        if (known == people.end())
            notes.push_back(signature.name + " signed, and is not among the people of this history");
        else if (known->publicKey != signature.publicKey)
            return fail(ErrorCode::NotAllowed, "the signature of " + signature.name +
                                                   " was made with another key than " + known->name +
                                                   " has in this history");
    }
    return {};
}

Result<TakenIn> knownHere(const storage::HistoryStore& store, const exchange::JobRecord& record,
                          std::vector<std::string> notes)
{
    const auto job = store.job(record.job.id);
    if (!job)
        return fail(job.error());
    const auto object = store.object(job->object);
    if (!object)
        return fail(object.error());
    if (!exchange::isSameJob({*object, *job}, record))
        return fail(ErrorCode::Conflict, "this job is in the history already, as number " +
                                             std::to_string(job->number) +
                                             ", and differs; nothing was changed");
    return TakenIn{record.job.id, true, std::move(notes)};
}

} // namespace

Result<TakenIn> takeJobFile(JobSession& session, const std::filesystem::path& file)
{
    if (!session.hasHistory())
        return fail(ErrorCode::NotAllowed, "open or make a history first; the job is taken into it");
    const auto bytes = exchange::readFile(file.string());
    if (!bytes)
        return fail(bytes.error());
    const auto read = exchange::readJobFile(*bytes);
    if (!read)
        return fail(read.error().in(file.filename().string()));
    const auto verified = exchange::verifyJobFile(*bytes);
    if (!verified)
        return fail(verified.error().in(file.filename().string()));
    if (!verified->problems.empty())
        return fail(ErrorCode::DamagedFile, file.filename().string() + ": " + verified->problems.front());

    storage::HistoryStore& store = session.history();
    const auto people = store.people();
    if (!people)
        return fail(people.error());
    const exchange::JobRecord& record = read->record;
    std::vector<std::string> notes = verified->notes;
    if (const Status keys = checkKeys(record.job.signatures, *people, notes); !keys)
        return fail(keys.error());
    if (store.findJob(record.job.id.text()))
        return knownHere(store, record, std::move(notes));
    if (const auto object = store.object(record.object.id))
        for (std::string& difference : exchange::objectDifferences(*object, record.object))
            notes.push_back(std::move(difference));
    if (const Status taken = store.importJob(record.object, record.job, read->pictures); !taken)
        return fail(taken.error());
    emit session.historyChanged();
    return TakenIn{record.job.id, false, std::move(notes)};
}

Status writeJobFile(const JobSession& session, const std::filesystem::path& file)
{
    exchange::JobFile content{{session.object(), session.job()}, {}};
    for (const std::string& name : exchange::picturesOf(content.record.job)) {
        auto picture = session.picture(name);
        if (!picture)
            return fail(picture.error());
        content.pictures.push_back(std::move(*picture));
    }
    const auto bytes = exchange::packJobFile(content);
    if (!bytes)
        return fail(bytes.error());
    return exchange::writeFile(file.string(), *bytes);
}

} // namespace sealwalk::ui
