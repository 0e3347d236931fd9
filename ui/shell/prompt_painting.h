// SPDX-License-Identifier: GPL-3.0-or-later
// What was entered is drawn when its work is done.
#pragma once

#include <QtGlobal>

namespace sealwalk::ui {

/// To be called before the QApplication is made. Qt leaves 5 ms between a change and its drawing where the
/// platform sends no frame signals, longer than an entry takes to the disk; somebody's own setting stays.
inline void paintPromptly()
{
    constexpr const char* kIdleTime = "QT_QPA_UPDATE_IDLE_TIME";
    if (!qEnvironmentVariableIsSet(kIdleTime))
        qputenv(kIdleTime, "0");
}

} // namespace sealwalk::ui
