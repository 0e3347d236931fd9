// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/bar_painter.h"

#include "ui/render/hatch.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextOption>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

using report::Bar;
using report::BarFigure;
using report::BarPart;

struct Canvas
{
    QPainter& painter;
    const Theme& theme;
    const BarFigure& figure;
    const BarPlace& place;
    const FigureStyle& style;
    double divisor;

    /// Rows are counted from below; ours run from the top.
    [[nodiscard]] QPointF at(double value, std::size_t bar, double aside = 0.0) const
    {
        const double row = static_cast<double>(figure.bars.size() - 1 - bar) + aside;
        return place.at(QPointF(value / divisor, row));
    }
};

/// How far words that begin at `left` move so that no limit's line runs through them.
double besideLimits(const Canvas& on, double left, double width)
{
    double moved = 0.0;
    for (const BarFigure::Limit& limit : on.figure.limits) {
        const double x = on.at(limit.at, 0).x();
        const double gap = 4.0 * on.style.unit;
        if (x > left + moved - gap && x < left + moved + width + gap)
            moved = x + gap - left;
    }
    return moved;
}

void paintBar(const Canvas& on, std::size_t index)
{
    QPainter& painter = on.painter;
    const Theme& theme = on.theme;
    const Bar& bar = on.figure.bars[index];
    const double u = on.style.unit;
    const QFont face = fontOfPixels(on.style.text);
    const QFont bold = fontOfPixels(on.style.text, Weight::Bold);
    double sum = 0.0;
    for (const BarPart& part : bar.parts) {
        const QPointF low = on.at(sum, index, kBarShare / 2.0);
        const QPointF high = on.at(sum + part.value, index, -kBarShare / 2.0);
        const QRectF room = QRectF(low, high).normalized();
        sum += part.value;
        const bool missing = part.kind == BarPart::Kind::Missing;
        if (missing) {
            painter.setPen(QPen(theme.colour(Role::Unsure), 1.6 * u));
            painter.drawLines(hatchLines(QPolygonF(room), 45.0, 5.0 * u));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(room);
        }
        const QFontMetricsF metrics(part.heat || missing ? bold : face);
        const QString text = QString::fromStdString(part.label);
        const double width = metrics.horizontalAdvance(text);
        if (width + 6 * u > room.width())
            continue;
        QColor ink = theme.colour(Role::Ink);
        if (missing) {
            const QRectF plate(room.center() - QPointF(width / 2 + 4 * u, metrics.height() / 2),
                               QSizeF(width + 8 * u, metrics.height()));
            painter.fillRect(plate, theme.colour(Role::Plate));
            ink = theme.colour(Role::Unsure);
        } else if (part.heat) {
            const QColor ground = theme.heat(*part.heat);
            ink = ground.lightnessF() > 0.55F ? QColor(0x14, 0x18, 0x1A) : QColor(0xFB, 0xFA, 0xF6);
        }
        painter.setPen(ink);
        painter.setFont(part.heat || missing ? bold : face);
        QTextOption where((missing ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
        where.setWrapMode(QTextOption::NoWrap);
        double moved = besideLimits(on, room.left() + 6 * u, width);
        if (6 * u + moved + width > room.width())
            moved = 0.0;
        painter.drawText(missing ? room : room.adjusted(6 * u + moved, 0, 0, 0), text, where);
    }
    if (bar.low && bar.high && *bar.high > *bar.low) {
        // Below the bar where something follows it, in its middle where it stands alone.
        const double aside = bar.parts.size() > 1 ? -kBarShare / 2.0 - 0.12 : 0.0;
        const QPointF low = on.at(*bar.low, index, aside);
        const QPointF high = on.at(*bar.high, index, aside);
        painter.setPen(QPen(theme.colour(Role::Ink), 1.5 * u, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(low, high);
        for (const QPointF& end : {low, high})
            painter.drawLine(QLineF(end - QPointF(0, 4 * u), end + QPointF(0, 4 * u)));
    }
    if (!bar.total.empty()) {
        painter.setPen(theme.colour(Role::Ink));
        painter.setFont(fontOfPixels(on.style.text * 13.0 / 11.0, Weight::Bold));
        const QPointF end = on.at(sum, index);
        const QString text = QString::fromStdString(bar.total);
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(text);
        const double left = end.x() + 5 * u;
        painter.drawText(
            QRectF(left + besideLimits(on, left, width), end.y() - 12 * u, width + 2 * u, 24 * u),
            Qt::AlignLeft | Qt::AlignVCenter, text);
    }
}

void paintLimits(const Canvas& on)
{
    QPainter& painter = on.painter;
    const double u = on.style.unit;
    const QRectF plot = on.place.plot;
    painter.setFont(fontOfPixels(on.style.text, Weight::Bold));
    const QFontMetricsF metrics(painter.font());
    for (const BarFigure::Limit& limit : on.figure.limits) {
        const double x = on.at(limit.at, 0).x();
        QPen pen(on.theme.colour(Role::Ink), 2.0 * u, Qt::SolidLine, Qt::FlatCap);
        if (limit.dashed)
            pen.setDashPattern({3.0, 1.5});
        painter.setPen(pen);
        painter.drawLine(QLineF(x, plot.top() - 2 * u, x, plot.bottom()));
        const QString text = QString::fromStdString(limit.text);
        const double width = metrics.horizontalAdvance(text);
        const QRectF whole = on.place.whole;
        const double left = std::clamp(x - width / 2.0, whole.left() + 2 * u,
                                       std::max(whole.left() + 2 * u, whole.right() - width - 2 * u));
        painter.drawText(QPointF(left, plot.top() - 5 * u), text);
    }
}

void paintEmpty(QPainter& painter, const Theme& theme, const BarFigure& figure, const QRectF& where,
                const FigureStyle& style)
{
    painter.setPen(theme.colour(Role::InkSoft));
    painter.setFont(fontOfPixels(style.text));
    painter.drawText(where, Qt::AlignCenter | Qt::TextWordWrap, QString::fromStdString(figure.empty));
}

/// Names on the left, limits' words above, figures and unit of the axis below.
QRectF plotIn(const BarFigure& figure, const QRectF& where, const FigureStyle& style)
{
    const QFontMetricsF metrics(fontOfPixels(style.text));
    double names = 0.0;
    for (const Bar& bar : figure.bars)
        names = std::max(names, metrics.horizontalAdvance(QString::fromStdString(bar.name)));
    const double top = style.text * (figure.limits.empty() ? 0.4 : 1.7);
    return where.adjusted(names + 8.0 * style.unit, top, -8.0 * style.unit,
                          -2.0 * metrics.lineSpacing() - 4.0 * style.unit);
}

void paintAxis(QPainter& painter, const Theme& theme, const BarFigure& figure, const BarAxis& axis,
               const BarPlace& place, const FigureStyle& style)
{
    const double u = style.unit;
    painter.setFont(fontOfPixels(style.text));
    const QFontMetricsF metrics(painter.font());
    const double line = metrics.lineSpacing();
    const QRectF& plot = place.plot;
    for (int i = 0; i * axis.step <= axis.top * (1.0 + 1e-9); ++i) {
        const double value = i * axis.step;
        const double x = place.at(QPointF(value, 0.0)).x();
        painter.setPen(QPen(theme.colour(i == 0 ? Role::Line : Role::SheetGrid), u));
        painter.drawLine(QLineF(x, plot.top(), x, plot.bottom()));
        painter.setPen(theme.colour(Role::InkSoft));
        painter.drawText(QRectF(x - 40.0 * u, plot.bottom() + 2.0 * u, 80.0 * u, line), Qt::AlignCenter,
                         QString::number(value));
    }
    painter.drawText(QRectF(plot.left(), plot.bottom() + 2.0 * u + line, plot.width(), line), Qt::AlignCenter,
                     axis.title);
    painter.setPen(QPen(theme.colour(Role::Line), u));
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    painter.setPen(theme.colour(Role::Ink));
    for (std::size_t i = 0; i < figure.bars.size(); ++i) {
        const double y = place.at(QPointF(0.0, static_cast<double>(figure.bars.size() - 1 - i))).y();
        painter.drawText(
            QRectF(place.whole.left(), y - line, plot.left() - place.whole.left() - 5.0 * u, 2.0 * line),
            Qt::AlignRight | Qt::AlignVCenter, QString::fromStdString(figure.bars[i].name));
    }
}

void paintParts(const Canvas& on)
{
    for (std::size_t i = 0; i < on.figure.bars.size(); ++i) {
        double sum = 0.0;
        for (const BarPart& part : on.figure.bars[i].parts) {
            const BarColours colours = coloursOf(part, on.theme);
            on.painter.setPen(QPen(colours.edge, on.style.unit));
            on.painter.setBrush(colours.fill);
            on.painter.drawRect(
                QRectF(on.at(sum, i, kBarShare / 2.0), on.at(sum + part.value, i, -kBarShare / 2.0))
                    .normalized());
            sum += part.value;
        }
    }
}

} // namespace

BarAxis BarAxis::of(const BarFigure& figure)
{
    const double highest = figure.highest();
    const int exponent = highest > 0.0 ? static_cast<int>(std::floor(std::log10(highest))) : 0;
    BarAxis axis;
    axis.divisor = std::pow(10.0, exponent);
    axis.top = std::max(1.0, std::ceil(highest / axis.divisor * 1.12 * 2.0) / 2.0);
    axis.step = axis.top > 5.0 ? 2.0 : 1.0;
    const QString power =
        exponent < 0 ? QStringLiteral("1e\u2212%1").arg(-exponent) : QStringLiteral("1e%1").arg(exponent);
    axis.title = exponent == 0
                     ? QString::fromStdString(figure.unit)
                     : QStringLiteral("\u00D7 %1 %2").arg(power, QString::fromStdString(figure.unit));
    return axis;
}

BarColours coloursOf(const BarPart& part, const Theme& theme)
{
    if (part.heat)
        return {theme.heat(*part.heat), theme.heat(*part.heat)};
    switch (part.kind) {
    case BarPart::Kind::Plain:
        return {theme.colour(Role::Line), theme.colour(Role::Edge)};
    case BarPart::Kind::Hollow:
        return {theme.colour(Role::Field), theme.colour(Role::Ink)};
    case BarPart::Kind::Missing:
        break;
    }
    return {theme.colour(Role::Panel), theme.colour(Role::Edge)};
}

void paintBarMarks(QPainter& painter, const Theme& theme, const BarFigure& figure, const BarPlace& place,
                   const FigureStyle& style)
{
    const Canvas on{painter, theme, figure, place, style, BarAxis::of(figure).divisor};
    paintLimits(on);
    for (std::size_t i = 0; i < figure.bars.size(); ++i)
        paintBar(on, i);
}

void paintBars(QPainter& painter, const Theme& theme, const BarFigure& figure, const QRectF& where,
               const FigureStyle& style)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (figure.bars.empty()) {
        paintEmpty(painter, theme, figure, where, style);
    } else {
        const BarAxis axis = BarAxis::of(figure);
        const QRectF plot = plotIn(figure, where, style);
        const double row = plot.height() / static_cast<double>(figure.bars.size());
        const BarPlace place{where, plot, [=](QPointF at) {
                                 return QPointF(plot.left() + at.x() / axis.top * plot.width(),
                                                plot.bottom() - (at.y() + 0.5) * row);
                             }};
        paintAxis(painter, theme, figure, axis, place, style);
        paintParts({painter, theme, figure, place, style, axis.divisor});
        paintBarMarks(painter, theme, figure, place, style);
    }
    painter.restore();
}

} // namespace sealwalk::render
