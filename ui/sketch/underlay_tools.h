// SPDX-License-Identifier: GPL-3.0-or-later
// The picture under the sheet: moving it, and giving it a scale by two clicks and a length.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class UnderlayTool final : public Tool
{
public:
    using Tool::Tool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    [[nodiscard]] Qt::CursorShape cursor(const Hand&) const override { return Qt::SizeAllCursor; }
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict release(const Hand& hand) override;
    Verdict key(const QKeyEvent& event, const Hand& hand) override;
    Verdict cancel() override;

private:
    Verdict shifted(geometry::Vector by);
    std::optional<geometry::Point> m_from;
};

class ScaleTool final : public Tool
{
public:
    using Tool::Tool;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict confirm(const Hand& hand) override;
    Verdict cancel() override;
    [[nodiscard]] std::vector<Size> sizes() const override;
    Verdict typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand) override;

private:
    std::optional<geometry::Point> m_a;
    std::optional<geometry::Point> m_b;
    bool m_both = false;
};

} // namespace sealwalk::ui
