// SPDX-License-Identifier: GPL-3.0-or-later
// A drawn line measured along its length: what joints, stretches and labels are laid on.
#pragma once

#include "core/geometry/point.h"

#include <cstddef>
#include <span>
#include <vector>

namespace sealwalk::geometry {

/// Where a walk along a path has come to.
struct Station
{
    Point place;
    Vector forward; ///< unit vector along the path; zero on a path without length
    /// Unit vector to the left of the walk.
    [[nodiscard]] Vector left() const { return forward.turnedLeft(); }
};

/// The place of a path nearest to a given one.
struct Nearest
{
    double along = 0.0;    ///< mm from the start of the path
    double distance = 0.0; ///< mm off the path
};

/// A polyline, open or closed, with its lengths. A single vertex is a spot of length zero.
class Path
{
public:
    Path() = default;
    Path(std::vector<Point> vertices, bool closed);

    [[nodiscard]] std::span<const Point> vertices() const { return m_vertices; }
    [[nodiscard]] bool isClosed() const { return m_closed; }
    [[nodiscard]] bool isEmpty() const { return m_vertices.empty(); }
    /// mm, the closing piece included.
    [[nodiscard]] double length() const { return m_ends.empty() ? 0.0 : m_ends.back(); }
    [[nodiscard]] Box bounds() const;

    /// The station `along` mm from the start; wraps round on a closed path, stops at the ends of an open one.
    [[nodiscard]] Station at(double along) const;
    /// The polyline from `from` to `to` mm, from < to; on a closed path they may pass the start or lie
    /// outside.
    [[nodiscard]] std::vector<Point> section(double from, double to) const;
    [[nodiscard]] Nearest nearest(Point place) const;

private:
    [[nodiscard]] std::size_t pieceAt(double along) const;
    [[nodiscard]] Point vertexAfter(std::size_t piece) const;

    std::vector<Point> m_vertices;
    std::vector<double> m_ends; ///< length from the start to the end of each piece
    bool m_closed = false;
};

} // namespace sealwalk::geometry
