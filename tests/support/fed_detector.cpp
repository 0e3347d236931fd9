// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fed_detector.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QByteArray>

#include <cmath>
#include <csignal>

namespace sealwalk::tests {

FedDetector::FedDetector()
    : m_pipe(m_folder.filePath(QStringLiteral("detector")).toStdString())
{
    std::signal(SIGPIPE, SIG_IGN);
    (void)::mkfifo(m_pipe.c_str(), 0600);
    QObject::connect(&m_timer, &QTimer::timeout, &m_timer, [this] { say(); });
}

FedDetector::~FedDetector()
{
    goAway();
}

void FedDetector::talk()
{
    m_since.start();
    m_timer.start(10);
}

void FedDetector::goAway()
{
    m_timer.stop();
    if (m_descriptor >= 0)
        ::close(m_descriptor);
    m_descriptor = -1;
}

void FedDetector::say()
{
    if (m_descriptor < 0)
        m_descriptor = ::open(m_pipe.c_str(), O_WRONLY | O_NONBLOCK);
    const double gone = static_cast<double>(m_since.restart()) / 1000.0;
    const double target = helium ? leak : 0.0;
    m_signal = target + (m_signal - target) * std::exp(-gone / tau);
    const QByteArray line = QByteArray::number(background + m_signal, 'e', 4) + '\n';
    if (m_descriptor >= 0)
        (void)!::write(m_descriptor, line.constData(), static_cast<std::size_t>(line.size()));
}

} // namespace sealwalk::tests
