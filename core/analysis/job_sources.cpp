// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_sources.h"

#include "core/analysis/answered.h"
#include "core/analysis/finding_words.h"
#include "core/analysis/job_view.h"
#include "core/analysis/rate_range.h"
#include "core/analysis/sources.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
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

void claim(PointFinding& finding, const SourceFinding& source, double sharedUncertainty)
{
    RateRange range{source.low, source.surelyAbove, source.surelyBelow, source.high};
    if (source.rate.si() > 0.0)
        range = widened(range, source.rate, sharedUncertainty);
    finding.rate = source.rate;
    setRange(finding, range);
}

/// What the search does not know of a point.
struct Ground
{
    std::optional<LeakRate> limit;
    std::string_view unit;
    bool isOnlyValue = true; ///< no other reading of the point that stands has a value
};

void apply(const SourceFinding& source, const std::unordered_map<int, model::PointId>& ids,
           const Ground& ground, const CorrectedReading& alone, PointFinding& finding)
{
    finding.finding = wordFor(source);
    finding.because = source.because;
    finding.because.insert(finding.because.end(), alone.because.begin(), alone.because.end());
    finding.rate.reset();
    finding.low.reset();
    finding.high.reset();
    finding.surelyAbove.reset();
    finding.surelyBelow.reset();
    finding.bound.reset();
    finding.of.clear();
    finding.owes.clear();
    for (const int number : source.others)
        if (std::find(finding.of.begin(), finding.of.end(), ids.at(number)) == finding.of.end())
            finding.of.push_back(ids.at(number));
    for (const Debt& debt : source.owes)
        finding.owes.push_back({debt.toPoint == 0 ? model::PointId() : ids.at(debt.toPoint), debt.share});
    if (!alone.isSized()) {
        // Where it leaks can be said; how much on the chamber cannot, without a reference leak.
        finding.verdict = ground.limit ? Verdict::CannotSay : Verdict::NoAnswer;
        if (finding.finding == Finding::Clear) {
            finding.finding = Finding::BelowDetectable;
            // What would have shown is not known either.
            finding.because = alone.because;
            finding.because.insert(finding.because.begin(), "no response");
        }
        return;
    }
    // The search weighs readings against one another; the quiet watch of the background knows better what is
    // only noise.
    const bool isNoise = alone.below && alone.smallestDetectable &&
                         source.rate <= *alone.smallestDetectable &&
                         (finding.finding == Finding::Leak || finding.finding == Finding::Shared);
    if (isNoise) {
        finding.finding = Finding::Clear;
        finding.of.clear();
        finding.because = alone.because;
        finding.because.insert(
            finding.because.begin(),
            fmt::format(
                "Its {} does not stand out of the noise; a leak of its own above {} would have shown.",
                rateWords(finding.asRead.value_or(source.rate), ground.unit),
                rateWords(*alone.below, ground.unit)));
    }
    if (isLeakWord(finding.finding)) {
        claim(finding, source, alone.sharedUncertainty);
        if (alone.unseen > 1.0) { // the search takes a spray that nobody timed for a full one
            finding.high = alone.unseen * *finding.high;
            finding.surelyBelow = alone.unseen * *finding.surelyBelow;
        }
        finding.verdict = verdictOf(*rangeOf(finding), ground.limit);
        return;
    }
    finding.bound = isNoise && ground.isOnlyValue
                        ? *alone.below
                        : std::max(alone.unseen * source.high, alone.below.value_or(LeakRate()));
    finding.verdict = verdictOf({{}, {}, *finding.bound, *finding.bound}, ground.limit);
    if (finding.finding == Finding::Clear && finding.verdict == Verdict::CannotSay)
        finding.finding = Finding::BelowDetectable;
}

} // namespace

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
    std::unordered_map<model::PointId, int> values;
    for (const model::Reading* reading : job.standing(round))
        if (reading->outcome == model::Outcome::Value)
            ++values[reading->point];
    for (PointFinding& finding : findings) {
        const auto source = byPoint.find(finding.point);
        const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
        if (source == byPoint.end() || reading == nullptr)
            continue;
        if (reading->outcome == model::Outcome::Value || reading->outcome == model::Outcome::NoResponse)
            apply(*source->second, ids,
                  {job.limitOf(finding.point), job.setup.unit, values[finding.point] <= 1},
                  correctedReading(job, object, *reading), finding);
    }
}

} // namespace sealwalk::analysis
