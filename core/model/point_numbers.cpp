// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/point_numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>

namespace sealwalk::model {

namespace {

/// Commas and semicolons as blanks, every dash as "-" without blanks around it: "6 – 8;9" becomes "6-8 9".
std::string plain(std::string_view text)
{
    std::string out(text);
    for (const std::string_view dash : {"\xE2\x80\x93", "\xE2\x80\x94", "\xE2\x88\x92", "\xE2\x80\xA6", ".."})
        for (std::size_t at = out.find(dash); at != std::string::npos; at = out.find(dash))
            out.replace(at, dash.size(), "-");
    std::ranges::replace_if(
        out, [](char c) { return c == ',' || c == ';' || c == '\t' || c == '\n'; }, ' ');
    for (const std::string_view loose : {" -", "- "})
        for (std::size_t at = out.find(loose); at != std::string::npos; at = out.find(loose))
            out.replace(at, loose.size(), "-");
    return out;
}

std::optional<int> number(std::string_view text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value <= 0)
        return std::nullopt;
    return value;
}

Error unreadable(std::string_view part)
{
    return {ErrorCode::BadInput,
            fmt::format("“{}” is no point number; write numbers and ranges such as 6-8, 12", part)};
}

} // namespace

Result<std::vector<PointId>> readPointNumbers(const Sketch& sketch, std::string_view text)
{
    std::vector<PointId> points;
    const auto take = [&](const TestPoint* point) {
        const bool isThere = point != nullptr && !point->retired;
        if (isThere && std::find(points.begin(), points.end(), point->id) == points.end())
            points.push_back(point->id);
        return isThere;
    };
    int highest = 0; // beyond it no range has to be walked
    for (const TestPoint& point : sketch.points)
        highest = std::max(highest, point.number);
    const std::string all = plain(text);
    std::size_t from = 0;
    while ((from = all.find_first_not_of(' ', from)) != std::string::npos) {
        const std::size_t to = std::min(all.find(' ', from), all.size());
        const std::string_view part = std::string_view(all).substr(from, to - from);
        from = to;
        const std::size_t dash = part.find('-');
        const auto first = number(part.substr(0, dash));
        const auto last = dash == std::string_view::npos ? first : number(part.substr(dash + 1));
        if (!first || !last || *last < *first)
            return fail(unreadable(part));
        bool any = false;
        for (int each = *first; each <= std::min(*last, highest); ++each)
            any = take(sketch.pointNumbered(each)) || any;
        if (!any)
            return fail(ErrorCode::BadInput, fmt::format("there is no point {} in this object", part));
    }
    return points;
}

std::string numbersOf(const Sketch& sketch, const std::vector<PointId>& points)
{
    std::string numbers;
    for (const PointId id : points)
        if (const TestPoint* point = sketch.point(id))
            numbers += (numbers.empty() ? "" : ", ") + std::to_string(point->number);
    return numbers;
}

std::string placeOnSheet(const Sketch& sketch, const TestPoint& point)
{
    const Joint* joint = sketch.joint(point.joint);
    const Sheet* sheet = joint == nullptr ? nullptr : sketch.sheet(joint->sheet);
    if (sheet == nullptr)
        return point.place;
    Sheet bare;
    bare.upDirection = sheet->upDirection;
    return placeText(&bare, *joint, geometry::outline(joint->shape), point);
}

} // namespace sealwalk::model
