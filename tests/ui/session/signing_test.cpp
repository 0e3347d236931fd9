// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/claim.h"
#include "core/storage/history_store.h"
#include "tests/support/temporary_history.h"
#include "ui/session/signing.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace sealwalk::ui {
namespace {

constexpr int kPatience = 30000; // the key costs a good part of a second, more under a sanitizer

std::optional<ErrorCode> codeOf(const Status& status)
{
    return status ? std::nullopt : std::optional(status.error().code);
}

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

    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !history.session.isWorkingOut(); }, kPatience));
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
    const Status status = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
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
    const Status status = statusOf([&] { signing.approve(reviewer, QStringLiteral("battery staple")); });
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
        signing.approve(reviewer, QStringLiteral("correct horse"));
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
    EXPECT_FALSE(statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); }).has_value());
    EXPECT_TRUE(statusOf([&] { signing.approve(reviewer, QStringLiteral("new passphrase")); }).has_value());
}

TEST_F(SigningTest, AnAmendmentIsSignedItselfAndTheRecordStays)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    EXPECT_FALSE(
        statusOf([&] { signing.amend(reviewer, QStringLiteral("correct horse"), "late"); }).has_value());
    ASSERT_TRUE(statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); }).has_value());
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

// Regression: the approval of one job closed whichever job was open when the key was.
TEST_F(SigningTest, ASignatureClosesTheJobItWasMadeForOrNone)
{
    JobSession& session = history.session;
    const model::JobId meant = session.job().id;
    const auto other = session.createJob(session.object().id, "another");
    ASSERT_TRUE(other.has_value());
    ASSERT_TRUE(session.submit("").has_value());
    ASSERT_TRUE(session.openJob(meant).has_value());
    ASSERT_TRUE(session.submit("").has_value());
    settle();
    const Status status = statusOf([&] {
        signing.approve(reviewer, QStringLiteral("correct horse"));
        ASSERT_TRUE(session.openJob(*other).has_value());
    });
    EXPECT_EQ(codeOf(status), ErrorCode::Conflict);
    for (const model::JobId job : {meant, *other}) {
        const auto stored = session.history().job(job);
        ASSERT_TRUE(stored.has_value());
        EXPECT_EQ(stored->state, model::JobState::Submitted);
        EXPECT_TRUE(stored->signatures.empty());
    }
}

// Regression: what another window stored before the approval was inside the guard's mark and outside what
// was signed: the job was locked with a signature that never held.
TEST_F(SigningTest, ARecordThatIsBehindIsNotSigned)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    settle();
    auto other = storage::HistoryStore::open(history.file(), storage::HistoryStore::Mode::ReadWrite);
    ASSERT_TRUE(other.has_value());
    model::ReviewEntry remark;
    remark.id = model::ReviewId::create();
    remark.by = "A. Other";
    remark.at = Timestamp::now();
    remark.text = "look at the flange again";
    ASSERT_TRUE(other->addReview(history.session.job().id, remark).has_value());
    const Status late = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    EXPECT_EQ(codeOf(late), ErrorCode::Conflict);
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    EXPECT_EQ(history.session.job().review.back().text, remark.text) << "what there is to look at is shown";
    settle();
    const Status now = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    ASSERT_TRUE(now.has_value()) << now.error().message;
    EXPECT_TRUE(signing.verify().value().ok());
}

// Regression: the object was read once, when the job was opened, and signed as it was then.
TEST_F(SigningTest, AnObjectChangedElsewhereIsNotSignedAsItWas)
{
    ASSERT_TRUE(history.session.submit("").has_value());
    settle();
    auto other = storage::HistoryStore::open(history.file(), storage::HistoryStore::Mode::ReadWrite);
    ASSERT_TRUE(other.has_value());
    model::TestObject larger = history.session.object();
    larger.volume = litres(240.0);
    ASSERT_TRUE(other->changeObject(larger).has_value());
    const Status late = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    EXPECT_EQ(codeOf(late), ErrorCode::Conflict);
    EXPECT_EQ(history.session.object(), larger);
}

