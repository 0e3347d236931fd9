// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of quantity the trade needs, their makers and readers, and the products physics allows.
#pragma once

#include "core/quantities/quantity.h"

namespace sealwalk {

/// pV flow at the temperature of the gas, Pa·m³/s.
using LeakRate = Quantity<struct LeakRateTag>;
/// Absolute pressure, Pa; also pressure differences, which the trade writes in the same unit.
using Pressure = Quantity<struct PressureTag>;
using Volume = Quantity<struct VolumeTag>;             ///< m³
using PumpingSpeed = Quantity<struct PumpingSpeedTag>; ///< volume flow at the local pressure, m³/s
using Conductance = Quantity<struct ConductanceTag>;   ///< m³/s
using Length = Quantity<struct LengthTag>;             ///< m
using Duration = Quantity<struct DurationTag>;         ///< s
using AmountFlow = Quantity<struct AmountFlowTag>;     ///< mol/s
using Fraction = Quantity<struct FractionTag>;         ///< 1
using TemperatureDifference = Quantity<struct TemperatureDifferenceTag>; ///< K
/// Thermodynamic temperature, K.
using Temperature = QuantityPoint<struct TemperatureTag, TemperatureDifference>;

inline constexpr double kZeroCelsiusInKelvin = 273.15;
inline constexpr double kPascalsPerMillibar = 100.0;
inline constexpr double kPascalCubicMetresPerMillibarLitre = 0.1;

constexpr LeakRate pascalCubicMetresPerSecond(double v)
{
    return LeakRate::fromSi(v);
}
constexpr LeakRate millibarLitresPerSecond(double v)
{
    return LeakRate::fromSi(v * kPascalCubicMetresPerMillibarLitre);
}
constexpr double inMillibarLitresPerSecond(LeakRate q)
{
    return q.si() / kPascalCubicMetresPerMillibarLitre;
}
constexpr Pressure pascals(double v)
{
    return Pressure::fromSi(v);
}
constexpr Pressure millibars(double v)
{
    return Pressure::fromSi(v * kPascalsPerMillibar);
}
constexpr double inMillibars(Pressure p)
{
    return p.si() / kPascalsPerMillibar;
}
constexpr Volume cubicMetres(double v)
{
    return Volume::fromSi(v);
}
constexpr Volume litres(double v)
{
    return Volume::fromSi(v / 1000.0);
}
constexpr double inLitres(Volume v)
{
    return v.si() * 1000.0;
}
constexpr PumpingSpeed litresPerSecond(double v)
{
    return PumpingSpeed::fromSi(v / 1000.0);
}
constexpr double inLitresPerSecond(PumpingSpeed s)
{
    return s.si() * 1000.0;
}
constexpr Length metres(double v)
{
    return Length::fromSi(v);
}
constexpr Length millimetres(double v)
{
    return Length::fromSi(v / 1000.0);
}
constexpr double inMillimetres(Length l)
{
    return l.si() * 1000.0;
}
constexpr Duration seconds(double v)
{
    return Duration::fromSi(v);
}
constexpr Duration minutes(double v)
{
    return Duration::fromSi(v * 60.0);
}
constexpr double inSeconds(Duration t)
{
    return t.si();
}
constexpr AmountFlow molesPerSecond(double v)
{
    return AmountFlow::fromSi(v);
}
constexpr Fraction fraction(double v)
{
    return Fraction::fromSi(v);
}
constexpr Temperature kelvins(double v)
{
    return Temperature::fromSi(v);
}
constexpr Temperature degreesCelsius(double v)
{
    return Temperature::fromSi(v + kZeroCelsiusInKelvin);
}
constexpr double inDegreesCelsius(Temperature t)
{
    return t.si() - kZeroCelsiusInKelvin;
}
constexpr TemperatureDifference kelvinsDifference(double v)
{
    return TemperatureDifference::fromSi(v);
}

/// Q = p·S
constexpr LeakRate operator*(Pressure p, PumpingSpeed s)
{
    return LeakRate::fromSi(p.si() * s.si());
}
constexpr LeakRate operator*(PumpingSpeed s, Pressure p)
{
    return p * s;
}
constexpr LeakRate operator*(Pressure p, Conductance c)
{
    return LeakRate::fromSi(p.si() * c.si());
}
/// p = Q/S
constexpr Pressure operator/(LeakRate q, PumpingSpeed s)
{
    return Pressure::fromSi(q.si() / s.si());
}
/// tau = V/S
constexpr Duration operator/(Volume v, PumpingSpeed s)
{
    return Duration::fromSi(v.si() / s.si());
}
/// Q = V·p/t
constexpr LeakRate pressureRise(Volume v, Pressure rise, Duration time)
{
    return LeakRate::fromSi(v.si() * rise.si() / time.si());
}

} // namespace sealwalk
