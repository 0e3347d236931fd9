// SPDX-License-Identifier: GPL-3.0-or-later
// Tools of one click: a spot fitting, a point added, a stretch split.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class SpotTool final : public Tool
{
public:
    using Tool::Tool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict confirm(const Hand& hand) override;

private:
    [[nodiscard]] Result<editing::Edit> drawing(const Hand& hand);
    Snapper m_snapper;
    model::JointId m_joint = model::JointId::create();
    bool m_placed = false;
};

class AddPointTool final : public Tool
{
public:
    using Tool::Tool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    /// Places one; after that, lays the tool down.
    Verdict confirm(const Hand& hand) override;

private:
    bool m_placed = false;
};

class SplitTool final : public Tool
{
public:
    using Tool::Tool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    /// Places one; after that, lays the tool down.
    Verdict confirm(const Hand& hand) override;

private:
    bool m_placed = false;
};

/// A point added, or a stretch split, where the hand is.
Result<editing::Edit> addPointAt(const SketchDesk& desk, const Hand& hand);
Result<editing::Edit> splitAt(const SketchDesk& desk, const Hand& hand);

} // namespace sealwalk::ui
