// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/sheet_view.h"

#include "ui/render/core_words.h"
#include "ui/render/sheet_accessible.h"

#include <QAccessible>
#include <QElapsedTimer>
#include <QEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QTimer>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kLeastScale = 0.005;
constexpr double kMostScale = 40.0;
constexpr double kWheelStep = 1.2;     // per notch of 120
constexpr double kPanStep = 48.0;      // px per arrow key
constexpr double kDragThreshold = 4.0; // px before a press becomes a pan
constexpr double kFitMargin = 14.0;
constexpr double kScaleBarRoom = 26.0;
constexpr int kLeastSide = 8;       // px; a smaller view shows nothing
constexpr double kFitsStill = 0.99; // the margin takes the rest
constexpr double kWorthGrowing = 1.05;
constexpr double kFrameMs = 12.0; // a layout dearer than this is not repeated at every step of a zoom
constexpr int kSettleMs = 120;
constexpr double kCoreShare = 0.4; // of a band that another one is laid over

} // namespace

SheetView::SheetView(QWidget* parent)
    : QWidget(parent)
{
    installSheetAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Leak map"));
    m_settle = new QTimer(this);
    m_settle->setSingleShot(true);
    m_settle->setInterval(kSettleMs);
    connect(m_settle, &QTimer::timeout, this, &SheetView::settle);
}

SheetView::~SheetView() = default;

void SheetView::setContent(std::shared_ptr<const report::MapContent> content)
{
    const bool sameSheet = m_content && content && m_content->sheet == content->sheet;
    takeContent(std::move(content));
    if (!sameSheet)
        fit();
    else if (m_fitted)
        refit();
    else
        rescale();
    announce();
}

void SheetView::blinkTo(std::shared_ptr<const report::MapContent> content)
{
    takeContent(std::move(content));
    rescale();
    announce();
}

void SheetView::takeContent(std::shared_ptr<const report::MapContent> content)
{
    m_content = std::move(content);
    m_hovered.reset();
    update();
}

/// Whoever listens asks for the points at once: only when they are laid out.
void SheetView::announce()
{
    if (m_content)
        setAccessibleDescription(QString::fromStdString(m_content->title));
}

void SheetView::setUnderlays(Underlays underlays)
{
    m_underlays = std::move(underlays);
    drop(false);
}

void SheetView::refreshUnderlay()
{
    if (m_content && m_content->underlay)
        drop(false);
}

void SheetView::setCore(std::shared_ptr<const report::MapContent> core)
{
    if (core == m_core)
        return;
    m_core = std::move(core);
    drop(true);
}

void SheetView::setParts(const SheetParts& parts)
{
    m_parts = parts;
    drop(true);
}

void SheetView::setGridVisible(bool visible)
{
    m_grid = visible;
    drop(false);
}

void SheetView::setSelected(std::optional<model::PointId> point)
{
    if (point == m_selected)
        return;
    m_selected = point;
    update();
    if (const auto index = selectedIndex()) {
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(static_cast<int>(*index));
        if (hasFocus())
            QAccessible::updateAccessibility(&focus);
    }
}

void SheetView::setCurrent(std::optional<model::PointId> point)
{
    m_current = point;
    update();
}

void SheetView::setPlume(std::optional<Plume> plume)
{
    m_plume = std::move(plume);
    update();
}

void SheetView::drop(bool layout)
{
    m_layer = QPixmap();
    if (layout)
        rescale();
    update();
}

void SheetView::settle()
{
    rescale();
    update();
}

double SheetView::pictureFactor() const
{
    return m_scale / m_picture->unitsPerMillimetre();
}

QPointF SheetView::toPicture(QPointF place) const
{
    return (place - m_origin) / pictureFactor();
}

