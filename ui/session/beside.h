// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of work beside the window: in a thread of its own, its answer in the owner's.
//
// Qt's own tools for this would do as well, but their locks are not to be seen by the thread sanitizer, which
// then calls every answer a race. Here everything that passes between the threads passes by a pipe and by the
// end of the thread, and the sanitizer keeps watch over it.
#pragma once

#include <QObject>

#include <functional>
#include <memory>
#include <optional>
#include <thread>
#include <utility>

class QSocketNotifier;

namespace sealwalk::ui {

/// One thread, from its start until its end was told. Lives as a child of its owner; an owner that goes away
/// first waits for the thread and hears nothing.
class BesideRun : public QObject
{
    Q_OBJECT

public:
    /// Runs `work` in a thread of its own and then `ended` in the event loop of the owner's thread.
    BesideRun(QObject* owner, std::function<void()> work, std::function<void()> ended);
    ~BesideRun() override;

private:
    void end();

    int m_listens = -1; ///< end of the pipe that the thread closes the other end of
    std::function<void()> m_ended;
    QSocketNotifier* m_notifier = nullptr;
    std::thread m_thread;
};

/// Runs `work` in a thread of its own and gives its answer to `done` in `owner`'s thread, from its event
/// loop; never when `owner` dies first, which waits for the thread. `work` touches nothing that is shared.
template <class Answer>
void runBeside(QObject* owner, std::function<Answer()> work, std::function<void(Answer)> done)
{
    auto answer = std::make_shared<std::optional<Answer>>();
    new BesideRun( // a child of its owner, gone after the answer
        owner, [answer, work = std::move(work)] { answer->emplace(work()); },
        [answer, done = std::move(done)] { done(*std::move(*answer)); });
}

} // namespace sealwalk::ui
