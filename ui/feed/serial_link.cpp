// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/serial_link.h"

#include <QSerialPort>
#include <QTimer>

namespace sealwalk::ui {

SerialLink::SerialLink(feed::FeedSource source)
    : m_source(std::move(source))
    , m_port(new QSerialPort(this))
{
    m_port->setReadBufferSize(4 * kBytesPerTurn);
    connect(m_port, &QSerialPort::readyRead, this, &SerialLink::read);
    connect(m_port, &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        // The rest is told by open(), or heals by itself: a damaged byte makes a line that is refused.
        if (m_port->isOpen() && (error == QSerialPort::ResourceError || error == QSerialPort::ReadError))
            lose(tr("the port went away"));
    });
}

void SerialLink::open()
{
    const QString name = QString::fromStdString(m_source.device);
    m_port->setPortName(name);
    m_port->setBaudRate(m_source.baud);
    m_port->setDataBits(static_cast<QSerialPort::DataBits>(m_source.dataBits));
    m_port->setParity(m_source.parity == feed::Parity::Even  ? QSerialPort::EvenParity
                      : m_source.parity == feed::Parity::Odd ? QSerialPort::OddParity
                                                             : QSerialPort::NoParity);
    m_port->setStopBits(m_source.stopBits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    const bool open = m_port->open(QIODevice::ReadOnly);
    if (!open) {
        const QSerialPort::SerialPortError error = m_port->error();
        lose(error == QSerialPort::DeviceNotFoundError ? tr("there is no port %1").arg(name)
             : error == QSerialPort::PermissionError
                 ? tr("%1 is in use, or this account may not open it").arg(name)
                 : tr("%1 cannot be opened: %2").arg(name, m_port->errorString()));
        return;
    }
    m_splitter.startInMiddle(); // the instrument talks on whether we listen or not
    emit opened();
}

void SerialLink::close()
{
    const QSignalBlocker quiet(m_port);
    if (m_port->isOpen())
        m_port->close();
}

void SerialLink::read()
{
    take(m_port->read(kBytesPerTurn));
    if (m_port->isOpen() && m_port->bytesAvailable() > 0)
        QTimer::singleShot(0, this, [this] {
            if (m_port->isOpen())
                read();
        });
}

} // namespace sealwalk::ui
