// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/pipe_link.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QSocketNotifier>

#include <cerrno>

namespace sealwalk::ui {

PipeLink::PipeLink(feed::FeedSource source)
    : m_source(std::move(source))
{}

PipeLink::~PipeLink()
{
    PipeLink::close();
}

void PipeLink::open()
{
    const QString path = QString::fromStdString(m_source.path);
    // Without O_NONBLOCK this would wait for a writer.
    m_descriptor = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    if (m_descriptor < 0) {
        lose(errno == ENOENT ? tr("there is no pipe %1").arg(path) : tr("%1 may not be read").arg(path));
        return;
    }
    struct stat status = {};
    if (::fstat(m_descriptor, &status) != 0 || !S_ISFIFO(status.st_mode)) {
        lose(tr("%1 is no pipe").arg(path));
        return;
    }
    m_notifier = new QSocketNotifier(m_descriptor, QSocketNotifier::Read, this);
    connect(m_notifier, &QSocketNotifier::activated, this, &PipeLink::read);
    emit opened();
}

void PipeLink::close()
{
    if (m_notifier != nullptr) {
        m_notifier->setEnabled(false);
        m_notifier->deleteLater(); // it may be the one that called us
        m_notifier = nullptr;
    }
    if (m_descriptor >= 0)
        ::close(m_descriptor);
    m_descriptor = -1;
}

void PipeLink::read()
{
    QByteArray bytes(kBytesPerTurn, Qt::Uninitialized);
    const ssize_t count = ::read(m_descriptor, bytes.data(), static_cast<std::size_t>(bytes.size()));
    if (count > 0) {
        bytes.truncate(static_cast<qsizetype>(count));
        take(bytes); // more calls follow by themselves while there is more
    } else if (count == 0) {
        lose(tr("the program that wrote to the pipe has gone"));
    } else if (errno != EAGAIN && errno != EINTR) {
        lose(tr("the pipe cannot be read"));
    }
}

} // namespace sealwalk::ui
