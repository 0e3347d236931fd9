// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/draw_tool.h"

#include "core/editing/body.h"
#include "core/editing/gestures.h"
#include "ui/sketch/joint_painter.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr double kUsualRing = 50.0;   ///< mm
constexpr double kUsualBox = 300.0;   ///< mm
constexpr double kCornerShare = 0.12; ///< of the shorter side, until it is typed or dragged

/// Its kind, in the window's language: whoever draws reads it.
std::string usualName(model::JointKind kind)
{
    QString name = nameOf(kind);
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return name.toStdString();
}

} // namespace

model::Joint newJoint(const SketchDesk& desk, model::JointId id, const geometry::Shape& shape,
                      std::optional<model::JointKind> kind)
{
    model::Joint joint;
    joint.id = id;
    joint.sheet = desk.sheet();
    joint.kind = kind.value_or(desk.kindFor(shape));
    joint.shape = shape;
    joint.name =
        editing::freeName(desk.sketch(), desk.nextName().empty() ? usualName(joint.kind) : desk.nextName());
    joint.isSetup = desk.nextIsSetup();
    joint.requiredConditions = editing::usualConditions(joint.kind);
    return joint;
}

const model::Joint* DrawTool::fresh() const
{
    return m_fresh.isNil() ? nullptr : desk().sketch().joint(m_fresh);
}

void DrawTool::draw(const geometry::Shape& shape)
{
    m_shape = shape;
    m_pending = drawing(newJoint(desk(), m_joint, shape), m_withBody);
}

Verdict DrawTool::press(const Hand& hand)
{
    m_fresh = {};
    m_snapper = Snapper(desk().sketch(), desk().sheet(), {});
    SnapWish wish;
    wish.reach = hand.reach;
    wish.grid = hand.grid;
    wish.off = hand.alt() || hand.byKeys;
    m_from = m_snapper.snap(hand.place, wish).place;
    m_joint = model::JointId::create();
    m_dragging = false;
    m_placed = false;
    m_shape.reset();
    m_pending.reset();
    return changed();
}

Verdict DrawTool::move(const Hand& hand, bool pressed)
{
    if (!pressed || !m_from)
        return {};
    if (geometry::distance(*m_from, hand.place) < hand.reach && !m_dragging)
        return {};
    m_dragging = true;
    draw(dragged(*m_from, hand));
    return changed();
}

Verdict DrawTool::release(const Hand&)
{
    if (!m_from)
        return {};
    if (!m_dragging) {
        // A click places the middle; sizes are typed, or Enter takes the usual ones.
        m_placed = true;
        draw(usual(*m_from));
        return changed();
    }
    m_from.reset();
    m_dragging = false;
    m_shape.reset();
    m_fresh = m_joint;
    return commitPending({m_fresh});
}

Verdict DrawTool::confirm(const Hand&)
{
    if (m_pending && m_shape) {
        m_from.reset();
        m_placed = false;
        m_shape.reset();
        m_fresh = m_joint;
        return commitPending({m_fresh});
    }
    if (m_pending) // sizes typed over what was just drawn
        return commitPending();
    return layOn(fresh());
}

Verdict DrawTool::cancel()
{
    const bool nothing = !m_from && !m_pending;
    m_from.reset();
    m_dragging = false;
    m_placed = false;
    m_shape.reset();
    m_fresh = {};
    if (nothing)
        return {VerdictKind::Done, std::nullopt, {}};
    return revert();
}

std::vector<Size> DrawTool::sizes() const
{
    if (m_shape)
        return sizesOf(*m_shape);
    if (const model::Joint* joint = fresh())
        return sizesOf(joint->shape);
    return sizesOf(usual({}));
}

Verdict DrawTool::typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand)
{
    if (const model::Joint* joint = fresh(); joint != nullptr && !m_shape) {
        m_pending = editing::reshapeWithBody(desk().sketch(), joint->id,
                                             withSizes(joint->shape, values, entry.wasTyped(2)));
        return changed();
    }
    if (!m_shape) {
        m_joint = model::JointId::create();
        m_from = hand.place;
        m_placed = true;
        m_shape = usual(hand.place);
    }
    draw(withSizes(*m_shape, values, entry.wasTyped(2)));
    return changed();
}

