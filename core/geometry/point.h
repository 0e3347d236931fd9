// SPDX-License-Identifier: GPL-3.0-or-later
// Places and directions on a sheet. Millimetres; x to the right, y up, as the sheet is looked at.
#pragma once

#include <cmath>

namespace sealwalk::geometry {

/// A direction with a length, mm.
struct Vector
{
    double x = 0.0;
    double y = 0.0;

    bool operator==(const Vector&) const = default;
    friend constexpr Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Vector operator*(double f, Vector v) { return {f * v.x, f * v.y}; }
    constexpr Vector operator-() const { return {-x, -y}; }

    [[nodiscard]] double length() const { return std::hypot(x, y); }
    /// The same direction with length 1; the zero vector stays zero.
    [[nodiscard]] Vector unit() const
    {
        const double l = length();
        return l > 0.0 ? Vector{x / l, y / l} : Vector{};
    }
    /// A quarter turn counter-clockwise.
    [[nodiscard]] constexpr Vector turnedLeft() const { return {-y, x}; }
    /// Turned counter-clockwise by `radians`.
    [[nodiscard]] Vector turned(double radians) const
    {
        const double c = std::cos(radians);
        const double s = std::sin(radians);
        return {c * x - s * y, s * x + c * y};
    }
};

/// A place on a sheet, mm.
struct Point
{
    double x = 0.0;
    double y = 0.0;

    bool operator==(const Point&) const = default;
    friend constexpr Vector operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point operator+(Point p, Vector v) { return {p.x + v.x, p.y + v.y}; }
    friend constexpr Point operator-(Point p, Vector v) { return {p.x - v.x, p.y - v.y}; }
};

inline double distance(Point a, Point b)
{
    return (a - b).length();
}

/// An axis-parallel box; empty until something is added.
struct Box
{
    Point low{1.0, 1.0};
    Point high{-1.0, -1.0};

    bool operator==(const Box&) const = default;
    [[nodiscard]] bool isEmpty() const { return low.x > high.x; }
    [[nodiscard]] double width() const { return isEmpty() ? 0.0 : high.x - low.x; }
    [[nodiscard]] double height() const { return isEmpty() ? 0.0 : high.y - low.y; }
    [[nodiscard]] Point centre() const { return {(low.x + high.x) / 2.0, (low.y + high.y) / 2.0}; }
    void add(Point p);
    void add(const Box& other);
};

inline void Box::add(Point p)
{
    if (isEmpty()) {
        low = high = p;
        return;
    }
    low = {std::fmin(low.x, p.x), std::fmin(low.y, p.y)};
    high = {std::fmax(high.x, p.x), std::fmax(high.y, p.y)};
}

inline void Box::add(const Box& other)
{
    if (other.isEmpty())
        return;
    add(other.low);
    add(other.high);
}

} // namespace sealwalk::geometry
