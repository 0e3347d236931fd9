// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/history_lists.h"

#include "ui/history/found_words.h"
#include "ui/history/jobs_model.h"
#include "ui/history/objects_model.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/session/record_watch.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/page_tabs.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace sealwalk::ui {

namespace {

constexpr int kRowsOfAScreen = 80; // of a high one

QTableView* table(QAbstractItemModel* model, const QString& name, int stretched, QWidget* parent)
{
    auto* view = new QTableView(parent);
    view->setModel(model);
    view->setAccessibleName(name);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setTabKeyNavigation(false);
    view->setShowGrid(false);
    view->setWordWrap(false);
    view->verticalHeader()->hide();
    view->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    view->horizontalHeader()->setSectionResizeMode(stretched, QHeaderView::Stretch);
    view->horizontalHeader()->setHighlightSections(false);
    view->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return view;
}

} // namespace

HistoryLists::HistoryLists(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    build();
}

void HistoryLists::build()
{
    m_search = new QLineEdit(this);
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setAccessibleName(tr("find objects and jobs"));
    m_search->setPlaceholderText(tr("object, tag, place, person, what was found, date"));
    m_search->setClearButtonEnabled(true);
    m_search->addAction(render::icon(QStringLiteral("search")), QLineEdit::LeadingPosition);
    m_search->installEventFilter(this);

    m_objectsModel = new ObjectsModel(this);
    m_jobsModel = new JobsModel(this);
    m_watch = new RecordWatch(m_session, this);
    m_objects = table(m_objectsModel, tr("test objects"), ObjectsModel::Name, this);
    m_objects->setObjectName(QStringLiteral("objects"));
    m_objects->setTextElideMode(Qt::ElideMiddle); // the tag at the end is what tells objects apart
    m_jobs = table(m_jobsModel, tr("jobs"), JobsModel::Purpose, this);
    m_jobs->setObjectName(QStringLiteral("jobs"));
    for (const auto& [column, width] : {std::pair{ObjectsModel::Last, 108}, std::pair{ObjectsModel::Jobs, 76},
                                        std::pair{ObjectsModel::Temporary, 88}})
        m_objects->setColumnWidth(column, width);
    for (const auto& [column, width] :
         {std::pair{JobsModel::Number, 76}, std::pair{JobsModel::Date, 96}, std::pair{JobsModel::Object, 190},
          std::pair{JobsModel::Found, 220}, std::pair{JobsModel::State, 112},
          std::pair{JobsModel::Points, 58}, std::pair{JobsModel::Readings, 80}})
        m_jobs->setColumnWidth(column, width);
    constexpr int kSignAndEdges = 44; // px
    m_jobs->setColumnWidth(JobsModel::State,
                           m_jobs->fontMetrics().horizontalAdvance(JobsModel::tr("not as signed")) +
                               kSignAndEdges);
    m_jobs->setColumnHidden(JobsModel::Found, true);
    m_jobs->installEventFilter(this);
    m_objects->installEventFilter(this);

    m_compare = new QPushButton(tr("Compare"), this);
    m_compare->setObjectName(QStringLiteral("compare"));
    m_compare->setToolTip(
        tr("Mark two jobs or more of one object first: Space, or Shift+Space to mark only"));
    m_edit = new QPushButton(tr("Object facts …"), this);
    auto* newObject = new QPushButton(tr("New test object"), this);
    auto* newJob = new QPushButton(tr("New job"), this);
    newJob->setObjectName(QStringLiteral("newJob"));
    newJob->setProperty("kind", QStringLiteral("primary"));

    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(16, 12, 16, 12);
    bar->setSpacing(8);
    bar->addWidget(m_search, 1);
    bar->addWidget(m_compare);
    bar->addWidget(m_edit);
    bar->addWidget(newObject);
    bar->addWidget(newJob);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(m_objects);
    split->addWidget(m_jobs);
    split->setSizes({460, 906});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(bar);
    m_nothing = quietLabel({}, this);
    m_nothing->setObjectName(QStringLiteral("nothing"));
    m_nothing->setContentsMargins(16, 0, 16, 8);
    m_nothing->setWordWrap(true);
    m_nothing->hide();
    column->addWidget(m_nothing);
    m_tabs = new PageTabs(split, {{tr("Test objects"), m_objects}, {tr("Jobs"), m_jobs}}, render::kPartsNeed,
                          this);
    m_tabs->bringUp(m_jobs);
    column->addWidget(m_tabs, 1);
    setFocusProxy(m_search);

    connect(m_search, &QLineEdit::textChanged, this, [this] {
        refresh();
        // Enter in the search opens what stands on top.
        m_jobs->setCurrentIndex(m_jobsModel->index(0, 0));
    });
    connect(m_objects->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_isFilling)
            showJobs();
    });
    connect(m_jobs, &QTableView::doubleClicked, this, &HistoryLists::openChosen);
    connect(m_jobsModel, &JobsModel::marksChanged, this, &HistoryLists::onMarks);
    connect(m_jobs->verticalScrollBar(), &QScrollBar::valueChanged, this, &HistoryLists::lookAtShown);
    connect(m_watch, &RecordWatch::told, this, &HistoryLists::showWrong);
    connect(m_compare, &QPushButton::clicked, this, &HistoryLists::compareMarked);
    connect(newJob, &QPushButton::clicked, this, [this] { emit newJobWanted(chosenObject()); });
    connect(newObject, &QPushButton::clicked, this, &HistoryLists::newObjectWanted);
    connect(m_edit, &QPushButton::clicked, this, [this] { emit objectEditWanted(chosenObject()); });
    onMarks();
}

