// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/slips.h"

#include "core/analysis/earlier_delay.h"
#include "core/analysis/finding_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace sealwalk::analysis {

namespace {

constexpr double kSlipFactor = 1000.0; // a mistyped decade or three; common practice, no source

/// The last repair of the point, or beside it, before `at`: values of before say nothing about those of
/// after.
Timestamp lastRepair(const model::Job& job, model::PointId point, const Timestamp& at)
{
    Timestamp last;
    for (const model::Repair& repair : job.repairs)
        if (repair.at <= at && last < repair.at)
            for (const auto* list : {&repair.points, &repair.disturbed})
                if (std::find(list->begin(), list->end(), point) != list->end())
                    last = repair.at;
    return last;
}

/// Latest standing value of a point, of every round, with no repair of it between that and `round`.
std::optional<LeakRate> lastValue(const model::Job& job, model::RoundId round, model::PointId point,
                                  std::optional<model::ReadingId> corrected)
{
    const model::Round* of = job.round(round);
    const Timestamp now = of == nullptr ? Timestamp::now() : of->opened;
    const Timestamp repaired = lastRepair(job, point, now);
    std::unordered_map<model::RoundId, std::size_t> order;
    for (std::size_t i = 0; i < job.rounds.size(); ++i)
        order.emplace(job.rounds[i].id, i);
    // One pass over all readings: asked with every key press on twenty thousand of them.
    std::unordered_set<model::ReadingId> fallen;
    if (corrected)
        fallen.insert(*corrected);
    std::vector<const model::Reading*> own;
    for (const model::Reading& reading : job.readings) {
        if (reading.corrects)
            fallen.insert(*reading.corrects);
        if (reading.point == point && reading.outcome == model::Outcome::Value && reading.peak &&
            order.contains(reading.round) &&
            lastRepair(job, point, job.rounds[order[reading.round]].opened) == repaired)
            own.push_back(&reading);
    }
    const model::Reading* last = nullptr;
    for (const model::Reading* reading : own)
        if (!fallen.contains(reading->id) && !job.isVoid(reading->id) &&
            (last == nullptr || order[reading->round] >= order[last->round]))
            last = reading;
    return last == nullptr ? std::nullopt : last->peak;
}

bool isFar(LeakRate a, LeakRate b)
{
    return a.si() > 0.0 && b.si() > 0.0 && std::abs(std::log(a / b)) >= std::log(kSlipFactor) - 1e-9;
}

/// What the display showed during a spray: its highest, or the background where nothing rose above it.
std::optional<LeakRate> valueShown(const model::Reading& reading)
{
    if (reading.outcome == model::Outcome::Value)
        return reading.peak;
    return reading.outcome == model::Outcome::NoResponse ? reading.background : std::nullopt;
}

} // namespace

std::optional<std::string> slip(const model::Job& job, model::RoundId round, model::PointId pointId,
                                LeakRate peak, std::optional<LeakRate> background,
                                std::optional<model::ReadingId> corrected)
{
    if (background && peak < *background)
        return fmt::format("{} is below the background of {}; is it right?", rateWords(peak, job.setup.unit),
                           rateWords(*background, job.setup.unit));
    if (job.setup.rangeTop && peak > *job.setup.rangeTop)
        return fmt::format("{} is more than the detector can show ({}); is it right?",
                           rateWords(peak, job.setup.unit), rateWords(*job.setup.rangeTop, job.setup.unit));
    if (job.setup.rangeBottom && peak < *job.setup.rangeBottom)
        return fmt::format("{} is less than the detector can show ({}); is it right?",
                           rateWords(peak, job.setup.unit),
                           rateWords(*job.setup.rangeBottom, job.setup.unit));
    if (const auto last = lastValue(job, round, pointId, corrected); last && isFar(peak, *last))
        return fmt::format("{} is far from the {} this point showed before; is the exponent right?",
                           rateWords(peak, job.setup.unit), rateWords(*last, job.setup.unit));

    const model::TestPoint* point = job.sketch.point(pointId);
    if (point == nullptr)
        return std::nullopt;
    std::unordered_set<model::PointId> joint;
    for (const model::TestPoint* other : job.sketch.pointsOn(point->joint))
        joint.insert(other->id);
    std::vector<LeakRate> beside;
    std::vector<LeakRate> elsewhere;
    for (const model::Reading* reading : job.standing(round))
        if (const auto shown = valueShown(*reading); shown && reading->point != pointId)
            (joint.contains(reading->point) ? beside : elsewhere).push_back(*shown);
    const auto far = [&](LeakRate other) { return isFar(peak, other); };
    if (!beside.empty() && std::ranges::all_of(beside, far))
        return fmt::format("{} is a thousand times away from every other reading of this joint; is it right?",
                           rateWords(peak, job.setup.unit));
    // A joint with one point has no neighbours of its own; then what the round shows as a rule has to do.
    constexpr std::size_t kEnough = 3;
    if (beside.empty() && elsewhere.size() >= kEnough) {
        const auto middle = elsewhere.begin() + static_cast<std::ptrdiff_t>(elsewhere.size() / 2);
        std::nth_element(elsewhere.begin(), middle, elsewhere.end());
        if (isFar(peak, *middle))
            return fmt::format("{} is a thousand times away from the {} usual in this round; is it right?",
                               rateWords(peak, job.setup.unit), rateWords(*middle, job.setup.unit));
    }
    return std::nullopt;
}

std::vector<Gap> gapsOf(const model::Reading& reading, Duration response, std::optional<Duration> before)
{
    std::vector<Gap> found;
    const bool answered = reading.outcome == model::Outcome::Value ||
                          reading.outcome == model::Outcome::NoResponse ||
                          reading.outcome == model::Outcome::AboveRange;
    if (!answered)
        return found;
    if (!reading.background)
        found.push_back(Gap::NoBackground);
    if (!reading.dwell)
        found.push_back(Gap::NotTimed);
    else if (before && reading.outcome == model::Outcome::NoResponse && *reading.dwell < *before)
        found.push_back(Gap::BeforeAnswer);
    else if (*reading.dwell < response)
        found.push_back(Gap::ShortSpray);
    return found;
}

std::string gapWords(Gap gap, const model::Reading& reading, const SprayTiming& timing,
                     std::optional<Duration> before)
{
    if (gap == Gap::NoBackground)
        return "no background before it";
    if (gap == Gap::NotTimed || !reading.dwell)
        return "spray not timed";
    if (gap == Gap::BeforeAnswer && before)
        return fmt::format("sprayed {:.1f} s, but it had answered after {:.1f} s and needs {:.1f} s",
                           inSeconds(*reading.dwell), inSeconds(*before),
                           inSeconds(dwellAfter(*before, timing)));
    return fmt::format("sprayed {:.1f} s, shorter than the response of {:.1f} s", inSeconds(*reading.dwell),
                       inSeconds(timing.response));
}

} // namespace sealwalk::analysis
