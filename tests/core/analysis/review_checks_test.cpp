// SPDX-License-Identifier: GPL-3.0-or-later
// The questions before a signature, each shown to fail and to pass. Common practice, no source: no standard
// lists them.
#include "core/analysis/claim.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_view.h"
#include "core/analysis/limit_change.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/round_summary.h"
#include "tests/core/analysis/reviewed_job.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cctype>

namespace sealwalk::analysis {
namespace {

using ::testing::HasSubstr;
using tests::addValue;
using tests::pointNumbered;

TEST(ReviewChecks, AreTwentyFourAndAGoodJobNeedsOneWordOnly)
{
    const model::Job job = goodJob();
    const auto checks = reviewChecks(job, object(), summarise(job, object(), Standing::AsLeft), options());
    ASSERT_EQ(checks.size(), 24u);
    for (const ReviewCheck& each : checks) {
        // no pressure-rise test in this job: somebody has to say why
        const CheckState wanted = each.word == "balance" ? CheckState::NeedsWord : CheckState::InOrder;
        EXPECT_EQ(each.state, wanted) << each.word << ": " << each.answer;
    }
    EXPECT_FALSE(isReadyToSign(checks));
}

TEST(ReviewChecks, AnAnswerSettlesWhatNeedsAWord)
{
    model::Job job = goodJob();
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Answer;
    entry.check = "balance";
    entry.text = "the object cannot be valved off";
    job.review.push_back(entry);
    const auto checks = reviewChecks(job, object(), summarise(job, object(), Standing::AsLeft), options());
    EXPECT_TRUE(isReadyToSign(checks));
}

struct Fault
{
    const char* word;
    CheckState state;
    void (*make)(model::Job&);
};

class ReviewFaults : public ::testing::TestWithParam<Fault>
{};

TEST_P(ReviewFaults, AreNoticed)
{
    model::Job job = goodJob();
    GetParam().make(job);
    const ReviewCheck found = check(job, GetParam().word);
    EXPECT_EQ(found.state, GetParam().state) << found.answer;
    ASSERT_FALSE(found.answer.empty());
    EXPECT_FALSE(std::islower(static_cast<unsigned char>(found.answer.front()))) << found.answer;
}

INSTANTIATE_TEST_SUITE_P(
    OneByOne, ReviewFaults,
    ::testing::Values(
        Fault{"object", CheckState::NeedsWord, [](model::Job& j) { j.setup.procedure.clear(); }},
        Fault{"limit", CheckState::Stops, [](model::Job& j) { j.setup.pointLimit.reset(); }},
        Fault{"limit", CheckState::NeedsWord, [](model::Job& j) { j.setup.limitAgreedBy.clear(); }},
        Fault{"reference", CheckState::Stops, [](model::Job& j) { j.calibrations.clear(); }},
        Fault{"reference", CheckState::Stops,
              [](model::Job& j) { j.calibrations.front().leak.dueDate = Timestamp{1'000'000'000'000, 0}; }},
        Fault{"reference", CheckState::NeedsWord, [](model::Job& j) { j.calibrations.front().leak.certificate.clear(); }},
        Fault{"calibration", CheckState::Stops, [](model::Job& j) { j.calibrations.pop_back(); }},
        Fault{"calibration", CheckState::NeedsWord,
              [](model::Job& j) {
                  j.calibrations.pop_back();
                  j.setup.noCheckAfterReason = "leak empty";
              }},
        Fault{"calibration", CheckState::NeedsWord,
              [](model::Job& j) { j.calibrations.back().shown = millibarLitresPerSecond(4e-8); }},
        Fault{"sensitivity", CheckState::Stops,
              [](model::Job& j) { j.setup.pointLimit = millibarLitresPerSecond(1e-11); }},
        // Regression: a quiet watch after the walk hid that points had been sprayed while little could be seen.
        Fault{"sensitivity", CheckState::NeedsWord,
              [](model::Job& j) {
                  j.readings[1].outcome = model::Outcome::NoResponse;
                  j.readings[1].peak.reset();
                  j.readings[1].background = millibarLitresPerSecond(5e-6);
              }},
        Fault{"background", CheckState::NeedsWord, [](model::Job& j) { j.backgrounds.clear(); }},
        Fault{"coverage", CheckState::Stops, [](model::Job& j) { j.readings.pop_back(); }},
        Fault{"coverage", CheckState::Stops,
              [](model::Job& j) { j.voids.push_back({j.readings.back().id, "drift", "T. Tester", {}}); }},
        Fault{"coverage", CheckState::NeedsWord,
              [](model::Job& j) {
                  j.readings.back().outcome = model::Outcome::NotAccessible;
                  j.readings.back().reason = "behind the frame";
              }},
        Fault{"kinds", CheckState::NeedsWord, [](model::Job& j) { j.sketch.joints.front().isSetup = false; }},
        Fault{"whole", CheckState::NeedsWord, [](model::Job& j) { j.readings[1].background.reset(); }},
        Fault{"whole", CheckState::NeedsWord, [](model::Job& j) { j.readings[1].dwell = seconds(0.5); }},
        Fault{"confirmed", CheckState::NeedsWord,
              [](model::Job& j) {
                  j.readings[1].outcome = model::Outcome::Value;
                  j.readings[1].peak = millibarLitresPerSecond(3e-6);
              }},
        Fault{"repairs", CheckState::NeedsWord,
              [](model::Job& j) {
                  j.readings[1].outcome = model::Outcome::Value;
                  j.readings[1].peak = millibarLitresPerSecond(3e-6);
              }},
        Fault{"temporary", CheckState::Stops,
              [](model::Job& j) {
                  model::Repair repair;
                  repair.id = model::RepairId::create();
                  repair.points = {j.sketch.points.front().id};
                  repair.permanent = false;
                  j.repairs.push_back(repair);
              }},
        Fault{"conditions", CheckState::Stops,
              [](model::Job& j) { j.sketch.joints.front().requiredConditions = {"at rest", "flexed"}; }},
        Fault{"dry", CheckState::NeedsWord, [](model::Job& j) { j.setup.dried = false; }},
        Fault{"concessions", CheckState::Stops,
              [](model::Job& j) {
                  model::Concession concession;
                  concession.points = {j.sketch.points.front().id};
                  j.concessions.push_back(concession);
              }},
        Fault{"qualified", CheckState::NeedsWord, [](model::Job& j) { j.readings.front().by = "N. Known"; }},
        Fault{"changes", CheckState::NeedsWord,
              [](model::Job& j) {
                  addValue(j, 4, 2e-10);
                  j.readings.back().corrects = j.readings[3].id;
              }},
        Fault{"outliers", CheckState::NeedsWord,
              [](model::Job& j) {
                  for (const int point : {1, 2})
                      addValue(j, point, 3e-10);
                  addValue(j, 3, 5e-6);
              }},
        // Regression: among points without an answer a wrong exponent stood alone and was in order.
        Fault{"outliers", CheckState::NeedsWord,
              [](model::Job& j) {
                  for (const int point : {1, 2, 3})
                      addValue(j, point, 3e-10);
                  for (model::Reading& reading : j.readings) {
                      reading.outcome = model::Outcome::NoResponse;
                      reading.peak.reset();
                      reading.background.reset();
                  }
                  j.readings.front().outcome = model::Outcome::Value;
                  j.readings.front().peak = millibarLitresPerSecond(3e-7);
              }},
        // Regression: a tester who agreed the limit with himself was in order.
        Fault{"limit", CheckState::NeedsWord, [](model::Job& j) { j.setup.limitAgreedBy = "T. Tester"; }},
        // Regression: a reading dated a year after the others of its round was in order.
        Fault{"outliers", CheckState::NeedsWord,
              [](model::Job& j) { j.readings[1].at.utcMilliseconds += std::int64_t{365} * 86'400'000; }},
        Fault{"sheets", CheckState::NeedsWord, [](model::Job& j) { j.sketch.sheets.front().seenFrom.clear(); }}),
    [](const auto& row) { return std::string(row.param.word) + std::to_string(row.index); });

TEST(ReviewChecks, ComparisonKnowsTheLastJob)
{
    const model::Job job = goodJob();
    ReviewOptions with = options();
    EXPECT_EQ(check(job, "comparison", with).state, CheckState::InOrder);
    with.lastJob = goodJob();
    EXPECT_EQ(check(job, "comparison", with).state, CheckState::NeedsWord);
    with.grownSinceLastJob = 2;
    EXPECT_THAT(check(job, "comparison", with).answer, HasSubstr("2 points leak more"));
    with.comparedWithLastJob = 0;
    with.grownSinceLastJob = 0;
    EXPECT_EQ(check(job, "comparison", with).state, CheckState::NeedsWord) << "nothing could be compared";
    with.comparedWithLastJob = 1;
    EXPECT_EQ(check(job, "comparison", with).state, CheckState::InOrder);
}

TEST(RoundSummary, TheRoundAfterARepairReplacesWhatWasFound)
{
    model::Job job = goodJob();
    job.readings[1].outcome = model::Outcome::Value;
    job.readings[1].peak = millibarLitresPerSecond(3e-6);
    model::Round retest = job.rounds.front();
    retest.id = model::RoundId::create();
    retest.number = 2;
    retest.kind = model::RoundKind::AfterRepair;
    retest.points = {pointNumbered(job, 2)};
    job.rounds.push_back(retest);
    addValue(job, 2, 1e-10);
    job.readings.back().round = retest.id;
    job.readings.back().outcome = model::Outcome::NoResponse;
    job.readings.back().peak.reset();
    const auto found = summarise(job, object(), Standing::AsFound);
    const auto left = summarise(job, object(), Standing::AsLeft);
    EXPECT_EQ(found[1].verdict, Verdict::Over);
    EXPECT_EQ(left[1].verdict, Verdict::Within);
    EXPECT_EQ(left.size(), 4u);
}

TEST(Claim, SaysNoMoreThanWasTested)
{
    model::Job job = goodJob();
    const Claim good = claimOf(job, summarise(job, object(), Standing::AsLeft), "mbar l/s");
    EXPECT_EQ(good.outcome, ClaimOutcome::Accept);
    EXPECT_THAT(good.text(), HasSubstr("No response above"));
    EXPECT_THAT(good.text(), Not(HasSubstr("no leak")));
    job.readings.pop_back();
    const Claim open = claimOf(job, summarise(job, object(), Standing::AsLeft), "mbar l/s");
    EXPECT_EQ(open.outcome, ClaimOutcome::NoResult);
    EXPECT_THAT(open.text(), HasSubstr("Not sprayed: point 4."));
}

// Regression: the figure of the statement is the worst of all points, and nothing told of which.
TEST(Claim, NamesTheLeastSensitivePoint)
{
    const model::Job job = goodJob();
    std::vector<PointFinding> findings(4);
    for (int i = 0; i < 4; ++i) {
        findings[i].number = 11 + i;
        findings[i].finding = Finding::Clear;
        findings[i].verdict = Verdict::Within;
        findings[i].bound = millibarLitresPerSecond(1e-10);
    }
    EXPECT_THAT(claimOf(job, findings, "mbar l/s").text(), Not(HasSubstr("least sensitive")));
    findings[2].bound = millibarLitresPerSecond(4e-10);
    EXPECT_THAT(
        claimOf(job, findings, "mbar l/s").text(),
        HasSubstr("No response above 4.0e-10 mbar l/s at 4 of 4 points, under the conditions recorded. "
                  "That figure is of the least sensitive: point 13."));
}

// Regression: a response that leaks elsewhere explained was in no sentence of the signed statement.
TEST(Claim, NamesEveryPointThatIsNotSimplyClear)
{
    const model::Job job = goodJob();
    const Verdict verdicts[] = {Verdict::Over, Verdict::CannotSay, Verdict::Within};
    const Finding answers[] = {Finding::Leak,   Finding::Shared,     Finding::Echo,
                               Finding::Masked, Finding::Permeation, Finding::BelowDetectable};
    const auto isNamed = [&](PointFinding finding) {
        finding.number = 731;
        return claimOf(job, std::span(&finding, 1), "mbar l/s").text().find("731") != std::string::npos;
    };
    for (const Finding answer : answers)
        for (const Verdict verdict : verdicts)
            for (const bool hasRate : {true, false}) {
                PointFinding finding;
                finding.finding = answer;
                finding.verdict = verdict;
                if (hasRate)
                    finding.rate = millibarLitresPerSecond(1e-8);
                EXPECT_TRUE(isNamed(finding))
                    << static_cast<int>(answer) << ' ' << static_cast<int>(verdict) << ' ' << hasRate;
            }
    for (const Finding none :
         {Finding::Void, Finding::NotAccessible, Finding::NotTested, Finding::NotSprayed}) {
        PointFinding finding;
        finding.finding = none;
        EXPECT_TRUE(isNamed(finding)) << static_cast<int>(none);
    }
}

// Regression: a watch too short, made anew before the walk, went on asking for a word.
TEST(ReviewChecks, OnlyWatchesThatReadingsLeanOnAreAskedAbout)
{
    model::Job job = goodJob();
    ASSERT_EQ(check(job, "background").state, CheckState::InOrder);
    model::BackgroundWatch brief = job.backgrounds.front();
    brief.id = decltype(brief.id)::create();
    brief.at.utcMilliseconds -= 60'000;
    brief.times.resize(10);
    brief.values.resize(10);
    job.backgrounds.insert(job.backgrounds.begin(), brief);
    EXPECT_EQ(check(job, "background").state, CheckState::InOrder);
    job.backgrounds.front().at = job.readings[1].at; // now the later readings lean on it
    EXPECT_EQ(check(job, "background").state, CheckState::NeedsWord);
}

// Regression: a limit changed after the readings stayed "agreed" under the old name, and nothing told of it.
TEST(ReviewChecks, ALimitChangedAfterTheFirstReadingWantsAWord)
{
    model::Job job = goodJob();
    model::Setup other = job.setup;
    other.dried = !other.dried;
    EXPECT_FALSE(limitChangeWords(job, other));
    other.pointLimit = 10.0 * job.setup.pointLimit.value_or(millibarLitresPerSecond(1e-9));
    other.kindLimits[model::JointKind::WeldSeam] = millibarLitresPerSecond(1e-9);
    const auto words = limitChangeWords(job, other);
    ASSERT_TRUE(words);
    EXPECT_THAT(*words, HasSubstr("after 4 readings"));
    EXPECT_THAT(*words, HasSubstr("for one joint"));
    EXPECT_THAT(*words, HasSubstr("for weld seam: none"));
    model::ReviewEntry told;
    told.step = model::ReviewStep::Remark;
    told.check = kLimitChange;
    told.text = *words;
    job.review.push_back(told);
    job.setup = other;
    EXPECT_EQ(check(job, "limit").state, CheckState::NeedsWord);
    EXPECT_EQ(check(job, "limit").answer, *words);
    // Regression: that nobody had agreed the limit hid that it had been changed.
    job.setup.limitAgreedBy.clear();
    EXPECT_THAT(check(job, "limit").answer, HasSubstr(*words));
    EXPECT_THAT(check(job, "limit").answer, HasSubstr("Nobody is named"));
    job.readings.clear();
    job.setup.pointLimit.reset();
    EXPECT_FALSE(limitChangeWords(job, other)); // before the first reading it is just being agreed
}

// Regression: "set-up first" was in order though its leak had been sprayed last.
TEST(ReviewChecks, TheSetUpIsSprayedFirstOrItIsSaid)
{
    model::Job job = goodJob();
    job.sketch.joints.front().isSetup = false;
    model::Joint hose = job.sketch.joints.front();
    hose.id = model::JointId::create();
    hose.isSetup = true;
    job.sketch.joints.push_back(hose);
    job.sketch.points.back().joint = hose.id; // point 4, sprayed last
    EXPECT_EQ(check(job, "kinds").state, CheckState::NeedsWord);
    std::rotate(job.readings.begin(), job.readings.end() - 1, job.readings.end());
    EXPECT_EQ(check(job, "kinds").state, CheckState::InOrder);
}

// Regression: a word once given settled its question for ever.
TEST(ReviewChecks, AWordDoesNotOutliveTheJobBeingSentBack)
{
    model::Job job = goodJob();
    job.setup.dried = false;
    ASSERT_EQ(check(job, "dry").state, CheckState::NeedsWord);
    const auto turn = [&](model::ReviewStep step, const char* word) {
        model::ReviewEntry entry;
        entry.step = step;
        entry.check = word;
        entry.text = "dried overnight";
        entry.by = "S. Visor";
        job.review.push_back(entry);
    };
    turn(model::ReviewStep::Remark, "dry");
    turn(model::ReviewStep::Submitted, "");
    EXPECT_TRUE(check(job, "dry").isSettled()) << "the tester's words go with the job";
    EXPECT_EQ(check(job, "dry").returnedWith, "");
    turn(model::ReviewStep::Remark, "dry");
    EXPECT_EQ(check(job, "dry").words.size(), 2U) << "a question stands beside what it asks about";
    turn(model::ReviewStep::Returned, "");
    EXPECT_FALSE(check(job, "dry").isSettled());
    EXPECT_TRUE(check(job, "dry").words.empty());
    EXPECT_EQ(check(job, "dry").returnedWith, "dried overnight") << "who works on it sees what was said";
    EXPECT_EQ(check(job, "dry").returnedBy, "S. Visor");
    EXPECT_EQ(check(job, "background").returnedWith, "");
    turn(model::ReviewStep::Answer, "dry");
    EXPECT_TRUE(check(job, "dry").isSettled());
}

// Regression: until it was looked for, "there is no earlier job" was in order.
TEST(ReviewChecks, StopWhileTheLastJobIsStillLookedFor)
{
    ReviewOptions with = options();
    with.isComparing = true;
    EXPECT_EQ(check(goodJob(), "comparison", with).state, CheckState::Stops);
}

// Regression: only readings counted, and "anna" was another person than "Anna".
TEST(ReviewChecks, WhoHadAHandInTheMeasurementDoesNotApprove)
{
    model::Person person;
    person.name = "\xc3\x84nne Beck"; // Änne
    person.publicKey = "key";
    const std::string typed = "\xc3\xa4nne beck";
    EXPECT_EQ(whyNotApprove(goodJob(), person, false), std::nullopt);
    const auto refused = [&](auto change) {
        model::Job job = goodJob();
        change(job);
        EXPECT_EQ(whyNotApprove(job, person, true), std::nullopt) << "one person keeps the history";
        return whyNotApprove(job, person, false).has_value();
    };
    EXPECT_TRUE(refused([&](model::Job& job) { job.readings.front().by = typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) { job.calibrations.front().by = typed; }));
    // Regression: who judged or repaired, conceded or made void, approved it as well.
    EXPECT_TRUE(refused([&](model::Job& job) { job.voids.emplace_back().by = typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) { job.judgements.emplace_back().by = typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) { job.concessions.emplace_back().by = typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) { job.repairs.emplace_back().by = typed; }));
    // Regression: who did the repair that somebody else logged approved it; so did who stood second in a
    // field.
    EXPECT_TRUE(refused([&](model::Job& job) { job.repairs.emplace_back().note = "Done by " + typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) { job.readings.front().by = "Bo Lind, " + typed; }));
    EXPECT_TRUE(
        refused([&](model::Job& job) { job.concessions.emplace_back().grantedBy = typed + " (owner)"; }));
    EXPECT_FALSE(refused([&](model::Job& job) { job.readings.front().by = typed + "r"; })) << "another name";
    // Regression: who granted leave to pass a point approved the job that needed it.
    EXPECT_TRUE(refused([&](model::Job& job) { job.concessions.emplace_back().grantedBy = typed; }));
    EXPECT_TRUE(refused([&](model::Job& job) {
        model::ReviewEntry sent;
        sent.step = model::ReviewStep::Submitted;
        sent.by = typed;
        job.review.push_back(sent);
    }));
}

// Regression: of earlier jobs' temporary repairs the question knew nothing: "No temporary repairs."
TEST(ReviewChecks, TemporaryRepairsOfEarlierJobsAreAsked)
{
    const model::Job job = goodJob();
    ReviewOptions with = options();
    with.now = Timestamp::parseDate("2026-03-20").value();
    model::Repair patch;
    patch.points = {pointNumbered(job, 3)};
    patch.permanent = false;
    patch.owner = "Cleo";
    patch.due = Timestamp::parseDate("2026-04-01").value();
    with.carried = {patch};
    EXPECT_EQ(check(job, "temporary", with).state, CheckState::InOrder);
    EXPECT_EQ(check(job, "temporary", with).answer,
              "1 temporary, each with owner and date; 1 of them of earlier jobs.");
    with.carried.front().due = Timestamp::parseDate("2026-03-01").value();
    EXPECT_EQ(check(job, "temporary", with).state, CheckState::NeedsWord);
    EXPECT_EQ(check(job, "temporary", with).points, patch.points);
    EXPECT_EQ(check(job, "temporary", with).answer,
              "The temporary repair of an earlier job at point 3 was due on 2026-03-01: it is overdue.");
    with.carried.push_back(patch);
    with.carried.back().points = {pointNumbered(job, 2)};
    with.carried.back().due = Timestamp::parseDate("2026-02-01").value();
    EXPECT_EQ(check(job, "temporary", with).answer,
              "Temporary repairs are overdue at points 2 and 3; the first was due on 2026-02-01.");
    with.carried = {patch};
    with.carried.front().owner.clear();
    EXPECT_EQ(check(job, "temporary", with).answer,
              "A temporary repair of an earlier job at point 3 has no owner or date.");
    with.carried.front().points = {model::PointId::create()};
    EXPECT_THAT(check(job, "temporary", with).answer, HasSubstr("points no longer drawn"));
}

// Regression: that one pair of eyes was enough stood nowhere in what was signed.
TEST(Claim, SaysThatTheHistoryIsSetToOnePerson)
{
    const model::Job job = goodJob();
    const auto left = summarise(job, object(), Standing::AsLeft);
    const std::string two = approvalStatement(job, left, {}, false);
    EXPECT_EQ(two, claimOf(job, left, job.setup.unit).text());
    EXPECT_THAT(approvalStatement(job, left, {}, true), HasSubstr("set to one person"));
}

// Regression: a reference leak used on its last day stopped the signature.
TEST(ReviewChecks, AReferenceLeakIsGoodOnTheDayItIsDue)
{
    model::Job job = goodJob();
    for (model::Calibration& each : job.calibrations) {
        each.at = Timestamp::parse("2026-03-17T14:00:00+01:00").value();
        each.leak.certificateDate = Timestamp::parseDate("2025-03-17").value();
        each.leak.dueDate = Timestamp::parseDate("2026-03-17").value();
    }
    EXPECT_NE(check(job, "reference").state, CheckState::Stops) << check(job, "reference").answer;
    for (model::Calibration& each : job.calibrations)
        each.leak.dueDate = Timestamp::parseDate("2026-03-16").value();
    EXPECT_EQ(check(job, "reference").state, CheckState::Stops);
}

// Regression: a check with a leak past its date stopped the signature for ever, as checks stay in the record.
TEST(ReviewChecks, AnOutdatedCheckIsMadeGoodByALaterOneInItsPlace)
{
    model::Job job = goodJob();
    model::Calibration outdated = job.calibrations.back();
    outdated.leak.serial = "RL-9";
    outdated.leak.dueDate = Timestamp::parseDate("2001-01-01").value();
    job.calibrations.push_back(outdated);
    EXPECT_EQ(check(job, "reference").state, CheckState::Stops) << "none came later";
    model::Calibration again = outdated;
    again.at.utcMilliseconds += 60'000;
    job.calibrations.push_back(again);
    EXPECT_EQ(check(job, "reference").state, CheckState::Stops) << "out of date as well";
    job.calibrations.back().leak.dueDate.reset();
    EXPECT_EQ(check(job, "reference").state, CheckState::NeedsWord);
    EXPECT_THAT(check(job, "reference").answer, HasSubstr("RL-9 was past its date of 2001-01-01"));
    job.calibrations.back().place = "another flange";
    EXPECT_EQ(check(job, "reference").state, CheckState::Stops);
}

// Regression: a concession that had run out went on excusing its point, in the statement and in the checks.
TEST(ReviewChecks, AConcessionExcusesOnlyUntilItsDate)
{
    model::Job job = goodJob();
    job.readings.clear();
    addValue(job, 2, 5e-6);
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    model::Concession concession;
    concession.points = {pointNumbered(job, 2)};
    concession.until = Timestamp::parseDate("2026-06-01").value();
    job.concessions.push_back(concession);
    const auto isExcused = [&](const char* now) {
        for (const PointFinding& finding :
             jobFindings(job, object(), job.rounds.front().id, Timestamp::parse(now).value()))
            if (finding.number == 2)
                return finding.concession;
        return false;
    };
    EXPECT_TRUE(isExcused("2026-06-01T18:00:00+02:00"));
    EXPECT_FALSE(isExcused("2026-06-02T08:00:00+02:00"));
    // In a signed job it counts as it did when the job was signed.
    model::ReviewEntry approval;
    approval.step = model::ReviewStep::Approved;
    approval.at = Timestamp::parse("2026-05-01T08:00:00+02:00").value();
    job.review.push_back(approval);
    job.state = model::JobState::Signed;
    EXPECT_TRUE(isExcused("2027-01-01T08:00:00+01:00"));
}

// Property: what a person calls another source or trapped gas is no located leak; what was read stays.
TEST(ReviewChecks, AnotherSourceIsNotTheObjectsLeak)
{
    for (const char* word : {"other source", "virtual leak"}) {
        model::Job job = goodJob();
        job.readings.clear();
        addValue(job, 2, 5e-6);
        const auto findings = [&] {
            return jobFindings(job, object(), job.rounds.front().id, job.rounds.front().opened);
        };
        const auto before = jobBalance(job, object(), findings(), std::nullopt);
        ASSERT_TRUE(before.has_value());
        ASSERT_EQ(before->leaks.size(), 1u);
        job.judgements.push_back({model::JudgementId::create(),
                                  pointNumbered(job, 2),
                                  job.rounds.front().id,
                                  word,
                                  "within",
                                  "hose clamp",
                                  "Brook",
                                  {},
                                  {}});
        const auto judged = findings();
        const auto after = jobBalance(job, object(), judged, std::nullopt);
        ASSERT_TRUE(after.has_value());
        EXPECT_TRUE(after->leaks.empty()) << word;
        for (const PointFinding& finding : judged)
            if (finding.number == 2) {
                EXPECT_FALSE(finding.rate.has_value());
                EXPECT_TRUE(finding.asRead.has_value());
                ASSERT_TRUE(finding.overruled.has_value());
                EXPECT_EQ(finding.overruled->finding, Finding::Leak);
            }
    }
}

// Regression: a reason for one stop went on as the answer to another complaint of the same question.
TEST(ReviewChecks, AWordOnAStopIsNoAnswerToAnotherComplaint)
{
    model::Job job = goodJob();
    job.calibrations.pop_back();
    const auto calibrationOf = [](const model::Job& of) { return check(of, "calibration"); };
    const ReviewCheck stop = calibrationOf(job);
    ASSERT_EQ(stop.state, CheckState::Stops);
    model::ReviewEntry word;
    word.step = model::ReviewStep::Remark;
    word.check = "calibration";
    word.by = "T. Tester";
    word.text = wordOnStop(stop.answer, "the leak was lent out");
    EXPECT_EQ(wordOnStop(stop.answer, word.text), word.text) << "said again as it stands";
    job.review.push_back(word);
    EXPECT_EQ(calibrationOf(job).wordGiven, word.text) << "it is seen where it was said";
    job.calibrations = goodJob().calibrations;
    job.calibrations.back().shown = millibarLitresPerSecond(4e-8);
    const ReviewCheck other = calibrationOf(job);
    ASSERT_EQ(other.state, CheckState::NeedsWord);
    EXPECT_TRUE(other.wordGiven.empty());
}

} // namespace
} // namespace sealwalk::analysis
