// SPDX-License-Identifier: GPL-3.0-or-later
// The walk along a joint: from its start, in its sense.
#pragma once

#include "core/model/sketch.h"

namespace sealwalk::editing {

/// Whether numbering runs as the outline does. Closed joints: whether both turn the same way as seen on the
/// sheet; open ones: `clockwise` stands for "from the first node".
bool runsAlongOutline(const model::Joint& joint);

/// How far along the walk (0 … 1, from the start in the sense of the joint) a place of the outline lies, and
/// back.
double walkOf(const model::Joint& joint, double along);
double alongOf(const model::Joint& joint, double walk);

/// Points on the joint that are not retired, in the order of the walk.
std::vector<const model::TestPoint*> pointsInWalk(const model::Sketch& sketch, const model::Joint& joint);

/// Into 0 … 1 by whole laps; 1 becomes 0.
double wrapped(double fraction);

} // namespace sealwalk::editing
