// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/place_tools.h"

#include "core/editing/points.h"
#include "ui/sketch/draw_tool.h"
#include "ui/sketch/hit.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

Result<JointHit> under(const SketchDesk& desk, const Hand& hand)
{
    if (const auto found = jointNear(desk.sketch(), desk.sheet(), hand.place, 2.0 * hand.reach))
        return *found;
    return fail(ErrorCode::BadInput,
                SketchWords::tr("There is no joint under the cursor; put it on a joint.").toStdString());
}

constexpr double kOnePlace = 0.5; // mm; nobody sprays two points that close

/// The spot of a sheet that is at a place already; nullptr: none.
const model::Joint* spotAt(const SketchDesk& desk, geometry::Point place)
{
    for (const model::Joint* joint : desk.sketch().jointsOn(desk.sheet())) {
        const auto* spot = std::get_if<geometry::Spot>(&joint->shape);
        if (spot == nullptr || geometry::distance(spot->centre, place) >= kOnePlace)
            continue;
        const auto points = desk.sketch().pointsOn(joint->id);
        if (points.empty() || std::any_of(points.begin(), points.end(),
                                          [](const model::TestPoint* point) { return !point->retired; }))
            return joint;
    }
    return nullptr;
}

Verdict done()
{
    return {VerdictKind::Done, std::nullopt, {}};
}

} // namespace

Result<editing::Edit> addPointAt(const SketchDesk& desk, const Hand& hand)
{
    const Result<JointHit> hit = under(desk, hand);
    if (!hit)
        return fail(hit.error());
    const model::Joint* joint = desk.sketch().joint(hit->joint);
    const double length = joint == nullptr ? 0.0 : geometry::outline(joint->shape).length();
    for (const model::TestPoint* point : desk.sketch().pointsOn(hit->joint)) {
        const double apart = std::abs(point->along - hit->along);
        if (!point->retired && length > 0.0 && std::min(apart, 1.0 - apart) * length < kOnePlace)
            return fail(ErrorCode::BadInput,
                        SketchWords::tr("Point %1 is there already.").arg(point->number).toStdString());
    }
    return editing::addPoint(desk.sketch(), hit->joint, hit->along);
}

Result<editing::Edit> splitAt(const SketchDesk& desk, const Hand& hand)
{
    const Result<JointHit> hit = under(desk, hand);
    if (!hit)
        return fail(hit.error());
    return editing::splitStretch(desk.sketch(), hit->joint, hit->along, desk.withReadings());
}

QString SpotTool::title() const
{
    return SketchWords::tr("Spot");
}

std::vector<KeyHint> SpotTool::hints() const
{
    return {{SketchWords::tr("click"), SketchWords::tr("place it with its point")},
            {SketchWords::tr("Enter"), SketchWords::tr("done")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Result<editing::Edit> SpotTool::drawing(const Hand& hand)
{
    SnapWish wish;
    wish.reach = hand.reach;
    wish.grid = hand.grid;
    wish.off = hand.alt() || hand.byKeys;
    const Snapped snapped = m_snapper.snap(hand.place, wish);
    m_guides = snapped.guides;
    if (const model::Joint* there = spotAt(desk(), snapped.place))
        return fail(ErrorCode::BadInput, SketchWords::tr("%1 is there already; put this one beside it.")
                                             .arg(QString::fromStdString(there->name))
                                             .toStdString());
    editing::Laying one;
    one.number = 1;
    return editing::addJoint(desk().sketch(), newJoint(desk(), m_joint, geometry::Spot{snapped.place, 12.0}),
                             one);
}

Verdict SpotTool::press(const Hand& hand)
{
    m_snapper = Snapper(desk().sketch(), desk().sheet(), {});
    m_pending = drawing(hand);
    if (!*m_pending)
        return commitPending(); // says why not
    m_placed = true;
    const model::JointId drawn = m_joint;
    m_joint = model::JointId::create();
    return commitPending({drawn});
}

Verdict SpotTool::move(const Hand& hand, bool)
{
    m_snapper = Snapper(desk().sketch(), desk().sheet(), {});
    m_pending = drawing(hand);
    return changed();
}

Verdict SpotTool::confirm(const Hand& hand)
{
    return m_placed ? done() : press(hand);
}

QString AddPointTool::title() const
{
    return SketchWords::tr("Add a point");
}

std::vector<KeyHint> AddPointTool::hints() const
{
    return {{SketchWords::tr("click"), SketchWords::tr("on a joint")},
            {SketchWords::tr("Enter"), SketchWords::tr("done")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict AddPointTool::press(const Hand& hand)
{
    m_pending = addPointAt(desk(), hand);
    m_placed = m_placed || m_pending->has_value();
    return commitPending();
}

Verdict AddPointTool::confirm(const Hand& hand)
{
    return m_placed ? done() : press(hand);
}

Verdict AddPointTool::move(const Hand& hand, bool)
{
    m_pending = addPointAt(desk(), hand);
    return changed();
}

QString SplitTool::title() const
{
    return SketchWords::tr("Split a stretch");
}

std::vector<KeyHint> SplitTool::hints() const
{
    return {{SketchWords::tr("click"), SketchWords::tr("where the stretch is to be cut")},
            {SketchWords::tr("Enter"), SketchWords::tr("done")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict SplitTool::press(const Hand& hand)
{
    m_pending = splitAt(desk(), hand);
    m_placed = m_placed || m_pending->has_value();
    return commitPending();
}

Verdict SplitTool::confirm(const Hand& hand)
{
    return m_placed ? done() : press(hand);
}

Verdict SplitTool::move(const Hand& hand, bool)
{
    m_pending = splitAt(desk(), hand);
    return changed();
}

} // namespace sealwalk::ui
