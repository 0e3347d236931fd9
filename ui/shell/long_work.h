// SPDX-License-Identifier: GPL-3.0-or-later
// Work above a second: away from the window, under a bar with Cancel in the note line.
#pragma once

#include "ui/session/beside.h"
#include "ui/shell/main_window.h"
#include "ui/widgets/note_line.h"

#include <QPointer>

#include <functional>
#include <stop_token>
#include <utility>

namespace sealwalk::ui {

/// Runs `work` in a thread of its own and gives its answer to `done` in the window's. After Cancel nothing is
/// given; `work` sees it by its token and leaves nothing behind, or `cancelled` says what stays, and `ended`
/// is called when the work has come to its end. One at a time: false when another goes on.
template <typename Answer>
bool runLong(MainWindow& window, const QString& what, std::function<Answer(std::stop_token)> work,
             std::function<void(Answer)> done,
             const QString& cancelled = MainWindow::tr("Cancelled; nothing was written."),
             std::function<void()> ended = {})
{
    NoteLine& line = window.noteLine();
    if (line.isWorking()) {
        window.say(Severity::Caution, MainWindow::tr("Something else is still being worked out."),
                   MainWindow::tr("Wait for it, or cancel it."));
        return false;
    }
    line.showProgress(what, -1.0);
    const QPointer<QObject> cancelling = new QObject(&window); // lives as long as Cancel means this work
    const std::stop_source stop;
    QObject::connect(&line, &NoteLine::cancelled, cancelling,
                     [&window, cancelling, stop, cancelled]() mutable {
                         stop.request_stop();
                         cancelling->deleteLater(); // this work may go on for a while, beside the next one
                         window.noteLine().endProgress();
                         window.say(Severity::News, cancelled);
                     });
    runBeside<Answer>(
        &window, [work = std::move(work), token = stop.get_token()] { return work(token); },
        [&window, cancelling, stop, done = std::move(done), ended = std::move(ended)](Answer answer) {
            delete cancelling.data(); // at once: what is done now may open a dialog, or begin other work
            if (stop.stop_requested()) {
                if (ended)
                    ended();
                return;
            }
            window.noteLine().endProgress();
            done(std::move(answer));
        });
    return true;
}

} // namespace sealwalk::ui
