// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/snap.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::ui {

namespace {

double rounded(double value, double grid)
{
    return grid > 0.0 ? std::round(value / grid) * grid : value;
}

/// Middle and the four places straight above, below and beside it; the nodes of a free line.
void addMarks(std::vector<geometry::Point>& marks, const geometry::Shape& shape)
{
    const auto around = [&](geometry::Point centre, double w, double h) {
        marks.push_back(centre);
        for (const geometry::Vector& way : {geometry::Vector{w, 0.0}, {-w, 0.0}, {0.0, h}, {0.0, -h}})
            if (way.length() > 0.0)
                marks.push_back(centre + way);
    };
    if (const auto* free = std::get_if<geometry::FreePath>(&shape))
        marks.insert(marks.end(), free->nodes.begin(), free->nodes.end());
    else if (const auto* ring = std::get_if<geometry::Ring>(&shape))
        around(ring->centre, ring->radius, ring->radius);
    else if (const auto* box = std::get_if<geometry::RoundedRectangle>(&shape))
        around(box->centre, box->rotation == 0.0 ? box->width / 2.0 : 0.0,
               box->rotation == 0.0 ? box->height / 2.0 : 0.0);
    else
        around(std::get<geometry::Spot>(shape).centre, 0.0, 0.0);
}

} // namespace

Snapper::Snapper(const model::Sketch& sketch, model::SheetId sheet, const std::vector<model::JointId>& except)
{
    for (const model::Joint& joint : sketch.joints)
        if (joint.sheet == sheet && std::find(except.begin(), except.end(), joint.id) == except.end())
            addMarks(m_marks, joint.shape);
}

Snapped Snapper::snap(geometry::Point place, const SnapWish& wish) const
{
    if (wish.off)
        return {place, {}};
    if (wish.anchor && wish.onlyStraight) {
        constexpr double kStep = std::numbers::pi / 4.0;
        const geometry::Vector way = place - *wish.anchor;
        const double angle = std::round(std::atan2(way.y, way.x) / kStep) * kStep;
        const geometry::Vector straight{std::cos(angle), std::sin(angle)};
        const double length = rounded(way.x * straight.x + way.y * straight.y, wish.grid);
        const geometry::Point taken = *wish.anchor + length * straight;
        return {taken, {{*wish.anchor, taken}}};
    }
    // a mark itself before its row and column
    for (const geometry::Point& mark : m_marks)
        if (geometry::distance(mark, place) <= wish.reach)
            return {mark, {}};

    Snapped result{{rounded(place.x, wish.grid), rounded(place.y, wish.grid)}, {}};
    const auto nearest = [&](auto coordinate) {
        const geometry::Point* best = nullptr;
        for (const geometry::Point& mark : m_marks)
            if (std::abs(coordinate(mark) - coordinate(place)) <= wish.reach &&
                (best == nullptr || geometry::distance(mark, place) < geometry::distance(*best, place)))
                best = &mark;
        return best;
    };
    const auto xOf = [](geometry::Point p) { return p.x; };
    const auto yOf = [](geometry::Point p) { return p.y; };
    const geometry::Point* column = nearest(xOf);
    const geometry::Point* row = nearest(yOf);
    if (wish.anchor && std::abs(place.x - wish.anchor->x) <= wish.reach)
        column = &*wish.anchor;
    if (wish.anchor && std::abs(place.y - wish.anchor->y) <= wish.reach)
        row = &*wish.anchor;
    if (column != nullptr)
        result.place.x = column->x;
    if (row != nullptr)
        result.place.y = row->y;
    if (column != nullptr)
        result.guides.push_back({*column, result.place});
    if (row != nullptr)
        result.guides.push_back({*row, result.place});
    if (wish.anchor && column == nullptr && row == nullptr) {
        const double length = geometry::distance(*wish.anchor, place);
        for (const double wanted : wish.lengths)
            if (std::abs(length - wanted) <= wish.reach && length > 0.0) {
                result.place = *wish.anchor + (wanted / length) * (place - *wish.anchor);
                result.guides.push_back({*wish.anchor, result.place});
                break;
            }
    }
    return result;
}

} // namespace sealwalk::ui
