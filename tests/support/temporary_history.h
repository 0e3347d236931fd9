// SPDX-License-Identifier: GPL-3.0-or-later
// A session on a history file of its own that goes away with the test.
#pragma once

#include "ui/session/job_session.h"

#include <QTemporaryDir>

namespace sealwalk::tests {

class TemporaryHistory
{
public:
    TemporaryHistory();

    ui::JobSession session;

    [[nodiscard]] std::filesystem::path file() const;
    /// A new object with a job whose sheet carries a ring seal "Port" of `points` points, and an open round.
    void startJob(int points);
    /// Leaves a temporary repair, due 2026-01-31, at the first point, and starts the next job with its round.
    void startNextJobOverATemporaryRepair();
    /// Adds a system check with factor 1 and a quiet background watch.
    void calibrate();
    /// Runs the event loop until the background work has answered.
    void settle();

private:
    QTemporaryDir m_folder;
};

} // namespace sealwalk::tests
