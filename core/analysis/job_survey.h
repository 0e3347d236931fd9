// SPDX-License-Identifier: GPL-3.0-or-later
// A round of a job as a survey: places from the sketch, readings on the chamber, times from the clock.
#pragma once

#include "core/analysis/survey.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <functional>
#include <vector>

namespace sealwalk::analysis {

/// What 1 on the detector's display means on the chamber at a reading; above 0. Helium share and dwell are
/// not in it.
using ChamberFactor = std::function<double(const model::Reading&)>;

struct JobSurvey
{
    Survey survey;
    std::vector<model::PointId> points;     ///< one for each of survey.points
    std::vector<model::ReadingId> readings; ///< one for each of survey.readings
};

/// The factor that the job's checks with a reference leak give; 1 when none is usable.
double chamberFactor(const model::Job& job, const model::Reading& reading);

/// The points the round calls and its readings: void ones marked so, corrected ones left out; "no response"
/// counts as a reading at its background, "not accessible" and "not tested" as none. A missing background is
/// taken from the round's others, a missing dwell from the job's spray times.
JobSurvey jobSurvey(const model::Job& job, const model::TestObject& object, model::RoundId round,
                    const ChamberFactor& factor);

} // namespace sealwalk::analysis
