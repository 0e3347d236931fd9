// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/shape_text.h"

#include "core/storage/packing.h"
#include "core/storage/sqlite_errors.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

namespace sealwalk::storage {
namespace {

using namespace geometry;

/// Takes words off the front of a line; whatever is not as written is damage.
class Words
{
public:
    explicit Words(std::string_view text)
        : m_rest(text)
        , m_whole(text)
    {}

    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }

    std::string_view word()
    {
        const std::size_t end = m_rest.find(' ');
        const std::string_view result = m_rest.substr(0, end);
        m_rest = end == std::string_view::npos ? std::string_view{} : m_rest.substr(end + 1);
        if (result.empty() || (end != std::string_view::npos && m_rest.empty()))
            damaged();
        return result;
    }

    double number()
    {
        const std::string_view text = word();
        double value = 0.0;
        const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
        if (problem != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
            damaged();
        return value;
    }

    Point point()
    {
        const double x = number();
        return {x, number()};
    }

    bool either(std::string_view yes, std::string_view no)
    {
        const std::string_view text = word();
        if (text != yes && text != no)
            damaged();
        return text == yes;
    }

    [[noreturn]] void damaged() const
    {
        throw Refusal(ErrorCode::DamagedFile, fmt::format("a shape in the history reads \"{}\"", m_whole));
    }

private:
    std::string_view m_rest;
    std::string_view m_whole;
};

FreePath pathAfterWord(Words& words)
{
    FreePath path;
    path.closed = words.either("closed", "open");
    path.smooth = words.either("smooth", "straight");
    while (!words.atEnd())
        path.nodes.push_back(words.point());
    return path;
}

std::string text(const Ring& ring)
{
    return fmt::format("ring {} {} {}", ring.centre.x, ring.centre.y, ring.radius);
}

std::string text(const RoundedRectangle& r)
{
    return fmt::format("rectangle {} {} {} {} {} {}", r.centre.x, r.centre.y, r.width, r.height,
                       r.cornerRadius, r.rotation);
}

std::string text(const FreePath& path)
{
    std::string result =
        fmt::format("path {} {}", path.closed ? "closed" : "open", path.smooth ? "smooth" : "straight");
    for (const Point& node : path.nodes)
        result += fmt::format(" {} {}", node.x, node.y);
    return result;
}

std::string text(const Spot& spot)
{
    return fmt::format("spot {} {} {}", spot.centre.x, spot.centre.y, spot.radius);
}

} // namespace

std::string shapeText(const Shape& shape)
{
    return std::visit([](const auto& s) { return text(s); }, shape);
}

Shape shapeFromText(std::string_view line)
{
    Words words(line);
    const std::string_view kind = words.word();
    Shape shape;
    if (kind == "ring") {
        Ring ring;
        ring.centre = words.point();
        ring.radius = words.number();
        shape = ring;
    } else if (kind == "rectangle") {
        RoundedRectangle r;
        r.centre = words.point();
        r.width = words.number();
        r.height = words.number();
        r.cornerRadius = words.number();
        r.rotation = words.number();
        shape = r;
    } else if (kind == "path") {
        shape = pathAfterWord(words);
    } else if (kind == "spot") {
        Spot spot;
        spot.centre = words.point();
        spot.radius = words.number();
        shape = spot;
    } else {
        words.damaged();
    }
    if (!words.atEnd())
        words.damaged();
    return shape;
}

std::string outlinesText(const std::vector<FreePath>& outlines)
{
    std::vector<std::string> lines;
    for (const FreePath& outline : outlines)
        lines.push_back(text(outline));
    return packLines(lines);
}

std::vector<FreePath> outlinesFromText(std::string_view lines)
{
    std::vector<FreePath> outlines;
    for (const std::string& line : unpackLines(lines)) {
        Words words(line);
        if (words.word() != "path")
            words.damaged();
        outlines.push_back(pathAfterWord(words));
    }
    return outlines;
}

} // namespace sealwalk::storage
