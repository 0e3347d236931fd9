// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/regions.h"

#include <QApplication>
#include <QSplitter>
#include <QVariant>
#include <QWidget>

namespace sealwalk::ui {

namespace {

QWidget* firstFocusable(QWidget* region)
{
    const auto takes = [](const QWidget* widget) {
        return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0;
    };
    if (takes(region))
        return region;
    for (QWidget* child : region->findChildren<QWidget*>())
        if (takes(child))
            return child;
    return nullptr;
}

void collectPanes(const QSplitter& splitter, QList<QWidget*>& panes)
{
    for (int i = 0; i < splitter.count(); ++i) {
        QWidget* pane = splitter.widget(i);
        if (const auto* inner = qobject_cast<QSplitter*>(pane))
            collectPanes(*inner, panes);
        else if (pane->isVisible() && firstFocusable(pane) != nullptr)
            panes.append(pane);
    }
}

} // namespace

QList<QWidget*> regionsOf(QWidget& window)
{
    QList<QWidget*> regions;
    for (QWidget* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() && widget->property("region").isValid() && firstFocusable(widget) != nullptr)
            regions.append(widget);
    for (const QSplitter* splitter : window.findChildren<QSplitter*>())
        if (splitter->isVisible() && qobject_cast<QSplitter*>(splitter->parentWidget()) == nullptr)
            collectPanes(*splitter, regions);
    return regions;
}

void focusNextRegion(QWidget& window, bool forward)
{
    const QList<QWidget*> regions = regionsOf(window);
    if (regions.isEmpty())
        return;
    const QWidget* focused = QApplication::focusWidget();
    qsizetype current = -1;
    for (qsizetype i = 0; i < regions.size(); ++i)
        if (focused != nullptr && (regions.at(i) == focused || regions.at(i)->isAncestorOf(focused)))
            current = i;
    const qsizetype count = regions.size();
    const qsizetype next = current < 0 ? 0 : (current + (forward ? 1 : count - 1)) % count;
    if (QWidget* target = firstFocusable(regions.at(next)))
        target->setFocus(Qt::TabFocusReason);
}

} // namespace sealwalk::ui
