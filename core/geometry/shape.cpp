// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::geometry {

namespace {

constexpr double kFlatness = 0.05; ///< mm between chord and arc
constexpr double kQuarterTurn = std::numbers::pi / 2.0;

template <class... F>
struct Overloaded : F...
{
    using F::operator()...;
};
template <class... F>
Overloaded(F...) -> Overloaded<F...>;

/// Pieces for an arc of `angle` so that chords stay within the flatness.
int arcPieces(double radius, double angle)
{
    if (radius <= kFlatness)
        return 1;
    const double step = 2.0 * std::acos(1.0 - kFlatness / radius);
    return std::max(1, static_cast<int>(std::ceil(std::abs(angle) / step)));
}

/// Appends the arc's points after its first.
void addArc(std::vector<Point>& points, Point centre, double radius, double from, double turn)
{
    const int pieces = arcPieces(radius, turn);
    for (int i = 1; i <= pieces; ++i) {
        const double angle = from + turn * i / pieces;
        points.push_back(centre + radius * Vector{std::cos(angle), std::sin(angle)});
    }
}

Path ringPath(const Ring& ring)
{
    std::vector<Point> points{ring.centre + Vector{0.0, ring.radius}};
    addArc(points, ring.centre, ring.radius, kQuarterTurn, -2.0 * std::numbers::pi);
    points.pop_back(); // the closing piece leads back to the first
    return {std::move(points), true};
}

Path rectanglePath(const RoundedRectangle& r)
{
    const double w = r.width / 2.0;
    const double h = r.height / 2.0;
    const double c = std::clamp(r.cornerRadius, 0.0, std::min(w, h));
    std::vector<Point> points{{0.0, h}, {w - c, h}};
    addArc(points, {w - c, h - c}, c, kQuarterTurn, -kQuarterTurn);
    points.push_back({w, -h + c});
    addArc(points, {w - c, -h + c}, c, 0.0, -kQuarterTurn);
    points.push_back({-w + c, -h});
    addArc(points, {-w + c, -h + c}, c, -kQuarterTurn, -kQuarterTurn);
    points.push_back({-w, h - c});
    addArc(points, {-w + c, h - c}, c, -2.0 * kQuarterTurn, -kQuarterTurn);
    points.erase(std::unique(points.begin(), points.end()), points.end());
    for (Point& point : points)
        point = r.centre + Vector{point.x, point.y}.turned(r.rotation);
    return {std::move(points), true};
}

/// One span of a centripetal Catmull–Rom curve between b and c (Barry–Goldman form).
void addSpan(std::vector<Point>& points, Point a, Point b, Point c, Point d)
{
    const auto knot = [](double t, Point from, Point to) {
        return t + std::sqrt(std::max(distance(from, to), 1e-9));
    };
    const double t0 = 0.0;
    const double t1 = knot(t0, a, b);
    const double t2 = knot(t1, b, c);
    const double t3 = knot(t2, c, d);
    const auto mix = [](Point p, Point q, double from, double to, double t) {
        const double f = (t - from) / (to - from);
        return p + f * (q - p);
    };
    constexpr int kPieces = 16;
    for (int i = 1; i <= kPieces; ++i) {
        const double t = t1 + (t2 - t1) * i / kPieces;
        const Point ab = mix(a, b, t0, t1, t);
        const Point bc = mix(b, c, t1, t2, t);
        const Point cd = mix(c, d, t2, t3, t);
        points.push_back(mix(mix(ab, bc, t0, t2, t), mix(bc, cd, t1, t3, t), t1, t2, t));
    }
}

Path freePath(const FreePath& free)
{
    const auto& nodes = free.nodes;
    if (!free.smooth || nodes.size() < 3)
        return {nodes, free.closed};
    const std::size_t n = nodes.size();
    const auto node = [&](std::ptrdiff_t i) {
        const auto count = static_cast<std::ptrdiff_t>(n);
        if (free.closed)
            return nodes[static_cast<std::size_t>((i % count + count) % count)];
        // beyond the ends of an open curve the neighbour is mirrored, so that it starts straight
        if (i < 0)
            return nodes[0] + (nodes[0] - nodes[1]);
        if (i >= count)
            return nodes[n - 1] + (nodes[n - 1] - nodes[n - 2]);
        return nodes[static_cast<std::size_t>(i)];
    };
    std::vector<Point> points{nodes.front()};
    const std::size_t spans = free.closed ? n : n - 1;
    for (std::size_t s = 0; s < spans; ++s) {
        const auto i = static_cast<std::ptrdiff_t>(s);
        addSpan(points, node(i - 1), node(i), node(i + 1), node(i + 2));
    }
    if (free.closed)
        points.pop_back();
    return {std::move(points), free.closed};
}

} // namespace

