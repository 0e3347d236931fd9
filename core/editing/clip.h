// SPDX-License-Identifier: GPL-3.0-or-later
// Joints with their points, carried from one place or sheet to another.
#pragma once

#include "core/editing/joints.h"

namespace sealwalk::editing {

struct Clip
{
    std::vector<model::Joint> joints;
    std::vector<model::TestPoint> points; ///< in order of number, retired ones left out
    std::vector<geometry::FreePath> lines; ///< of the doors and flanges drawn around the joints
    [[nodiscard]] bool isEmpty() const { return joints.empty(); }
};

/// What paste needs of the chosen joints; unknown ones are left out.
Clip copyOf(const model::Sketch& sketch, JointIds joints);

/// The joints of `clip` put on `sheet`, shifted by `by`, with new identities, names and numbers. `ids` is
/// told the new joints, when given.
Result<Edit> paste(const model::Sketch& sketch, const Clip& clip, model::SheetId sheet, geometry::Vector by,
                   std::vector<model::JointId>* ids = nullptr);

} // namespace sealwalk::editing
