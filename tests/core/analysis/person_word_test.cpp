// SPDX-License-Identifier: GPL-3.0-or-later
// What a person's verdict does to rate and bound of a point, and what of it is signed.
#include "core/analysis/claim.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_view.h"
#include "core/analysis/leak_sum.h"
#include "tests/support/jobs.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using tests::addValue;
using tests::pointNumbered;

/// Six points on a ring: a leak at 3, far over the limit, and nothing elsewhere.
model::Job leakAtThree()
{
    model::Job job = tests::ringJob(6);
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    for (int point = 1; point <= 6; ++point) {
        addValue(job, point, point == 3 ? 5e-6 : 1e-10);
        if (point == 3)
            continue;
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
    }
    tests::calibrate(job);
    return job;
}

void judge(model::Job& job, int point, const char* finding, const char* verdict)
{
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = pointNumbered(job, point);
    judgement.round = job.rounds.front().id;
    judgement.finding = finding;
    judgement.verdict = verdict;
    judgement.reason = "seen at the joint";
    judgement.by = "R. Reviewer";
    job.judgements.push_back(judgement);
}

std::vector<PointFinding> findings(const model::Job& job)
{
    return jobFindings(job, model::TestObject(), job.rounds.front().id);
}

PointFinding at(const model::Job& job, int point)
{
    return findings(job)[static_cast<std::size_t>(point - 1)];
}

std::string claimed(const model::Job& job)
{
    return claimOf(job, findings(job), "mbar l/s").text();
}

struct Word
{
    const char* finding;
    bool isLeakHere;
};

class PersonsWord : public ::testing::TestWithParam<Word>
{};

// Regression: a point judged an echo or clear kept its computed rate, and so was the largest leak of its
// joint.
TEST_P(PersonsWord, LeavesARateOnlyWhereTheLeakIsHere)
{
    model::Job job = leakAtThree();
    const PointFinding computed = at(job, 3);
    ASSERT_TRUE(computed.finding == Finding::Leak && computed.rate && computed.conformance);
    judge(job, 3, GetParam().finding, "within");
    const PointFinding judged = at(job, 3);
    EXPECT_EQ(judged.rate.has_value(), GetParam().isLeakHere);
    EXPECT_EQ(judged.low.has_value(), GetParam().isLeakHere);
    EXPECT_EQ(judged.high.has_value(), GetParam().isLeakHere);
    EXPECT_EQ(judged.surelyAbove.has_value(), GetParam().isLeakHere && computed.surelyAbove.has_value());
    EXPECT_EQ(judged.conformance.has_value(), GetParam().isLeakHere);
    EXPECT_FALSE(judged.bound) << "nothing was worked out that bounds it under that word";
    EXPECT_EQ(judged.asRead, computed.asRead) << "what was read stays";
    const LeakSum sum = leakSum(job, model::TestObject(), findings(job));
    ASSERT_TRUE(sum.worst);
    EXPECT_EQ(sum.worst->number == 3, GetParam().isLeakHere);
    EXPECT_FALSE(sum.below) << "what is there is not bounded";
}

INSTANTIATE_TEST_SUITE_P(EveryWord, PersonsWord,
                         ::testing::Values(Word{"leak", true}, Word{"permeation", true}, Word{"echo", false},
                                           Word{"masked", false}, Word{"clear", false},
                                           Word{"below detectable", false}, Word{"other source", false},
                                           Word{"virtual leak", false}, Word{"void", false}));

// Regression: "leak" after "other source" found no rate any more, and the leak was lost to every sum.
TEST(Judgements, OnlyTheLastOneCountsOverWhatWasWorkedOut)
{
    model::Job job = leakAtThree();
    const PointFinding computed = at(job, 3);
    judge(job, 3, "other source", "cannot say");
    judge(job, 3, "leak", "over");
    const PointFinding judged = at(job, 3);
    EXPECT_EQ(judged.rate, computed.rate);
    EXPECT_EQ(judged.low, computed.low);
    EXPECT_EQ(judged.high, computed.high);
    EXPECT_EQ(judged.finding, Finding::Leak);
    ASSERT_TRUE(judged.overruled);
    EXPECT_EQ(judged.overruled->finding, computed.finding);
    EXPECT_EQ(judged.overruled->verdict, computed.verdict);
    EXPECT_EQ(locatedLeaks(job, model::TestObject(), findings(job)).size(), 1U);

    judge(job, 3, "echo", "within");
    EXPECT_FALSE(at(job, 3).rate);
    judge(job, 3, "no such word", "within"); // of a newer program: what stood before stands
    EXPECT_EQ(at(job, 3).finding, Finding::Echo);
}

