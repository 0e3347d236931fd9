// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/clip.h"

#include "core/editing/body.h"
#include "core/editing/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>

namespace sealwalk::editing {

Clip copyOf(const model::Sketch& sketch, JointIds joints)
{
    Clip clip;
    for (const model::JointId id : joints) {
        const model::Joint* joint = sketch.joint(id);
        if (joint == nullptr)
            continue;
        clip.joints.push_back(*joint);
        for (const model::TestPoint& point : sketch.points)
            if (point.joint == id && !point.retired)
                clip.points.push_back(point);
        if (const model::Sheet* sheet = sketch.sheet(joint->sheet))
            std::ranges::move(bodyAsAround(*sheet, joint->shape, joint->shape),
                              std::back_inserter(clip.lines));
    }
    return clip;
}

Result<Edit> paste(const model::Sketch& sketch, const Clip& clip, model::SheetId sheet, geometry::Vector by,
                   std::vector<model::JointId>* ids)
{
    if (clip.isEmpty())
        return fail(ErrorCode::NotFound, "nothing was copied yet; choose joints and copy them first");
    if (sketch.sheet(sheet) == nullptr)
        return unknownSheet();
    model::Sketch next = sketch;
    std::map<model::JointId, model::JointId> newId;
    std::map<std::string, std::string> newGroup;
    for (model::Joint joint : clip.joints) {
        const model::JointId old = joint.id;
        joint.id = model::JointId::create();
        joint.sheet = sheet;
        joint.name = freeName(next, joint.name);
        joint.shape = geometry::moved(joint.shape, by);
        joint.locked = false;
        if (!joint.group.empty()) {
            if (!newGroup.contains(joint.group))
                newGroup[joint.group] = freeGroupWord(next);
            joint.group = newGroup[joint.group];
        }
        newId[old] = joint.id;
        if (ids != nullptr)
            ids->push_back(joint.id);
        next.joints.push_back(std::move(joint));
    }
    for (const model::TestPoint& point : clip.points)
        next.points.push_back(
            {model::PointId::create(), giveNumber(next), newId[point.joint], point.along, {}, false});
    for (geometry::FreePath line : clip.lines) {
        for (geometry::Point& node : line.nodes)
            node = node + by;
        find(next, sheet)->outlines.push_back(std::move(line));
    }
    return difference(sketch, next,
                      fmt::format("{} pasted", clip.joints.size() == 1
                                                   ? called(next.joints.back())
                                                   : fmt::format("{} joints", clip.joints.size())));
}

} // namespace sealwalk::editing
