// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/judge_page.h"

#include "core/exchange/table_csv.h"
#include "core/report/bars.h"
#include "core/report/shown_unit.h"
#include "ui/judge/because_panel.h"
#include "ui/judge/findings_delegate.h"
#include "ui/judge/findings_filter.h"
#include "ui/judge/findings_model.h"
#include "ui/judge/judge_work.h"
#include "ui/judge/map_panel.h"
#include "ui/judge/nothing_shown.h"
#include "ui/judge/open_ends_bar.h"
#include "ui/judge/repairs_panel.h"
#include "ui/render/bar_chart.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/session/map_options.h"
#include "ui/widgets/page_tabs.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QGraphicsOpacityEffect>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kMapWidth = 572;
constexpr int kLeastJoint = 150;

report::MapScale scaleOf(const JobSession& session)
{
    if (!session.hasJob() || session.job().sketch.sheets.empty())
        return {};
    return report::mapOf(session.job(), session.object(), session.job().sketch.sheets.front().id, {},
                         mapOptions(session))
        .scale;
}

/// One cell of what a spreadsheet is given: names come from job files of anybody.
QString pastedAsText(QString cell)
{
    for (const QChar mark : {QLatin1Char('\t'), QLatin1Char('\n'), QLatin1Char('\r')})
        cell.replace(mark, QLatin1Char(' '));
    return QString::fromStdString(exchange::neverFormula(cell.toStdString()));
}

QLabel* heading(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("title"));
    return label;
}

} // namespace

JudgePage::JudgePage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_map(new MapPanel(session, this))
    , m_model(new FindingsModel(this))
    , m_filter(new FindingsFilter(this))
    , m_work(new JudgeWork(session, this))
{
    auto* right = new QSplitter(Qt::Vertical, this);
    QWidget* table = makeTable();
    right->addWidget(table);
    right->addWidget(makeLower());
    right->setStretchFactor(0, 5);
    right->setStretchFactor(1, 4);
    right->setChildrenCollapsible(false);
    auto* row = new QSplitter(Qt::Horizontal, this);
    row->addWidget(m_map);
    row->addWidget(right);
    row->setStretchFactor(0, 1); // what a larger screen gives goes to both
    row->setStretchFactor(1, 1);
    row->setSizes({kMapWidth, 794});
    row->setChildrenCollapsible(false);
    m_tabs =
        new PageTabs(row, {{tr("Map"), m_map}, {tr("Findings"), table}, {tr("Balance and repair"), m_lower}},
                     render::kListsNeed, this);
    m_tabs->bringUp(table);
    connect(m_tabs, &PageTabs::narrowed, this, [this] {
        // Stretched, the joint would be the one squeezed to nothing: then the table scrolls instead.
        constexpr int kOtherColumns = 720;
        const bool isTight = width() < kOtherColumns + kLeastJoint;
        m_table->horizontalHeader()->setSectionResizeMode(
            FindingsModel::JointColumn, isTight ? QHeaderView::Interactive : QHeaderView::Stretch);
        m_table->horizontalHeader()->resizeSection(FindingsModel::JointColumn, kLeastJoint);
    });
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(m_tabs);
    setFocusProxy(m_table);
    makeKeys();

    connect(m_map, &MapPanel::pointChosen, &m_session, &JobSession::select);
    connect(m_map, &MapPanel::switched, this, &JudgePage::refresh);
    connect(&m_session, &JobSession::selectionChanged, this, [this](model::PointId point) {
        if (isVisible()) // every reading of a round chooses a point; showing the page catches up
            choose(point);
    });
    connect(m_model, &FindingsModel::ticksChanged, this, &JudgePage::refreshFigures);
    connect(m_work, &JudgeWork::changed, this, [this] {
        if (m_work->figures().balance)
            m_model->setBalance(m_work->figures().balance->balance);
        refreshBecause();
    });
    for (const auto signal : {&JobSession::findingsChanged, &JobSession::jobChanged,
                              &JobSession::setupChanged, &JobSession::recordsChanged})
        connect(&m_session, signal, this, [this] {
            if (isVisible())
                refresh();
        });
    connect(&m_session, &JobSession::workingOut, this, &JudgePage::showWorkingOut);
    connect(&m_session, &JobSession::findingsChanged, this, [this] {
        showWorkingOut();
        if (isVisible())
            m_ends->refresh();
    });
    constexpr int kWorthAWord = 300; // ms
    m_slow = new QTimer(this);
    m_slow->setSingleShot(true);
    m_slow->setInterval(kWorthAWord);
    connect(m_slow, &QTimer::timeout, this, &JudgePage::sayWorkingOut);
    m_dim = new QGraphicsOpacityEffect(m_table);
    m_dim->setOpacity(0.5);
    m_dim->setEnabled(false);
    m_table->viewport()->setGraphicsEffect(m_dim);
}

