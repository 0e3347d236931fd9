// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/repairs_panel.h"

#include "core/analysis/job_balance.h"
#include "core/analysis/job_rise.h"
#include "core/analysis/leak_rank.h"
#include "core/analysis/repair_progress.h"
#include "core/base/calendar_day.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/rate_delegate.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

enum Column
{
    Points,
    Done,
    State,
    Before,
    After,
    Until,
    ColumnCount
};

QString text(const std::string& words)
{
    return QString::fromStdString(words);
}

QString numbers(const model::Sketch& sketch, const std::vector<model::PointId>& points)
{
    QStringList all;
    for (const model::PointId id : points)
        if (const model::TestPoint* point = sketch.point(id))
            all << QString::number(point->number);
    return all.join(QStringLiteral(", "));
}

QString stateText(const analysis::RepairProgress& progress, const model::Repair& repair,
                  const model::Sketch& sketch)
{
    using analysis::RepairStep;
    switch (progress.step) {
    case RepairStep::Cures:
        return (progress.sprayedTooEarly ? RepairsPanel::tr("open: cures until %1 %2; sprayed too early")
                                         : RepairsPanel::tr("open: may be sprayed from %1 %2"))
            .arg(text(repair.sprayableFrom->date()), text(repair.sprayableFrom->timeOfDay().substr(0, 5)));
    case RepairStep::AwaitsRetest:
        return (progress.sprayedTooEarly
                    ? RepairsPanel::tr("open: spray again %1; it was sprayed before the repair had cured")
                    : RepairsPanel::tr("open: spray again %1"))
            .arg(numbers(sketch, progress.toSpray));
    case RepairStep::StillLeaks:
        return RepairsPanel::tr("open: still over the limit");
    case RepairStep::CannotSay:
        return RepairsPanel::tr("open: sprayed again, cannot say");
    case RepairStep::AwaitsTotal:
        return RepairsPanel::tr("open: sprayed again, no pressure rise since");
    case RepairStep::Proven:
        return render::inWords(analysis::progressWords(progress, repair));
    case RepairStep::Overtaken:
        return RepairsPanel::tr("repaired again later");
    }
    return {};
}

/// A cell of a rate: its text, and its 95 % range where it has one.
struct RateCell
{
    QString text;
    QString range; ///< in the decade of the text
    QString spoken;
};

/// What the worst of the points said.
RateCell worst(const std::vector<analysis::PointFinding>& findings, const model::Repair& repair,
               const report::ShownUnit& unit)
{
    const analysis::PointFinding* most = nullptr;
    for (const analysis::PointFinding& finding : findings)
        if (std::find(repair.points.begin(), repair.points.end(), finding.point) != repair.points.end() &&
            (most == nullptr || analysis::outweighs(finding, *most)))
            most = &finding;
    if (most == nullptr)
        return {};
    const auto shown = [&](LeakRate helium) {
        return render::inFigures(report::screenRate(unit.ofHelium(helium)));
    };
    if (most->rate)
        return {shown(*most->rate), render::inFigures(report::rangeBeside(*most, unit)),
                render::inFigures(report::plainRange(*most, unit))};
    if (most->atLeast)
        return {RepairsPanel::tr("at least %1").arg(shown(*most->atLeast)), {}, {}};
    if (most->bound)
        return {RepairsPanel::tr("below %1").arg(shown(*most->bound)), {}, {}};
    return {QStringLiteral("–"), {}, {}};
}

QTableWidgetItem* itemOf(const RateCell& cell)
{
    auto* item = new QTableWidgetItem(cell.text);
    item->setData(RateDelegate::RangeRole, cell.range);
    if (!cell.range.isEmpty()) {
        const QString spoken = RepairsPanel::tr("%1, 95 % range %2").arg(cell.text, cell.spoken);
        item->setData(Qt::AccessibleTextRole, spoken);
        item->setToolTip(spoken);
    }
    return item;
}

} // namespace

