// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/reporting.h"

#include "ui/render/report_pdf.h"
#include "ui/session/job_report.h"
#include "ui/session/job_session.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/proposed_file.h"
#include "ui/widgets/choose_file.h"

#include <QFile>
#include <QLocale>

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
    const QString file =
        chooseFileToWrite(&window, MainWindow::tr("Report as PDF"),
                          proposedFile(window, QStringLiteral(".pdf")), MainWindow::tr("PDF (*.pdf)"));
    if (file.isEmpty())
        return;
    rememberFolder(window, file);
    runLong<Prepared>(
        window, MainWindow::tr("Working out the report"),
        [history = session.historyFile(), job = session.job().id](const std::stop_token&) {
            return prepareReport(history, job);
        },
        [&window, file](const Prepared& prepared) { write(window, prepared, file); });
}

} // namespace sealwalk::ui
