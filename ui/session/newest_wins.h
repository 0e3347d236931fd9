// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the GUI thread: one piece at a time, the newest request wins, late results are dropped.
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QtConcurrent>

#include <functional>
#include <optional>
#include <utility>

namespace sealwalk::ui {

/// Lives in its owner; results arrive on the owner's thread and only while this lives.
template <class Result>
class NewestWins
{
public:
    using Work = std::function<Result()>; ///< holds a snapshot of its own; touches nothing shared
    using Deliver = std::function<void(Result)>;

    explicit NewestWins(Deliver deliver)
        : m_deliver(std::move(deliver))
    {
        QObject::connect(&m_watcher, &QFutureWatcher<Result>::finished, &m_watcher, [this] { finished(); });
    }

    ~NewestWins()
    {
        m_pending.reset();
        m_watcher.disconnect();
        m_watcher.waitForFinished();
    }

    NewestWins(const NewestWins&) = delete;
    NewestWins& operator=(const NewestWins&) = delete;

    void request(Work work)
    {
        if (m_watcher.isRunning() || m_busy) {
            m_pending = std::move(work);
            return;
        }
        m_busy = true;
        m_watcher.setFuture(QtConcurrent::run(std::move(work)));
    }

    /// Forgets what was asked for; an answer still on its way is dropped.
    void drop()
    {
        m_pending.reset();
        m_dropped = m_busy;
    }

    [[nodiscard]] bool isBusy() const { return m_busy; }

private:
    void finished()
    {
        m_busy = false;
        const bool dropped = std::exchange(m_dropped, false);
        if (m_pending) {
            Work next = std::move(*m_pending);
            m_pending.reset();
            request(std::move(next));
            return; // the newer request makes this answer old
        }
        if (!dropped)
            m_deliver(m_watcher.result());
    }

    Deliver m_deliver;
    QFutureWatcher<Result> m_watcher;
    std::optional<Work> m_pending;
    bool m_busy = false;
    bool m_dropped = false;
};

} // namespace sealwalk::ui
