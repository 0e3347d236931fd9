// SPDX-License-Identifier: GPL-3.0-or-later
// What a leak rate looks like: the thin hole that would pass it, the time to fill a volume, bubbles under
// water.
#pragma once

#include "core/flow/channel.h"

namespace sealwalk::flow {

/// Outflow into vacuum through a hole in a wall thinner than the hole is wide; optimistic for real leaks.
/// A · p1 · mean speed/4 · outflowFactor. `upstream` above zero.
LeakRate thinHoleFlow(Gas gas, Length diameter, Pressure upstream, Temperature temperature);
/// The hole that passes `flow`; refuses flows not above zero and holes outside 1e-10 m to 0.05 m.
Result<Length> thinHoleDiameter(Gas gas, LeakRate flow, Pressure upstream, Temperature temperature);

/// Time in which `flow` (above zero) delivers `volume` of gas at `pressure`.
Duration timeToDeliver(LeakRate flow, Volume volume, Pressure pressure);
/// Volume of a sphere.
Volume bubbleVolume(Length diameter);
/// Pressure gained by a sealed volume in a time.
Pressure pressureGained(LeakRate flow, Volume volume, Duration time);

} // namespace sealwalk::flow
