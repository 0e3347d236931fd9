// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/exposure.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

/// Share at a leak with the probe somewhere; on a plan helium has no way up to take.
double shareBetween(const Spread& spread, const Place& leak, const Place& probe, bool isPlan)
{
    const double across = leak.x - probe.x;
    const double above = leak.up - probe.up;
    return isPlan ? spread.share(std::hypot(across, above), 0.0) : spread.share(across, above);
}

/// Highest value while the probe passes evenly over the stretch and the detector follows with its response.
double highestInPass(const Spread& spread, const Place& leak, const Stretch& stretch, double keep)
{
    double shown = 0.0;
    double highest = 0.0;
    for (const Place& probe : stretch.passes) {
        shown = keep * shown + (1.0 - keep) * shareBetween(spread, leak, probe, stretch.isPlan);
        highest = std::max(highest, shown);
    }
    return highest;
}

double squared(double x)
{
    return x * x;
}

} // namespace

double freakShare(double across, double above)
{
    const double distance = std::sqrt(across * across + above * above);
    const double near = std::exp(-distance / 0.06);
    const double everywhere = 0.003 / (1.0 + distance / 0.1);
    if (above <= 0.0)
        return std::min(1.0, near + everywhere);
    const double cone = std::exp(-squared(across / (0.05 + 0.6 * above)));
    return std::min(1.0, near + everywhere + 0.25 * cone / (1.0 + above / 0.05));
}

std::vector<Bearing> bearings(const Scene& scene, std::size_t point, const Place& leak, std::size_t condition)
{
    // Far away the helium is the same all along the stretch, and following the pass tells nothing more.
    constexpr double kFarInHalfLengths = 3.5;
    const ReadingRange& range = scene.readingsIn[scene.stretches[point].view];
    std::vector<Bearing> all(range.count());
    for (std::size_t i = range.first; i < range.last; ++i) {
        const SceneReading& reading = scene.readings[i];
        const Stretch& stretch = scene.stretches[reading.point];
        const Place nearest = stretch.nearestTo(leak);
        Bearing& bearing = all[i - range.first];
        bearing.across = leak.x - nearest.x;
        bearing.above = leak.up - nearest.up;
        if (stretch.isPlan)
            bearing = {.across = std::hypot(bearing.across, bearing.above)};
        const double away = squared(leak.x - stretch.middle.x) + squared(leak.up - stretch.middle.up);
        bearing.isClose = away <= squared(kFarInHalfLengths * stretch.half);
        const bool isShielded = std::ranges::find(reading.shielded, point) != reading.shielded.end();
        bearing.isSeen = !isShielded && (condition == scene.usualCondition || condition == reading.condition);
        bearing.most = isShielded ? 0.0 : freakShare(bearing.across, bearing.above);
    }
    return all;
}

double visibleShare(const Scene& scene, const Spread& spread, const Place& leak, const Bearing& bearing,
                    const SceneReading& reading)
{
    if (!bearing.isSeen)
        return 0.0;
    const double lingering = spread.share(bearing.across, bearing.above);
    if (!bearing.isClose || spread[Spread::Sweep] <= 0.0)
        return lingering;
    const double passing =
        highestInPass(spread, leak, scene.stretches[reading.point], reading.keptPerPass) / reading.fullInPass;
    const double share = std::min(passing / lingering, 1.0);
    return lingering * std::pow(share, spread[Spread::Sweep]);
}

} // namespace sealwalk::analysis
