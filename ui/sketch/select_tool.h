// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing, moving, reshaping, turning; moving points along their joint.
#pragma once

#include "ui/sketch/hit.h"
#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class SelectTool final : public Tool
{
public:
    using Tool::Tool;

    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    [[nodiscard]] Qt::CursorShape cursor(const Hand& hand) const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict release(const Hand& hand) override;
    Verdict doubleClick(const Hand& hand) override;
    Verdict key(const QKeyEvent& event, const Hand& hand) override;
    Verdict confirm(const Hand& hand) override;
    Verdict cancel() override;
    [[nodiscard]] std::vector<Size> sizes() const override;
    [[nodiscard]] bool sizesAreOfChosen() const override { return true; }
    [[nodiscard]] std::optional<geometry::Point> sizesPlace() const override { return nodePlace(); }
    [[nodiscard]] QString spoken() const override { return node() ? title() : QString(); }
    Verdict typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand) override;

    /// The frame being drawn round joints to choose them.
    [[nodiscard]] std::optional<geometry::Box> frame() const;
    /// Where the point being moved was before.
    [[nodiscard]] std::optional<geometry::Point> oldPlace() const;

    /// The node of the chosen free line that the keys act on.
    [[nodiscard]] std::optional<geometry::Point> nodePlace() const;

    /// How far the frame of handles stands off its joint, in hand's breadths.
    static double air(const Hand& hand) { return 1.4 * hand.reach; }

private:
    enum class Doing
    {
        Nothing,
        Moving,
        Reshaping,
        Turning,
        MovingPoint,
        Framing
    };

    [[nodiscard]] std::optional<Handle> handleUnder(const Hand& hand) const;
    void moveJoints(const Hand& hand);
    void reshapeJoint(const Hand& hand);
    void turnJoints(const Hand& hand);
    void movePoint(const Hand& hand);
    void choosePointOnNode(const Hand& hand);
    void pickJoint(const Hand& hand, model::JointId joint);
    [[nodiscard]] geometry::Point pivot() const;
    Verdict nudge(geometry::Vector by);

    // Nodes by keys; in select_tool_nodes.cpp.
    [[nodiscard]] const geometry::FreePath* nodeLine() const;
    [[nodiscard]] std::optional<std::size_t> node() const;
    Verdict stepNode(int by);
    Verdict nodeKey(const QKeyEvent& event, double step);
    Verdict placeNode(geometry::Point to);
    Verdict addNodeAfter();
    Verdict removeNode();
    void reshapeTo(const geometry::FreePath& line);

    Doing m_doing = Doing::Nothing;
    bool m_moved = false;
    geometry::Point m_from;
    geometry::Point m_to;
    Handle m_handle;
    Snapper m_snapper;
    std::optional<geometry::Point> m_oldPlace;
    model::JointId m_nodeOf; ///< nil: no node is in hand
    std::size_t m_node = 0;
};

} // namespace sealwalk::ui
