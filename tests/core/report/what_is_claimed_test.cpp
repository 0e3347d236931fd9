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
            if (const auto* table = std::get_if<ReportTable>(&block); table != nullptr && section.title == title)
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

// Regression: forty points sprayed before the wait was over were no deviation.
TEST(WhatIsClaimed, HurriedSpraysAreADeviation)
{
    model::Job job = threePoints();
    const auto deviations = [&] { return fact(reportOf(job, model::TestObject(), {}), "Deviations"); };
    EXPECT_EQ(deviations(), "none recorded");
    job.readings[1].outOfTurn = true;
    EXPECT_EQ(deviations(), "sprayed before the wait was over: 1 of 3 readings");
}

// Regression: a leak that a person called another source had no figure left but in the list of readings.
TEST(WhatIsClaimed, WhatWasReadStandsWhereAPersonTookTheFigureOut)
{
    model::Job job = threePoints();
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = job.sketch.points.front().id;
    judgement.round = job.rounds.front().id;
    judgement.finding = "other source";
    judgement.verdict = "within";
    judgement.reason = "the detector's own hose";
    judgement.by = "T. Tester";
    judgement.at = job.readings.back().at;
    job.judgements.push_back(judgement);
    EXPECT_THAT(small(reportOf(job, model::TestObject(), {}), "All points", "1"), HasSubstr("as read 2.0 "));
}

} // namespace
} // namespace sealwalk::report
