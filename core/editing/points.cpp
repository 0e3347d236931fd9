// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/points.h"

#include "core/editing/parts.h"
#include "core/editing/sense.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sealwalk::editing {

namespace {

bool isSpot(const model::Joint& joint)
{
    return std::holds_alternative<geometry::Spot>(joint.shape);
}

/// Deals the numbers the joint's points have out again along its walk.
void dealNumbers(model::Sketch& sketch, const model::Joint& joint)
{
    const auto walk = pointsInWalk(sketch, joint);
    std::vector<int> numbers;
    std::vector<model::PointId> ids;
    for (const model::TestPoint* point : walk) {
        numbers.push_back(point->number);
        ids.push_back(point->id);
    }
    std::sort(numbers.begin(), numbers.end());
    for (std::size_t i = 0; i < ids.size(); ++i)
        find(sketch, ids[i])->number = numbers[i];
    sortByNumber(sketch);
}

Status numbersAreFree(const model::Sketch& sketch, const model::Joint& joint, const PointSet& withReadings)
{
    for (const model::TestPoint* point : sketch.pointsOn(joint.id))
        if (withReadings.contains(point->id))
            return fail(
                ErrorCode::NotAllowed,
                fmt::format("point {} on {} has readings, so the numbers there stay; add a point or split "
                            "a stretch instead",
                            point->number, called(joint)));
    return {};
}

double apart(double a, double b, bool closed)
{
    const double d = std::abs(a - b);
    return closed ? std::min(d, 1.0 - d) : d;
}

} // namespace

Result<Edit> addPoint(const model::Sketch& sketch, model::JointId id, double along)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    if (!(along >= 0.0 && along <= 1.0))
        return fail(ErrorCode::BadInput, fmt::format("the place lies off {}", called(*joint)));
    if (isSpot(*joint) && !sketch.pointsOn(id).empty())
        return fail(ErrorCode::NotAllowed,
                    fmt::format("{} is a single place and has its point", called(*joint)));
    model::Sketch next = sketch;
    const int number = giveNumber(next);
    next.points.push_back({model::PointId::create(), number, id, along, {}, false});
    return difference(sketch, next, fmt::format("point {} added on {}", number, called(*joint)));
}

Result<Edit> addPointNear(const model::Sketch& sketch, model::JointId id, geometry::Point place, double reach)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    const geometry::Path path = geometry::outline(joint->shape);
    const geometry::Nearest nearest = path.nearest(place);
    if (nearest.distance > reach)
        return fail(ErrorCode::BadInput,
                    fmt::format("the place lies {:.0f} mm off {}; put the cursor on the joint",
                                nearest.distance, called(*joint)));
    const double along = path.length() > 0.0 ? nearest.along / path.length() : 0.0;
    return addPoint(sketch, id, std::clamp(along, 0.0, 1.0));
}

Result<Edit> splitStretch(const model::Sketch& sketch, model::JointId id, double along,
                          const PointSet& withReadings)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    const double length = geometry::outline(joint->shape).length();
    if (!(length > 0.0))
        return fail(ErrorCode::NotAllowed,
                    fmt::format("{} is a single place and cannot be split", called(*joint)));
    const double cut = along * length;
    for (const model::Stretch& stretch : model::stretches(sketch, id)) {
        // on a closed joint a stretch may lie across the start of the outline
        for (const double lap : {0.0, -length, length}) {
            const double at = cut + lap;
            if (at < stretch.from || at > stretch.to)
                continue;
            const bool before = stretch.centre <= at;
            const double own = before ? (stretch.from + at) / 2.0 : (at + stretch.to) / 2.0;
            const double other = before ? (at + stretch.to) / 2.0 : (stretch.from + at) / 2.0;
            Result<Edit> added = addPoint(sketch, id, wrapped(other / length));
            if (!added)
                return added;
            Result<model::Sketch> next = after(sketch, *added, withReadings);
            if (!next)
                return fail(next.error());
            if (!withReadings.contains(stretch.point))
                find(*next, stretch.point)->along = wrapped(own / length);
            return difference(
                sketch, *next,
                fmt::format("stretch of point {} split, point {} added", stretch.number, next->lastNumber));
        }
    }
    return fail(ErrorCode::NotFound,
                fmt::format("{} has no stretch to split yet; lay points first", called(*joint)));
}

