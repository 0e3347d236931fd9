// SPDX-License-Identifier: GPL-3.0-or-later
// Lines from a serial port, or an adapter that looks like one.
#pragma once

#include "ui/feed/feed_link.h"

class QSerialPort;

namespace sealwalk::ui {

class SerialLink : public FeedLink
{
    Q_OBJECT

public:
    explicit SerialLink(feed::FeedSource source);
    void open() override;
    void close() override;

private:
    void read();

    feed::FeedSource m_source;
    QSerialPort* m_port;
};

} // namespace sealwalk::ui
