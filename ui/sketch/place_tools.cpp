// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/place_tools.h"

#include "core/editing/points.h"
#include "ui/sketch/draw_tool.h"
#include "ui/sketch/hit.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

namespace sealwalk::ui {

namespace {

Result<JointHit> under(const SketchDesk& desk, const Hand& hand)
{
    if (const auto found = jointNear(desk.sketch(), desk.sheet(), hand.place, 2.0 * hand.reach))
        return *found;
    return fail(ErrorCode::BadInput,
                SketchWords::tr("There is no joint under the cursor; put it on a joint.").toStdString());
}

} // namespace

Result<editing::Edit> addPointAt(const SketchDesk& desk, const Hand& hand)
{
    const Result<JointHit> hit = under(desk, hand);
    if (!hit)
        return fail(hit.error());
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
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Result<editing::Edit> SpotTool::drawing(const Hand& hand)
{
    SnapWish wish;
    wish.reach = hand.reach;
    wish.grid = hand.grid;
    wish.off = hand.alt();
    const Snapped snapped = m_snapper.snap(hand.place, wish);
    m_guides = snapped.guides;
    editing::Laying one;
    one.number = 1;
    return editing::addJoint(desk().sketch(), newJoint(desk(), m_joint, geometry::Spot{snapped.place, 12.0}),
                             one);
}

Verdict SpotTool::press(const Hand& hand)
{
    m_snapper = Snapper(desk().sketch(), desk().sheet(), {});
    m_pending = drawing(hand);
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
    return press(hand);
}

QString AddPointTool::title() const
{
    return SketchWords::tr("Add a point");
}

std::vector<KeyHint> AddPointTool::hints() const
{
    return {{SketchWords::tr("click"), SketchWords::tr("on a joint")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict AddPointTool::press(const Hand& hand)
{
    m_pending = addPointAt(desk(), hand);
    return commitPending();
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
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict SplitTool::press(const Hand& hand)
{
    m_pending = splitAt(desk(), hand);
    return commitPending();
}

Verdict SplitTool::move(const Hand& hand, bool)
{
    m_pending = splitAt(desk(), hand);
    return changed();
}

} // namespace sealwalk::ui
