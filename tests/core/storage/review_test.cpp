// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using model::JobState;
using model::ReviewStep;

// Property: every step from every state, as the table says.
TEST(Review, MovesTheStateOnlyAsItShould)
{
    struct Row
    {
        std::vector<ReviewStep> before;
        ReviewStep step;
        bool allowed;
        JobState after;
    };
    const std::vector<Row> table{
        {{}, ReviewStep::Submitted, true, JobState::Submitted},
        {{}, ReviewStep::Returned, false, JobState::Open},
        {{}, ReviewStep::Approved, false, JobState::Open},
        {{}, ReviewStep::Amendment, false, JobState::Open},
        {{}, ReviewStep::Remark, true, JobState::Open},
        {{ReviewStep::Submitted}, ReviewStep::Submitted, false, JobState::Submitted},
        {{ReviewStep::Submitted}, ReviewStep::Returned, true, JobState::Returned},
        {{ReviewStep::Submitted}, ReviewStep::Answer, true, JobState::Submitted},
        {{ReviewStep::Submitted, ReviewStep::Returned}, ReviewStep::Submitted, true, JobState::Submitted},
        {{ReviewStep::Submitted, ReviewStep::Returned}, ReviewStep::Approved, false, JobState::Returned},
    };
    for (std::size_t i = 0; i < table.size(); ++i) {
        const ScratchFolder folder;
        OpenedHistory opened(folder / "a.sealwalk");
        for (const ReviewStep step : table[i].before)
            ASSERT_TRUE(opened.store.addReview(opened.job.id, reviewEntry(step)));
        const Status done = opened.store.addReview(opened.job.id, reviewEntry(table[i].step));
        EXPECT_EQ(done.has_value(), table[i].allowed) << i;
        EXPECT_TRUE(done || done.error().code == ErrorCode::NotAllowed) << i;
        EXPECT_EQ(opened.store.job(opened.job.id)->state, table[i].after) << i;
    }
}

// Property
TEST(Review, AnApprovalIsSigned)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.addReview(opened.job.id, reviewEntry(ReviewStep::Submitted)));
    EXPECT_FALSE(opened.store.addReview(opened.job.id, reviewEntry(ReviewStep::Approved)));
    EXPECT_FALSE(opened.store.sign(opened.job.id, reviewEntry(ReviewStep::Remark), sampleSignature()));
    EXPECT_TRUE(opened.store.sign(opened.job.id, reviewEntry(ReviewStep::Approved), sampleSignature()));
    const model::Job job = *opened.store.job(opened.job.id);
    EXPECT_EQ(job.state, JobState::Signed);
    EXPECT_EQ(job.signatures.size(), 1U);
    EXPECT_EQ(opened.store.check(), std::vector<std::string>{});
}

// Regression: a word given after the signature replaced the one that was signed, on the screen of a signed
// job.
TEST(Review, ASignedJobTakesNoMoreWords)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.addReview(opened.job.id, reviewEntry(ReviewStep::Submitted)));
    ASSERT_TRUE(opened.store.sign(opened.job.id, reviewEntry(ReviewStep::Approved), sampleSignature()));
    for (const ReviewStep step : {ReviewStep::Remark, ReviewStep::Answer}) {
        const Status added = opened.store.addReview(opened.job.id, reviewEntry(step));
        ASSERT_FALSE(added);
        EXPECT_EQ(added.error().code, ErrorCode::NotAllowed);
        EXPECT_NE(added.error().message.find("amendment"), std::string::npos) << added.error().message;
    }
}

// Property: every way to change a job is refused once it is signed.
TEST(Review, ASignedJobRefusesEveryChange)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const model::Reading reading = opened.add();
    opened.sign();
    storage::HistoryStore& store = opened.store;
    const model::JobId job = opened.job.id;
    const model::Job whole = wholeJob();
    const model::Job before = *store.job(job);
    const auto refused = [](const auto& answer) {
        return !answer && answer.error().code == ErrorCode::NotAllowed;
    };
    EXPECT_TRUE(refused(store.saveSketch(job, opened.job.sketch, 2)));
    EXPECT_TRUE(refused(store.saveSetup(job, whole.setup)));
    EXPECT_TRUE(refused(store.addRound(job, model::Round{})));
    EXPECT_TRUE(refused(store.closeRound(job, opened.round.id, moment(60))));
    EXPECT_TRUE(refused(store.orderRound(job, opened.round.id, {})));
    EXPECT_TRUE(refused(store.putRepair(job, whole.repairs[0])));
    EXPECT_TRUE(refused(store.addReading(job, sampleReading(opened.round.id, reading.point))));
    EXPECT_TRUE(refused(store.addVoid(job, {{reading.id, "moved", "Ada", moment(9)}})));
    EXPECT_TRUE(refused(store.addCalibration(job, whole.calibrations[0])));
    EXPECT_TRUE(refused(store.addBackground(job, whole.backgrounds[0])));
    EXPECT_TRUE(refused(store.addRiseTest(job, whole.riseTests[0])));
    EXPECT_TRUE(refused(store.addJudgement(job, whole.judgements[0])));
    EXPECT_TRUE(refused(store.addConcession(job, whole.concessions[0])));
    EXPECT_TRUE(refused(store.addSignature(job, sampleSignature())));
    EXPECT_TRUE(refused(store.addReview(job, reviewEntry(ReviewStep::Returned))));
    EXPECT_TRUE(refused(store.addTrace(job, "t", {0.0}, {1e-9F})));
    EXPECT_EQ(*store.job(job), before);
}

// Property: measurements wait while somebody reviews; what reviewers write does not.
TEST(Review, ASubmittedJobTakesJudgementsButNoReadings)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const model::Reading reading = opened.add();
    ASSERT_TRUE(opened.store.addReview(opened.job.id, reviewEntry(ReviewStep::Submitted)));
    EXPECT_FALSE(opened.store.addReading(opened.job.id, sampleReading(opened.round.id, reading.point)));
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = reading.point;
    judgement.round = opened.round.id;
    judgement.finding = "permeation";
    judgement.verdict = "within";
    judgement.by = "Brook";
    judgement.at = moment(60);
    EXPECT_FALSE(opened.store.addJudgement(opened.job.id, judgement)) << "without a reason";
    judgement.reason = "rises slowly";
    EXPECT_TRUE(opened.store.addJudgement(opened.job.id, judgement));
    EXPECT_TRUE(opened.store.addVoid(opened.job.id, {{reading.id, "moved", "Brook", moment(61)}}));
}

// Property: the object may be renamed later; the signed job keeps what it says.
TEST(Review, AnObjectCanBeRenamedAfterAJobOnItWasSigned)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    opened.sign();
    model::TestObject renamed = sampleObject();
    renamed.name = "Kammer 8";
    EXPECT_TRUE(opened.store.changeObject(renamed));
    EXPECT_EQ(opened.store.jobs("kammer 8")->size(), 1U);
}

} // namespace
} // namespace sealwalk::tests
