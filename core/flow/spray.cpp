// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/spray.h"

#include "core/base/contract.h"
#include "core/flow/air_equivalent.h"
#include "core/quantities/leak_rate_unit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kGravity = 9.80665;

double densityRatio()
{
    return propertiesOf(Gas::Helium).molarMass / propertiesOf(Gas::Air).molarMass;
}

} // namespace

PumpingSpeed bubbleFlow(double perSecond, Length bubble)
{
    const double d = bubble.si();
    return PumpingSpeed::fromSi(perSecond * kPi / 6.0 * d * d * d);
}

Length detachedBubble(Length bore, double surfaceTension, double density)
{
    SEALWALK_EXPECT(density > 0.0);
    return metres(std::cbrt(6.0 * bore.si() * surfaceTension / (density * kGravity)));
}

double concentrationAt(PumpingSpeed flow, Length distance, double spread)
{
    SEALWALK_EXPECT(distance.si() > 0.0);
    return std::min(1.0, spread * flow.si() / (kHeliumInAirDiffusion * distance.si()));
}

Length distanceFor(double fraction, PumpingSpeed flow, double spread)
{
    SEALWALK_EXPECT(fraction > 0.0);
    return metres(spread * flow.si() / (kHeliumInAirDiffusion * fraction));
}

double laminarJetSpread(double schmidt)
{
    SEALWALK_EXPECT(schmidt > 0.0);
    return (1.0 + 2.0 * schmidt) / (8.0 * kPi * schmidt);
}

double laminarPlumeSpread()
{
    return 1.0 / (3.0 * kPi);
}

double schmidtNumber()
{
    return kAirKinematicViscosity / kHeliumInAirDiffusion;
}

double reducedGravity()
{
    return kGravity * (1.0 - densityRatio());
}

Length jetToPlumeLength(PumpingSpeed flow, Length bore)
{
    SEALWALK_EXPECT(flow.si() > 0.0 && bore.si() > 0.0);
    const double q = flow.si();
    const double area = 0.25 * kPi * bore.si() * bore.si();
    const double momentum = densityRatio() * q * q / area;
    return metres(std::pow(momentum, 0.75) / std::sqrt(reducedGravity() * q));
}

double jetReynolds(PumpingSpeed flow, Length bore, Temperature temperature)
{
    SEALWALK_EXPECT(bore.si() > 0.0);
    const double massFlow = kStandardPressure * flow.si() / (kMolarGasConstant * temperature.si()) *
                            propertiesOf(Gas::Helium).molarMass;
    return 4.0 * massFlow / (kPi * bore.si() * viscosity(Gas::Helium, temperature));
}

double turbulentJetFraction(Length distance, Length bore, double decay)
{
    SEALWALK_EXPECT(distance.si() > 0.0);
    const double mass = std::min(1.0, decay * bore.si() * std::sqrt(densityRatio()) / distance.si());
    const double helium = mass / propertiesOf(Gas::Helium).molarMass;
    return helium / (helium + (1.0 - mass) / propertiesOf(Gas::Air).molarMass);
}

double roomExcess(PumpingSpeed flow, Volume room, double changes, Duration time)
{
    SEALWALK_EXPECT(room.si() > 0.0 && changes >= 0.0);
    if (changes == 0.0)
        return flow.si() * time.si() / room.si();
    return roomExcessSteady(flow, room, changes) * -std::expm1(-changes * time.si());
}

double roomExcessSteady(PumpingSpeed flow, Volume room, double changes)
{
    SEALWALK_EXPECT(room.si() > 0.0 && changes > 0.0);
    return flow.si() / (changes * room.si());
}

LeakRate strayResponse(LeakRate pureHelium, double excess)
{
    return pureHelium * excess;
}

LeakRate naturalBackground(LeakRate air)
{
    return air * kNaturalHelium;
}

LeakRate naturalBackgroundMolecular(LeakRate air)
{
    return naturalBackground(air) * molecularRatio(Gas::Air, Gas::Helium);
}

} // namespace sealwalk::flow
