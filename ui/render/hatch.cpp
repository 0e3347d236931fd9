// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/hatch.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace sealwalk::render {

namespace {

double distanceTo(const QLineF& chord, QPointF p)
{
    const double length = chord.length();
    if (length < 1e-12)
        return QLineF(chord.p1(), p).length();
    return std::abs(chord.dx() * (p.y() - chord.y1()) - chord.dy() * (p.x() - chord.x1())) / length;
}

} // namespace

QList<QLineF> hatchLines(const QPolygonF& polygon, double degrees, double pitch)
{
    QList<QLineF> lines;
    if (polygon.size() < 3 || pitch <= 0.0)
        return lines;
    // In a frame turned so that hatch lines are level: u along them, v across.
    const double angle = -degrees * std::numbers::pi / 180.0; // y runs down
    const QPointF u(std::cos(angle), std::sin(angle));
    const QPointF v(-u.y(), u.x());
    std::vector<QPointF> turned;
    turned.reserve(static_cast<std::size_t>(polygon.size()));
    for (const QPointF& p : polygon)
        turned.emplace_back(QPointF::dotProduct(p, u), QPointF::dotProduct(p, v));
    double low = turned.front().y();
    double high = low;
    for (const QPointF& p : turned) {
        low = std::min(low, p.y());
        high = std::max(high, p.y());
    }
    std::vector<double> crossings;
    for (double level = std::ceil(low / pitch) * pitch; level < high; level += pitch) {
        crossings.clear();
        for (std::size_t i = 0; i < turned.size(); ++i) {
            const QPointF a = turned[i];
            const QPointF b = turned[(i + 1) % turned.size()];
            if ((a.y() <= level) != (b.y() <= level))
                crossings.push_back(a.x() + (level - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
        std::sort(crossings.begin(), crossings.end());
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
            lines.append(QLineF(u * crossings[i] + v * level, u * crossings[i + 1] + v * level));
    }
    return lines;
}

QList<QLineF> bandHatch(const QPolygonF& line, double width, double pitch, bool forward)
{
    QList<QLineF> lines;
    const double length = lengthOf(line);
    const double half = width / 2.0;
    const double step = pitch * std::numbers::sqrt2; // along the band, for `pitch` across the strokes
    const double lean = forward ? 1.0 : -1.0;
    const auto corner = [&](double along, double aside) {
        const LinePlace at = placeOn(line, along);
        return at.place + QPointF(at.forward.y(), -at.forward.x()) * aside;
    };
    for (double centre = -half + step / 2.0; centre < length + half; centre += step) {
        const double from = std::max(-half, -centre);
        const double to = std::min(half, length - centre);
        if (to > from)
            lines.append(QLineF(corner(centre + from, lean * from), corner(centre + to, lean * to)));
    }
    return lines;
}

QPolygonF circlePolygon(QPointF centre, double radius)
{
    constexpr int kSides = 48;
    QPolygonF polygon;
    polygon.reserve(kSides);
    for (int i = 0; i < kSides; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kSides;
        polygon.append(centre + radius * QPointF(std::cos(angle), std::sin(angle)));
    }
    return polygon;
}

double lengthOf(const QPolygonF& line)
{
    double length = 0.0;
    for (qsizetype i = 1; i < line.size(); ++i)
        length += QLineF(line[i - 1], line[i]).length();
    return length;
}

LinePlace placeOn(const QPolygonF& line, double along)
{
    if (line.size() < 2)
        return {line.isEmpty() ? QPointF() : line.front(), QPointF(1.0, 0.0)};
    double left = along;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QLineF piece(line[i - 1], line[i]);
        const double length = piece.length();
        if (length > 0.0 && (left <= length || i + 1 == line.size())) {
            const QPointF forward(piece.dx() / length, piece.dy() / length);
            return {piece.p1() + forward * std::clamp(left, 0.0, length), forward};
        }
        left -= length;
    }
    return {line.back(), QPointF(1.0, 0.0)};
}

QPolygonF simplified(const QPolygonF& line, double tolerance)
{
    if (line.size() < 3)
        return line;
    // Douglas-Peucker with an explicit stack.
    std::vector<bool> keep(static_cast<std::size_t>(line.size()), false);
    keep.front() = keep.back() = true;
    std::vector<std::pair<qsizetype, qsizetype>> open{{0, line.size() - 1}};
    while (!open.empty()) {
        const auto span = open.back();
        open.pop_back();
        const QLineF chord(line[span.first], line[span.second]);
        double worst = tolerance;
        qsizetype at = -1;
        for (qsizetype i = span.first + 1; i < span.second; ++i)
            if (const double d = distanceTo(chord, line[i]); d > worst) {
                worst = d;
                at = i;
            }
        if (at < 0)
            continue;
        keep[static_cast<std::size_t>(at)] = true;
        open.emplace_back(span.first, at);
        open.emplace_back(at, span.second);
    }
    QPolygonF result;
    for (qsizetype i = 0; i < line.size(); ++i)
        if (keep[static_cast<std::size_t>(i)])
            result.append(line[i]);
    return result;
}

} // namespace sealwalk::render
