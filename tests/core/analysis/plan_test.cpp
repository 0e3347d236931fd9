// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/plan.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace sealwalk::analysis {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

SurveyPoint at(int number, double x, double up, const std::string& view = "front")
{
    SurveyPoint point;
    point.number = number;
    point.joint = "seal";
    point.view = view;
    point.x = millimetres(x);
    point.up = millimetres(up);
    point.halfLength = millimetres(40.0);
    return point;
}

std::vector<int> numbersOf(const Plan& plan)
{
    std::vector<int> numbers;
    for (const PlannedSpray& spray : plan.order)
        numbers.push_back(spray.point);
    return numbers;
}

// Worked by hand: tau 2 s gives a dwell of 6 s and a wait of 2·ln(100) = 9.2103 s; three points a metre apart
// need 3·(6 + 9.2103) = 45.631 s, and 18 s at 4 ml/min are 1.2 ml.
TEST(Plan, TimesAndHeliumOfAHandWorkedWalk)
{
    Survey survey;
    survey.response = seconds(2.0);
    survey.points = {at(1, 0.0, 0.0), at(2, 0.0, 1000.0), at(3, 0.0, 2000.0)};
    const Plan plan = planWalk(survey);
    EXPECT_THAT(numbersOf(plan), ElementsAre(3, 2, 1));
    for (const PlannedSpray& spray : plan.order) {
        EXPECT_DOUBLE_EQ(inSeconds(spray.dwell), 6.0);
        EXPECT_NEAR(inSeconds(spray.wait), 9.210340372, 1e-9);
    }
    EXPECT_NEAR(inSeconds(plan.total), 45.631021116, 1e-8);
    EXPECT_NEAR(inLitres(plan.helium), 1.2e-3, 1e-12);
}

// Worked by hand: the hose first, then from the top; of the two at 500 mm the one away from 1 comes first,
// and the wait before 4, 120 mm from 3, is half as long again.
TEST(Plan, OrderOfAHandWorkedDoor)
{
    Survey survey;
    survey.response = seconds(1.0);
    survey.points = {at(1, 0.0, 600.0), at(2, 0.0, 550.0), at(3, 400.0, 550.0), at(4, 400.0, 430.0),
                     at(5, 0.0, 100.0, "rear")};
    survey.points.push_back(at(6, 0.0, 0.0, "set-up"));
    survey.points.back().isSetup = true;
    const Plan plan = planWalk(survey);
    EXPECT_THAT(numbersOf(plan), ElementsAre(6, 1, 3, 2, 4, 5));
    EXPECT_THAT(plan.order[0].because, HasSubstr("set-up"));
    EXPECT_THAT(plan.order[1].because, HasSubstr("top"));
    EXPECT_THAT(plan.order[2].because, HasSubstr("away from point 1"));
}

TEST(Plan, WaitsLongerBeforeAPointInTheLastCloud)
{
    Survey survey;
    survey.response = seconds(1.0);
    survey.points = {at(1, 0.0, 120.0), at(2, 0.0, 0.0)};
    const Plan plan = planWalk(survey);
    ASSERT_THAT(numbersOf(plan), ElementsAre(1, 2));
    EXPECT_NEAR(plan.order[0].wait / plan.order[1].wait, 1.5, 1e-12);
    EXPECT_THAT(plan.order[1].because, HasSubstr("120 mm from point 1"));
}

// Property: every point once, whatever the survey; nothing higher left than a hand's breadth above what is
// sprayed.
TEST(Plan, CallsEveryPointOnceFromTheTopDown)
{
    Survey survey;
    survey.response = seconds(2.0);
    for (int i = 0; i < 300; ++i)
        survey.points.push_back(at(i + 1, 400.0 * std::sin(i * 1.7), 500.0 * std::cos(i * 0.9)));
    const Plan plan = planWalk(survey);
    const std::vector<int> numbers = numbersOf(plan);
    EXPECT_EQ(std::set<int>(numbers.begin(), numbers.end()).size(), 300U);
    double lowest = 1e9;
    for (const int number : numbers) {
        const double up = inMillimetres(survey.points[static_cast<std::size_t>(number) - 1].up);
        EXPECT_LE(up, lowest + 20.0 + 1e-9);
        lowest = std::min(lowest, up);
    }
}

TEST(Plan, AnswersForNoPoints)
{
    const Plan plan = planWalk(Survey());
    EXPECT_TRUE(plan.order.empty());
    EXPECT_EQ(plan.total, Duration());
    EXPECT_EQ(plan.helium, Volume());
}

// Property: the plan's own order, given back, costs the same; a climb is named, and unknown numbers fall out.
TEST(Plan, AnOrderOfOnesOwnIsTimedAlike)
{
    Survey survey;
    survey.response = seconds(2.0);
    survey.points = {at(1, 0.0, 0.0), at(2, 0.0, 80.0), at(3, 300.0, 160.0), at(4, 0.0, 160.0)};
    const Plan plan = planWalk(survey);
    const Plan again = planInOrder(survey, numbersOf(plan));
    EXPECT_EQ(numbersOf(again), numbersOf(plan));
    EXPECT_DOUBLE_EQ(inSeconds(again.total), inSeconds(plan.total));
    EXPECT_DOUBLE_EQ(inLitres(again.helium), inLitres(plan.helium));
    const Plan climbing = planInOrder(survey, std::vector{1, 2, 77});
    EXPECT_THAT(numbersOf(climbing), ElementsAre(1, 2));
    EXPECT_THAT(climbing.order[1].because, HasSubstr("above point 1"));
    EXPECT_GT(climbing.order[0].wait, climbing.order[1].wait);
}

} // namespace
} // namespace sealwalk::analysis
