// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/map_side.h"

#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/sheet_view.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

/// The same sheet in an earlier or later sketch: by identity, else by name.
model::SheetId sheetIn(const model::Sketch& sketch, const model::Sheet& sheet)
{
    if (sketch.sheet(sheet.id) != nullptr)
        return sheet.id;
    for (const model::Sheet& other : sketch.sheets)
        if (other.name == sheet.name)
            return other.id;
    return {};
}

} // namespace

MapSide::MapSide(QWidget* parent)
    : QWidget(parent)
{
    m_title = new QLabel(this);
    m_title->setProperty("role", QStringLiteral("strong"));
    m_facts = quietLabel({}, this);
    m_view = new render::SheetView(this);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 4, 12, 4);
    head->setSpacing(12);
    head->addWidget(m_title);
    head->addWidget(m_facts, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_view, 1);
    connect(m_view, &render::SheetView::pointClicked, this, &MapSide::pointChosen);
}

void MapSide::showSheet(const ComparedJobs& jobs, const ComparedJob& side, bool left,
                        const model::Sheet& sheet)
{
    const report::ShownUnit unit = report::shownUnit(jobs.after.job.setup);
    m_title->setText(left ? tr("Job %1, as left").arg(side.job.number)
                          : tr("Job %1, as found").arg(side.job.number));
    QStringList facts{QString::fromStdString(side.job.opened.date())};
    if (side.detectable)
        facts.append(
            tr("smallest detectable %1").arg(localised(report::screenRate(unit.ofHelium(*side.detectable)))));
    if (side.job.state == model::JobState::Signed)
        facts.append(tr("signed"));
    m_facts->setText(facts.join(QStringLiteral(" · ")));
    report::MapOptions options = report::mapOptions(unit);
    options.smallestDetectable = side.detectable;
    options.now = Timestamp::now();
    const model::SheetId id = sheetIn(side.job.sketch, sheet);
    auto content = std::make_shared<report::MapContent>(
        report::mapOf(side.job, jobs.object, id, side.findings(left), options));
    m_view->setAccessibleName(m_title->text());
    m_view->setContent(std::move(content));
}

void MapSide::select(std::optional<model::PointId> point)
{
    m_view->setSelected(point);
}

} // namespace sealwalk::ui
