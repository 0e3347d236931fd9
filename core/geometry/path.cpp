// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/path.h"

#include <algorithm>
#include <limits>

namespace sealwalk::geometry {

Path::Path(std::vector<Point> vertices, bool closed)
    : m_vertices(std::move(vertices))
    , m_closed(closed && m_vertices.size() > 1)
{
    double total = 0.0;
    const std::size_t pieces = m_vertices.empty() ? 0 : m_vertices.size() - (m_closed ? 0 : 1);
    m_ends.reserve(pieces);
    for (std::size_t i = 0; i < pieces; ++i) {
        total += distance(m_vertices[i], vertexAfter(i));
        m_ends.push_back(total);
    }
}

Point Path::vertexAfter(std::size_t piece) const
{
    return m_vertices[(piece + 1) % m_vertices.size()];
}

Box Path::bounds() const
{
    Box box;
    for (const Point& vertex : m_vertices)
        box.add(vertex);
    return box;
}

std::size_t Path::pieceAt(double along) const
{
    const auto end = std::upper_bound(m_ends.begin(), m_ends.end(), along);
    return std::min(static_cast<std::size_t>(end - m_ends.begin()), m_ends.size() - 1);
}

Station Path::at(double along) const
{
    if (m_vertices.empty())
        return {};
    if (length() <= 0.0)
        return {m_vertices.front(), {}};
    double local = m_closed ? std::fmod(along, length()) : std::clamp(along, 0.0, length());
    if (local < 0.0)
        local += length();
    const std::size_t piece = pieceAt(local);
    const Vector forward = (vertexAfter(piece) - m_vertices[piece]).unit();
    const double start = piece == 0 ? 0.0 : m_ends[piece - 1];
    return {m_vertices[piece] + (local - start) * forward, forward};
}

std::vector<Point> Path::section(double from, double to) const
{
    if (m_vertices.empty())
        return {};
    if (length() <= 0.0)
        return {m_vertices.front()};
    if (!m_closed) {
        from = std::clamp(from, 0.0, length());
        to = std::clamp(to, 0.0, length());
    } else {
        const double shift = std::floor(from / length()) * length();
        from -= shift;
        to = std::min(to - shift, from + length());
    }
    std::vector<Point> points{at(from).place};
    for (std::size_t lap = 0; lap < 2; ++lap) {
        const double offset = static_cast<double>(lap) * length();
        for (std::size_t piece = 0; piece < m_ends.size(); ++piece) {
            const double end = offset + m_ends[piece];
            if (end > from && end < to)
                points.push_back(vertexAfter(piece));
        }
        if (!m_closed)
            break;
    }
    points.push_back(at(to).place);
    return points;
}

Nearest Path::nearest(Point place) const
{
    if (m_ends.empty())
        return {0.0, m_vertices.empty() ? std::numeric_limits<double>::infinity()
                                        : distance(m_vertices.front(), place)};
    Nearest best{0.0, std::numeric_limits<double>::infinity()};
    for (std::size_t piece = 0; piece < m_ends.size(); ++piece) {
        const double start = piece == 0 ? 0.0 : m_ends[piece - 1];
        const double span = m_ends[piece] - start;
        const Vector forward = (vertexAfter(piece) - m_vertices[piece]).unit();
        const Vector toPlace = place - m_vertices[piece];
        const double along = std::clamp(toPlace.x * forward.x + toPlace.y * forward.y, 0.0, span);
        const double off = distance(m_vertices[piece] + along * forward, place);
        if (off < best.distance)
            best = {start + along, off};
    }
    return best;
}

} // namespace sealwalk::geometry