void SheetView::rescale()
{
    QElapsedTimer clock;
    clock.start();
    m_settle->stop();
    m_layer = QPixmap();
    m_picture = m_content ? std::make_unique<SheetPicture>(m_content, m_scale, BandStyle::screen(), m_parts)
                          : nullptr;
    BandStyle narrow = BandStyle::screen();
    for (double* width : {&narrow.body, &narrow.swell, &narrow.bodyMost})
        *width *= kCoreShare;
    narrow.tooth = 0.0; // the limit is told by the band around it
    constexpr SheetParts kBandsOnly{false, false, false, false, false};
    m_corePicture = m_core ? std::make_unique<SheetPicture>(m_core, m_scale, narrow, kBandsOnly) : nullptr;
    m_cost = static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

bool SheetView::hasRoom() const
{
    return m_content && width() >= kLeastSide && height() >= kLeastSide;
}

/// The scale at which the sheet fits in when its labels stick out by `labels`, px.
double SheetView::fittingScale(QSizeF labels) const
{
    const geometry::Box box = m_content->bounds();
    const double roomX = std::max(20.0, width() - 2.0 * kFitMargin);
    const double roomY = std::max(20.0, height() - 2.0 * kFitMargin - kScaleBarRoom);
    const double x = std::max(20.0, roomX - labels.width()) / std::max(1.0, box.width());
    const double y = std::max(20.0, roomY - labels.height()) / std::max(1.0, box.height());
    return std::clamp(std::min(x, y), kLeastScale, kMostScale);
}

QSizeF SheetView::laidLabels() const
{
    const geometry::Box box = m_content->bounds();
    const QRectF all = m_picture->bounds();
    return {std::max(0.0, all.width() - box.width() * m_scale),
            std::max(0.0, all.height() - box.height() * m_scale)};
}

void SheetView::fit()
{
    m_fitted = true;
    if (!hasRoom()) {
        rescale();
        return;
    }
    m_scale = fittingScale({});
    rescale();
    giveRoom();
    moveToMiddle();
}

/// Labels do not shrink with the sheet: seen how far they stick out, the sheet leaves them room. True when it
/// had to be laid out anew for that.
bool SheetView::giveRoom()
{
    constexpr int kMostLayouts = 3;
    for (int i = 0; i < kMostLayouts; ++i) {
        const double wanted = fittingScale(laidLabels());
        if (wanted >= m_scale * kFitsStill && wanted <= m_scale * kWorthGrowing)
            return i > 0;
        m_scale = wanted;
        rescale();
    }
    return true;
}

/// Other answers on the same sheet: while they fit in as it is, it does not jump, and is laid out once.
void SheetView::refit()
{
    rescale();
    if (!hasRoom())
        return;
    const QRectF room = QRectF(rect()).adjusted(0.0, 0.0, 0.0, -kScaleBarRoom);
    if (giveRoom() || !room.contains(m_picture->bounds().translated(m_origin)))
        moveToMiddle();
}

void SheetView::moveToMiddle()
{
    const QPointF middle(width() / 2.0, (height() - kScaleBarRoom) / 2.0);
    m_origin = middle - m_picture->bounds().center();
    update();
}

void SheetView::zoomBy(double factor)
{
    zoomBy(factor, QPointF(width() / 2.0, height() / 2.0));
}

void SheetView::zoomBy(double factor, QPointF at)
{
    const double wanted = std::clamp(m_scale * factor, kLeastScale, kMostScale);
    m_origin = at - (at - m_origin) * (wanted / m_scale);
    m_scale = wanted;
    m_fitted = false;
    if (m_picture && m_cost > kFrameMs)
        m_settle->start();
    else
        rescale();
    update();
}

void SheetView::reveal(model::PointId point)
{
    const auto index = indexOf(point);
    if (!index)
        return;
    const QRectF room = roomOf(*index);
    if (m_fitted && QRectF(rect()).contains(room))
        return; // all of it is in view: moved, another part would be cut
    const QRectF safe = QRectF(rect()).adjusted(40, 30, -40, -40);
    if (safe.contains(room.center()))
        return;
    m_origin += safe.center() - room.center();
    m_fitted = false;
    update();
}

QPointF SheetView::toView(geometry::Point place) const
{
    return m_origin + QPointF(place.x, -place.y) * m_scale;
}

geometry::Point SheetView::toSheet(QPointF place) const
{
    const QPointF p = (place - m_origin) / m_scale;
    return {p.x(), -p.y()};
}

std::optional<std::size_t> SheetView::indexOf(const std::optional<model::PointId>& point) const
{
    if (!point || !m_content || !m_picture)
        return std::nullopt;
    const report::MapStretch* stretch = m_content->stretchOf(*point);
    if (stretch == nullptr)
        return std::nullopt;
    return static_cast<std::size_t>(stretch - m_content->stretches.data());
}

std::optional<std::size_t> SheetView::selectedIndex() const
{
    return indexOf(m_selected);
}

std::optional<model::PointId> SheetView::pointAt(QPointF place) const
{
    if (!m_picture)
        return std::nullopt;
    const auto index = m_picture->hit(toPicture(place));
    return index ? std::optional(m_content->stretches[*index].point) : std::nullopt;
}

QRect SheetView::roomOf(std::size_t stretch) const
{
    if (!m_picture)
        return {};
    const QRectF room = m_picture->roomOf(stretch);
    const double k = pictureFactor();
    return QRectF(m_origin + room.topLeft() * k, room.size() * k).toAlignedRect();
}

void SheetView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_layer = QPixmap();
    if (m_fitted)
        fit();
}

