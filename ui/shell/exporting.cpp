// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/exporting.h"

#include "core/analysis/approval.h"
#include "core/analysis/round_summary.h"
#include "core/exchange/files.h"
#include "core/exchange/job_tables.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/table_xlsx.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/map_builder.h"
#include "core/report/shown_unit.h"
#include "core/report/typed_words.h"
#include "core/transfer/earlier_jobs.h"
#include "ui/judge/map_panel.h"
#include "ui/render/map_export.h"
#include "ui/render/painting_thread.h"
#include "ui/session/job_session.h"
#include "ui/shell/long_work.h"
#include "ui/shell/main_window.h"
#include "ui/shell/proposed_file.h"
#include "ui/shell/report_languages.h"
#include "ui/widgets/choose_file.h"
#include "ui/widgets/note_line.h"

#include <QFile>
#include <QFileInfo>
#include <QMap>

#include <algorithm>
#include <map>
#include <memory>
#include <string>
#include <utility>

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

struct MapShown
{
    bool asLeft = false;
    bool echoesTakenOut = false;
};

/// What the work goes by, gathered in the window's thread and taken along.
struct Gathered
{
    exchange::JobRecord record;
    std::map<std::string, model::Picture> pictures; ///< under its sheets, by SHA-256
    bool readings = false;                          ///< the table of readings instead of the findings
    std::vector<model::Repair> carried;             ///< temporary ones of earlier jobs, not made good
    std::optional<MapShown> map;                    ///< as Judge shows it; none: what the job came to
};

using Bytes = Result<std::string>;

Bytes tablesOf(const Gathered& gathered, Form form)
{
    const exchange::JobRecord& record = gathered.record;
    const auto unit = leakRateUnit(record.job.setup.unit);
    if (!unit)
        return fail(unit.error());
    const auto tables = exchange::jobTables(record, *unit);
    if (!tables)
        return fail(tables.error());
    return form == Form::Csv ? exchange::csvOf(gathered.readings ? tables->readings : tables->findings)
                             : exchange::xlsxOf(tables->all(), record.job.opened);
}

Result<render::MapPage> pageOf(const Gathered& gathered, const render::RecordLanguage& language)
{
    const auto& [object, job] = gathered.record;
    report::MapOptions options = report::mapOptions(report::shownUnit(job.setup));
    options.smallestDetectable = report::worstDetectable(job, object);
    options.carried = gathered.carried;
    options.now = analysis::approvalOf(job).value_or(Timestamp::now());
    // What the job came to: as left once something was sprayed again.
    const bool isSprayedAgain =
        std::any_of(job.rounds.begin(), job.rounds.end(), [](const model::Round& round) {
            return round.kind == model::RoundKind::AfterRepair || round.kind == model::RoundKind::Repeat;
        });
    const MapShown shown = gathered.map.value_or(MapShown{isSprayedAgain, false});
    options.echoesTakenOut = shown.echoesTakenOut;
    const auto findings = analysis::summarise(
        job, object, shown.asLeft ? analysis::Standing::AsLeft : analysis::Standing::AsFound);
    render::MapPage page;
    page.language = language;
    page.title = report::typed(object.name) +
                 (object.tag.empty() ? "" : ", asset " + report::typed(object.tag)) + ", job " +
                 std::to_string(job.number);
    page.subtitle = std::string("Leak map, ") + (shown.asLeft ? "as left, " : "as found, ") +
                    (shown.echoesTakenOut ? "echoes taken out, " : "as read, ") +
                    std::string(model::name(job.state)) + ", opened " + job.opened.date() +
                    (object.invented ? "; invented data" : "");
    const auto picture = [&](const std::string& sha256) -> Result<model::Picture> {
        const auto found = gathered.pictures.find(sha256);
        if (found == gathered.pictures.end())
            return fail(ErrorCode::NotFound, "no picture " + sha256);
        return found->second;
    };
    for (const model::Sheet& sheet : job.sketch.sheets) {
        page.sheets.push_back(std::make_shared<const report::MapContent>(
            report::mapOf(job, object, sheet.id, findings, options)));
        page.underlays.push_back(render::underlayOf(sheet, picture));
    }
    if (page.sheets.empty())
        return fail(ErrorCode::NotFound, "the job has no sheet to draw");
    return page;
}

