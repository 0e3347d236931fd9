// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/touch_buttons.h"

#include "ui/spray/touch_size.h"

#include <QDialog>
#include <QEvent>
#include <QFileDialog>
#include <QPushButton>

#include <utility>

namespace sealwalk::ui {

TouchButtons::TouchButtons(std::function<bool()> isOn, QObject* parent)
    : QObject(parent)
    , m_isOn(std::move(isOn))
{}

bool TouchButtons::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::Polish)
        return false;
    auto* dialog = qobject_cast<QDialog*>(watched);
    // The one for files is the desktop's, or Qt's with a way of its own.
    if (dialog == nullptr || qobject_cast<QFileDialog*>(watched) != nullptr || !m_isOn())
        return false;
    const int target = pixelsOn(dialog->screen(), kGloveMillimetres);
    for (QPushButton* button : dialog->findChildren<QPushButton*>())
        setTargetHeight(*button, target);
    return false;
}

} // namespace sealwalk::ui
