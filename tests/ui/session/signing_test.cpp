// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "tests/support/temporary_history.h"
#include "ui/session/signing.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace sealwalk::ui {
namespace {

constexpr int kPatience = 30000; // the key costs a good part of a second, more under a sanitizer

class SigningTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(1);
        ReadingDraft draft;
        draft.point = history.session.job().sketch.points.front().id;
        draft.peak = millibarLitresPerSecond(3e-9);
        ASSERT_TRUE(history.session.store(draft).has_value());
        model::Person person;
        person.name = "S. Visor";
        person.role = "reviewer";
        EXPECT_TRUE(
            statusOf([&] { signing.createPerson(person, QStringLiteral("correct horse")); }).has_value());
        reviewer = history.session.people().value().front().id;
    }

    Status statusOf(const std::function<void()>& act)
    {
        Status status = fail(ErrorCode::NoAnswer, "nothing was announced");
        bool done = false;
        const auto connection =
            QObject::connect(&signing, &Signing::finished, [&](const std::optional<Error>& problem) {
                status = problem ? Status(fail(*problem)) : Status();
                done = true;
            });
        act();
        EXPECT_TRUE(QTest::qWaitFor([&] { return done; }, kPatience));
        QObject::disconnect(connection);
        return status;
    }

    tests::TemporaryHistory history;
    Signing signing{history.session};
    model::PersonId reviewer;
};

TEST_F(SigningTest, ApprovesOnceSubmittedAndLocksTheJob)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    const Status status =
        statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse"), "as tested"); });
    ASSERT_TRUE(status.has_value()) << status.error().message;
    EXPECT_EQ(history.session.job().state, model::JobState::Signed);
    const auto verification = signing.verify();
    ASSERT_TRUE(verification.has_value());
    EXPECT_TRUE(verification->ok());
    ReadingDraft late;
    late.point = history.session.job().sketch.points.front().id;
    late.peak = millibarLitresPerSecond(1e-9);
    EXPECT_EQ(history.session.store(late).error().code, ErrorCode::NotAllowed);
}

TEST_F(SigningTest, RefusesAWrongPassphraseAndChangesNothing)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    const Status status =
        statusOf([&] { signing.approve(reviewer, QStringLiteral("battery staple"), "as tested"); });
    ASSERT_FALSE(status.has_value());
    EXPECT_EQ(status.error().code, ErrorCode::WrongPassphrase);
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    EXPECT_TRUE(history.session.job().signatures.empty());
}

TEST_F(SigningTest, NobodySignsWhatChangedSinceTheyLooked)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    auto other = storage::HistoryStore::open(history.file(), storage::HistoryStore::Mode::ReadWrite);
    ASSERT_TRUE(other.has_value());
    const Status status = statusOf([&] {
        signing.approve(reviewer, QStringLiteral("correct horse"), "as tested");
        model::VoidMark mark{history.session.job().readings.front().id, "drift", "T. Tester",
                             Timestamp::now()};
        ASSERT_TRUE(other->addVoid(history.session.job().id, {mark}).has_value());
    });
    ASSERT_FALSE(status.has_value());
    EXPECT_EQ(status.error().code, ErrorCode::Conflict);
    EXPECT_NE(history.session.job().state, model::JobState::Signed);
}

TEST_F(SigningTest, APassphraseCanBeChanged)
{
    EXPECT_TRUE(statusOf([&] {
                    signing.changePassphrase(reviewer, QStringLiteral("correct horse"),
                                             QStringLiteral("new passphrase"));
                }).has_value());
    ASSERT_TRUE(history.session.submit("").has_value());
    EXPECT_FALSE(statusOf([&] {
                     signing.approve(reviewer, QStringLiteral("correct horse"), "as tested");
                 }).has_value());
    EXPECT_TRUE(statusOf([&] {
                    signing.approve(reviewer, QStringLiteral("new passphrase"), "as tested");
                }).has_value());
}

TEST_F(SigningTest, AnAmendmentIsSignedItselfAndTheRecordStays)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    EXPECT_FALSE(
        statusOf([&] { signing.amend(reviewer, QStringLiteral("correct horse"), "late"); }).has_value());
    ASSERT_TRUE(statusOf([&] {
                    signing.approve(reviewer, QStringLiteral("correct horse"), "as tested");
                }).has_value());
    const Status wrong = statusOf([&] { signing.amend(reviewer, QStringLiteral("wrong horse"), "late"); });
    ASSERT_FALSE(wrong.has_value());
    EXPECT_EQ(wrong.error().code, ErrorCode::WrongPassphrase);
    const Status added =
        statusOf([&] { signing.amend(reviewer, QStringLiteral("correct horse"), "gauge was 3 % low"); });
    ASSERT_TRUE(added.has_value()) << added.error().message;
    const model::Job& job = history.session.job();
    EXPECT_EQ(job.state, model::JobState::Signed);
    EXPECT_EQ(job.review.back().step, model::ReviewStep::Amendment);
    ASSERT_EQ(job.signatures.size(), 2u);
    EXPECT_EQ(job.signatures.back().role, model::kAmendmentRole);
    const auto verification = signing.verify();
    ASSERT_TRUE(verification.has_value());
    EXPECT_TRUE(verification->ok());
    EXPECT_EQ(verification->signatures.size(), 2u);
    // The first signature taken out: the second counted it.
    exchange::JobRecord record{history.session.object(), job};
    record.job.signatures.erase(record.job.signatures.begin());
    EXPECT_FALSE(exchange::verifyRecord(record, {}).ok());
    // Nothing else of the signed job opens with it.
    model::Signature witness = job.signatures.back();
    witness.id = model::SignatureId::create();
    witness.role = "witness";
    EXPECT_EQ(history.session.history().addSignature(job.id, witness).error().code, ErrorCode::NotAllowed);
}

} // namespace
} // namespace sealwalk::ui
