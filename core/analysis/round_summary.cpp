// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/round_summary.h"

#include "core/analysis/answered.h"
#include "core/analysis/job_findings.h"
#include "core/base/contract.h"

#include <algorithm>
#include <map>

namespace sealwalk::analysis {

namespace {

int gravity(const PointFinding& finding)
{
    switch (finding.verdict) {
    case Verdict::Over:
        return 3;
    case Verdict::CannotSay:
        return 2;
    case Verdict::NoAnswer:
        return 1;
    case Verdict::Within:
    case Verdict::NotCounted:
        return 0;
    }
    return 0;
}

LeakRate weight(const PointFinding& finding)
{
    return finding.rate    ? *finding.rate
           : finding.bound ? *finding.bound
                           : finding.asRead.value_or(LeakRate());
}

/// Whether the point had been repaired when it was read: then the reading says nothing of how it was found.
bool wasRepaired(const model::Job& job, const PointFinding& finding)
{
    const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
    return std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
        return reading != nullptr && repair.at <= reading->at &&
               std::find(repair.points.begin(), repair.points.end(), finding.point) != repair.points.end();
    });
}

/// What a later round makes of what was known of a point.
const PointFinding& joined(const PointFinding& known, const PointFinding& later, model::RoundKind kind)
{
    if (!hasAnswer(later)) {
        const bool reasonKept = later.finding == Finding::Void && known.finding != Finding::NotSprayed;
        return hasAnswer(known) || later.finding == Finding::NotSprayed || reasonKept ? known : later;
    }
    if (!hasAnswer(known))
        return later;
    if (kind == model::RoundKind::AfterRepair || kind == model::RoundKind::Repeat)
        return later;
    return isWorse(later, known) ? later : known;
}

} // namespace

bool isWorse(const PointFinding& a, const PointFinding& b)
{
    if (gravity(a) != gravity(b))
        return gravity(a) > gravity(b);
    return weight(a) > weight(b);
}

std::vector<std::vector<PointFinding>> findingsByRound(const model::Job& job, const model::TestObject& object)
{
    std::vector<std::vector<PointFinding>> byRound;
    byRound.reserve(job.rounds.size());
    for (const model::Round& round : job.rounds)
        byRound.push_back(jobFindings(job, object, round.id));
    return byRound;
}

std::vector<PointFinding> summarise(const model::Job& job, const model::TestObject& object, Standing standing)
{
    return summarise(job, findingsByRound(job, object), standing);
}

std::vector<PointFinding> summarise(const model::Job& job,
                                    const std::vector<std::vector<PointFinding>>& byRound, Standing standing)
{
    SEALWALK_EXPECT(byRound.size() == job.rounds.size());
    std::map<int, PointFinding> byNumber;
    for (const model::TestPoint* point : job.sketch.activePoints()) {
        PointFinding finding;
        finding.point = point->id;
        finding.number = point->number;
        byNumber.emplace(point->number, finding);
    }
    for (std::size_t i = 0; i < byRound.size(); ++i) {
        const model::Round& round = job.rounds[i];
        const bool isAfter = standing == Standing::AsFound && round.kind == model::RoundKind::AfterRepair;
        for (const PointFinding& later : byRound[i]) {
            PointFinding& known = byNumber[later.number];
            if (isAfter && (hasAnswer(known) || wasRepaired(job, later)))
                continue;
            const bool temporary = known.temporaryRepair || later.temporaryRepair;
            known = PointFinding(joined(known, later, round.kind));
            known.temporaryRepair = temporary;
        }
    }
    std::vector<PointFinding> findings;
    findings.reserve(byNumber.size());
    for (auto& entry : byNumber) {
        if (standing == Standing::AsFound)
            entry.second.awaitsRetest = false; // a later repair does not change how it was found
        findings.push_back(std::move(entry.second));
    }
    return findings;
}

} // namespace sealwalk::analysis
