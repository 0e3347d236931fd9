// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/conductance.h"

#include "core/base/contract.h"
#include "core/quantities/leak_rate_unit.h"

#include <cmath>
#include <numbers>

namespace sealwalk::flow {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kKappa = 1.235;

} // namespace

Conductance apertureConductance(Gas gas, Temperature temperature, double area)
{
    SEALWALK_EXPECT(area > 0.0);
    return Conductance::fromSi(0.25 * area * meanSpeed(gas, temperature));
}

Conductance longTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length)
{
    SEALWALK_EXPECT(diameter.si() > 0.0 && length.si() > 0.0);
    const double d = diameter.si();
    return Conductance::fromSi(kPi / 12.0 * meanSpeed(gas, temperature) * d * d * d / length.si());
}

double transmissionSanteler(double lengthOverRadius)
{
    SEALWALK_EXPECT(lengthOverRadius >= 0.0);
    const double effective = lengthOverRadius * (1.0 + 1.0 / (3.0 + 3.0 * lengthOverRadius / 7.0));
    return 1.0 / (1.0 + 3.0 * effective / 8.0);
}

double transmissionDushman(double lengthOverRadius)
{
    SEALWALK_EXPECT(lengthOverRadius >= 0.0);
    return 1.0 / (1.0 + 3.0 * lengthOverRadius / 8.0);
}

Conductance shortTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length)
{
    SEALWALK_EXPECT(diameter.si() > 0.0 && length.si() >= 0.0);
    const double area = 0.25 * kPi * diameter.si() * diameter.si();
    return apertureConductance(gas, temperature, area) * transmissionSanteler(2.0 * (length / diameter));
}

Conductance laminarTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length,
                                   Pressure mean)
{
    SEALWALK_EXPECT(diameter.si() > 0.0 && length.si() > 0.0 && mean.si() >= 0.0);
    const double d2 = diameter.si() * diameter.si();
    return Conductance::fromSi(kPi * d2 * d2 * mean.si() /
                               (128.0 * viscosity(gas, temperature) * length.si()));
}

Conductance knudsenTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length,
                                   Pressure mean)
{
    const double slip = diameter.si() * mean.si() *
                        std::sqrt(propertiesOf(gas).molarMass / (kMolarGasConstant * temperature.si())) /
                        viscosity(gas, temperature);
    return laminarTubeConductance(gas, temperature, diameter, length, mean) +
           longTubeConductance(gas, temperature, diameter, length) * ((1.0 + slip) / (1.0 + kKappa * slip));
}

Length bendLength(Length diameter, double degrees)
{
    SEALWALK_EXPECT(degrees >= 0.0);
    return diameter * (1.33 * degrees / 180.0);
}

Conductance inSeries(std::span<const Conductance> conductances)
{
    SEALWALK_EXPECT(!conductances.empty());
    double sum = 0.0;
    for (const Conductance c : conductances) {
        SEALWALK_EXPECT(c.si() > 0.0);
        sum += 1.0 / c.si();
    }
    return Conductance::fromSi(1.0 / sum);
}

Conductance inParallel(std::span<const Conductance> conductances)
{
    Conductance sum;
    for (const Conductance c : conductances)
        sum += c;
    return sum;
}

PumpingSpeed speedThrough(PumpingSpeed pump, Conductance conductance)
{
    SEALWALK_EXPECT(pump.si() > 0.0 && conductance.si() > 0.0);
    return PumpingSpeed::fromSi(1.0 / (1.0 / pump.si() + 1.0 / conductance.si()));
}

} // namespace sealwalk::flow
