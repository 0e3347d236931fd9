// SPDX-License-Identifier: GPL-3.0-or-later
// Lines from a network address.
#pragma once

#include "ui/feed/feed_link.h"

#include <QTimer>

class QTcpSocket;

namespace sealwalk::ui {

class TcpLink : public FeedLink
{
    Q_OBJECT

public:
    explicit TcpLink(feed::FeedSource source);
    void open() override;
    void close() override;

private:
    void read();

    feed::FeedSource m_source;
    QTcpSocket* m_socket;
    QTimer m_patience; ///< an address that does not answer keeps the system waiting for minutes
};

} // namespace sealwalk::ui