Bytes mapOf(const Gathered& gathered, Form form, const render::RecordLanguage& language,
            const std::stop_token& stop)
{
    const auto page = pageOf(gathered, language);
    if (!page)
        return fail(page.error());
    if (stop.stop_requested())
        return fail(ErrorCode::Cancelled, "the map was not drawn");
    const render::PaintingThread thread;
    return form == Form::Svg ? Bytes(render::mapSvg(*page)) : render::mapPng(*page, kDotsPerInch);
}

Gathered gatherFrom(const JobSession& session)
{
    Gathered gathered;
    gathered.record = {session.object(), session.job()};
    for (const storage::OpenRepair& left : session.repairsLeftOpen())
        gathered.carried.push_back(left.repair);
    for (const model::Sheet& sheet : gathered.record.job.sketch.sheets)
        if (sheet.underlay)
            if (auto picture = session.picture(sheet.underlay->picture))
                gathered.pictures[sheet.underlay->picture] = std::move(*picture);
    return gathered;
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
    const QString findings = MainWindow::tr("Table of findings (*.csv)");
    const QString readings = MainWindow::tr("Table of every reading (*.csv)");
    const QStringList others =
        MainWindow::tr("Workbook (*.xlsx);;Map, scalable (*.svg);;Map, picture (*.png)")
            .split(QStringLiteral(";;"));
    const auto named = [&](const QString& ending) {
        return QFileInfo(proposedFile(window, ending)).fileName();
    };
    QMap<QString, QString> names{{findings, named(QStringLiteral(".csv"))},
                                 {readings, named(QStringLiteral("-readings.csv"))}};
    for (const QString& form : others)
        names.insert(form, named(form.section(QLatin1Char('*'), 1, 1).chopped(1)));
    QString chosen;
    const QString file = chooseFileToWrite(
        &window, MainWindow::tr("Export a table or a map"), proposedFile(window, QStringLiteral(".csv")),
        (QStringList{findings, readings} + others).join(QStringLiteral(";;")), &chosen, names);
    if (file.isEmpty())
        return;
    const auto form = formOf(file);
    if (!form) {
        window.say(Severity::Error, MainWindow::tr("%1 says nothing about its form.").arg(file),
                   MainWindow::tr("End the name with .csv, .xlsx, .svg or .png."));
        return;
    }
    rememberFolder(window, file);
    const bool isMap = *form == Form::Svg || *form == Form::Png;
    Gathered gathered = gatherFrom(window.session());
    gathered.readings = chosen == readings;
    if (const auto* judged = window.findChild<MapPanel*>();
        judged != nullptr && window.stage() == Stage::Judge) // what is looked at is what is written
        gathered.map = MapShown{judged->asLeft(), judged->echoesTakenOut()};
    // The findings are worked out and painted away from the window; written by it, so that what was cancelled
    // is not written, whenever that was.
    runLong<Bytes>(
        window, isMap ? MainWindow::tr("Drawing the map") : MainWindow::tr("Working out the tables"),
        [gathered = std::move(gathered), form = *form, isMap,
         language = reportLanguage(window.settings()).words](const std::stop_token& stop) {
            return isMap ? mapOf(gathered, form, language, stop) : tablesOf(gathered, form);
        },
        [&window, file](const Bytes& bytes) {
            announce(window,
                     bytes ? exchange::writeFile(QFile::encodeName(file).toStdString(), *bytes)
                           : Status(fail(bytes.error())),
                     file);
        });
}

} // namespace sealwalk::ui
