// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/gestures.h"

#include "core/editing/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::editing {

namespace {

constexpr double kLap = 2.0 * std::numbers::pi;

geometry::FreePath paleLine(const geometry::Shape& shape)
{
    const geometry::Path path = geometry::outline(shape);
    return {{path.vertices().begin(), path.vertices().end()}, path.isClosed(), false};
}

geometry::RoundedRectangle box(geometry::Point centre, double width, double height, double radius)
{
    return {centre, width, height, std::min(radius, std::min(width, height) / 2.0), 0.0};
}

/// Draws `joint` on top of what `next` holds already.
Status draw(model::Sketch& next, const model::Joint& joint, const std::optional<Laying>& laying)
{
    const Result<Edit> edit = addJoint(next, joint, laying);
    if (!edit)
        return fail(edit.error());
    Result<model::Sketch> drawn = after(next, *edit);
    if (!drawn)
        return fail(drawn.error());
    next = std::move(*drawn);
    return {};
}

} // namespace

geometry::FreePath paleCircle(geometry::Point centre, double radius)
{
    constexpr int kNodes = 16; // with the smooth curve through them true to better than 0.1 %
    geometry::FreePath circle{{}, true, true};
    for (int i = 0; i < kNodes; ++i) {
        const double angle = kLap * i / kNodes;
        circle.nodes.push_back(centre + radius * geometry::Vector{std::cos(angle), std::sin(angle)});
    }
    return circle;
}

Result<Edit> drawFlange(const model::Sketch& sketch, const Flange& flange)
{
    const auto* ring = std::get_if<geometry::Ring>(&flange.joint.shape);
    if (ring == nullptr || !(flange.outerRadius > ring->radius))
        return fail(ErrorCode::BadInput, "a flange must be wider than the ring that seals it");
    if (flange.bolts < 0 || flange.bolts > 64)
        return fail(ErrorCode::BadInput, "a flange has 0 to 64 bolts");
    model::Sketch next = sketch;
    model::Sheet* sheet = find(next, flange.joint.sheet);
    if (sheet == nullptr)
        return unknownSheet();
    sheet->outlines.push_back(paleCircle(ring->centre, flange.outerRadius));
    const double onCircle = (ring->radius + flange.outerRadius) / 2.0;
    const double hole = (flange.outerRadius - ring->radius) / 5.0;
    for (int i = 0; i < flange.bolts; ++i) {
        const double angle = kLap * (i + 0.5) / flange.bolts; // holes straddle the centre lines, as is common
        sheet->outlines.push_back(
            paleCircle(ring->centre + onCircle * geometry::Vector{std::cos(angle), std::sin(angle)}, hole));
    }
    if (const Status drawn = draw(next, flange.joint, flange.laying); !drawn)
        return fail(drawn.error());
    return difference(sketch, next, fmt::format("{} drawn with its flange", called(next.joints.back())));
}

Result<Edit> drawDoor(const model::Sketch& sketch, const Door& door)
{
    if (!(door.margin > 0.0))
        return fail(ErrorCode::BadInput, "a door must be larger than the seal that closes it");
    const auto* seal = std::get_if<geometry::RoundedRectangle>(&door.joint.shape);
    if (seal == nullptr)
        return fail(ErrorCode::BadInput, "the seal of a door is a rounded rectangle");
    if (const std::string wrong = geometry::complaint(door.joint.shape); !wrong.empty())
        return fail(ErrorCode::BadInput, wrong);
    model::Sketch next = sketch;
    model::Sheet* sheet = find(next, door.joint.sheet);
    if (sheet == nullptr)
        return unknownSheet();
    const double width = seal->width + 2.0 * door.margin;
    const double height = seal->height + 2.0 * door.margin;
    const double side = door.hingesLeft ? -1.0 : 1.0;
    const geometry::Point centre = seal->centre;
    std::vector<geometry::Shape> pale{box(centre, width, height, seal->cornerRadius + door.margin)};
    for (const double up : {-0.27, 0.27})
        pale.push_back(box(centre + geometry::Vector{side * (width / 2.0 + 0.05 * width), up * height},
                           0.12 * width, 0.09 * height, 0.01 * width));
    pale.push_back(box(centre - geometry::Vector{side * (width / 2.0 - door.margin / 2.0), 0.0},
                       0.7 * door.margin, 0.18 * height, 0.3 * door.margin));
    for (const geometry::Shape& shape : pale)
        sheet->outlines.push_back(paleLine(geometry::turned(shape, centre, seal->rotation)));
    if (const Status drawn = draw(next, door.joint, door.laying); !drawn)
        return fail(drawn.error());
    return difference(sketch, next, fmt::format("{} drawn with its door", called(next.joints.back())));
}

Result<Edit> drawPortRow(const model::Sketch& sketch, const PortRow& row)
{
    constexpr int kMost = 200;
    if (row.count < 1 || row.count > kMost)
        return fail(ErrorCode::BadInput,
                    fmt::format("{} ports are asked for; a row has 1 to {}", row.count, kMost));
    if (row.count > 1 && !(row.step.length() > 0.0))
        return fail(ErrorCode::BadInput, "the ports of a row must not lie on one place");
    model::Sketch next = sketch;
    const std::string word = freeGroupWord(sketch);
    for (int i = 0; i < row.count; ++i) {
        model::Joint joint;
        joint.sheet = row.sheet;
        joint.kind = row.kind;
        joint.name = freeName(next, fmt::format("{} {}", row.name, i + 1));
        joint.shape = geometry::Ring{row.first + i * row.step, row.radius};
        joint.group = word;
        if (const Status drawn = draw(next, joint, row.laying); !drawn)
            return fail(drawn.error());
    }
    return difference(sketch, next, fmt::format("row of {} ports drawn", row.count));
}

} // namespace sealwalk::editing
