// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing, changing and arranging joints. Points go with their joints.
#pragma once

#include "core/editing/laying.h"

#include <span>

namespace sealwalk::editing {

/// Adds a joint and, when asked, lays points on it. One without an identity or name is given one.
Result<Edit> addJoint(const model::Sketch& sketch, model::Joint joint,
                      const std::optional<Laying>& laying = std::nullopt);
/// Puts `joint` in the place of the one with the same identity. Points keep their fraction of the outline. A
/// locked joint takes no other shape or sheet.
Result<Edit> changeJoint(const model::Sketch& sketch, const model::Joint& joint);
Result<Edit> reshape(const model::Sketch& sketch, model::JointId joint, const geometry::Shape& shape);

using JointIds = std::span<const model::JointId>;

Result<Edit> move(const model::Sketch& sketch, JointIds joints, geometry::Vector by);
/// Counter-clockwise about `pivot`, radians.
Result<Edit> rotate(const model::Sketch& sketch, JointIds joints, geometry::Point pivot, double radians);
/// Left-right about the vertical line through `pivot`; points and the sense of numbering are mirrored too.
Result<Edit> mirror(const model::Sketch& sketch, JointIds joints, geometry::Point pivot);

/// `count` joints in all (2 … 200), each `step` further on; copies have as many points, newly numbered.
Result<Edit> copyInRow(const model::Sketch& sketch, JointIds joints, geometry::Vector step, int count);
/// `count` joints in all (2 … 200), evenly round a full circle about `centre`, clockwise.
Result<Edit> copyOnCircle(const model::Sketch& sketch, JointIds joints, geometry::Point centre, int count);

/// One word for all, by which they are chosen and moved together; an empty word dissolves the group.
Result<Edit> group(const model::Sketch& sketch, JointIds joints, const std::string& word);
/// A group word that no joint uses yet.
std::string freeGroupWord(const model::Sketch& sketch);
Result<Edit> setLocked(const model::Sketch& sketch, JointIds joints, bool locked);

/// Takes joints out. Points with readings are retired instead and keep their joint; the others go.
Result<Edit> removeJoints(const model::Sketch& sketch, JointIds joints, const PointSet& withReadings);

/// A name no joint has yet: "O-ring seal 2".
std::string freeName(const model::Sketch& sketch, const std::string& wish);
/// Conditions that points of such a joint are to be sprayed in, in their stored words; empty: as it stands.
std::vector<std::string> usualConditions(model::JointKind kind);

/// Turned or mirrored as drawn, with start and sense; `along` is carried over by the answered function's
/// rule: fraction' = offset + direction · fraction.
struct Placed
{
    model::Joint joint;
    double offset = 0.0;
    double direction = 1.0;
    [[nodiscard]] double along(double before) const;
};
Placed turned(model::Joint joint, geometry::Point pivot, double radians);
Placed mirrored(model::Joint joint, geometry::Point pivot);

} // namespace sealwalk::editing
