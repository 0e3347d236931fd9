// SPDX-License-Identifier: GPL-3.0-or-later
// The tools at the left edge: what can be drawn, what can be done to points, the picture underneath.
#pragma once

#include <QWidget>

#include <map>
#include <vector>

class QToolButton;

namespace sealwalk::ui {

enum class ToolId
{
    Select,
    Ring,
    Box,
    ClosedPath,
    OpenPath,
    Spot,
    Hose,
    Repeat,
    AddPoint,
    Split,
    Retire,
    Renumber,
    Underlay,
    Scale,
};

QString toolName(ToolId id);
QString toolKey(ToolId id);

class ToolRail : public QWidget
{
    Q_OBJECT

public:
    explicit ToolRail(QWidget* parent = nullptr);
    void setCurrent(ToolId id);
    [[nodiscard]] QToolButton* button(ToolId id) const { return m_buttons.at(id); }

    /// Two columns do where the window is low.
    [[nodiscard]] QSize minimumSizeHint() const override { return {60, 280}; }

signals:
    void wanted(sealwalk::ui::ToolId id);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void add(ToolId id, const QString& icon);
    std::map<ToolId, QToolButton*> m_buttons; ///< in the order of the rail
    std::vector<int> m_lines;                 ///< y of the lines between groups
};

} // namespace sealwalk::ui
