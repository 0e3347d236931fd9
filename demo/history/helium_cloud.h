// SPDX-License-Identifier: GPL-3.0-or-later
// How much of the sprayed helium reaches a place beside or above the probe, on the day of the demo.
#pragma once

#include "core/geometry/point.h"

namespace sealwalk::demo {

/// Share of helium (0 … 1) at `place` while the probe stands at `probe`, mm. `canRise` is false on a plan,
/// where nothing is above anything else. A cloud of some centimetres around the tip, and a plume above it
/// that dilutes with height^(-5/3) and widens with height, as turbulent buoyant plumes do (Chen and Rodi,
/// 1980), shifted by a light draught.
double heliumAt(geometry::Point probe, geometry::Point place, bool canRise);

} // namespace sealwalk::demo
