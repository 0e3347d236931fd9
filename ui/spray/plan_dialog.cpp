// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/plan_dialog.h"

#include "ui/render/core_words.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"

#include <QDialogButtonBox>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <cmath>

namespace sealwalk::ui {

namespace {

enum Column
{
    PointColumn,
    JointColumn,
    DwellColumn,
    WaitColumn,
    WhyColumn,
    kColumns
};

QString secondsText(Duration time)
{
    return QLocale().toString(inSeconds(time), 'f', 0) + QStringLiteral(" s");
}

} // namespace

PlanDialog::PlanDialog(JobSession& session, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_round(session.currentRound()->id)
    , m_table(new QTableWidget(0, kColumns, this))
    , m_sums(new QLabel(this))
{
    setWindowTitle(tr("Order of the walk"));
    m_table->setObjectName(QStringLiteral("plan"));
    m_table->setAccessibleName(tr("Order of the walk"));
    m_table->setHorizontalHeaderLabels({tr("Point"), tr("Joint"), tr("Dwell"), tr("Wait"), tr("Why here")});
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setDragDropMode(QAbstractItemView::InternalMove);
    m_table->setDragDropOverwriteMode(false);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    constexpr std::array<int, kColumns> kWidths{56, 190, 64, 64, 380};
    for (int column = 0; column < kColumns; ++column)
        m_table->setColumnWidth(column, kWidths[static_cast<std::size_t>(column)]);
    m_table->horizontalHeader()->setSectionResizeMode(WhyColumn, QHeaderView::Stretch);
    m_table->viewport()->installEventFilter(this);
    m_table->installEventFilter(this);
    m_sums->setObjectName(QStringLiteral("planSums"));

    auto* up = new QPushButton(tr("Up  Alt+↑"), this);
    up->setObjectName(QStringLiteral("planUp"));
    up->setAccessibleName(tr("Move up"));
    auto* down = new QPushButton(tr("Down  Alt+↓"), this);
    down->setObjectName(QStringLiteral("planDown"));
    down->setAccessibleName(tr("Move down"));
    auto* proposed = new QPushButton(tr("&Propose an order"), this);
    proposed->setObjectName(QStringLiteral("planPropose"));
    auto* box = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    box->button(QDialogButtonBox::Ok)->setText(tr("Walk in this order"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(up);
    buttons->addWidget(down);
    buttons->addWidget(proposed);
    buttons->addStretch();
    buttons->addWidget(box);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_sums);
    column->addWidget(m_table, 1);
    column->addLayout(buttons);
    resize(860, 560);

    connect(up, &QPushButton::clicked, this, [this] { moveRow(-1); });
    connect(down, &QPushButton::clicked, this, [this] { moveRow(1); });
    connect(proposed, &QPushButton::clicked, this, &PlanDialog::propose);
    connect(box, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(box, &QDialogButtonBox::rejected, this, &QDialog::reject);

    const std::vector<model::PointId>& points = m_session.currentRound()->points;
    showPlan(analysis::planAsOrdered(m_session.job(), m_session.object(), m_round, points));
    if (m_table->rowCount() > 0)
        m_table->selectRow(0);
    m_table->setFocus();
}

std::vector<model::PointId> PlanDialog::order() const
{
    std::vector<model::PointId> points;
    for (const analysis::JobPlannedSpray& spray : m_plan.order)
        points.push_back(spray.point);
    // Points that have no place on a sheet are not in the plan; they keep their turn at the end.
    for (const model::PointId point : m_session.currentRound()->points)
        if (std::ranges::find(points, point) == points.end())
            points.push_back(point);
    return points;
}

void PlanDialog::propose()
{
    showPlan(analysis::proposedPlan(m_session.job(), m_session.object(), m_round));
    if (m_table->rowCount() > 0)
        m_table->selectRow(0);
}

void PlanDialog::showPlan(const analysis::JobPlan& plan)
{
    m_plan = plan;
    m_table->setRowCount(static_cast<int>(plan.order.size()));
    const model::Sketch& sketch = m_session.job().sketch;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const analysis::JobPlannedSpray& spray = plan.order[static_cast<std::size_t>(row)];
        const model::Joint* joint = sketch.jointOf(spray.point);
        QString why = render::inWords(spray.because);
        if (!why.isEmpty())
            why[0] = why[0].toUpper();
        const std::array<QString, kColumns> cells{
            QString::number(spray.number), joint == nullptr ? QString() : QString::fromStdString(joint->name),
            secondsText(spray.dwell), secondsText(spray.wait), why};
        for (int column = 0; column < kColumns; ++column) {
            auto* item = new QTableWidgetItem(cells[static_cast<std::size_t>(column)]);
            if (column == DwellColumn || column == WaitColumn)
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            item->setToolTip(cells[static_cast<std::size_t>(column)]);
            item->setFlags(item->flags() & ~Qt::ItemIsDropEnabled);
            m_table->setItem(row, column, item);
        }
    }
    constexpr double kSecondsPerMinute = 60.0;
    m_sums->setText(
        tr("%n point(s) · %1 min of spraying and waiting · %2 l of helium", nullptr, m_table->rowCount())
            .arg(QLocale().toString(std::ceil(inSeconds(plan.total) / kSecondsPerMinute), 'f', 0),
                 QLocale().toString(inLitres(plan.helium), 'g', 2)));
}

void PlanDialog::reorder(std::size_t from, std::size_t to)
{
    std::vector<model::PointId> points = order();
    if (from >= points.size() || to >= points.size() || from == to)
        return;
    const model::PointId moved = points[from];
    points.erase(points.begin() + static_cast<std::ptrdiff_t>(from));
    points.insert(points.begin() + static_cast<std::ptrdiff_t>(to), moved);
    showPlan(analysis::planAsOrdered(m_session.job(), m_session.object(), m_round, points));
    m_table->selectRow(static_cast<int>(to));
}

void PlanDialog::moveRow(int by)
{
    const int row = m_table->currentRow();
    const int to = row + by;
    if (row >= 0 && to >= 0 && to < m_table->rowCount())
        reorder(static_cast<std::size_t>(row), static_cast<std::size_t>(to));
}

void PlanDialog::takeDrop(QEvent* event)
{
    auto* drop = static_cast<QDropEvent*>(event);
    const int from = m_table->currentRow();
    int to = m_table->rowAt(drop->position().toPoint().y());
    if (to < 0)
        to = m_table->rowCount() - 1;
    drop->setDropAction(Qt::IgnoreAction); // the rows are laid anew, not taken out by the view
    drop->accept();
    if (from >= 0)
        reorder(static_cast<std::size_t>(from), static_cast<std::size_t>(to));
}

bool PlanDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_table->viewport() && event->type() == QEvent::Drop) {
        takeDrop(event);
        return true;
    }
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool isMove = key->key() == Qt::Key_Up || key->key() == Qt::Key_Down;
        if (isMove && key->modifiers().testFlag(Qt::AltModifier)) {
            moveRow(key->key() == Qt::Key_Up ? -1 : 1);
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace sealwalk::ui
