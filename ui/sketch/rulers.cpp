// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/rulers.h"

#include <QPainter>

#include <cmath>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kLeastApart = 70.0; ///< px between figures

double stepFor(double scale)
{
    const double least = kLeastApart / scale;
    const double decade = std::pow(10.0, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * decade >= least)
            return step * decade;
    return 10.0 * decade;
}

} // namespace

void paintRulers(QPainter& painter, const render::Theme& theme, const SheetView& view, QSizeF size,
                 QPointF at, double width)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(0.0, 0.0, size.width(), width), theme.colour(Role::Panel));
    painter.fillRect(QRectF(0.0, 0.0, width, size.height()), theme.colour(Role::Panel));
    painter.setPen(QPen(theme.colour(Role::Line), 0));
    painter.drawLine(QPointF(width, width), QPointF(size.width(), width));
    painter.drawLine(QPointF(width, width), QPointF(width, size.height()));
    const double step = stepFor(view.scale());
    const geometry::Box box = view.visible(size);
    painter.setFont(render::fontOfPixels(9.0));
    const auto figure = [](double v) {
        return QString::number(v + 0.0, 'f', 0).replace(QLatin1Char('-'), QChar(0x2212));
    };
    for (double x = std::floor(box.low.x / step) * step; x <= box.high.x; x += step) {
        const double px = view.toScreen({x, 0.0}).x();
        if (px < width)
            continue;
        painter.setPen(QPen(theme.colour(Role::InkFaint), 0));
        painter.drawLine(QPointF(px, width - 5.0), QPointF(px, width));
        painter.drawText(QRectF(px + 2.0, 1.0, 60.0, width - 3.0), Qt::AlignLeft | Qt::AlignVCenter,
                         figure(std::round(x / step) * step));
        for (int i = 1; i < 5; ++i) {
            const double small = px + view.scale() * step * i / 5.0;
            painter.drawLine(QPointF(small, width - 3.0), QPointF(small, width));
        }
    }
    for (double y = std::floor(box.low.y / step) * step; y <= box.high.y; y += step) {
        const double py = view.toScreen({0.0, y}).y();
        painter.setPen(QPen(theme.colour(Role::InkFaint), 0));
        if (py > width) {
            painter.drawLine(QPointF(width - 5.0, py), QPointF(width, py));
            painter.save();
            painter.translate(1.0, py - 2.0);
            painter.rotate(-90.0);
            painter.drawText(QRectF(0.0, 0.0, 60.0, width - 3.0), Qt::AlignLeft | Qt::AlignVCenter,
                             figure(std::round(y / step) * step));
            painter.restore();
        }
        for (int i = 1; i < 5; ++i)
            if (const double small = py - view.scale() * step * i / 5.0; small > width)
                painter.drawLine(QPointF(width - 3.0, small), QPointF(width, small));
    }
    painter.fillRect(QRectF(0.0, 0.0, width, width), theme.colour(Role::Panel));
    painter.setPen(QPen(theme.colour(Role::Accent), 1.0));
    painter.drawLine(QPointF(at.x(), 0.0), QPointF(at.x(), width));
    painter.drawLine(QPointF(0.0, at.y()), QPointF(width, at.y()));
    painter.restore();
}

} // namespace sealwalk::ui
