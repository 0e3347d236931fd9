// SPDX-License-Identifier: GPL-3.0-or-later
// Changes to single test points and to their numbering.
#pragma once

#include "core/editing/laying.h"

namespace sealwalk::editing {

/// A new point at `along` (0 … 1) of the joint's outline, with the next free number.
Result<Edit> addPoint(const model::Sketch& sketch, model::JointId joint, double along);
/// The same at the place of the joint nearest to `place`. Refused farther off than `reach` mm.
Result<Edit> addPointNear(const model::Sketch& sketch, model::JointId joint, geometry::Point place,
                          double reach);

/// Cuts the stretch that holds `along` there: a new point comes to lie in the middle of the part its point is
/// not in. The point itself moves to the middle of its own part, unless it has readings: then it stays.
Result<Edit> splitStretch(const model::Sketch& sketch, model::JointId joint, double along,
                          const PointSet& withReadings);

/// Moves a point along its joint. A typed place is dropped, because it told of the old one.
Result<Edit> movePoint(const model::Sketch& sketch, model::PointId point, double along);
/// Where a stranger finds it, in words; empty: worked out.
Result<Edit> setPlace(const model::Sketch& sketch, model::PointId point, const std::string& place);

/// Takes a point out of the walk. With readings it is retired and keeps its number; without, it is deleted,
/// and its number is not given again.
Result<Edit> retire(const model::Sketch& sketch, model::PointId point, const PointSet& withReadings);
/// Brings a retired point back into the walk.
Result<Edit> restore(const model::Sketch& sketch, model::PointId point);

/// Numbers all points afresh from 1, sheet by sheet, joint by joint, along each joint's walk. Refused once
/// any point has readings.
Result<Edit> renumber(const model::Sketch& sketch, const PointSet& withReadings);
/// Deals the numbers of one joint's points out again along its walk. Refused once any of them has readings.
Result<Edit> renumberJoint(const model::Sketch& sketch, model::JointId joint, const PointSet& withReadings);
/// The other sense of numbering; the points there stay where they are and are numbered along the new walk.
Result<Edit> reverseSense(const model::Sketch& sketch, model::JointId joint, const PointSet& withReadings);
/// Numbering starts at the point nearest to `along`, or at `along` itself when there is no point.
Result<Edit> startAt(const model::Sketch& sketch, model::JointId joint, double along,
                     const PointSet& withReadings);

} // namespace sealwalk::editing
