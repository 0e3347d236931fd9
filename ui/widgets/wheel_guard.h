// SPDX-License-Identifier: GPL-3.0-or-later
// The wheel scrolls the page; it changes no field it happens to pass.
#pragma once

#include <QObject>

namespace sealwalk::ui {

/// Installed on the application. A choice or a number under the pointer lets the wheel go by, to whatever can
/// scroll around it, and does not take the keyboard for it: fields here are kept as they are left, so a unit
/// turned in passing would stand in the record.
class WheelGuard : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace sealwalk::ui
