// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/map_content.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

double MapScale::position(LeakRate rate) const
{
    if (rate.si() <= 0.0)
        return 0.0;
    return (std::log10(inMillibarLitresPerSecond(rate)) - lowestDecade) / decades;
}

double MapScale::decadesAboveDetectable(LeakRate rate) const
{
    const double base = smallestDetectable.value_or(lowest()).si();
    if (rate.si() <= base || base <= 0.0)
        return 0.0;
    return std::log10(rate.si() / base);
}

LeakRate MapScale::lowest() const
{
    return millibarLitresPerSecond(std::pow(10.0, lowestDecade));
}

LeakRate MapScale::highest() const
{
    return millibarLitresPerSecond(std::pow(10.0, lowestDecade + decades));
}

geometry::Box MapContent::bounds() const
{
    geometry::Box box;
    for (const MapJoint& joint : joints) {
        geometry::Box own = joint.outline.bounds();
        if (joint.isSpot() && !own.isEmpty()) {
            const geometry::Vector r{joint.spotRadius, joint.spotRadius};
            own.low = own.low - r;
            own.high = own.high + r;
        }
        box.add(own);
    }
    for (const geometry::FreePath& line : outlines)
        for (const geometry::Point node : line.nodes)
            box.add(node);
    if (box.isEmpty()) {
        box.add(geometry::Point{0.0, 0.0});
        box.add(geometry::Point{width, height});
    }
    return box;
}

const MapStretch* MapContent::stretchOf(model::PointId point) const
{
    const auto found = std::find_if(stretches.begin(), stretches.end(),
                                    [&](const MapStretch& s) { return s.point == point; });
    return found == stretches.end() ? nullptr : &*found;
}

} // namespace sealwalk::report
