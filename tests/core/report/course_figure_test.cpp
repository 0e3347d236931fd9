// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/course_figure.h"
#include "core/report/course_years.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

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
    EXPECT_EQ(untouched.apart, (std::vector<bool>{true, true})) << "bounds are not joined";
}

// Regression: between two jobs without a response a line fell from bound to bound, as if a leak had shrunk.
TEST(Course, NoLineLeadsToOrFromABound)
{
    const model::Job like = tests::ringJob(3);
    const auto first = sprayed(like, 1, kYear);
    const auto second = sprayed(like, 2, 2 * kYear);
    const auto third = sprayed(like, 3, 3 * kYear);
    for (analysis::PointFinding* finding : {&second->asFound[1], &second->asLeft[1]}) {
        finding->finding = analysis::Finding::Clear;
        finding->bound = finding->rate;
        finding->rate.reset();
    }
    const auto stops = courseStops({first, second, third});
    const Figure figure = courseFigure(stops, {{like.sketch.points[1].id, "2"}}, {}, {}, ShownUnit());
    ASSERT_EQ(figure.series.size(), 1U);
    EXPECT_EQ(figure.series[0].hollow, (std::vector<bool>{false, true, false}));
    EXPECT_EQ(figure.series[0].apart, (std::vector<bool>{false, true, true}));
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
    EXPECT_EQ(figure.series[0].name, "sum") << "drawn first, or it would cover its only leak";
    for (const Series& series : figure.series) {
        EXPECT_EQ(series.x.size(), 2U) << series.name;
        EXPECT_EQ(series.apart, (std::vector<bool>{false, true})) << series.name;
    }
    ASSERT_EQ(figure.flags.size(), 1U);
    EXPECT_EQ(figure.flags[0].text, "\u2265");
    EXPECT_DOUBLE_EQ(figure.flags[0].x, courseDay(jobs[2]->job.opened));
}

/// The second point beyond the detector's range; without a check it has no figure at all.
void goBeyondRange(analysis::WorkedJob& worked, std::optional<LeakRate> least)
{
    worked.asFound[1].rate.reset();
    worked.asFound[1].atLeast = least;
    worked.asLeft = worked.asFound;
}

// Regression: a word that says why there is no sum stood where the axis had ended before the worst point
// widened it, among the marks.
TEST(Course, WordsStandAtTheFootOfTheAxis)
{
    const model::Job like = tests::ringJob(3);
    const auto blind = sprayed(like, 1, kYear); // no leak, and a point without a bound
    blind->asFound[1].finding = analysis::Finding::NotSprayed;
    blind->asFound[1].rate.reset();
    const auto quiet = sprayed(like, 2, 2 * kYear);
    for (analysis::PointFinding& finding : quiet->asFound) {
        finding.finding = analysis::Finding::Clear;
        finding.rate.reset();
        finding.bound = millibarLitresPerSecond(5e-13);
    }
    for (const auto& worked : {blind, quiet})
        worked->asLeft = worked->asFound;
    const analysis::WorkedJobs jobs{blind, quiet};
    const auto joint = analysis::jointHistories(jobs).front();
    const Figure figure =
        jointCourse(jobs, jointStops(jobs, model::TestObject(), joint), std::nullopt, {}, ShownUnit());
    const auto word = std::find_if(figure.flags.begin(), figure.flags.end(),
                                   [](const Flag& flag) { return flag.text == "no leak where tested"; });
    ASSERT_NE(word, figure.flags.end());
    EXPECT_LE(figure.y.low, 5e-13);
    EXPECT_DOUBLE_EQ(word->y, figure.y.low);
}

