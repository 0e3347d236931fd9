// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/spray_timing.h"

#include "core/analysis/job_factor.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

constexpr double kDwellInResponses = 3.0; // 1 - e^-3 = 95 % of the final signal
constexpr Duration kAssumedResponse = seconds(2.0);
const double kWaitInResponses = std::log(100.0); // e^-t/tau = 1 %

const model::Calibration* latestSystemCheck(const model::Job& job)
{
    const model::Calibration* latest = nullptr;
    for (const model::Calibration* calibration : job.standingCalibrations())
        if (calibration->kind == model::CalibrationKind::SystemCheck && calibration->response)
            if (latest == nullptr || calibration->at >= latest->at)
                latest = calibration;
    return latest;
}

SprayTiming timingFor(Duration response, TimingSource source)
{
    return {response, std::max(kDwellInResponses * response, kShortestSpray), kWaitInResponses * response,
            source};
}

} // namespace

SprayTiming sprayTiming(const model::Job& job, const model::TestObject& object)
{
    const model::Calibration* check = latestSystemCheck(job);
    SprayTiming timing = timingFor(kAssumedResponse, TimingSource::Assumed);
    const Timestamp now{std::numeric_limits<std::int64_t>::max(), 0};
    const auto known = detail::responseOf(job, object, model::JointId(), now);
    // Measured at single joints only: still nearer the truth than what volume and speed give.
    if (check != nullptr && (!known || known->source == TimingSource::Computed))
        timing = timingFor(*check->response, TimingSource::Measured);
    else if (known)
        timing = timingFor(known->time, known->source);
    if (check != nullptr && check->cleanUp)
        timing.wait = *check->cleanUp;
    timing.wait = std::max(timing.wait, timing.response);
    return timing;
}

Duration walkTime(const SprayTiming& timing, int points)
{
    constexpr Duration kRecording = seconds(5.0); // common practice, no source: typing and moving on
    return (timing.dwell + std::min(timing.response, timing.wait) + kRecording) * points;
}

} // namespace sealwalk::analysis
