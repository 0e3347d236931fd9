// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/base_pressure.h"

#include "core/base/contract.h"

namespace sealwalk::flow {

Pressure basePressure(const PumpedChamber& chamber, LeakRate leak)
{
    SEALWALK_EXPECT(chamber.speed.si() > 0.0);
    return (leak + chamber.outgassing) / chamber.speed + chamber.blankOff;
}

LeakRate allowedLeak(const PumpedChamber& chamber, Pressure target)
{
    return (target - chamber.blankOff) * chamber.speed - chamber.outgassing;
}

LeakRate removedLeak(PumpingSpeed speed, Pressure before, Pressure after)
{
    return (before - after) * speed;
}

Pressure basePressureWithout(PumpingSpeed speed, Pressure now, LeakRate removed)
{
    SEALWALK_EXPECT(speed.si() > 0.0);
    return now - removed / speed;
}

} // namespace sealwalk::flow
