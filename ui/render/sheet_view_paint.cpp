// SPDX-License-Identifier: GPL-3.0-or-later
// Painting of the map in a window. Ground, bands and labels are kept in one layer with a margin, so that
// panning and selecting only copy it.
#include "ui/render/hatch.h"
#include "ui/render/sheet_view.h"
#include "ui/render/underlay_picture.h"

#include <QElapsedTimer>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPainterPathStroker>
#include <QTimer>

#include <cmath>
#include <limits>

namespace sealwalk::render {

namespace {

constexpr double kLayerMargin = 160.0; // px kept around the widget
constexpr int kFlagText = 24;
constexpr double kFlagRing = 18.0;
constexpr double kFlagStem = 16.0; // px between ring and flag
constexpr double kCutCost = 1e9;   // px², more than any flag can cover

/// @param side  unit vector from the point to the flag
QRectF flagRoom(QPointF place, QPointF side, QSizeF size)
{
    const double half = (std::abs(side.x()) * size.width() + std::abs(side.y()) * size.height()) / 2.0;
    const QPointF centre = place + side * (kFlagRing + kFlagStem + half);
    return {centre - QPointF(size.width(), size.height()) / 2.0, size};
}

} // namespace

QRectF SheetView::sheetRect() const
{
    return QRectF(rect()).translated(-m_origin);
}

void SheetView::renderLayer(const Theme& theme)
{
    QElapsedTimer clock;
    clock.start();
    const double ratio = devicePixelRatioF();
    // Whole device pixels, so that the layer is copied and not resampled.
    const QRectF visible = sheetRect();
    const QPointF corner(std::floor(visible.left() - kLayerMargin), std::floor(visible.top() - kLayerMargin));
    const QSizeF size(visible.width() + 2.0 * kLayerMargin, visible.height() + 2.0 * kLayerMargin);
    m_layerRoom = QRectF(corner, size);
    m_layerTheme = &theme;
    m_layer = QPixmap((size * ratio).toSize());
    m_layer.setDevicePixelRatio(ratio);
    m_layer.fill(theme.colour(Role::Sheet));
    QPainter painter(&m_layer);
    painter.translate(-corner);
    paintGround(painter, theme);
    m_picture->paint(painter, theme, m_layerRoom);
    if (m_corePicture)
        m_corePicture->paint(painter, theme, m_layerRoom);
    m_cost += static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

void SheetView::paintGround(QPainter& painter, const Theme& theme) const
{
    if (m_grid)
        paintSheetGrid(painter, theme, m_layerRoom, m_scale);
    if (m_underlays && m_content->underlay)
        if (const UnderlayPicture* picture = m_underlays(m_content->underlay->picture))
            picture->paint(painter, theme, *m_content->underlay, m_scale);
}

void SheetView::paintEvent(QPaintEvent*)
{
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    if (!m_picture) {
        painter.fillRect(rect(), theme.colour(Role::Sheet));
        return;
    }
    const double factor = pictureFactor();
    const bool settling = m_settle->isActive() && !m_layer.isNull();
    const bool stale = m_layer.isNull() || m_layerTheme != &theme ||
                       m_layer.devicePixelRatio() != devicePixelRatioF() ||
                       !m_layerRoom.contains(sheetRect().toAlignedRect());
    if (settling) { // the last layer, scaled, until the zoom comes to rest
        painter.fillRect(rect(), theme.colour(Role::Sheet));
        painter.drawPixmap(QRectF(m_origin + m_layerRoom.topLeft() * factor, m_layerRoom.size() * factor),
                           m_layer, QRectF(m_layer.rect()));
    } else {
        if (stale)
            renderLayer(theme);
        painter.drawPixmap(m_origin + m_layerRoom.topLeft(), m_layer);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.translate(m_origin);
    painter.scale(factor, factor);
    paintOver(painter, theme);
    painter.restore();
    if (!m_notice.isEmpty())
        paintNotice(painter, theme);
    paintScaleBar(painter, theme, QPointF(14, height() - 12), m_scale, BandStyle::screen(), *m_content);
    paintLeftOut(painter, theme);
    if (hasFocus()) {
        painter.setPen(QPen(theme.colour(Role::Accent), 2.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

/// A point without its number is not one that nobody drew: the map says so, where the scale leaves room.
void SheetView::paintLeftOut(QPainter& painter, const Theme& theme) const
{
    const int count = m_picture->numbersLeftOut();
    if (count == 0)
        return;
    constexpr double kScaleNeeds = 260.0; // px, bar and direction
    constexpr double kEdge = 14.0;
    const QString text = tr("%n number(s) without room: zoom in", nullptr, count);
    painter.setFont(fontOfPixels(BandStyle::screen().text));
    const double wide = QFontMetricsF(painter.font()).horizontalAdvance(text);
    if (width() < kScaleNeeds + wide + kEdge)
        return;
    painter.setPen(theme.colour(Role::InkSoft));
    painter.drawText(QPointF(width() - kEdge - wide, height() - 10.0), text);
}

void SheetView::paintOver(QPainter& painter, const Theme& theme) const
{
    if (m_plume)
        paintPlume(painter, theme);
    paintThreads(painter, theme);
    painter.setBrush(Qt::NoBrush);
    paintMarked(painter, theme);
    if (const auto hovered = indexOf(m_hovered); hovered && m_hovered != m_selected) {
        painter.setPen(QPen(theme.colour(Role::InkSoft), 1.0));
        painter.drawPath(m_picture->ringAround(*hovered, 3.0));
    }
    if (const auto chosen = selectedIndex()) {
        constexpr double kRing = 2.5;
        const QPainterPath ring = m_picture->ringAround(*chosen, 4.0);
        painter.setPen(QPen(theme.colour(Role::Accent), kRing));
        painter.drawPath(ring);
        QPainterPathStroker stroker;
        stroker.setWidth(kRing);
        m_picture->paintNumbersOver(painter, theme, stroker.createStroke(ring));
        painter.setBrush(Qt::NoBrush);
    }
    if (const auto current = indexOf(m_current))
        paintFlag(painter, theme, *current);
}

void SheetView::paintPlume(QPainter& painter, const Theme& theme) const
{
    QPolygonF area;
    for (const geometry::Point p : m_plume->outline)
        area.append(m_picture->map(p));
    QColor colour = theme.colour(Role::Accent);
    const QRectF room = area.boundingRect();
    painter.setPen(colour);
    painter.setFont(render::font(TextSize::Text));
    const QFontMetricsF metrics(painter.font());
    painter.drawText(QPointF(room.right() + 6, room.top() + metrics.ascent()), m_plume->text);
    colour.setAlphaF(0.55F);
    painter.setPen(QPen(colour, 1.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(hatchLines(area, 45.0, 6.0));
}

/// Towards the inside of the joint, where no values stand, unless it would be cut or cover more there than on
/// another side.
QPointF SheetView::flagSide(std::size_t stretch, QSizeF size, const QRectF& seen) const
{
    const double inside = m_picture->outwardOf(stretch).x() > 0.0 ? -1.0 : 1.0;
    QPointF best;
    double least = std::numeric_limits<double>::infinity();
    for (const QPointF side : {QPointF(inside, 0), QPointF(-inside, 0), QPointF(0, -1), QPointF(0, 1)}) {
        const QRectF room = flagRoom(m_picture->placeOf(stretch), side, size);
        const double cost = m_picture->coveredBy(room, stretch) + (seen.contains(room) ? 0.0 : kCutCost);
        if (cost < least) {
            least = cost;
            best = side;
        }
    }
    return best;
}

void SheetView::paintFlag(QPainter& painter, const Theme& theme, std::size_t stretch) const
{
    const QPointF place = m_picture->placeOf(stretch);
    painter.fillRect(m_picture->numberRoom(stretch), theme.colour(Role::Sheet)); // the flag carries it
    const QColor accent = theme.colour(Role::Accent);
    painter.setPen(QPen(accent, 3.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(place, kFlagRing, kFlagRing);
    const QString number = QString::number(m_content->stretches[stretch].number);
    const QFont face = fontOfPixels(kFlagText, Weight::Bold);
    const QSizeF size(QFontMetricsF(face).horizontalAdvance(number) + 20, 34);
    const QRectF seen = painter.worldTransform().inverted().mapRect(QRectF(rect()));
    const QPointF away = flagSide(stretch, size, seen);
    const QRectF flag = flagRoom(place, away, size);
    painter.drawLine(QLineF(place + away * kFlagRing, place + away * (kFlagRing + kFlagStem)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(accent);
    painter.drawRoundedRect(flag, 2, 2);
    painter.setPen(theme.colour(Role::OnAccent));
    painter.setFont(face);
    painter.drawText(flag, Qt::AlignCenter, number);
}

} // namespace sealwalk::render
