// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/finding_words.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_next_step.h"
#include "core/analysis/job_sources.h"
#include "core/analysis/job_view.h"
#include "tests/support/jobs.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace sealwalk::analysis {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using tests::pointNumbered;
using tests::ringJob;

constexpr double kFactor = 0.5;

double half(const model::Reading& /*reading*/)
{
    return kFactor;
}

/// A ring seal of twelve points with a leak at 3, its echo at 4 and quiet points, sprayed one a minute.
model::Job leakyRing()
{
    model::Job job = ringJob(12);
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    job.setup.response = seconds(2.0);
    for (int point = 1; point <= 12; ++point) {
        const double peak = point == 3 ? 4e-6 : point == 4 ? 6e-9 : 1.02e-10;
        tests::addValue(job, point, peak, 1e-10 + 1e-12 * (point % 3));
        job.readings.back().dwell = seconds(6.0);
        job.readings.back().at.utcMilliseconds = 1000000 + 60000 * point;
    }
    tests::calibrate(job);
    return job;
}

const PointFinding& at(const std::vector<PointFinding>& findings, int number)
{
    return *std::ranges::find(findings, number, &PointFinding::number);
}

// Regression: a point that answered once and not again stayed a leak without a word of the second spray.
TEST(JobFindings, TellOfASprayThatWasNotAnsweredAgain)
{
    model::Job job = leakyRing();
    const auto because = [&] {
        const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id, Timestamp::now());
        std::string all;
        for (const std::string& reason : at(findings, 3).because)
            all += reason + '\n';
        return all;
    };
    EXPECT_THAT(because(), ::testing::Not(HasSubstr("sprayed again")));
    tests::addValue(job, 3, 1e-10, 1e-10);
    job.readings.back().outcome = model::Outcome::NoResponse;
    job.readings.back().peak.reset();
    job.readings.back().dwell = seconds(6.0);
    job.readings.back().at.utcMilliseconds = 1000000 + 60000 * 20;
    EXPECT_THAT(because(),
                HasSubstr("It answered at 01:19 and not when it was sprayed again at 01:36: a leak "
                          "answers twice."));
    job.readings.back().condition = model::Condition::Flexed;
    EXPECT_THAT(because(), ::testing::Not(HasSubstr("sprayed again")))
        << "another condition is another question";
}

// Property: places, heights, times and rates arrive in the survey.
TEST(JobSurvey, CarriesPlacesTimesAndChamberRates)
{
    const model::Job job = leakyRing();
    const JobSurvey made = jobSurvey(job, model::TestObject(), job.rounds.front().id, half);
    ASSERT_EQ(made.survey.points.size(), 12U);
    ASSERT_EQ(made.survey.readings.size(), 12U);
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(made.survey.readings[2].peak), 2e-6);
    EXPECT_DOUBLE_EQ(inSeconds(made.survey.readings[2].start), 120.0);
    EXPECT_DOUBLE_EQ(inSeconds(made.survey.response), 2.0);
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(made.survey.limit), 1e-8);
    // A ring's first point is at 12 o'clock: the highest of all.
    for (const SurveyPoint& point : made.survey.points)
        EXPECT_LE(point.up, made.survey.points.front().up);
    for (const SurveyPoint& point : made.survey.points)
        EXPECT_GT(point.halfLength, Length());
}

// Property: heights follow the sheet's up direction, not the page.
TEST(JobSurvey, TurnsWithTheSheet)
{
    model::Job job = leakyRing();
    const JobSurvey upright = jobSurvey(job, model::TestObject(), job.rounds.front().id, half);
    job.sketch.sheets.front().upDirection = 0.0; // up is to the right of the page
    const JobSurvey turned = jobSurvey(job, model::TestObject(), job.rounds.front().id, half);
    const auto highest = [](const JobSurvey& of) {
        return std::ranges::max_element(of.survey.points, std::less<>(), &SurveyPoint::up)->number;
    };
    EXPECT_EQ(highest(upright), 1);
    EXPECT_EQ(highest(turned), 4); // 3 o'clock of twelve
}