QWidget* JudgePage::makeTable()
{
    auto* part = new QWidget(this);
    m_counts = new QLabel(part);
    m_find = new QLineEdit(part);
    m_find->setObjectName(QStringLiteral("search")); // Ctrl+F of the menu goes there
    m_find->setPlaceholderText(tr("Filter"));
    m_find->setAccessibleName(tr("Filter the findings"));
    m_find->setClearButtonEnabled(true);
    m_find->setMaximumWidth(140);
    m_show = new QComboBox(part);
    m_show->setAccessibleName(tr("Which findings"));
    m_show->addItems(shownWords());
    m_show->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    head->addWidget(heading(tr("Findings"), part));
    head->addSpacing(render::kGapNear);
    head->addWidget(m_counts, 1);
    head->addWidget(m_find);
    head->addWidget(m_show);

    m_table = new QTableView(part);
    m_filter->setSourceModel(m_model);
    m_table->setModel(m_filter);
    m_table->setItemDelegate(new FindingsDelegate(m_table));
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(FindingsModel::LimitColumn, Qt::AscendingOrder);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setShowGrid(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    m_table->setAccessibleName(tr("Findings"));
    m_table->setObjectName(QStringLiteral("findings"));
    QHeaderView* columns = m_table->horizontalHeader();
    columns->setHighlightSections(false);
    constexpr int kAroundAWord = 18;
    const int repair = columns->fontMetrics().horizontalAdvance(FindingsModel::tr("Repair")) + kAroundAWord;
    const std::array<int, FindingsModel::kColumns> widths{44,  176, 152, 72,
                                                          148, 108, 54,  std::max(48, repair)};
    for (int column = 0; column < FindingsModel::kColumns; ++column)
        columns->resizeSection(column, widths[static_cast<std::size_t>(column)]);
    columns->setSectionResizeMode(FindingsModel::JointColumn, QHeaderView::Stretch);

    m_nothing = new NothingShown(m_table);
    connect(m_nothing, &NothingShown::rowsChanged, this, &JudgePage::sayNothingShown);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    m_ends = new OpenEndsBar(m_session, part);
    column->addWidget(m_ends);
    connect(m_ends, &OpenEndsBar::noteRequested, this, &JudgePage::noteRequested);
    connect(m_ends, &OpenEndsBar::failed, this, &JudgePage::failed);
    connect(m_ends, &OpenEndsBar::nameWanted, this, &JudgePage::nameWanted);
    connect(m_ends, &OpenEndsBar::sprayWanted, this, &JudgePage::sprayWanted);

    connect(m_show, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_filter->setShown(static_cast<FindingsFilter::Show>(index));
        sayNothingShown();
    });
    connect(m_find, &QLineEdit::textChanged, m_filter, &FindingsFilter::setTyped);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (const auto* finding = chosen()) {
            m_session.select(finding->point);
            m_map->choose(finding->point);
        }
        refreshBecause();
    });
    connect(m_table, &QTableView::activated, this, [this] { showBecause(); });
    return part;
}

