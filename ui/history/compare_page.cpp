// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_page.h"

#include "core/storage/history_store.h"
#include "core/transfer/known_pairs.h"
#include "ui/history/change_delegate.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_limits.h"
#include "ui/history/map_side.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/plot_view.h"
#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/page_tabs.h"
#include "ui/widgets/rate_delegate.h"
#include "ui/widgets/switch_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTableView>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kMostFollowed = 5;
constexpr int kRulerWidth = 116;
constexpr int kJobWidth = 176;
constexpr int kLeastJobWidth = 136;
constexpr int kBarNeeds = 1180;
constexpr analysis::Change kKinds[] = {analysis::Change::New,           analysis::Change::Gone,
                                       analysis::Change::Grown,         analysis::Change::Shrunk,
                                       analysis::Change::NotComparable, analysis::Change::Same};

} // namespace

ComparePage::ComparePage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work([this](const Answer& answer) { deliver(answer); })
    , m_courseWork([this](Result<Course> course) {
        if (!course) {
            emit failed(course.error());
            return;
        }
        m_stops = std::move(*course);
        drawCourse();
        emit courseReady();
    })
{
    auto* below = new QSplitter(Qt::Horizontal, this);
    QWidget* changes = makeChanges();
    QWidget* course = makeCourse();
    below->addWidget(changes);
    below->addWidget(course);
    below->setSizes({824, 542});
    below->setChildrenCollapsible(false);
    auto* split = new QSplitter(Qt::Vertical, this);
    QWidget* maps = makeMaps();
    split->addWidget(maps);
    split->addWidget(below);
    split->setSizes({330, 274});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(makeBar());
    auto* tabs = new PageTabs(split, {{tr("Maps"), maps}, {tr("Changes"), changes}, {tr("Course"), course}},
                              render::kPartsNeed, this);
    tabs->bringUp(changes);
    connect(tabs, &PageTabs::turned, this, [this](QWidget* part) {
        (part->isAncestorOf(m_table) ? static_cast<QWidget*>(m_table) : part)->setFocus();
    });
    column->addWidget(tabs, 1);
    setFocusProxy(m_table);
}

ComparePage::~ComparePage()
{
    m_courseStop.request_stop(); // else closing waits for up to twenty jobs
}

/// Where the bar has not its room, what a key does as well goes first: O lays the maps over.
void ComparePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_laying->setVisible(width() >= kBarNeeds);
    for (QComboBox* box : {m_first, m_second})
        box->setMinimumWidth(width() >= kBarNeeds ? kJobWidth : kLeastJobWidth);
    m_back->setText(width() >= kBarNeeds ? tr("Back to the lists (Esc)") : tr("Back (Esc)"));
}

