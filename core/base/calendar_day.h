// SPDX-License-Identifier: GPL-3.0-or-later
// Dates without a time of day: due dates, and how long something is granted.
#pragma once

#include "core/base/timestamp.h"

namespace sealwalk {

/// Whether `day` lies before the calendar day of `moment`, each by its own clock on the wall. A date is kept
/// as midnight UTC, but what is due on a day is in order until that day ends where the work is done.
inline bool isPast(const Timestamp& day, const Timestamp& moment)
{
    return day.date() < moment.date();
}

} // namespace sealwalk
