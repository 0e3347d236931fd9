// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/next_step.h"

#include <gmock/gmock.h>

#include <cmath>

namespace sealwalk::analysis {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr double kBackground = 3e-10;

/// Points 1 … 4 down the left of the front, 80 mm apart; 5 and 6 on the rear.
Survey walk()
{
    Survey survey;
    survey.limit = millibarLitresPerSecond(1e-8);
    survey.response = seconds(2.0);
    for (int i = 1; i <= 6; ++i) {
        SurveyPoint point;
        point.number = i;
        point.joint = i <= 4 ? "door seal" : "port";
        point.view = i <= 4 ? "front" : "rear";
        point.up = millimetres(i <= 4 ? 400.0 - 80.0 * i : 1000.0 - 500.0 * i);
        point.halfLength = millimetres(40.0);
        survey.points.push_back(point);
    }
    return survey;
}

void spray(Survey& survey, int point, double start, double net)
{
    SurveyReading reading;
    reading.point = point;
    reading.start = seconds(start);
    reading.dwell = seconds(6.0);
    reading.background = millibarLitresPerSecond(kBackground);
    reading.peak = millibarLitresPerSecond(kBackground + net);
    survey.readings.push_back(reading);
}

const std::vector<int> kOrder{1, 2, 3, 4, 5, 6};

TEST(NextStep, StartsWithTheFirstInOrder)
{
    const NextStep step = nextStep(walk(), kOrder, Duration());
    EXPECT_EQ(step.kind, StepKind::Spray);
    EXPECT_EQ(step.point, 1);
}

TEST(NextStep, GoesOnInOrderAfterAQuietReading)
{
    Survey survey = walk();
    spray(survey, 1, 0.0, 1e-12);
    const NextStep step = nextStep(survey, kOrder, seconds(10.0));
    EXPECT_EQ(step.kind, StepKind::Spray);
    EXPECT_EQ(step.point, 2);
    EXPECT_EQ(step.wait, Duration());
}

// Worked by hand: 5e-9 must fall to 5 % of 1e-8: 2·ln(10) = 4.605 s after the spray's end at 6 s.
TEST(NextStep, WaitsForTheTail)
{
    Survey survey = walk();
    spray(survey, 1, 0.0, 5e-9);
    const NextStep early = nextStep(survey, kOrder, seconds(7.0));
    EXPECT_EQ(early.kind, StepKind::Wait);
    EXPECT_EQ(early.point, 2);
    EXPECT_NEAR(inSeconds(early.wait), 6.0 + 4.605170186 - 7.0, 1e-8);
    EXPECT_EQ(nextStep(survey, kOrder, seconds(11.0)).kind, StepKind::Spray);
}

// Published: physics of one well-mixed volume, e^(-t/tau); a residual of 5 % of 1e-8 from 2e-6 with tau 20 s
// takes 20·ln(2e-6/5e-10) = 165.881 s.
TEST(NextStep, ClearingTimeFollowsTheExponential)
{
    EXPECT_NEAR(
        inSeconds(clearingTime(millibarLitresPerSecond(2e-6), millibarLitresPerSecond(1e-8), seconds(20.0))),
        165.8809928, 1e-6);
    EXPECT_DOUBLE_EQ(
        inSeconds(clearingTime(millibarLitresPerSecond(0.0), millibarLitresPerSecond(1e-8), seconds(20.0))),
        20.0);
}

TEST(NextStep, LeavesTheOrderWhereHeliumWouldReachAKnownLeak)
{
    Survey survey = walk();
    spray(survey, 1, 0.0, 5e-6);
    const NextStep step = nextStep(survey, kOrder, seconds(60.0));
    EXPECT_EQ(step.kind, StepKind::LeaveOrder);
    EXPECT_EQ(step.point, 5);
    EXPECT_EQ(step.other, 1);
    EXPECT_THAT(step.because, HasSubstr("point 5 first"));
}

TEST(NextStep, AsksToSealWhenOnlyShadowIsLeft)
{
    Survey survey = walk();
    spray(survey, 1, 0.0, 5e-6);
    spray(survey, 5, 60.0, 1e-12);
    spray(survey, 6, 100.0, 1e-12);
    const NextStep step = nextStep(survey, kOrder, seconds(120.0));
    EXPECT_EQ(step.kind, StepKind::SealFirst);
    EXPECT_EQ(step.point, 2);
    EXPECT_EQ(step.other, 1);
    EXPECT_THAT(step.because, HasSubstr("seal or bag"));
}

TEST(NextStep, AsksForLessHeliumWhenNeighboursAnswerAlike)
{
    Survey survey = walk();
    spray(survey, 2, 0.0, 3e-8);
    spray(survey, 3, 60.0, 5e-8);
    const NextStep step = nextStep(survey, kOrder, seconds(120.0));
    EXPECT_EQ(step.kind, StepKind::RepeatGentle);
    EXPECT_EQ(step.point, 3);
    EXPECT_EQ(step.other, 2);
    spray(survey, 3, 130.0, 5e-8);
    EXPECT_NE(nextStep(survey, kOrder, seconds(200.0)).kind, StepKind::RepeatGentle);
}

TEST(NextStep, CallsVoidPointsAgainAndEndsWhenAllAreDone)
{
    Survey survey = walk();
    for (int i = 1; i <= 6; ++i)
        spray(survey, i, 40.0 * i, 1e-12);
    EXPECT_EQ(nextStep(survey, kOrder, seconds(400.0)).kind, StepKind::Done);
    survey.readings[3].isVoid = true;
    EXPECT_EQ(nextStep(survey, kOrder, seconds(400.0)).point, 4);
}

SourceFinding finding(int point, SourceVerdict verdict, std::vector<int> others = {})
{
    SourceFinding made;
    made.point = point;
    made.verdict = verdict;
    made.others = std::move(others);
    return made;
}

// Worked by hand: sealing 2 frees 1, 3 and 5; 4 needs 6 sealed. Two entries, the larger first.
TEST(SettlingSteps, SealTheLeakThatMasksMostFirst)
{
    Sources sources;
    sources.findings = {finding(1, SourceVerdict::Masked, {2}),    finding(2, SourceVerdict::Leak),
                        finding(3, SourceVerdict::Masked, {6, 2}), finding(4, SourceVerdict::Masked, {6}),
                        finding(5, SourceVerdict::Masked, {2}),    finding(6, SourceVerdict::Leak)};
    const auto steps = settlingSteps(walk(), sources);
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_THAT(steps[0].seal, ElementsAre(2));
    EXPECT_THAT(steps[0].spray, ElementsAre(1, 3, 5));
    EXPECT_THAT(steps[1].seal, ElementsAre(6));
    EXPECT_THAT(steps[1].spray, ElementsAre(4));
}

TEST(SettlingSteps, CoverSharedAndBlindPoints)
{
    Sources sources;
    sources.findings = {finding(1, SourceVerdict::Shared, {2}), finding(2, SourceVerdict::Shared, {1}),
                        finding(3, SourceVerdict::Clear), finding(4, SourceVerdict::Echo, {1})};
    sources.findings[2].tooBlind = true;
    const auto steps = settlingSteps(walk(), sources);
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_THAT(steps[0].spray, ElementsAre(1, 2));
    EXPECT_THAT(steps[1].spray, ElementsAre(3));
    EXPECT_THAT(settlingSteps(walk(), Sources()), IsEmpty());
}

TEST(MovedBackgrounds, ShowTheRunAndNothingElse)
{
    Survey survey = walk();
    for (int i = 0; i < 12; ++i)
        spray(survey, 1 + i % 6, 40.0 * i, 1e-12);
    EXPECT_THAT(movedBackgrounds(survey), IsEmpty());
    for (std::size_t i = 5; i <= 7; ++i) {
        survey.readings[i].background = survey.readings[i].background * 4.0;
        survey.readings[i].peak = survey.readings[i].background;
    }
    const auto runs = movedBackgrounds(survey);
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(runs[0].first, 5U);
    EXPECT_EQ(runs[0].last, 7U);
    EXPECT_THAT(runs[0].because, HasSubstr("4.0 times"));
}

TEST(MovedBackgrounds, TakeTheTailOfAResponseForATail)
{
    Survey survey = walk();
    for (int i = 0; i < 12; ++i)
        spray(survey, 1 + i % 6, 20.0 * i, i == 3 ? 1e-6 : 1e-12);
    survey.readings[4].background = millibarLitresPerSecond(8e-9);
    survey.readings[5].background = millibarLitresPerSecond(4e-9);
    EXPECT_THAT(movedBackgrounds(survey), IsEmpty());
}

} // namespace
} // namespace sealwalk::analysis
