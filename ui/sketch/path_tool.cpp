// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/path_tool.h"

#include "core/editing/joints.h"
#include "ui/sketch/draw_tool.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <cmath>
#include <numbers>

namespace sealwalk::ui {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

} // namespace

QString PathTool::title() const
{
    if (m_line == Line::Hose)
        return SketchWords::tr("Hose");
    return m_line == Line::Closed ? SketchWords::tr("Closed path") : SketchWords::tr("Open path");
}

std::vector<KeyHint> PathTool::hints() const
{
    return {{SketchWords::tr("click"), SketchWords::tr("node after node")},
            {SketchWords::tr("Shift"), SketchWords::tr("straight and 45°")},
            {QStringLiteral("0–9"), SketchWords::tr("length, Tab, angle")},
            {SketchWords::tr("Backspace"), SketchWords::tr("last node away")},
            {SketchWords::tr("Enter"),
             m_nodes.empty() ? SketchWords::tr("lay points") : SketchWords::tr("finish")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

geometry::Point PathTool::taken(const Hand& hand)
{
    SnapWish wish;
    wish.reach = hand.reach;
    wish.grid = hand.grid;
    wish.off = hand.alt() || hand.byKeys;
    wish.onlyStraight = hand.shift();
    if (!m_nodes.empty())
        wish.anchor = m_nodes.back();
    for (std::size_t i = 1; i < m_nodes.size(); ++i)
        wish.lengths.push_back(geometry::distance(m_nodes[i - 1], m_nodes[i]));
    if (m_line == Line::Closed && m_nodes.size() >= 3 &&
        geometry::distance(hand.place, m_nodes.front()) <= hand.reach)
        return m_nodes.front();
    const Snapped snapped = m_snapper.snap(hand.place, wish);
    m_guides = snapped.guides;
    return snapped.place;
}

Result<editing::Edit> PathTool::drawing(std::vector<geometry::Point> nodes) const
{
    geometry::FreePath path{std::move(nodes), m_line == Line::Closed, m_line == Line::Hose};
    std::optional<model::JointKind> kind; // its name and conditions follow it
    if (m_line == Line::Hose)
        kind = model::JointKind::Hose;
    else if (m_line == Line::Closed && desk().kindFor(path) == model::JointKind::WeldSeam)
        kind = model::JointKind::OringSeal;
    return editing::addJoint(desk().sketch(), newJoint(desk(), m_joint, path, kind));
}

void PathTool::preview(std::optional<geometry::Point> next)
{
    std::vector<geometry::Point> nodes = m_nodes;
    if (next && (nodes.empty() || geometry::distance(nodes.back(), *next) > 0.0))
        nodes.push_back(*next);
    // Two nodes of a closed path are not a path yet, but are shown as its first side.
    if (m_line == Line::Closed && nodes.size() == 2)
        nodes.push_back(nodes.front() + 0.5 * (nodes.back() - nodes.front()));
    if (nodes.size() < 2)
        m_pending.reset();
    else
        m_pending = drawing(std::move(nodes));
}

Verdict PathTool::press(const Hand& hand)
{
    if (m_nodes.empty()) {
        m_snapper = Snapper(desk().sketch(), desk().sheet(), {});
        m_joint = model::JointId::create();
        m_fresh = {};
    }
    const geometry::Point node = taken(hand);
    if (m_line == Line::Closed && m_nodes.size() >= 3 && node == m_nodes.front())
        return finish();
    return addNode(node);
}

Verdict PathTool::addNode(geometry::Point node)
{
    if (m_nodes.empty() || geometry::distance(m_nodes.back(), node) > 1e-6)
        m_nodes.push_back(node);
    m_typed.reset();
    preview(std::nullopt);
    return changed();
}

Verdict PathTool::move(const Hand& hand, bool)
{
    if (m_nodes.empty() || m_typed)
        return {};
    m_next = taken(hand);
    preview(m_next);
    return changed();
}

/// Dragged from end to end, as other joints are drawn: where the hand lets go is a node too.
Verdict PathTool::release(const Hand& hand)
{
    if (m_nodes.empty() || m_typed)
        return {};
    const geometry::Point place = taken(hand);
    return geometry::distance(m_nodes.back(), place) > 2.0 * hand.reach ? addNode(place) : Verdict();
}

Verdict PathTool::doubleClick(const Hand&)
{
    return finish(); // the first click of the two has set the last node
}

Verdict PathTool::key(const QKeyEvent& event, const Hand&)
{
    if (event.key() != Qt::Key_Backspace || m_nodes.empty())
        return {};
    m_nodes.pop_back();
    preview(m_next);
    return changed();
}

Verdict PathTool::finish()
{
    const std::size_t least = m_line == Line::Closed ? 3 : 2;
    if (m_nodes.size() < least) {
        desk().say(Severity::Caution,
                   m_line == Line::Closed
                       ? SketchWords::tr("A closed path needs at least three nodes; click the next one.")
                       : SketchWords::tr("An open path needs at least two nodes; click the next one."));
        return changed();
    }
    m_pending = drawing(m_nodes);
    m_nodes.clear();
    m_typed.reset();
    m_fresh = m_joint;
    return commitPending({m_joint});
}

Verdict PathTool::confirm(const Hand&)
{
    if (m_typed)
        return addNode(*m_typed);
    if (!m_nodes.empty())
        return finish();
    return layOn(desk().sketch().joint(m_fresh));
}

Verdict PathTool::cancel()
{
    m_fresh = {};
    m_typed.reset();
    if (m_nodes.empty())
        return {VerdictKind::Done, std::nullopt, {}};
    m_nodes.clear();
    return revert();
}

std::vector<Size> PathTool::sizes() const
{
    if (m_nodes.empty())
        return {};
    const geometry::Vector way = m_next - m_nodes.back();
    const double angle = way.length() > 0.0 ? std::atan2(way.y, way.x) / kDegree : 0.0;
    return {{SketchWords::tr("length"), {}, way.length()},
            {SketchWords::tr("angle"), QStringLiteral("∠"), angle, true}};
}

Verdict PathTool::typed(const std::vector<double>& values, const SizeEntry&, const Hand&)
{
    if (m_nodes.empty() || values.size() < 2)
        return {};
    const double angle = values[1] * kDegree;
    m_typed = m_nodes.back() + values[0] * geometry::Vector{std::cos(angle), std::sin(angle)};
    preview(m_typed);
    return changed();
}

} // namespace sealwalk::ui
