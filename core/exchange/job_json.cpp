// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_json.h"

#include "core/exchange/canonical_json.h"
#include "core/exchange/job_fields.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace sealwalk::exchange {

using nlohmann::json;

namespace {

/// The number at the end of a format's name, as far as `family`, "sealwalk-job-", names it; 0: it does not.
int versionOf(std::string_view format, std::string_view family)
{
    int version = 0;
    if (!format.starts_with(family))
        return 0;
    const char* last = format.data() + format.size();
    const auto [end, error] = std::from_chars(format.data() + family.size(), last, version);
    return error == std::errc{} && end == last ? version : 0;
}

/// Whether `format` is one of ours up to `known`; a later number is told apart, so that a person knows what
/// to do.
Status checkFormat(const json& document, std::string_view known)
{
    const std::string_view family = known.substr(0, known.rfind('-') + 1);
    if (!document.is_object() || !document.contains("format") || !document["format"].is_string())
        return fail(ErrorCode::BadInput, fmt::format("\"format\" is missing; \"{}\" is right", known));
    const std::string& format = document["format"].get_ref<const std::string&>();
    const int version = versionOf(format, family);
    if (version > versionOf(known, family))
        return fail(ErrorCode::NewerVersion,
                    fmt::format("this was written by a newer Sealwalk (format \"{}\"); this one reads up to "
                                "\"{}\", so use the newer program",
                                format, known));
    if (version > 0 && format == std::string(family) + std::to_string(version))
        return {};
    return fail(ErrorCode::BadInput, fmt::format("\"format\" is \"{}\"; \"{}\" is right", format, known));
}

/// The one format a job is written in.
std::string_view formatOf(const model::Job& job)
{
    const bool hasSaid =
        std::ranges::any_of(job.readings, [](const auto& reading) { return !reading.shielded.empty(); }) ||
        std::ranges::any_of(job.backgrounds, [](const auto& watch) { return watch.swing.has_value(); }) ||
        std::ranges::any_of(job.judgements, [](const auto& judgement) {
            return !judgement.of.empty() || judgement.verdict == model::kVerdictNotCounted;
        });
    if (!job.voidMeasurements.empty())
        return kJobFormatWithVoidMeasurements;
    if (hasSaid)
        return kJobFormatWithSaid;
    const bool hasParties = !job.setup.customer.empty() || !job.setup.witness.empty();
    return hasParties ? kJobFormatWithParties : kJobFormat;
}

struct JobDocument
{
    std::string format{kJobFormat};
    JobRecord record;
};

void describe(Fields& f, JobDocument& document)
{
    f.field("format", document.format);
    f.field("object", document.record.object);
    f.field("job", document.record.job);
}

/// A signature with the object it vouched for as a document inside, so that a person can read it.
struct SignedObject
{
    model::Signature signature;
    std::optional<model::TestObject> object;
};

void describe(Fields& f, SignedObject& item)
{
    exchange::describe(f, item.signature);
    f.field("object", item.object);
}

struct SignaturesDocument
{
    std::string format{kSignaturesFormat};
    std::vector<SignedObject> signatures;
};

void describe(Fields& f, SignaturesDocument& document)
{
    f.field("format", document.format);
    f.field("signatures", document.signatures);
}

template <class T>
Result<T> readDocument(const json& document)
{
    T value;
    Complaints complaints;
    Codec<T>::read(document, value, Place{}, complaints);
    if (complaints.any())
        return fail(complaints.first());
    return value;
}

} // namespace

json jobToJson(const model::TestObject& object, const model::Job& job)
{
    json document = json::object();
    document["format"] = formatOf(job);
    document["object"] = Codec<model::TestObject>::write(object);
    document["job"] = Codec<model::Job>::write(job);
    return document;
}

Result<JobRecord> jobFromJson(const json& document)
{
    if (const Status ours = checkFormat(document, kJobFormatWithVoidMeasurements); !ours)
        return fail(ours.error());
    Result<JobDocument> read = readDocument<JobDocument>(document);
    if (!read)
        return fail(read.error());
    if (const std::string_view right = formatOf(read->record.job); read->format != right)
        return fail(
            ErrorCode::BadInput,
            fmt::format("\"format\" is \"{}\"; \"{}\" is right for what is in it", read->format, right));
    read->record.job.state = stateAfter(read->record.job.review);
    if (const Status fits = checkRecord(read->record); !fits)
        return fail(fits.error());
    return std::move(read->record);
}

json signaturesToJson(const std::vector<model::Signature>& signatures)
{
    SignaturesDocument document;
    for (const model::Signature& signature : signatures) {
        SignedObject item{signature, std::nullopt};
        // A text that cannot be read is left out: the signature over it then fails, which is the truth.
        if (const Result<model::TestObject> object = objectFromText(signature.object))
            item.object = *object;
        document.signatures.push_back(std::move(item));
    }
    return Codec<SignaturesDocument>::write(document);
}

Result<std::vector<model::Signature>> signaturesFromJson(const json& document)
{
    if (const Status ours = checkFormat(document, kSignaturesFormat); !ours)
        return fail(ours.error());
    Result<SignaturesDocument> read = readDocument<SignaturesDocument>(document);
    if (!read)
        return fail(read.error());
    std::vector<model::Signature> signatures;
    for (SignedObject& item : read->signatures) {
        if (item.object) {
            Result<std::string> text = objectText(*item.object);
            if (!text)
                return fail(text.error());
            item.signature.object = std::move(*text);
        }
        signatures.push_back(std::move(item.signature));
    }
    return signatures;
}

json objectToJson(const model::TestObject& object)
{
    return Codec<model::TestObject>::write(object);
}

Result<model::TestObject> objectFromJson(const json& document)
{
    return readDocument<model::TestObject>(document);
}

Result<std::string> objectText(const model::TestObject& object)
{
    return canonicalJson(objectToJson(object));
}

Result<model::TestObject> objectFromText(std::string_view text)
{
    const Result<json> document = parseJson(text);
    if (!document)
        return fail(document.error());
    return objectFromJson(*document);
}

model::JobState stateAfter(const std::vector<model::ReviewEntry>& review)
{
    model::JobState state = model::JobState::Open;
    for (const model::ReviewEntry& entry : review) {
        switch (entry.step) {
        case model::ReviewStep::Submitted:
            state = model::JobState::Submitted;
            break;
        case model::ReviewStep::Returned:
            state = model::JobState::Returned;
            break;
        case model::ReviewStep::Approved:
            state = model::JobState::Signed;
            break;
        case model::ReviewStep::Remark:
        case model::ReviewStep::Answer:
        case model::ReviewStep::Amendment:
            break;
        }
    }
    return state;
}

} // namespace sealwalk::exchange
