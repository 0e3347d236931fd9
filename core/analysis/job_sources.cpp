// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_sources.h"

#include "core/analysis/sources.h"

#include <unordered_map>

namespace sealwalk::analysis {

namespace {

Finding wordFor(const SourceFinding& source)
{
    switch (source.verdict) {
    case SourceVerdict::Leak:
        return Finding::Leak;
    case SourceVerdict::Shared:
        return Finding::Shared;
    case SourceVerdict::Echo:
        return Finding::Echo;
    case SourceVerdict::Masked:
        return Finding::Masked;
    case SourceVerdict::Permeation:
        return Finding::Permeation;
    case SourceVerdict::Clear:
        return source.tooBlind ? Finding::BelowDetectable : Finding::Clear;
    case SourceVerdict::Void:
        return Finding::Void;
    case SourceVerdict::NotSprayed:
        return Finding::NotSprayed;
    }
    return Finding::NotSprayed;
}

bool isClaimed(Finding finding)
{
    return finding == Finding::Leak || finding == Finding::Shared || finding == Finding::Permeation;
}

void apply(const SourceFinding& source, const std::unordered_map<int, model::PointId>& ids,
           std::optional<LeakRate> limit, PointFinding& finding)
{
    finding.finding = wordFor(source);
    finding.because = source.because;
    finding.rate.reset();
    finding.low.reset();
    finding.high.reset();
    finding.bound.reset();
    finding.of.clear();
    finding.owes.clear();
    if (isClaimed(finding.finding)) {
        finding.rate = source.rate;
        finding.low = source.low;
        finding.high = source.high;
        finding.verdict = verdictOf(limit, source.low, source.high);
    } else {
        finding.bound = source.high;
        finding.verdict = verdictOf(limit, LeakRate(), source.high);
    }
    for (const int number : source.others)
        finding.of.push_back(ids.at(number));
    for (const Debt& debt : source.owes)
        finding.owes.push_back({debt.toPoint == 0 ? model::PointId() : ids.at(debt.toPoint), debt.share});
}

} // namespace

Verdict verdictOf(std::optional<LeakRate> limit, LeakRate low, LeakRate high)
{
    if (!limit)
        return Verdict::NoAnswer;
    if (low > *limit)
        return Verdict::Over;
    return high <= *limit ? Verdict::Within : Verdict::CannotSay;
}

void applySources(const model::Job& job, const model::TestObject& object, model::RoundId round,
                  const ChamberFactor& factor, std::vector<PointFinding>& findings)
{
    const JobSurvey made = jobSurvey(job, object, round, factor);
    const Result<Sources> sources = findSources(made.survey);
    // A job's readings are consistent by construction; if they were not, the readings as they are still
    // stand.
    if (!sources)
        return;
    std::unordered_map<int, model::PointId> ids;
    std::unordered_map<model::PointId, const SourceFinding*> byPoint;
    for (std::size_t i = 0; i < made.points.size(); ++i) {
        ids.emplace(made.survey.points[i].number, made.points[i]);
        byPoint.emplace(made.points[i], &sources->findings[i]);
    }
    for (PointFinding& finding : findings) {
        const auto source = byPoint.find(finding.point);
        const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
        if (source == byPoint.end() || reading == nullptr)
            continue;
        if (reading->outcome == model::Outcome::Value || reading->outcome == model::Outcome::NoResponse)
            apply(*source->second, ids, job.limitOf(finding.point), finding);
    }
}

} // namespace sealwalk::analysis
