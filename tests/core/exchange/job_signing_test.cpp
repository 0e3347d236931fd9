// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_signing.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>

#include <functional>

namespace sealwalk::exchange {
namespace {

constexpr std::uint64_t kSeed = 31;

Verification look(const JobFile& file)
{
    return verifyRecord(file.record, namesOf(file.pictures));
}

TEST(JobSigning, AFreshSignatureHoldsAndSaysWho)
{
    const JobFile file = signedFile(kSeed, testPerson("Rhea Quill", "reviewer"));
    const Verification result = look(file);
    EXPECT_TRUE(result.ok()) << result.problems.front();
    ASSERT_EQ(result.signatures.size(), 1U);
    EXPECT_TRUE(result.signatures[0].ok);
    EXPECT_NE(result.signatures[0].says.find("Rhea Quill (reviewer)"), std::string::npos);
}

// Property: whatever is changed in a signed record afterwards, verification says so.
TEST(JobSigning, EveryKindOfLaterChangeIsNoticed)
{
    const JobFile file = signedFile(kSeed, testPerson("Rhea Quill", "reviewer"));
    struct Row
    {
        const char* what;
        std::function<void(JobFile&)> change;
    };
    const Row rows[] = {
        {"peak", [](JobFile& f) { f.record.job.readings[0].peak = LeakRate::fromSi(1e-12); }},
        {"reading removed", [](JobFile& f) { f.record.job.readings.pop_back(); }},
        {"reading added", [](JobFile& f) { f.record.job.readings.push_back(f.record.job.readings[0]); }},
        {"order", [](JobFile& f) { std::swap(f.record.job.readings[0], f.record.job.readings[1]); }},
        {"limit", [](JobFile& f) { f.record.job.setup.pointLimit = LeakRate::fromSi(1.0); }},
        {"number", [](JobFile& f) { f.record.job.number += 1; }},
        {"point moved", [](JobFile& f) { f.record.job.sketch.points[0].along *= 0.5; }},
        {"remark", [](JobFile& f) { f.record.job.review[0].text += "!"; }},
        {"approval removed", [](JobFile& f) { f.record.job.review.pop_back(); }},
        {"state", [](JobFile& f) { f.record.job.state = model::JobState::Open; }},
        {"signature removed", [](JobFile& f) { f.record.job.signatures.clear(); }},
        {"signer's name", [](JobFile& f) { f.record.job.signatures[0].name = "Tess"; }},
        {"signer's role", [](JobFile& f) { f.record.job.signatures[0].role = "witness"; }},
        {"statement", [](JobFile& f) { f.record.job.signatures[0].statement += "s"; }},
        {"time", [](JobFile& f) { f.record.job.signatures[0].at.utcMilliseconds += 1; }},
        {"offset", [](JobFile& f) { f.record.job.signatures[0].at.offsetMinutes += 1; }},
        {"person", [](JobFile& f) { f.record.job.signatures[0].person = model::PersonId::create(); }},
        {"identity", [](JobFile& f) { f.record.job.signatures[0].id = model::SignatureId::create(); }},
        {"digest", [](JobFile& f) { f.record.job.signatures[0].digest[0] ^= 1; }},
        {"key", [](JobFile& f) { f.record.job.signatures[0].publicKey = testPerson("x", "y").publicKey; }},
        {"object vouched for",
         [](JobFile& f) {
             f.record.object.name += "?";
             f.record.job.signatures[0].object = objectText(f.record.object).value();
         }},
        {"object text broken", [](JobFile& f) { f.record.job.signatures[0].object.clear(); }},
        {"picture", [](JobFile& f) { f.pictures.front().extension = "jpg"; }},
    };
    ASSERT_FALSE(file.pictures.empty());
    for (const Row& row : rows) {
        JobFile changed = file;
        row.change(changed);
        EXPECT_FALSE(look(changed).ok()) << row.what;
    }
}

TEST(JobSigning, AnObjectRenamedLaterLeavesOldSignaturesStanding)
{
    JobFile file = signedFile(kSeed, testPerson("Rhea Quill", "reviewer"));
    file.record.object.name = "The old box";
    EXPECT_TRUE(look(file).ok());
}

TEST(JobSigning, AnEarlierSignatureStandsWhenOnlyTheReviewWentOn)
{
    JobFile file = unsignedFile(kSeed);
    model::Job& job = file.record.job;
    const auto addSignature = [&](const char* name, const char* role) {
        job.signatures.push_back(signJob(file.record, namesOf(file.pictures), testPerson(name, role),
                                         kTestPassphrase, {role, "I did it", job.opened})
                                     .value());
    };
    job.review.push_back(turn(model::ReviewStep::Submitted, "Tess"));
    addSignature("Tess", "tester");
    const std::size_t asSubmitted = job.review.size();
    job.review.push_back(turn(model::ReviewStep::Approved, "Rhea"));
    addSignature("Rhea", "reviewer");
    job.review.push_back(turn(model::ReviewStep::Amendment, "Rhea"));
    job.state = model::JobState::Signed;
    const Verification result = look(file);
    EXPECT_TRUE(result.ok()) << result.problems.front();
    EXPECT_EQ(result.signatures[0].reviewTurns, asSubmitted);
    EXPECT_EQ(result.signatures[1].reviewTurns, asSubmitted + 1);
    ASSERT_EQ(result.notes.size(), 2U);
    EXPECT_NE(result.notes[0].find("the amendment by Rhea"), std::string::npos);
    EXPECT_NE(result.notes[1].find("after the last signature"), std::string::npos);
    // The reviewer signed after one other: that one cannot go unnoticed.
    job.signatures.erase(job.signatures.begin());
    EXPECT_FALSE(look(file).ok());
}

TEST(JobSigning, AnApprovalNobodySignedIsAProblem)
{
    JobFile file = unsignedFile(kSeed);
    file.record.job.review.push_back(turn(model::ReviewStep::Approved, "Rhea"));
    file.record.job.state = model::JobState::Signed;
    const Verification result = look(file);
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_NE(result.problems[0].find("approval by Rhea"), std::string::npos) << result.problems[0];
}

TEST(JobSigning, WhoCannotSignIsTurnedAway)
{
    const JobFile file = unsignedFile(kSeed);
    const auto attempt = [&](const model::Person& person, const char* passphrase) {
        return signJob(file.record, namesOf(file.pictures), person, passphrase, {"reviewer", "x", {}});
    };
    const model::Person good = testPerson("Rhea", "reviewer");
    EXPECT_EQ(attempt(good, "not the passphrase").error().code, ErrorCode::WrongPassphrase);
    model::Person left = good;
    left.active = false;
    EXPECT_EQ(attempt(left, kTestPassphrase).error().code, ErrorCode::NotAllowed);
    model::Person keyless = good;
    keyless.sealedKey.clear();
    EXPECT_EQ(attempt(keyless, kTestPassphrase).error().code, ErrorCode::NotAllowed);
    model::Person swapped = good;
    swapped.publicKey = testPerson("x", "y").publicKey;
    EXPECT_EQ(attempt(swapped, kTestPassphrase).error().code, ErrorCode::DamagedFile);
}

// Property: the digest is of the record, not of the history it lies in.
TEST(JobDigest, DoesNotDependOnTheHistory)
{
    const JobFile file = signedFile(kSeed, testPerson("Rhea", "reviewer"));
    model::Job elsewhere = file.record.job;
    elsewhere.openedAs = elsewhere.number;
    elsewhere.number = 9999;
    for (model::Reading& reading : elsewhere.readings)
        reading.sequence += 100'000;
    const auto pictures = namesOf(file.pictures);
    EXPECT_EQ(jobDigest(file.record.object, elsewhere, pictures).value(),
              jobDigest(file.record.object, file.record.job, pictures).value());
    EXPECT_EQ(file.record.job.signatures[0].digest,
              jobDigest(file.record.object, file.record.job, pictures).value());
}

} // namespace
} // namespace sealwalk::exchange
