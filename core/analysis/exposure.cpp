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
double highestInPass(const Spread& spread, const Place& leak, const Stretch& stretch, double dwellInResponses)
{
    const double keep = std::exp(-dwellInResponses / static_cast<double>(Stretch::kPasses));
    double shown = 0.0;
    double highest = 0.0;
    for (const Place& probe : stretch.passes) {
        shown = keep * shown + (1.0 - keep) * shareBetween(spread, leak, probe, stretch.isPlan);
        highest = std::max(highest, shown);
    }
    return highest;
}

} // namespace

double visibleShare(const Scene& scene, const Spread& spread, const Place& leak, std::size_t view,
                    const SceneReading& reading)
{
    const Stretch& stretch = scene.stretches[reading.point];
    if (stretch.view != view)
        return 0.0;
    const Place nearest = stretch.nearestTo(leak);
    const double lingering = shareBetween(spread, leak, nearest, stretch.isPlan);
    // Far away the helium is the same all along the stretch, and following the pass tells nothing more.
    constexpr double kFarInHalfLengths = 3.5;
    const double dx = leak.x - stretch.middle.x;
    const double dy = leak.up - stretch.middle.up;
    const double away = std::sqrt(dx * dx + dy * dy);
    if (away > kFarInHalfLengths * stretch.half || spread[Spread::Sweep] <= 0.0)
        return lingering;
    const double full = -std::expm1(-reading.dwellInResponses);
    const double passing = highestInPass(spread, leak, stretch, reading.dwellInResponses) / full;
    const double share = std::min(passing / lingering, 1.0);
    return lingering * std::pow(share, spread[Spread::Sweep]);
}

std::vector<double> visibleShares(const Scene& scene, const Spread& spread, const Place& leak,
                                  std::size_t view, std::size_t condition)
{
    std::vector<double> shares(scene.readings.size(), 0.0);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const SceneReading& reading = scene.readings[i];
        if (condition == scene.usualCondition || condition == reading.condition)
            shares[i] = visibleShare(scene, spread, leak, view, reading);
    }
    return shares;
}

} // namespace sealwalk::analysis
