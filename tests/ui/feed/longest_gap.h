// SPDX-License-Identifier: GPL-3.0-or-later
// How long the event loop was away at worst: a timer that notes when it could not come.
#pragma once

#include "ui/feed/feed_session.h"

#include <QElapsedTimer>
#include <QTimer>

namespace sealwalk::tests {

class LongestGap
{
public:
    LongestGap();
    /// Prints the gap as `what` and answers it, in milliseconds.
    [[nodiscard]] qint64 report(const char* what) const;

private:
    QTimer m_timer;
    QElapsedTimer m_since;
    qint64 m_longest = 0;
};

/// A window that hangs that long is noticed by everybody; less is the machine's load.
inline constexpr qint64 kGrossBlock = 1000; // ms

/// Short tempers, so that losses and returns take tenths of a second.
ui::FeedPatience impatient();

/// The value of column 1, in mbar·l/s.
feed::FeedProfile plainProfile(feed::SourceKind kind);

/// The values the trace holds, in mbar·l/s.
std::vector<double> traced(const ui::FeedSession& session);

} // namespace sealwalk::tests