void HistoryLists::refresh()
{
    m_found.clear();
    if (!m_session.hasHistory()) {
        m_objectsModel->setRows({});
        m_jobsModel->setRows({});
        return;
    }
    const model::ObjectId chosen = chosenObject();
    auto jobs = found();
    if (!jobs) {
        emit failed(jobs.error());
        return;
    }
    m_found = std::move(*jobs);
    auto objects = m_session.history().objects();
    if (objects && !m_search->text().trimmed().isEmpty())
        objects = wantedOf(std::move(*objects));
    if (!objects) {
        emit failed(objects.error());
        return;
    }
    m_isFilling = true;
    m_objectsModel->setRows(std::move(*objects));
    m_objects->setCurrentIndex(m_objectsModel->index(m_objectsModel->rowOf(chosen), 0));
    m_isFilling = false;
    showJobs();
}

/// Those called as was typed, or with a job that was found by it.
Result<std::vector<storage::ObjectRow>> HistoryLists::wantedOf(std::vector<storage::ObjectRow> objects) const
{
    const auto called = m_session.history().objects(m_search->text().toStdString());
    if (!called)
        return fail(called.error());
    std::set<model::ObjectId> wanted;
    for (const storage::ObjectRow& row : *called)
        wanted.insert(row.id);
    for (const storage::JobRow& job : m_found)
        wanted.insert(job.object);
    std::erase_if(objects, [&](const storage::ObjectRow& row) {
        return std::none_of(wanted.begin(), wanted.end(), [&](model::ObjectId id) { return row.has(id); });
    });
    return objects;
}

/// Jobs found by the text as typed or by a word of the record it stands for, the newest first.
Result<std::vector<storage::JobRow>> HistoryLists::found() const
{
    std::vector<storage::JobRow> all;
    for (const std::string& wanted : searchedFor(m_search->text())) {
        auto rows = m_session.history().jobs(wanted);
        if (!rows)
            return rows;
        if (all.empty()) {
            all = std::move(*rows);
            continue;
        }
        std::set<model::JobId> known;
        for (const storage::JobRow& row : all)
            known.insert(row.id);
        for (storage::JobRow& row : *rows)
            if (known.insert(row.id).second)
                all.push_back(std::move(row));
        std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
            return a.opened != b.opened ? b.opened < a.opened : b.number < a.number;
        });
    }
    return all;
}

void HistoryLists::showJobs()
{
    std::vector<storage::JobRow> jobs = m_found;
    const storage::ObjectRow* only = m_objectsModel->objectAt(m_objects->currentIndex().row());
    if (only != nullptr)
        std::erase_if(jobs, [&](const storage::JobRow& job) { return !only->has(job.object); });
    const storage::JobRow* current = m_jobsModel->jobAt(m_jobs->currentIndex().row());
    const model::JobId keep = current == nullptr ? model::JobId() : current->id;
    m_jobsModel->setRows(std::move(jobs));
    showWhereFound();
    constexpr int kNarrow = 150;
    const int wide = m_search->text().trimmed().isEmpty() ? 300 : 200; // another column stands beside it
    m_jobs->resizeColumnToContents(JobsModel::Object); // of what is in view
    m_jobs->setColumnWidth(JobsModel::Object,
                           std::clamp(m_jobs->columnWidth(JobsModel::Object), kNarrow, wide));
    int row = 0;
    for (int i = 0; i < m_jobsModel->rowCount(); ++i)
        if (m_jobsModel->jobAt(i)->id == keep)
            row = i;
    m_jobs->setCurrentIndex(m_jobsModel->index(row, 0));
    const QString typed = m_search->text().trimmed();
    m_nothing->setVisible(!typed.isEmpty() && m_jobsModel->rowCount() == 0);
    m_nothing->setText(tr("No job has all of \u201C%1\u201D. Esc clears the search.").arg(typed));
    m_edit->setEnabled(only != nullptr);
    lookAtShown();
    showWrong();
}

