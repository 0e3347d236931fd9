// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::editing {

namespace {

template <class Item, class Key>
Item* findIn(std::vector<Item>& items, Key id)
{
    const auto found = std::find_if(items.begin(), items.end(), [&](const Item& i) { return i.id == id; });
    return found == items.end() ? nullptr : &*found;
}

} // namespace

tl::unexpected<Error> unknownJoint()
{
    return fail(ErrorCode::NotFound, "that joint is not in the sketch");
}

tl::unexpected<Error> unknownPoint()
{
    return fail(ErrorCode::NotFound, "that point is not in the sketch");
}

tl::unexpected<Error> unknownSheet()
{
    return fail(ErrorCode::NotFound, "that sheet is not in the sketch");
}

std::string called(const model::Joint& joint)
{
    return joint.name.empty() ? std::string(model::name(joint.kind)) : joint.name;
}

std::string called(const model::Sketch& sketch, std::span<const model::JointId> joints)
{
    if (joints.size() != 1)
        return fmt::format("{} joints", joints.size());
    const model::Joint* joint = sketch.joint(joints.front());
    return joint == nullptr ? "joint" : called(*joint);
}

model::Joint* find(model::Sketch& sketch, model::JointId id)
{
    return findIn(sketch.joints, id);
}

model::TestPoint* find(model::Sketch& sketch, model::PointId id)
{
    return findIn(sketch.points, id);
}

model::Sheet* find(model::Sketch& sketch, model::SheetId id)
{
    return findIn(sketch.sheets, id);
}

Status mayMove(const model::Sketch& sketch, std::span<const model::JointId> joints)
{
    for (const model::JointId id : joints) {
        const model::Joint* joint = sketch.joint(id);
        if (joint == nullptr)
            return unknownJoint();
        if (joint->locked)
            return fail(ErrorCode::NotAllowed, fmt::format("{} is locked; unlock it first", called(*joint)));
    }
    return {};
}

void sortByNumber(model::Sketch& sketch)
{
    std::stable_sort(
        sketch.points.begin(), sketch.points.end(),
        [](const model::TestPoint& a, const model::TestPoint& b) { return a.number < b.number; });
}

} // namespace sealwalk::editing
