// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/earlier_delay.h"

#include "core/analysis/slow_rise.h"

#include <algorithm>
#include <limits>
#include <unordered_set>

namespace sealwalk::analysis {

EarlierDelays::EarlierDelays(const model::Job& job, Duration response)
    : m_response(response)
{
    std::vector<const model::Reading*> delayed;
    std::unordered_set<model::ReadingId> fallen;
    for (const model::Reading& reading : job.readings) {
        if (reading.corrects)
            fallen.insert(*reading.corrects);
        if (reading.delay &&
            (reading.outcome == model::Outcome::Value || reading.outcome == model::Outcome::AboveRange))
            delayed.push_back(&reading);
    }
    if (delayed.empty())
        return;
    for (const model::VoidMark& mark : job.voids)
        fallen.insert(mark.reading);
    for (const model::Reading* reading : delayed)
        if (!fallen.contains(reading->id))
            m_byPoint[reading->point].push_back({reading->at, reading->round, *reading->delay});
}

std::optional<Duration> EarlierDelays::before(model::PointId point, model::RoundId round,
                                              const Timestamp& at) const
{
    const auto known = m_byPoint.find(point);
    if (known == m_byPoint.end())
        return std::nullopt;
    std::optional<Duration> longest;
    for (const Delay& each : known->second) {
        const bool isBurst = each.round == round && isAsLateAsPermeation(each.delay, m_response);
        if (each.at < at && !isBurst)
            longest = std::max(longest.value_or(each.delay), each.delay);
    }
    return longest;
}

std::optional<Duration> EarlierDelays::before(const model::Reading& reading) const
{
    return before(reading.point, reading.round, reading.at);
}

Duration EarlierDelays::dwellAt(model::PointId point, model::RoundId round, const SprayTiming& timing) const
{
    const Timestamp now{std::numeric_limits<std::int64_t>::max(), 0};
    const auto delay = before(point, round, now);
    if (!delay)
        return timing.dwell;
    return isLate(*delay, timing.response) || isAsLateAsPermeation(*delay, timing.response)
               ? dwellAfter(*delay, timing)
               : std::max(*delay, timing.dwell);
}

Duration dwellAfter(Duration delay, const SprayTiming& timing)
{
    return delay + timing.dwell;
}

} // namespace sealwalk::analysis
