// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/kinds.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace sealwalk {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b)
{
    a + b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b)
{
    a* b;
};

// Property: what physics forbids does not compile.
static_assert(!std::is_constructible_v<LeakRate, double>);
static_assert(!std::is_convertible_v<LeakRate, double>);
static_assert(!Addable<Pressure, LeakRate>);
static_assert(!Addable<PumpingSpeed, Conductance>);
static_assert(!Addable<Temperature, Temperature>);
static_assert(Addable<Temperature, TemperatureDifference>);
static_assert(!Multipliable<Pressure, Pressure>);
static_assert(Multipliable<Pressure, PumpingSpeed>);

// Property: the makers and their inverses are one.
TEST(Quantity, MakersAndReadersAgree)
{
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(millibarLitresPerSecond(3.2e-7)), 3.2e-7);
    EXPECT_DOUBLE_EQ(inDegreesCelsius(degreesCelsius(21.5)), 21.5);
    EXPECT_DOUBLE_EQ((millibars(2.0) * litresPerSecond(5.0)).si(), 1.0);
    EXPECT_DOUBLE_EQ((litres(50.0) / litresPerSecond(2.5)).si(), 20.0);
}

} // namespace
} // namespace sealwalk
