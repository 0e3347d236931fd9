// SPDX-License-Identifier: GPL-3.0-or-later
// Rings and rounded rectangles: dragged, or placed by a click and typed sizes. What was just drawn stays in
// hand: typed sizes then change it, Enter lays its points.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class DrawTool : public Tool
{
public:
    using Tool::Tool;

    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict release(const Hand& hand) override;
    Verdict confirm(const Hand& hand) override;
    Verdict cancel() override;
    [[nodiscard]] std::vector<Size> sizes() const override;
    Verdict typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand) override;
    [[nodiscard]] bool sizesAreOfChosen() const override { return !m_shape && fresh() != nullptr; }
    [[nodiscard]] std::optional<geometry::Shape> sizedShape() const override;
    Verdict key(const QKeyEvent& event, const Hand& hand) override;

protected:
    /// The shape dragged from one place to another.
    [[nodiscard]] virtual geometry::Shape dragged(geometry::Point from, const Hand& to) = 0;
    /// The shape of usual size about a place.
    [[nodiscard]] virtual geometry::Shape usual(geometry::Point centre) const = 0;
    /// The edit that draws `shape` as `joint`, with what goes with it when `withBody`.
    [[nodiscard]] virtual Result<editing::Edit> drawing(const model::Joint& joint, bool withBody) const = 0;

    [[nodiscard]] bool withBody() const { return m_withBody; }
    void setSnapped(const Snapped& snapped) { m_guides = snapped.guides; }
    [[nodiscard]] const Snapper& snapper() const { return m_snapper; }

private:
    void draw(const geometry::Shape& shape);
    [[nodiscard]] const model::Joint* fresh() const;

    Snapper m_snapper;
    std::optional<geometry::Point> m_from; ///< the hand is down, or a click has placed the middle
    bool m_dragging = false;
    bool m_placed = false;
    bool m_withBody = false;
    std::optional<geometry::Shape> m_shape;
    model::JointId m_joint; ///< of the shape being drawn
    model::JointId m_fresh; ///< just drawn with this tool
};

class RingTool final : public DrawTool
{
public:
    using DrawTool::DrawTool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;

protected:
    geometry::Shape dragged(geometry::Point from, const Hand& to) override;
    geometry::Shape usual(geometry::Point centre) const override;
    Result<editing::Edit> drawing(const model::Joint& joint, bool withBody) const override;
};

class BoxTool final : public DrawTool
{
public:
    using DrawTool::DrawTool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;

protected:
    geometry::Shape dragged(geometry::Point from, const Hand& to) override;
    geometry::Shape usual(geometry::Point centre) const override;
    Result<editing::Edit> drawing(const model::Joint& joint, bool withBody) const override;
};

/// The joint a drawing tool makes of a shape: kind, name and conditions as the desk says.
/// @param kind  where the tool draws one kind only
model::Joint newJoint(const SketchDesk& desk, model::JointId id, const geometry::Shape& shape,
                      std::optional<model::JointKind> kind = std::nullopt);

} // namespace sealwalk::ui
