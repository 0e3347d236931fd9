// SPDX-License-Identifier: GPL-3.0-or-later
// The tools at the left edge: what can be drawn, what can be done to points, the picture underneath.
#pragma once

#include <QWidget>

#include <map>

class QToolButton;
class QVBoxLayout;

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

signals:
    void wanted(sealwalk::ui::ToolId id);

private:
    void add(QVBoxLayout* column, ToolId id, const QString& icon);
    std::map<ToolId, QToolButton*> m_buttons;
};

} // namespace sealwalk::ui
