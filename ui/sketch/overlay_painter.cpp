// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/overlay_painter.h"

#include "core/editing/laying.h"
#include "core/editing/sense.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kPlateHeight = 20.0;
constexpr double kNearLine = 22.0; ///< px from the frame to a horizontal dimension line
constexpr double kFarLine = 64.0;  ///< px to a vertical one
constexpr double kFrameAir = 14.0;

} // namespace

QString millimetresText(double value)
{
    const double rounded = std::round(value * 10.0) / 10.0;
    const bool whole = std::abs(rounded - std::round(rounded)) < 1e-9;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(rounded, 'f', whole ? 0 : 1) + QStringLiteral(" mm");
}

void OverlayPainter::handles(const geometry::Shape& shape, double airPixels)
{
    const double air = m_view.toMillimetres(airPixels);
    const std::vector<Handle> all = handlesOf(shape, air);
    const QColor accent = m_theme.colour(Role::Accent);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(accent, 1.0, Qt::CustomDashLine, Qt::FlatCap));
    QPen dashes = m_painter.pen();
    dashes.setDashPattern({3.0, 3.0});
    m_painter.setPen(dashes);
    QPolygonF frame;
    for (const auto& [x, y] : {std::pair{-1, -1}, std::pair{1, -1}, std::pair{1, 1}, std::pair{-1, 1}})
        for (const Handle& handle : all)
            if (handle.what == Handle::What::Side && handle.x == x && handle.y == y)
                frame.append(m_view.toScreen(handle.place));
    m_painter.drawPolygon(frame);
    m_painter.setPen(QPen(accent, 1.5));
    m_painter.setBrush(m_theme.colour(Role::Field));
    for (const Handle& handle : all) {
        const QPointF at = m_view.toScreen(handle.place);
        if (handle.what == Handle::What::Turn || handle.what == Handle::What::Corner)
            m_painter.drawEllipse(at, 4.0, 4.0);
        else
            m_painter.drawRect(QRectF(at - QPointF(4.0, 4.0), QSizeF(8.0, 8.0)));
    }
}

void OverlayPainter::startAndSense(const model::Joint& joint, const QString& words)
{
    const geometry::Path path = geometry::outline(joint.shape);
    if (path.length() <= 0.0)
        return;
    const bool forward = editing::runsAlongOutline(joint);
    const double along = editing::alongOf(joint, 0.0) * path.length();
    const geometry::Station station = path.at(along);
    const QPointF at = m_view.toScreen(station.place);
    QPointF way(station.forward.x, -station.forward.y);
    // the direction at a corner of the flattened line is that of the piece walked next
    if (!forward)
        way = -way;
    const QPointF aside(-way.y(), way.x());
    const QColor accent = m_theme.colour(Role::Accent);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(accent);
    m_painter.drawEllipse(at, 6.5, 6.5);
    const geometry::Vector left = station.left();
    QPointF outward(left.x, -left.y);
    const QPointF middle = m_view.toScreen(path.bounds().centre());
    if (QPointF::dotProduct(outward, middle - at) > 0.0)
        outward = -outward;
    const QPointF tail = at + outward * 11.0 - way * 4.0;
    const QPointF tip = tail + way * 14.0;
    m_painter.setPen(QPen(accent, 2.0));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawLine(tail, tip);
    m_painter.drawPolyline(QPolygonF{tip - way * 4.0 + aside * 4.0, tip, tip - way * 4.0 - aside * 4.0});
    // On a small joint the words would cover its numbers; mark and arrow say it as well.
    constexpr double kLeastRoom = 170.0;
    const geometry::Box box = path.bounds();
    if (words.isEmpty() || std::min(box.width(), box.height()) * m_view.scale() < kLeastRoom)
        return;
    m_painter.setFont(render::font(render::TextSize::Caption));
    const QPointF text = at - outward * 34.0;
    m_painter.drawText(QRectF(text - QPointF(-8.0, 8.0), QSizeF(220.0, 16.0)),
                       Qt::AlignLeft | Qt::AlignVCenter, words);
}

void OverlayPainter::ghostPoints(const model::Joint& joint, int count)
{
    const geometry::Path path = geometry::outline(joint.shape);
    QColor accent = m_theme.colour(Role::Accent);
    QPen pen(accent, 1.2);
    pen.setDashPattern({2.0, 2.0});
    m_painter.setPen(pen);
    m_painter.setBrush(m_theme.colour(Role::Field));
    for (const double along : editing::places(joint, count))
        m_painter.drawEllipse(m_view.toScreen(path.at(along * path.length()).place), 3.5, 3.5);
}

QString OverlayPainter::figure(const Size& size, std::size_t index, const SizeEntry& entry) const
{
    const QString typed = entry.text(index);
    const QString sign = size.sign.isEmpty() ? QString() : size.sign + QLatin1Char(' ');
    if (typed.isEmpty() && size.isCount)
        return sign + QLocale().toString(std::round(size.value * 10.0) / 10.0);
    if (typed.isEmpty())
        return sign + millimetresText(size.value);
    return sign + typed + (size.isCount ? QString() : QStringLiteral(" mm"));
}

