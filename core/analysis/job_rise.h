// SPDX-License-Identifier: GPL-3.0-or-later
// A job's pressure-rise test, judged with the job's volume.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

namespace sealwalk::analysis {

/// The record judged; the volume is the job's, else the object's, which must be known. The leak rate is air
/// as it comes in, at the temperature the summary names.
Result<RiseSummary> judgeRise(const model::RiseTest& test, const model::Job& job,
                              const model::TestObject& object);

} // namespace sealwalk::analysis
