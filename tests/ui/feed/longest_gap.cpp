// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/feed/longest_gap.h"

#include <algorithm>
#include <iostream>

namespace sealwalk::tests {

LongestGap::LongestGap()
{
    m_since.start();
    QObject::connect(&m_timer, &QTimer::timeout, &m_timer,
                     [this] { m_longest = std::max(m_longest, m_since.restart()); });
    m_timer.start(0);
}

qint64 LongestGap::report(const char* what) const
{
    const qint64 longest = std::max(m_longest, m_since.elapsed());
    std::cout << what << ": event loop away for at most " << longest << " ms\n";
    return longest;
}

ui::FeedPatience impatient()
{
    return {20, 100, 300, 600};
}

feed::FeedProfile plainProfile(feed::SourceKind kind)
{
    feed::FeedProfile profile;
    profile.name = "bench detector";
    profile.source.kind = kind;
    return profile;
}

std::vector<double> traced(const ui::FeedSession& session)
{
    std::vector<double> values;
    const report::LongSeries& trace = *session.trace();
    for (std::size_t i = 0; i < trace.size(); ++i)
        values.push_back(inMillibarLitresPerSecond(LeakRate::fromSi(static_cast<double>(trace.valueAt(i)))));
    return values;
}

} // namespace sealwalk::tests
