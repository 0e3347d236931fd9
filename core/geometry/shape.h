// SPDX-License-Identifier: GPL-3.0-or-later
// The shapes a joint can be drawn with. Millimetres on the sheet.
#pragma once

#include "core/geometry/path.h"

#include <string>
#include <variant>
#include <vector>

namespace sealwalk::geometry {

struct Ring
{
    Point centre;
    double radius = 50.0; ///< mm, > 0
    bool operator==(const Ring&) const = default;
};

struct RoundedRectangle
{
    Point centre;
    double width = 100.0;       ///< mm, > 0
    double height = 100.0;      ///< mm, > 0
    double cornerRadius = 10.0; ///< mm, 0 … half of the shorter side
    double rotation = 0.0;      ///< radians, counter-clockwise
    bool operator==(const RoundedRectangle&) const = default;
};

/// A free line through its nodes; smooth ones run as a centripetal Catmull–Rom curve.
struct FreePath
{
    std::vector<Point> nodes; ///< at least 2 when open, 3 when closed
    bool closed = false;
    bool smooth = false;
    bool operator==(const FreePath&) const = default;
};

/// A single fitting: one place, drawn as a disc.
struct Spot
{
    Point centre;
    double radius = 12.0; ///< mm, for drawing only
    bool operator==(const Spot&) const = default;
};

using Shape = std::variant<Ring, RoundedRectangle, FreePath, Spot>;

/// The line of a shape as walked: closed shapes start at the top (12 o'clock of the sheet) and run clockwise
/// as seen; free lines run node by node. Arcs are flattened to within 0.05 mm.
Path outline(const Shape& shape);

/// Shifted by `by`.
Shape moved(Shape shape, Vector by);
/// Turned counter-clockwise about `pivot`.
Shape turned(Shape shape, Point pivot, double radians);
/// Mirrored left-right about the vertical line through `pivot`.
Shape mirrored(Shape shape, Point pivot);

/// Empty when the shape can be drawn; otherwise the sentence that says what is wrong with it.
std::string complaint(const Shape& shape);

} // namespace sealwalk::geometry
