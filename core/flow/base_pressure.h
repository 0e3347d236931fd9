// SPDX-License-Identifier: GPL-3.0-or-later
// Base pressure and what leaks do to it. Speeds are for air, effective at the chamber at that pressure.
#pragma once

#include "core/quantities/kinds.h"

namespace sealwalk::flow {

struct PumpedChamber
{
    PumpingSpeed speed;  ///< above zero
    Pressure blankOff;   ///< what the pump reaches on a closed inlet
    LeakRate outgassing; ///< other gas than leaks
};

/// (leak + outgassing)/speed + blank-off pressure.
Pressure basePressure(const PumpedChamber& chamber, LeakRate leak);
/// The largest leak with which `target` is reached; zero or below: not reached even without leaks.
LeakRate allowedLeak(const PumpedChamber& chamber, Pressure target);
/// Leak that a repair removed, from base pressures after equal time under vacuum.
LeakRate removedLeak(PumpingSpeed speed, Pressure before, Pressure after);
/// Base pressure once `removed` is gone.
Pressure basePressureWithout(PumpingSpeed speed, Pressure now, LeakRate removed);

} // namespace sealwalk::flow
