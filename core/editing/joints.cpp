// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/joints.h"

#include "core/editing/body.h"
#include "core/editing/parts.h"
#include "core/editing/sense.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <set>
#include <unordered_map>

namespace sealwalk::editing {

namespace {

constexpr double kLap = 2.0 * std::numbers::pi;
constexpr int kMostCopies = 200;

using Placing = std::function<Placed(const model::Joint&)>;

/// Places each joint anew and carries its points over.
void placeAnew(model::Sketch& next, JointIds joints, const Placing& placing)
{
    std::unordered_map<model::JointId, Placed> placed;
    for (const model::JointId id : joints) {
        model::Joint* joint = find(next, id);
        const Placed result = placing(*joint);
        *joint = result.joint;
        placed.emplace(id, result);
    }
    for (model::TestPoint& point : next.points)
        if (const auto found = placed.find(point.joint); found != placed.end())
            point.along = found->second.along(point.along);
}

Result<Edit> placedAnew(const model::Sketch& sketch, JointIds joints, const Placing& placing,
                        std::string_view verb, JointIds mirrored = {})
{
    if (const Status ok = mayMove(sketch, joints); !ok)
        return fail(ok.error());
    model::Sketch next = sketch;
    placeAnew(next, joints, placing);
    bodiesFollow(sketch, next, mirrored);
    return difference(sketch, next, fmt::format("{} {}", called(sketch, joints), verb));
}

Result<Edit> copies(const model::Sketch& sketch, JointIds joints, int count,
                    const std::function<Placed(const model::Joint&, int)>& placing)
{
    if (count < 2 || count > kMostCopies)
        return fail(ErrorCode::BadInput,
                    fmt::format("{} joints are asked for; a row or circle has 2 to {}", count, kMostCopies));
    model::Sketch next = sketch;
    std::unordered_map<std::string, std::string> groupOf; // a copied group is a group of its own
    for (int i = 1; i < count; ++i) {
        groupOf.clear();
        for (const model::JointId id : joints) {
            const model::Joint* original = sketch.joint(id);
            if (original == nullptr)
                return unknownJoint();
            Placed placed = placing(*original, i);
            placed.joint.id = model::JointId::create();
            placed.joint.locked = false;
            placed.joint.name = freeName(next, original->name);
            if (!original->group.empty()) {
                const auto known = groupOf.find(original->group);
                placed.joint.group = known != groupOf.end() ? known->second : freeGroupWord(next);
                groupOf[original->group] = placed.joint.group;
            }
            next.joints.push_back(placed.joint);
            if (const model::Sheet* sheet = sketch.sheet(original->sheet)) {
                const auto body = bodyAsAround(*sheet, original->shape, placed.joint.shape);
                auto& lines = find(next, original->sheet)->outlines;
                lines.insert(lines.end(), body.begin(), body.end());
            }
            for (const model::TestPoint* point : pointsInWalk(sketch, *original))
                next.points.push_back({model::PointId::create(),
                                       giveNumber(next),
                                       placed.joint.id,
                                       placed.along(point->along),
                                       {},
                                       false});
        }
    }
    return difference(sketch, next, fmt::format("{} copied to {} in all", called(sketch, joints), count));
}

} // namespace

double Placed::along(double before) const
{
    return offset == 0.0 && direction == 1.0 ? before : wrapped(offset + direction * before);
}

Placed turned(model::Joint joint, geometry::Point pivot, double radians)
{
    Placed placed{std::move(joint)};
    placed.joint.shape = geometry::turned(placed.joint.shape, pivot, radians);
    // A ring's outline begins at the top however the ring is turned, so its points move along it.
    if (std::holds_alternative<geometry::Ring>(placed.joint.shape)) {
        placed.offset = wrapped(-radians / kLap);
        placed.joint.start = placed.along(placed.joint.start);
    }
    return placed;
}

Placed mirrored(model::Joint joint, geometry::Point pivot)
{
    Placed placed{std::move(joint)};
    const auto* free = std::get_if<geometry::FreePath>(&placed.joint.shape);
    const bool spot = std::holds_alternative<geometry::Spot>(placed.joint.shape);
    const bool keepsNodes = free != nullptr;
    const bool open = spot || (keepsNodes && !free->closed);
    placed.joint.shape = geometry::mirrored(placed.joint.shape, pivot);
    if (!open)
        placed.joint.clockwise = !placed.joint.clockwise;
    // Rings and rectangles are walked clockwise before and after, so the mirrored points run the other way.
    if (!open && !keepsNodes) {
        placed.direction = -1.0;
        placed.joint.start = placed.along(placed.joint.start);
    }
    return placed;
}

std::string freeName(const model::Sketch& sketch, const std::string& wish)
{
    std::set<std::string_view> taken;
    for (const model::Joint& joint : sketch.joints)
        taken.insert(joint.name);
    if (!wish.empty() && !taken.contains(wish))
        return wish;
    // "Port 2" counts on as "Port 3".
    std::string stem = wish;
    const std::size_t digits = stem.find_last_not_of("0123456789");
    if (digits != std::string::npos && digits + 1 < stem.size() && stem[digits] == ' ')
        stem.erase(digits);
    for (int i = 2;; ++i)
        if (std::string name = fmt::format("{} {}", stem, i); !taken.contains(name))
            return name;
}

std::vector<std::string> usualConditions(model::JointKind kind)
{
    if (kind == model::JointKind::Hose)
        return {"at rest", "flexed"};
    if (kind == model::JointKind::Bellows)
        return {"at rest", "extended"};
    return {};
}

Result<Edit> addJoint(const model::Sketch& sketch, model::Joint joint, const std::optional<Laying>& laying)
{
    if (joint.id.isNil())
        joint.id = model::JointId::create();
    if (sketch.sheet(joint.sheet) == nullptr)
        return unknownSheet();
    if (const std::string wrong = geometry::complaint(joint.shape); !wrong.empty())
        return fail(ErrorCode::BadInput, wrong);
    if (joint.name.empty()) {
        std::string wish(model::name(joint.kind));
        if (wish.front() >= 'a' && wish.front() <= 'z')
            wish.front() = static_cast<char>(wish.front() - 'a' + 'A');
        joint.name = freeName(sketch, wish);
    }
    model::Sketch next = sketch;
    next.joints.push_back(joint);
    std::string what = fmt::format("{} drawn", joint.name);
    if (laying) {
        const Result<Edit> lay = layPoints(next, joint.id, *laying, {});
        if (!lay)
            return fail(lay.error());
        what = fmt::format("{} drawn, {}", joint.name, lay->what.substr(0, lay->what.find(" on ")));
        const Result<model::Sketch> laid = after(next, *lay);
        if (!laid)
            return fail(laid.error());
        next = *laid;
    }
    return difference(sketch, next, std::move(what));
}

Result<Edit> changeJoint(const model::Sketch& sketch, const model::Joint& joint)
{
    const model::Joint* old = sketch.joint(joint.id);
    if (old == nullptr)
        return unknownJoint();
    if (sketch.sheet(joint.sheet) == nullptr)
        return unknownSheet();
    if (const std::string wrong = geometry::complaint(joint.shape); !wrong.empty())
        return fail(ErrorCode::BadInput, wrong);
    if (!(joint.start >= 0.0 && joint.start <= 1.0))
        return fail(ErrorCode::BadInput, fmt::format("{} starts off its own line", called(joint)));
    if (joint.thickness && !(joint.thickness->si() > 0.0))
        return fail(ErrorCode::BadInput, "a cord thickness must be above 0 mm");
    if (old->locked && (old->shape != joint.shape || old->sheet != joint.sheet))
        return fail(ErrorCode::NotAllowed, fmt::format("{} is locked; unlock it first", called(*old)));
    model::Sketch next = sketch;
    *find(next, joint.id) = joint;
    return difference(sketch, next, fmt::format("{} changed", called(joint)));
}

Result<Edit> reshape(const model::Sketch& sketch, model::JointId id, const geometry::Shape& shape)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    model::Joint changed = *joint;
    changed.shape = shape;
    return changeJoint(sketch, changed);
}

