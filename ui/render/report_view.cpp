// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/report_view.h"

#include "ui/render/report_pages.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kGap = 16.0; // px between the pages and around them
constexpr double kLeastZoom = 0.25;
constexpr double kMostZoom = 4.0;
constexpr double kZoomStep = 1.2;
constexpr int kLine = 48; // px a key scrolls
constexpr int kKept = 6;  // pictures

} // namespace

/// What the pages are laid out from lives as long as they do.
struct ReportView::Laid
{
    Laid(std::shared_ptr<const report::ReportContent> of, PdfOptions on)
        : content(std::move(of))
        , options(std::move(on))
        , pages(*content, options)
    {}

    std::shared_ptr<const report::ReportContent> content;
    PdfOptions options;
    detail::Pages pages;
};

ReportView::ReportView(QWidget* parent)
    : QAbstractScrollArea(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    verticalScrollBar()->setSingleStep(kLine);
    horizontalScrollBar()->setSingleStep(kLine);
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, [this] {
        if (const int page = currentPage(); page != m_current) {
            m_current = page;
            emit pageChanged(page);
        }
    });
}

ReportView::~ReportView() = default;

void ReportView::setReport(std::shared_ptr<const report::ReportContent> content, PdfOptions options)
{
    const int page = std::max(m_current, 0);
    m_laid = std::make_unique<Laid>(std::move(content), std::move(options));
    m_pictures.clear();
    m_current = -1;
    if (m_fits)
        fitWidth();
    else
        arrange();
    goTo(std::min(page, pageCount() - 1));
}

int ReportView::pageCount() const
{
    return m_laid ? static_cast<int>(m_laid->pages.count()) : 0;
}

QSizeF ReportView::pageSize() const
{
    if (!m_laid)
        return {};
    return QSizeF(m_laid->pages.metrics().width, m_laid->pages.metrics().height) * m_zoom;
}

QRectF ReportView::pageRect(int page) const
{
    const QSizeF size = pageSize();
    const double left = std::max(kGap, 0.5 * (viewport()->width() - size.width()));
    return QRectF(QPointF(left, kGap + page * (size.height() + kGap)), size)
        .translated(-horizontalScrollBar()->value(), -verticalScrollBar()->value());
}

int ReportView::currentPage() const
{
    if (pageCount() == 0)
        return -1;
    const double middle = verticalScrollBar()->value() + 0.5 * viewport()->height();
    return std::clamp(static_cast<int>((middle - 0.5 * kGap) / (pageSize().height() + kGap)), 0,
                      pageCount() - 1);
}

void ReportView::goTo(int page)
{
    verticalScrollBar()->setValue(
        static_cast<int>(std::lround(std::max(page, 0) * (pageSize().height() + kGap))));
}

void ReportView::setZoom(double zoom)
{
    const double share =
        verticalScrollBar()->maximum() > 0
            ? static_cast<double>(verticalScrollBar()->value()) / verticalScrollBar()->maximum()
            : 0.0;
    m_zoom = std::clamp(zoom, kLeastZoom, kMostZoom);
    m_pictures.clear();
    arrange();
    verticalScrollBar()->setValue(static_cast<int>(std::lround(share * verticalScrollBar()->maximum())));
}

void ReportView::zoomBy(double factor)
{
    m_fits = false;
    setZoom(m_zoom * factor);
}

void ReportView::fitWidth()
{
    m_fits = true;
    if (m_laid)
        setZoom((viewport()->width() - 2.0 * kGap) / m_laid->pages.metrics().width);
}

void ReportView::arrange()
{
    const QSizeF size = pageSize();
    const double height = kGap + pageCount() * (size.height() + kGap);
    const double width = size.width() + 2.0 * kGap;
    const auto range = [](QScrollBar& bar, double whole, int seen) {
        bar.setPageStep(seen);
        bar.setRange(0, std::max(0, static_cast<int>(std::ceil(whole)) - seen));
    };
    range(*verticalScrollBar(), height, viewport()->height());
    range(*horizontalScrollBar(), width, viewport()->width());
    viewport()->update();
    if (const int page = currentPage(); page != m_current) {
        m_current = page;
        emit pageChanged(page);
    }
}

const QPixmap& ReportView::picture(int page)
{
    if (const auto known = m_pictures.find(page); known != m_pictures.end())
        return *known;
    if (m_pictures.size() >= kKept)
        m_pictures.clear();
    const double ratio = devicePixelRatioF();
    QPixmap made((pageSize() * ratio).toSize());
    made.setDevicePixelRatio(ratio);
    made.fill(Qt::white); // paper, whatever the theme
    QPainter painter(&made);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(m_zoom, m_zoom);
    m_laid->pages.paint(painter, static_cast<std::size_t>(page));
    painter.end();
    return *m_pictures.insert(page, made);
}

void ReportView::paintEvent(QPaintEvent*)
{
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), palette().window());
    for (int page = 0; page < pageCount(); ++page) {
        const QRectF where = pageRect(page);
        if (!where.intersects(viewport()->rect()))
            continue;
        painter.drawPixmap(where.topLeft(), picture(page));
        painter.setPen(palette().mid().color());
        painter.drawRect(where);
    }
}

void ReportView::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    if (m_fits)
        fitWidth();
    else
        arrange();
}

void ReportView::wheelEvent(QWheelEvent* event)
{
    if ((event->modifiers() & Qt::ControlModifier) == 0) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    constexpr double kNotch = 120.0;
    zoomBy(std::pow(kZoomStep, event->angleDelta().y() / kNotch));
    event->accept();
}

void ReportView::keyPressEvent(QKeyEvent* event)
{
    const bool control = (event->modifiers() & Qt::ControlModifier) != 0;
    switch (event->key()) {
    case Qt::Key_PageDown:
        goTo(m_current + 1);
        return;
    case Qt::Key_PageUp:
        goTo(m_current - 1);
        return;
    case Qt::Key_Home:
        goTo(0);
        return;
    case Qt::Key_End:
        goTo(pageCount() - 1);
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        if (control)
            return zoomBy(kZoomStep);
        break;
    case Qt::Key_Minus:
        if (control)
            return zoomBy(1.0 / kZoomStep);
        break;
    case Qt::Key_0:
        if (control)
            return fitWidth();
        break;
    default:
        break;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

} // namespace sealwalk::render