/// While something is searched for, where it stands takes the room of the counts.
void HistoryLists::showWhereFound()
{
    const QString typed = m_search->text().trimmed();
    const bool isSearching = !typed.isEmpty();
    for (const int column : {JobsModel::Points, JobsModel::Readings})
        m_jobs->setColumnHidden(column, isSearching);
    m_jobs->setColumnHidden(JobsModel::Found, !isSearching);
    if (!isSearching) {
        m_jobsModel->setFoundIn({});
        return;
    }
    m_jobsModel->setFoundIn([this, typed, ways = searchedFor(typed)](const storage::JobRow& job) {
        if (!m_session.hasHistory())
            return QString();
        QStringList words;
        if (const auto lines = m_session.history().foundIn(job, ways))
            for (const std::string& line : *lines)
                words << cutAround(recordLineInWords(line), typed);
        return words.join(QStringLiteral(" · "));
    });
}

void HistoryLists::lookAtShown()
{
    std::vector<model::JobId> shown;
    const int first = std::max(0, m_jobs->rowAt(0));
    for (int row = first; row < std::min(first + kRowsOfAScreen, m_jobsModel->rowCount()); ++row)
        if (const storage::JobRow* job = m_jobsModel->jobAt(row); job->state == model::JobState::Signed)
            shown.push_back(job->id);
    m_watch->look(shown);
}

void HistoryLists::showWrong()
{
    std::map<model::JobId, QString> wrong;
    for (int row = 0; row < m_jobsModel->rowCount(); ++row)
        if (const storage::JobRow* job = m_jobsModel->jobAt(row); job->state == model::JobState::Signed)
            if (const std::string why = m_watch->wrongWith(job->id); !why.empty())
                wrong.emplace(job->id, render::inWords(why));
    m_jobsModel->setWrong(std::move(wrong));
}

void HistoryLists::focusSearch()
{
    m_search->setFocus();
    m_search->selectAll();
}

void HistoryLists::search(const QString& typed)
{
    m_search->setText(typed);
    focusSearch();
}

void HistoryLists::clearMarks()
{
    m_jobsModel->clearMarks();
}

model::ObjectId HistoryLists::chosenObject() const
{
    const storage::ObjectRow* object = m_objectsModel->objectAt(m_objects->currentIndex().row());
    return object == nullptr ? model::ObjectId() : object->id;
}

bool HistoryLists::hasObjects() const
{
    return m_objectsModel->rowCount() > 1; // beside the row of all objects
}

int HistoryLists::jobCount() const
{
    return m_jobsModel->rowCount();
}

void HistoryLists::openChosen()
{
    if (const storage::JobRow* job = m_jobsModel->jobAt(m_jobs->currentIndex().row()))
        emit jobWanted(job->id);
}

void HistoryLists::onMarks()
{
    const auto& marked = m_jobsModel->marked();
    m_compare->setEnabled(marked.size() >= 2);
    m_compare->setText(marked.size() == 2
                           ? tr("Compare %1 and %2").arg(marked[0].number).arg(marked[1].number)
                       : marked.size() > 2 ? tr("Compare %1 jobs").arg(marked.size())
                                           : tr("Compare"));
}

void HistoryLists::compareMarked()
{
    std::vector<storage::JobRow> marked = m_jobsModel->marked();
    if (marked.size() < 2) {
        emit refused(tr("Mark two jobs with Space, then compare them."));
        return;
    }
    const auto isElsewhere = [&](const storage::JobRow& job) {
        return !m_session.history().areOneObject(job.object, marked[0].object).value_or(false);
    };
    if (std::any_of(marked.begin(), marked.end(), isElsewhere)) {
        emit refused(
            tr("These jobs are on different test objects; mark jobs of one object. Where one was entered "
               "twice, say so in its facts."));
        return;
    }
    std::stable_sort(marked.begin(), marked.end(),
                     [](const auto& a, const auto& b) { return a.opened < b.opened; });
    std::vector<model::JobId> between;
    for (std::size_t i = 1; i + 1 < marked.size(); ++i)
        between.push_back(marked[i].id);
    emit compareWanted(marked.front().id, marked.back().id, between);
}

bool HistoryLists::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (enter && (key->modifiers() & Qt::ControlModifier) != 0) {
        compareMarked();
        return true;
    }
    if (enter && watched != m_objects) {
        openChosen();
        return true;
    }
    if (key->key() == Qt::Key_Escape && !m_search->text().isEmpty()) {
        m_search->clear();
        m_search->setFocus();
        return true;
    }
    if (watched == m_objects && (enter || key->key() == Qt::Key_Right)) {
        m_jobs->setFocus();
        return true;
    }
    if (watched == m_search && (key->key() == Qt::Key_Down || key->key() == Qt::Key_Up)) {
        m_jobs->setFocus();
        return true;
    }
    if (watched == m_jobs && key->key() == Qt::Key_Space) {
        m_jobsModel->toggleMark(m_jobs->currentIndex().row());
        // The second mark is the wish itself, unless more are to come.
        if ((key->modifiers() & Qt::ShiftModifier) == 0 && m_jobsModel->marked().size() >= 2)
            compareMarked();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace sealwalk::ui
