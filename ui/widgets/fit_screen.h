// SPDX-License-Identifier: GPL-3.0-or-later
// No window is larger than the screen it opens on, whatever the scaling: a button beyond its edge is none.
#pragma once

#include <QObject>
#include <QSize>

class QDialog;
class QWidget;

namespace sealwalk::ui {

/// Logical pixels a window may fill on its screen, less the bar a desktop puts above it.
QSize roomOn(const QWidget& window);

/// Makes `window` no larger than its room and moves it into sight. True when it had to become smaller.
bool boundToScreen(QWidget& window);

/// Installed on the application. A dialog that needs more than the screen has scrolls, with its buttons
/// below in sight.
class FitScreen : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    /// Makes `dialog` fit `room`; for one that was not shown yet.
    static void fit(QDialog& dialog, QSize room);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace sealwalk::ui
