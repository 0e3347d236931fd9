// SPDX-License-Identifier: GPL-3.0-or-later
// How one record of a job is ahead of another, in the words of the window.
#pragma once

#include "core/exchange/continuation.h"

#include <QString>

namespace sealwalk::ui {

/// "readings", "set-up".
QString partInWords(exchange::Part part);
/// "12 readings, 1 repair, submitted, set-up changed".
QString aheadInWords(const exchange::Continuation& continuation);

} // namespace sealwalk::ui
