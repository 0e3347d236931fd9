// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/helium_cloud.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::demo {
namespace {

// Lengths in mm; chosen for the scenario, inside what the cited laws allow.
constexpr double kCloudWidth = 21.0;
constexpr double kCloudEdge = 1.5;
constexpr double kPlumeShare = 0.012;
constexpr double kPlumeOrigin = 26.0;
constexpr double kPlumeExponent = 1.0; // a laminar plume of a gentle spray
constexpr double kPlumeWidening = 0.14;
constexpr double kPlumeFoot = 9.0;
constexpr double kDraught = 0.08; // sideways shift per height

} // namespace

double heliumAt(geometry::Point probe, geometry::Point place, bool canRise)
{
    const double cloud = std::exp(-std::pow(distance(probe, place) / kCloudWidth, kCloudEdge));
    const double above = place.y - probe.y;
    if (!canRise || above <= 0.0)
        return cloud;
    const double width = kPlumeFoot + kPlumeWidening * above;
    const double aside = (place.x - probe.x - kDraught * above) / width;
    const double plume =
        kPlumeShare * std::pow(1.0 + above / kPlumeOrigin, -kPlumeExponent) * std::exp(-aside * aside / 2.0);
    return std::clamp(cloud + plume, 0.0, 1.0);
}

} // namespace sealwalk::demo
