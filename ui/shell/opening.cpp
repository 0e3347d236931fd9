// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/opening.h"

#include "core/storage/history_store.h"
#include "ui/session/job_session.h"
#include "ui/shell/main_window.h"

#include <QFile>
#include <QFileDialog>

#include <filesystem>

namespace sealwalk::ui {

namespace {

QString tr(const char* text)
{
    return MainWindow::tr(text);
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
    window.say(Severity::News, tr("History: %1").arg(file));
}

void openFile(MainWindow& window, const QString& file)
{
    openHistory(window, file, false);
}

void openAtStart(MainWindow& window, const QString& file)
{
    if (!file.isEmpty()) {
        openFile(window, file);
        return;
    }
    const std::filesystem::path own = storage::defaultHistoryFile();
    std::error_code ignored; // opening says what is wrong with the folder
    std::filesystem::create_directories(own.parent_path(), ignored);
    openHistory(window, QString::fromStdString(own.string()), true);
}

void chooseAndOpen(MainWindow& window)
{
    const QString file = QFileDialog::getOpenFileName(&window, tr("Open a history"), folderOf(window),
                                                      tr("Histories (*.sealwalk);;All files (*)"));
    if (!file.isEmpty())
        openFile(window, file);
}

void chooseAndCreateHistory(MainWindow& window)
{
    QString file = QFileDialog::getSaveFileName(&window, tr("New history file"), folderOf(window),
                                                tr("Histories (*.sealwalk)"));
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
    const QString file = QFileDialog::getSaveFileName(&window, tr("Back up the history"), folderOf(window),
                                                      tr("Histories (*.sealwalk)"));
    if (file.isEmpty())
        return;
    if (const Status copied = window.session().history().backup(pathOf(file)); !copied)
        window.report(copied.error());
    else
        window.say(Severity::News, tr("Backed up to %1.").arg(file));
}

void checkHistory(MainWindow& window)
{
    const auto problems = window.session().history().check();
    if (!problems)
        window.report(problems.error());
    else if (problems->empty())
        window.say(Severity::News, tr("The history is sound."));
    else
        for (const std::string& problem : *problems)
            window.say(Severity::Error, QString::fromStdString(problem));
}

} // namespace sealwalk::ui
