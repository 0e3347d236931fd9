// SPDX-License-Identifier: GPL-3.0-or-later
// What a seal closes follows its sizes: the leaf of a door, the rim and bolts of a flange.
#pragma once

#include "core/editing/edit.h"
#include "core/geometry/shape.h"

namespace sealwalk::editing {

/// The joint in another shape, as reshape() gives it. A door or flange that was drawn around it and still
/// lies as it was drawn is drawn anew around the new shape, by the same margin; other lines stay.
Result<Edit> reshapeWithBody(const model::Sketch& sketch, model::JointId joint, const geometry::Shape& shape);

} // namespace sealwalk::editing
