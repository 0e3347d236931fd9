// SPDX-License-Identifier: GPL-3.0-or-later
// How the comparison is put together: its bar, the maps, the tables and the course.
#include "ui/history/change_delegate.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_page.h"
#include "ui/history/joints_model.h"
#include "ui/history/map_side.h"
#include "ui/history/totals_model.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/plot_view.h"
#include "ui/render/theme.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/rate_delegate.h"
#include "ui/widgets/switch_row.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kRulerWidth = 116;

} // namespace

QWidget* ComparePage::makeBar()
{
    auto* bar = new QWidget(this);
    m_first = new QComboBox(bar);
    m_first->setAccessibleName(tr("job at the left"));
    m_second = new QComboBox(bar);
    m_second->setAccessibleName(tr("job at the right"));
    for (QComboBox* box : {m_first, m_second})
        box->setMinimumWidth(kLeastJobWidth);
    m_standing = new SwitchRow(tr("readings"), {tr("As found"), tr("As left")}, bar);
    m_sheets = new SwitchRow(tr("sheet"), {}, bar);
    m_laying = new SwitchRow(tr("maps"), {tr("Side by side"), tr("Laid over")}, bar);
    m_back = new QToolButton(bar);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(12, 6, 12, 6);
    row->setSpacing(10);
    row->addWidget(m_first);
    row->addWidget(quietLabel(tr("against"), bar));
    row->addWidget(m_second);
    row->addWidget(m_standing);
    row->addWidget(m_laying);
    row->addWidget(m_sheets);
    row->addStretch(1);
    row->addWidget(m_back);
    const auto chosen = [this] {
        const auto id = [](const QComboBox& box) {
            return model::JobId::parse(box.currentData().toString().toStdString()).value_or(model::JobId());
        };
        compare(id(*m_first), id(*m_second), m_between);
    };
    connect(m_first, &QComboBox::activated, this, chosen);
    connect(m_second, &QComboBox::activated, this, chosen);
    connect(m_standing, &SwitchRow::currentChanged, this, [this] { keepRow([this] { compareAgain(); }); });
    connect(m_laying, &SwitchRow::currentChanged, this, &ComparePage::drawMaps);
    connect(m_sheets, &SwitchRow::currentChanged, this, &ComparePage::drawMaps);
    connect(m_back, &QToolButton::clicked, this, &ComparePage::left);
    return bar;
}

QWidget* ComparePage::makeMaps()
{
    auto* maps = new QWidget(this);
    m_leftMap = new MapSide(m_session, maps);
    m_rightMap = new MapSide(m_session, maps);
    m_ruler = new render::DecadeRuler(Qt::Vertical, maps);
    m_ruler->setFixedWidth(kRulerWidth);
    m_ruler->setAccessibleName(tr("scale of both maps"));
    m_limits = new QLabel(maps);
    m_limits->setObjectName(QStringLiteral("limits"));
    m_limits->setWordWrap(true);
    m_limits->setContentsMargins(12, 4, 12, 0);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(m_leftMap, 1);
    m_middle = new QHBoxLayout;
    m_middle->setSpacing(0);
    row->addLayout(m_middle, 0);
    row->addWidget(m_ruler);
    row->addWidget(m_rightMap, 1);
    auto* column = new QVBoxLayout(maps);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_limits);
    column->addLayout(row, 1);
    connect(m_leftMap, &MapSide::pointChosen, this, &ComparePage::choosePoint);
    connect(m_rightMap, &MapSide::pointChosen, this, &ComparePage::choosePoint);
    return maps;
}

