// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/thread_painter.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kClearOfPlates = 14.0; // px left free at either end
constexpr double kBend = 0.16;          // of the length, to the side
constexpr double kLongestBend = 40.0;   // px
constexpr double kArrow = 8.0;          // px
constexpr double kThinnest = 1.2;       // px
constexpr double kThickens = 1.8;       // px from nothing to the whole reading
constexpr double kTagEdge = 4.0;        // px around the text

} // namespace

QPainterPath threadPath(QPointF from, QPointF to)
{
    const double length = QLineF(from, to).length();
    if (length < 2.0 * kClearOfPlates + kArrow)
        return {};
    const QPointF along = (to - from) / length;
    const QPointF aside(-along.y(), along.x());
    const QPointF start = from + along * kClearOfPlates;
    const QPointF end = to - along * kClearOfPlates;
    const QPointF bend = 0.5 * (start + end) + aside * std::min(kBend * length, kLongestBend) * 2.0;
    QPainterPath path(start);
    path.quadTo(bend, end);
    return path;
}

void paintThread(QPainter& painter, const Theme& theme, QPointF from, QPointF to, const Thread& thread)
{
    const QPainterPath path = threadPath(from, to);
    if (path.isEmpty())
        return;
    const QPointF start = path.elementAt(0);
    const QPointF bend = path.elementAt(2); // the last before the end: the direction there
    const QPointF end = path.currentPosition();
    const QColor ink = theme.colour(Role::Echo);
    const double width = kThinnest + kThickens * std::clamp(thread.share, 0.0, 1.0);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(theme.colour(Role::Sheet), width + 3.0, Qt::SolidLine, Qt::RoundCap)); // off the drawing
    painter.drawPath(path);
    painter.setPen(QPen(ink, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(path);

    const QPointF into = (end - bend) / std::max(QLineF(bend, end).length(), 1.0);
    const QPointF across(-into.y(), into.x());
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawPolygon(QPolygonF{{end + into * (0.5 * kArrow), end - into * kArrow + across * (0.6 * kArrow),
                                   end - into * kArrow - across * (0.6 * kArrow)}});
    painter.drawEllipse(start, width + 1.5, width + 1.5);

    if (thread.text.isEmpty())
        return;
    painter.setFont(render::font(TextSize::Text, Weight::Bold));
    const QFontMetricsF metrics(painter.font());
    QRectF tag(0, 0, metrics.horizontalAdvance(thread.text) + 2.0 * kTagEdge, metrics.height() + kTagEdge);
    tag.moveCenter(path.pointAtPercent(0.5));
    painter.setPen(QPen(ink, 1.0));
    painter.setBrush(theme.colour(Role::Panel));
    painter.drawRoundedRect(tag, 2.0, 2.0);
    painter.setPen(theme.colour(Role::Ink));
    painter.drawText(tag, Qt::AlignCenter, thread.text);
}

} // namespace sealwalk::render
