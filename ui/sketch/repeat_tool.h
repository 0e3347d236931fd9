// SPDX-License-Identifier: GPL-3.0-or-later
// A row or a circle of the chosen joints: drag the ghost of the next one, type how many.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class RepeatTool final : public Tool
{
public:
    using Tool::Tool;

    [[nodiscard]] QString title() const override;
    [[nodiscard]] std::vector<KeyHint> hints() const override;
    Verdict press(const Hand& hand) override;
    Verdict move(const Hand& hand, bool pressed) override;
    Verdict key(const QKeyEvent& event, const Hand& hand) override;
    Verdict confirm(const Hand& hand) override;
    Verdict cancel() override;
    [[nodiscard]] std::vector<Size> sizes() const override;
    Verdict typed(const std::vector<double>& values, const SizeEntry& entry, const Hand& hand) override;

private:
    [[nodiscard]] geometry::Point middle() const;
    void preview();

    bool m_circle = false;
    int m_count = 4;
    std::optional<geometry::Point> m_next; ///< middle of the next one in a row, or of the circle
    bool m_held = false;                   ///< a click has fixed it
};

} // namespace sealwalk::ui
