// SPDX-License-Identifier: GPL-3.0-or-later
// What the round advises beside the call. It never moves the call by itself.
#pragma once

#include "core/model/ids.h"

#include <QString>

#include <vector>

namespace sealwalk::ui {

struct SprayAdvice
{
    enum class Kind
    {
        LeaveOrder,   ///< helium hangs where the next point is
        SealFirst,    ///< what is left lies in the shadow of a leak
        RepeatGentle, ///< less helium tells two neighbours apart
        VoidRun,      ///< the background had moved under a run of readings
    };
    Kind kind = Kind::LeaveOrder;
    model::PointId point;                   ///< to call when it is taken; nil for a run
    std::vector<model::ReadingId> readings; ///< the run
    QString title;
    QString because;
    QString takes; ///< what the first key does, in two or three words
    QString stays; ///< and the second
    bool operator==(const SprayAdvice&) const = default;
};

} // namespace sealwalk::ui
