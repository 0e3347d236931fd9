// SPDX-License-Identifier: GPL-3.0-or-later
// Hatching as plain lines, because pattern brushes turn into pixels in SVG and PDF.
#pragma once

#include <QLineF>
#include <QList>
#include <QPolygonF>

namespace sealwalk::render {

/// Parallel lines inside a polygon (even-odd).
/// @param degrees  direction of the lines, counter-clockwise as seen, 0 = level
/// @param pitch    between lines, device units, > 0
QList<QLineF> hatchLines(const QPolygonF& polygon, double degrees, double pitch);

/// Slanted strokes across a band that follows `line`; they lean forward by 45° (or backward).
QList<QLineF> bandHatch(const QPolygonF& line, double width, double pitch, bool forward);

/// A polygon close to a circle.
QPolygonF circlePolygon(QPointF centre, double radius);

/// Length of a polyline, device units.
double lengthOf(const QPolygonF& line);

/// The place `along` a polyline and its unit direction.
struct LinePlace
{
    QPointF place;
    QPointF forward;
};
LinePlace placeOn(const QPolygonF& line, double along);

/// Fewer vertices, nowhere further than `tolerance` from the given line.
QPolygonF simplified(const QPolygonF& line, double tolerance);

} // namespace sealwalk::render
