// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/hit.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr double kLeast = 1.0; ///< mm, the least width a handle leaves

geometry::Shape reshapedBox(geometry::RoundedRectangle box, const Handle& handle, geometry::Point to,
                            double air, bool square)
{
    const geometry::Vector local = (to - box.centre).turned(-box.rotation);
    if (handle.what == Handle::What::Corner) {
        // The handle stands on the corner arc at 45 degrees, (1 − 1/√2) r in from the sides.
        const double inset = (box.width / 2.0 - local.x + box.height / 2.0 - local.y) / 2.0;
        const double radius = std::round(inset / (1.0 - std::sqrt(0.5)));
        box.cornerRadius = std::clamp(radius, 0.0, std::min(box.width, box.height) / 2.0);
        return box;
    }
    // The opposite side stays where it is.
    geometry::Vector shift;
    if (handle.x != 0) {
        const double fixed = -handle.x * box.width / 2.0;
        const double width = std::max(handle.x * (local.x - fixed) - air, kLeast);
        shift.x = handle.x * (width - box.width) / 2.0;
        box.width = width;
    }
    if (handle.y != 0) {
        const double fixed = -handle.y * box.height / 2.0;
        const double height = std::max(handle.y * (local.y - fixed) - air, kLeast);
        shift.y = handle.y * (height - box.height) / 2.0;
        box.height = height;
    }
    if (square && handle.x != 0 && handle.y != 0)
        box.width = box.height = std::max(box.width, box.height);
    box.centre = box.centre + shift.turned(box.rotation);
    box.cornerRadius = std::min(box.cornerRadius, std::min(box.width, box.height) / 2.0);
    return box;
}

} // namespace

std::optional<JointHit> jointNear(const model::Sketch& sketch, model::SheetId sheet, geometry::Point place,
                                  double reach)
{
    std::optional<JointHit> best;
    for (const model::Joint& joint : sketch.joints) {
        if (joint.sheet != sheet)
            continue;
        const geometry::Path path = geometry::outline(joint.shape);
        const geometry::Box box = path.bounds();
        double room = reach;
        const auto* spot = std::get_if<geometry::Spot>(&joint.shape);
        if (spot != nullptr)
            room = std::max(reach, spot->radius);
        if (place.x < box.low.x - room || place.x > box.high.x + room || place.y < box.low.y - room ||
            place.y > box.high.y + room)
            continue;
        const geometry::Nearest nearest = path.nearest(place);
        if (nearest.distance > room || (best && best->distance <= nearest.distance))
            continue;
        const double along = path.length() > 0.0 ? nearest.along / path.length() : 0.0;
        best = JointHit{joint.id, std::clamp(along, 0.0, 1.0), nearest.distance};
    }
    return best;
}

std::optional<model::PointId> pointNear(const model::Sketch& sketch, model::SheetId sheet,
                                        geometry::Point place, double reach, bool alsoRetired)
{
    std::optional<model::PointId> best;
    double nearest = reach;
    for (const model::Joint& joint : sketch.joints) {
        if (joint.sheet != sheet)
            continue;
        const geometry::Path path = geometry::outline(joint.shape);
        geometry::Box box = path.bounds();
        box.add(box.low - geometry::Vector{reach, reach});
        box.add(box.high + geometry::Vector{reach, reach});
        if (place.x < box.low.x || place.x > box.high.x || place.y < box.low.y || place.y > box.high.y)
            continue;
        for (const model::TestPoint& point : sketch.points) {
            if (point.joint != joint.id || (point.retired && !alsoRetired))
                continue;
            const double off = geometry::distance(path.at(point.along * path.length()).place, place);
            if (off <= nearest) {
                nearest = off;
                best = point.id;
            }
        }
    }
    return best;
}

std::vector<Handle> handlesOf(const geometry::Shape& shape, double air)
{
    std::vector<Handle> handles;
    if (const auto* free = std::get_if<geometry::FreePath>(&shape)) {
        for (std::size_t i = 0; i < free->nodes.size(); ++i)
            handles.push_back({Handle::What::Node, 0, 0, i, free->nodes[i]});
        return handles;
    }
    geometry::RoundedRectangle frame;
    if (const auto* ring = std::get_if<geometry::Ring>(&shape))
        frame = {ring->centre, 2.0 * ring->radius, 2.0 * ring->radius, ring->radius, 0.0};
    else if (const auto* box = std::get_if<geometry::RoundedRectangle>(&shape))
        frame = *box;
    else
        return handles;
    const auto place = [&](double x, double y) {
        return frame.centre + geometry::Vector{x, y}.turned(frame.rotation);
    };
    const double w = frame.width / 2.0 + air;
    const double h = frame.height / 2.0 + air;
    for (const int x : {-1, 0, 1})
        for (const int y : {-1, 0, 1})
            if (x != 0 || y != 0)
                handles.push_back({Handle::What::Side, x, y, 0, place(x * w, y * h)});
    if (std::holds_alternative<geometry::RoundedRectangle>(shape)) {
        const double inset = frame.cornerRadius * (1.0 - std::sqrt(0.5));
        handles.push_back({Handle::What::Corner, 1, 1, 0, place(w - air - inset, h - air - inset)});
        handles.push_back({Handle::What::Turn, 0, 1, 0, place(0.0, h + 2.0 * air)});
    }
    return handles;
}

geometry::Shape reshaped(const geometry::Shape& shape, const Handle& handle, geometry::Point to, double air,
                         bool square)
{
    if (const auto* free = std::get_if<geometry::FreePath>(&shape)) {
        geometry::FreePath changed = *free;
        if (handle.node < changed.nodes.size())
            changed.nodes[handle.node] = to;
        return changed;
    }
    if (const auto* ring = std::get_if<geometry::Ring>(&shape)) {
        const geometry::Vector way = to - ring->centre;
        const double reach = handle.x != 0 && handle.y != 0 ? std::max(std::abs(way.x), std::abs(way.y))
                             : handle.x != 0                ? std::abs(way.x)
                                                            : std::abs(way.y);
        return geometry::Ring{ring->centre, std::max(reach - air, kLeast / 2.0)};
    }
    if (const auto* box = std::get_if<geometry::RoundedRectangle>(&shape))
        return reshapedBox(*box, handle, to, air, square);
    return shape;
}

std::vector<model::JointId> jointsWithin(const model::Sketch& sketch, model::SheetId sheet, geometry::Point a,
                                         geometry::Point b)
{
    geometry::Box frame;
    frame.add(a);
    frame.add(b);
    std::vector<model::JointId> ids;
    for (const model::Joint& joint : sketch.joints) {
        if (joint.sheet != sheet)
            continue;
        const geometry::Box box = geometry::outline(joint.shape).bounds();
        if (box.low.x >= frame.low.x && box.high.x <= frame.high.x && box.low.y >= frame.low.y &&
            box.high.y <= frame.high.y)
            ids.push_back(joint.id);
    }
    return ids;
}

} // namespace sealwalk::ui
