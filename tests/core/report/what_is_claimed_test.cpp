// SPDX-License-Identifier: GPL-3.0-or-later
// What a report owns up to besides its figures.
#include "core/report/report_builder.h"
#include "tests/support/jobs.h"

#include <gmock/gmock.h>

#include <string>
#include <variant>

namespace sealwalk::report {
namespace {

using ::testing::HasSubstr;
using tests::pointNumbered;

std::string fact(const ReportContent& content, const std::string& label)
{
    for (const Section& section : content.sections)
        for (const Block& block : section.blocks)
            if (const auto* list = std::get_if<FactList>(&block))
                for (const Fact& each : list->facts)
                    if (each.label == label)
                        return each.value;
    return {};
}

std::string small(const ReportContent& content, const std::string& title, const std::string& point)
{
    std::string all;
    for (const Section& section : content.sections)
        for (const Block& block : section.blocks)
            if (const auto* table = std::get_if<ReportTable>(&block);
                table != nullptr && section.title == title)
                for (const auto& row : table->rows)
                    if (row.front().text == point)
                        for (const Cell& cell : row)
                            all += cell.small + " | ";
    return all;
}

model::Job threePoints()
{
    model::Job job = tests::ringJob(3);
    for (int point = 1; point <= 3; ++point) {
        tests::addValue(job, point, 2e-7, 1e-10);
        job.readings.back().dwell = seconds(9.0);
    }
    tests::calibrate(job);
    return job;
}

/// A person's verdict "within" on the first point.
void passFirst(model::Job& job, const char* finding, const char* reason)
{
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = job.sketch.points.front().id;
    judgement.round = job.rounds.front().id;
    judgement.finding = finding;
    judgement.verdict = "within";
    judgement.reason = reason;
    judgement.by = "T. Tester";
    judgement.at = job.readings.back().at;
    job.judgements.push_back(judgement);
}

model::Job silentPoints(int count)
{
    model::Job job = tests::ringJob(count);
    for (int point = 1; point <= count; ++point) {
        tests::addValue(job, point, 1e-10, 1e-10);
        model::Reading& reading = job.readings.back();
        reading.outcome = model::Outcome::NoResponse;
        reading.peak.reset();
        reading.dwell = seconds(9.0);
    }
    tests::calibrate(job);
    job.setup.pointLimit = millibarLitresPerSecond(1e-3);
    return job;
}

// Regression: forty points sprayed before the wait was over were no deviation.
TEST(WhatIsClaimed, HurriedSpraysAreADeviation)
{
    model::Job job = threePoints();
    const auto deviations = [&] { return fact(reportOf(job, model::TestObject(), {}), "Deviations"); };
    EXPECT_EQ(deviations(), "none recorded");
    job.readings[1].outOfTurn = true;
    EXPECT_EQ(deviations(), "sprayed before the wait was over: 1 of 3 readings");
}

// Regression: with every point too blind to pass, the headline was "Accepted: all points within the limit".
TEST(WhatIsClaimed, NothingIsAcceptedWhereNothingCouldBeSaid)
{
    model::Job job = silentPoints(3);
    EXPECT_THAT(reportOf(job, model::TestObject(), {}).statement.headline,
                HasSubstr("Accepted: all 3 points"));
    job.setup.pointLimit = millibarLitresPerSecond(1e-12); // far below what could be seen
    const ReportContent blind = reportOf(job, model::TestObject(), {});
    EXPECT_THAT(blind.statement.headline, HasSubstr("No result yet: 3 "));
    EXPECT_NE(blind.statement.verdict, analysis::Verdict::Within);
}

// Regression: a leak that a person called another source had no figure left but in the list of readings.
TEST(WhatIsClaimed, WhatWasReadStandsWhereAPersonTookTheFigureOut)
{
    model::Job job = threePoints();
    passFirst(job, "other source", "the detector's own hose");
    EXPECT_THAT(small(reportOf(job, model::TestObject(), {}), "All points", "1"), HasSubstr("as read 2.0 "));
}

// Property: an acceptance says what it hangs on, point by point of what was left open.
TEST(WhatIsClaimed, ConditionsAreNamed)
{
    const auto headline = [](const model::Job& job) {
        return reportOf(job, model::TestObject(), {}).statement.headline;
    };
    model::Job job = silentPoints(4);
    EXPECT_EQ(headline(job), "Accepted: all 4 points within the limit");
    job.readings[0].outcome = model::Outcome::NotAccessible;
    job.readings[0].reason = "behind the frame";
    EXPECT_EQ(headline(job), "Accepted with conditions: 1 point left out with its reason");
    model::Concession concession;
    concession.id = model::ConcessionId::create();
    concession.points = {job.sketch.points[1].id, job.sketch.points[2].id};
    concession.grantedBy = "A. Owner";
    job.concessions.push_back(concession);
    EXPECT_EQ(headline(job),
              "Accepted with conditions: 2 points by concession, 1 point left out with its reason");
}

// Regression: that a person had passed the only point in doubt stood nowhere near the headline.
TEST(WhatIsClaimed, ThatAPersonJudgedStandsInTheHeadline)
{
    model::Job job = silentPoints(4);
    passFirst(job, "clear", "sprayed twice");
    EXPECT_EQ(reportOf(job, model::TestObject(), {}).statement.headline,
              "Accepted: all 4 points within the limit; 1 point judged by a person");
}

// Property: what is void stands in the report with its reason, and nothing else is said of it.
TEST(WhatIsClaimed, AVoidMeasurementStandsWithItsReason)
{
    model::Job job = silentPoints(2);
    model::RiseTest rise;
    rise.id = model::RiseTestId::create();
    rise.at = job.opened;
    rise.times = {0.0, 60.0, 120.0};
    rise.pressures = {1.0, 2.0, 3.0};
    job.riseTests.push_back(rise);
    const auto titles = [](const ReportContent& content) {
        std::string all;
        for (const Section& section : content.sections)
            all += section.title + '|';
        return all;
    };
    EXPECT_THAT(titles(reportOf(job, model::TestObject(), {})), HasSubstr("Pressure rise, as found"));
    job.voidMeasurements = {
        {model::MeasurementId(rise.id.uuid()), "the valve was not shut", "T. Tester", job.opened}};
    const ReportContent content = reportOf(job, model::TestObject(), {});
    EXPECT_THAT(titles(content), Not(HasSubstr("Pressure rise, as found")));
    std::string row;
    for (const Section& section : content.sections)
        for (const Block& block : section.blocks)
            if (const auto* table = std::get_if<ReportTable>(&block);
                table != nullptr && section.title == "Void and corrected")
                for (const Cell& cell : table->rows.at(0))
                    row += cell.text + '|';
    EXPECT_THAT(row, HasSubstr("pressure rise|void: the valve was not shut|nothing|"));
}

// Property: a question that is not in order stands with what was said of it; before the first review none do.
TEST(WhatIsClaimed, QuestionsStandWithTheirWords)
{
    model::Job job = silentPoints(2);
    const auto rows = [&] {
        std::vector<std::vector<Cell>> found;
        for (const Section& section : reportOf(job, model::TestObject(), {}).sections)
            if (section.title == "Review questions that are not in order")
                found = std::get<ReportTable>(section.blocks.front()).rows;
        return found;
    };
    EXPECT_TRUE(rows().empty());
    model::ReviewEntry sent;
    sent.id = model::ReviewId::create();
    sent.step = model::ReviewStep::Submitted;
    sent.by = "T. Tester";
    sent.at = job.opened;
    model::ReviewEntry word = sent;
    word.id = model::ReviewId::create();
    word.step = model::ReviewStep::Answer;
    word.check = "qualified";
    word.text = "papers are with the office";
    job.review = {sent, word};
    bool seen = false;
    for (const std::vector<Cell>& row : rows())
        if (row.at(0).text == "Tester qualified for this work?") {
            seen = true;
            EXPECT_THAT(row.at(1).text, HasSubstr("No qualification is recorded for "));
            EXPECT_EQ(row.at(2).text, "T. Tester: papers are with the office");
        }
    EXPECT_TRUE(seen);
}

// Regression: one point that passed and others too blind to pass were "Accepted: all points within the
// limit".
TEST(WhatIsClaimed, BlindPointsAreAConditionNotAnAcceptance)
{
    model::Job job = silentPoints(2);
    job.setup.kindLimits[model::JointKind::Viewport] = millibarLitresPerSecond(1e-12);
    const model::SheetId sheet = job.sketch.sheets.front().id;
    tests::addJoint(job.sketch, sheet, model::JointKind::Viewport, "Window",
                    geometry::Ring{{900.0, 300.0}, 50.0}, 1);
    job.rounds.front().points.push_back(pointNumbered(job, 3));
    tests::addValue(job, 3, 1e-10, 1e-10);
    job.readings.back() = job.readings.front();
    job.readings.back().id = model::ReadingId::create();
    job.readings.back().point = pointNumbered(job, 3);
    const ReportContent content = reportOf(job, model::TestObject(), {});
    EXPECT_EQ(content.statement.headline, "Accepted with conditions: 1 point cannot be judged");
}

// Property: what of the set-up is not counted is no point within the limit.
TEST(WhatIsClaimed, TheSetUpIsNotAmongThePointsWithin)
{
    model::Job job = silentPoints(3);
    job.sketch.joints.front().isSetup = true;
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = pointNumbered(job, 2);
    judgement.round = job.rounds.front().id;
    judgement.finding = "other source";
    judgement.verdict = "not counted";
    judgement.reason = "the detector's own hose";
    job.judgements.push_back(judgement);
    const ReportContent content = reportOf(job, model::TestObject(), {});
    EXPECT_EQ(content.statement.headline,
              "Accepted: all 2 points within the limit; 1 of the test set-up not counted");
    EXPECT_THAT(content.statement.text, HasSubstr("2 of 2 points are within"));
}

// Regression: the time constant and the dwell that the smallest detectable leak rests on stood nowhere, and a
// round from paper had the day it was typed in.
TEST(WhatIsClaimed, TimesAreThoseOfTheWalk)
{
    model::Job job = silentPoints(2);
    job.setup.response = seconds(100.0);
    job.rounds.front().opened = job.readings.front().at;
    job.rounds.front().opened.utcMilliseconds += std::int64_t{30} * 24 * 3600 * 1000;
    const ReportContent content = reportOf(job, model::TestObject(), {});
    EXPECT_EQ(fact(content, "Timing"),
              "time constant 100 s, typed; dwell asked for 300 s; wait after an answer 461 s");
    EXPECT_THAT(fact(content, "Rounds"), HasSubstr("(" + job.readings.front().at.date()));
}

} // namespace
} // namespace sealwalk::report
