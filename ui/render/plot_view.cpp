// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/plot_view.h"

#include "ui/render/core_words.h"
#include "ui/render/figure_painter.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kWheelStep = 1.25;
constexpr double kClosest = 1e-6; // of the whole

} // namespace

PlotView::PlotView(QWidget* parent)
    : QWidget(parent)
{
    setAccessibleName(tr("Plot"));
}

void PlotView::setFigure(report::Figure figure)
{
    // A figure that only grew keeps the part being looked at.
    const bool wasWhole = m_figure.x.low == m_allFrom && m_figure.x.high == m_allTo;
    const double from = m_figure.x.low;
    const double to = m_figure.x.high;
    m_figure = inWords(std::move(figure));
    m_allFrom = m_figure.x.low;
    m_allTo = m_figure.x.high;
    if (m_zoomable && !wasWhole)
        show(from, to);
    if (!m_figure.title.empty())
        setAccessibleName(QString::fromStdString(m_figure.title));
    setAccessibleDescription(
        QString::fromStdString(m_figure.empty.empty() ? m_figure.spoken : m_figure.empty));
    update();
}

void PlotView::setZoomable(bool zoomable)
{
    m_zoomable = zoomable;
    setFocusPolicy(zoomable ? Qt::StrongFocus : Qt::NoFocus);
}

QRectF PlotView::room() const
{
    return QRectF(rect()).adjusted(2, 2, -2, -2);
}

void PlotView::show(double from, double to)
{
    const double whole = m_allTo - m_allFrom;
    const double span = std::clamp(to - from, whole * kClosest, whole);
    const double start = std::clamp(from, m_allFrom, m_allTo - span);
    m_figure.x.low = start;
    m_figure.x.high = start + span;
    emit viewChanged(m_figure.x.low, m_figure.x.high);
    update();
}

void PlotView::zoom(double factor, double part)
{
    const double span = (m_figure.x.high - m_figure.x.low) / factor;
    const double at = m_figure.x.low + part * (m_figure.x.high - m_figure.x.low);
    show(at - part * span, at + (1.0 - part) * span);
}

void PlotView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Theme& theme = Theme::of(this);
    FigureStyle style;
    style.devicePixelRatio = devicePixelRatioF();
    paintFigure(painter, theme, m_figure, room(), style);
    if (hasFocus()) {
        painter.setPen(QPen(theme.colour(Role::Accent), 2.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void PlotView::wheelEvent(QWheelEvent* event)
{
    if (!m_zoomable) {
        event->ignore();
        return;
    }
    const QRectF area = plotArea(m_figure, room());
    const double part = std::clamp((event->position().x() - area.left()) / area.width(), 0.0, 1.0);
    zoom(std::pow(kWheelStep, event->angleDelta().y() / 120.0), part);
    event->accept();
}

void PlotView::mousePressEvent(QMouseEvent* event)
{
    if (m_zoomable && event->button() == Qt::LeftButton)
        m_dragFrom = event->position();
}

void PlotView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_dragFrom)
        return;
    const QRectF area = plotArea(m_figure, room());
    const double by =
        (event->position().x() - m_dragFrom->x()) / area.width() * (m_figure.x.high - m_figure.x.low);
    m_dragFrom = event->position();
    show(m_figure.x.low - by, m_figure.x.high - by);
}

void PlotView::mouseReleaseEvent(QMouseEvent*)
{
    m_dragFrom.reset();
}

void PlotView::mouseDoubleClickEvent(QMouseEvent*)
{
    if (m_zoomable)
        show(m_allFrom, m_allTo);
}

void PlotView::keyPressEvent(QKeyEvent* event)
{
    const double span = m_figure.x.high - m_figure.x.low;
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(kWheelStep, 0.5);
        return;
    case Qt::Key_Minus:
        zoom(1.0 / kWheelStep, 0.5);
        return;
    case Qt::Key_0:
        show(m_allFrom, m_allTo);
        return;
    case Qt::Key_Left:
        show(m_figure.x.low - span * 0.1, m_figure.x.high - span * 0.1);
        return;
    case Qt::Key_Right:
        show(m_figure.x.low + span * 0.1, m_figure.x.high + span * 0.1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace sealwalk::render
