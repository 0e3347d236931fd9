// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/exporting.h"

#include "core/analysis/round_summary.h"
#include "core/exchange/files.h"
#include "core/exchange/job_tables.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/table_xlsx.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/map_builder.h"
#include "core/report/shown_unit.h"
#include "core/transfer/earlier_jobs.h"
#include "ui/render/map_export.h"
#include "ui/session/job_session.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/proposed_file.h"
#include "ui/widgets/choose_file.h"
#include "ui/widgets/note_line.h"

#include <QFile>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr double kDotsPerInch = 192.0;

enum class Form
{
    Csv,
    Xlsx,
    Svg,
    Png,
};

std::optional<Form> formOf(const QString& file)
{
    const std::pair<const char*, Form> endings[] = {
        {".csv", Form::Csv}, {".xlsx", Form::Xlsx}, {".svg", Form::Svg}, {".png", Form::Png}};
    for (const auto& [ending, form] : endings)
        if (file.endsWith(QLatin1String(ending), Qt::CaseInsensitive))
            return form;
    return std::nullopt;
}

Status writeTables(const exchange::JobRecord& record, Form form, const std::string& file,
                   const std::stop_token& stop)
{
    const auto unit = leakRateUnit(record.job.setup.unit);
    if (!unit)
        return fail(unit.error());
    const auto tables = exchange::jobTables(record, *unit);
    if (!tables)
        return fail(tables.error());
    const auto bytes =
        form == Form::Csv
            ? exchange::csvOf(tables->findings)
            : exchange::xlsxOf({tables->asLeft, tables->findings, tables->readings}, record.job.opened);
    if (!bytes)
        return fail(bytes.error());
    return stop.stop_requested() ? Status() : exchange::writeFile(file, *bytes);
}

Result<render::MapPage> pageOf(const JobSession& session)
{
    const model::Job& job = session.job();
    report::MapOptions options = report::mapOptions(report::shownUnit(job.setup));
    options.smallestDetectable = report::worstDetectable(job, session.object());
    options.now = transfer::approvalOf(job).value_or(Timestamp::now());
    // What the job came to: as left once something was sprayed again.
    const bool again = std::any_of(job.rounds.begin(), job.rounds.end(), [](const model::Round& round) {
        return round.kind == model::RoundKind::AfterRepair || round.kind == model::RoundKind::Repeat;
    });
    const auto findings = analysis::summarise(
        job, session.object(), again ? analysis::Standing::AsLeft : analysis::Standing::AsFound);
    render::MapPage page;
    page.title = session.object().name + ", job " + std::to_string(job.number);
    page.subtitle = std::string("Leak map, ") + (again ? "as left" : "as found") + ", as read, " +
                    std::string(model::name(job.state)) + ", opened " + job.opened.date() +
                    (session.object().invented ? "; invented data" : "");
    for (const model::Sheet& sheet : job.sketch.sheets) {
        page.sheets.push_back(std::make_shared<const report::MapContent>(
            report::mapOf(job, session.object(), sheet.id, findings, options)));
        page.underlays.push_back(
            render::underlayOf(sheet, [&](const std::string& sha256) { return session.picture(sha256); }));
    }
    if (page.sheets.empty())
        return fail(ErrorCode::NotFound, "the job has no sheet to draw");
    return page;
}

void announce(MainWindow& window, const Status& written, const QString& file)
{
    if (!written)
        window.report(written.error());
    else
        window.say(Severity::News, MainWindow::tr("Written to %1.").arg(file));
}

} // namespace

void chooseAndExport(MainWindow& window)
{
    const JobSession& session = window.session();
    const QString file = chooseFileToWrite(
        &window, MainWindow::tr("Export a table or a map"), proposedFile(window, QStringLiteral(".csv")),
        MainWindow::tr("Table (*.csv);;Workbook (*.xlsx);;Map, scalable (*.svg);;Map, picture (*.png)"));
    if (file.isEmpty())
        return;
    const auto form = formOf(file);
    if (!form) {
        window.say(Severity::Error, MainWindow::tr("%1 says nothing about its form.").arg(file),
                   MainWindow::tr("End the name with .csv, .xlsx, .svg or .png."));
        return;
    }
    rememberFolder(window, file);
    const std::string path = QFile::encodeName(file).toStdString();
    if (*form == Form::Svg || *form == Form::Png) {
        const auto page = pageOf(session);
        announce(window,
                 !page                ? Status(fail(page.error()))
                 : *form == Form::Svg ? render::writeMapSvg(*page, path)
                                      : render::writeMapPng(*page, path, kDotsPerInch),
                 file);
        return;
    }
    // The findings of every round are worked out for the tables: away from the window.
    runLong<Status>(
        window, MainWindow::tr("Working out the tables"),
        [record = exchange::JobRecord{session.object(), session.job()}, form = *form,
         path](const std::stop_token& stop) { return writeTables(record, form, path, stop); },
        [&window, file](const Status& written) { announce(window, written, file); });
}

} // namespace sealwalk::ui
