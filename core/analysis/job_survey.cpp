// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_survey.h"

#include "core/analysis/job_factor.h"
#include "core/analysis/job_view.h"
#include "core/analysis/spray_timing.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

// Common practice, no source: half of what a probe covers on a single fitting.
constexpr Length kHalfSpot = millimetres(15.0);
constexpr LeakRate kSmallestLimit = millibarLitresPerSecond(1e-12);

LeakRate median(std::vector<LeakRate> rates)
{
    if (rates.empty())
        return {};
    const auto middle = rates.begin() + static_cast<std::ptrdiff_t>(rates.size() / 2);
    std::nth_element(rates.begin(), middle, rates.end());
    return *middle;
}

/// Stretches of every joint, by point.
std::unordered_map<model::PointId, double> halfLengths(const model::Sketch& sketch)
{
    std::unordered_map<model::PointId, double> halves;
    for (const model::Joint& joint : sketch.joints)
        for (const model::Stretch& stretch : model::stretches(sketch, joint.id))
            halves[stretch.point] = 0.5 * (stretch.to - stretch.from);
    return halves;
}

void addPoints(const model::Job& job, const model::Round& round, JobSurvey& into)
{
    const std::unordered_set<model::PointId> called(round.points.begin(), round.points.end());
    const auto halves = halfLengths(job.sketch);
    for (const model::TestPoint* point : job.sketch.activePoints()) {
        const auto place = model::placeOf(job.sketch, point->id);
        const model::Joint* joint = job.sketch.joint(point->joint);
        if (!called.contains(point->id) || !place || joint == nullptr)
            continue;
        const model::Sheet* sheet = job.sketch.sheet(joint->sheet);
        if (sheet == nullptr)
            continue;
        SurveyPoint made;
        made.number = point->number;
        made.joint = joint->id.text();
        made.view = sheet->id.text();
        made.isSetup = joint->isSetup;
        made.isPlan = sheet->seenFromAbove;
        // The sheet turned so that its up direction points up.
        model::Sheet across = *sheet;
        across.upDirection -= 1.5707963267948966;
        made.x = millimetres(sheet->seenFromAbove ? place->x : model::heightOn(across, *place));
        made.up = millimetres(sheet->seenFromAbove ? place->y : model::heightOn(*sheet, *place));
        const auto half = halves.find(point->id);
        made.halfLength = half != halves.end() && half->second > 0.0 ? millimetres(half->second) : kHalfSpot;
        into.survey.points.push_back(std::move(made));
        into.points.push_back(point->id);
    }
}

/// Readings of the round that were not taken back by a later one and say something of the detector.
std::vector<const model::Reading*> spoken(const model::Job& job, model::RoundId round)
{
    std::unordered_set<model::ReadingId> takenBack; // not correctionOf(): a job may hold twenty thousand
    for (const model::Reading& reading : job.readings)
        if (reading.corrects)
            takenBack.insert(*reading.corrects);
    std::vector<const model::Reading*> readings;
    for (const model::Reading& reading : job.readings) {
        const bool says = reading.outcome == model::Outcome::Value ||
                          reading.outcome == model::Outcome::NoResponse ||
                          reading.outcome == model::Outcome::AboveRange;
        if (reading.round == round && says && !takenBack.contains(reading.id))
            readings.push_back(&reading);
    }
    std::ranges::stable_sort(readings, std::less<>(),
                             [](const model::Reading* r) { return r->at.utcMilliseconds; });
    return readings;
}

void addReadings(const model::Job& job, const model::TestObject& object, model::RoundId round,
                 Duration usualDwell, const ChamberFactor& factor, JobSurvey& into)
{
    std::unordered_map<model::PointId, int> numbers;
    for (std::size_t i = 0; i < into.points.size(); ++i)
        numbers.emplace(into.points[i], into.survey.points[i].number);
    const auto readings = spoken(job, round);
    std::vector<LeakRate> backgrounds;
    for (const model::Reading* reading : readings)
        if (reading->background)
            backgrounds.push_back(*reading->background);
    const LeakRate usualBackground = median(backgrounds);
    for (const model::Reading* reading : readings) {
        const auto number = numbers.find(reading->point);
        if (number == numbers.end())
            continue;
        const double onChamber = factor(*reading);
        SurveyReading made;
        made.point = number->second;
        made.start = seconds(reading->at.secondsSince(readings.front()->at));
        made.fullSignal = !(reading->dwell && *reading->dwell > Duration()); // as for its own figure
        made.dwell = made.fullSignal ? usualDwell : *reading->dwell;
        const LeakRate background = reading->background.value_or(usualBackground);
        made.background = onChamber * background;
        made.peak = reading->outcome == model::Outcome::NoResponse
                        ? made.background
                        : onChamber * reading->peak.value_or(background);
        made.delay = reading->delay;
        made.condition = reading->conditionDetail.empty()
                             ? std::string(model::name(reading->condition))
                             : std::string(model::name(reading->condition)) + ", " + reading->conditionDetail;
        for (const model::PointId& shielded : reading->shielded)
            if (const auto off = numbers.find(shielded); off != numbers.end())
                made.shielded.push_back(off->second);
        made.isVoid = job.isVoid(reading->id);
        made.smallestDetectable =
            correctedReading(job, object, *reading).smallestDetectable.value_or(LeakRate());
        into.survey.readings.push_back(std::move(made));
        into.readings.push_back(reading->id);
    }
}

/// The strictest limit of the points; without any, the background, below which nothing can be judged anyway.
LeakRate strictestLimit(const model::Job& job, const JobSurvey& of)
{
    std::optional<LeakRate> strictest;
    for (const model::PointId& point : of.points)
        if (const auto limit = job.limitOf(point))
            strictest = strictest ? std::min(*strictest, *limit) : *limit;
    if (strictest)
        return std::max(*strictest, kSmallestLimit);
    std::vector<LeakRate> backgrounds;
    for (const SurveyReading& reading : of.survey.readings)
        backgrounds.push_back(reading.background);
    return std::max(median(backgrounds), kSmallestLimit);
}

} // namespace

double chamberFactor(const model::Job& job, const model::Reading& reading)
{
    const model::TestPoint* point = job.sketch.point(reading.point);
    std::vector<std::string> notes;
    const auto factors =
        detail::factorsFor(job, point == nullptr ? model::JointId() : point->joint, reading.at, notes);
    double product = 1.0;
    if (factors)
        for (const FactorUsed& factor : *factors)
            product *= factor.multiplier;
    return product;
}

JobSurvey jobSurvey(const model::Job& job, const model::TestObject& object, model::RoundId round,
                    const ChamberFactor& factor)
{
    JobSurvey made;
    made.survey.unit = job.setup.unit;
    const SprayTiming timing = sprayTiming(job, object);
    made.survey.response = timing.response;
    made.survey.heliumFraction =
        job.setup.heliumShare > Fraction() ? std::min(job.setup.heliumShare, fraction(1.0)) : fraction(1.0);
    if (const model::Round* called = job.round(round)) {
        addPoints(job, *called, made);
        addReadings(job, object, round, timing.dwell, factor, made);
    }
    made.survey.limit = strictestLimit(job, made);
    return made;
}

} // namespace sealwalk::analysis