// Regression: a leak beyond range dropped out of the course of its point and of its joint, which drew the
// bound of a quiet point as its worst.
TEST(Course, ALeakBeyondRangeIsDrawnAtTheLeastItIs)
{
    const model::Job like = tests::ringJob(3);
    const model::TestObject object;
    const auto before = sprayed(like, 1, kYear);
    const auto beyond = sprayed(like, 2, 2 * kYear);
    goBeyondRange(*beyond, millibarLitresPerSecond(1e-5));
    const analysis::WorkedJobs jobs{before, beyond};
    const ShownUnit unit;

    Figure figure = courseFigure(courseStops(jobs), {{like.sketch.points[1].id, "2"}}, {}, {}, unit);
    ASSERT_EQ(figure.series[0].y.size(), 2U);
    EXPECT_NEAR(figure.series[0].y[1], 1e-5, 1e-10);
    EXPECT_FALSE(figure.series[0].hollow[1]);
    ASSERT_EQ(figure.flags.size(), 1U);
    EXPECT_EQ(figure.flags[0].text, "\u2265");
    EXPECT_NE(figure.spoken.find("at least 1.0e-5"), std::string::npos) << figure.spoken;

    const auto joint = analysis::jointHistories(jobs).front();
    figure = jointCourse(jobs, jointStops(jobs, object, joint), std::nullopt, {}, unit);
    for (const Series& series : figure.series) {
        ASSERT_EQ(series.y.size(), 2U) << series.name;
        EXPECT_NEAR(series.y[1], 1e-5, 1e-10) << series.name;
        EXPECT_FALSE(series.hollow[1]) << series.name;
    }
    ASSERT_EQ(figure.flags.size(), 1U) << "said once, at the sum";

    goBeyondRange(*beyond, std::nullopt);
    figure = courseFigure(courseStops(jobs), {{like.sketch.points[1].id, "2"}}, {}, {}, unit);
    EXPECT_EQ(figure.series[0].y.size(), 1U);
    ASSERT_EQ(figure.flags.size(), 1U);
    EXPECT_EQ(figure.flags[0].text, "not sized");
    figure = jointCourse(jobs, jointStops(jobs, object, joint), std::nullopt, {}, unit);
    EXPECT_EQ(figure.series[1].name, "worst point");
    EXPECT_EQ(figure.series[1].y.size(), 1U) << "no bound of another point in its place";
    ASSERT_EQ(figure.flags.size(), 1U);
    EXPECT_EQ(figure.flags[0].text, "not sized");
    EXPECT_DOUBLE_EQ(figure.flags[0].y, figure.y.low);
}

// Regression: a state that was measured, but of which no sum is known, was drawn as one that was not
// measured.
TEST(Course, TheTotalSaysWhyAStateHasNoSum)
{
    const model::TestObject object;
    struct Row
    {
        void (*make)(analysis::WorkedJob&);
        const char* word; ///< none: a mark
        bool isHollow;
    };
    const Row rows[] = {
        {[](analysis::WorkedJob&) {}, nullptr, false},
        {[](analysis::WorkedJob& worked) { worked.asFound[1] = worked.asFound[0]; }, nullptr, true},
        {[](analysis::WorkedJob& worked) { worked.asFound[1].condition = model::Condition::Flexed; },
         "in another condition only", false},
        {[](analysis::WorkedJob& worked) { worked.job.sketch.joints[0].isSetup = true; },
         "on the set-up only", false},
        {[](analysis::WorkedJob& worked) { worked.asFound[1].rate.reset(); }, "not sized", false},
        {[](analysis::WorkedJob& worked) {
             worked.asFound[1].finding = analysis::Finding::NotSprayed;
             worked.asFound[1].rate.reset();
         },
         "no leak where tested", false},
    };
    for (const Row& row : rows) {
        const auto worked = sprayed(tests::ringJob(3), 1, kYear);
        row.make(*worked);
        worked->asLeft = worked->asFound;
        analysis::ObjectTotal total;
        total.job = 1;
        total.at = worked->job.opened;
        total.leaks = analysis::leakSum(worked->job, object, worked->asFound);
        const Figure figure = totalCourse({worked}, {total}, std::nullopt, {}, ShownUnit());
        const char* name = row.word == nullptr ? "a mark" : row.word;
        ASSERT_EQ(figure.series[0].y.size(), row.word == nullptr ? 1U : 0U) << name;
        if (row.word == nullptr) {
            EXPECT_EQ(figure.series[0].hollow[0], row.isHollow);
            EXPECT_TRUE(figure.flags.empty());
            continue;
        }
        ASSERT_EQ(figure.flags.size(), 1U) << name;
        EXPECT_EQ(figure.flags[0].text, row.word);
        EXPECT_NE(figure.spoken.find(row.word), std::string::npos) << figure.spoken;
        EXPECT_TRUE(figure.empty.empty()) << name;
    }
}

} // namespace
} // namespace sealwalk::report