RepairsPanel::RepairsPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_table(new QTableWidget(0, ColumnCount, this))
    , m_unit(quietLabel({}, this))
    , m_totals(new QLabel(this))
{
    auto* title = new QLabel(tr("Repairs"), this);
    title->setProperty("role", QStringLiteral("title"));
    m_unit->setObjectName(QStringLiteral("repairsUnit"));
    m_table->setObjectName(QStringLiteral("repairs"));
    m_table->setAccessibleName(tr("Repairs"));
    m_table->setHorizontalHeaderLabels(
        {tr("Points"), tr("What was done"), tr("State"), tr("As found"), tr("As left"), tr("Until")});
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setShowGrid(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setMinimumSectionSize(render::kTableRow);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents); // nothing is cut short
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (const auto& [column, width] : {std::pair{Points, 72}, {Before, 116}, {After, 116}, {Until, 96}})
        m_table->setColumnWidth(column, width);
    for (const Column column : {Before, After}) {
        m_table->setItemDelegateForColumn(column, new RateDelegate(m_table));
        m_table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    for (const Column column : {Done, State})
        m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    m_totals->setWordWrap(true);
    auto* open = new QPushButton(tr("Open, add photos …"), this);
    open->setObjectName(QStringLiteral("openRepair"));
    auto* prove = new QPushButton(tr("Spray again"), this);
    prove->setObjectName(QStringLiteral("proveRepair"));
    auto* back = new QPushButton(tr("Back (Esc)"), this);
    auto* head = new QHBoxLayout;
    head->addWidget(title);
    head->addSpacing(render::kGapNear);
    head->addWidget(m_unit);
    head->addStretch();
    for (QPushButton* button : {open, prove, back})
        head->addWidget(button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addWidget(m_totals);
    setFocusProxy(m_table);
    const auto edit = [this] {
        if (const model::RepairId* repair = chosen())
            emit editWanted(*repair);
    };
    connect(m_table, &QTableWidget::activated, this, edit);
    connect(open, &QPushButton::clicked, this, edit);
    connect(prove, &QPushButton::clicked, this, [this] {
        if (const model::RepairId* repair = chosen())
            emit proofWanted(*repair);
    });
    connect(back, &QPushButton::clicked, this, &RepairsPanel::left);
}

const model::RepairId* RepairsPanel::chosen() const
{
    const int row = m_table->currentRow();
    return row >= 0 && row < static_cast<int>(m_shown.size()) ? &m_shown[static_cast<std::size_t>(row)]
                                                              : nullptr;
}

void RepairsPanel::refresh()
{
    const int row = std::max(0, m_table->currentRow());
    m_table->setRowCount(0);
    m_shown.clear();
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    m_unit->setText(text(report::shownUnit(job.setup).head()));
    const Timestamp now = Timestamp::now();
    for (const bool open : {true, false})
        for (const model::Repair& repair : job.repairs)
            if (analysis::progressOf(job, repair, m_session.asLeft(), now).isOpen() == open)
                addRow(repair);
    addCarried();
    m_table->setCurrentCell(std::min(row, m_table->rowCount() - 1), 0);
    m_totals->setText(totalsText());
}

void RepairsPanel::addRow(const model::Repair& repair)
{
    const model::Job& job = m_session.job();
    const Timestamp now = Timestamp::now();
    const auto progress = analysis::progressOf(job, repair, m_session.asLeft(), now);
    const report::ShownUnit unit = report::shownUnit(job.setup);
    QString until = repair.permanent ? tr("permanent")
                    : repair.due     ? text(repair.due->date())
                                     : tr("no date");
    if (!repair.permanent && repair.due && isPast(*repair.due, now))
        until = tr("overdue, %1").arg(until);
    QString done = render::repairInWords(repair.action);
    if (!repair.pictures.empty())
        done += tr(", %n photo(s)", nullptr, static_cast<int>(repair.pictures.size()));
    const int row = m_table->rowCount();
    m_table->insertRow(row);
    m_table->setItem(row, Points, new QTableWidgetItem(numbers(job.sketch, repair.points)));
    m_table->setItem(row, Done, new QTableWidgetItem(done));
    m_table->setItem(row, State, new QTableWidgetItem(stateText(progress, repair, job.sketch)));
    m_table->setItem(row, Before, itemOf(worst(m_session.asFound(), repair, unit)));
    m_table->setItem(row, After, itemOf(worst(m_session.asLeft(), repair, unit)));
    m_table->setItem(row, Until, new QTableWidgetItem(until));
    m_shown.push_back(repair.id);
}

void RepairsPanel::addCarried()
{
    const Timestamp now = Timestamp::now();
    for (const storage::OpenRepair& left : m_session.repairsLeftOpen()) {
        const bool overdue = left.repair.due && isPast(*left.repair.due, now);
        const QString due = left.repair.due ? text(left.repair.due->date()) : tr("no date");
        const int row = m_table->rowCount();
        m_table->insertRow(row);
        m_table->setItem(row, Points,
                         new QTableWidgetItem(numbers(m_session.job().sketch, left.repair.points)));
        m_table->setItem(row, Done, new QTableWidgetItem(render::repairInWords(left.repair.action)));
        m_table->setItem(row, State, new QTableWidgetItem(tr("temporary, from job %1").arg(left.jobNumber)));
        m_table->setItem(row, Before, new QTableWidgetItem);
        m_table->setItem(
            row, After,
            itemOf(worst(m_session.asLeft(), left.repair, report::shownUnit(m_session.job().setup))));
        m_table->setItem(row, Until, new QTableWidgetItem(overdue ? tr("overdue, %1").arg(due) : due));
    }
}

/// The totals on both sides of all repairs.
QString RepairsPanel::totalsText() const
{
    const model::Job& job = m_session.job();
    if (job.repairs.empty())
        return tr("No repair was logged in this job.");
    const report::ShownUnit unit = report::shownUnit(job.setup);
    const auto shown = [&](LeakRate rate) {
        return render::inFigures(report::screenRate(unit.number(rate))) + QLatin1Char(' ') +
               text(unit.symbol);
    };
    const auto side = [&](const model::RiseTest* test) {
        if (test == nullptr)
            return tr("no pressure rise");
        const auto rise = analysis::judgeRise(*test, job, m_session.object());
        QString said = tr("pressure rise not judged");
        const auto total = rise ? analysis::totalOf(*rise) : std::nullopt;
        if (total && total->rate)
            said =
                tr("leaks %1 (%2) as air")
                    .arg(shown(*total->rate),
                         render::inFigures(report::rangeBeside(
                             unit.number(*total->rate), unit.number(total->low), unit.number(total->high))));
        else if (total)
            said = tr("leaks at most %1 as air").arg(shown(total->high));
        if (test->basePressure)
            said += tr(", base pressure %1 mbar")
                        .arg(render::inFigures(report::screenRate(inMillibars(*test->basePressure))));
        return said;
    };
    return tr("Before the repairs: %1. After: %2.")
        .arg(side(analysis::riseTestFor(job, analysis::Standing::AsFound)),
             side(analysis::riseTestFor(job, analysis::Standing::AsLeft)));
}

} // namespace sealwalk::ui
