// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/tcp_link.h"

#include <QNetworkProxy>
#include <QTcpSocket>

namespace sealwalk::ui {

namespace {

constexpr int kPatience = 5000; // ms

} // namespace

TcpLink::TcpLink(feed::FeedSource source)
    : m_source(std::move(source))
    , m_socket(new QTcpSocket(this))
{
    m_socket->setProxy(QNetworkProxy::NoProxy); // an instrument stands in the same hall
    m_socket->setReadBufferSize(4 * kBytesPerTurn);
    m_patience.setSingleShot(true);
    m_patience.setInterval(kPatience);
    connect(&m_patience, &QTimer::timeout, this, [this] { lose(tr("the address does not answer")); });
    connect(m_socket, &QTcpSocket::connected, this, [this] {
        m_patience.stop();
        m_splitter.startInMiddle(); // a box between instrument and network hands on what it has begun
        emit opened();
    });
    connect(m_socket, &QTcpSocket::readyRead, this, &TcpLink::read);
    connect(m_socket, &QTcpSocket::errorOccurred, this, [this](QAbstractSocket::SocketError error) {
        while (m_socket->bytesAvailable() > 0) // what came before the end still counts
            take(m_socket->read(kBytesPerTurn));
        lose(error == QAbstractSocket::RemoteHostClosedError    ? tr("the other side hung up")
             : error == QAbstractSocket::ConnectionRefusedError ? tr("nothing listens at that address")
             : error == QAbstractSocket::HostNotFoundError      ? tr("the address is not known")
                                                                : tr("the connection broke"));
    });
}

void TcpLink::open()
{
    m_patience.start();
    m_socket->connectToHost(QString::fromStdString(m_source.host), static_cast<quint16>(m_source.port),
                            QIODevice::ReadOnly);
}

void TcpLink::close()
{
    m_patience.stop();
    const QSignalBlocker quiet(m_socket);
    m_socket->abort();
}

void TcpLink::read()
{
    take(m_socket->read(kBytesPerTurn));
    if (m_socket->bytesAvailable() > 0)
        QTimer::singleShot(0, this, [this] {
            if (m_socket->bytesAvailable() > 0)
                read();
        });
}

} // namespace sealwalk::ui
