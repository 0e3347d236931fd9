// SPDX-License-Identifier: GPL-3.0-or-later
// What the note line says, and how grave it is.
#pragma once

#include <QString>

namespace sealwalk::ui {

enum class Severity
{
    News,    ///< goes away by itself
    Caution, ///< stays until the next word
    Error,   ///< stays until it is done with
};

} // namespace sealwalk::ui
