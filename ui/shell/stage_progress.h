// SPDX-License-Identifier: GPL-3.0-or-later
// How far each stage of the open job has come: the second line of its field and the thread below.
#pragma once

#include "ui/shell/stage.h"

#include <QString>

namespace sealwalk::ui {

class JobSession;

struct StageProgress
{
    enum class Thread
    {
        NotBegun, ///< dashed
        UnderWay, ///< solid up to `share`, dashed from there
        Done,     ///< solid
        Open,     ///< ladder: matters that want a decision
    };

    QString text;
    Thread thread = Thread::NotBegun;
    double share = 0.0;
    bool operator==(const StageProgress&) const = default;
};

StageProgress progressOf(Stage stage, const JobSession& session);

} // namespace sealwalk::ui