TEST(JobSurvey, LeavesOutWhatIsNoReading)
{
    model::Job job = leakyRing();
    job.readings[0].outcome = model::Outcome::NotAccessible;
    job.readings[1].outcome = model::Outcome::NoResponse;
    job.voids.push_back({job.readings[4].id, "background moved", "tester", {}});
    const JobSurvey made = jobSurvey(job, model::TestObject(), job.rounds.front().id, half);
    ASSERT_EQ(made.survey.readings.size(), 11U);
    EXPECT_EQ(made.survey.readings[0].net(), LeakRate());
    EXPECT_TRUE(made.survey.readings[3].isVoid);
}

// Without a reference leak a reading has no figure on the chamber: where it leaks is said, how much is not.
TEST(JobFindings, SizeNothingWithoutAReferenceLeak)
{
    model::Job job = leakyRing();
    job.calibrations.clear();
    const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    const PointFinding& leak = at(findings, 3);
    EXPECT_EQ(leak.finding, Finding::Leak);
    EXPECT_EQ(leak.verdict, Verdict::CannotSay);
    EXPECT_FALSE(leak.rate.has_value());
    EXPECT_TRUE(leak.asRead.has_value());
    for (const PointFinding& finding : findings)
        EXPECT_NE(finding.verdict, Verdict::Within) << finding.number;
}

// Property: what the reference leak leaves uncertain widens every range.
TEST(JobFindings, CarryTheUncertaintyOfTheReferenceLeak)
{
    model::Job job = leakyRing();
    const auto narrow = jobFindings(job, model::TestObject(), job.rounds.front().id);
    job.calibrations.front().leak.relativeUncertainty = 0.3;
    const auto wide = jobFindings(job, model::TestObject(), job.rounds.front().id);
    EXPECT_GT(*at(wide, 3).high / *at(wide, 3).low, *at(narrow, 3).high / *at(narrow, 3).low);
}

// Regression: a range that ended far above its reading did not say what moved its end.
TEST(JobFindings, SayWhatMovesTheUpperEndOfARange)
{
    const model::Job job = leakyRing();
    const model::TestObject object;
    const auto findings = jobFindings(job, object, job.rounds.front().id);
    const PointFinding& leak = at(findings, 3);
    const CorrectedReading alone = correctedReading(job, object, *job.reading(*leak.reading));
    ASSERT_GT(*leak.high, 1.25 * *alone.high);
    EXPECT_THAT(leak.because,
                Contains(HasSubstr("alone would end the range at " + rateWords(*alone.high, job.setup.unit) +
                                   "; it ends at " + rateWords(*leak.high, job.setup.unit))));
    for (const PointFinding& finding : findings)
        if (finding.finding == Finding::Clear) {
            EXPECT_THAT(finding.because, ::testing::Not(Contains(HasSubstr("end the range"))))
                << finding.number;
        }
}

// Property: the door's echo is an echo of the door, and rates are the chamber's.
/// The leaky ring, but 4 showing 2e-7 beside the 4e-6 of 3: more than an echo and less than proof; then
/// `again` once more with `off` taped off, showing `peak`.
model::Job twoAlike(int again, int off, double peak)
{
    model::Job job = leakyRing();
    for (model::Reading& reading : job.readings)
        if (reading.point == pointNumbered(job, 4))
            reading.peak = millibarLitresPerSecond(2e-7);
    tests::addValue(job, again, peak, 1e-10);
    model::Reading& last = job.readings.back();
    last.shielded = {pointNumbered(job, off)};
    last.dwell = seconds(6.0);
    last.at.utcMilliseconds = 1000000 + 60000 * 20;
    if (peak <= 1e-10)
        last.outcome = model::Outcome::NoResponse;
    return job;
}

