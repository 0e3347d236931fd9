// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/map_side.h"

#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/sheet_view.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>
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

std::shared_ptr<const report::MapContent> mapOf(const ComparedJobs& jobs, const ComparedJob& side, bool left,
                                                const model::Sheet& sheet)
{
    report::MapOptions options = report::mapOptions(report::shownUnit(jobs.after.job.setup));
    options.smallestDetectable = side.detectable;
    options.now = Timestamp::now();
    return std::make_shared<report::MapContent>(
        report::mapOf(side.job, jobs.object, sheetIn(side.job.sketch, sheet), side.findings(left), options));
}

} // namespace

MapSide::MapSide(JobSession& session, QWidget* parent)
    : QWidget(parent)
{
    m_title = new QLabel(this);
    m_title->setProperty("role", QStringLiteral("strong"));
    m_facts = quietLabel({}, this);
    m_facts->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred); // else words push the maps apart
    m_view = new render::SheetView(this);
    UnderlayImages::showBeneath(*m_view, session);
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
                        const model::Sheet& sheet, bool blinking)
{
    m_view->setCore(nullptr);
    const report::ShownUnit unit = report::shownUnit(jobs.after.job.setup);
    m_title->setText(left ? tr("Job %1, as left").arg(side.job.number)
                          : tr("Job %1, as found").arg(side.job.number));
    QStringList facts{QString::fromStdString(side.job.opened.date())};
    if (side.detectableAtWorst)
        facts.append(tr("smallest detectable %1")
                         .arg(localised(report::screenRate(unit.ofHelium(*side.detectableAtWorst)))));
    if (side.job.state == model::JobState::Signed)
        facts.append(tr("signed"));
    setFacts(facts.join(QStringLiteral(" · ")));
    m_view->setAccessibleName(m_title->text());
    auto content = mapOf(jobs, side, left, sheet);
    if (blinking)
        m_view->blinkTo(std::move(content));
    else
        m_view->setContent(std::move(content));
}

void MapSide::showLaidOver(const ComparedJobs& jobs, const ComparedJob& side, const ComparedJob& core,
                           bool left, const model::Sheet& sheet)
{
    showSheet(jobs, side, left, sheet);
    m_title->setText(left ? tr("Jobs %1 and %2, as left").arg(side.job.number).arg(core.job.number)
                          : tr("Jobs %1 and %2, as found").arg(side.job.number).arg(core.job.number));
    setFacts(tr("band: job %1 · the narrow line in it: job %2").arg(side.job.number).arg(core.job.number));
    m_view->setAccessibleName(m_title->text());
    m_view->setCore(mapOf(jobs, core, left, sheet));
}

void MapSide::setFacts(const QString& facts)
{
    m_allFacts = facts;
    m_facts->setAccessibleName(facts);
    QTimer::singleShot(0, this, &MapSide::fitFacts); // once the title has its width
}

void MapSide::fitFacts()
{
    const QString shown =
        m_facts->fontMetrics().elidedText(m_allFacts, Qt::ElideRight, m_facts->contentsRect().width());
    m_facts->setText(shown);
    m_facts->setToolTip(shown == m_allFacts ? QString() : m_allFacts);
}

void MapSide::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    QTimer::singleShot(0, this, &MapSide::fitFacts);
}

void MapSide::select(std::optional<model::PointId> point)
{
    m_view->setSelected(point);
}

} // namespace sealwalk::ui
