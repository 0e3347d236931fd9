// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/course_figure.h"
#include "core/report/course_years.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::report {
namespace {

/// A job of three points with a reading of each; the second leaks.
std::shared_ptr<analysis::WorkedJob> sprayed(const model::Job& like, int number, std::int64_t opened)
{
    auto worked = std::make_shared<analysis::WorkedJob>();
    worked->job = like;
    worked->job.number = number;
    worked->job.opened.utcMilliseconds = opened;
    for (const model::TestPoint& point : like.sketch.points) {
        analysis::PointFinding finding;
        finding.point = point.id;
        finding.number = point.number;
        finding.finding = point.number == 2 ? analysis::Finding::Leak : analysis::Finding::Clear;
        if (point.number == 2)
            finding.rate = millibarLitresPerSecond(1e-6);
        else
            finding.bound = millibarLitresPerSecond(1e-9);
        finding.reading = model::ReadingId::create();
        worked->asFound.push_back(finding);
    }
    worked->asLeft = worked->asFound;
    return worked;
}

constexpr std::int64_t kYear = 31'557'600'000;

// Regression: what was repaired and not sprayed again stood as left with its value as found.
TEST(Course, WhatWasNotTestedAgainHasNoValueAsLeft)
{
    const model::Job like = tests::ringJob(3);
    const auto first = sprayed(like, 1, kYear);
    const auto second = sprayed(like, 2, 2 * kYear);
    model::Repair repair;
    repair.points = {like.sketch.points[1].id};
    repair.at.utcMilliseconds = kYear + 1000;
    first->job.repairs = {repair};
    first->asLeft[1].awaitsRetest = true;
    const analysis::WorkedJobs jobs{first, second};
    const auto stops = courseStops(jobs);
    ASSERT_EQ(stops.size(), 3U);
    const Figure figure = courseFigure(
        stops, {{like.sketch.points[1].id, "2"}, {like.sketch.points[0].id, "1"}}, {}, {}, ShownUnit());
    ASSERT_EQ(figure.series.size(), 2U);
    const Series& repaired = figure.series[0];
    ASSERT_EQ(repaired.x.size(), 2U) << "as found, and the next job's as found";
    EXPECT_DOUBLE_EQ(repaired.x[1], courseDay(second->job.opened));
    EXPECT_EQ(repaired.apart, (std::vector<bool>{false, true})) << "what the repair did is not known";
    const Series& untouched = figure.series[1];
    ASSERT_EQ(untouched.x.size(), 2U);
    EXPECT_EQ(untouched.apart, (std::vector<bool>{false, false}));
}

// Property: a job that did not spray the point leaves a gap and no value.
TEST(Course, AJobWithoutAnAnswerIsAGap)
{
    const model::Job like = tests::ringJob(3);
    analysis::WorkedJobs jobs;
    for (int i = 1; i <= 3; ++i) {
        auto worked = sprayed(like, i, i * kYear);
        if (i == 2) {
            worked->asFound[1] = {};
            worked->asFound[1].point = like.sketch.points[1].id;
        }
        jobs.push_back(worked);
    }
    const Figure figure =
        courseFigure(courseStops(jobs), {{like.sketch.points[1].id, "2"}}, {}, {}, ShownUnit());
    EXPECT_EQ(figure.series[0].x.size(), 2U);
    EXPECT_EQ(figure.series[0].apart, (std::vector<bool>{false, true}));
}

// Property: the place of a point drawn anew goes on with the earlier one's values.
TEST(Course, FollowsAPointThatWasDrawnAnew)
{
    const model::Job like = tests::ringJob(3);
    const model::Job anew = tests::ringJob(3);
    const analysis::WorkedJobs jobs{sprayed(like, 1, kYear), sprayed(anew, 2, 2 * kYear)};
    const model::PointId now = anew.sketch.points[1].id;
    CoursePoint point{now, "2"};
    EXPECT_EQ(courseFigure(courseStops(jobs), {point}, {}, {}, ShownUnit()).series[0].x.size(), 1U);
    point.places = {now, like.sketch.points[1].id};
    EXPECT_EQ(courseFigure(courseStops(jobs), {point}, {}, {}, ShownUnit()).series[0].x.size(), 2U);
}

// Property: a joint's course says "at least" where a point was left out, and has a gap where nobody sprayed.
TEST(Course, AJointSaysAtLeastAndLeavesGaps)
{
    const model::Job like = tests::ringJob(3);
    const model::TestObject object;
    analysis::WorkedJobs jobs;
    for (int i = 1; i <= 3; ++i) {
        auto worked = sprayed(like, i, i * kYear);
        for (analysis::PointFinding& finding : worked->asFound)
            if (i == 2 || (i == 3 && finding.number == 3)) {
                finding.finding = analysis::Finding::NotSprayed;
                finding.rate.reset();
                finding.bound.reset();
            }
        worked->asLeft = worked->asFound;
        jobs.push_back(worked);
    }
    const auto joints = analysis::jointHistories(jobs);
    ASSERT_EQ(joints.size(), 1U);
    EXPECT_EQ(joints[0].tested, 2);
    const Figure figure =
        jointCourse(jobs, jointStops(jobs, object, joints[0]), std::nullopt, {}, ShownUnit());
    ASSERT_EQ(figure.series.size(), 2U);
    for (const Series& series : figure.series) {
        EXPECT_EQ(series.x.size(), 2U) << series.name;
        EXPECT_EQ(series.apart, (std::vector<bool>{false, true})) << series.name;
    }
    ASSERT_EQ(figure.flags.size(), 1U);
    EXPECT_EQ(figure.flags[0].text, "at least");
    EXPECT_DOUBLE_EQ(figure.flags[0].x, courseDay(jobs[2]->job.opened));
}

} // namespace
} // namespace sealwalk::report
