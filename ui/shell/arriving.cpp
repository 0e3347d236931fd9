// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/arriving.h"

#include "core/storage/history_store.h"
#include "ui/render/core_words.h"
#include "ui/session/job_files.h"
#include "ui/session/job_session.h"
#include "ui/shell/continuation_words.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/merge_summary.h"
#include "ui/widgets/choose_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QMessageBox>
#include <QTimer>

#include <atomic>
#include <memory>

namespace sealwalk::ui {

namespace {

using transfer::Outcome;
using transfer::TakenIn;

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

/// Whether to go on; says why not.
bool mayTakeIn(MainWindow& window, const exchange::JobRecord& record)
{
    const auto standing = transfer::standingOf(window.session().history(), record);
    if (!standing) {
        window.report(standing.error());
        return false;
    }
    if (!*standing)
        return true; // it is not here yet
    const auto here = window.session().history().job(record.job.id);
    const int number = here ? here->number : record.job.number;
    if ((*standing)->standing == exchange::Standing::Forked) {
        window.say(
            Severity::Error,
            tr("Job %1 is here already and went on in both places, as far as can be told; they differ in: "
               "%2. Nothing was changed.")
                .arg(number)
                .arg(partInWords((*standing)->differs)),
            tr("Make that the same in both and take it in again, or go on with one of the two and enter what "
               "the other has more."));
        return false;
    }
    if ((*standing)->standing != exchange::Standing::Further)
        return true;
    const auto answer = QMessageBox::question(
        &window, tr("Job from elsewhere"),
        tr("Job %1 is here already, and the file has it further on:\n%2.\n\nTake that in?")
            .arg(number)
            .arg(aheadInWords(**standing)));
    if (answer == QMessageBox::Yes)
        return true;
    window.say(Severity::News, tr("Nothing was taken in."));
    return false;
}

QString newsOf(const TakenIn& taken)
{
    const int number = taken.number;
    const exchange::Continuation& continuation = taken.continuation;
    if (taken.outcome == Outcome::WentOn)
        return tr("Job %1 went on: %2.").arg(number).arg(aheadInWords(continuation));
    if (taken.outcome == Outcome::Known && continuation.standing == exchange::Standing::Behind)
        return tr("Job %1 is here already, and further on here: %2. Nothing was taken in.")
            .arg(number)
            .arg(aheadInWords(continuation));
    if (taken.outcome == Outcome::Known)
        return tr("Job %1 was here already, unchanged.").arg(number);
    // Whoever writes a file makes its checksums; only a signature says that nobody changed it since.
    if (taken.isSigned())
        return tr("Job %1 was taken in, unchanged since it was signed.").arg(number);
    return tr("Job %1 was taken in. Nobody has signed it: whether it was changed since it was written cannot "
              "be "
              "told.")
        .arg(number);
}

} // namespace

void takeInFile(MainWindow& window, const std::filesystem::path& file, Result<transfer::Checked> checked)
{
    if (checked && checked->result.ok() && !mayTakeIn(window, checked->file.record))
        return;
    const auto taken = checked ? takeIn(window.session(), file, *std::move(checked))
                               : Result<TakenIn>(fail(checked.error()));
    if (!taken) {
        window.report(taken.error());
        return;
    }
    if (const Status opened = window.session().openJob(taken->job); !opened) {
        window.report(opened.error());
        return;
    }
    window.showStageOfWork();
    window.say(Severity::News, newsOf(*taken));
    for (const std::string& note : taken->result.notes)
        window.say(Severity::Caution, render::inWords(note));
}

void mergeHistory(MainWindow& window, const std::filesystem::path& from)
{
    using Answers = Result<std::vector<transfer::TakenIn>>;
    const std::filesystem::path into = window.session().historyFile();
    std::error_code ignored;
    if (std::filesystem::equivalent(from, into, ignored)) {
        window.say(Severity::Caution, tr("This is the history that is open; choose another."));
        return;
    }
    struct Progress
    {
        std::atomic<std::size_t> done = 0;
        std::atomic<std::size_t> all = 0;
    };
    auto progress = std::make_shared<Progress>();
    const QString what = tr("Taking in the jobs of another history");
    const QPointer<QTimer> telling = new QTimer(&window);
    const bool begun = runLong<Answers>(
        window, what,
        [from, into, progress](const std::stop_token& stop) -> Answers {
            const auto source = storage::HistoryStore::open(from, storage::HistoryStore::Mode::ReadOnly);
            if (!source)
                return fail(source.error());
            auto store = storage::HistoryStore::open(into, storage::HistoryStore::Mode::ReadWrite);
            if (!store)
                return fail(store.error());
            return transfer::takeInAll(*store, *source, stop, [&](std::size_t done, std::size_t all) {
                progress->done = done;
                progress->all = all;
            });
        },
        [&window, telling](Answers answers) {
            delete telling.data();
            emit window.session().historyChanged();
            if (!answers) {
                window.report(answers.error());
                return;
            }
            MergeSummary summary(*answers, &window);
            window.say(Severity::News, summary.headline());
            summary.exec();
        },
        tr("Cancelled; the jobs that had come until then stay."),
        [&window] { emit window.session().historyChanged(); });
    if (!begun) {
        delete telling.data();
        return;
    }
    constexpr int kTellEvery = 200; // ms
    QObject::connect(telling, &QTimer::timeout, &window, [&window, what, progress, telling] {
        if (!window.noteLine().isWorking()) { // cancelled
            telling->deleteLater();
            return;
        }
        if (progress->all > 0)
            window.noteLine().showProgress(what, static_cast<double>(progress->done) /
                                                     static_cast<double>(progress->all));
    });
    telling->start(kTellEvery);
}

void chooseAndMerge(MainWindow& window)
{
    const QString file =
        chooseFileToOpen(&window, tr("Take in another history"),
                         QString::fromStdString(window.session().historyFile().parent_path().string()),
                         tr("Histories (*.sealwalk)"));
    if (!file.isEmpty())
        mergeHistory(window, {QFile::encodeName(file).toStdString()});
}

} // namespace sealwalk::ui
