// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/spray_timing.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

// Published: one volume over its pumping speed reaches 63 % after tau = V/S, 95 % after 3 tau, and falls to 1
// % after 4.605 tau (exponential law; ASTM E498 names the 63 % point). 50 l at 2.5 l/s: tau 20 s.
TEST(SprayTiming, ComputesFromVolumeAndSpeed)
{
    model::Job job = tests::ringJob(1);
    model::TestObject object;
    object.volume = litres(50.0);
    job.setup.detectorSpeed = litresPerSecond(2.5);
    const SprayTiming timing = sprayTiming(job, object);
    EXPECT_EQ(timing.source, TimingSource::Computed);
    EXPECT_NEAR(inSeconds(timing.response), 20.0, 1e-12);
    EXPECT_NEAR(inSeconds(timing.dwell), 60.0, 1e-12);
    EXPECT_NEAR(inSeconds(timing.wait), 92.10340372, 1e-8);
}

TEST(SprayTiming, PrefersTypedToMeasuredToComputed)
{
    model::Job job = tests::ringJob(1);
    const model::TestObject object;
    EXPECT_EQ(sprayTiming(job, object).source, TimingSource::Assumed);
    model::Calibration check;
    check.response = seconds(4.0);
    check.cleanUp = seconds(11.0);
    job.calibrations.push_back(check);
    EXPECT_EQ(sprayTiming(job, object).source, TimingSource::Measured);
    EXPECT_NEAR(inSeconds(sprayTiming(job, object).wait), 11.0, 1e-12);
    job.setup.response = seconds(1.5);
    EXPECT_EQ(sprayTiming(job, object).source, TimingSource::Typed);
    EXPECT_NEAR(inSeconds(sprayTiming(job, object).dwell), 4.5, 1e-12);
}

// Property: nobody is asked to wait less than the rise took.
TEST(SprayTiming, NeverWaitsLessThanTheResponse)
{
    model::Job job = tests::ringJob(1);
    model::Calibration check;
    check.response = seconds(9.0);
    check.cleanUp = seconds(2.0);
    job.calibrations.push_back(check);
    EXPECT_GE(sprayTiming(job, {}).wait, sprayTiming(job, {}).response);
}

} // namespace
} // namespace sealwalk::analysis
