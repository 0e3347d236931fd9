// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_plan.h"

#include "core/analysis/earlier_delay.h"
#include "core/analysis/job_survey.h"

#include <unordered_map>

namespace sealwalk::analysis {

namespace {

JobSurvey surveyOf(const model::Job& job, const model::TestObject& object, model::RoundId round)
{
    return jobSurvey(job, object, round,
                     [&job](const model::Reading& reading) { return chamberFactor(job, reading); });
}

PlanOptions optionsOf(const model::Job& job)
{
    PlanOptions options;
    constexpr double kRoomOverZero = 293.15 / 273.15; // standard litres are counted at 0 °C
    constexpr double kSecondsPerMinute = 60.0;
    if (job.setup.heliumFlow)
        options.flow = litresPerSecond(*job.setup.heliumFlow * kRoomOverZero / kSecondsPerMinute);
    return options;
}

/// Where a point answered late before, the helium stays on for longer.
JobPlan withDelays(const model::Job& job, const model::TestObject& object, model::RoundId round, JobPlan plan)
{
    const SprayTiming timing = sprayTiming(job, object);
    const EarlierDelays delays(job, timing.response);
    const PlanOptions options = optionsOf(job);
    for (JobPlannedSpray& spray : plan.order) {
        const Duration longer = delays.dwellAt(spray.point, round, timing) - timing.dwell;
        spray.dwell += longer;
        plan.total += longer;
        plan.helium += Volume::fromSi(options.flow.si() * inSeconds(longer));
    }
    return plan;
}

JobPlan named(const Plan& plan, const JobSurvey& of)
{
    std::unordered_map<int, model::PointId> ids;
    for (std::size_t i = 0; i < of.points.size(); ++i)
        ids.emplace(of.survey.points[i].number, of.points[i]);
    JobPlan made{{}, plan.total, plan.helium};
    for (const PlannedSpray& spray : plan.order)
        made.order.push_back({ids.at(spray.point), spray.point, spray.dwell, spray.wait, spray.because});
    return made;
}

} // namespace

JobPlan proposedPlan(const model::Job& job, const model::TestObject& object, model::RoundId round)
{
    const JobSurvey made = surveyOf(job, object, round);
    return withDelays(job, object, round, named(planWalk(made.survey, optionsOf(job)), made));
}

JobPlan planAsOrdered(const model::Job& job, const model::TestObject& object, model::RoundId round,
                      std::span<const model::PointId> order)
{
    const JobSurvey made = surveyOf(job, object, round);
    std::vector<int> numbers;
    for (const model::PointId& point : order)
        if (const model::TestPoint* known = job.sketch.point(point))
            numbers.push_back(known->number);
    return withDelays(job, object, round, named(planInOrder(made.survey, numbers, optionsOf(job)), made));
}

} // namespace sealwalk::analysis