std::optional<geometry::Shape> DrawTool::sizedShape() const
{
    return m_shape;
}

Verdict DrawTool::key(const QKeyEvent& event, const Hand&)
{
    if (event.key() != Qt::Key_F)
        return {};
    m_withBody = !m_withBody;
    if (m_shape)
        draw(*m_shape);
    return changed();
}

QString RingTool::title() const
{
    return withBody() ? SketchWords::tr("Ring with its flange") : SketchWords::tr("Ring");
}

std::vector<KeyHint> RingTool::hints() const
{
    return {{SketchWords::tr("drag"), SketchWords::tr("middle to rim")},
            {QStringLiteral("0–9"), SketchWords::tr("type the diameter")},
            {QStringLiteral("F"),
             withBody() ? SketchWords::tr("without flange") : SketchWords::tr("with its flange")},
            {SketchWords::tr("Enter"), SketchWords::tr("lay points")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

geometry::Shape RingTool::dragged(geometry::Point from, const Hand& to)
{
    SnapWish wish;
    wish.reach = to.reach;
    wish.grid = 0.0;
    wish.off = to.alt() || to.byKeys;
    const Snapped snapped = snapper().snap(to.place, wish);
    setSnapped(snapped);
    double radius = geometry::distance(from, snapped.place);
    if (!to.alt())
        radius = std::round(2.0 * radius / to.grid) * to.grid / 2.0;
    return geometry::Ring{from, radius};
}

geometry::Shape RingTool::usual(geometry::Point centre) const
{
    return geometry::Ring{centre, kUsualRing};
}

Result<editing::Edit> RingTool::drawing(const model::Joint& joint, bool body) const
{
    if (!body)
        return editing::addJoint(desk().sketch(), joint);
    const auto& ring = std::get<geometry::Ring>(joint.shape);
    editing::Flange flange;
    flange.joint = joint;
    flange.outerRadius = ring.radius * 1.5;
    flange.bolts = joint.kind == model::JointKind::ClampedFlange ? 0 : 8;
    flange.laying.reset();
    return editing::drawFlange(desk().sketch(), flange);
}

QString BoxTool::title() const
{
    return withBody() ? SketchWords::tr("Rounded rectangle with its door")
                      : SketchWords::tr("Rounded rectangle");
}

std::vector<KeyHint> BoxTool::hints() const
{
    return {{SketchWords::tr("drag"), SketchWords::tr("corner to corner")},
            {SketchWords::tr("Shift"), SketchWords::tr("square")},
            {QStringLiteral("0–9"), SketchWords::tr("type a size")},
            {QStringLiteral("F"),
             withBody() ? SketchWords::tr("without door") : SketchWords::tr("with its door")},
            {SketchWords::tr("Enter"), SketchWords::tr("lay points")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

geometry::Shape BoxTool::dragged(geometry::Point from, const Hand& to)
{
    SnapWish wish;
    wish.reach = to.reach;
    wish.grid = to.grid;
    wish.off = to.alt() || to.byKeys;
    const Snapped snapped = snapper().snap(to.place, wish);
    setSnapped(snapped);
    geometry::Vector way = snapped.place - from;
    if (to.shift()) {
        const double side = std::max(std::abs(way.x), std::abs(way.y));
        way = {std::copysign(side, way.x), std::copysign(side, way.y)};
    }
    const double w = std::abs(way.x);
    const double h = std::abs(way.y);
    const double corner = std::round(kCornerShare * std::min(w, h));
    return geometry::RoundedRectangle{from + 0.5 * way, w, h, std::min(corner, std::min(w, h) / 2.0), 0.0};
}

geometry::Shape BoxTool::usual(geometry::Point centre) const
{
    return geometry::RoundedRectangle{centre, kUsualBox, kUsualBox, std::round(kCornerShare * kUsualBox),
                                      0.0};
}

Result<editing::Edit> BoxTool::drawing(const model::Joint& joint, bool body) const
{
    if (!body)
        return editing::addJoint(desk().sketch(), joint);
    editing::Door door;
    door.joint = joint;
    const auto& box = std::get<geometry::RoundedRectangle>(joint.shape);
    door.margin = 0.08 * std::min(box.width, box.height);
    door.laying.reset();
    return editing::drawDoor(desk().sketch(), door);
}

} // namespace sealwalk::ui
