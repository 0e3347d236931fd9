// SPDX-License-Identifier: GPL-3.0-or-later
// Lines from a named pipe: any program that can write a file can feed the trace.
#pragma once

#include "ui/feed/feed_link.h"

class QSocketNotifier;

namespace sealwalk::ui {

class PipeLink : public FeedLink
{
    Q_OBJECT

public:
    explicit PipeLink(feed::FeedSource source);
    ~PipeLink() override;
    void open() override;
    void close() override;

private:
    void read();

    feed::FeedSource m_source;
    int m_descriptor = -1;
    QSocketNotifier* m_notifier = nullptr;
};

} // namespace sealwalk::ui
