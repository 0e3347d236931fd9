// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_signing.h"

#include "core/base/clock_zone.h"
#include "core/base/contract.h"
#include "core/exchange/canonical_json.h"
#include "core/exchange/signing.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <optional>

namespace sealwalk::exchange {

using nlohmann::json;

namespace {

/// The document as `signature` saw it: with its object, and the first `turns` of the review.
json asSeen(const json& document, const model::Signature& signature, std::size_t turns)
{
    json seen = document;
    seen["object"] = parseJson(signature.object).value_or(json());
    json& review = seen["job"]["review"];
    while (review.size() > turns)
        review.erase(review.size() - 1);
    return seen;
}

/// Numbers of turns a signature may cover, the likeliest first: those up to the turn that was made with it,
/// then from the latest state backwards. Each try reads the whole job.
std::vector<std::size_t> turnsToTry(const json& review, const model::Signature& signature)
{
    std::vector<std::size_t> turns;
    const std::string at = signature.at.text();
    for (std::size_t i = review.size() + 1; i-- > 0;)
        turns.push_back(i);
    std::stable_partition(turns.begin(), turns.end(), [&](std::size_t count) {
        return count > 0 && review[count - 1].is_object() &&
               review[count - 1].value("at", json()) == json(at);
    });
    return turns;
}

/// How many turns of the review the signature's digest covers; none when it covers no state this record can
/// have been in.
std::optional<std::size_t> coveredTurns(const json& document, const model::Signature& signature,
                                        const std::vector<PictureName>& pictures)
{
    for (const std::size_t turns : turnsToTry(document["job"]["review"], signature)) {
        const Result<std::string> digest = documentDigest(asSeen(document, signature, turns), pictures);
        if (digest && *digest == signature.digest)
            return turns;
    }
    return std::nullopt;
}

std::string whoAndWhen(const model::Signature& signature)
{
    return fmt::format("{} ({}), {} {} {}", signature.name, signature.role, signature.at.date(),
                       signature.at.timeOfDay().substr(0, 5), zoneText(signature.at));
}

bool isGenuine(const model::Signature& signature)
{
    const Result<PublicKey> key = PublicKey::parse(signature.publicKey);
    const Result<SignatureBytes> bytes = SignatureBytes::parse(signature.value);
    return key && bytes && verifySignature(*key, signedMessage(signature), *bytes);
}

CheckedSignature checkSignature(const json& document, const model::Signature& signature,
                                const std::vector<PictureName>& pictures)
{
    CheckedSignature checked;
    checked.signature = signature;
    if (!isGenuine(signature)) {
        checked.says =
            fmt::format("the signature of {} is broken: who, when, the statement, the digest, the key or "
                        "the signature itself was changed",
                        whoAndWhen(signature));
        return checked;
    }
    const std::optional<std::size_t> turns = coveredTurns(document, signature, pictures);
    if (!turns) {
        checked.says = fmt::format("the job, its object or its pictures were changed after {} signed",
                                   whoAndWhen(signature));
        return checked;
    }
    checked.ok = true;
    checked.reviewTurns = *turns;
    checked.says = fmt::format("signed by {}, key {}", whoAndWhen(signature),
                               PublicKey::parse(signature.publicKey)->shortText());
    return checked;
}

constexpr std::string_view kFollows = " Follows ";
constexpr std::string_view kEarlier = " earlier signature(s).";

/// How many signatures came before, by the statement's own count; 0 when it counts none.
std::size_t countedBefore(const std::string& statement)
{
    const std::size_t start = statement.rfind(kFollows);
    if (start == std::string::npos || !statement.ends_with(kEarlier))
        return 0;
    std::size_t count = 0;
    const char* const from = statement.data() + start + kFollows.size();
    const char* const end = statement.data() + statement.size() - kEarlier.size();
    if (from >= end)
        return 0;
    const auto read = std::from_chars(from, end, count);
    return read.ec == std::errc() && read.ptr == end ? count : 0;
}

/// A signature that a later one counted must still be there.
void checkCount(const model::Job& job, Verification& result)
{
    for (std::size_t i = 0; i < job.signatures.size(); ++i)
        if (const std::size_t before = countedBefore(job.signatures[i].statement); before > i)
            result.problems.push_back(fmt::format("{} of the {} signatures before that of {} are missing",
                                                  before - i, before, whoAndWhen(job.signatures[i])));
}

void checkApprovals(const model::Job& job, Verification& result)
{
    std::size_t covered = 0;
    for (const CheckedSignature& checked : result.signatures)
        if (checked.ok)
            covered = std::max(covered, checked.reviewTurns);
    for (std::size_t i = covered; i < job.review.size(); ++i)
        if (job.review[i].step == model::ReviewStep::Approved)
            result.problems.push_back(fmt::format("the approval by {} of {} is covered by no valid signature",
                                                  job.review[i].by, job.review[i].at.text()));
    for (std::size_t i = covered; i < job.review.size(); ++i)
        if (job.review[i].step == model::ReviewStep::Amendment)
            result.notes.push_back(fmt::format("the amendment by {} of {} is not signed", job.review[i].by,
                                               job.review[i].at.text()));
    if (covered > 0 && covered < job.review.size())
        result.notes.push_back(
            fmt::format("the last {} of {} turns of the review came after the last signature",
                        job.review.size() - covered, job.review.size()));
}

} // namespace

std::string signedMessage(const model::Signature& signature)
{
    const json message = {
        {"domain", "sealwalk-signature-1"}, {"id", signature.id.text()},  {"person", signature.person.text()},
        {"name", signature.name},           {"role", signature.role},     {"statement", signature.statement},
        {"at", signature.at.text()},        {"digest", signature.digest}, {"public_key", signature.publicKey},
    };
    // Text that is not UTF-8 has no canonical form; nothing was ever signed over an empty message.
    return canonicalJson(message).value_or("");
}

Result<model::Signature> signJob(const JobRecord& record, const std::vector<PictureName>& pictures,
                                 const model::Person& person, std::string_view passphrase, const Claim& claim)
{
    if (!person.active)
        return fail(ErrorCode::NotAllowed, person.name + " is no longer active here and cannot sign");
    if (person.sealedKey.empty())
        return fail(ErrorCode::NotAllowed, person.name + " has no signing key yet");
    const Result<SealedKey> key = SealedKey::parse(person.sealedKey);
    if (!key)
        return fail(key.error().in("signing key of " + person.name));
    if (key->publicKey.text() != person.publicKey)
        return fail(ErrorCode::DamagedFile, "signing key of " + person.name +
                                                ": its public half is not the one this person is known by");
    const Result<std::string> digest = jobDigest(record.object, record.job, pictures);
    if (!digest)
        return fail(digest.error());
    const Result<std::string> object = objectText(record.object);
    if (!object)
        return fail(object.error());

    model::Signature signature;
    signature.id = model::SignatureId::create();
    signature.person = person.id;
    signature.name = person.name;
    signature.role = claim.role;
    signature.statement = claim.statement;
    if (!record.job.signatures.empty())
        signature.statement += fmt::format("{}{}{}", kFollows, record.job.signatures.size(), kEarlier);
    signature.object = *object;
    signature.at = claim.at;
    signature.digest = *digest;
    signature.publicKey = person.publicKey;
    const std::string message = signedMessage(signature);
    if (message.empty())
        return fail(ErrorCode::BadInput, "name, role or statement is not UTF-8 text");
    const Result<SignatureBytes> bytes = sign(*key, passphrase, message);
    if (!bytes)
        return fail(bytes.error());
    signature.value = bytes->text();
    return signature;
}

Verification verifyDocument(const json& document, const JobRecord& record,
                            const std::vector<PictureName>& pictures)
{
    SEALWALK_EXPECT(document.is_object() && document.contains("job") && document["job"].contains("review"));
    Verification result;
    for (const model::Signature& signature : record.job.signatures) {
        CheckedSignature checked = checkSignature(document, signature, pictures);
        if (!checked.ok)
            result.problems.push_back(checked.says);
        result.signatures.push_back(std::move(checked));
    }
    checkApprovals(record.job, result);
    checkCount(record.job, result);
    if (const model::JobState expected = stateAfter(record.job.review); record.job.state != expected)
        result.problems.push_back(fmt::format("the job is marked \"{}\", but after its review it is \"{}\"",
                                              model::name(record.job.state), model::name(expected)));
    if (record.job.signatures.empty())
        result.notes.emplace_back("nobody has signed this job");
    return result;
}

Verification verifyRecord(const JobRecord& record, const std::vector<PictureName>& pictures)
{
    return verifyDocument(jobToJson(record.object, record.job), record, pictures);
}

std::optional<model::TestObject> approvedObject(const model::Job& job)
{
    const auto approval =
        std::find_if(job.signatures.rbegin(), job.signatures.rend(), [](const model::Signature& signature) {
            return signature.role == model::kApprovalRole;
        });
    if (approval == job.signatures.rend())
        return std::nullopt;
    auto object = objectFromText(approval->object);
    return object ? std::optional(std::move(*object)) : std::nullopt;
}

} // namespace sealwalk::exchange
