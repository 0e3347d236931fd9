// SPDX-License-Identifier: GPL-3.0-or-later
// Events: the hand, the keys, typed sizes. Painting is in canvas_paint.cpp.
#include "ui/sketch/canvas.h"

#include "ui/render/core_words.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/underlay/underlay_images.h"

#include <QAccessible>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr double kReach = 7.0;     ///< px that the hand covers
constexpr double kWheelStep = 1.2; ///< per notch
constexpr double kRoomForFigures = 90.0;

/// Sizes snap to steps that are seen at this zoom: 1 mm as long as that is at least a third of a pixel.
double gridAt(double scale)
{
    double grid = 1.0;
    while (grid * scale < 0.3)
        grid *= 10.0;
    return grid;
}

} // namespace

SketchCanvas::SketchCanvas(SketchDesk& desk, UnderlayImages& images, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_images(images)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setMinimumSize(240, 200);
    setAccessibleName(tr("Sheet"));
    constexpr int kRestMilliseconds = 90;
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMilliseconds);
    connect(&m_rest, &QTimer::timeout, this, qOverload<>(&SketchCanvas::update));
    connect(&desk, &SketchDesk::sketchChanged, this, &SketchCanvas::sketchChanged);
    connect(&desk, &SketchDesk::chosenChanged, this, [this] {
        if (m_entry.isActive())
            m_entry.clear();
        describe();
        emit hintsChanged();
        update();
    });
    connect(&desk, &SketchDesk::layingChanged, this, qOverload<>(&SketchCanvas::update));
    connect(&desk, &SketchDesk::viewChanged, this, &SketchCanvas::sketchChanged);
    connect(&desk, &SketchDesk::sheetChanged, this, [this] {
        if (m_tool)
            m_tool->cancel();
        m_entry.clear();
        sketchChanged();
        fit();
    });
    connect(&images, &UnderlayImages::loaded, this, [this] {
        m_layerStale = true;
        update();
    });
}

SketchCanvas::~SketchCanvas() = default;

void SketchCanvas::setTool(std::unique_ptr<Tool> tool)
{
    m_tool = std::move(tool);
    m_entry.clear();
    m_pressed = false;
    if (m_tool)
        setCursor(m_tool->cursor(hand()));
    emit hintsChanged();
    update();
}

Hand SketchCanvas::hand() const
{
    const QPointF at = m_handKnown ? m_at : QRectF(rect()).center();
    // By keys the hand is as fine as the figures; by mouse as fine as can be seen.
    const double grid = m_handByKeys ? 1.0 : gridAt(m_view.scale());
    return {m_view.toSheet(at), m_view.toMillimetres(kReach), grid, m_keys, m_handByKeys};
}

void SketchCanvas::handOver(QPointF at, Qt::KeyboardModifiers keys)
{
    m_at = at;
    m_handKnown = true;
    m_keys = keys;
    const geometry::Point place = m_view.toSheet(at);
    emit handMoved(place.x, place.y);
}

void SketchCanvas::take(Verdict verdict)
{
    switch (verdict.kind) {
    case VerdictKind::Nothing:
        return;
    case VerdictKind::Commit:
        m_entry.clear();
        if (verdict.edit && m_desk.commit(*verdict.edit) && !verdict.choose.empty()) {
            m_desk.choose(std::move(verdict.choose));
            m_desk.setNextName({}, false);
        }
        break;
    case VerdictKind::Revert:
        m_entry.clear();
        m_pressed = false;
        break;
    case VerdictKind::Done:
        m_entry.clear();
        m_pressed = false;
        emit toolLaidDown();
        break;
    case VerdictKind::Changed:
        break;
    }
    describe();
    emit hintsChanged();
    update();
}

void SketchCanvas::mousePressEvent(QMouseEvent* event)
{
    setFocus(Qt::MouseFocusReason);
    handOver(event->position(), event->modifiers());
    m_handByKeys = false;
    if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_spaceHeld)) {
        m_panning = true;
        m_spacePanned = m_spaceHeld;
        m_panFrom = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton || !m_tool)
        return;
    for (const SizePlate& plate : m_plates)
        if (plate.room.contains(event->position())) {
            m_entry.begin(m_tool->sizes().size(), plate.size);
            emit hintsChanged();
            update();
            return;
        }
    m_entry.clear();
    m_pressed = true;
    take(m_tool->press(hand()));
}

void SketchCanvas::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF before = m_at;
    handOver(event->position(), event->modifiers());
    m_handByKeys = false;
    if (m_panning) {
        m_view.pan(event->position() - m_panFrom);
        m_panFrom = event->position();
        viewChanged();
        return;
    }
    if (!m_tool)
        return;
    // Typed sizes hold against a trembling hand.
    if (m_entry.isActive() && !m_pressed)
        return;
    take(m_tool->move(hand(), m_pressed));
    if (!m_pressed)
        setCursor(m_tool->cursor(hand()));
    if (before != m_at && m_rulers)
        update();
}

