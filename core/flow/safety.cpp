// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/safety.h"

#include "core/base/contract.h"

#include <cmath>

namespace sealwalk::flow {

double oxygenWith(double heliumFraction)
{
    SEALWALK_EXPECT(heliumFraction >= 0.0 && heliumFraction <= 1.0);
    return kOxygenInAir * (1.0 - heliumFraction);
}

double heliumForLeastOxygen()
{
    return 1.0 - kLeastOxygen / kOxygenInAir;
}

Volume heliumVolumeForLeastOxygen(Volume room)
{
    return room * std::log(kOxygenInAir / kLeastOxygen);
}

Duration timeToLeastOxygen(Volume room, PumpingSpeed flow)
{
    SEALWALK_EXPECT(flow.si() > 0.0);
    return heliumVolumeForLeastOxygen(room) / flow;
}

} // namespace sealwalk::flow
