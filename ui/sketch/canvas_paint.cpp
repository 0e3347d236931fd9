// SPDX-License-Identifier: GPL-3.0-or-later
// How the canvas paints: what stands still in one picture, what moves over it each time.
#include "core/editing/laying.h"
#include "ui/render/sheet_picture.h"
#include "ui/sketch/canvas.h"
#include "ui/sketch/rulers.h"
#include "ui/sketch/select_tool.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/underlay/underlay_images.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kHandleAir = 1.4 * 7.0; ///< px; SelectTool::air at this reach

constexpr int kLayerMargin = 200; ///< px that the picture of what stands still reaches beyond the window

template <class Item>
void addTouched(std::unordered_set<model::JointId>& touched, const editing::Step<Item>& step)
{
    if constexpr (std::is_same_v<Item, model::Joint>) {
        touched.insert(step.after ? step.after->id : step.before->id);
    } else if constexpr (std::is_same_v<Item, model::TestPoint>) {
        touched.insert(step.after ? step.after->joint : step.before->joint);
    }
}

void addTouched(std::unordered_set<model::JointId>&, const editing::LastNumberStep&) {}

std::unordered_set<model::JointId> touchedBy(const editing::Edit& edit)
{
    std::unordered_set<model::JointId> touched;
    for (const editing::AnyStep& step : edit.steps)
        std::visit([&](const auto& s) { addTouched(touched, s); }, step);
    return touched;
}

} // namespace

const std::vector<DrawnJoint>& SketchCanvas::drawn()
{
    if (m_drawnScale != m_view.scale()) {
        m_drawn = laidOut(m_desk.sketch(), m_desk.sheet(), m_view.scale());
        m_drawnScale = m_view.scale();
    }
    return m_drawn;
}

void SketchCanvas::paintLayer(QPainter& painter, const model::Sheet* sheet,
                              const std::unordered_set<model::JointId>& hidden)
{
    const bool same = !m_layerStale && m_layerHidden == hidden;
    const bool sameScale = same && m_layerScale == m_view.scale();
    const QPointF moved = m_view.origin() - m_layerOrigin;
    const bool covers =
        sameScale && std::abs(moved.x()) <= kLayerMargin && std::abs(moved.y()) <= kLayerMargin;
    if (!covers && !(same && m_rest.isActive())) {
        renewLayer(sheet, hidden);
    } else if (!covers) {
        // Still moving: the old picture, stretched. What it does not cover is paper.
        const render::Theme& theme = render::Theme::of(this);
        painter.fillRect(rect(), theme.colour(Role::Sheet));
        const double stretch = m_view.scale() / m_layerScale;
        painter.save();
        painter.translate(m_view.origin());
        painter.scale(stretch, stretch);
        painter.translate(-m_layerOrigin);
        painter.drawPixmap(QPointF(-kLayerMargin, -kLayerMargin), m_layer);
        painter.restore();
        return;
    }
    painter.drawPixmap(m_view.origin() - m_layerOrigin - QPointF(kLayerMargin, kLayerMargin), m_layer);
}

void SketchCanvas::renewLayer(const model::Sheet* sheet, const std::unordered_set<model::JointId>& hidden)
{
    const double ratio = devicePixelRatioF();
    const QSize size = this->size() + 2 * QSize(kLayerMargin, kLayerMargin);
    if (m_layer.size() != size * ratio) {
        m_layer = QPixmap(size * ratio);
        m_layer.setDevicePixelRatio(ratio);
    }
    m_layerOrigin = m_view.origin();
    m_layerScale = m_view.scale();
    m_layerHidden = hidden;
    m_layerStale = false;
    const render::Theme& theme = render::Theme::of(this);
    m_layer.fill(theme.colour(Role::Sheet));
    QPainter painter(&m_layer);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(m_view.origin() + QPointF(kLayerMargin, kLayerMargin));
    const QRectF visible =
        QRectF(QPointF(-kLayerMargin, -kLayerMargin), QSizeF(size)).translated(-m_view.origin());
    render::paintSheetGrid(painter, theme, visible, m_view.scale());
    if (sheet != nullptr) {
        painter.setPen(QPen(theme.colour(Role::Line), 1.0)); // how large the sheet was said to be
        painter.setBrush(Qt::NoBrush);
        const QSizeF edge = QSizeF(sheet->width, sheet->height) * m_view.scale();
        painter.drawRect(QRectF(QPointF(-edge.width() / 2.0, -edge.height() / 2.0), edge));
        m_images.paint(painter, theme, *sheet, m_view.scale());
        render::paintSheetOutlines(painter, theme, sheet->outlines, m_view.scale(), 1.2);
    }
    const JointLook look{false, m_desk.showsRetired(), 1.0};
    const auto shown = [&](const DrawnJoint& joint) {
        return !hidden.contains(joint.id) && joint.bounds.intersects(visible);
    };
    for (const DrawnJoint& joint : drawn())
        if (shown(joint))
            paintBand(painter, theme, joint, look);
    NameRoom names;
    for (const DrawnJoint& joint : drawn())
        if (shown(joint))
            paintMarks(painter, theme, joint, look, &names);
}

