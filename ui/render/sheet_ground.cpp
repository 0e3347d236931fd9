// SPDX-License-Identifier: GPL-3.0-or-later
// What lies under the bands of a sheet: pale outlines, grid, scale bar.
#include "ui/render/core_words.h"
#include "ui/render/sheet_picture.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

/// The smallest of 1, 2, 5 times a power of ten that is at least `least`.
double roundLength(double least)
{
    const double decade = std::pow(10.0, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * decade >= least)
            return step * decade;
    return 10.0 * decade;
}

} // namespace

void paintSheetOutlines(QPainter& painter, const Theme& theme,
                        const std::vector<geometry::FreePath>& outlines, double unitsPerMillimetre,
                        double width)
{
    painter.setPen(QPen(theme.colour(Role::SheetUnder), width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    for (const geometry::FreePath& outline : outlines) {
        const geometry::Path path = geometry::outline(outline);
        QPolygonF line;
        for (const geometry::Point p : path.vertices())
            line.append(QPointF(p.x, -p.y) * unitsPerMillimetre);
        if (outline.closed)
            painter.drawPolygon(line);
        else
            painter.drawPolyline(line);
    }
}

void paintSheetGrid(QPainter& painter, const Theme& theme, const QRectF& visible, double unitsPerMillimetre)
{
    constexpr double kLeastPitch = 26.0;
    const double pitch = roundLength(kLeastPitch / unitsPerMillimetre) * unitsPerMillimetre;
    QList<QLineF> lines;
    for (double x = std::ceil(visible.left() / pitch) * pitch; x <= visible.right(); x += pitch)
        lines.append(QLineF(x, visible.top(), x, visible.bottom()));
    for (double y = std::ceil(visible.top() / pitch) * pitch; y <= visible.bottom(); y += pitch)
        lines.append(QLineF(visible.left(), y, visible.right(), y));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(theme.colour(Role::SheetGrid), 0));
    painter.drawLines(lines);
    painter.restore();
}

void paintScaleBar(QPainter& painter, const Theme& theme, QPointF corner, double unitsPerMillimetre,
                   const BandStyle& style, const report::MapContent& content)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = style.unit;
    const double millimetres = roundLength(50.0 * u / unitsPerMillimetre);
    const double width = millimetres * unitsPerMillimetre;
    const QColor ink = theme.colour(Role::InkSoft);
    painter.setPen(QPen(ink, u));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF{corner + QPointF(0, -4 * u), corner, corner + QPointF(width, 0),
                                   corner + QPointF(width, -4 * u)});
    const QFont text = fontOfPixels(style.text);
    const QFontMetricsF metrics(text);
    const QString length = QStringLiteral("%1 mm").arg(millimetres);
    painter.setFont(text);
    painter.drawText(corner + QPointF(width + 6 * u, 2 * u), length);
    const double after = width + 6 * u + metrics.horizontalAdvance(length) + 18 * u;
    if (content.seenFromAbove) {
        painter.drawText(corner + QPointF(after - 8 * u, 2 * u), inWords("from above"));
    } else {
        const QPointF foot = corner + QPointF(after, -5 * u);
        const QPointF up(std::cos(content.upDirection), -std::sin(content.upDirection));
        const QPointF aside(-up.y(), up.x());
        painter.setPen(QPen(ink, 1.3 * u, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        const QPointF tip = foot + up * 7 * u;
        painter.drawLine(QLineF(foot - up * 7 * u, tip));
        painter.drawPolyline(QPolygonF{tip - (up - aside) * 4 * u, tip, tip - (up + aside) * 4 * u});
        painter.setPen(ink);
        painter.drawText(corner + QPointF(after + 10 * u, 2 * u), inWords("up"));
    }
    painter.restore();
}

} // namespace sealwalk::render
