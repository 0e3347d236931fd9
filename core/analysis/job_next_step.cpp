// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_next_step.h"

#include "core/analysis/job_survey.h"

#include <unordered_map>

namespace sealwalk::analysis {

JobNextStep jobNextStep(const model::Job& job, const model::TestObject& object, model::RoundId round,
                        Timestamp now)
{
    const JobSurvey made = jobSurvey(
        job, object, round, [&job](const model::Reading& reading) { return chamberFactor(job, reading); });
    std::unordered_map<model::PointId, int> numbers;
    std::unordered_map<int, model::PointId> points;
    for (std::size_t i = 0; i < made.points.size(); ++i) {
        numbers.emplace(made.points[i], made.survey.points[i].number);
        points.emplace(made.survey.points[i].number, made.points[i]);
    }
    std::vector<int> order;
    if (const model::Round* called = job.round(round)) {
        for (const model::PointId& point : called->points) {
            if (const auto number = numbers.find(point); number != numbers.end())
                order.push_back(number->second);
        }
    }
    Duration clock;
    if (!made.readings.empty())
        clock = seconds(now.secondsSince(job.reading(made.readings.front())->at));
    const NextStep step = nextStep(made.survey, order, clock);
    const auto idOf = [&](int number) {
        const auto known = points.find(number);
        return known == points.end() ? model::PointId() : known->second;
    };
    return {step.kind, idOf(step.point), idOf(step.other), step.wait, step.because};
}

} // namespace sealwalk::analysis
