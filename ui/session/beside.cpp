// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/beside.h"

#include <fcntl.h>
#include <unistd.h>

#include <QSocketNotifier>

#include <cerrno>
#include <system_error>

namespace sealwalk::ui {

BesideRun::BesideRun(QObject* owner, std::function<void()> work, std::function<void()> ended)
    : QObject(owner)
    , m_ended(std::move(ended))
{
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0) // out of descriptors: as fatal as being out of memory
        throw std::system_error(errno, std::generic_category(), "pipe");
    m_listens = ends[0];
    m_notifier = new QSocketNotifier(m_listens, QSocketNotifier::Read, this);
    connect(m_notifier, &QSocketNotifier::activated, this, [this] {
        m_notifier->setEnabled(false);
        // From the loop, not from within the notifier: the owner may end itself at the answer.
        QMetaObject::invokeMethod(this, &BesideRun::end, Qt::QueuedConnection);
    });
    m_thread = std::thread([work = std::move(work), tells = ends[1]]() mutable {
        work();
        work = {}; // what it held ends here, before anybody is told
        ::close(tells);
    });
}

BesideRun::~BesideRun()
{
    if (m_thread.joinable())
        m_thread.join();
    delete m_notifier; // before its descriptor
    ::close(m_listens);
}

void BesideRun::end()
{
    m_thread.join();
    deleteLater();
    const std::function<void()> ended = std::move(m_ended);
    ended(); // the last thing: this may be gone afterwards
}

} // namespace sealwalk::ui
