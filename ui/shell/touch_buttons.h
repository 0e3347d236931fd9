// SPDX-License-Identifier: GPL-3.0-or-later
// Where the bench is worked by touch, a dialog's buttons are as large as a gloved finger needs.
#pragma once

#include <QObject>

#include <functional>

namespace sealwalk::ui {

/// Installed on the application, after FitScreen: buttons grow before a dialog is fitted to its screen.
class TouchButtons : public QObject
{
    Q_OBJECT

public:
    /// @param isOn  asked anew for each dialog
    TouchButtons(std::function<bool()> isOn, QObject* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    std::function<bool()> m_isOn;
};

} // namespace sealwalk::ui
