// SPDX-License-Identifier: GPL-3.0-or-later
// What a seal closes follows its sizes: the leaf of a door, the rim and bolts of a flange.
#pragma once

#include "core/editing/edit.h"
#include "core/geometry/shape.h"

#include <span>
#include <vector>

namespace sealwalk::editing {

/// Lets the doors and flanges around the joints of `before` follow them into `next`: moved, turned or
/// mirrored with them, gone with those that are gone. Only lines that still lie as they were drawn around a
/// joint.
void bodiesFollow(const model::Sketch& before, model::Sketch& next,
                  std::span<const model::JointId> mirrored = {});

/// The lines of the door or flange drawn around `from`, as they would lie around `to`; none where it has
/// none.
std::vector<geometry::FreePath> bodyAsAround(const model::Sheet& sheet, const geometry::Shape& from,
                                             const geometry::Shape& to);

/// The joint in another shape, as reshape() gives it. A door or flange that was drawn around it and still
/// lies as it was drawn is drawn anew around the new shape, by the same margin; other lines stay.
Result<Edit> reshapeWithBody(const model::Sketch& sketch, model::JointId joint, const geometry::Shape& shape);

} // namespace sealwalk::editing
