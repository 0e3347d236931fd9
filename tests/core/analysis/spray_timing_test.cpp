// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_view.h"
#include "core/analysis/spray_timing.h"
#include "core/flow/response.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

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

// Regression: with the volume left to the object a short dwell was taken for the full signal, ten times too
// low, while Prepare and Spray worked with 192 s.
TEST(SprayTiming, ReadingsAreCorrectedWithTheResponseThatIsShown)
{
    model::Job job = tests::ringJob(1);
    tests::calibrate(job);
    job.calibrations.front().response.reset(); // measured it would go before the computed one
    job.setup.detectorSpeed = litresPerSecond(2.5);
    model::TestObject object;
    object.volume = litres(480.0);
    tests::addValue(job, 1, 5e-9);
    job.readings.back().dwell = seconds(100.0);
    const double tau = inSeconds(sprayTiming(job, object).response);
    EXPECT_NEAR(tau, 192.0, 1e-9);
    const CorrectedReading corrected = correctedReading(job, object, job.readings.back());
    ASSERT_TRUE(corrected.rate);
    EXPECT_NEAR(inMillibarLitresPerSecond(*corrected.rate), 4.9e-9 / (1.0 - std::exp(-100.0 / tau)), 1e-13);
    model::Job own = job;
    own.setup.volume = object.volume;
    EXPECT_EQ(correctedReading(own, {}, own.readings.back()).rate, corrected.rate);
    job.readings.back().dwell = seconds(20.0);
    EXPECT_FALSE(correctedReading(job, object, job.readings.back()).rate) << "a tenth of the signal";
}

// Regression: the hose counted in `respond` but not in what Prepare and Spray showed.
TEST(SprayTiming, CountsTheHose)
{
    model::Job job = tests::ringJob(1);
    job.setup.detectorSpeed = litresPerSecond(2.5);
    model::TestObject object;
    object.volume = litres(50.0);
    job.setup.hoseDiameter = millimetres(25.0);
    job.setup.hoseLength = metres(1.0);
    flow::ResponseOptions options;
    options.volume = litres(50.0);
    options.pump = litresPerSecond(2.5);
    options.hoseDiameter = job.setup.hoseDiameter;
    options.hoseLength = job.setup.hoseLength;
    options.temperature = job.setup.roomTemperature;
    EXPECT_EQ(sprayTiming(job, object).response, flow::respond(options).value().response);
    EXPECT_GT(inSeconds(sprayTiming(job, object).response), 25.0);
}

} // namespace
} // namespace sealwalk::analysis
