// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/tool_rail.h"

#include "ui/render/icon.h"

#include <QCoreApplication>
#include <QPainter>
#include <QToolButton>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kSide = 10;
constexpr int kTop = 8;
constexpr int kButton = 40;
constexpr int kLeastHeight = 34; ///< of a button, before a second column is made
constexpr int kMostHeight = 38;
constexpr int kGroupGap = 13;

struct Row
{
    ToolId id;
    const char* name;
    const char* key;
    const char* icon;
};

constexpr Row kRows[] = {
    {ToolId::Select, QT_TRANSLATE_NOOP("ToolRail", "Select"), "V", "select"},
    {ToolId::Ring, QT_TRANSLATE_NOOP("ToolRail", "Ring"), "R", "ring"},
    {ToolId::Box, QT_TRANSLATE_NOOP("ToolRail", "Rounded rectangle"), "B", "rounded"},
    {ToolId::ClosedPath, QT_TRANSLATE_NOOP("ToolRail", "Free closed path"), "C", "free-path"},
    {ToolId::OpenPath, QT_TRANSLATE_NOOP("ToolRail", "Open path, such as a weld"), "W", "joint-weld"},
    {ToolId::Spot, QT_TRANSLATE_NOOP("ToolRail", "Spot fitting"), "S", "spot"},
    {ToolId::Hose, QT_TRANSLATE_NOOP("ToolRail", "Hose"), "H", "joint-hose"},
    {ToolId::Repeat, QT_TRANSLATE_NOOP("ToolRail", "Row or circle of the chosen joint"), "P", "repeat"},
    {ToolId::AddPoint, QT_TRANSLATE_NOOP("ToolRail", "Add a point"), "A", "add-point"},
    {ToolId::Split, QT_TRANSLATE_NOOP("ToolRail", "Split a stretch"), "X", "split"},
    {ToolId::Retire, QT_TRANSLATE_NOOP("ToolRail", "Retire the chosen"), "Del", "retire"},
    {ToolId::Renumber, QT_TRANSLATE_NOOP("ToolRail", "Renumber"), "N", "renumber"},
    {ToolId::Underlay, QT_TRANSLATE_NOOP("ToolRail", "Picture underneath"), "U", "underlay"},
    {ToolId::Scale, QT_TRANSLATE_NOOP("ToolRail", "Scale by two clicks"), "K", "scale"},
};

const Row& rowOf(ToolId id)
{
    return kRows[static_cast<std::size_t>(id)];
}

/// The first tool of a group.
bool beginsGroup(ToolId id)
{
    return id == ToolId::AddPoint || id == ToolId::Underlay;
}

} // namespace

QString toolName(ToolId id)
{
    return QCoreApplication::translate("ToolRail", rowOf(id).name);
}

QString toolKey(ToolId id)
{
    return QString::fromLatin1(rowOf(id).key);
}

ToolRail::ToolRail(QWidget* parent)
    : QWidget(parent)
{
    setAccessibleName(tr("Tools"));
    setFixedWidth(kSide + kButton + kSide);
    for (const Row& row : kRows)
        add(row.id, QString::fromLatin1(row.icon));
    setCurrent(ToolId::Select);
}

void ToolRail::add(ToolId id, const QString& icon)
{
    auto* button = new QToolButton(this);
    button->setIcon(render::icon(icon));
    button->setIconSize(QSize(22, 22));
    button->setProperty("kind", QStringLiteral("flat"));
    button->setObjectName(QStringLiteral("tool-") + icon);
    button->setAccessibleName(toolName(id));
    button->setToolTip(QStringLiteral("%1 (%2)").arg(toolName(id), toolKey(id)));
    button->setCheckable(id != ToolId::Retire && id != ToolId::Renumber);
    connect(button, &QToolButton::clicked, this, [this, id] { emit wanted(id); });
    m_buttons[id] = button;
}

void ToolRail::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const auto count = static_cast<int>(m_buttons.size());
    const int gaps = 2 * kGroupGap;
    const bool low = height() < 2 * kTop + count * (kLeastHeight + 2) + gaps;
    const int columns = low ? 2 : 1;
    const int rows = low ? (count + 4) / 2 : count; // each group begins on a row of its own
    const int step = std::clamp((height() - 2 * kTop - gaps) / rows, 30, kMostHeight + 2);
    const int across = low ? kButton - 8 : kButton;
    int row = 0;
    int column = 0;
    int extra = 0;
    m_lines.clear();
    for (const auto& [id, button] : m_buttons) {
        if (beginsGroup(id)) {
            row += column > 0 ? 1 : 0;
            column = 0;
            m_lines.push_back(kTop + row * step + extra + kGroupGap / 2 - 1);
            extra += kGroupGap;
        }
        button->setGeometry(kSide + column * (across + 2), kTop + row * step + extra, across, step - 2);
        if (++column == columns) {
            column = 0;
            ++row;
        }
    }
    const int wide = 2 * kSide + columns * across + (columns - 1) * 2;
    if (wide != width())
        setFixedWidth(wide);
}

void ToolRail::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(render::Role::Panel));
    painter.setPen(theme.colour(render::Role::Line));
    for (const int y : m_lines)
        painter.drawLine(kSide, y, width() - kSide, y);
}

void ToolRail::setCurrent(ToolId id)
{
    for (const auto& [other, button] : m_buttons)
        if (button->isCheckable())
            button->setChecked(other == id);
}

} // namespace sealwalk::ui