QTableView* ComparePage::makeTable(QAbstractItemModel* model, const QString& id, const QString& name)
{
    auto* table = new QTableView(m_pages);
    table->setObjectName(id);
    table->setAccessibleName(name);
    table->setModel(model);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setShowGrid(false);
    table->setWordWrap(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    table->horizontalHeader()->setMinimumSectionSize(40);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->installEventFilter(this);
    m_pages->addWidget(table);
    return table;
}

void ComparePage::makeJointsAndTotals()
{
    m_jointsModel = new JointsModel(this);
    m_joints =
        makeTable(m_jointsModel, QStringLiteral("joints"), tr("joints over the jobs, the worst first"));
    m_joints->setItemDelegateForColumn(JointsModel::Largest, new RateDelegate(m_joints));
    for (const auto& [column, width] :
         {std::pair{JointsModel::Name, 170}, std::pair{JointsModel::Over, 108},
          std::pair{JointsModel::Largest, 128}, std::pair{JointsModel::Year, 52},
          std::pair{JointsModel::Repairs, 78}})
        m_joints->setColumnWidth(column, width);
    m_joints->horizontalHeader()->setSectionResizeMode(JointsModel::Touched, QHeaderView::Stretch);
    m_totalsModel = new TotalsModel(this);
    m_totals = makeTable(m_totalsModel, QStringLiteral("totals"), tr("the whole object, job by job"));
    for (const int column : {TotalsModel::Sum, TotalsModel::Rise})
        m_totals->setItemDelegateForColumn(column, new RateDelegate(m_totals));
    for (const auto& [column, width] :
         {std::pair{TotalsModel::Job, 56}, std::pair{TotalsModel::Date, 92},
          std::pair{TotalsModel::State, 116}, std::pair{TotalsModel::Sprayed, 84},
          std::pair{TotalsModel::Rise, 150}, std::pair{TotalsModel::Base, 130}})
        m_totals->setColumnWidth(column, width);
    m_totals->horizontalHeader()->setSectionResizeMode(TotalsModel::Sum, QHeaderView::Stretch);
    for (const QTableView* table : {m_joints, m_totals})
        connect(table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ComparePage::onRow);
}

QWidget* ComparePage::makeChanges()
{
    auto* part = new QWidget(this);
    m_pages = new QStackedWidget(part);
    m_changes = new ChangesModel(this);
    m_table = makeTable(m_changes, QStringLiteral("changes"), tr("changes"));
    m_table->setItemDelegateForColumn(ChangesModel::Delta, new ChangeDelegate(m_table));
    for (const int column : {ChangesModel::Then, ChangesModel::Now})
        m_table->setItemDelegateForColumn(column, new RateDelegate(m_table));
    const std::pair<int, int> widths[] = {{ChangesModel::Point, 96},  {ChangesModel::Joint, 136},
                                          {ChangesModel::Then, 118},  {ChangesModel::Now, 118},
                                          {ChangesModel::Delta, 102}, {ChangesModel::Decades, 76},
                                          {ChangesModel::Word, 162}};
    for (const auto& [column, width] : widths)
        m_table->setColumnWidth(column, width);
    m_table->viewport()->installEventFilter(this); // a click into a row's box
    makeJointsAndTotals();

    auto* head = new QWidget(part);
    m_chips = new QHBoxLayout(head);
    m_chips->setContentsMargins(12, 2, 12, 4);
    m_chips->setSpacing(6);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    m_shown = new SwitchRow(tr("table"), {tr("Changes"), tr("Joints"), tr("Totals")}, head);
    m_shown->button(0)->setToolTip(tr("What changed between the two jobs (C)"));
    m_shown->button(1)->setToolTip(tr("The joints over all jobs, the worst first (J)"));
    m_shown->button(2)->setToolTip(tr("The whole object, job by job (T)"));
    m_chips->addWidget(m_shown);
    connect(m_shown, &SwitchRow::currentChanged, this, &ComparePage::showTable);
    for (const analysis::Change kind : kChangeKinds) {
        auto* chip = new QToolButton(head);
        chip->setCheckable(true);
        chip->setObjectName(QStringLiteral("kind"));
        chip->setChecked(kind != analysis::Change::Same);
        connect(chip, &QToolButton::toggled, this, [this] { keepRow([this] { compareAgain(); }); });
        m_chips->addWidget(chip);
        m_kinds.push_back(chip);
    }
    m_chips->addStretch(1);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head);
    column->addWidget(m_pages, 1);
    m_because = quietLabel({}, part); // the sentence of the row, whole
    m_because->setWordWrap(true);
    m_because->setContentsMargins(12, 4, 12, 4);
    column->addWidget(m_because);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ComparePage::onRow);
    return part;
}

QWidget* ComparePage::makeCourse()
{
    auto* part = new QWidget(this);
    m_courseHeading = new Heading(tr("Course"), tr("Space adds a row, at most five"), part);
    m_course = new render::PlotView(part);
    m_course->setAccessibleName(tr("course over the jobs"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(12, 0, 12, 4);
    column->addWidget(m_courseHeading);
    column->addWidget(m_course, 1);
    return part;
}

} // namespace sealwalk::ui
