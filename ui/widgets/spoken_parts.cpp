// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/spoken_parts.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace sealwalk::ui {

namespace {

/// The words of the label that belongs to a control; empty: it has none.
QString labelOf(const QWidget& control)
{
    if (control.parentWidget() == nullptr)
        return {};
    for (const QLabel* label : control.parentWidget()->findChildren<QLabel*>(Qt::FindDirectChildrenOnly))
        if (label->buddy() == &control)
            return label->text().remove(QLatin1Char('&'));
    return {};
}

void nameParts(QComboBox& box)
{
    const QString label = labelOf(box);
    const QString name = box.accessibleName().isEmpty() ? label : box.accessibleName();
    if (label.isEmpty() && box.accessibleDescription().isEmpty())
        box.setAccessibleDescription(name);
    if (box.lineEdit() != nullptr && box.lineEdit()->accessibleName().isEmpty())
        box.lineEdit()->setAccessibleName(name);
}

} // namespace

bool SpokenParts::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::Show)
        return false;
    if (auto* box = qobject_cast<QComboBox*>(watched))
        nameParts(*box);
    else if (auto* button = qobject_cast<QToolButton*>(watched);
             button != nullptr && button->accessibleName().isEmpty() && button->text().isEmpty() &&
             qobject_cast<QLineEdit*>(button->parentWidget()) != nullptr)
        button->setAccessibleName(tr("Clear"));
    return false;
}

} // namespace sealwalk::ui
