// SPDX-License-Identifier: GPL-3.0-or-later
// A reviewer who does not agree.
#include "tests/core/analysis/reviewed_job.h"

namespace sealwalk::analysis {
namespace {

// Regression: a reviewer's word of objection settled a question as one of agreement does.
TEST(ReviewChecks, AnObjectionOpensAQuestionUntilItIsAnswered)
{
    model::Job job = goodJob();
    job.setup.dried = false;
    const auto say = [&](const std::string& word, const std::string& text) {
        model::ReviewEntry entry;
        entry.check = word;
        entry.text = text;
        entry.by = "S. Visor";
        job.review.push_back(entry);
    };
    ASSERT_EQ(check(job, "limit").state, CheckState::InOrder);
    for (const char* word : {"dry", "limit"}) {
        say(word, "looked at it");
        ASSERT_TRUE(check(job, word).isSettled());
        say(word, objection("the drawing says otherwise"));
        const ReviewCheck objected = check(job, word);
        EXPECT_FALSE(objected.isSettled());
        EXPECT_TRUE(objected.isObjected);
        EXPECT_EQ(objected.state, CheckState::NeedsWord);
        EXPECT_FALSE(objected.matters.empty()) << "the report lists it";
        ASSERT_EQ(objected.words.size(), 2U);
        EXPECT_TRUE(objected.words.back().isObjection);
        EXPECT_EQ(objected.words.back().text, "the drawing says otherwise");
        say(word, "agreed with the owner on the telephone");
        EXPECT_TRUE(check(job, word).isSettled());
    }
    say("dry", objection("still wet"));
    model::ReviewEntry back;
    back.step = model::ReviewStep::Returned;
    job.review.push_back(back);
    EXPECT_EQ(check(job, "limit").state, CheckState::InOrder) << "answered before it went back";
    say("limit", objection("not the drawing's"));
    job.review.push_back(back);
    EXPECT_EQ(check(job, "limit").state, CheckState::NeedsWord) << "in order again only by an answer";
    EXPECT_FALSE(check(job, "limit").isSettled());
    say("limit", "the drawing was changed");
    EXPECT_TRUE(check(job, "limit").isSettled());
    say("dry", objection("still wet"));
    job.review.push_back(back);
    EXPECT_TRUE(check(job, "dry").wasObjected) << "it cannot be said again as it stands";
    EXPECT_EQ(check(job, "dry").returnedWith, "still wet");
    EXPECT_EQ(objection(objection("once")), objection("once"));
    EXPECT_EQ(objectedIn("agreed"), std::nullopt);
}

} // namespace
} // namespace sealwalk::analysis