// Regression: a point whose first spray nobody had timed kept the bound of that, half as much again, after a
// second and good one.
TEST(JobFindings, ASecondSilentSprayTakesNothingBack)
{
    model::Job job = leakyRing();
    const auto boundOf = [&](int number) {
        const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
        return at(findings, number).bound.value_or(LeakRate()).si();
    };
    for (model::Reading& reading : job.readings)
        if (reading.point != pointNumbered(job, 3)) {
            reading.outcome = model::Outcome::NoResponse;
            reading.peak.reset();
        }
    const double once = boundOf(8);
    ASSERT_GT(once, 0.0);
    for (model::Reading& reading : job.readings)
        if (reading.point == pointNumbered(job, 8))
            reading.dwell.reset();
    EXPECT_GT(boundOf(8), 1.2 * once) << "not timed, it says less";
    for (const double dwell : {6.0, 9.0}) {
        tests::addValue(job, 8, 1e-10, 1e-10);
        model::Reading& again = job.readings.back();
        again.outcome = model::Outcome::NoResponse;
        again.peak.reset();
        again.dwell = seconds(dwell);
        again.at.utcMilliseconds = 1000000 + 60000 * (20 + static_cast<int>(dwell));
        EXPECT_LE(boundOf(8), once * 1.02) << dwell;
    }
}

// Property: a point that is silent while the larger leak beside it is taped off was that leak's echo; one
// that answers all the same leaks itself. Common practice, no source: tape or bag one, spray the other.
TEST(JobFindings, TakeWhatWasTapedOffIntoAccount)
{
    const auto findingsOf = [](const model::Job& job) {
        return jobFindings(job, model::TestObject(), job.rounds.front().id);
    };
    const model::Job silent = twoAlike(4, 3, 1e-10);
    const auto echo = findingsOf(silent);
    EXPECT_EQ(at(echo, 3).finding, Finding::Leak);
    EXPECT_EQ(at(echo, 4).finding, Finding::Echo);
    EXPECT_THAT(at(echo, 4).of, Contains(pointNumbered(silent, 3)));
    EXPECT_THAT(
        at(echo, 4).because,
        Contains(HasSubstr("It answered at 01:20 and not at 01:36, with point 3 taped or bagged off.")));

    // Regression: of two silent sprays the first and shorter one was named.
    model::Job longer = twoAlike(4, 3, 1e-10);
    model::Reading last = longer.readings.back();
    last.id = model::ReadingId::create();
    last.at.utcMilliseconds += 60000 * 4;
    last.dwell = seconds(20.0);
    longer.readings.push_back(last);
    EXPECT_THAT(at(findingsOf(longer), 4).because, Contains(HasSubstr("and not at 01:40, with point 3")));

    // What a leak of its own would have shown by then is said where no other leak explains the answer.
    model::Job alone = leakyRing();
    tests::addValue(alone, 3, 1e-10, 1e-10);
    model::Reading& quiet = alone.readings.back();
    quiet.outcome = model::Outcome::NoResponse;
    quiet.shielded = {pointNumbered(alone, 1)};
    quiet.dwell = seconds(6.0);
    quiet.at.utcMilliseconds = 1000000 + 60000 * 20;
    const std::string own3 = "with point 1 taped or bagged off; a leak of its own, as large as that, would";
    EXPECT_THAT(at(findingsOf(alone), 3).because, Contains(HasSubstr(own3)));
    for (model::Reading& reading : alone.readings)
        if (reading.point == pointNumbered(alone, 3) && reading.outcome == model::Outcome::Value)
            reading.delay = seconds(9.0); // longer than it was sprayed then
    EXPECT_THAT(at(findingsOf(alone), 3).because, Not(Contains(HasSubstr(own3))));

    // Regression: the tape explained a silence that it had not brought, or hid a repeat without it.
    model::Job both = twoAlike(4, 3, 1e-10);
    for (model::Reading& reading : both.readings)
        if (reading.point == pointNumbered(both, 4))
            reading.shielded = {pointNumbered(both, 3)};
    EXPECT_THAT(at(findingsOf(both), 4).because, Contains(HasSubstr("a leak answers twice")));

    const auto own = findingsOf(twoAlike(4, 3, 2e-7));
    EXPECT_EQ(at(own, 3).finding, Finding::Leak);
    EXPECT_EQ(at(own, 4).finding, Finding::Leak);
    EXPECT_EQ(at(own, 4).verdict, Verdict::Over);

    // Without the tape the same two readings are no proof of a leak.
    model::Job untaped = twoAlike(4, 3, 2e-7);
    untaped.readings.back().shielded.clear();
    EXPECT_NE(at(findingsOf(untaped), 4).finding, Finding::Leak);
}

