// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/open_ends.h"

#include "core/analysis/job_survey.h"
#include "core/analysis/next_step.h"

#include <unordered_map>

namespace sealwalk::analysis {

OpenEnds openEnds(const model::Job& job, const model::TestObject& object, model::RoundId round)
{
    OpenEnds ends;
    ends.moved = jobMovedBackgrounds(job, object, round);
    const JobSurvey made = jobSurvey(
        job, object, round, [&job](const model::Reading& reading) { return chamberFactor(job, reading); });
    const Result<Sources> sources = findSources(made.survey);
    if (!sources)
        return ends;
    std::unordered_map<int, model::PointId> ids;
    for (std::size_t i = 0; i < made.points.size(); ++i)
        ids.emplace(made.survey.points[i].number, made.points[i]);
    const auto named = [&](const std::vector<int>& numbers) {
        std::vector<model::PointId> points;
        for (const int number : numbers)
            points.push_back(ids.at(number));
        return points;
    };
    for (const SettlingStep& step : settlingSteps(made.survey, *sources))
        ends.settle.push_back({named(step.seal), named(step.spray), step.how});
    return ends;
}

} // namespace sealwalk::analysis
