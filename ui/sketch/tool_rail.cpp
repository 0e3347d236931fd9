// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/tool_rail.h"

#include "ui/render/icon.h"

#include <QCoreApplication>
#include <QFrame>
#include <QToolButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

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

QFrame* gap(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setFixedHeight(1);
    line->setAutoFillBackground(true);
    line->setBackgroundRole(QPalette::Mid);
    return line;
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
    setFixedWidth(60);
    setProperty("ground", QStringLiteral("panel"));
    setAttribute(Qt::WA_StyledBackground);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    column->setSpacing(2);
    for (const Row& row : kRows) {
        if (row.id == ToolId::AddPoint || row.id == ToolId::Underlay) {
            column->addSpacing(5);
            column->addWidget(gap(this));
            column->addSpacing(5);
        }
        add(column, row.id, QString::fromLatin1(row.icon));
    }
    column->addStretch(1);
    setCurrent(ToolId::Select);
}

void ToolRail::add(QVBoxLayout* column, ToolId id, const QString& icon)
{
    auto* button = new QToolButton(this);
    button->setIcon(render::icon(icon));
    button->setIconSize(QSize(22, 22));
    button->setMinimumSize(40, 34);
    button->setMaximumSize(40, 38);
    button->setProperty("kind", QStringLiteral("flat"));
    button->setObjectName(QStringLiteral("tool-") + icon);
    button->setAccessibleName(toolName(id));
    button->setToolTip(QStringLiteral("%1 (%2)").arg(toolName(id), toolKey(id)));
    button->setCheckable(id != ToolId::Retire && id != ToolId::Renumber);
    connect(button, &QToolButton::clicked, this, [this, id] { emit wanted(id); });
    column->addWidget(button);
    m_buttons[id] = button;
}

void ToolRail::setCurrent(ToolId id)
{
    for (const auto& [other, button] : m_buttons)
        if (button->isCheckable())
            button->setChecked(other == id);
}

} // namespace sealwalk::ui
