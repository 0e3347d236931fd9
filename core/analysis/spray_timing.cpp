// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/spray_timing.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kDwellInResponses = 3.0;         // 1 - e^-3 = 95 % of the final signal
constexpr Duration kShortestDwell = seconds(3.0); // common practice, no source: a hand needs that long
constexpr Duration kAssumedResponse = seconds(2.0);
const double kWaitInResponses = std::log(100.0); // e^-t/tau = 1 %

const model::Calibration* latestSystemCheck(const model::Job& job)
{
    const model::Calibration* latest = nullptr;
    for (const model::Calibration& calibration : job.calibrations)
        if (calibration.kind == model::CalibrationKind::SystemCheck && calibration.response)
            if (latest == nullptr || calibration.at >= latest->at)
                latest = &calibration;
    return latest;
}

SprayTiming timingFor(Duration response, TimingSource source)
{
    return {response, std::max(kDwellInResponses * response, kShortestDwell), kWaitInResponses * response,
            source};
}

} // namespace

SprayTiming sprayTiming(const model::Job& job, const model::TestObject& object)
{
    const model::Calibration* check = latestSystemCheck(job);
    SprayTiming timing = timingFor(kAssumedResponse, TimingSource::Assumed);
    const auto volume = job.setup.volume ? job.setup.volume : object.volume;
    if (job.setup.response && *job.setup.response > Duration())
        timing = timingFor(*job.setup.response, TimingSource::Typed);
    else if (check != nullptr)
        timing = timingFor(*check->response, TimingSource::Measured);
    else if (volume && job.setup.detectorSpeed && *job.setup.detectorSpeed > PumpingSpeed())
        timing = timingFor(*volume /
                               (*job.setup.detectorSpeed + job.setup.auxiliarySpeed.value_or(PumpingSpeed())),
                           TimingSource::Computed);
    if (check != nullptr && check->cleanUp)
        timing.wait = *check->cleanUp;
    timing.wait = std::max(timing.wait, timing.response);
    return timing;
}

} // namespace sealwalk::analysis
