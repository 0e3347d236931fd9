// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_page.h"

#include "core/storage/history_store.h"
#include "core/transfer/known_pairs.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_alone.h"
#include "ui/history/compare_limits.h"
#include "ui/history/map_side.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/widgets/page_tabs.h"
#include "ui/widgets/switch_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kMostFollowed = 5;
constexpr int kJobWidth = 176;
constexpr int kBarNeeds = 1180;
constexpr int kSentenceNeeds = 1000; // px, of the table of changes
constexpr int kJointWidth = 170;

} // namespace

ComparePage::ComparePage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work([this](const Answer& answer) { deliver(answer); })
    , m_courseWork([this](Result<ComparedYears> years) {
        if (!years) {
            emit failed(years.error());
            return;
        }
        takeYears(std::move(*years));
        drawMaps(); // the jobs between the two are there now
        onRow();
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
    m_tabs = new PageTabs(split, {{tr("Maps"), maps}, {tr("Tables"), changes}, {tr("Course"), course}},
                          render::kPartsNeed, this);
    m_tabs->bringUp(changes);
    connect(m_tabs, &PageTabs::turned, this, [this](QWidget* part) {
        (part->isAncestorOf(m_pages) ? m_pages->currentWidget() : part)->setFocus();
    });
    column->addWidget(m_tabs, 1);
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

void ComparePage::compare(model::JobId before, model::JobId after, std::vector<model::JobId> between)
{
    std::erase_if(between, [&](model::JobId job) { return job == before || job == after; });
    m_between = std::move(between);
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
    const int proposed = comparison.matched(analysis::MatchedBy::Number) +
                         comparison.matched(analysis::MatchedBy::Place) +
                         comparison.matched(analysis::MatchedBy::Name);
    QStringList how;
    if (const int known = comparison.matched(analysis::MatchedBy::Identity); known > 0)
        how << tr("%n known to be the same point", nullptr, known);
    if (byHand > 0)
        how << tr("%n said to be the same", nullptr, byHand);
    if (proposed > 0)
        how << tr("%n proposed, Y takes one over", nullptr, proposed);
    const QString compared = tr("Compared %n point(s)", nullptr, static_cast<int>(comparison.points.size()));
    emit said((how.isEmpty() ? compared : compared + QStringLiteral(": ") + how.join(QStringLiteral(", "))) +
              QLatin1Char('.'));
    emit ready();
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
        const int count = comparison.count(kChangeKinds[i]);
        m_kinds[i]->setText(QStringLiteral("%1 %2").arg(changeWord(kChangeKinds[i])).arg(count));
        m_kinds[i]->setEnabled(count > 0);
        if (m_kinds[i]->isChecked())
            shown.insert(kChangeKinds[i]);
    }
    m_changes->setShown(shown);
    m_changes->setComparison(comparison, before.job.sketch, after.job.sketch,
                             report::shownUnit(after.job.setup));
    m_changes->setFollowed(m_followed);
    drawMaps();
    onRow();
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
    showBetween();
    QStringList words{limitWords(*m_jobs),
                      aloneWords(m_changes->comparison(), m_jobs->before.job, m_jobs->after.job),
                      m_withoutMap};
    words.removeAll(QString());
    m_limits->setText(words.join(QLatin1Char(' ')));
    m_limits->setVisible(!words.isEmpty());
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
    std::vector<render::SheetView*> views{&one, &other};
    for (MapSide* map : m_middleMaps) {
        if (map->isHidden())
            continue;
        map->view().fit();
        views.push_back(&map->view());
    }
    double least = one.pixelsPerMillimetre();
    for (const render::SheetView* view : views)
        least = std::min(least, view->pixelsPerMillimetre());
    for (render::SheetView* view : views)
        if (view->pixelsPerMillimetre() > least)
            view->zoomBy(least / view->pixelsPerMillimetre());
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
    for (MapSide* map : m_middleMaps)
        map->select(point == nullptr     ? std::nullopt
                    : point->match.after ? point->match.after
                                         : point->match.before);
    m_because->setText(rowText());
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
    compare(m_after, m_before, m_between);
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
    case Qt::Key_C:
        m_shown->setCurrent(0);
        return true;
    case Qt::Key_J:
        m_shown->setCurrent(1);
        return true;
    case Qt::Key_T:
        m_shown->setCurrent(2);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        bringUpCourse();
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
    case Qt::Key_Y:
    case Qt::Key_N:
        if (m_shown->current() == 0)
            key == Qt::Key_Space ? follow(row) : key == Qt::Key_Y ? confirm(row) : deny(row);
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

/// Where the sentence of a row has no room it stands below the table alone, and the joint gets what is left.
void ComparePage::giveRoom()
{
    QHeaderView* head = m_table->horizontalHeader();
    const bool isWide = m_table->width() >= kSentenceNeeds && m_between.empty();
    m_table->setColumnHidden(ChangesModel::Remark, !isWide);
    head->setSectionResizeMode(ChangesModel::Remark,
                               isWide ? QHeaderView::Stretch : QHeaderView::Interactive);
    head->setSectionResizeMode(ChangesModel::Joint, isWide || !m_between.empty() ? QHeaderView::Interactive
                                                                                 : QHeaderView::Stretch);
    if (isWide || !m_between.empty())
        m_table->setColumnWidth(ChangesModel::Joint, kJointWidth);
}

/// The box of a row follows its point in the course; beside it a click chooses the row.
void ComparePage::onReleased(const QPoint& at)
{
    constexpr int kBox = 26; // px
    const QModelIndex index = m_table->indexAt(at);
    if (index.column() == ChangesModel::Point &&
        at.x() < m_table->columnViewportPosition(index.column()) + kBox)
        follow(index.row());
}

bool ComparePage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize && watched == m_table)
        giveRoom();
    if (event->type() == QEvent::MouseButtonRelease && watched == m_table->viewport())
        onReleased(static_cast<QMouseEvent*>(event)->position().toPoint());
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
