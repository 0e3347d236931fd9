// SPDX-License-Identifier: GPL-3.0-or-later
// A measurement that is void is as if it had never been made, but for its reason.
#include "core/analysis/job_balance.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_view.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/spray_timing.h"
#include "tests/support/jobs.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace sealwalk::analysis {
namespace {

using ::testing::HasSubstr;

constexpr std::int64_t kMinute = 60'000;

model::Job job()
{
    model::Job made = tests::ringJob(5);
    for (int point = 1; point <= 5; ++point)
        tests::addValue(made, point, 3e-8 * point, 1e-10);
    tests::calibrate(made);
    return made;
}

void makeVoid(model::Job& job, const Uuid& measurement)
{
    job.voidMeasurements.push_back(
        {model::MeasurementId(measurement), "typed a decade off", "T. Tester", job.opened});
}

ReviewCheck check(const model::Job& job, const model::TestObject& object, std::string_view word)
{
    const auto found = jobFindings(job, object, job.rounds.front().id, Timestamp::now());
    const auto all = reviewChecks(job, object, found, {});
    return *std::find_if(all.begin(), all.end(), [&](const ReviewCheck& each) { return each.word == word; });
}

} // namespace

// Property: findings, timing and checks are those of the job without it.
TEST(VoidMeasurement, ACheckCountsForNothing)
{
    const model::TestObject object;
    const model::Job without = job();
    model::Job with = without;
    model::Calibration wrong =
        tests::systemCheck({with.readings.front().at.utcMilliseconds - kMinute, 0}, 0.1);
    wrong.response = seconds(90.0);
    with.calibrations.push_back(wrong);
    const model::RoundId round = without.rounds.front().id;
    const Timestamp now = Timestamp::now();
    EXPECT_NE(jobFindings(with, object, round, now), jobFindings(without, object, round, now))
        << "or this test says nothing";
    makeVoid(with, wrong.id.uuid());
    EXPECT_EQ(jobFindings(with, object, round, now), jobFindings(without, object, round, now));
    EXPECT_EQ(checks(with).size(), checks(without).size());
    EXPECT_EQ(inSeconds(sprayTiming(with, object).response),
              inSeconds(sprayTiming(without, object).response));
    EXPECT_EQ(check(with, object, "calibration").answer, check(without, object, "calibration").answer);
}

// Property
TEST(VoidMeasurement, ABackgroundWatchCountsForNothing)
{
    const model::TestObject object;
    const model::Job without = job();
    model::Job with = without;
    model::BackgroundWatch wrong = tests::quietWatch({with.readings.front().at.utcMilliseconds - kMinute, 0});
    for (LeakRate& value : wrong.values)
        value = 300.0 * value;
    with.backgrounds.push_back(wrong);
    const model::RoundId round = without.rounds.front().id;
    const Timestamp now = Timestamp::now();
    EXPECT_NE(jobFindings(with, object, round, now), jobFindings(without, object, round, now));
    makeVoid(with, wrong.id.uuid());
    EXPECT_EQ(jobFindings(with, object, round, now), jobFindings(without, object, round, now));
    EXPECT_EQ(check(with, object, "background").answer, check(without, object, "background").answer);
}

// Regression: a pressure rise with the valve open could not be taken out of "before and after".
TEST(VoidMeasurement, APressureRiseCountsForNothing)
{
    model::Job with = job();
    model::RiseTest right;
    right.id = model::RiseTestId::create();
    right.at = with.opened;
    model::RiseTest wrong = right;
    wrong.id = model::RiseTestId::create();
    wrong.at.utcMilliseconds += kMinute;
    with.riseTests = {right, wrong};
    EXPECT_EQ(riseTestFor(with, Standing::AsFound)->id, wrong.id);
    makeVoid(with, wrong.id.uuid());
    EXPECT_EQ(riseTestFor(with, Standing::AsFound)->id, right.id);
    EXPECT_EQ(riseTestFor(with, with.rounds.front().id)->id, right.id);
    makeVoid(with, right.id.uuid());
    EXPECT_EQ(riseTestFor(with, Standing::AsFound), nullptr);
    EXPECT_THAT(check(with, {}, "balance").answer, HasSubstr("No pressure-rise test"));
}

// Property: it is told with its reason, each by itself, and wants a word.
TEST(VoidMeasurement, IsToldToTheReviewer)
{
    model::Job with = job();
    EXPECT_EQ(check(with, {}, "changes").state, CheckState::InOrder);
    makeVoid(with, with.calibrations.front().id.uuid());
    makeVoid(with, with.backgrounds.front().id.uuid());
    const ReviewCheck asked = check(with, {}, "changes");
    EXPECT_EQ(asked.state, CheckState::NeedsWord);
    ASSERT_EQ(asked.matters.size(), 2U);
    EXPECT_THAT(asked.matters.front().says, HasSubstr("The system check of "));
    EXPECT_THAT(asked.matters.front().says, HasSubstr("is void: typed a decade off."));
    EXPECT_THAT(asked.matters.back().says, HasSubstr("The background watch of "));
}

// Property: who made one void had a hand in the record.
TEST(VoidMeasurement, WhoMadeItVoidDoesNotApprove)
{
    model::Job with = job();
    makeVoid(with, with.calibrations.front().id.uuid());
    model::Person person;
    person.name = "V. Oider";
    person.publicKey = "key";
    with.voidMeasurements.front().by = person.name;
    EXPECT_THAT(whyNotApprove(with, person, false).value_or(""), HasSubstr("declared measurements"));
    EXPECT_FALSE(whyNotApprove(with, person, true).has_value());
}

} // namespace sealwalk::analysis
