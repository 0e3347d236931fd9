// SPDX-License-Identifier: GPL-3.0-or-later
// What lies under the hand: handles of the chosen joint, points, joints.
#pragma once

#include "core/model/sketch.h"

#include <optional>
#include <vector>

namespace sealwalk::ui {

struct JointHit
{
    model::JointId joint;
    double along = 0.0;    ///< 0 … 1 of its outline
    double distance = 0.0; ///< mm
};

/// The joint of a sheet nearest to a place, within `reach` mm.
std::optional<JointHit> jointNear(const model::Sketch& sketch, model::SheetId sheet, geometry::Point place,
                                  double reach);

/// The point of a sheet nearest to a place, within `reach` mm; retired ones only when `alsoRetired`.
std::optional<model::PointId> pointNear(const model::Sketch& sketch, model::SheetId sheet,
                                        geometry::Point place, double reach, bool alsoRetired);

/// A place by which a joint is reshaped.
struct Handle
{
    enum class What
    {
        Side,   ///< of a box or ring: `x`, `y` say which, −1, 0 or 1
        Corner, ///< sets the corner radius
        Node,   ///< of a free line, by `node`
        Turn,   ///< turns the joint
    };
    What what = What::Side;
    int x = 0;
    int y = 0;
    std::size_t node = 0;
    geometry::Point place;
};

/// The handles of a shape. `air` mm is how far the frame stands off it.
std::vector<Handle> handlesOf(const geometry::Shape& shape, double air);

/// The shape with a handle dragged to a place.
geometry::Shape reshaped(const geometry::Shape& shape, const Handle& handle, geometry::Point to, double air,
                         bool square);

/// Joints whose outline lies wholly within the box between two places.
std::vector<model::JointId> jointsWithin(const model::Sketch& sketch, model::SheetId sheet, geometry::Point a,
                                         geometry::Point b);

} // namespace sealwalk::ui