void SheetView::wheelEvent(QWheelEvent* event)
{
    const double notches = event->angleDelta().y() / 120.0;
    if (notches != 0.0)
        zoomBy(std::pow(kWheelStep, notches), event->position());
    event->accept();
}

void SheetView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton)
        return;
    m_dragFrom = event->position();
    m_dragOrigin = m_origin;
    m_dragged = false;
}

void SheetView::mouseMoveEvent(QMouseEvent* event)
{
    if (m_dragFrom) {
        const QPointF by = event->position() - *m_dragFrom;
        if (!m_dragged && std::hypot(by.x(), by.y()) < kDragThreshold)
            return;
        m_dragged = true;
        m_fitted = false;
        m_origin = m_dragOrigin + by;
        update();
        return;
    }
    const auto under = pointAt(event->position());
    if (under == m_hovered)
        return;
    m_hovered = under;
    setCursor(under ? Qt::PointingHandCursor : Qt::ArrowCursor);
    emit pointHovered(under.value_or(model::PointId()));
    update();
}

void SheetView::mouseReleaseEvent(QMouseEvent* event)
{
    if (!m_dragFrom)
        return;
    m_dragFrom.reset();
    if (m_dragged || event->button() != Qt::LeftButton)
        return;
    if (const auto under = pointAt(event->position()))
        emit pointClicked(*under);
    else
        emit emptyClicked();
}

void SheetView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const auto under = pointAt(event->position()))
        emit pointActivated(*under);
}

void SheetView::leaveEvent(QEvent* event)
{
    QWidget::leaveEvent(event);
    if (!m_hovered)
        return;
    m_hovered.reset();
    emit pointHovered(model::PointId());
    update();
}

void SheetView::step(int by)
{
    if (!m_content || m_content->stretches.empty())
        return;
    std::vector<std::size_t> order(m_content->stretches.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return m_content->stretches[a].number < m_content->stretches[b].number;
    });
    const auto count = static_cast<int>(order.size());
    int next = by > 0 ? 0 : count - 1;
    if (const auto now = selectedIndex()) {
        const auto at = std::find(order.begin(), order.end(), *now) - order.begin();
        next = std::clamp(static_cast<int>(at) + by, 0, count - 1);
    }
    const model::PointId point = m_content->stretches[order[static_cast<std::size_t>(next)]].point;
    setSelected(point);
    reveal(point);
    emit pointClicked(point);
}

void SheetView::keyPressEvent(QKeyEvent* event)
{
    const auto pan = [&](double x, double y) {
        m_origin += QPointF(x, y) * kPanStep;
        m_fitted = false;
        update();
    };
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(kWheelStep);
        return;
    case Qt::Key_Minus:
        zoomBy(1.0 / kWheelStep);
        return;
    case Qt::Key_0:
        fit();
        return;
    case Qt::Key_Left:
        pan(1, 0);
        return;
    case Qt::Key_Right:
        pan(-1, 0);
        return;
    case Qt::Key_Up:
        pan(0, 1);
        return;
    case Qt::Key_Down:
        pan(0, -1);
        return;
    case Qt::Key_PageDown:
        step(1);
        return;
    case Qt::Key_PageUp:
        step(-1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_selected) {
            emit pointActivated(*m_selected);
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void SheetView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        drop(false);
    QWidget::changeEvent(event);
}

bool SheetView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto index = m_picture ? m_picture->hit(toPicture(help->pos())) : std::nullopt;
    if (!index) {
        QToolTip::hideText();
        event->ignore();
        return true;
    }
    const report::MapStretch& stretch = m_content->stretches[*index];
    const QString joint = QString::fromStdString(m_content->joints[stretch.joint].name);
    QToolTip::showText(help->globalPos(),
                       QStringLiteral("%1  %2\n%3\n%4")
                           .arg(QString::number(stretch.number), joint, inPhrases(stretch.tip),
                                QString::fromStdString(stretch.spoken)),
                       this, roomOf(*index));
    return true;
}

} // namespace sealwalk::render
