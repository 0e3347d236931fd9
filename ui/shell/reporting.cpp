// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/reporting.h"

#include "ui/render/report_pdf.h"
#include "ui/session/job_report.h"
#include "ui/session/job_session.h"
#include "ui/shell/main_window.h"
#include "ui/widgets/note_line.h"

#include <QFile>
#include <QFileDialog>
#include <QFutureWatcher>
#include <QLocale>
#include <QtConcurrent>

namespace sealwalk::ui {

namespace {

using Prepared = Result<std::shared_ptr<const PreparedReport>>;

render::Paper paperOfLocale()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? render::Paper::Letter
                                                                      : render::Paper::A4;
}

void write(MainWindow& window, const Prepared& prepared, const QString& file)
{
    if (!prepared) {
        window.report(prepared.error());
        return;
    }
    render::PdfOptions options;
    options.paper = paperOfLocale();
    options.pictures = [report = *prepared](const std::string& sha256) -> Result<model::Picture> {
        for (const model::Picture& picture : report->pictures)
            if (picture.sha256 == sha256)
                return picture;
        return fail(ErrorCode::NotFound, "no picture " + sha256);
    };
    const Status written =
        render::writeReportPdf((*prepared)->content, QFile::encodeName(file).toStdString(), options);
    if (!written)
        window.report(written.error());
    else
        window.say(Severity::News, MainWindow::tr("Written to %1.").arg(file));
}

} // namespace

void chooseAndReport(MainWindow& window)
{
    const JobSession& session = window.session();
    const QString folder = QString::fromStdString(session.historyFile().parent_path().string());
    const QString file = QFileDialog::getSaveFileName(
        &window, MainWindow::tr("Report as PDF"),
        QStringLiteral("%1/job-%2.pdf").arg(folder).arg(session.job().number), MainWindow::tr("PDF (*.pdf)"));
    if (file.isEmpty())
        return;
    window.noteLine().showProgress(MainWindow::tr("Working out the report"), -1.0);
    auto* watcher = new QFutureWatcher<Prepared>(&window);
    QObject::connect(watcher, &QFutureWatcher<Prepared>::finished, &window, [&window, watcher, file] {
        window.noteLine().endProgress();
        write(window, watcher->result(), file);
        watcher->deleteLater();
    });
    watcher->setFuture(QtConcurrent::run(
        [history = session.historyFile(), job = session.job().id] { return prepareReport(history, job); }));
}

} // namespace sealwalk::ui