QStringList JudgePage::shownWords()
{
    return {tr("needs a decision"), tr("over"), tr("cannot say"), tr("no answer"), tr("all points")};
}

/// The list begins with what needs a decision: that there is more is said where it is chosen.
void JudgePage::countShown()
{
    const int all = m_model->rowCount();
    for (const auto show : {FindingsFilter::NeedsDecision, FindingsFilter::Everything})
        m_show->setItemText(
            show, tr("%1: %2 of %3").arg(shownWords().at(show)).arg(m_filter->count(show)).arg(all));
}

/// A filter left on hides everything once all is judged; the table says so, or it looks lost.
void JudgePage::sayNothingShown()
{
    const bool isAllHidden = m_filter->rowCount() == 0 && m_model->rowCount() > 0;
    m_nothing->say(isAllHidden ? tr("No finding under \"%1\". Esc shows all points.")
                                     .arg(shownWords().at(m_show->currentIndex()))
                               : QString());
}

QWidget* JudgePage::makeLower()
{
    m_lower = new QStackedWidget(this);
    auto* figures = new QWidget(m_lower);
    m_balance = new render::BarChartView(figures);
    m_load = new render::BarChartView(figures);
    m_balanceText = new QLabel(figures);
    m_loadText = new QLabel(figures);
    for (QLabel* label : {m_balanceText, m_loadText}) {
        label->setWordWrap(true);
        label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    }
    m_repair = new QPushButton(render::icon(QStringLiteral("repair")), tr("Log repairs"), figures);
    m_repair->setObjectName(QStringLiteral("logRepairs"));
    auto* verdict = new QPushButton(tr("Verdict …"), figures);
    verdict->setObjectName(QStringLiteral("verdict"));
    auto* because = new QPushButton(tr("Because"), figures);
    auto* repairs = new QPushButton(tr("Repairs"), figures);
    repairs->setObjectName(QStringLiteral("showRepairs"));

    auto* balance = new QVBoxLayout;
    balance->addWidget(heading(tr("Balance, as air"), figures));
    balance->addWidget(m_balanceText);
    balance->addWidget(m_balance, 1);
    auto* load = new QVBoxLayout;
    load->addWidget(heading(tr("Load"), figures));
    load->addWidget(m_loadText);
    load->addWidget(m_load, 1);
    load->addStretch(); // where the chart is not shown
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_repair);
    buttons->addWidget(verdict);
    buttons->addWidget(because);
    buttons->addWidget(repairs);
    buttons->addStretch();
    load->addLayout(buttons);
    auto* row = new QHBoxLayout(figures);
    row->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    row->setSpacing(render::kGapBlock);
    row->addLayout(balance, 1);
    row->addLayout(load, 1);
    m_because = new BecausePanel(m_session, m_lower);
    m_lower->addWidget(figures);
    m_lower->addWidget(m_because);
    m_repairs = new RepairsPanel(m_session, m_lower);
    m_lower->addWidget(m_repairs);

    connect(repairs, &QPushButton::clicked, this, &JudgePage::showRepairs);
    connect(m_repairs, &RepairsPanel::editWanted, this, &JudgePage::editRepair);
    connect(m_repairs, &RepairsPanel::proofWanted, this, &JudgePage::proveRepair);
    connect(m_repairs, &RepairsPanel::left, this, &JudgePage::backToTable);
    connect(m_repair, &QPushButton::clicked, this, &JudgePage::logRepairs);
    connect(verdict, &QPushButton::clicked, this, &JudgePage::judgeByHand);
    connect(because, &QPushButton::clicked, this, &JudgePage::showBecause);
    return m_lower;
}