void SketchCanvas::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    std::unordered_set<model::JointId> touched;
    std::optional<model::Sketch> preview;
    const bool hasPending = m_tool && m_tool->pending() && m_tool->pending()->has_value();
    if (hasPending) {
        const editing::Edit& edit = **m_tool->pending();
        if (Result<model::Sketch> next = editing::after(m_desk.sketch(), edit, m_desk.withReadings())) {
            preview = std::move(*next);
            touched = touchedBy(edit);
        }
    }
    const model::Sketch& shown = preview ? *preview : m_desk.sketch();
    const model::Sheet* sheet = shown.sheet(m_desk.sheet());
    if (preview && sheet != nullptr && m_desk.sheetInView() != nullptr && *sheet != *m_desk.sheetInView())
        m_layerStale = true; // the sheet itself is being changed
    std::unordered_set<model::JointId> hidden = touched;
    hidden.insert(m_desk.chosen().begin(), m_desk.chosen().end());
    paintLayer(painter, sheet, hidden);
    painter.setRenderHint(QPainter::Antialiasing);
    if (sheet != nullptr)
        paintOverlay(painter, shown, touched);
    if (m_rulers)
        paintRulers(painter, theme, m_view, size(), m_at, rulerWidth());
    if (hasFocus()) {
        painter.setPen(QPen(theme.colour(Role::Accent), 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0));
    }
    if (preview && sheet != nullptr && m_desk.sheetInView() != nullptr && *sheet != *m_desk.sheetInView())
        m_layerStale = true;
}

void SketchCanvas::paintOverlay(QPainter& painter, const model::Sketch& shown,
                                const std::unordered_set<model::JointId>& touched)
{
    const render::Theme& theme = render::Theme::of(this);
    // chosen and moving joints, in front of the others
    std::unordered_set<model::JointId> front = touched;
    front.insert(m_desk.chosen().begin(), m_desk.chosen().end());
    const JointLook look{true, m_desk.showsRetired(), 1.0};
    painter.save();
    painter.translate(m_view.origin());
    std::vector<DrawnJoint> joints;
    std::vector<const model::TestPoint*> points;
    for (const model::Joint& joint : shown.joints) {
        if (!front.contains(joint.id) || joint.sheet != m_desk.sheet())
            continue;
        points.clear();
        for (const model::TestPoint& point : shown.points)
            if (point.joint == joint.id)
                points.push_back(&point);
        joints.push_back(laidOut(shown, joint, points, m_view.scale()));
    }
    for (const DrawnJoint& joint : joints)
        paintBand(painter, theme, joint, look);
    for (const DrawnJoint& joint : joints)
        paintMarks(painter, theme, joint, look);
    painter.restore();

    OverlayPainter overlay(painter, theme, m_view);
    m_plates.clear();
    if (m_tool)
        overlay.guides(m_tool->guides());
    const model::Joint* chosen =
        m_desk.chosenJoint() == nullptr ? nullptr : shown.joint(m_desk.chosenJoint()->id);
    const std::optional<geometry::Shape> sized = m_tool ? m_tool->sizedShape() : std::nullopt;
    if (sized)
        m_plates = overlay.dimensions(*sized, m_entry);
    else if (chosen != nullptr)
        paintChosen(painter, shown, *chosen);
    if (m_entry.isActive() && m_plates.empty() && m_tool)
        overlay.typedBeside(m_tool->sizesPlace() ? m_view.toScreen(*m_tool->sizesPlace()) : m_at,
                            m_tool->sizes(), m_entry);
    if (const auto* select = dynamic_cast<const SelectTool*>(m_tool.get())) {
        if (const auto frame = select->frame())
            overlay.frame(*frame);
        if (const auto old = select->oldPlace())
            overlay.ringAt(*old);
        if (const auto node = select->nodePlace())
            overlay.nodeAt(*node);
    }
    if (const model::TestPoint* point = shown.point(m_desk.chosenPoint())) {
        if (const auto place = model::placeOf(shown, point->id)) {
            painter.setPen(QPen(theme.colour(Role::Accent), 2.0));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(m_view.toScreen(*place), 8.0, 8.0);
        }
    }
    if (m_handByKeys && hasFocus())
        overlay.crossHair(m_view.toSheet(m_at));
    const model::Sheet& sheet = *shown.sheet(m_desk.sheet());
    report::MapContent where;
    where.upDirection = sheet.upDirection;
    where.seenFromAbove = sheet.seenFromAbove;
    render::paintScaleBar(painter, theme, QPointF(rulerWidth() + 20.0, height() - 18.0), m_view.scale(),
                          render::BandStyle::screen(), where);
}

void SketchCanvas::paintChosen(QPainter& painter, const model::Sketch& shown, const model::Joint& joint)
{
    const render::Theme& theme = render::Theme::of(this);
    OverlayPainter overlay(painter, theme, m_view);
    const std::vector<const model::TestPoint*> points = shown.pointsOn(joint.id);
    const bool spot = std::holds_alternative<geometry::Spot>(joint.shape);
    if (!spot) {
        if (points.empty())
            if (const Result<int> count = editing::countOn(joint, m_desk.laying()))
                overlay.ghostPoints(joint, *count);
        const bool closed = geometry::outline(joint.shape).isClosed();
        const QString sense = !closed           ? tr("starts here")
                              : joint.clockwise ? tr("starts here, clockwise")
                                                : tr("starts here, the other way");
        overlay.startAndSense(joint, sense);
    }
    if (!joint.locked && m_desk.isOpenForWork())
        overlay.handles(joint.shape, kHandleAir);
    const bool typedHere = m_tool && m_tool->sizesAreOfChosen();
    m_plates = overlay.dimensions(joint.shape, typedHere ? m_entry : SizeEntry());
    if (!typedHere || !m_desk.isOpenForWork() || joint.locked)
        m_plates.clear(); // shown, not to be typed over
}

} // namespace sealwalk::ui
