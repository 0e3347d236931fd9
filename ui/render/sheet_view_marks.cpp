// SPDX-License-Identifier: GPL-3.0-or-later
// What comes and goes over a map in a window: threads from leaks to what answers to them, and the word that
// the findings are being worked out.
#include "ui/render/sheet_view.h"
#include "ui/render/thread_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPainterPathStroker>

namespace sealwalk::render {

namespace {

constexpr double kThreadRoom = 12.0; // px that a thread and its arrow take

} // namespace

void SheetView::setThreads(std::vector<Thread> threads)
{
    m_threads = std::move(threads);
    update();
}

void SheetView::setMarked(std::vector<model::PointId> points)
{
    if (points == m_marked)
        return;
    m_marked = std::move(points);
    update();
}

void SheetView::paintMarked(QPainter& painter, const Theme& theme) const
{
    constexpr std::size_t kMost = 60; // more tell nothing apart, and each is looked for
    if (m_marked.size() > kMost)
        return;
    painter.setPen(QPen(theme.colour(Role::Accent), 1.2));
    for (const model::PointId& point : m_marked)
        if (const auto marked = indexOf(point); marked && point != m_selected)
            painter.drawPath(m_picture->ringAround(*marked, 3.0));
}

void SheetView::setNotice(const QString& text)
{
    if (text == m_notice)
        return;
    m_notice = text;
    update();
}

void SheetView::paintThreads(QPainter& painter, const Theme& theme) const
{
    QPainterPath ways; // what they cover
    QPainterPathStroker stroker;
    stroker.setWidth(kThreadRoom);
    for (const Thread& thread : m_threads) {
        const auto from = indexOf(thread.from);
        const auto to = indexOf(thread.to);
        if (!from || !to)
            continue;
        const QPointF start = m_picture->placeOf(*from);
        const QPointF end = m_picture->placeOf(*to);
        paintThread(painter, theme, start, end, thread);
        ways.addPath(stroker.createStroke(threadPath(start, end)));
    }
    if (!ways.isEmpty())
        m_picture->paintNumbersOver(painter, theme, ways);
}

void SheetView::paintNotice(QPainter& painter, const Theme& theme) const
{
    QColor wash = theme.colour(Role::Sheet);
    constexpr float kDims = 0.5F;
    wash.setAlphaF(kDims);
    painter.fillRect(rect(), wash);
    painter.setFont(render::font(TextSize::Strong, Weight::Bold));
    const QFontMetricsF metrics(painter.font());
    constexpr double kRoom = 12.0;
    QRectF tag(0, 0, metrics.horizontalAdvance(m_notice) + 2.0 * kRoom, metrics.height() + kRoom);
    tag.moveCenter(QPointF(0.5 * width(), 0));
    tag.moveTop(kRoom);
    painter.setPen(QPen(theme.colour(Role::Line), 1.0));
    painter.setBrush(theme.colour(Role::Panel));
    painter.drawRoundedRect(tag, 2.0, 2.0);
    painter.setPen(theme.colour(Role::Ink));
    painter.drawText(tag, Qt::AlignCenter, m_notice);
}

} // namespace sealwalk::render