void JudgePage::makeKeys()
{
    const auto key = [this](const QKeySequence& keys, QWidget* where, auto act) {
        auto* shortcut = new QShortcut(keys, where);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    for (QWidget* where : std::initializer_list<QWidget*>{m_table, m_map}) {
        key(Qt::Key_E, where, [this] { m_map->toggleEchoes(); });
        key(Qt::Key_F, where, [this] { m_map->toggleStanding(); });
        for (int sheet = 0; sheet < 9; ++sheet)
            key(QKeySequence(Qt::Key_1 + sheet), where, [this, sheet] { m_map->chooseSheet(sheet); });
    }
    key(Qt::Key_T, m_table, [this] { m_ends->openNextRound(); });
    key(Qt::Key_V, m_table, [this] { m_ends->voidRun(); });
    key(Qt::Key_G, m_table, [this] { logRepairs(); });
    key(Qt::Key_J, m_table, [this] { judgeByHand(); });
    key(Qt::Key_R, m_table, [this] { showRepairs(); });
    key(Qt::Key_Space, m_table, [this] {
        const QModelIndex cell = m_table->currentIndex().siblingAtColumn(FindingsModel::RepairColumn);
        if (cell.isValid())
            m_filter->setData(
                cell, cell.data(Qt::CheckStateRole).toInt() == Qt::Checked ? Qt::Unchecked : Qt::Checked,
                Qt::CheckStateRole);
    });
    key(QKeySequence::Copy, m_table, [this] { copyRows(); });
    connect(m_because, &BecausePanel::left, this, &JudgePage::backToTable);
    key(Qt::Key_Escape, this, [this] {
        if (m_lower->currentIndex() == 0 && m_nothing->isVisible()) {
            m_find->clear();
            m_show->setCurrentIndex(FindingsFilter::Everything);
        }
        backToTable();
    });
    connect(m_tabs, &PageTabs::turned, this, [this](QWidget* part) {
        (part->isAncestorOf(m_table) ? static_cast<QWidget*>(m_table)
         : part == m_lower           ? m_lower->currentWidget()
                                     : part)
            ->setFocus();
    });
}

void JudgePage::showBecause()
{
    m_lower->setCurrentWidget(m_because);
    m_tabs->bringUp(m_lower);
}

void JudgePage::backToTable()
{
    m_lower->setCurrentIndex(0);
    m_tabs->bringUp(m_table);
    m_table->setFocus();
}

void JudgePage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
    m_ends->refresh();
    showWorkingOut();
}

const std::vector<analysis::PointFinding>& JudgePage::findings() const
{
    return m_map->asLeft() ? m_session.asLeft() : m_session.asFound();
}

void JudgePage::refresh()
{
    if (!m_session.hasJob()) {
        m_model->setFindings({}, model::Job(), {});
        m_map->setFindings({});
        return;
    }
    m_model->setFindings(findings(), m_session.job(), scaleOf(m_session));
    countShown();
    m_map->setFindings(findings());
    using analysis::Verdict;
    const QString unit = QString::fromStdString(report::shownUnit(m_session.job().setup).head());
    m_counts->setText(unit + QStringLiteral("  ·  ") +
                      tr("%1 over · %2 cannot say · %3 no answer · %4 within")
                          .arg(m_model->count(Verdict::Over))
                          .arg(m_model->count(Verdict::CannotSay))
                          .arg(m_model->count(Verdict::NoAnswer))
                          .arg(m_model->count(Verdict::Within)) +
                      (m_model->count(Verdict::NotCounted) > 0
                           ? tr(" · %1 not counted").arg(m_model->count(Verdict::NotCounted))
                           : QString()));
    showWorkingOut();
    m_repairs->refresh();
    choose(m_session.selectedPoint());
    if (!m_table->currentIndex().isValid() && m_filter->rowCount() > 0)
        m_table->setCurrentIndex(m_filter->index(0, 0));
    refreshFigures();
}

void JudgePage::showWorkingOut()
{
    if (!m_session.isWorkingOut()) {
        m_slow->stop();
        m_map->setNotice({});
        m_dim->setEnabled(false);
        if (!findings().empty())
            m_workedOutAt = QTime::currentTime();
        return;
    }
    // Nothing to show yet: say so at once. Findings of before stay, and are marked once the wait is felt.
    if (findings().empty())
        sayWorkingOut();
    else if (!m_slow->isActive())
        m_slow->start();
}