Path outline(const Shape& shape)
{
    return std::visit(Overloaded{[](const Ring& ring) { return ringPath(ring); },
                                 [](const RoundedRectangle& r) { return rectanglePath(r); },
                                 [](const FreePath& free) { return freePath(free); },
                                 [](const Spot& spot) { return Path({spot.centre}, false); }},
                      shape);
}

Shape moved(Shape shape, Vector by)
{
    std::visit(Overloaded{[&](FreePath& free) {
                              for (Point& node : free.nodes)
                                  node = node + by;
                          },
                          [&](auto& other) { other.centre = other.centre + by; }},
               shape);
    return shape;
}

Shape turned(Shape shape, Point pivot, double radians)
{
    const auto turn = [&](Point p) { return pivot + (p - pivot).turned(radians); };
    std::visit(Overloaded{[&](FreePath& free) {
                              for (Point& node : free.nodes)
                                  node = turn(node);
                          },
                          [&](RoundedRectangle& r) {
                              r.centre = turn(r.centre);
                              r.rotation += radians;
                          },
                          [&](auto& other) { other.centre = turn(other.centre); }},
               shape);
    return shape;
}

Shape mirrored(Shape shape, Point pivot)
{
    const auto mirror = [&](Point p) { return Point{2.0 * pivot.x - p.x, p.y}; };
    std::visit(Overloaded{[&](FreePath& free) {
                              for (Point& node : free.nodes)
                                  node = mirror(node);
                          },
                          [&](RoundedRectangle& r) {
                              r.centre = mirror(r.centre);
                              r.rotation = -r.rotation;
                          },
                          [&](auto& other) { other.centre = mirror(other.centre); }},
               shape);
    return shape;
}

std::string complaint(const Shape& shape)
{
    const auto finite = [](Point p) { return std::isfinite(p.x) && std::isfinite(p.y); };
    return std::visit(
        Overloaded{[&](const Ring& ring) -> std::string {
                       if (!finite(ring.centre) || !(ring.radius > 0.0) || !std::isfinite(ring.radius))
                           return "a ring needs a radius above 0 mm";
                       return {};
                   },
                   [&](const RoundedRectangle& r) -> std::string {
                       if (!finite(r.centre) || !(r.width > 0.0) || !(r.height > 0.0) ||
                           !std::isfinite(r.width + r.height + r.rotation))
                           return "a rounded rectangle needs a width and a height above 0 mm";
                       if (!(r.cornerRadius >= 0.0) || r.cornerRadius > std::min(r.width, r.height) / 2.0)
                           return "the corner radius must lie between 0 and half of the shorter side";
                       return {};
                   },
                   [&](const FreePath& free) -> std::string {
                       if (!std::all_of(free.nodes.begin(), free.nodes.end(), finite))
                           return "a node lies nowhere";
                       if (free.nodes.size() < (free.closed ? 3u : 2u))
                           return free.closed ? "a closed line needs at least three nodes"
                                              : "an open line needs at least two nodes";
                       if (!(outline(free).length() > 0.0))
                           return "the nodes of a line must not all lie on one place";
                       return {};
                   },
                   [&](const Spot& spot) -> std::string {
                       if (!finite(spot.centre) || !(spot.radius > 0.0))
                           return "a spot needs a place";
                       return {};
                   }},
        shape);
}

} // namespace sealwalk::geometry
