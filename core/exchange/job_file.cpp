// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_file.h"

#include "core/exchange/archive.h"
#include "core/exchange/canonical_json.h"
#include "core/exchange/digest.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace sealwalk::exchange {

using nlohmann::json;

namespace {

constexpr std::string_view kJobMember = "job.json";
constexpr std::string_view kSignaturesMember = "signatures.json";
constexpr std::string_view kPictures = "pictures/";
constexpr std::size_t kSha256Digits = 64;
constexpr std::array<std::string_view, 4> kExtensions{"png", "jpg", "svg", "pdf"};

std::string_view asText(const std::vector<std::uint8_t>& bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

bool isPictureName(const PictureName& name)
{
    return bytesOfHex(name.sha256, kSha256Digits / 2).has_value() &&
           std::find(kExtensions.begin(), kExtensions.end(), name.extension) != kExtensions.end();
}

/// The object a signed job's file carries: as it was approved with.
model::TestObject objectAsSigned(const JobRecord& record)
{
    auto approved = approvedObject(record.job);
    return approved && approved->id == record.object.id ? *approved : record.object;
}

/// A job file taken apart, every member read.
struct Contents
{
    json document;
    std::string jobText;
    std::string signaturesText;
    JobFile file;
};

Result<model::Picture> readPicture(const ArchiveMember& member)
{
    const std::string_view rest = std::string_view(member.name).substr(kPictures.size());
    const PictureName name{std::string(rest.substr(0, std::min(rest.size(), kSha256Digits))),
                           std::string(rest.size() > kSha256Digits ? rest.substr(kSha256Digits + 1) : "")};
    if (!isPictureName(name) || name.memberName() != member.name)
        return fail(ErrorCode::BadInput,
                    member.name + ": a picture's name is its SHA-256 and .png, .jpg, .svg or .pdf");
    if (sha256Hex(member.bytes) != name.sha256)
        return fail(ErrorCode::DamagedFile, member.name + " was changed: its bytes do not match its name");
    return model::Picture{name.sha256, name.extension, {member.bytes.begin(), member.bytes.end()}};
}

Status readJobMember(Contents& into, const std::string& text)
{
    Result<json> document = parseJson(text);
    if (!document)
        return fail(document.error().in(kJobMember));
    Result<JobRecord> record = jobFromJson(*document);
    if (!record)
        return fail(record.error().in(kJobMember));
    into.jobText = text;
    into.document = std::move(*document);
    into.file.record = std::move(*record);
    return {};
}

Status readSignaturesMember(Contents& into, const std::string& text)
{
    const Result<json> document = parseJson(text);
    if (!document)
        return fail(document.error().in(kSignaturesMember));
    Result<std::vector<model::Signature>> signatures = signaturesFromJson(*document);
    if (!signatures)
        return fail(signatures.error().in(kSignaturesMember));
    into.signaturesText = text;
    into.file.record.job.signatures = std::move(*signatures);
    return {};
}

Status checkPictures(const Contents& contents)
{
    const std::vector<std::string> wanted = picturesOf(contents.file.record.job);
    std::set<std::string> there;
    for (const model::Picture& picture : contents.file.pictures)
        if (!there.insert(picture.sha256).second)
            return fail(ErrorCode::BadInput, "the picture " + picture.sha256 + " is there twice");
    for (const std::string& name : wanted)
        if (there.erase(name) == 0)
            return fail(ErrorCode::DamagedFile,
                        "the picture " + name + " that job.json refers to is missing");
    if (!there.empty())
        return fail(ErrorCode::BadInput, "job.json does not refer to the picture " + *there.begin());
    return {};
}

/// The newest format first: a later version may change anything else about the file.
Result<Contents> readContents(std::vector<ArchiveMember> members)
{
    const auto find = [&](std::string_view name) -> const ArchiveMember* {
        const auto found = std::find_if(members.begin(), members.end(),
                                        [&](const ArchiveMember& member) { return member.name == name; });
        return found == members.end() ? nullptr : &*found;
    };
    const ArchiveMember* jobMember = find(kJobMember);
    if (jobMember == nullptr)
        return fail(ErrorCode::ForeignFile, "there is no job.json in this zip, so it is not a job file");
    Contents contents;
    if (const Status read = readJobMember(contents, jobMember->bytes); !read)
        return fail(read.error());
    const ArchiveMember* signaturesMember = find(kSignaturesMember);
    if (signaturesMember == nullptr)
        return fail(ErrorCode::DamagedFile, "signatures.json is missing; every job file has one");
    if (const Status read = readSignaturesMember(contents, signaturesMember->bytes); !read)
        return fail(read.error());
    for (const ArchiveMember& member : members) {
        if (&member == jobMember || &member == signaturesMember)
            continue;
        if (!std::string_view(member.name).starts_with(kPictures))
            return fail(ErrorCode::BadInput, member.name + " does not belong in a job file");
        Result<model::Picture> picture = readPicture(member);
        if (!picture)
            return fail(picture.error());
        contents.file.pictures.push_back(std::move(*picture));
    }
    std::sort(contents.file.pictures.begin(), contents.file.pictures.end(),
              [](const model::Picture& a, const model::Picture& b) { return a.sha256 < b.sha256; });
    if (const Status fit = checkPictures(contents); !fit)
        return fail(fit.error());
    return contents;
}

/// The members in the one order there is.
std::vector<ArchiveMember> inOrder(std::string jobText, const std::vector<model::Picture>& pictures,
                                   std::string signaturesText)
{
    std::map<std::string, std::string> sorted;
    for (const model::Picture& picture : pictures)
        sorted[PictureName{picture.sha256, picture.extension}.memberName()] = asText(picture.bytes);
    std::vector<ArchiveMember> members;
    members.push_back({std::string(kJobMember), std::move(jobText)});
    for (auto& entry : sorted)
        members.push_back({entry.first, std::move(entry.second)});
    members.push_back({std::string(kSignaturesMember), std::move(signaturesText)});
    return members;
}

/// What differs from the canonical form although every member reads well.
void checkForm(std::string_view bytes, const Contents& contents, Verification& result)
{
    const Result<std::string> job = canonicalJson(contents.document);
    if (!job || *job != contents.jobText)
        result.form.emplace_back("job.json is not in canonical form; its content reads the same");
    const Result<std::string> signatures =
        canonicalJson(signaturesToJson(contents.file.record.job.signatures));
    if (!signatures || *signatures != contents.signaturesText)
        result.form.emplace_back("signatures.json is not in canonical form; its content reads the same");
    const Result<std::string> packed =
        packArchive(inOrder(contents.jobText, contents.file.pictures, contents.signaturesText));
    if (!packed || *packed == bytes)
        return;
    const auto [ours, theirs] = std::mismatch(packed->begin(), packed->end(), bytes.begin(), bytes.end());
    result.form.push_back(
        fmt::format("the packing of the file differs from its canonical form at byte {}; the "
                    "members' contents are unchanged",
                    ours - packed->begin()));
}

} // namespace

std::vector<PictureName> namesOf(const std::vector<model::Picture>& pictures)
{
    std::vector<PictureName> names;
    names.reserve(pictures.size());
    for (const model::Picture& picture : pictures)
        names.push_back({picture.sha256, picture.extension});
    return names;
}

Result<std::string> packJobFile(const JobFile& file)
{
    std::vector<model::Picture> pictures;
    for (const std::string& name : picturesOf(file.record.job)) {
        const auto found =
            std::find_if(file.pictures.begin(), file.pictures.end(),
                         [&](const model::Picture& picture) { return picture.sha256 == name; });
        if (found == file.pictures.end())
            return fail(ErrorCode::NotFound, "the picture " + name + " that the job refers to is missing");
        if (!isPictureName({found->sha256, found->extension}))
            return fail(ErrorCode::BadInput,
                        "the picture " + name +
                            " is named wrongly; its SHA-256 and png, jpg, svg or pdf are right");
        if (sha256Hex(asText(found->bytes)) != name)
            return fail(ErrorCode::DamagedFile, "the picture " + name + " was changed since it was added");
        pictures.push_back(*found);
    }
    const JobRecord record{objectAsSigned(file.record), file.record.job};
    if (const Status fits = checkRecord(record); !fits)
        return fail(fits.error());
    Result<std::string> job = canonicalJson(jobToJson(record.object, record.job));
    if (!job)
        return fail(job.error());
    Result<std::string> signatures = canonicalJson(signaturesToJson(record.job.signatures));
    if (!signatures)
        return fail(signatures.error());
    return packArchive(inOrder(std::move(*job), pictures, std::move(*signatures)));
}

Result<JobFile> readJobFile(std::string_view bytes)
{
    Result<std::vector<ArchiveMember>> members = readArchive(bytes);
    if (!members)
        return fail(members.error());
    Result<Contents> contents = readContents(std::move(*members));
    if (!contents)
        return fail(contents.error());
    return std::move(contents->file);
}

Result<Verification> verifyJobFile(std::string_view bytes)
{
    const auto asAnswer = [](const Error& error) -> Result<Verification> {
        const bool isAnswer = error.code == ErrorCode::DamagedFile || error.code == ErrorCode::BadInput;
        if (!isAnswer)
            return fail(error);
        Verification result;
        result.problems.push_back(error.message);
        return result;
    };
    Result<std::vector<ArchiveMember>> members = readArchive(bytes);
    if (!members)
        return asAnswer(members.error());
    const Result<Contents> contents = readContents(std::move(*members));
    if (!contents)
        return asAnswer(contents.error());
    Verification result =
        verifyDocument(contents->document, contents->file.record, namesOf(contents->file.pictures));
    checkForm(bytes, *contents, result);
    return result;
}

} // namespace sealwalk::exchange
