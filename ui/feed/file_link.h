// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of a recorded file, played back at the pace they were recorded in, or faster.
#pragma once

#include "core/feed/line_reader.h"
#include "ui/feed/feed_link.h"

#include <QElapsedTimer>
#include <QFile>
#include <QTimer>

#include <deque>
#include <optional>

namespace sealwalk::ui {

class FileLink : public FeedLink
{
    Q_OBJECT

public:
    FileLink(feed::FeedSource source, feed::LineFormat format);
    void open() override;
    void close() override;

private:
    void play();
    /// Fetches lines until there is one, or the file is at its end.
    bool fetch();
    /// Seconds after the start when the next line is due.
    [[nodiscard]] double due(const feed::FeedLine& line);

    feed::FeedSource m_source;
    feed::LineReader m_reader;
    QFile m_file;
    QTimer m_timer;
    QElapsedTimer m_clock;
    std::deque<feed::FeedLine> m_waiting;
    std::optional<double> m_nextDue; ///< of the line at the front
    std::optional<double> m_firstTime;
    double m_lastDue = 0.0;
    qint64 m_played = 0;
};

} // namespace sealwalk::ui
