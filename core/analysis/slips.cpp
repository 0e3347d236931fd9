// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/slips.h"

#include "core/analysis/earlier_delay.h"
#include "core/analysis/finding_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
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

SlipCheck::SlipCheck(const model::Job& job, model::RoundId round, std::optional<model::PointId> only)
    : m_job(job)
{
    const model::Round* of = job.round(round);
    m_opened = of == nullptr ? Timestamp::now() : of->opened;
    for (std::size_t i = 0; i < job.rounds.size(); ++i)
        m_order.emplace(job.rounds[i].id, i);
    for (const model::VoidMark& mark : job.voids)
        m_fallen.insert(mark.reading);
    std::vector<const model::Reading*> shown;
    for (const model::Reading& reading : job.readings) {
        if (reading.corrects)
            m_fallen.insert(*reading.corrects);
        if (reading.round == round && valueShown(reading))
            shown.push_back(&reading);
        if ((!only || reading.point == *only) && reading.outcome == model::Outcome::Value && reading.peak &&
            m_order.contains(reading.round))
            m_values[reading.point].push_back(&reading);
    }
    for (const model::TestPoint& point : job.sketch.points)
        m_joints.emplace(point.id, point.joint);
    for (const model::Reading* reading : shown)
        if (const auto joint = m_joints.find(reading->point);
            joint != m_joints.end() && !m_fallen.contains(reading->id))
            m_shown.push_back({reading->point, joint->second, *valueShown(*reading)});
}

/// Latest standing value of the point, of every round, with no repair of it between that and this one.
std::optional<LeakRate> SlipCheck::lastValue(model::PointId point,
                                             std::optional<model::ReadingId> corrected) const
{
    const auto values = m_values.find(point);
    if (values == m_values.end())
        return std::nullopt;
    const Timestamp repaired = lastRepair(m_job, point, m_opened);
    const model::Reading* last = nullptr;
    for (const model::Reading* reading : values->second) {
        const std::size_t order = m_order.at(reading->round);
        if (reading->id != corrected && !m_fallen.contains(reading->id) &&
            (last == nullptr || order >= m_order.at(last->round)) &&
            lastRepair(m_job, point, m_job.rounds[order].opened) == repaired)
            last = reading;
    }
    return last == nullptr ? std::nullopt : last->peak;
}

std::optional<std::string> SlipCheck::outsideDetector(LeakRate peak,
                                                      std::optional<LeakRate> background) const
{
    const model::Setup& setup = m_job.setup;
    if (background && peak < *background)
        return fmt::format("{} is below the background of {}; is it right?", rateWords(peak, setup.unit),
                           rateWords(*background, setup.unit));
    if (setup.rangeTop && peak > *setup.rangeTop)
        return fmt::format("{} is more than the detector can show ({}); is it right?",
                           rateWords(peak, setup.unit), rateWords(*setup.rangeTop, setup.unit));
    if (setup.rangeBottom && peak < *setup.rangeBottom)
        return fmt::format("{} is less than the detector can show ({}); is it right?",
                           rateWords(peak, setup.unit), rateWords(*setup.rangeBottom, setup.unit));
    return std::nullopt;
}

std::optional<std::string> SlipCheck::farFromOthers(model::PointId point, LeakRate peak) const
{
    const auto joint = m_joints.find(point);
    if (joint == m_joints.end())
        return std::nullopt;
    bool hasNeighbour = false;
    bool isFarFromAll = true;
    for (const Shown& other : m_shown)
        if (other.joint == joint->second && other.point != point) {
            hasNeighbour = true;
            isFarFromAll = isFarFromAll && isFar(peak, other.rate);
        }
    if (hasNeighbour)
        return !isFarFromAll
                   ? std::nullopt
                   : std::optional(fmt::format(
                         "{} is a thousand times away from every other reading of this joint; is it right?",
                         rateWords(peak, m_job.setup.unit)));
    // A joint with one point has no neighbours of its own; then what the round shows as a rule has to do.
    constexpr std::size_t kEnough = 3;
    std::vector<LeakRate> elsewhere;
    for (const Shown& other : m_shown)
        if (other.joint != joint->second)
            elsewhere.push_back(other.rate);
    if (elsewhere.size() < kEnough)
        return std::nullopt;
    const auto middle = elsewhere.begin() + static_cast<std::ptrdiff_t>(elsewhere.size() / 2);
    std::nth_element(elsewhere.begin(), middle, elsewhere.end());
    if (!isFar(peak, *middle))
        return std::nullopt;
    return fmt::format("{} is a thousand times away from the {} usual in this round; is it right?",
                       rateWords(peak, m_job.setup.unit), rateWords(*middle, m_job.setup.unit));
}

std::optional<std::string> SlipCheck::doubt(model::PointId point, LeakRate peak,
                                            std::optional<LeakRate> background,
                                            std::optional<model::ReadingId> corrected) const
{
    if (auto outside = outsideDetector(peak, background))
        return outside;
    if (const auto last = lastValue(point, corrected); last && isFar(peak, *last))
        return fmt::format("{} is far from the {} this point showed before; is the exponent right?",
                           rateWords(peak, m_job.setup.unit), rateWords(*last, m_job.setup.unit));
    return farFromOthers(point, peak);
}

std::optional<std::string> slip(const model::Job& job, model::RoundId round, model::PointId point,
                                LeakRate peak, std::optional<LeakRate> background,
                                std::optional<model::ReadingId> corrected)
{
    return SlipCheck(job, round, point).doubt(point, peak, background, corrected);
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
