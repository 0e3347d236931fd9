// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/body.h"

#include "core/editing/gestures.h"
#include "core/editing/joints.h"
#include "core/editing/parts.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace sealwalk::editing {

namespace {

using Lines = std::vector<geometry::FreePath>;

constexpr double kSame = 1e-6; // mm
constexpr int kMostBolts = 64;

/// Without the last digits that turning and adding up leave behind.
double rounded(double millimetres)
{
    return std::round(millimetres / kSame) * kSame;
}

bool sameLine(const geometry::FreePath& a, const geometry::FreePath& b)
{
    return a.closed == b.closed && a.smooth == b.smooth && a.nodes.size() == b.nodes.size() &&
           std::equal(a.nodes.begin(), a.nodes.end(), b.nodes.begin(),
                      [](geometry::Point p, geometry::Point q) { return geometry::distance(p, q) < kSame; });
}

bool holds(const Lines& all, const Lines& wanted)
{
    return std::all_of(wanted.begin(), wanted.end(), [&](const geometry::FreePath& line) {
        return std::any_of(all.begin(), all.end(),
                           [&](const geometry::FreePath& other) { return sameLine(line, other); });
    });
}

/// The half sizes of a line seen from `centre`, in a frame turned by `turn`.
geometry::Vector reach(const geometry::FreePath& line, geometry::Point centre, double turn)
{
    geometry::Vector most{0.0, 0.0};
    for (const geometry::Point& node : line.nodes) {
        const geometry::Vector way = (node - centre).turned(-turn);
        most = {std::max(most.x, std::abs(way.x)), std::max(most.y, std::abs(way.y))};
    }
    return most;
}

struct Body
{
    Lines before;
    Lines after;
};

std::optional<Body> doorAround(const Lines& lines, const geometry::RoundedRectangle& from,
                               const geometry::RoundedRectangle& to, bool isMirrored)
{
    for (const geometry::FreePath& line : lines) {
        const geometry::Vector half = reach(line, from.centre, from.rotation);
        const double margin = rounded(half.x - from.width / 2.0);
        if (!(margin > 0.0) || std::abs(half.y - from.height / 2.0 - margin) > kSame)
            continue;
        for (const bool left : {true, false})
            if (Lines before = doorLines(from, margin, left); holds(lines, before))
                return Body{std::move(before), doorLines(to, margin, left != isMirrored)};
    }
    return std::nullopt;
}

std::optional<Body> flangeAround(const Lines& lines, const geometry::Ring& from, const geometry::Ring& to)
{
    for (const geometry::FreePath& line : lines) {
        // A rim begins to the right of its middle; looked at first, for a sheet may have thousands of lines.
        if (line.nodes.empty() || std::abs(line.nodes.front().y - from.centre.y) > kSame)
            continue;
        const double outer = rounded(geometry::distance(line.nodes.front(), from.centre));
        if (!(outer > from.radius) || !sameLine(line, paleCircle(from.centre, outer)))
            continue;
        for (int bolts = kMostBolts; bolts >= 0; --bolts)
            if (Lines before = flangeLines(from, outer, bolts); holds(lines, before))
                return Body{std::move(before), flangeLines(to, to.radius + outer - from.radius, bolts)};
    }
    return std::nullopt;
}

std::optional<Body> bodyAround(const Lines& lines, const geometry::Shape& from, const geometry::Shape& to,
                               bool isMirrored = false)
{
    const auto* seal = std::get_if<geometry::RoundedRectangle>(&from);
    const auto* newSeal = std::get_if<geometry::RoundedRectangle>(&to);
    if (seal != nullptr && newSeal != nullptr)
        return doorAround(lines, *seal, *newSeal, isMirrored);
    const auto* ring = std::get_if<geometry::Ring>(&from);
    const auto* newRing = std::get_if<geometry::Ring>(&to);
    return ring != nullptr && newRing != nullptr ? flangeAround(lines, *ring, *newRing) : std::nullopt;
}

void takeOut(Lines& lines, const Lines& body)
{
    for (const geometry::FreePath& line : body)
        if (const auto old =
                std::find_if(lines.begin(), lines.end(),
                             [&](const geometry::FreePath& other) { return sameLine(other, line); });
            old != lines.end())
            lines.erase(old);
}

void exchange(Lines& lines, const Body& body)
{
    for (std::size_t i = 0; i < body.before.size(); ++i)
        if (const auto old =
                std::find_if(lines.begin(), lines.end(),
                             [&](const geometry::FreePath& line) { return sameLine(line, body.before[i]); });
            old != lines.end())
            *old = body.after[i];
}

} // namespace

void bodiesFollow(const model::Sketch& before, model::Sketch& next, std::span<const model::JointId> mirrored)
{
    for (const model::Joint& old : before.joints) {
        const model::Joint* now = next.joint(old.id);
        model::Sheet* sheet = find(next, old.sheet);
        const bool isMirrored = std::find(mirrored.begin(), mirrored.end(), old.id) != mirrored.end();
        const bool stays = now != nullptr && now->shape == old.shape && !isMirrored;
        if (sheet == nullptr || sheet->outlines.empty() || stays)
            continue;
        const auto body =
            bodyAround(sheet->outlines, old.shape, now == nullptr ? old.shape : now->shape, isMirrored);
        if (body && now == nullptr)
            takeOut(sheet->outlines, body->before);
        else if (body)
            exchange(sheet->outlines, *body);
    }
}

std::vector<geometry::FreePath> bodyAsAround(const model::Sheet& sheet, const geometry::Shape& from,
                                             const geometry::Shape& to)
{
    const auto body = bodyAround(sheet.outlines, from, to);
    return body ? body->after : Lines();
}

Result<Edit> reshapeWithBody(const model::Sketch& sketch, model::JointId id, const geometry::Shape& shape)
{
    Result<Edit> plain = reshape(sketch, id, shape);
    if (!plain)
        return plain;
    Result<model::Sketch> next = after(sketch, *plain);
    if (!next)
        return fail(next.error());
    bodiesFollow(sketch, *next);
    return difference(sketch, *next, plain->what);
}

} // namespace sealwalk::editing
