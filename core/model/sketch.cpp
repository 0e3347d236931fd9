// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/sketch.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace sealwalk::model {

namespace {

template <class Item, class Key>
const Item* find(const std::vector<Item>& items, const Key& id)
{
    const auto found = std::find_if(items.begin(), items.end(), [&](const Item& i) { return i.id == id; });
    return found == items.end() ? nullptr : &*found;
}

} // namespace

const Sheet* Sketch::sheet(SheetId id) const
{
    return find(sheets, id);
}

const Joint* Sketch::joint(JointId id) const
{
    return find(joints, id);
}

const TestPoint* Sketch::point(PointId id) const
{
    return find(points, id);
}

const TestPoint* Sketch::pointNumbered(int number) const
{
    const auto found =
        std::find_if(points.begin(), points.end(), [&](const TestPoint& p) { return p.number == number; });
    return found == points.end() ? nullptr : &*found;
}

const Joint* Sketch::jointOf(PointId id) const
{
    const TestPoint* found = point(id);
    return found == nullptr ? nullptr : joint(found->joint);
}

bool Sketch::isOfSetup(PointId id) const
{
    const Joint* found = jointOf(id);
    return found != nullptr && found->isSetup;
}

std::vector<const TestPoint*> Sketch::pointsOn(JointId id) const
{
    std::vector<const TestPoint*> result;
    for (const TestPoint& p : points)
        if (p.joint == id && !p.retired)
            result.push_back(&p);
    std::sort(result.begin(), result.end(), [](const TestPoint* a, const TestPoint* b) {
        return a->along != b->along ? a->along < b->along : a->number < b->number;
    });
    return result;
}

std::vector<const Joint*> Sketch::jointsOn(SheetId id) const
{
    std::vector<const Joint*> result;
    for (const Joint& j : joints)
        if (j.sheet == id)
            result.push_back(&j);
    return result;
}

std::vector<const TestPoint*> Sketch::activePoints() const
{
    std::vector<const TestPoint*> result;
    for (const TestPoint& p : points)
        if (!p.retired)
            result.push_back(&p);
    std::sort(result.begin(), result.end(),
              [](const TestPoint* a, const TestPoint* b) { return a->number < b->number; });
    return result;
}

std::vector<Stretch> stretches(const Sketch& sketch, JointId id)
{
    const Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return {};
    const geometry::Path path = geometry::outline(joint->shape);
    const double length = path.length();
    const auto points = sketch.pointsOn(id);
    const std::size_t n = points.size();
    std::vector<Stretch> result;
    result.reserve(n);
    for (std::size_t i = 0; i < n; ++i) {
        const double centre = points[i]->along * length;
        double from = 0.0;
        double to = length;
        if (i > 0)
            from = (points[i - 1]->along * length + centre) / 2.0;
        else if (path.isClosed())
            from = (points[n - 1]->along * length - length + centre) / 2.0;
        if (i + 1 < n)
            to = (points[i + 1]->along * length + centre) / 2.0;
        else if (path.isClosed())
            to = (points[0]->along * length + length + centre) / 2.0;
        result.push_back({points[i]->id, points[i]->number, from, centre, to});
    }
    return result;
}

std::optional<geometry::Point> placeOf(const Sketch& sketch, PointId id)
{
    const TestPoint* point = sketch.point(id);
    const Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
    if (joint == nullptr)
        return std::nullopt;
    const geometry::Path path = geometry::outline(joint->shape);
    return path.at(point->along * path.length()).place;
}

double heightOn(const Sheet& sheet, geometry::Point place)
{
    if (sheet.seenFromAbove)
        return 0.0;
    return place.x * std::cos(sheet.upDirection) + place.y * std::sin(sheet.upDirection);
}

std::string placeText(const Sketch& sketch, const TestPoint& point)
{
    const Joint* joint = point.place.empty() ? sketch.joint(point.joint) : nullptr;
    if (joint == nullptr)
        return point.place;
    return placeText(sketch.sheet(joint->sheet), *joint, geometry::outline(joint->shape), point);
}

std::string placeText(const Sheet* sheet, const Joint& joint, const geometry::Path& outline,
                      const TestPoint& point)
{
    if (!point.place.empty() || std::holds_alternative<geometry::Spot>(joint.shape))
        return point.place;
    const double along = point.along * outline.length();
    if (!outline.isClosed())
        return fmt::format("{:.0f} mm from the start", along);

    const double up = sheet == nullptr ? std::numbers::pi / 2.0 : sheet->upDirection;
    const geometry::Vector fromCentre = outline.at(along).place - outline.bounds().centre();
    // Hours run clockwise from the up direction.
    const double clockwise = up - std::atan2(fromCentre.y, fromCentre.x);
    // Half hours: sixteen points round a door seal shared the full ones.
    const auto halves = static_cast<int>(std::lround(clockwise / (2.0 * std::numbers::pi) * 24.0));
    const int half = (halves % 24 + 24) % 24;
    const int hour = half / 2;
    const std::string side =
        sheet == nullptr || sheet->seenFrom.empty() ? "" : ", seen from " + sheet->seenFrom;
    return fmt::format("{}{} o'clock{}", hour == 0 ? 12 : hour, half % 2 == 0 ? "" : ":30", side);
}

std::string complaint(const Sketch& sketch)
{
    std::set<Uuid> seen;
    for (const Sheet& sheet : sketch.sheets)
        if (sheet.id.isNil() || !seen.insert(sheet.id.uuid()).second)
            return fmt::format("sheet \"{}\" has no identity of its own", sheet.name);
    for (const Joint& joint : sketch.joints) {
        if (joint.id.isNil() || !seen.insert(joint.id.uuid()).second)
            return fmt::format("joint \"{}\" has no identity of its own", joint.name);
        if (sketch.sheet(joint.sheet) == nullptr)
            return fmt::format("joint \"{}\" lies on no sheet", joint.name);
        if (const std::string wrong = geometry::complaint(joint.shape); !wrong.empty())
            return fmt::format("joint \"{}\": {}", joint.name, wrong);
    }
    std::set<int> numbers;
    for (const TestPoint& point : sketch.points) {
        if (point.number <= 0 || point.number > sketch.lastNumber)
            return fmt::format("point number {} lies outside 1 … {}", point.number, sketch.lastNumber);
        if (!numbers.insert(point.number).second)
            return fmt::format("point number {} is given twice", point.number);
        if (point.id.isNil() || !seen.insert(point.id.uuid()).second)
            return fmt::format("point {} has no identity of its own", point.number);
        if (sketch.joint(point.joint) == nullptr)
            return fmt::format("point {} lies on no joint", point.number);
        if (!(point.along >= 0.0 && point.along <= 1.0))
            return fmt::format("point {} lies off its joint", point.number);
    }
    return {};
}

} // namespace sealwalk::model
