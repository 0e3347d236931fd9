// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/destinations.h"

#include "core/storage/history_store.h"
#include "ui/history/history_page.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/shell/main_window.h"

#include <QCoreApplication>

#include <iterator>

namespace sealwalk::ui {

namespace {

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

/// The stage in view keeps its place when it shows points; else the drawing is where a point is found.
void goToPoint(MainWindow& window, model::PointId point)
{
    window.session().select(point);
    const Stage now = window.stage();
    if (now == Stage::Prepare || now == Stage::History || now == Stage::SignOff)
        window.showStage(window.page(Stage::Judge) != nullptr ? Stage::Judge : Stage::Sketch);
}

void addJobs(std::vector<Destination>& result, MainWindow& window)
{
    if (!window.session().hasHistory())
        return;
    const auto jobs = window.session().history().jobs();
    if (!jobs)
        return;
    for (const storage::JobRow& row : *jobs) {
        const model::JobId id = row.id;
        result.push_back(
            {QStringLiteral("%1   %2, %3")
                 .arg(row.number)
                 .arg(QString::fromStdString(row.objectName), QString::fromStdString(row.opened.date())),
             tr("job"), [&window, id] { window.historyPage().openJob(id); }});
    }
}

} // namespace

std::vector<Destination> destinations(MainWindow& window, std::vector<Destination> commands)
{
    std::vector<Destination> result;
    JobSession& session = window.session();
    if (session.hasJob()) {
        const model::Sketch& sketch = session.job().sketch;
        for (const model::TestPoint* point : sketch.activePoints()) {
            const model::Joint* joint = sketch.joint(point->joint);
            const QString where = joint == nullptr ? QString() : QString::fromStdString(joint->name);
            const model::PointId id = point->id;
            result.push_back({QStringLiteral("%1   %2, %3")
                                  .arg(point->number)
                                  .arg(where, render::inWords(model::placeText(sketch, *point))),
                              tr("point"), [&window, id] { goToPoint(window, id); }});
        }
        for (const model::Joint& joint : sketch.joints) {
            const auto points = sketch.pointsOn(joint.id);
            if (points.empty())
                continue;
            const model::PointId first = points.front()->id;
            result.push_back({QString::fromStdString(joint.name), tr("joint"),
                              [&window, first] { goToPoint(window, first); }});
        }
    }
    addJobs(result, window);
    if (session.hasHistory())
        if (const auto objects = session.history().objects())
            for (const storage::ObjectRow& row : *objects) {
                const QString name = QString::fromStdString(row.name);
                result.push_back({name, tr("object"), [&window, name] {
                                      window.showStage(Stage::History);
                                      window.historyPage().search(name);
                                  }});
            }
    result.insert(result.end(), std::make_move_iterator(commands.begin()),
                  std::make_move_iterator(commands.end()));
    return result;
}

} // namespace sealwalk::ui
