// SPDX-License-Identifier: GPL-3.0-or-later
// Helium in a room and the oxygen it leaves. Figures for the caution, never a permission: the site's rules
// and licensed people decide.
#pragma once

#include "core/quantities/kinds.h"

namespace sealwalk::flow {

/// Oxygen in air, per cent by volume.
inline constexpr double kOxygenInAir = 20.95;
/// Below it a space counts as oxygen-deficient. 29 CFR 1910.134 as read by OSHA, letter of 2007-04-02.
inline constexpr double kLeastOxygen = 19.5;
/// Above it as enriched. 29 CFR 1910.146, from a secondary source.
inline constexpr double kMostOxygen = 23.5;

/// Per cent oxygen with this mole fraction of helium, 0 to 1.
double oxygenWith(double heliumFraction);
/// The mole fraction that brings oxygen down to kLeastOxygen.
double heliumForLeastOxygen();
/// Helium let into a mixed room, vented at constant pressure, that brings it down there.
Volume heliumVolumeForLeastOxygen(Volume room);
/// Time for that at a steady flow (room state, above zero) without change of air.
Duration timeToLeastOxygen(Volume room, PumpingSpeed flow);

} // namespace sealwalk::flow
