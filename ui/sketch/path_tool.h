// SPDX-License-Identifier: GPL-3.0-or-later
// Free lines, click by click: closed paths, open ones such as welds, and hoses.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class PathTool final : public Tool
{
public:
    enum class Line
    {
        Closed,
        Open,
        Hose
    };
    PathTool(SketchDesk& desk, Line line)
        : Tool(desk)
        , m_line(line)
    {}

    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict release(const Hand& hand) override;
    Verdict doubleClick(const Hand& hand) override;
    Verdict key(const QKeyEvent& event, const Hand& hand) override;
    Verdict confirm(const Hand& hand) override;
    Verdict cancel() override;
    [[nodiscard]] std::vector<Size> sizes() const override;
    Verdict typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand) override;

private:
    [[nodiscard]] geometry::Point taken(const Hand& hand);
    Verdict addNode(geometry::Point node);
    Verdict finish();
    void preview(std::optional<geometry::Point> next);
    [[nodiscard]] Result<editing::Edit> drawing(std::vector<geometry::Point> nodes) const;

    Line m_line;
    Snapper m_snapper;
    std::vector<geometry::Point> m_nodes;
    geometry::Point m_next;
    std::optional<geometry::Point> m_typed; ///< the end of a piece of typed length
    model::JointId m_joint;
    model::JointId m_fresh;
};

} // namespace sealwalk::ui