Result<Edit> move(const model::Sketch& sketch, JointIds joints, geometry::Vector by)
{
    return placedAnew(
        sketch, joints,
        [&](const model::Joint& joint) {
            Placed placed{joint};
            placed.joint.shape = geometry::moved(joint.shape, by);
            return placed;
        },
        "moved");
}

Result<Edit> rotate(const model::Sketch& sketch, JointIds joints, geometry::Point pivot, double radians)
{
    return placedAnew(
        sketch, joints, [&](const model::Joint& joint) { return turned(joint, pivot, radians); }, "turned");
}

Result<Edit> mirror(const model::Sketch& sketch, JointIds joints, geometry::Point pivot)
{
    return placedAnew(
        sketch, joints, [&](const model::Joint& joint) { return mirrored(joint, pivot); }, "mirrored",
        joints);
}

Result<Edit> copyInRow(const model::Sketch& sketch, JointIds joints, geometry::Vector step, int count)
{
    if (!(step.length() > 0.0))
        return fail(ErrorCode::BadInput,
                    "the copies of a row must not lie on one place; drag the next one off");
    return copies(sketch, joints, count, [&](const model::Joint& joint, int i) {
        Placed placed{joint};
        placed.joint.shape = geometry::moved(joint.shape, i * step);
        return placed;
    });
}