void JudgePage::sayWorkingOut()
{
    if (!m_session.isWorkingOut())
        return;
    const bool isFirst = findings().empty();
    m_map->setNotice(
        isFirst ? tr("working out …")
                : tr("working out …  shown: of %1").arg(m_workedOutAt.toString(QStringLiteral("HH:mm"))));
    m_dim->setEnabled(!isFirst);
    if (isFirst)
        m_counts->setText(tr("working out …"));
}

void JudgePage::refreshFigures()
{
    const auto standing = m_map->asLeft() ? analysis::Standing::AsLeft : analysis::Standing::AsFound;
    m_work->request(findings(), standing, m_model->ticked());
}

const analysis::PointFinding* JudgePage::chosen() const
{
    const QModelIndex current = m_table->currentIndex();
    return current.isValid() ? m_model->finding(m_filter->mapToSource(current).row()) : nullptr;
}

void JudgePage::choose(model::PointId point)
{
    m_map->choose(point);
    const int row = m_model->rowOf(point);
    const QModelIndex shown = row < 0 ? QModelIndex() : m_filter->mapFromSource(m_model->index(row, 0));
    if (shown.isValid() && shown.row() != m_table->currentIndex().row())
        m_table->setCurrentIndex(shown);
    refreshBecause();
}

void JudgePage::refreshBecause()
{
    if (!m_session.hasJob())
        return;
    const report::MapScale scale = scaleOf(m_session);
    const int row = m_model->rowOf(m_session.selectedPoint());
    m_because->setFinding(row < 0 ? chosen() : m_model->finding(row), scale);
    const JudgeFigures& figures = m_work->figures();
    if (!figures.balance) {
        m_balanceText->setText(render::inSentence(figures.problem));
        m_balance->setFigure({});
        m_load->setFigure({});
        m_load->show();
        return;
    }
    const model::TestObject& object = m_session.object();
    QStringList balance{render::inSentence(figures.balance->balance.advice)};
    for (const analysis::LeakAsAir& leak : figures.balance->balance.leaks)
        if (!leak.inSum())
            balance << render::inSentence(leak.whyNotInSum());
    m_balanceText->setText(balance.join(QLatin1Char(' ')));
    m_balance->setFigure(
        report::balanceBars(figures.balance->balance, scale, m_session.job().setup.totalLimit));
    QStringList notes{render::inSentence(figures.balance->effect.advice)};
    for (const std::string& note : figures.balance->notes)
        notes << render::inSentence(note);
    m_loadText->setText(notes.join(QLatin1Char(' ')));
    report::LoadOptions load;
    load.balance = &figures.balance->balance;
    load.effect = &figures.balance->effect;
    for (const model::PointId point : m_model->ticked())
        if (const model::TestPoint* known = m_session.job().sketch.point(point))
            load.repaired.push_back("point " + std::to_string(known->number));
    load.airSpeed = object.airSpeed;
    load.wanted = object.wantedPressure;
    load.scale = scale;
    report::BarFigure bars = report::loadBars(load);
    m_load->setVisible(!bars.bars.empty()); // the text says why there are none, and wants the room
    m_load->setFigure(std::move(bars));
    m_repair->setText(m_model->ticked().empty()
                          ? tr("Log repair")
                          : tr("Log %n repair(s)", nullptr, static_cast<int>(m_model->ticked().size())));
}

void JudgePage::copyRows() const
{
    QStringList lines;
    QStringList head;
    for (int column = 0; column < FindingsModel::RepairColumn; ++column)
        head << m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    lines << head.join(QLatin1Char('\t'));
    for (const QModelIndex& row : m_table->selectionModel()->selectedRows()) {
        QStringList cells;
        for (int column = 0; column < FindingsModel::RepairColumn; ++column)
            cells << pastedAsText(row.siblingAtColumn(column).data().toString());
        lines << cells.join(QLatin1Char('\t'));
    }
    QApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
}

} // namespace sealwalk::ui