QRectF OverlayPainter::plate(QPointF centre, const QString& text, bool current)
{
    const QFont font = render::font(render::TextSize::Text, render::Weight::Bold);
    m_painter.setFont(font);
    const double width = QFontMetricsF(font).horizontalAdvance(text) + 12.0;
    const QRectF room(centre.x() - width / 2.0, centre.y() - kPlateHeight / 2.0, width, kPlateHeight);
    m_painter.setBrush(m_theme.colour(current ? Role::AccentWash : Role::Field));
    m_painter.setPen(QPen(m_theme.colour(Role::Accent), current ? 2.0 : 1.0));
    m_painter.drawRoundedRect(room, 2.0, 2.0);
    m_painter.setPen(m_theme.colour(Role::Accent));
    m_painter.drawText(room, Qt::AlignCenter, text);
    return room;
}

std::vector<SizePlate> OverlayPainter::dimensions(const geometry::Shape& shape, const SizeEntry& entry)
{
    const std::vector<Size> sizes = sizesOf(shape);
    const geometry::Box box = geometry::outline(shape).bounds();
    const QPointF middle = m_view.toScreen(box.centre());
    const QColor accent = m_theme.colour(Role::Accent);
    std::vector<SizePlate> plates;
    for (const Dimension& dimension : dimensionsOf(shape)) {
        QPointF a = m_view.toScreen(dimension.from);
        QPointF b = m_view.toScreen(dimension.to);
        m_painter.setPen(QPen(accent, 1.0));
        m_painter.setBrush(Qt::NoBrush);
        QPointF at = (a + b) / 2.0;
        const bool linear =
            dimension.side == Dimension::Side::Below || dimension.side == Dimension::Side::Right;
        if (linear) {
            // parallel to its side, outside the shape
            const QPointF way = b - a;
            const double length = std::hypot(way.x(), way.y());
            if (length <= 0.0)
                continue;
            QPointF out(-way.y() / length, way.x() / length);
            if (QPointF::dotProduct(out, at - middle) < 0.0)
                out = -out;
            const double off = dimension.side == Dimension::Side::Below ? kFrameAir + kNearLine : kFarLine;
            m_painter.drawLine(a + out * kFrameAir, a + out * (off + 5.0));
            m_painter.drawLine(b + out * kFrameAir, b + out * (off + 5.0));
            m_painter.drawLine(a + out * off, b + out * off);
            at += out * off;
        } else if (dimension.side == Dimension::Side::Corner) {
            const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
            const QPointF in = length > 4.0 ? (b - a) / length : QPointF(-0.7071, 0.7071);
            at = a + in * 46.0;
            m_painter.drawLine(a, at);
            at += QPointF(in.x() < 0.0 ? -38.0 : 38.0, 10.0);
        } else {
            const QPointF way = b - a;
            const double length = std::max(std::hypot(way.x(), way.y()), 1.0);
            const QPointF end = b + way / length * 26.0;
            m_painter.drawLine(a, end);
            at = end + QPointF(38.0, -6.0);
        }
        const bool current = entry.isActive() && entry.current() == dimension.size;
        const QRectF room = plate(at, figure(sizes[dimension.size], dimension.size, entry), current);
        plates.push_back({dimension.size, room});
    }
    return plates;
}

void OverlayPainter::typedBeside(QPointF at, const std::vector<Size>& sizes, const SizeEntry& entry)
{
    QPointF next = at + QPointF(70.0, 24.0);
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const bool current = entry.isActive() && entry.current() == i;
        const QRectF room = plate(next, figure(sizes[i], i, entry), current);
        next.setX(room.right() + 46.0);
    }
}

void OverlayPainter::guides(const std::vector<Guide>& guides)
{
    QPen pen(m_theme.colour(Role::Accent), 1.0);
    pen.setDashPattern({6.0, 4.0});
    m_painter.setPen(pen);
    for (const Guide& guide : guides)
        m_painter.drawLine(m_view.toScreen(guide.from), m_view.toScreen(guide.to));
}

void OverlayPainter::frame(const geometry::Box& box)
{
    QColor wash = m_theme.colour(Role::Accent);
    m_painter.setPen(QPen(wash, 1.0));
    wash.setAlphaF(0.10F);
    m_painter.setBrush(wash);
    m_painter.drawRect(
        QRectF(m_view.toScreen({box.low.x, box.high.y}), m_view.toScreen({box.high.x, box.low.y})));
}

void OverlayPainter::ringAt(geometry::Point place)
{
    QPen pen(m_theme.colour(Role::InkFaint), 1.5);
    pen.setDashPattern({2.0, 2.0});
    m_painter.setPen(pen);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(m_view.toScreen(place), 6.0, 6.0);
}

void OverlayPainter::nodeAt(geometry::Point place)
{
    const QPointF at = m_view.toScreen(place);
    m_painter.setPen(QPen(m_theme.colour(Role::Accent), 2.0));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(at, 9.0, 9.0);
    m_painter.fillRect(QRectF(at - QPointF(4.0, 4.0), QSizeF(8.0, 8.0)), m_theme.colour(Role::Accent));
}

void OverlayPainter::crossHair(geometry::Point place)
{
    const QPointF at = m_view.toScreen(place);
    m_painter.setPen(QPen(m_theme.colour(Role::Accent), 1.0));
    m_painter.drawLine(at - QPointF(12.0, 0.0), at + QPointF(12.0, 0.0));
    m_painter.drawLine(at - QPointF(0.0, 12.0), at + QPointF(0.0, 12.0));
}

} // namespace sealwalk::ui
