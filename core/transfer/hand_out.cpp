// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/hand_out.h"

#include "core/exchange/digest.h"
#include "core/exchange/signing.h"

#include <fmt/format.h>

#include <algorithm>

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
        }
    }
}

Result<exchange::Verification> verifyIn(const storage::HistoryStore& store, model::JobId job)
{
    const Result<exchange::JobRecord> record = loadRecord(store, job);
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
    if (!record->job.signatures.empty())
        if (const auto then = exchange::objectFromText(record->job.signatures.back().object);
            then && then->name != record->object.name)
            result.notes.push_back(
                fmt::format("when this was signed the object was called \"{}\"; now it is \"{}\"", then->name,
                            record->object.name));
    return result;
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
        const auto verification = verifyIn(store, row.id);
        if (!verification) {
            problems->push_back(fmt::format("job {}: {}", row.number, verification.error().message));
            continue;
        }
        for (const std::string& problem : verification->problems)
            problems->push_back(fmt::format("job {}: {}", row.number, problem));
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
