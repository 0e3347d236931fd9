// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/archive.h"
#include "core/exchange/canonical_json.h"
#include "core/exchange/job_file.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <functional>
#include <random>

namespace sealwalk::exchange {
namespace {

using nlohmann::json;

constexpr std::uint64_t kSeed = 31;

const JobFile& signedExample()
{
    static const JobFile file = signedFile(kSeed, testPerson("Rhea Quill", "reviewer"));
    return file;
}

const std::string& packedExample()
{
    static const std::string bytes = packJobFile(signedExample()).value();
    return bytes;
}

std::string says(const Result<Verification>& result)
{
    if (!result)
        return result.error().message;
    if (!result->problems.empty())
        return result->problems.front();
    return result->form.empty() ? "" : result->form.front();
}

// Property: what goes in comes out, and one content has one file.
TEST(JobFile, AnyJobComesBackWhole)
{
    const model::Person person = testPerson("Rhea", "reviewer");
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const JobFile file = seed % 2 == 0 ? signedFile(seed, person) : unsignedFile(seed);
        const auto bytes = packJobFile(file);
        ASSERT_TRUE(bytes.has_value()) << seed << ": " << bytes.error().message;
        const auto back = readJobFile(*bytes);
        ASSERT_TRUE(back.has_value()) << seed << ": " << back.error().message;
        EXPECT_TRUE(*back == file) << seed;
        EXPECT_EQ(packJobFile(*back).value(), *bytes) << seed;
        EXPECT_EQ(says(verifyJobFile(*bytes)), "") << seed;
    }
}

// Property: 10 000 random bit flips, none passes for the untouched file, and content that still reads the
// same is said to do so.
TEST(JobFileTampering, TenThousandFlippedBitsAreNoticed)
{
    const std::string& good = packedExample();
    std::mt19937 random(2026);
    int packingOnly = 0;
    int refused = 0;
    for (int i = 0; i < 10'000; ++i) {
        std::string bytes = good;
        const std::size_t byte = std::uniform_int_distribution<std::size_t>(0, bytes.size() - 1)(random);
        bytes[byte] =
            static_cast<char>(bytes[byte] ^ (1 << std::uniform_int_distribution<int>(0, 7)(random)));
        const auto result = verifyJobFile(bytes);
        ASSERT_FALSE(says(result).empty()) << "byte " << byte << " of " << good.size() << " was not noticed";
        const auto read = readJobFile(bytes);
        if (!read) {
            ++refused;
            continue;
        }
        EXPECT_TRUE(*read == signedExample())
            << "byte " << byte << " changed the content, and it still reads";
        EXPECT_TRUE(result->problems.empty()) << result->problems.front();
        EXPECT_NE(says(result).find("contents are unchanged"), std::string::npos) << says(result);
        ++packingOnly;
    }
    RecordProperty("refused", refused);
    RecordProperty("packing_only", packingOnly);
    EXPECT_EQ(refused + packingOnly, 10'000);
    EXPECT_GT(refused, packingOnly);
}

// Property: every byte of a signed file, one after the other, changed to another value.
TEST(JobFileTampering, EveryByteCounts)
{
    const std::string& good = packedExample();
    std::mt19937 random(11);
    for (std::size_t byte = 0; byte < good.size(); ++byte) {
        std::string bytes = good;
        bytes[byte] = static_cast<char>(bytes[byte] ^ std::uniform_int_distribution<int>(1, 255)(random));
        ASSERT_FALSE(says(verifyJobFile(bytes)).empty()) << "byte " << byte << " of " << good.size();
    }
}

/// The example with one member rewritten and packed anew, checksums right: what a careful forger would do.
std::string forged(const std::string& member, const std::function<void(json&)>& change)
{
    auto members = readArchive(packedExample()).value();
    for (ArchiveMember& m : members) {
        if (m.name != member)
            continue;
        json document = parseJson(m.bytes).value();
        change(document);
        m.bytes = canonicalJson(document).value();
    }
    return packArchive(members).value();
}

TEST(JobFileTampering, APerfectlyPackedForgeryBreaksTheSignature)
{
    const auto result = verifyJobFile(
        forged("job.json", [](json& d) { d["job"]["setup"]["limit_agreed_by"] = "somebody else"; }));
    EXPECT_NE(says(result).find("changed after Rhea Quill"), std::string::npos) << says(result);
    const auto number = verifyJobFile(forged("job.json", [](json& d) { d["job"]["number"] = 1; }));
    EXPECT_NE(says(number).find("changed after Rhea Quill"), std::string::npos) << says(number);
    const auto name = verifyJobFile(
        forged("signatures.json", [](json& d) { d["signatures"][0]["name"] = "Somebody Else"; }));
    EXPECT_NE(says(name).find("signature of Somebody Else (reviewer)"), std::string::npos) << says(name);
    const auto none =
        verifyJobFile(forged("signatures.json", [](json& d) { d["signatures"] = json::array(); }));
    EXPECT_NE(says(none).find("covered by no valid signature"), std::string::npos) << says(none);
}

TEST(JobFileTampering, NamesTheMemberThatChanged)
{
    for (const char* member : {"job.json", "signatures.json", "pictures/"}) {
        std::string bytes = packedExample();
        const std::size_t name = bytes.find(member);
        bytes[name + 90] ^= 1; // past name and header, inside the member's own bytes
        EXPECT_NE(says(verifyJobFile(bytes)).find(member), std::string::npos) << says(verifyJobFile(bytes));
    }
}

TEST(JobFile, AFilePackedAgainByAnotherProgramIsReadAndSaidToBeSo)
{
    auto members = readArchive(packedExample()).value();
    std::swap(members.front(), members.back());
    const std::string other = packArchive(members).value();
    EXPECT_TRUE(readJobFile(other).value() == signedExample());
    EXPECT_NE(says(verifyJobFile(other)).find("contents are unchanged"), std::string::npos);

    const std::string trailing = packedExample() + "x";
    EXPECT_FALSE(says(verifyJobFile(trailing)).empty());
    const std::string leading = "x" + packedExample();
    EXPECT_FALSE(says(verifyJobFile(leading)).empty());
}

TEST(JobFile, JsonThatIsNotCanonicalIsSaidToBeSo)
{
    auto members = readArchive(packedExample()).value();
    members.front().bytes += "\n";
    const auto result = verifyJobFile(packArchive(members).value());
    EXPECT_EQ(says(result), "job.json is not in canonical form; its content reads the same");
}

TEST(JobFile, RefusesWhatIsNoJobFile)
{
    struct Row
    {
        std::string bytes;
        ErrorCode code;
        const char* says;
    };
    const auto zip = [](std::vector<ArchiveMember> members) { return packArchive(members).value(); };
    auto members = readArchive(packedExample()).value();
    auto strange = members;
    strange.push_back({"readme.txt", "hello"});
    auto unsignedOne = members;
    unsignedOne.pop_back();
    auto pictureless = members;
    pictureless.erase(pictureless.begin() + 1);
    auto misnamed = members;
    misnamed[1].name = "pictures/photo.png";
    auto swapped = members;
    swapped[1].bytes += "x";
    auto extra = members;
    extra.push_back({"pictures/" + sha256Hex("more") + ".png", "more"});
    const Row rows[] = {
        {"", ErrorCode::ForeignFile, "empty"},
        {"plain text", ErrorCode::ForeignFile, "not a zip"},
        {packedExample().substr(0, 1000), ErrorCode::DamagedFile, "truncated"},
        {zip({{"letter.txt", "x"}}), ErrorCode::ForeignFile, "no job.json"},
        {zip({{"job.json", "{"}, {"signatures.json", "{}"}}), ErrorCode::BadInput, "job.json: line 1"},
        {zip(strange), ErrorCode::BadInput, "readme.txt does not belong"},
        {zip(unsignedOne), ErrorCode::DamagedFile, "signatures.json is missing"},
        {zip(pictureless), ErrorCode::DamagedFile, "is missing"},
        {zip(misnamed), ErrorCode::BadInput, "a picture's name is its SHA-256"},
        {zip(swapped), ErrorCode::DamagedFile, "bytes do not match its name"},
        {zip(extra), ErrorCode::BadInput, "does not refer to the picture"},
        {forged("job.json", [](json& d) { d["format"] = "sealwalk-job-5"; }), ErrorCode::NewerVersion,
         "newer Sealwalk"},
        {forged("signatures.json", [](json& d) { d["format"] = "sealwalk-signatures-9"; }),
         ErrorCode::NewerVersion, "newer Sealwalk"},
    };
    for (const Row& row : rows) {
        const auto read = readJobFile(row.bytes);
        ASSERT_FALSE(read.has_value()) << row.says;
        EXPECT_EQ(read.error().code, row.code) << read.error().message;
        EXPECT_NE(read.error().message.find(row.says), std::string::npos) << read.error().message;
        EXPECT_NE(says(verifyJobFile(row.bytes)).find(row.says), std::string::npos);
    }
}

TEST(JobFile, APictureThatIsMissingOrAlteredCannotBePacked)
{
    JobFile file = signedExample();
    file.pictures.front().bytes.push_back(0);
    EXPECT_EQ(packJobFile(file).error().code, ErrorCode::DamagedFile);
    file.pictures.erase(file.pictures.begin());
    EXPECT_EQ(packJobFile(file).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace sealwalk::exchange
