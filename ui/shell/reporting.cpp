// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/reporting.h"

#include "core/exchange/files.h"
#include "ui/render/painting_thread.h"
#include "ui/render/report_pdf.h"
#include "ui/session/job_report.h"
#include "ui/session/job_session.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/proposed_file.h"
#include "ui/shell/report_dialog.h"
#include "ui/shell/report_languages.h"
#include "ui/widgets/choose_file.h"

#include <QFile>
#include <QLocale>

#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace sealwalk::ui {

namespace {

using Prepared = Result<std::shared_ptr<const PreparedReport>>;

render::Paper paperOfLocale()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? render::Paper::Letter
                                                                      : render::Paper::A4;
}

render::PdfOptions optionsFor(std::shared_ptr<const PreparedReport> report, render::RecordLanguage language)
{
    render::PdfOptions options;
    options.paper = paperOfLocale();
    options.language = std::move(language);
    options.pictures = [report = std::move(report)](const std::string& sha256) -> Result<model::Picture> {
        for (const model::Picture& picture : report->pictures)
            if (picture.sha256 == sha256)
                return picture;
        return fail(ErrorCode::NotFound, "no picture " + sha256);
    };
    return options;
}

QString chooseFile(MainWindow& window, QWidget* parent)
{
    QString file =
        chooseFileToWrite(parent, MainWindow::tr("Report as PDF"),
                          proposedFile(window, QStringLiteral(".pdf")), MainWindow::tr("PDF (*.pdf)"));
    if (!file.isEmpty())
        rememberFolder(window, file);
    return file;
}

void announce(MainWindow& window, const Status& written, const QString& file)
{
    if (!written)
        window.report(written.error());
    else
        window.say(Severity::News, MainWindow::tr("Written to %1.").arg(file));
}

void write(MainWindow& window, const report::ReportContent& content, const render::PdfOptions& options,
           const QString& file)
{
    announce(window, render::writeReportPdf(content, QFile::encodeName(file).toStdString(), options), file);
}

void look(MainWindow& window, const std::shared_ptr<const PreparedReport>& prepared)
{
    const render::RecordLanguage language = reportLanguage(window.settings()).words;
    // The content lives in what was prepared.
    ReportDialog dialog(std::shared_ptr<const report::ReportContent>(prepared, &prepared->content),
                        optionsFor(prepared, language), reportLanguages(), &window);
    QObject::connect(&dialog, &ReportDialog::languageChosen, &window,
                     [&window](const QString& code) { window.chooseReportLanguage(code); });
    QObject::connect(&dialog, &ReportDialog::pdfWanted, &dialog, [&] {
        if (const QString file = chooseFile(window, &dialog); !file.isEmpty())
            write(window, prepared->content, dialog.options(), file);
    });
    QObject::connect(&dialog, &ReportDialog::printed, &dialog,
                     [&] { window.say(Severity::News, MainWindow::tr("Sent to print.")); });
    dialog.exec();
}

/// Worked out away from the window; `done` gets it there.
void prepare(MainWindow& window, std::function<void(std::shared_ptr<const PreparedReport>)> done)
{
    const JobSession& session = window.session();
    runLong<Prepared>(
        window, MainWindow::tr("Working out the report"),
        [history = session.historyFile(), job = session.job().id](const std::stop_token&) {
            return prepareReport(history, job);
        },
        [&window, done = std::move(done)](const Prepared& prepared) {
            if (!prepared)
                window.report(prepared.error());
            else
                done(*prepared);
        });
}

} // namespace

void chooseAndReport(MainWindow& window)
{
    const QString file = chooseFile(window, &window);
    if (file.isEmpty())
        return;
    using Bytes = Result<std::string>;
    const JobSession& session = window.session();
    // Painted away from the window, written by it: what was cancelled is not written, whenever that was.
    runLong<Bytes>(
        window, MainWindow::tr("Working out the report"),
        [history = session.historyFile(), job = session.job().id,
         language = reportLanguage(window.settings()).words](const std::stop_token& stop) -> Bytes {
            const Prepared prepared = prepareReport(history, job);
            if (!prepared)
                return fail(prepared.error());
            if (stop.stop_requested())
                return fail(ErrorCode::Cancelled, "the report was not drawn");
            const render::PaintingThread thread;
            render::PdfOptions options = optionsFor(*prepared, language);
            options.stop = stop;
            return render::reportPdf((*prepared)->content, options);
        },
        [&window, file](const Bytes& bytes) {
            announce(window,
                     bytes ? exchange::writeFile(QFile::encodeName(file).toStdString(), *bytes)
                           : Status(fail(bytes.error())),
                     file);
        });
}

void showReport(MainWindow& window)
{
    prepare(window,
            [&window](const std::shared_ptr<const PreparedReport>& prepared) { look(window, prepared); });
}

} // namespace sealwalk::ui