Result<Edit> copyOnCircle(const model::Sketch& sketch, JointIds joints, geometry::Point centre, int count)
{
    return copies(sketch, joints, count,
                  [&](const model::Joint& joint, int i) { return turned(joint, centre, -kLap * i / count); });
}

std::string freeGroupWord(const model::Sketch& sketch)
{
    std::set<std::string_view> taken;
    for (const model::Joint& joint : sketch.joints)
        taken.insert(joint.group);
    for (int i = 1;; ++i)
        if (std::string word = fmt::format("group {}", i); !taken.contains(word))
            return word;
}

Result<Edit> group(const model::Sketch& sketch, JointIds joints, const std::string& word)
{
    model::Sketch next = sketch;
    for (const model::JointId id : joints) {
        model::Joint* joint = find(next, id);
        if (joint == nullptr)
            return unknownJoint();
        joint->group = word;
    }
    return difference(sketch, next,
                      fmt::format("{} {}", called(sketch, joints), word.empty() ? "ungrouped" : "grouped"));
}

Result<Edit> setLocked(const model::Sketch& sketch, JointIds joints, bool locked)
{
    model::Sketch next = sketch;
    for (const model::JointId id : joints) {
        model::Joint* joint = find(next, id);
        if (joint == nullptr)
            return unknownJoint();
        joint->locked = locked;
    }
    return difference(sketch, next,
                      fmt::format("{} {}", called(sketch, joints), locked ? "locked" : "unlocked"));
}

Result<Edit> removeJoints(const model::Sketch& sketch, JointIds joints, const PointSet& withReadings)
{
    if (const Status ok = mayMove(sketch, joints); !ok)
        return fail(ok.error());
    const auto chosen = [&](model::JointId id) {
        return std::find(joints.begin(), joints.end(), id) != joints.end();
    };
    model::Sketch next = sketch;
    std::set<model::JointId> kept;
    for (model::TestPoint& point : next.points)
        if (chosen(point.joint) && withReadings.contains(point.id)) {
            point.retired = true;
            kept.insert(point.joint);
        }
    std::erase_if(next.points,
                  [&](const model::TestPoint& p) { return chosen(p.joint) && !withReadings.contains(p.id); });
    std::erase_if(next.joints, [&](const model::Joint& j) { return chosen(j.id) && !kept.contains(j.id); });
    bodiesFollow(sketch, next);
    return difference(sketch, next,
                      fmt::format("{} {}", called(sketch, joints), kept.empty() ? "deleted" : "retired"));
}

} // namespace sealwalk::editing