// Regression: helium that had reached a hose far off on the floor stayed a leak of the plate, although the
// plate was silent with the hose taped off.
TEST(JobFindings, SettleByTapeWhatTheSheetCannotTell)
{
    model::Job job = leakyRing();
    for (model::Reading& reading : job.readings)
        reading.peak = millibarLitresPerSecond(1.02e-10);
    const model::SheetId floor = tests::addSheet(job.sketch, "Set-up");
    const model::JointId hose = tests::addJoint(job.sketch, floor, model::JointKind::Hose, "Detector hose",
                                                geometry::Spot{{0.0, 0.0}, 10.0}, 1);
    job.rounds.front().points.push_back(job.sketch.pointsOn(hose).front()->id);
    const auto say = [&](int point, double peak, int minute, std::vector<model::PointId> off = {}) {
        tests::addValue(job, point, peak, 1e-10);
        model::Reading& reading = job.readings.back();
        reading.at.utcMilliseconds = 1000000 + 60000 * minute;
        reading.dwell = seconds(20.0);
        reading.shielded = std::move(off);
        if (peak <= 1e-10)
            reading.outcome = model::Outcome::NoResponse;
    };
    say(7, 6e-7, 20);
    job.readings.back().delay = seconds(12.0);
    say(13, 9e-7, 21);
    const auto findings = [&] { return jobFindings(job, model::TestObject(), job.rounds.front().id); };
    ASSERT_EQ(at(findings(), 7).finding, Finding::Leak) << "nothing told yet";
    say(7, 1e-10, 25, {pointNumbered(job, 13)});
    const auto settled = findings();
    const PointFinding& echo = at(settled, 7);
    EXPECT_EQ(at(settled, 13).finding, Finding::Leak);
    EXPECT_EQ(echo.finding, Finding::Echo);
    EXPECT_THAT(echo.of, ::testing::ElementsAre(pointNumbered(job, 13)));
    EXPECT_EQ(echo.verdict, Verdict::Within);
    ASSERT_TRUE(echo.bound.has_value());
    EXPECT_LT(echo.bound->si(), 1e-9) << "what the silent spray would have shown";
    EXPECT_FALSE(echo.rate.has_value());
    EXPECT_THAT(echo.because, Contains(HasSubstr("would have shown: the helium went in there")));
    EXPECT_THAT(echo.because, ::testing::Not(Contains(HasSubstr("no leak found elsewhere"))));
    // Answered once more with the tape on, it leaks itself.
    say(7, 4e-7, 26, {pointNumbered(job, 13)});
    EXPECT_EQ(at(findings(), 7).finding, Finding::Leak);
    job.readings.pop_back();
    // Each silent with the other taped off: nobody can tell whose it was.
    say(13, 1e-10, 27, {pointNumbered(job, 7)});
    for (const int number : {7, 13})
        EXPECT_EQ(at(findings(), number).finding, Finding::Leak) << number;
    job.readings.pop_back();
    EXPECT_EQ(at(findings(), 7).finding, Finding::Echo);
    // A leak too small for the reading took nothing.
    for (model::Reading& reading : job.readings)
        if (reading.point == pointNumbered(job, 13))
            reading.peak = millibarLitresPerSecond(2e-8);
    EXPECT_EQ(at(findings(), 7).finding, Finding::Leak);
}

