// SPDX-License-Identifier: GPL-3.0-or-later
// Strong quantities: a number that knows what it measures. SI inside; made only by makers that name the unit;
// sums within a kind, products only where physics declares them.
#pragma once

#include <bit> // first: Qt 6.4's moc cannot read libstdc++'s <compare> on its own
#include <compare>

namespace sealwalk {

template <class Tag>
class Quantity
{
public:
    constexpr Quantity() = default;

    /// From the coherent SI unit of the kind. Prefer the makers of kinds.h, which name the unit.
    static constexpr Quantity fromSi(double value) { return Quantity(value); }
    [[nodiscard]] constexpr double si() const { return m_si; }

    auto operator<=>(const Quantity&) const = default;

    constexpr Quantity operator-() const { return Quantity(-m_si); }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_si + b.m_si); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_si - b.m_si); }
    friend constexpr Quantity operator*(Quantity a, double f) { return Quantity(a.m_si * f); }
    friend constexpr Quantity operator*(double f, Quantity a) { return Quantity(a.m_si * f); }
    friend constexpr Quantity operator/(Quantity a, double f) { return Quantity(a.m_si / f); }
    /// The ratio of two of a kind is a plain number.
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_si / b.m_si; }
    constexpr Quantity& operator+=(Quantity other) { return *this = *this + other; }
    constexpr Quantity& operator-=(Quantity other) { return *this = *this - other; }

private:
    explicit constexpr Quantity(double si)
        : m_si(si)
    {}

    double m_si = 0.0;
};

/// A value on a scale with an origin: points subtract to a difference and never add.
template <class Tag, class Difference>
class QuantityPoint
{
public:
    constexpr QuantityPoint() = default;

    static constexpr QuantityPoint fromSi(double value) { return QuantityPoint(value); }
    [[nodiscard]] constexpr double si() const { return m_si; }

    auto operator<=>(const QuantityPoint&) const = default;

    friend constexpr Difference operator-(QuantityPoint a, QuantityPoint b)
    {
        return Difference::fromSi(a.m_si - b.m_si);
    }
    friend constexpr QuantityPoint operator+(QuantityPoint a, Difference d)
    {
        return QuantityPoint(a.m_si + d.si());
    }
    friend constexpr QuantityPoint operator-(QuantityPoint a, Difference d)
    {
        return QuantityPoint(a.m_si - d.si());
    }

private:
    explicit constexpr QuantityPoint(double si)
        : m_si(si)
    {}

    double m_si = 0.0;
};

} // namespace sealwalk