void SketchCanvas::mouseReleaseEvent(QMouseEvent* event)
{
    handOver(event->position(), event->modifiers());
    if (m_panning) {
        m_panning = false;
        if (m_tool)
            setCursor(m_tool->cursor(hand()));
        return;
    }
    if (event->button() != Qt::LeftButton || !m_pressed || !m_tool)
        return;
    m_pressed = false;
    take(m_tool->release(hand()));
}

void SketchCanvas::mouseDoubleClickEvent(QMouseEvent* event)
{
    handOver(event->position(), event->modifiers());
    if (event->button() == Qt::LeftButton && m_tool) {
        m_pressed = false;
        take(m_tool->doubleClick(hand()));
    }
}

void SketchCanvas::leaveEvent(QEvent* event)
{
    QWidget::leaveEvent(event);
    if (!m_pressed && !m_handByKeys)
        m_handKnown = false;
}

void SketchCanvas::wheelEvent(QWheelEvent* event)
{
    if (event->angleDelta().y() != 0) {
        m_view.zoomAt(event->position(), std::pow(kWheelStep, event->angleDelta().y() / 120.0));
        viewChanged();
    } else if (event->angleDelta().x() != 0) {
        m_view.pan({event->angleDelta().x() / 2.0, 0.0});
        viewChanged();
    }
    event->accept();
}

bool SketchCanvas::typeSize(const QKeyEvent& event)
{
    if (!m_tool || event.modifiers().testFlag(Qt::ControlModifier))
        return false;
    const QString text = event.text();
    const bool digit = text.size() == 1 && text.at(0).isDigit();
    const bool mark = text == QLatin1String(".") || text == QLatin1String(",");
    const auto takesSign = [&] {
        if (m_entry.isActive())
            return m_entry.text(m_entry.current()).isEmpty();
        const std::vector<Size> sizes = m_tool->sizes();
        return !sizes.empty() && sizes.front().isSigned;
    };
    const bool minus = text == QLatin1String("-") && takesSign();
    if (event.key() == Qt::Key_Backspace && m_entry.isActive()) {
        m_entry.erase();
    } else if (digit || minus || (mark && m_entry.isActive())) {
        if (!m_entry.isActive()) {
            const std::size_t sizes = m_tool->sizes().size();
            if (sizes == 0)
                return false;
            m_entry.begin(sizes, 0);
        }
        m_entry.type(text.at(0));
    } else {
        return false;
    }
    sizesTyped();
    return true;
}

void SketchCanvas::sizesTyped()
{
    if (const auto values = m_entry.values(m_tool->sizes()))
        take(m_tool->typed(*values, m_entry, hand()));
    emit hintsChanged();
    update();
}

bool SketchCanvas::focusNextPrevChild(bool next)
{
    if (!m_entry.isActive())
        return QWidget::focusNextPrevChild(next);
    m_entry.next(next ? 1 : -1);
    emit hintsChanged();
    update();
    return true;
}

void SketchCanvas::tapAtHand()
{
    if (!m_tool)
        return;
    take(m_tool->press(hand()));
    if (m_tool)
        take(m_tool->release(hand()));
}

void SketchCanvas::keepHandInView()
{
    constexpr double kMargin = 24.0;
    const QRectF room =
        QRectF(rect()).adjusted(rulerWidth() + kMargin, rulerWidth() + kMargin, -kMargin, -kMargin);
    const QPointF inside(std::clamp(m_at.x(), room.left(), std::max(room.left(), room.right())),
                         std::clamp(m_at.y(), room.top(), std::max(room.top(), room.bottom())));
    if (inside == m_at)
        return;
    m_view.pan(inside - m_at);
    m_at = inside;
    viewChanged();
}

bool SketchCanvas::moveHandBy(const QKeyEvent& event)
{
    geometry::Vector by;
    switch (event.key()) {
    case Qt::Key_Left:
        by.x = -1.0;
        break;
    case Qt::Key_Right:
        by.x = 1.0;
        break;
    case Qt::Key_Up:
        by.y = 1.0;
        break;
    case Qt::Key_Down:
        by.y = -1.0;
        break;
    default:
        return false;
    }
    if (!m_handKnown)
        m_at = QRectF(rect()).center();
    m_handByKeys = true;
    const double step = stepOf(event.modifiers());
    const geometry::Point place = m_view.toSheet(m_at);
    const geometry::Point to{std::round(place.x) + by.x * step, std::round(place.y) + by.y * step};
    handOver(m_view.toScreen(to), {});
    keepHandInView();
    if (m_tool)
        take(m_tool->move(hand(), m_pressed));
    update();
    return true;
}

