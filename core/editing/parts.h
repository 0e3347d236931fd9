// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs share: finding and naming the joints they work on.
#pragma once

#include "core/editing/edit.h"

#include <span>

namespace sealwalk::editing {

tl::unexpected<Error> unknownJoint();
tl::unexpected<Error> unknownPoint();
tl::unexpected<Error> unknownSheet();

/// Its name, else its kind.
std::string called(const model::Joint& joint);
/// "Door seal", or "3 joints".
std::string called(const model::Sketch& sketch, std::span<const model::JointId> joints);

/// The joint to be changed; nullptr when unknown.
model::Joint* find(model::Sketch& sketch, model::JointId id);
model::TestPoint* find(model::Sketch& sketch, model::PointId id);
model::Sheet* find(model::Sketch& sketch, model::SheetId id);

/// All known and none locked, or the sentence that says which.
Status mayMove(const model::Sketch& sketch, std::span<const model::JointId> joints);

void sortByNumber(model::Sketch& sketch);

} // namespace sealwalk::editing
