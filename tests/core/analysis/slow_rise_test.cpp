// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/slow_rise.h"
#include "core/analysis/sources.h"

#include <gmock/gmock.h>

#include <cmath>

namespace sealwalk::analysis {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;

// Published: Crank, The Mathematics of Diffusion (1975), section 4.3.3: time lag l^2/(6D). 5 mm with D = 1e-9
// m²/s: 25e-6/6e-9 = 4166.67 s.
TEST(Permeation, TimeLagIsThicknessSquaredOverSixD)
{
    EXPECT_NEAR(inSeconds(permeationTimeLag(millimetres(5.0), 1e-9)), 4166.6666667, 1e-6);
    EXPECT_NEAR(inSeconds(permeationTimeLag(millimetres(2.5), 2e-10)), 5208.3333333, 1e-6);
}

// Property: the flow integrated over time falls behind the steady flow by exactly the time lag (its
// definition).
TEST(Permeation, BuildUpLagsByTheTimeLag)
{
    const Length thickness = millimetres(3.5);
    const double diffusivity = 5e-10;
    const double lag = inSeconds(permeationTimeLag(thickness, diffusivity));
    const double step = lag / 2000.0;
    double missing = 0.0;
    double before = 0.0;
    for (double t = 0.5 * step; t < 12.0 * lag; t += step) {
        const double share = permeationBuildUp(thickness, diffusivity, seconds(t));
        EXPECT_GE(share, before - 1e-9);
        before = share;
        missing += (1.0 - share) * step;
    }
    EXPECT_NEAR(missing / lag, 1.0, 1e-4);
}

// Published: times to 0.1 %, 10 % and 50 % of the plateau for 2.5 mm and D = 1e-9 m²/s are about 3, 7 and 14
// min.
TEST(Permeation, FirstTraceComesAfterMinutes)
{
    const auto share = [](double minutesAfter) {
        return permeationBuildUp(millimetres(2.5), 1e-9, minutes(minutesAfter));
    };
    EXPECT_NEAR(share(2.7), 0.001, 0.0012);
    EXPECT_NEAR(share(6.9), 0.10, 0.02);
    EXPECT_NEAR(share(14.4), 0.50, 0.02);
}

Survey bagged(double delay, bool burst, double burstNet)
{
    Survey survey;
    survey.limit = millibarLitresPerSecond(1e-7);
    survey.response = seconds(2.0);
    for (int i = 1; i <= 9; ++i) {
        SurveyPoint point;
        point.number = i;
        point.joint = "seal";
        point.view = "front";
        point.x = millimetres(300.0 * i);
        point.halfLength = millimetres(40.0);
        survey.points.push_back(point);
        SurveyReading reading;
        reading.point = i;
        reading.start = seconds(2000.0 * i);
        reading.dwell = seconds(i == 5 ? 1500.0 : 6.0);
        reading.background = millibarLitresPerSecond(3e-8 + 1e-10 * (i % 3));
        reading.peak = reading.background + millibarLitresPerSecond(i == 5 ? 6e-7 : 1e-11);
        if (i == 5)
            reading.delay = seconds(delay);
        survey.readings.push_back(reading);
    }
    if (burst) {
        SurveyReading reading = survey.readings[4];
        reading.start = seconds(30000.0);
        reading.dwell = seconds(6.0);
        reading.delay.reset();
        reading.peak = reading.background + millibarLitresPerSecond(burstNet);
        survey.readings.push_back(reading);
    }
    return survey;
}

struct Case
{
    double delay;
    bool burst;
    double burstNet;
    SlowRise expected;
};

// Property: a short burst comes before the word.
TEST(SlowRise, AsksForABurstBeforeItSaysPermeation)
{
    const Case cases[] = {
        {2.0, false, 0.0, SlowRise::Prompt},        {5.0, false, 0.0, SlowRise::Prompt},
        {5.5, false, 0.0, SlowRise::SlowPath},      {30.0, false, 0.0, SlowRise::SlowPath},
        {540.0, false, 0.0, SlowRise::Suspected},   {540.0, true, 6e-7, SlowRise::Suspected},
        {540.0, true, 1e-12, SlowRise::Permeation},
    };
    for (const Case& one : cases)
        EXPECT_EQ(slowRise(bagged(one.delay, one.burst, one.burstNet), 5, millibarLitresPerSecond(1e-9)),
                  one.expected)
            << one.delay << ' ' << one.burst << ' ' << one.burstNet;
}

TEST(SlowRise, ReachesTheFinding)
{
    const auto suspected = findSources(bagged(540.0, false, 0.0));
    ASSERT_TRUE(suspected);
    EXPECT_EQ(suspected->findings[4].verdict, SourceVerdict::Leak);
    EXPECT_THAT(suspected->findings[4].because, Contains(HasSubstr("short burst of 5 to 10 s")));
    const auto permeation = findSources(bagged(540.0, true, 1e-12));
    ASSERT_TRUE(permeation);
    EXPECT_EQ(permeation->findings[4].verdict, SourceVerdict::Permeation);
}

} // namespace
} // namespace sealwalk::analysis
