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

std::vector<geometry::FreePath> flangeLines(const geometry::Ring& ring, double outerRadius, int bolts)
{
    std::vector<geometry::FreePath> lines{paleCircle(ring.centre, outerRadius)};
    const double onCircle = (ring.radius + outerRadius) / 2.0;
    const double hole = (outerRadius - ring.radius) / 5.0;
    for (int i = 0; i < bolts; ++i) {
        const double angle = kLap * (i + 0.5) / bolts; // holes straddle the centre lines, as is common
        lines.push_back(
            paleCircle(ring.centre + onCircle * geometry::Vector{std::cos(angle), std::sin(angle)}, hole));
    }
    return lines;
}

std::vector<geometry::FreePath> doorLines(const geometry::RoundedRectangle& seal, double margin,
                                          bool hingesLeft)
{
    const double width = seal.width + 2.0 * margin;
    const double height = seal.height + 2.0 * margin;
    const double side = hingesLeft ? -1.0 : 1.0;
    const geometry::Point centre = seal.centre;
    std::vector<geometry::Shape> pale{box(centre, width, height, seal.cornerRadius + margin)};
    for (const double up : {-0.27, 0.27})
        pale.push_back(box(centre + geometry::Vector{side * (width / 2.0 + 0.05 * width), up * height},
                           0.12 * width, 0.09 * height, 0.01 * width));
    pale.push_back(box(centre - geometry::Vector{side * (width / 2.0 - margin / 2.0), 0.0}, 0.7 * margin,
                       0.18 * height, 0.3 * margin));
    std::vector<geometry::FreePath> lines;
    for (const geometry::Shape& shape : pale)
        lines.push_back(paleLine(geometry::turned(shape, centre, seal.rotation)));
    return lines;
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
    for (geometry::FreePath& line : flangeLines(*ring, flange.outerRadius, flange.bolts))
        sheet->outlines.push_back(std::move(line));
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
    for (geometry::FreePath& line : doorLines(*seal, door.margin, door.hingesLeft))
        sheet->outlines.push_back(std::move(line));
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