// Regression: a spray that was made again with its time, but without a background, was passed over for the
// first one that nobody had timed.
TEST(JobFindings, ATimedSilentSprayGoesBeforeAnUntimedOne)
{
    model::Job job = leakyRing();
    for (model::Reading& reading : job.readings)
        if (reading.point == pointNumbered(job, 8)) {
            reading.outcome = model::Outcome::NoResponse;
            reading.peak.reset();
            reading.dwell.reset();
        }
    tests::addValue(job, 8, 1e-10, 1e-10);
    model::Reading& again = job.readings.back();
    again.outcome = model::Outcome::NoResponse;
    again.peak.reset();
    again.background.reset();
    again.dwell = seconds(9.0);
    again.at.utcMilliseconds = 1000000 + 60000 * 20;
    const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    EXPECT_EQ(at(findings, 8).reading, job.readings.back().id);
}

TEST(JobFindings, TakeEchoesOut)
{
    const model::Job job = leakyRing();
    const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    ASSERT_EQ(findings.size(), 12U);
    const PointFinding& leak = at(findings, 3);
    EXPECT_EQ(leak.finding, Finding::Leak);
    EXPECT_EQ(leak.verdict, Verdict::Over);
    ASSERT_TRUE(leak.rate && leak.low && leak.high);
    EXPECT_GT(inMillibarLitresPerSecond(*leak.rate), 3e-6);
    EXPECT_LT(inMillibarLitresPerSecond(*leak.rate), 1e-5);
    EXPECT_LT(*leak.low, *leak.rate);
    EXPECT_LT(*leak.rate, *leak.high);
    const PointFinding& echo = at(findings, 4);
    EXPECT_EQ(echo.finding, Finding::Echo);
    EXPECT_FALSE(echo.rate);
    ASSERT_TRUE(echo.bound);
    EXPECT_THAT(echo.of, Contains(pointNumbered(job, 3)));
    ASSERT_FALSE(echo.owes.empty());
    EXPECT_EQ(echo.owes.front().to, pointNumbered(job, 3));
    EXPECT_GT(echo.owes.front().share, 0.3);
    EXPECT_EQ(at(findings, 9).finding, Finding::Clear);
    EXPECT_EQ(at(findings, 9).verdict, Verdict::Within);
    ASSERT_TRUE(at(findings, 9).bound);
    EXPECT_GT(*at(findings, 9).bound, LeakRate());
}

TEST(JobFindings, SayWhenTheMomentWasTooBlind)
{
    model::Job job = leakyRing();
    job.setup.pointLimit = millibarLitresPerSecond(1e-12);
    const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    EXPECT_EQ(at(findings, 9).finding, Finding::BelowDetectable);
    EXPECT_EQ(at(findings, 9).verdict, Verdict::CannotSay);
}

TEST(JobFindings, KeepWordsOfPointsWithoutReading)
{
    model::Job job = leakyRing();
    job.readings[10].outcome = model::Outcome::NotAccessible;
    job.readings[10].reason = "behind the pump";
    job.readings.pop_back();
    const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    EXPECT_EQ(at(findings, 11).finding, Finding::NotAccessible);
    EXPECT_THAT(at(findings, 11).because.front(), HasSubstr("behind the pump"));
    EXPECT_EQ(at(findings, 12).finding, Finding::NotSprayed);
}

// Property: with a leak at 3, the next point in order (4) lies in its shadow and the far side of the ring
// does not.
TEST(JobNextStep, LeavesTheOrderBesideALargeLeak)
{
    model::Job job = leakyRing();
    job.readings.resize(3);
    Timestamp later = job.readings.back().at;
    later.utcMilliseconds += 600000;
    const JobNextStep step = jobNextStep(job, model::TestObject(), job.rounds.front().id, later);
    EXPECT_EQ(step.kind, StepKind::LeaveOrder);
    EXPECT_EQ(step.other, pointNumbered(job, 3));
    EXPECT_NE(step.point, pointNumbered(job, 4));
    EXPECT_FALSE(step.point.isNil());
    EXPECT_THAT(step.because, HasSubstr("point 3"));
    EXPECT_EQ(step.wait, Duration());
}

/// Twelve quiet points without an answer; the background drifts.
model::Job quietRing()
{
    model::Job job = ringJob(12);
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    for (int point = 1; point <= 12; ++point) {
        tests::addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
    }
    tests::calibrate(job);
    model::BackgroundWatch& watch = job.backgrounds.back();
    for (std::size_t i = 0; i < watch.values.size(); ++i)
        watch.values[i] = watch.values[i] + millibarLitresPerSecond(1e-12 * static_cast<double>(i));
    return job;
}

