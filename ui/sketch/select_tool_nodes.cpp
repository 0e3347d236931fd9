// SPDX-License-Identifier: GPL-3.0-or-later
// The nodes of a free line by keys: stepped through, moved, typed, added, taken out.
#include "core/editing/joints.h"
#include "ui/sketch/overlay_painter.h"
#include "ui/sketch/select_tool.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

namespace sealwalk::ui {

const geometry::FreePath* SelectTool::nodeLine() const
{
    const model::Joint* joint = desk().chosenJoint();
    if (joint == nullptr || joint->locked || !desk().isOpenForWork() || !desk().chosenPoint().isNil())
        return nullptr;
    return std::get_if<geometry::FreePath>(&joint->shape);
}

std::optional<std::size_t> SelectTool::node() const
{
    const geometry::FreePath* line = nodeLine();
    if (line == nullptr || desk().chosenJoint()->id != m_nodeOf || m_node >= line->nodes.size())
        return std::nullopt;
    return m_node;
}

std::optional<geometry::Point> SelectTool::nodePlace() const
{
    const auto at = node();
    if (!at)
        return std::nullopt;
    if (m_pending && *m_pending) // being typed
        if (const auto next = editing::after(desk().sketch(), **m_pending, desk().withReadings()))
            if (const model::Joint* joint = next->joint(m_nodeOf))
                if (const auto* line = std::get_if<geometry::FreePath>(&joint->shape);
                    line != nullptr && *at < line->nodes.size())
                    return line->nodes[*at];
    return nodeLine()->nodes[*at];
}

void SelectTool::reshapeTo(const geometry::FreePath& line)
{
    m_pending = editing::reshape(desk().sketch(), m_nodeOf, line);
}

Verdict SelectTool::stepNode(int by)
{
    const geometry::FreePath* line = nodeLine();
    if (line == nullptr) {
        desk().say(Severity::Caution,
                   SketchWords::tr("Choose a free line or a hose that is not locked first; E then steps "
                                   "through its nodes."));
        return changed();
    }
    const auto count = static_cast<int>(line->nodes.size());
    const int now = node() ? static_cast<int>(m_node) : by > 0 ? -1 : count;
    m_nodeOf = desk().chosenJoint()->id;
    m_node = static_cast<std::size_t>((now + by + count) % count);
    return changed();
}

Verdict SelectTool::placeNode(geometry::Point to)
{
    geometry::FreePath line = *nodeLine();
    line.nodes[m_node] = to;
    reshapeTo(line);
    return changed();
}

Verdict SelectTool::addNodeAfter()
{
    geometry::FreePath line = *nodeLine();
    // Between this node and the next; after the end of an open line, before it.
    const std::size_t count = line.nodes.size();
    const std::size_t from = line.closed || m_node + 1 < count ? m_node : m_node - 1;
    const geometry::Point a = line.nodes[from];
    const geometry::Point b = line.nodes[(from + 1) % count];
    line.nodes.insert(line.nodes.begin() + static_cast<std::ptrdiff_t>(from) + 1, a + 0.5 * (b - a));
    m_node = from + 1;
    reshapeTo(line);
    return commitPending();
}

Verdict SelectTool::removeNode()
{
    geometry::FreePath line = *nodeLine();
    if (line.nodes.size() <= (line.closed ? 3U : 2U)) {
        desk().say(Severity::Caution, line.closed
                                          ? SketchWords::tr("A closed line keeps at least three nodes.")
                                          : SketchWords::tr("An open line keeps at least two nodes."));
        return changed();
    }
    line.nodes.erase(line.nodes.begin() + static_cast<std::ptrdiff_t>(m_node));
    if (m_node == line.nodes.size())
        --m_node;
    reshapeTo(line);
    return commitPending();
}

Verdict SelectTool::nodeKey(const QKeyEvent& event, double step)
{
    const geometry::Point place = nodeLine()->nodes[m_node];
    const auto moved = [&](double x, double y) {
        placeNode(place + geometry::Vector{x, y});
        return commitPending();
    };
    switch (event.key()) {
    case Qt::Key_Left:
        return moved(-step, 0.0);
    case Qt::Key_Right:
        return moved(step, 0.0);
    case Qt::Key_Up:
        return moved(0.0, step);
    case Qt::Key_Down:
        return moved(0.0, -step);
    case Qt::Key_Insert:
        return addNodeAfter();
    case Qt::Key_Delete:
        return removeNode();
    default:
        return {};
    }
}

} // namespace sealwalk::ui
