// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/merge.h"

#include <algorithm>
#include <set>

namespace sealwalk::storage {
namespace {

/// What belongs to a history and not to the record is left out of the comparison.
model::Job withoutNumbers(model::Job job)
{
    job.number = 0;
    job.openedAs = 0;
    return job;
}

Result<std::vector<NamedTrace>> tracesOf(const HistoryStore& from, const model::Job& job)
{
    std::vector<NamedTrace> traces;
    std::set<std::string> names;
    for (const model::Reading& reading : job.readings)
        if (!reading.trace.empty() && names.insert(reading.trace).second) {
            auto trace = from.trace(job.id, reading.trace);
            if (!trace && trace.error().code == ErrorCode::NotFound)
                continue;
            if (!trace)
                return fail(trace.error());
            traces.push_back({reading.trace, std::move(*trace)});
        }
    return traces;
}

Result<std::vector<model::Picture>> picturesOf(const HistoryStore& from, const model::Job& job)
{
    std::set<std::string> names;
    for (const model::Sheet& sheet : job.sketch.sheets)
        if (sheet.underlay)
            names.insert(sheet.underlay->picture);
    for (const model::Repair& repair : job.repairs)
        names.insert(repair.pictures.begin(), repair.pictures.end());
    std::vector<model::Picture> pictures;
    for (const std::string& name : names) {
        auto picture = from.picture(name);
        if (!picture)
            return fail(picture.error());
        pictures.push_back(std::move(*picture));
    }
    return pictures;
}

Status take(HistoryStore& into, const HistoryStore& from, const model::Job& job)
{
    const auto object = from.object(job.object);
    if (!object)
        return fail(object.error());
    const auto pictures = picturesOf(from, job);
    if (!pictures)
        return fail(pictures.error());
    const auto traces = tracesOf(from, job);
    if (!traces)
        return fail(traces.error());
    return into.importJob(*object, job, *pictures, *traces);
}

Result<int> takePeople(HistoryStore& into, const HistoryStore& from)
{
    const auto here = into.people();
    const auto there = from.people();
    if (!here || !there)
        return fail(here ? there.error() : here.error());
    int added = 0;
    for (model::Person person : *there) {
        if (std::any_of(here->begin(), here->end(),
                        [&](const model::Person& p) { return p.id == person.id; }))
            continue;
        person.sealedKey.clear(); // it never leaves its history
        if (const Status put = into.putPerson(person); !put)
            return fail(put.error());
        ++added;
    }
    return added;
}

} // namespace

Result<Merged> mergeHistory(HistoryStore& into, const HistoryStore& from)
{
    Merged merged;
    auto rows = from.jobs();
    if (!rows)
        return fail(rows.error());
    std::reverse(rows->begin(), rows->end()); // the oldest first, so that new numbers follow the years
    for (const JobRow& row : *rows) {
        const auto job = from.job(row.id);
        if (!job)
            return fail(job.error());
        const auto here = into.job(row.id);
        if (here) {
            (withoutNumbers(*here) == withoutNumbers(*job) ? merged.same : merged.different)
                .push_back(row.id);
            continue;
        }
        if (here.error().code != ErrorCode::NotFound)
            return fail(here.error());
        if (const Status taken = take(into, from, *job); !taken)
            return fail(taken.error());
        merged.taken.push_back(row.id);
    }
    const auto people = takePeople(into, from);
    if (!people)
        return fail(people.error());
    merged.people = *people;
    return merged;
}

} // namespace sealwalk::storage
