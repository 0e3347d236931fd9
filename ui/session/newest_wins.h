// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the GUI thread: one piece at a time, the newest request wins.
#pragma once

#include "ui/session/beside.h"

#include <QObject>

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
    /// On the owner's thread, when the work begins: at once, or before the answer of the last one is told.
    using Prepare = std::function<Work()>;
    using Deliver = std::function<void(Result)>;

    /// What becomes of an answer when a newer request already waits.
    enum class Overtaken
    {
        Dropped,
        Delivered, ///< better an answer of a moment ago than none while requests keep coming
    };

    explicit NewestWins(Deliver deliver, Overtaken overtaken = Overtaken::Dropped)
        : m_deliver(std::move(deliver))
        , m_overtaken(overtaken)
    {}

    NewestWins(const NewestWins&) = delete;
    NewestWins& operator=(const NewestWins&) = delete;

    void request(Work work)
    {
        requestOf([work = std::move(work)]() mutable { return std::move(work); });
    }

    /// For a snapshot that is dear to take: taken once per piece of work, not once per request.
    void requestOf(Prepare prepare)
    {
        if (m_busy) {
            m_pending = std::move(prepare);
            return;
        }
        m_busy = true;
        runBeside<Result>(&m_owner, prepare(), [this](Result answer) { finished(std::move(answer)); });
    }

    /// Forgets what was asked for; an answer still on its way is dropped.
    void drop()
    {
        m_pending.reset();
        m_dropped = m_busy;
    }

    [[nodiscard]] bool isBusy() const { return m_busy; }

private:
    void finished(Result found)
    {
        m_busy = false;
        const bool dropped = std::exchange(m_dropped, false);
        const bool old = m_pending.has_value();
        std::optional<Result> answer;
        if (!dropped && (!old || m_overtaken == Overtaken::Delivered))
            answer = std::move(found);
        if (old) {
            Prepare next = std::move(*m_pending);
            m_pending.reset();
            requestOf(std::move(next));
        }
        if (answer)
            m_deliver(std::move(*answer));
    }

    Deliver m_deliver;
    Overtaken m_overtaken;
    std::optional<Prepare> m_pending;
    bool m_busy = false;
    bool m_dropped = false;
    QObject m_owner; ///< of the work; the last member, so that it ends first and waits for it
};

} // namespace sealwalk::ui
