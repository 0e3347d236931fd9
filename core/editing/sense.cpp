// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/sense.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::editing {

namespace {

bool isClosed(const geometry::Shape& shape)
{
    if (const auto* free = std::get_if<geometry::FreePath>(&shape))
        return free->closed;
    return !std::holds_alternative<geometry::Spot>(shape);
}

/// Twice the signed area: negative when the nodes run clockwise as seen.
double turnOf(const std::vector<geometry::Point>& nodes)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const geometry::Point& a = nodes[i];
        const geometry::Point& b = nodes[(i + 1) % nodes.size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum;
}

} // namespace

double wrapped(double fraction)
{
    const double rest = fraction - std::floor(fraction);
    return rest >= 1.0 ? 0.0 : rest;
}

bool runsAlongOutline(const model::Joint& joint)
{
    const auto* free = std::get_if<geometry::FreePath>(&joint.shape);
    if (free == nullptr || !free->closed)
        return joint.clockwise;
    return joint.clockwise == (turnOf(free->nodes) <= 0.0);
}

double walkOf(const model::Joint& joint, double along)
{
    const bool forward = runsAlongOutline(joint);
    if (!isClosed(joint.shape))
        return forward ? along : 1.0 - along;
    return wrapped(forward ? along - joint.start : joint.start - along);
}

double alongOf(const model::Joint& joint, double walk)
{
    const bool forward = runsAlongOutline(joint);
    if (!isClosed(joint.shape))
        return std::clamp(forward ? walk : 1.0 - walk, 0.0, 1.0);
    return wrapped(forward ? joint.start + walk : joint.start - walk);
}

std::vector<const model::TestPoint*> pointsInWalk(const model::Sketch& sketch, const model::Joint& joint)
{
    std::vector<const model::TestPoint*> points = sketch.pointsOn(joint.id);
    // A point that lies on the start within rounding begins the walk instead of ending it.
    const auto walk = [&](const model::TestPoint* p) {
        const double w = walkOf(joint, p->along);
        return w > 1.0 - 1e-9 && isClosed(joint.shape) ? 0.0 : w;
    };
    std::sort(points.begin(), points.end(), [&](const model::TestPoint* a, const model::TestPoint* b) {
        const double wa = walk(a);
        const double wb = walk(b);
        return wa != wb ? wa < wb : a->number < b->number;
    });
    return points;
}

} // namespace sealwalk::editing
