// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/setup_outlook.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kNoise = 1e-10; // mbar l/s, alternating about the level

/// A system check of the given factor at the far flange and a minute of quiet background.
model::Job preparedJob(double factor, double limit, double driftPerSecond = 0.0)
{
    model::Job job = tests::ringJob(8);
    job.setup.pointLimit = millibarLitresPerSecond(limit);
    model::Calibration check;
    check.id = model::CalibrationId::create();
    check.at = Timestamp{job.opened.utcMilliseconds - 600'000, 60};
    check.leak.value = millibarLitresPerSecond(1e-7);
    check.leak.certificateDate = check.at;
    check.leak.certificateTemperature = degreesCelsius(20.0);
    check.leak.lossPerYear = 0.0;
    check.shown = millibarLitresPerSecond(1e-7 * factor + 1e-9);
    check.background = millibarLitresPerSecond(1e-9);
    check.response = seconds(2.0);
    check.place = "far flange";
    job.calibrations.push_back(check);
    model::BackgroundWatch watch;
    watch.id = model::BackgroundId::create();
    watch.at = check.at;
    for (int i = 0; i < 60; ++i) {
        watch.times.push_back(i);
        watch.values.push_back(
            millibarLitresPerSecond(1e-9 + driftPerSecond * i + (i % 2 == 0 ? kNoise : -kNoise)));
    }
    job.backgrounds.push_back(watch);
    return job;
}

} // namespace

// Property: without measurements there is no verdict, and what is missing is named.
TEST(SetupOutlook, SaysWhatIsMissingInsteadOfGuessing)
{
    const model::Job job = tests::ringJob(8);
    const SetupOutlook outlook = setupOutlook(job, {});
    EXPECT_EQ(outlook.outlook, Outlook::NotKnown);
    EXPECT_TRUE(outlook.needsCalibration);
    EXPECT_TRUE(outlook.needsBackground);
    EXPECT_FALSE(outlook.smallestDetectable);
    EXPECT_EQ(outlook.points, 8);
    EXPECT_EQ(outlook.timing.source, TimingSource::Assumed);
}

// Regression: a share of 1 was shown beside a pump in parallel whose speed nobody had typed.
TEST(SetupOutlook, APumpOfUnknownSpeedIsNotNone)
{
    model::Job job = preparedJob(0.4, 1e-8);
    EXPECT_FALSE(setupOutlook(job, {}).parallelSpeedUnknown);
    job.setup.connection = "foreline, pump in parallel";
    EXPECT_TRUE(setupOutlook(job, {}).parallelSpeedUnknown);
    job.setup.auxiliarySpeed = litresPerSecond(0.0);
    EXPECT_FALSE(setupOutlook(job, {}).parallelSpeedUnknown);
}

// Regression: the review saw "leaks well below the limit" where Prepare said "start with care".
TEST(SetupOutlook, ThePlacesSayTheSameAsPrepare)
{
    for (const double limit : {1e-7, 3e-9, 1.5e-9}) {
        const model::Job job = preparedJob(1.0, limit);
        const SetupOutlook outlook = setupOutlook(job, {});
        ASSERT_TRUE(outlook.margin);
        const std::string advice = sensitivities(job, {}, outlook.timing.dwell).front().advice;
        EXPECT_EQ(advice.find("good to start") == 0, outlook.outlook == Outlook::GoodToStart) << advice;
        EXPECT_EQ(advice.find("start with care") == 0, outlook.outlook == Outlook::StartWithCare) << advice;
    }
}

// Property: the three verdicts change at 10 and 3 times the smallest detectable leak.
TEST(SetupOutlook, JudgesByTheMarginBetweenLimitAndSmallestDetectable)
{
    const auto smallest = setupOutlook(preparedJob(1.0, 1e-6), {}).smallestDetectable;
    ASSERT_TRUE(smallest);
    // 3 x noise over the 95 % of the signal that three responses show; noise of +-a is a.
    EXPECT_NEAR(inMillibarLitresPerSecond(*smallest), 3.0 * kNoise / (1.0 - std::exp(-3.0)),
                0.05 * 3.0 * kNoise);
    const double seen = inMillibarLitresPerSecond(*smallest);
    const struct
    {
        double margin;
        Outlook outlook;
    } rows[] = {{10.1, Outlook::GoodToStart},
                {9.9, Outlook::StartWithCare},
                {3.1, Outlook::StartWithCare},
                {2.9, Outlook::CannotPass}};
    for (const auto& row : rows) {
        const SetupOutlook outlook = setupOutlook(preparedJob(1.0, row.margin * seen), {});
        EXPECT_EQ(outlook.outlook, row.outlook) << row.margin;
        ASSERT_TRUE(outlook.margin);
        EXPECT_NEAR(*outlook.margin, row.margin, 1e-6 * row.margin);
        EXPECT_EQ(outlook.remedy == Remedy::None, row.outlook == Outlook::GoodToStart) << row.margin;
    }
}

// Property: the remedy names what costs most.
TEST(SetupOutlook, NamesWhatWouldHelpMost)
{
    EXPECT_EQ(setupOutlook(preparedJob(1.0, 1e-10), {}).remedy, Remedy::QuietenDetector);
    EXPECT_EQ(setupOutlook(preparedJob(0.1, 1e-10), {}).remedy, Remedy::CalibrateNearer);
    EXPECT_EQ(setupOutlook(preparedJob(1.0, 1e-10, 1e-10), {}).remedy, Remedy::WatchLonger);
    model::Job job = preparedJob(0.1, 1e-10);
    job.setup.detectorSpeed = litresPerSecond(2.0);
    job.setup.auxiliarySpeed = litresPerSecond(18.0);
    const SetupOutlook outlook = setupOutlook(job, {});
    EXPECT_EQ(outlook.remedy, Remedy::ThrottleParallel);
    ASSERT_TRUE(outlook.heliumToDetector);
    EXPECT_NEAR(*outlook.heliumToDetector, 0.1, 1e-12);
    EXPECT_TRUE(outlook.shareIsInFactor);
}

// Property: the time of the walk is dwell and wait at every point, the helium what flows meanwhile.
TEST(SetupOutlook, AddsUpTheWalk)
{
    model::Job job = preparedJob(1.0, 1e-6);
    job.setup.heliumFlow = 0.03;
    const SetupOutlook outlook = setupOutlook(job, {});
    EXPECT_DOUBLE_EQ(inSeconds(outlook.walk),
                     8.0 * (inSeconds(outlook.timing.dwell + outlook.timing.response) + 5.0));
    ASSERT_TRUE(outlook.heliumLitres);
    EXPECT_NEAR(*outlook.heliumLitres, 0.03 / 60.0 * inSeconds(outlook.timing.dwell) * 8.0, 1e-12);
}

// Property: of two places the one with less margin is told.
TEST(SetupOutlook, TellsTheWorstPlace)
{
    model::Job job = preparedJob(1.0, 1e-6);
    model::Calibration far = job.calibrations.front();
    far.id = model::CalibrationId::create();
    far.place = "end of the pipe";
    far.shown = millibarLitresPerSecond(1e-8 + 1e-9);
    far.joints = {job.sketch.joints.front().id};
    tests::addJoint(job.sketch, job.sketch.sheets.front().id, model::JointKind::WeldSeam, "Weld",
                    geometry::Ring{{500, 0}, 50.0}, 3);
    job.calibrations.push_back(far);
    EXPECT_EQ(setupOutlook(job, {}).worstPlace, "end of the pipe");
}

} // namespace sealwalk::analysis