// Regression: the statement was that of the findings before the last verdict.
TEST_F(SigningTest, NothingIsApprovedOnFindingsThatAreStillWorkedOut)
{
    model::Judgement over;
    over.point = history.session.job().sketch.points.front().id;
    over.round = history.session.job().rounds.front().id;
    over.finding = "leak";
    over.verdict = "over";
    over.reason = "heard it hiss";
    ASSERT_TRUE(history.session.submit("").has_value());
    settle();
    ASSERT_TRUE(history.session.judge(over).has_value());
    const Status early = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    EXPECT_EQ(codeOf(early), ErrorCode::NotAllowed);
    settle();
    const Status now = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    ASSERT_TRUE(now.has_value()) << now.error().message;
    EXPECT_EQ(history.session.job().review.back().text,
              analysis::approvalStatement(history.session.job(), history.session.asLeft(), {}, false));
}

// Regression: what an earlier job left held by a temporary repair was printed, but not signed.
TEST_F(SigningTest, SignsWhatAnEarlierJobLeftHeld)
{
    history.startNextJobOverATemporaryRepair();
    ASSERT_TRUE(history.session.submit("").has_value());
    settle();
    const Status now = statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); });
    ASSERT_TRUE(now.has_value()) << now.error().message;
    EXPECT_NE(history.session.job().review.back().text.find("Held by a temporary repair: point 1."),
              std::string::npos)
        << history.session.job().review.back().text;
}

// Regression: a key made while another history was opened was kept in that one.
TEST_F(SigningTest, APersonIsKeptInTheHistoryTheyWereAddedTo)
{
    const Status status = statusOf([&] {
        model::Person person;
        person.name = "L. Ate";
        signing.createPerson(person, QStringLiteral("correct horse"));
        history.session.closeHistory();
    });
    EXPECT_EQ(codeOf(status), ErrorCode::Conflict);
}

} // namespace
// Property: a job that can no longer be changed is looked at in any unit and gas, and its record keeps its
// own, through the approval, an amendment and another look.
TEST_F(SigningTest, ALockedJobIsShownInAnyUnitAndKeepsItsOwn)
{
    JobSession& session = history.session;
    const std::string own = session.job().setup.unit;
    ASSERT_NE(own, "Pa m3/s");
    ASSERT_TRUE(session.submit("").has_value());
    QSignalSpy changed(&session, &JobSession::setupChanged);
    ASSERT_TRUE(session.showIn("Pa m3/s", model::GasBasis::Air).has_value());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(session.job().setup.unit, "Pa m3/s");
    EXPECT_EQ(session.recordedJob().setup.unit, own);
    settle();
    ASSERT_TRUE(statusOf([&] { signing.approve(reviewer, QStringLiteral("correct horse")); }).has_value());
    ASSERT_TRUE(
        statusOf([&] { signing.amend(reviewer, QStringLiteral("correct horse"), "later"); }).has_value());
    EXPECT_EQ(session.job().setup.unit, "Pa m3/s");
    EXPECT_EQ(session.job().setup.gasBasis, model::GasBasis::Air);
    EXPECT_EQ(session.history().job(session.job().id)->setup.unit, own);
    EXPECT_TRUE(signing.verify()->ok());
    ASSERT_TRUE(session.openJob(session.job().id).has_value());
    EXPECT_EQ(session.job().setup.unit, own) << "opened anew, it is shown as its record says";
}

// Property: a job that came back for work is shown as its record says, and a unit chosen then is stored.
TEST_F(SigningTest, AReturnedJobIsShownAsItsRecordSays)
{
    JobSession& session = history.session;
    const std::string own = session.job().setup.unit;
    ASSERT_TRUE(session.submit("").has_value());
    ASSERT_TRUE(session.showIn("Pa m3/s", model::GasBasis::Helium).has_value());
    ASSERT_TRUE(session.sendBack("Rhea", "look again").has_value());
    EXPECT_EQ(session.job().setup.unit, own);
    ASSERT_TRUE(session.showIn("Pa m3/s", model::GasBasis::Helium).has_value());
    EXPECT_EQ(session.history().job(session.job().id)->setup.unit, "Pa m3/s");
}

} // namespace sealwalk::ui
