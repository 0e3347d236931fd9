// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/job.h"

#include <algorithm>
#include <unordered_set>

namespace sealwalk::model {

namespace {

template <class T>
std::vector<const T*> standingOf(const Job& job, const std::vector<T>& all)
{
    std::vector<const T*> standing;
    standing.reserve(all.size());
    for (const T& each : all)
        if (job.voidOf(each.id.uuid()) == nullptr)
            standing.push_back(&each);
    return standing;
}

} // namespace

const Round* Job::round(RoundId wanted) const
{
    const auto found =
        std::find_if(rounds.begin(), rounds.end(), [&](const Round& r) { return r.id == wanted; });
    return found == rounds.end() ? nullptr : &*found;
}

const Reading* Job::reading(ReadingId wanted) const
{
    const auto found =
        std::find_if(readings.begin(), readings.end(), [&](const Reading& r) { return r.id == wanted; });
    return found == readings.end() ? nullptr : &*found;
}

bool Job::isVoid(ReadingId wanted) const
{
    return std::any_of(voids.begin(), voids.end(),
                       [&](const VoidMark& mark) { return mark.reading == wanted; });
}

const MeasurementVoid* Job::voidOf(const Uuid& measurement) const
{
    const auto found =
        std::find_if(voidMeasurements.begin(), voidMeasurements.end(),
                     [&](const MeasurementVoid& mark) { return mark.measurement.uuid() == measurement; });
    return found == voidMeasurements.end() ? nullptr : &*found;
}

std::vector<const Calibration*> Job::standingCalibrations() const
{
    return standingOf(*this, calibrations);
}

std::vector<const BackgroundWatch*> Job::standingBackgrounds() const
{
    return standingOf(*this, backgrounds);
}

std::vector<const RiseTest*> Job::standingRiseTests() const
{
    return standingOf(*this, riseTests);
}

const Reading* Job::correctionOf(ReadingId wanted) const
{
    const auto found = std::find_if(readings.begin(), readings.end(),
                                    [&](const Reading& r) { return r.corrects == wanted; });
    return found == readings.end() ? nullptr : &*found;
}

std::vector<const Reading*> Job::standing(RoundId wanted) const
{
    // One pass and sets, not isVoid() and correctionOf(): a job may hold twenty thousand readings, and every
    // entry asks.
    std::unordered_set<ReadingId> fallen;
    std::vector<const Reading*> result;
    for (const Reading& r : readings) {
        if (r.corrects)
            fallen.insert(*r.corrects);
        if (r.round == wanted)
            result.push_back(&r);
    }
    for (const VoidMark& mark : voids)
        fallen.insert(mark.reading);
    if (!fallen.empty())
        std::erase_if(result, [&](const Reading* r) { return fallen.contains(r->id); });
    return result;
}

std::optional<LeakRate> Job::limitOf(PointId point) const
{
    if (const Joint* joint = sketch.jointOf(point))
        if (const auto own = setup.kindLimits.find(joint->kind); own != setup.kindLimits.end())
            return own->second;
    return setup.pointLimit;
}

} // namespace sealwalk::model