Result<Edit> movePoint(const model::Sketch& sketch, model::PointId id, double along)
{
    model::Sketch next = sketch;
    model::TestPoint* point = find(next, id);
    if (point == nullptr)
        return unknownPoint();
    if (!(along >= 0.0 && along <= 1.0))
        return fail(ErrorCode::BadInput,
                    fmt::format("the place lies off the joint of point {}", point->number));
    const model::Joint* joint = sketch.joint(point->joint);
    if (joint != nullptr && joint->locked)
        return fail(ErrorCode::NotAllowed, fmt::format("{} is locked; unlock it first", called(*joint)));
    std::string gone;
    if (point->along != along && !point->place.empty())
        gone = fmt::format("; \"{}\" was said of its old place", std::exchange(point->place, {}));
    point->along = along;
    return difference(sketch, next, fmt::format("point {} moved", point->number) + gone);
}

Result<Edit> setPlace(const model::Sketch& sketch, model::PointId id, const std::string& place)
{
    model::Sketch next = sketch;
    model::TestPoint* point = find(next, id);
    if (point == nullptr)
        return unknownPoint();
    point->place = place;
    return difference(sketch, next, fmt::format("place of point {} described", point->number));
}

Result<Edit> retire(const model::Sketch& sketch, model::PointId id, const PointSet& withReadings)
{
    model::Sketch next = sketch;
    model::TestPoint* point = find(next, id);
    if (point == nullptr)
        return unknownPoint();
    const int number = point->number;
    if (withReadings.contains(id)) {
        point->retired = true;
        return difference(sketch, next, fmt::format("point {} retired", number));
    }
    std::erase_if(next.points, [&](const model::TestPoint& p) { return p.id == id; });
    return difference(sketch, next, fmt::format("point {} deleted", number));
}

Result<Edit> restore(const model::Sketch& sketch, model::PointId id)
{
    model::Sketch next = sketch;
    model::TestPoint* point = find(next, id);
    if (point == nullptr)
        return unknownPoint();
    point->retired = false;
    return difference(sketch, next, fmt::format("point {} brought back", point->number));
}

Result<Edit> renumber(const model::Sketch& sketch, const PointSet& withReadings)
{
    for (const model::TestPoint& point : sketch.points)
        if (withReadings.contains(point.id))
            return fail(
                ErrorCode::NotAllowed,
                fmt::format("point {} has readings, so numbers stay; add a point or split a stretch instead",
                            point.number));
    model::Sketch next = sketch;
    int number = 0;
    for (const model::Sheet& sheet : sketch.sheets)
        for (const model::Joint* joint : sketch.jointsOn(sheet.id))
            for (const model::TestPoint* point : pointsInWalk(sketch, *joint))
                find(next, point->id)->number = ++number;
    for (model::TestPoint& point : next.points)
        if (point.retired)
            point.number = ++number;
    next.lastNumber = number;
    sortByNumber(next);
    return difference(sketch, next, fmt::format("points numbered from 1 to {}", number));
}

Result<Edit> renumberJoint(const model::Sketch& sketch, model::JointId id, const PointSet& withReadings)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    if (const Status ok = numbersAreFree(sketch, *joint, withReadings); !ok)
        return fail(ok.error());
    model::Sketch next = sketch;
    dealNumbers(next, *joint);
    return difference(sketch, next, fmt::format("{} numbered along its walk", called(*joint)));
}

Result<Edit> reverseSense(const model::Sketch& sketch, model::JointId id, const PointSet& withReadings)
{
    model::Sketch next = sketch;
    model::Joint* joint = find(next, id);
    if (joint == nullptr)
        return unknownJoint();
    if (const Status ok = numbersAreFree(sketch, *joint, withReadings); !ok)
        return fail(ok.error());
    joint->clockwise = !joint->clockwise;
    dealNumbers(next, *joint);
    return difference(sketch, next, fmt::format("{} numbered the other way", called(*joint)));
}

Result<Edit> startAt(const model::Sketch& sketch, model::JointId id, double along,
                     const PointSet& withReadings)
{
    model::Sketch next = sketch;
    model::Joint* joint = find(next, id);
    if (joint == nullptr)
        return unknownJoint();
    if (!geometry::outline(joint->shape).isClosed())
        return fail(ErrorCode::NotAllowed,
                    fmt::format("{} has two ends and starts at one of them; reverse its sense instead",
                                called(*joint)));
    if (!(along >= 0.0 && along <= 1.0))
        return fail(ErrorCode::BadInput, fmt::format("the place lies off {}", called(*joint)));
    if (const Status ok = numbersAreFree(sketch, *joint, withReadings); !ok)
        return fail(ok.error());
    double start = wrapped(along);
    double best = 2.0;
    for (const model::TestPoint* point : sketch.pointsOn(id))
        if (const double d = apart(point->along, along, true); d < best) {
            best = d;
            start = wrapped(point->along);
        }
    joint->start = start;
    dealNumbers(next, *joint);
    return difference(sketch, next, fmt::format("{} numbered from another start", called(*joint)));
}

} // namespace sealwalk::editing
