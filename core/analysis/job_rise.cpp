// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_rise.h"

namespace sealwalk::analysis {

Result<RiseSummary> judgeRise(const model::RiseTest& test, const model::Job& job,
                              const model::TestObject& object)
{
    const auto volume = job.setup.volume ? job.setup.volume : object.volume;
    if (!volume)
        return fail(ErrorCode::BadInput,
                    "a pressure rise says nothing without the volume; type it under Object and purpose");
    RiseOptions options;
    options.volume = *volume;
    options.volumeUncertainty = object.volumeUncertainty;
    return analyseRise({test.times, test.pressures, test.temperatures}, options);
}

} // namespace sealwalk::analysis