// Regression: a spray that nobody clocked was taken for one of full signal that did not drift, and passed a
// point that the set-up could not.
TEST(JobFindings, CountTheDriftOfASprayThatWasNotClocked)
{
    model::Job clocked = quietRing();
    model::Job untold = clocked;
    for (model::Reading& reading : clocked.readings)
        reading.dwell = seconds(6.0); // three response times
    for (model::Reading& reading : untold.readings)
        reading.dwell.reset();
    const auto seen = [](const model::Job& job) {
        return *correctedReading(job, model::TestObject(), job.readings.front()).smallestDetectable;
    };
    model::Job still = untold;
    still.backgrounds = {tests::quietWatch(still.backgrounds.front().at)};
    EXPECT_GT(seen(untold), seen(still));
    EXPECT_NEAR(seen(untold) / seen(clocked), 0.95 / 0.632, 0.01) << "but for the signal of one response";
}

// Regression: where no dwell was recorded the figure took the full signal and the sentence 95 % of it, so
// that a point of 3.0e-6 "answered with 3.2e-6".
TEST(JobFindings, SayTheFigureThatStandsBesideThem)
{
    model::Job job = leakyRing();
    for (model::Reading& reading : job.readings) {
        reading.dwell.reset();
        if (reading.point == pointNumbered(job, 3))
            reading.peak = millibarLitresPerSecond(3e-6);
    }
    const auto findings =
        jobFindings(job, model::TestObject(), job.rounds.front().id, job.readings.back().at);
    const PointFinding& leak = at(findings, 3);
    ASSERT_EQ(leak.finding, Finding::Leak);
    ASSERT_TRUE(leak.asRead);
    EXPECT_THAT(leak.because,
                Contains(HasSubstr("answered with " + rateWords(*leak.asRead, job.setup.unit))));
}

// Regression: a silent spray without background stayed the one that counts beside a whole one, and the review
// asked of it for ever.
TEST(JobFindings, AWholeSilentSprayCountsBeforeOneThatLacks)
{
    model::Job job = quietRing();
    model::Reading whole = job.readings.front();
    whole.dwell = seconds(6.0);
    model::Reading lacking = whole;
    lacking.id = model::ReadingId::create();
    lacking.background.reset();
    lacking.at.utcMilliseconds -= 60'000;
    for (const bool first : {true, false}) {
        job.readings.front() = first ? lacking : whole;
        job.readings.push_back(first ? whole : lacking);
        const auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
        EXPECT_EQ(at(findings, 1).reading, whole.id) << first;
        job.readings.pop_back();
    }
}

// Regression: a spray cut short said what would have shown, though nothing is known of that; and it stood as
// the point's finding whatever was sprayed after it.
TEST(JobFindings, ASprayCutShortSaysNothingAndIsMadeGood)
{
    model::Job job = quietRing();
    job.readings.front().dwell = seconds(0.02);
    const auto findings = [&] {
        return jobFindings(job, model::TestObject(), job.rounds.front().id, job.opened);
    };
    const auto shortOnes = findings();
    const PointFinding& cut = at(shortOnes, 1);
    EXPECT_EQ(cut.finding, Finding::BelowDetectable);
    EXPECT_EQ(cut.verdict, Verdict::CannotSay);
    EXPECT_EQ(cut.because.front(), "no response");
    for (const std::string& sentence : cut.because)
        EXPECT_EQ(sentence.find("would have shown"), std::string::npos) << sentence;
    tests::addValue(job, 1, 1e-10);
    job.readings.back().outcome = model::Outcome::NoResponse;
    job.readings.back().peak.reset();
    const auto again = findings();
    EXPECT_EQ(at(again, 1).finding, Finding::Clear);
    EXPECT_EQ(at(again, 1).verdict, Verdict::Within);
}

} // namespace
} // namespace sealwalk::analysis