QWidget* ComparePage::makeBar()
{
    auto* bar = new QWidget(this);
    m_first = new QComboBox(bar);
    m_first->setAccessibleName(tr("job at the left"));
    m_second = new QComboBox(bar);
    m_second->setAccessibleName(tr("job at the right"));
    for (QComboBox* box : {m_first, m_second})
        box->setMinimumWidth(kJobWidth);
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
        compare(id(*m_first), id(*m_second));
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

QWidget* ComparePage::makeChanges()
{
    auto* part = new QWidget(this);
    m_changes = new ChangesModel(this);
    m_table = new QTableView(part);
    m_table->setObjectName(QStringLiteral("changes"));
    m_table->setAccessibleName(tr("changes"));
    m_table->setModel(m_changes);
    m_table->setItemDelegateForColumn(ChangesModel::Delta, new ChangeDelegate(m_table));
    for (const int column : {ChangesModel::Then, ChangesModel::Now})
        m_table->setItemDelegateForColumn(column, new RateDelegate(m_table));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    const std::pair<int, int> widths[] = {{ChangesModel::Point, 60},  {ChangesModel::Joint, 148},
                                          {ChangesModel::Then, 118},  {ChangesModel::Now, 118},
                                          {ChangesModel::Delta, 102}, {ChangesModel::Decades, 54},
                                          {ChangesModel::Word, 132}};
    for (const auto& [column, width] : widths)
        m_table->setColumnWidth(column, width);
    m_table->horizontalHeader()->setMinimumSectionSize(48);
    m_table->horizontalHeader()->setSectionResizeMode(ChangesModel::Remark, QHeaderView::Stretch);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->installEventFilter(this);

    auto* head = new QWidget(part);
    m_chips = new QHBoxLayout(head);
    m_chips->setContentsMargins(12, 2, 12, 4);
    m_chips->setSpacing(6);
    auto* title = new QLabel(tr("Changes"), head);
    title->setProperty("role", QStringLiteral("title"));
    m_chips->addWidget(title);
    for (const analysis::Change kind : kKinds) {
        auto* chip = new QToolButton(head);
        chip->setCheckable(true);
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
    column->addWidget(m_table, 1);
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

void ComparePage::compare(model::JobId before, model::JobId after)
{
    m_before = before;
    m_after = after;
    m_followed.clear();
    m_courseStop.request_stop();
    m_courseWork.drop();
    if (!readKnownPairs())
        return;
    m_work.request(
        [file = m_session.historyFile(), before, after] { return workOutComparison(file, before, after); });
}

void ComparePage::deliver(const Answer& answer)
{
    if (!answer) {
        emit failed(answer.error());
        return;
    }
    m_jobs = *answer;
    requestCourse();
    fillJobs();
    QStringList sheets;
    for (const model::Sheet& sheet : m_jobs->after.job.sketch.sheets)
        sheets.append(QString::fromStdString(sheet.name));
    m_sheets->setWords(sheets);
    compareAgain();
    m_table->setCurrentIndex(m_changes->index(0, 0));
    const analysis::Comparison& comparison = m_changes->comparison();
    const int byHand = comparison.matched(analysis::MatchedBy::Person);
    const int proposed =
        comparison.matched(analysis::MatchedBy::Number) + comparison.matched(analysis::MatchedBy::Place);
    emit said(tr("Compared %n point(s): %1 by identity, %2 confirmed, %3 proposed.", nullptr,
                 static_cast<int>(comparison.points.size()))
                  .arg(comparison.matched(analysis::MatchedBy::Identity))
                  .arg(byHand)
                  .arg(proposed));
    emit ready();
}

/// The two that are shown are on the course at once, the object's other jobs when they are worked out.
void ComparePage::requestCourse()
{
    m_stops = courseOf(*m_jobs);
    m_courseStop = std::stop_source();
    m_courseWork.request([file = m_session.historyFile(), jobs = m_jobs, stop = m_courseStop.get_token()] {
        return workOutCourse(file, *jobs, stop);
    });
}

void ComparePage::fillJobs()
{
    const auto rows = m_session.history().jobsOf(m_jobs->object.id);
    if (!rows)
        return;
    for (QComboBox* box : {m_first, m_second}) {
        const QSignalBlocker quiet(box);
        box->clear();
        for (const storage::JobRow& row : *rows) {
            box->addItem(tr("%1 · %2").arg(row.number).arg(QString::fromStdString(row.opened.date())),
                         QString::fromStdString(row.id.text()));
            box->setItemData(box->count() - 1, QString::fromStdString(row.purpose), Qt::ToolTipRole);
        }
        box->setCurrentIndex(
            box->findData(QString::fromStdString((box == m_first ? m_before : m_after).text())));
    }
}

void ComparePage::compareAgain()
{
    if (m_jobs == nullptr)
        return;
    const bool asLeft = m_standing->current() == 1;
    const ComparedJob& before = m_jobs->before;
    const ComparedJob& after = m_jobs->after;
    const analysis::Comparison comparison = analysis::compare(
        {&before.job.sketch, before.findings(asLeft)}, {&after.job.sketch, after.findings(asLeft)}, m_known);
    std::set<analysis::Change> shown;
    for (std::size_t i = 0; i < m_kinds.size(); ++i) {
        const int count = comparison.count(kKinds[i]);
        m_kinds[i]->setText(QStringLiteral("%1 %2").arg(changeWord(kKinds[i])).arg(count));
        m_kinds[i]->setEnabled(count > 0);
        if (m_kinds[i]->isChecked())
            shown.insert(kKinds[i]);
    }
    m_changes->setShown(shown);
    m_changes->setComparison(comparison, before.job.sketch, after.job.sketch,
                             report::shownUnit(after.job.setup));
    m_changes->setFollowed(m_followed);
    drawMaps();
    drawCourse();
}

void ComparePage::drawMaps()
{
    const int index = m_sheets->current();
    if (m_jobs == nullptr || index < 0)
        return;
    const bool asLeft = m_standing->current() == 1;
    const model::Sheet& sheet = m_jobs->after.job.sketch.sheets[static_cast<std::size_t>(index)];
    const bool over = m_laying->current() == 1;
    m_leftMap->setVisible(!over);
    m_leftMap->showSheet(*m_jobs, m_jobs->before, asLeft, sheet);
    if (over)
        m_rightMap->showLaidOver(*m_jobs, m_jobs->after, m_jobs->before, asLeft, sheet);
    else
        m_rightMap->showSheet(*m_jobs, m_jobs->after, asLeft, sheet);
    m_ruler->setScale(m_rightMap->view().content()->scale);
    const QString limits = limitWords(*m_jobs);
    m_limits->setText(limits);
    m_limits->setVisible(!limits.isEmpty());
    // Once both are laid out: as many pixels to the millimetre on either side.
    QTimer::singleShot(0, this, &ComparePage::equalise);
}

void ComparePage::equalise()
{
    render::SheetView& one = m_leftMap->view();
    render::SheetView& other = m_rightMap->view();
    other.fit();
    if (m_leftMap->isHidden())
        return;
    one.fit();
    const double ratio = one.pixelsPerMillimetre() / other.pixelsPerMillimetre();
    (ratio > 1.0 ? one : other).zoomBy(ratio > 1.0 ? 1.0 / ratio : ratio);
}

void ComparePage::drawCourse()
{
    std::set<std::size_t> wanted = m_followed;
    const QModelIndex current = m_table->currentIndex();
    if (wanted.empty() && current.isValid())
        wanted.insert(current.data(ChangesModel::ComparedRole).toULongLong());
    std::vector<report::CoursePoint> points;
    for (const std::size_t which : wanted) {
        const analysis::ComparedPoint& compared = m_changes->comparison().points[which];
        const auto id = compared.match.after ? compared.match.after : compared.match.before;
        const int number = compared.after    ? compared.after->number
                           : compared.before ? compared.before->number
                                             : 0;
        points.push_back(
            {*id, std::to_string(number) + " " +
                      m_changes->nameOf(compared).section(QLatin1Char(','), 0, 0).toStdString()});
    }
    std::optional<LeakRate> limit;
    if (m_jobs != nullptr && points.size() == 1)
        limit = m_jobs->after.job.limitOf(points.front().point);
    if (m_jobs != nullptr) {
        const report::ShownUnit unit = report::shownUnit(m_jobs->after.job.setup);
        m_course->setFigure(report::courseFigure(
            m_stops, points, limit ? limit : m_jobs->after.job.setup.pointLimit, m_jobs->object.scale, unit));
    }
}

/// The row that was looked at is looked at again, where it is still shown.
void ComparePage::keepRow(const std::function<void()>& change)
{
    const analysis::ComparedPoint* point = m_changes->at(m_table->currentIndex().row());
    const auto id = point == nullptr     ? std::optional<model::PointId>()
                    : point->match.after ? point->match.after
                                         : point->match.before;
    change();
    const int row = id ? m_changes->rowOf(*id) : -1;
    m_table->setCurrentIndex(m_changes->index(std::max(row, 0), 0));
}

void ComparePage::onRow()
{
    const analysis::ComparedPoint* point = m_changes->at(m_table->currentIndex().row());
    m_leftMap->select(point == nullptr ? std::nullopt : point->match.before);
    m_rightMap->select(point == nullptr ? std::nullopt : point->match.after);
    m_because->setText(
        m_changes->index(m_table->currentIndex().row(), ChangesModel::Remark).data().toString());
    drawCourse();
}

void ComparePage::choosePoint(model::PointId point)
{
    if (const int row = m_changes->rowOf(point); row >= 0)
        m_table->setCurrentIndex(m_changes->index(row, 0));
}

void ComparePage::follow(int row)
{
    const QModelIndex index = m_changes->index(row, 0);
    if (!index.isValid())
        return;
    const std::size_t which = index.data(ChangesModel::ComparedRole).toULongLong();
    if (m_followed.erase(which) == 0) {
        if (m_followed.size() == kMostFollowed) {
            emit said(tr("The course shows five points at most; take one out with Space first."));
            return;
        }
        m_followed.insert(which);
    }
    m_changes->setFollowed(m_followed);
    drawCourse();
}

void ComparePage::swapSides()
{
    compare(m_after, m_before);
}

void ComparePage::blink(bool held)
{
    const int index = m_sheets->current();
    if (m_jobs == nullptr || index < 0)
        return;
    const model::Sheet& sheet = m_jobs->after.job.sketch.sheets[static_cast<std::size_t>(index)];
    if (held)
        m_rightMap->showSheet(*m_jobs, m_jobs->before, m_standing->current() == 1, sheet, true);
    else
        drawMaps();
}

bool ComparePage::onKey(int key)
{
    const int row = m_table->currentIndex().row();
    switch (key) {
    case Qt::Key_Escape:
        emit left();
        return true;
    case Qt::Key_Left:
    case Qt::Key_Right:
        swapSides();
        return true;
    case Qt::Key_F:
        m_standing->setCurrent(1 - m_standing->current());
        return true;
    case Qt::Key_O:
        m_laying->setCurrent(1 - m_laying->current());
        return true;
    case Qt::Key_Space:
        follow(row);
        return true;
    case Qt::Key_Y:
        confirm(row);
        return true;
    case Qt::Key_N:
        deny(row);
        return true;
    case Qt::Key_B:
        blink(true);
        return true;
    default:
        break;
    }
    if (key >= Qt::Key_1 && key <= Qt::Key_9 && key - Qt::Key_1 < m_sheets->count()) {
        m_sheets->setCurrent(key - Qt::Key_1);
        return true;
    }
    return false;
}

bool ComparePage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress || event->type() == QEvent::KeyRelease) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0;
        if (event->type() == QEvent::KeyRelease && key->key() == Qt::Key_B && !key->isAutoRepeat()) {
            blink(false);
            return true;
        }
        if (event->type() == QEvent::KeyPress && plain &&
            (key->isAutoRepeat() ? key->key() == Qt::Key_B : onKey(key->key())))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace sealwalk::ui
