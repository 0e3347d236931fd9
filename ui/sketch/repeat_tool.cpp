// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/repeat_tool.h"

#include "core/editing/joints.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

QString RepeatTool::title() const
{
    return m_circle ? SketchWords::tr("Circle of the chosen joint")
                    : SketchWords::tr("Row of the chosen joint");
}

std::vector<KeyHint> RepeatTool::hints() const
{
    return {{SketchWords::tr("move"),
             m_circle ? SketchWords::tr("middle of the circle") : SketchWords::tr("place of the next one")},
            {QStringLiteral("0–9"),
             m_circle ? SketchWords::tr("how many") : SketchWords::tr("how many, Tab, spacing")},
            {QStringLiteral("O"),
             m_circle ? SketchWords::tr("a row instead") : SketchWords::tr("a circle instead")},
            {SketchWords::tr("Enter"), SketchWords::tr("draw them")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

geometry::Point RepeatTool::middle() const
{
    geometry::Box box;
    for (const model::JointId id : desk().chosen())
        if (const model::Joint* joint = desk().sketch().joint(id))
            box.add(geometry::outline(joint->shape).bounds());
    return box.centre();
}

void RepeatTool::preview()
{
    if (!m_next || desk().chosen().empty()) {
        m_pending.reset();
        return;
    }
    m_pending = m_circle ? editing::copyOnCircle(desk().sketch(), desk().chosen(), *m_next, m_count)
                         : editing::copyInRow(desk().sketch(), desk().chosen(), *m_next - middle(), m_count);
}

Verdict RepeatTool::press(const Hand& hand)
{
    if (desk().chosen().empty()) {
        desk().say(Severity::Caution,
                   SketchWords::tr("Choose the joint to be repeated first (V), then press P again."));
        return {VerdictKind::Done, std::nullopt, {}};
    }
    m_held = false;
    move(hand, true);
    m_held = true;
    return changed();
}

Verdict RepeatTool::move(const Hand& hand, bool pressed)
{
    if (m_held && !pressed)
        return {};
    const geometry::Point from = middle();
    const Snapper snapper(desk().sketch(), desk().sheet(), desk().chosen());
    SnapWish wish;
    wish.reach = hand.reach;
    wish.grid = hand.grid;
    wish.anchor = from;
    wish.onlyStraight = hand.shift();
    wish.off = hand.alt() || hand.byKeys;
    const Snapped snapped = snapper.snap(hand.place, wish);
    m_guides = snapped.guides;
    m_next = snapped.place;
    preview();
    return changed();
}

Verdict RepeatTool::key(const QKeyEvent& event, const Hand&)
{
    if (event.key() != Qt::Key_O)
        return {};
    m_circle = !m_circle;
    preview();
    return changed();
}

Verdict RepeatTool::confirm(const Hand&)
{
    if (!m_pending)
        return {};
    m_held = false;
    m_next.reset();
    return commitPending();
}

Verdict RepeatTool::cancel()
{
    if (m_held) {
        m_held = false;
        m_next.reset();
        return revert();
    }
    revert();
    return {VerdictKind::Done, std::nullopt, {}};
}

std::vector<Size> RepeatTool::sizes() const
{
    std::vector<Size> sizes{
        {SketchWords::tr("how many"), QStringLiteral("×"), static_cast<double>(m_count), true}};
    if (!m_circle)
        sizes.push_back(
            {SketchWords::tr("spacing"), {}, m_next ? geometry::distance(middle(), *m_next) : 100.0});
    return sizes;
}

Verdict RepeatTool::typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand)
{
    if (values.empty())
        return {};
    m_count = static_cast<int>(std::clamp(values[0], 0.0, 1e6));
    if (!m_next) // nothing pointed at yet: to the right
        m_next = m_circle ? hand.place : middle() + geometry::Vector{100.0, 0.0};
    if (!m_circle && values.size() > 1 && entry.wasTyped(1)) {
        const geometry::Vector way = *m_next - middle();
        const geometry::Vector direction = way.length() > 0.0 ? way.unit() : geometry::Vector{1.0, 0.0};
        m_next = middle() + values[1] * direction;
    }
    m_held = true;
    preview();
    return changed();
}

} // namespace sealwalk::ui
