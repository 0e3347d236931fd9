// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace sealwalk::ui {

namespace {

// The edit inside a choice passes the wheel on to its parent, where this is asked again.
QWidget* turnedByWheel(QObject* watched)
{
    if (auto* choice = qobject_cast<QComboBox*>(watched))
        return choice;
    return qobject_cast<QAbstractSpinBox*>(watched);
}

} // namespace

bool WheelGuard::eventFilter(QObject* watched, QEvent* event)
{
    switch (event->type()) {
    case QEvent::Polish:
        if (QWidget* field = turnedByWheel(watched))
            if ((field->focusPolicy() & Qt::WheelFocus) == Qt::WheelFocus)
                field->setFocusPolicy(Qt::StrongFocus);
        return false;
    case QEvent::Wheel:
        if (turnedByWheel(watched) == nullptr)
            return false;
        event->ignore(); // on to the parent
        return true;
    default:
        return false;
    }
}

} // namespace sealwalk::ui