// Regression: an echo by a person's word kept whatever the search had said it belongs to, or nothing.
TEST(Judgements, AnEchoIsOfTheLeakThatIsNamed)
{
    model::Job job = leakAtThree();
    judge(job, 5, "echo", "within");
    EXPECT_TRUE(at(job, 5).of.empty());
    job.judgements.back().of = {pointNumbered(job, 3)};
    EXPECT_EQ(at(job, 5).of, std::vector{pointNumbered(job, 3)});
}

// Regression: a leak of the test set-up had to be over, within or undecided by the object's limit.
TEST(Judgements, TheSetUpIsNotCounted)
{
    model::Job job = leakAtThree();
    judge(job, 3, "other source", "not counted");
    EXPECT_EQ(at(job, 3).verdict, Verdict::CannotSay) << "of the object: it counts, whatever a file says";
    job.sketch.joints.front().isSetup = true;
    const PointFinding judged = at(job, 3);
    EXPECT_EQ(judged.verdict, Verdict::NotCounted);
    EXPECT_EQ(locatedLeaks(job, model::TestObject(), findings(job)).size(), 0U);
    const Claim claim = claimOf(job, findings(job), "mbar l/s");
    EXPECT_EQ(claim.outcome, ClaimOutcome::Accept);
    EXPECT_THAT(claim.text(), HasSubstr("point 3 (other source, not counted)"));
    EXPECT_THAT(claim.text(), HasSubstr("at 5 of 6 points"));
}

// Property: a point that is called a leak has the size its reading shows by itself, where the search gave
// none.
TEST(Judgements, ALeakTheSearchDidNotSizeIsAsLargeAsItsReading)
{
    model::Job job = tests::ringJob(24);
    for (const int point : {1, 2, 3, 4, 5}) // an echo one point on
        addValue(job, point, point == 3 ? 5e-6 : point == 4 ? 4e-8 : 1.5e-10);
    tests::calibrate(job);
    const PointFinding computed = at(job, 4);
    ASSERT_TRUE(computed.bound && !computed.rate) << model::name(computed.finding);
    const CorrectedReading alone = correctedReading(job, model::TestObject(), job.readings[3]);
    judge(job, 4, "leak", "over");
    const PointFinding judged = at(job, 4);
    EXPECT_EQ(judged.rate, alone.rate);
    EXPECT_EQ(judged.low, alone.low);
    EXPECT_EQ(judged.high, alone.high);
    EXPECT_FALSE(judged.bound);
    EXPECT_EQ(locatedLeaks(job, model::TestObject(), findings(job)).size(), 2U);
}

// Regression: the signed statement said of a point that had answered that nothing answered there.
TEST(Claim, WordsWhatAPersonJudgedApart)
{
    const std::string computed = claimed(leakAtThree());
    ASSERT_THAT(computed, HasSubstr(" at 5 of 6 points"));
    struct Row
    {
        const char* finding;
        const char* verdict;
        ClaimOutcome outcome;
    };
    for (const Row& row :
         {Row{"clear", "within", ClaimOutcome::Accept}, Row{"echo", "within", ClaimOutcome::Accept},
          Row{"masked", "cannot say", ClaimOutcome::AcceptWithConditions},
          Row{"other source", "cannot say", ClaimOutcome::AcceptWithConditions},
          Row{"leak", "within", ClaimOutcome::Accept}, Row{"leak", "over", ClaimOutcome::Reject}}) {
        model::Job job = leakAtThree();
        judge(job, 3, row.finding, row.verdict);
        const std::string text = claimed(job);
        EXPECT_THAT(text, HasSubstr(" at 5 of 6 points")) << row.finding;
        EXPECT_THAT(text, HasSubstr("Judged by a person, with the reason on record: point 3 (" +
                                    std::string(row.finding) + ", " + row.verdict + ")."));
        for (const char* wrong : {"Leaks within", "A response, but", "Cannot say at", "Not sized at"})
            EXPECT_THAT(text, Not(HasSubstr(wrong))) << row.finding;
        EXPECT_EQ(claimOf(job, findings(job), "mbar l/s").outcome, row.outcome) << row.finding;
    }
}

// Property: a quiet point that a person passed is not counted among those that showed nothing by themselves.
TEST(Claim, CountsNoJudgedPointUnderABound)
{
    model::Job job = leakAtThree();
    judge(job, 5, "clear", "within");
    EXPECT_THAT(claimed(job), HasSubstr(" at 4 of 6 points"));
    EXPECT_THAT(claimed(job), HasSubstr("Over the limit: point 3."));
}

} // namespace
} // namespace sealwalk::analysis