void SketchCanvas::keyPressEvent(QKeyEvent* event)
{
    m_keys = event->modifiers();
    if (event->key() == Qt::Key_Space) {
        if (!event->isAutoRepeat()) {
            m_spaceHeld = true;
            m_spacePanned = false;
            setCursor(Qt::OpenHandCursor);
        }
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        if (m_entry.isActive())
            m_entry.clear();
        if (m_tool)
            take(m_tool->cancel());
        return;
    }
    if (typeSize(*event))
        return;
    if (m_tool && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        take(m_tool->confirm(hand()));
        return;
    }
    if (m_tool) {
        Verdict verdict = m_tool->key(*event, hand());
        if (verdict.kind != VerdictKind::Nothing) {
            take(std::move(verdict));
            return;
        }
    }
    if (moveHandBy(*event))
        return;
    if (m_commands && m_commands(*event))
        return;
    QWidget::keyPressEvent(event);
}

void SketchCanvas::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        const bool tapped = m_spaceHeld && !m_spacePanned && !m_panning;
        m_spaceHeld = false;
        if (m_tool)
            setCursor(m_tool->cursor(hand()));
        if (tapped)
            tapAtHand();
        return;
    }
    QWidget::keyReleaseEvent(event);
}

void SketchCanvas::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void SketchCanvas::focusOutEvent(QFocusEvent* event)
{
    m_spaceHeld = false;
    QWidget::focusOutEvent(event);
    update();
}

void SketchCanvas::fit()
{
    const model::Sheet* sheet = m_desk.sheetInView();
    geometry::Box box;
    for (const model::Joint& joint : m_desk.sketch().joints)
        if (joint.sheet == m_desk.sheet())
            box.add(geometry::outline(joint.shape).bounds());
    if (sheet != nullptr) {
        for (const geometry::FreePath& line : sheet->outlines)
            box.add(geometry::outline(line).bounds());
        if (box.isEmpty() || sheet->underlay) {
            box.add(geometry::Point{-sheet->width / 2.0, -sheet->height / 2.0});
            box.add(geometry::Point{sheet->width / 2.0, sheet->height / 2.0});
        }
    }
    const double left = rulerWidth();
    m_view.fit(box, QRectF(rect()).adjusted(left + 30.0, left + 44.0, -kRoomForFigures, -64.0));
    m_fitted = true;
    viewChanged();
}

void SketchCanvas::zoom(double factor)
{
    m_view.zoomAt(QRectF(rect()).center(), factor);
    viewChanged();
}

void SketchCanvas::setShowsRulers(bool shows)
{
    m_rulers = shows;
    update();
}

void SketchCanvas::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_layerStale = true;
    if (!m_fitted || !event->oldSize().isValid() || m_tool == nullptr)
        fit();
    else
        m_view.pan(QPointF(event->size().width() - event->oldSize().width(),
                           event->size().height() - event->oldSize().height()) /
                   2.0);
}

void SketchCanvas::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        m_layerStale = true;
    QWidget::changeEvent(event);
}

void SketchCanvas::sketchChanged()
{
    m_drawnScale = 0.0;
    m_layerStale = true;
    describe();
    update();
}

void SketchCanvas::viewChanged()
{
    m_rest.start();
    update();
}

void SketchCanvas::describe()
{
    const model::Sheet* sheet = m_desk.sheetInView();
    if (sheet == nullptr) {
        setAccessibleDescription(tr("no sheet"));
        return;
    }
    const model::Joint* joint = m_desk.chosenJoint();
    const auto count = m_desk.sketch().jointsOn(sheet->id).size();
    QString text =
        (count == 1 ? tr("Sheet %1, 1 joint.")
                    : tr("Sheet %1, %2 joints.").replace(QLatin1String("%2"), QString::number(count)))
            .arg(QString::fromStdString(sheet->name));
    if (const model::TestPoint* point = m_desk.sketch().point(m_desk.chosenPoint()))
        text += tr(" Chosen: point %1, %2.")
                    .arg(point->number)
                    .arg(render::inWords(model::placeText(m_desk.sketch(), *point)));
    else if (joint != nullptr)
        text += tr(" Chosen: %1.").arg(QString::fromStdString(joint->name));
    if (const QString own = m_tool ? m_tool->spoken() : QString(); !own.isEmpty())
        text += QLatin1Char(' ') + own;
    if (text == accessibleDescription())
        return;
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

} // namespace sealwalk::ui
