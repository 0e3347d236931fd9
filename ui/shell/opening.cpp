// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/opening.h"

#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "demo/history/demo_history.h"
#include "ui/history/history_page.h"
#include "ui/render/core_words.h"
#include "ui/session/job_files.h"
#include "ui/session/job_session.h"
#include "ui/shell/arriving.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/temporary_repairs.h"
#include "ui/sketch/sketch_page.h"
#include "ui/widgets/choose_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QMessageBox>

#include <algorithm>
#include <filesystem>

namespace sealwalk::ui {

namespace {

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

std::filesystem::path pathOf(const QString& file)
{
    return {QFile::encodeName(file).toStdString()};
}

QString folderOf(const MainWindow& window)
{
    return QString::fromStdString(window.session().historyFile().parent_path().string());
}

} // namespace

void openHistory(MainWindow& window, const QString& file, bool createWhenMissing)
{
    if (const Status opened = window.session().openHistory(pathOf(file), createWhenMissing); !opened) {
        window.report(opened.error());
        return;
    }
    window.showStage(Stage::History);
    QStringList left{overdueRepairsNote(window.session()), endingConcessionsNote(window.session())};
    left.removeAll(QString());
    if (!left.isEmpty())
        window.say(Severity::Caution, left.join(QLatin1Char(' ')));
    else
        window.say(Severity::News, tr("History: %1").arg(file));
}

void openOwnHistory(MainWindow& window)
{
    const std::filesystem::path own = storage::defaultHistoryFile();
    std::error_code ignored; // opening says what is wrong with the folder
    std::filesystem::create_directories(own.parent_path(), ignored);
    openHistory(window, QString::fromStdString(own.string()), true);
}

namespace {

void announce(MainWindow& window, const Status& done, const QString& words)
{
    if (!done)
        window.report(done.error());
    else
        window.say(Severity::News, words);
}

/// A history that was named at the start and is not there yet.
bool mayMake(MainWindow& window, const QString& file)
{
    return QMessageBox::question(
               &window, tr("New history"),
               tr("There is no history %1 yet. Make it?").arg(QDir::toNativeSeparators(file))) ==
           QMessageBox::Yes;
}

bool isJobFile(const QString& file)
{
    return file.endsWith(QStringLiteral(".sealjob"), Qt::CaseInsensitive);
}

} // namespace

void openFile(MainWindow& window, const QString& file)
{
    if (!isJobFile(file)) {
        openHistory(window, file, false);
        return;
    }
    if (!window.session().hasHistory())
        openOwnHistory(window);
    if (!window.session().hasHistory())
        return;
    runLong<Result<transfer::Checked>>(
        window, tr("Checking the job file"),
        [path = pathOf(file)](const std::stop_token&) { return readJobFile(path); },
        [&window, file](Result<transfer::Checked> checked) {
            takeInFile(window, pathOf(file), std::move(checked));
        });
}

void chooseAndPack(MainWindow& window)
{
    const QString proposed =
        folderOf(window) + QStringLiteral("/job-%1.sealjob").arg(window.session().job().number);
    const QString file =
        chooseFileToWrite(&window, tr("Write a job file"), proposed, tr("Job files (*.sealjob)"));
    if (file.isEmpty())
        return;
    runLong<Status>(
        window, tr("Writing the job file"),
        [history = window.session().historyFile(), job = window.session().job().id,
         path = pathOf(file)](const std::stop_token& stop) { return writeJobFile(history, job, path, stop); },
        [&window, file](const Status& written) {
            announce(window, written, tr("Written to %1.").arg(file));
        });
}

void openDemo(MainWindow& window)
{
    const std::filesystem::path folder = storage::defaultHistoryFile().parent_path();
    const std::filesystem::path file = folder / "demo.sealwalk";
    std::error_code ignored; // writing says what is wrong with the folder
    std::filesystem::create_directories(folder, ignored);
    const auto show = [&window, file](const Status& written) {
        if (!written) {
            window.report(written.error());
            return;
        }
        openHistory(window, QString::fromStdString(file.string()), false);
        window.say(Severity::News, tr("The demo: all data invented."),
                   tr("Its people sign with the passphrase “%1”.")
                       .arg(QString::fromUtf8(demo::kDemoPassphrase.data())));
    };
    if (std::filesystem::exists(file, ignored)) {
        show({});
        return;
    }
    runLong<Status>(
        window, tr("Making the demo: a walk round an invented coater"),
        [file](const std::stop_token& stop) { return demo::writeDemoHistory(file, stop); }, show);
}

void startFromPicture(MainWindow& window)
{
    auto* sketch = qobject_cast<SketchPage*>(window.page(Stage::Sketch));
    const QString file = chooseFileToOpen(&window, tr("A photo or drawing"), {},
                                          tr("Pictures (*.png *.jpg *.jpeg *.svg *.pdf)"));
    if (file.isEmpty() || sketch == nullptr)
        return;
    window.session().closeJob();
    window.historyPage().startNewObject();
    if (!window.session().hasJob())
        return;
    window.showStage(Stage::Sketch);
    sketch->usePicture(file, 0, true);
}

namespace {

/// Work that was broken off goes on where it was; what is submitted, signed or gone is found in the history.
void goOnWithLastJob(MainWindow& window)
{
    JobSession& session = window.session();
    if (!session.hasHistory() || session.hasJob())
        return;
    const ShellSettings::LastJob kept =
        window.settings().lastJobIn(QString::fromStdString(session.historyFile().string()));
    const auto job = model::JobId::parse(kept.job.toStdString());
    const auto object = model::ObjectId::parse(kept.object.toStdString());
    if (!job || !object)
        return;
    const auto rows = session.history().jobsOf(*object);
    const bool isOpen = rows && std::ranges::any_of(*rows, [&](const storage::JobRow& row) {
                            return row.id == *job && (row.state == model::JobState::Open ||
                                                      row.state == model::JobState::Returned);
                        });
    if (!isOpen)
        return;
    const bool isWarned = !overdueRepairsNote(session).isEmpty() || !endingConcessionsNote(session).isEmpty();
    if (!isWarned) // before it is opened: what the job itself warns of goes over it
        window.say(Severity::News, tr("The job that was open goes on; History has the others."));
    if (session.openJob(*job))
        window.showStageOfWork();
}

} // namespace

void openAtStart(MainWindow& window, const QString& file)
{
    if (file.isEmpty()) {
        openOwnHistory(window);
        goOnWithLastJob(window);
        return;
    }
    std::error_code ignored;
    const bool isMissing = !isJobFile(file) && !std::filesystem::exists(pathOf(file), ignored);
    if (isMissing && mayMake(window, file))
        openHistory(window, file, true);
    else
        openFile(window, file);
    if (!isJobFile(file))
        goOnWithLastJob(window);
}

void chooseAndOpen(MainWindow& window)
{
    const QString file =
        chooseFileToOpen(&window, tr("Open a history"), folderOf(window),
                         tr("Histories and job files (*.sealwalk *.sealjob);;All files (*)"));
    if (!file.isEmpty())
        openFile(window, file);
}

void chooseAndCreateHistory(MainWindow& window)
{
    QString file =
        chooseFileToWrite(&window, tr("New history file"), folderOf(window), tr("Histories (*.sealwalk)"));
    if (file.isEmpty())
        return;
    if (!file.endsWith(QStringLiteral(".sealwalk")))
        file += QStringLiteral(".sealwalk");
    if (QFile::exists(file)) {
        window.say(Severity::Error, tr("%1 exists already.").arg(file),
                   tr("Choose another name, or open it."));
        return;
    }
    openHistory(window, file, true);
}

void chooseAndBackUp(MainWindow& window)
{
    const QString file =
        chooseFileToWrite(&window, tr("Back up the history"), folderOf(window), tr("Histories (*.sealwalk)"));
    if (file.isEmpty())
        return;
    const auto told = [&window, file](const Status& copied) {
        announce(window, copied, tr("Backed up to %1.").arg(file));
    };
    const std::filesystem::path history = window.session().historyFile();
    std::error_code ignored;
    if (!std::filesystem::exists(history, ignored)) { // taken away; what this window holds is all there is
        told(window.session().history().backup(pathOf(file)));
        return;
    }
    runLong<Status>(
        window, tr("Backing up the history"),
        [history, path = pathOf(file)](const std::stop_token& stop) -> Status {
            const auto store = storage::HistoryStore::open(history, storage::HistoryStore::Mode::ReadOnly);
            return store ? store->backup(path, stop) : fail(store.error());
        },
        told);
}

namespace {

using Problems = Result<std::vector<std::string>>;

void tellProblems(MainWindow& window, const Problems& problems)
{
    if (!problems)
        window.report(problems.error());
    else if (problems->empty())
        window.say(Severity::News, tr("The history is sound."));
    else {
        // In one message: one line after the other would leave only the last to be read.
        QStringList lines;
        for (const std::string& problem : *problems)
            lines.append(render::inWords(problem));
        window.say(Severity::Error,
                   tr("The history is not sound, %n problem(s): %1.", nullptr, static_cast<int>(lines.size()))
                       .arg(lines.join(QStringLiteral("; "))));
    }
}

} // namespace

void checkHistory(MainWindow& window)
{
    runLong<Problems>(
        window, tr("Checking the history"),
        [history = window.session().historyFile()](const std::stop_token& stop) -> Problems {
            const auto store = storage::HistoryStore::open(history, storage::HistoryStore::Mode::ReadOnly);
            return store ? transfer::problemsOf(*store, stop) : fail(store.error());
        },
        [&window](const Problems& problems) { tellProblems(window, problems); });
}

} // namespace sealwalk::ui
