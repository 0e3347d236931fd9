// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_moved_backgrounds.h"

#include "core/analysis/job_survey.h"
#include "core/analysis/next_step.h"

namespace sealwalk::analysis {

std::vector<MovedRun> jobMovedBackgrounds(const model::Job& job, const model::TestObject& object,
                                          model::RoundId round)
{
    const JobSurvey made = jobSurvey(
        job, object, round, [&job](const model::Reading& reading) { return chamberFactor(job, reading); });
    std::vector<MovedRun> runs;
    for (const MovedBackground& moved : movedBackgrounds(made.survey)) {
        MovedRun run;
        run.firstPoint = made.survey.readings[moved.first].point;
        run.lastPoint = made.survey.readings[moved.last].point;
        run.because = moved.because;
        for (std::size_t i = moved.first; i <= moved.last; ++i)
            run.readings.push_back(made.readings[i]);
        runs.push_back(std::move(run));
    }
    return runs;
}

} // namespace sealwalk::analysis
