// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/select_tool.h"

#include "core/editing/body.h"
#include "core/editing/points.h"
#include "ui/sketch/overlay_painter.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::ui {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kTurnStep = 15.0 * kDegree;

/// The place of a shape that snaps when it is moved: its middle, or its first node.
geometry::Point heldPlace(const geometry::Shape& shape)
{
    if (const auto* free = std::get_if<geometry::FreePath>(&shape))
        return free->nodes.front();
    return geometry::outline(shape).bounds().centre();
}

} // namespace

QString SelectTool::title() const
{
    const auto place = nodePlace();
    if (!place)
        return SketchWords::tr("Select");
    return SketchWords::tr("Node %1 of %2, at %3 across, %4 up")
        .arg(*node() + 1)
        .arg(nodeLine()->nodes.size())
        .arg(millimetresText(place->x), millimetresText(place->y));
}

std::vector<KeyHint> SelectTool::hints() const
{
    if (!desk().chosenPoint().isNil())
        return {{SketchWords::tr("drag"), SketchWords::tr("move along the joint")},
                {QStringLiteral("X"), SketchWords::tr("split")},
                {SketchWords::tr("Del"), SketchWords::tr("retire")},
                {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
    if (node())
        return {{QStringLiteral("E"), SketchWords::tr("next node")},
                {SketchWords::tr("arrows"), SketchWords::tr("1 mm, Shift 10 mm")},
                {QStringLiteral("0–9 −"), SketchWords::tr("type its place")},
                {SketchWords::tr("Ins"), SketchWords::tr("a node more")},
                {SketchWords::tr("Del"), SketchWords::tr("take it out")},
                {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
    if (desk().chosen().empty())
        return {{SketchWords::tr("click"), SketchWords::tr("a joint or point")},
                {SketchWords::tr("drag"), SketchWords::tr("a frame round several")},
                {SketchWords::tr("wheel"), SketchWords::tr("zoom")},
                {SketchWords::tr("Space+drag"), SketchWords::tr("pan")}};
    return {{SketchWords::tr("drag"), SketchWords::tr("move")},
            {SketchWords::tr("arrows"), SketchWords::tr("1 mm, Shift 10 mm")},
            {QStringLiteral("0–9"), SketchWords::tr("type a size")},
            {QStringLiteral("[ ]"), SketchWords::tr("turn")},
            {QStringLiteral("M"), SketchWords::tr("mirror")},
            {SketchWords::tr("Enter"), SketchWords::tr("lay points")}};
}

std::optional<Handle> SelectTool::handleUnder(const Hand& hand) const
{
    const model::Joint* joint = desk().chosenJoint();
    if (joint == nullptr || joint->locked || !desk().isOpenForWork())
        return std::nullopt;
    std::optional<Handle> best;
    double nearest = 1.2 * hand.reach;
    for (const Handle& handle : handlesOf(joint->shape, air(hand)))
        if (const double off = geometry::distance(handle.place, hand.place); off <= nearest) {
            nearest = off;
            best = handle;
        }
    return best;
}

Qt::CursorShape SelectTool::cursor(const Hand& hand) const
{
    if (m_doing == Doing::Moving && m_moved)
        return Qt::SizeAllCursor;
    if (const auto handle = handleUnder(hand)) {
        if (handle->what == Handle::What::Turn)
            return Qt::PointingHandCursor;
        if (handle->what != Handle::What::Side)
            return Qt::SizeAllCursor;
        if (handle->x == 0)
            return Qt::SizeVerCursor;
        if (handle->y == 0)
            return Qt::SizeHorCursor;
        return handle->x == handle->y ? Qt::SizeBDiagCursor : Qt::SizeFDiagCursor;
    }
    if (jointNear(desk().sketch(), desk().sheet(), hand.place, hand.reach))
        return Qt::PointingHandCursor;
    return Qt::ArrowCursor;
}

void SelectTool::pickJoint(const Hand& hand, model::JointId id)
{
    std::vector<model::JointId> ids = hand.alt() ? std::vector{id} : desk().withGroup(id);
    if (hand.shift() || hand.control()) {
        std::vector<model::JointId> chosen = desk().chosen();
        if (desk().isChosen(id))
            std::erase_if(
                chosen, [&](model::JointId j) { return std::find(ids.begin(), ids.end(), j) != ids.end(); });
        else
            chosen.insert(chosen.end(), ids.begin(), ids.end());
        desk().choose(std::move(chosen));
    } else if (!desk().isChosen(id) || !desk().chosenPoint().isNil()) {
        desk().choose(std::move(ids));
    }
}

Verdict SelectTool::press(const Hand& hand)
{
    m_from = m_to = hand.place;
    m_moved = false;
    m_pending.reset();
    m_oldPlace.reset();
    m_doing = Doing::Nothing;
    m_nodeOf = {};
    if (const auto handle = handleUnder(hand)) {
        m_handle = *handle;
        if (handle->what == Handle::What::Node) { // the keys go on with it
            m_nodeOf = desk().chosenJoint()->id;
            m_node = handle->node;
        }
        m_doing = handle->what == Handle::What::Turn ? Doing::Turning : Doing::Reshaping;
        m_snapper = Snapper(desk().sketch(), desk().sheet(), desk().chosen());
        return changed();
    }
    const auto point =
        pointNear(desk().sketch(), desk().sheet(), hand.place, hand.reach, desk().showsRetired());
    if (point && !hand.shift() && !hand.control()) {
        desk().choosePoint(*point);
        m_oldPlace = model::placeOf(desk().sketch(), *point);
        const model::TestPoint* taken = desk().sketch().point(*point);
        const model::Joint* joint = taken == nullptr ? nullptr : desk().sketch().joint(taken->joint);
        // The point of a spot has nowhere to go along it: the hand means the spot.
        const bool isSpot = joint != nullptr && std::holds_alternative<geometry::Spot>(joint->shape);
        m_doing = isSpot ? Doing::Moving : Doing::MovingPoint;
        if (isSpot)
            m_snapper = Snapper(desk().sketch(), desk().sheet(), desk().chosen());
        return changed();
    }
    if (const auto hit = jointNear(desk().sketch(), desk().sheet(), hand.place, hand.reach)) {
        pickJoint(hand, hit->joint);
        m_doing = desk().isChosen(hit->joint) ? Doing::Moving : Doing::Nothing;
        m_snapper = Snapper(desk().sketch(), desk().sheet(), desk().chosen());
        return changed();
    }
    if (!hand.shift() && !hand.control())
        desk().chooseNothing();
    m_doing = Doing::Framing;
    return changed();
}

Verdict SelectTool::move(const Hand& hand, bool pressed)
{
    if (!pressed || m_doing == Doing::Nothing)
        return {};
    m_to = hand.place;
    if (!m_moved && geometry::distance(m_from, m_to) < 0.5 * hand.reach)
        return {};
    if (!m_moved && m_doing != Doing::Framing && !desk().isOpenForWork())
        return {};
    m_moved = true;
    switch (m_doing) {
    case Doing::Moving:
        moveJoints(hand);
        break;
    case Doing::Reshaping:
        reshapeJoint(hand);
        break;
    case Doing::Turning:
        turnJoints(hand);
        break;
    case Doing::MovingPoint:
        movePoint(hand);
        break;
    case Doing::Framing:
    case Doing::Nothing:
        break;
    }
    return changed();
}

void SelectTool::moveJoints(const Hand& hand)
{
    geometry::Vector by = hand.place - m_from;
    if (hand.shift()) // straight along one axis
        (std::abs(by.x) > std::abs(by.y) ? by.y : by.x) = 0.0;
    const model::Joint* held = desk().sketch().joint(desk().chosen().front());
    if (held != nullptr && !hand.alt()) {
        const geometry::Point was = heldPlace(held->shape);
        SnapWish wish;
        wish.reach = hand.reach;
        wish.grid = hand.grid;
        const Snapped snapped = m_snapper.snap(was + by, wish);
        m_guides = snapped.guides;
        const geometry::Vector taken = snapped.place - was;
        by =
            hand.shift() ? geometry::Vector{by.x != 0.0 ? taken.x : 0.0, by.y != 0.0 ? taken.y : 0.0} : taken;
    }
    m_pending = editing::move(desk().sketch(), desk().chosen(), by);
}

void SelectTool::reshapeJoint(const Hand& hand)
{
    const model::Joint* joint = desk().chosenJoint();
    if (joint == nullptr)
        return;
    geometry::Point to = hand.place;
    const double off = m_handle.what == Handle::What::Side ? air(hand) : 0.0;
    if (!hand.alt() && m_handle.what != Handle::What::Corner) {
        SnapWish wish;
        wish.reach = hand.reach;
        wish.grid = hand.grid;
        const geometry::Vector out =
            off * geometry::Vector{static_cast<double>(m_handle.x), static_cast<double>(m_handle.y)};
        const Snapped snapped = m_snapper.snap(to - out, wish);
        m_guides = snapped.guides;
        to = snapped.place + out;
    }
    m_pending =
        editing::reshape(desk().sketch(), joint->id, reshaped(joint->shape, m_handle, to, off, hand.shift()));
}

geometry::Point SelectTool::pivot() const
{
    geometry::Box box;
    for (const model::JointId id : desk().chosen())
        if (const model::Joint* joint = desk().sketch().joint(id))
            box.add(geometry::outline(joint->shape).bounds());
    return box.centre();
}

void SelectTool::turnJoints(const Hand& hand)
{
    const geometry::Point middle = pivot();
    const geometry::Vector was = m_from - middle;
    const geometry::Vector is = hand.place - middle;
    double angle = std::atan2(is.y, is.x) - std::atan2(was.y, was.x);
    if (!hand.alt()) {
        const double step = hand.shift() ? kTurnStep : kDegree;
        angle = std::round(angle / step) * step;
    }
    m_pending = editing::rotate(desk().sketch(), desk().chosen(), middle, angle);
}

void SelectTool::movePoint(const Hand& hand)
{
    const model::TestPoint* point = desk().sketch().point(desk().chosenPoint());
    const model::Joint* joint = point == nullptr ? nullptr : desk().sketch().joint(point->joint);
    if (joint == nullptr)
        return;
    const geometry::Path path = geometry::outline(joint->shape);
    if (path.length() <= 0.0)
        return;
    const double along = path.nearest(hand.place).along / path.length();
    m_pending = editing::movePoint(desk().sketch(), point->id, std::clamp(along, 0.0, 1.0));
}

Verdict SelectTool::release(const Hand& hand)
{
    const Doing did = m_doing;
    m_doing = Doing::Nothing;
    m_oldPlace.reset();
    if (did == Doing::Framing) {
        if (m_moved) {
            std::vector<model::JointId> ids =
                jointsWithin(desk().sketch(), desk().sheet(), m_from, hand.place);
            if (hand.shift() || hand.control())
                for (const model::JointId id : desk().chosen())
                    if (std::find(ids.begin(), ids.end(), id) == ids.end())
                        ids.push_back(id);
            desk().choose(std::move(ids));
        }
        return changed();
    }
    if (m_moved && m_pending)
        return commitPending();
    m_pending.reset();
    if (did == Doing::Reshaping && !m_moved)
        choosePointOnNode(hand);
    return changed();
}

/// The end of a hose has a point on it: a click means the point, a second one the node.
void SelectTool::choosePointOnNode(const Hand& hand)
{
    const auto point =
        pointNear(desk().sketch(), desk().sheet(), hand.place, hand.reach, desk().showsRetired());
    const model::TestPoint* known = point ? desk().sketch().point(*point) : nullptr;
    if (m_nodeOf.isNil() || known == nullptr || known->joint != m_nodeOf)
        return;
    if (known->id == desk().chosenPoint()) {
        desk().choose({m_nodeOf});
        return;
    }
    m_nodeOf = {};
    desk().choosePoint(known->id);
}

Verdict SelectTool::doubleClick(const Hand& hand)
{
    // On the line of the one chosen free path: a node more. Else the single joint of a group.
    const model::Joint* joint = desk().chosenJoint();
    const auto hit = jointNear(desk().sketch(), desk().sheet(), hand.place, hand.reach);
    if (!hit)
        return {};
    const auto* free = joint == nullptr ? nullptr : std::get_if<geometry::FreePath>(&joint->shape);
    if (free == nullptr || hit->joint != joint->id || handleUnder(hand)) {
        desk().choose({hit->joint});
        return changed();
    }
    geometry::FreePath longer = *free;
    std::size_t best = longer.nodes.size();
    double nearest = 0.0;
    const std::size_t pieces = free->closed ? free->nodes.size() : free->nodes.size() - 1;
    for (std::size_t i = 0; i < pieces; ++i) {
        const geometry::Path piece({free->nodes[i], free->nodes[(i + 1) % free->nodes.size()]}, false);
        const double off = piece.nearest(hand.place).distance;
        if (best == longer.nodes.size() || off < nearest) {
            best = i;
            nearest = off;
        }
    }
    longer.nodes.insert(longer.nodes.begin() + static_cast<std::ptrdiff_t>(best) + 1, hand.place);
    m_pending = editing::reshape(desk().sketch(), joint->id, longer);
    return commitPending();
}

Verdict SelectTool::nudge(geometry::Vector by)
{
    if (const model::TestPoint* point = desk().sketch().point(desk().chosenPoint())) {
        // Along the joint: right and up go with the outline, left and down against it.
        const model::Joint* joint = desk().sketch().joint(point->joint);
        const geometry::Path path = geometry::outline(joint->shape);
        if (path.length() <= 0.0)
            return {};
        double along = point->along + (by.x + by.y) / path.length();
        along = path.isClosed() ? along - std::floor(along) : std::clamp(along, 0.0, 1.0);
        m_pending = editing::movePoint(desk().sketch(), point->id, along);
        return commitPending();
    }
    if (desk().chosen().empty())
        return {};
    m_pending = editing::move(desk().sketch(), desk().chosen(), by);
    return commitPending();
}

Verdict SelectTool::key(const QKeyEvent& event, const Hand& hand)
{
    const double step = stepOf(hand.keys);
    if (event.key() == Qt::Key_E && !hand.control())
        return stepNode(hand.shift() ? -1 : 1);
    if (node())
        if (Verdict verdict = nodeKey(event, step); verdict.kind != VerdictKind::Nothing)
            return verdict;
    switch (event.key()) {
    case Qt::Key_Left:
        return nudge({-step, 0.0});
    case Qt::Key_Right:
        return nudge({step, 0.0});
    case Qt::Key_Up:
        return nudge({0.0, step});
    case Qt::Key_Down:
        return nudge({0.0, -step});
    case Qt::Key_BracketLeft:
    case Qt::Key_BracketRight:
        if (desk().chosen().empty())
            return {};
        m_pending = editing::rotate(desk().sketch(), desk().chosen(), pivot(),
                                    event.key() == Qt::Key_BracketLeft ? kTurnStep : -kTurnStep);
        return commitPending();
    case Qt::Key_M:
        if (desk().chosen().empty())
            return {};
        m_pending = editing::mirror(desk().sketch(), desk().chosen(), pivot());
        return commitPending();
    default:
        return {};
    }
}

Verdict SelectTool::confirm(const Hand&)
{
    if (m_pending)
        return commitPending();
    const model::Joint* joint = desk().chosenJoint();
    if (joint == nullptr)
        return {};
    if (!desk().sketch().pointsOn(joint->id).empty()) {
        desk().say(Severity::News,
                   SketchWords::tr("There are points on it already; the panel at the right lays them anew."));
        return changed();
    }
    m_pending = editing::layPoints(desk().sketch(), joint->id, desk().laying(), desk().withReadings());
    return commitPending();
}

Verdict SelectTool::cancel()
{
    if (m_pending || m_doing != Doing::Nothing) {
        m_doing = Doing::Nothing;
        m_oldPlace.reset();
        return revert();
    }
    if (node()) {
        m_nodeOf = {};
        return changed();
    }
    if (!desk().chosenPoint().isNil()) {
        desk().choose(std::vector<model::JointId>(desk().chosen()));
        return changed();
    }
    if (!desk().chosen().empty()) {
        desk().chooseNothing();
        return changed();
    }
    return {VerdictKind::Done, std::nullopt, {}};
}

std::vector<Size> SelectTool::sizes() const
{
    if (const auto at = node()) {
        const geometry::Point place = nodeLine()->nodes[*at];
        return {{SketchWords::tr("across"), QStringLiteral("x"), place.x, false, true},
                {SketchWords::tr("up"), QStringLiteral("y"), place.y, false, true}};
    }
    const model::Joint* joint = desk().chosenJoint();
    return joint == nullptr || !desk().chosenPoint().isNil() ? std::vector<Size>{} : sizesOf(joint->shape);
}

Verdict SelectTool::typed(const std::vector<double>& values, const SizeEntry& entry, const Hand&)
{
    if (node() && values.size() == 2)
        return placeNode({values[0], values[1]});
    const model::Joint* joint = desk().chosenJoint();
    if (joint == nullptr)
        return {};
    m_pending = editing::reshapeWithBody(desk().sketch(), joint->id,
                                         withSizes(joint->shape, values, entry.wasTyped(2)));
    return changed();
}

std::optional<geometry::Box> SelectTool::frame() const
{
    if (m_doing != Doing::Framing || !m_moved)
        return std::nullopt;
    geometry::Box box;
    box.add(m_from);
    box.add(m_to);
    return box;
}

std::optional<geometry::Point> SelectTool::oldPlace() const
{
    return m_moved ? m_oldPlace : std::nullopt;
}

} // namespace sealwalk::ui
