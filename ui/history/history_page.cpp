// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/history_page.h"

#include "ui/history/compare_page.h"
#include "ui/history/first_start.h"
#include "ui/history/history_lists.h"
#include "ui/history/job_dialog.h"
#include "ui/history/object_dialog.h"
#include "ui/history/same_object_dialog.h"
#include "ui/session/job_session.h"

#include <QStackedLayout>

#include <algorithm>
#include <iterator>
#include <utility>

namespace sealwalk::ui {

HistoryPage::HistoryPage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_first = new FirstStart(this);
    m_lists = new HistoryLists(session, this);
    m_compare = new ComparePage(session, this);
    m_stack = new QStackedLayout(this);
    m_stack->addWidget(m_first);
    m_stack->addWidget(m_lists);
    m_stack->addWidget(m_compare);

    connect(m_first, &FirstStart::newObjectWanted, this, &HistoryPage::startNewObject);
    connect(m_first, &FirstStart::pictureWanted, this, &HistoryPage::pictureWanted);
    connect(m_first, &FirstStart::jobFileWanted, this, &HistoryPage::jobFileWanted);
    connect(m_first, &FirstStart::demoWanted, this, &HistoryPage::demoWanted);
    connect(m_lists, &HistoryLists::jobWanted, this, &HistoryPage::openJob);
    connect(m_lists, &HistoryLists::newJobWanted, this, &HistoryPage::startNewJob);
    connect(m_lists, &HistoryLists::newObjectWanted, this, &HistoryPage::startNewObject);
    connect(m_lists, &HistoryLists::objectEditWanted, this, &HistoryPage::editObject);
    connect(m_lists, &HistoryLists::compareWanted, this, &HistoryPage::compare);
    connect(m_compare, &ComparePage::left, this, &HistoryPage::leaveComparison);
    connect(m_compare, &ComparePage::failed, this, &HistoryPage::failed);
    connect(m_compare, &ComparePage::said, this,
            [this](const QString& text) { emit noteRequested(Severity::News, text); });
    connect(m_lists, &HistoryLists::failed, this, &HistoryPage::failed);
    connect(m_lists, &HistoryLists::refused, this,
            [this](const QString& sentence) { emit noteRequested(Severity::Caution, sentence); });
    connect(&m_session, &JobSession::historyChanged, this, &HistoryPage::refreshWhenSeen);
    connect(&m_session, &JobSession::stateChanged, this, &HistoryPage::refreshWhenSeen);
    // The lists count readings: they are made anew when they are seen again, not with every entry.
    connect(&m_session, &JobSession::readingStored, this, [this] { m_isOld = m_isOld || !isVisible(); });
    refresh();
}

void HistoryPage::refreshWhenSeen()
{
    m_isOld = window()->isVisible() && !isVisible();
    if (!m_isOld)
        refresh();
}

void HistoryPage::showEvent(QShowEvent* event)
{
    if (std::exchange(m_isOld, false))
        refresh();
    QWidget::showEvent(event);
}

void HistoryPage::refresh()
{
    m_lists->refresh();
    bool empty = !m_lists->hasObjects();
    if (empty && m_session.hasHistory()) // or nothing is called as the search says
        if (const auto objects = m_session.history().objects())
            empty = objects->empty();
    if (!empty && m_stack->currentWidget() == m_compare)
        return; // the comparison stands until it is left
    QWidget* wanted = empty ? static_cast<QWidget*>(m_first) : m_lists;
    m_stack->setCurrentWidget(wanted);
    setFocusProxy(wanted);
}

void HistoryPage::focusSearch()
{
    m_lists->focusSearch();
}

void HistoryPage::search(const QString& typed)
{
    m_lists->search(typed);
}

void HistoryPage::startNewObject()
{
    if (!m_session.hasHistory()) {
        emit noteRequested(Severity::Caution,
                           tr("Open a history first (Ctrl+O), or make one: File, New history file."));
        return;
    }
    ObjectDialog dialog(model::TestObject{}, this);
    dialog.setTaken(entriesBeside({}));
    if (dialog.exec() != QDialog::Accepted)
        return;
    model::TestObject object = dialog.object();
    object.id = model::ObjectId::create();
    if (const Status made = m_session.createObject(object); !made)
        emit failed(made.error());
    else
        startNewJob(object.id);
}

void HistoryPage::startNewJob(model::ObjectId object)
{
    if (!m_session.hasHistory()) {
        emit noteRequested(Severity::Caution,
                           tr("Open a history first (Ctrl+O), or make one: File, New history file."));
        return;
    }
    const auto objects = m_session.history().objects();
    if (!objects) {
        emit failed(objects.error());
        return;
    }
    if (objects->empty()) {
        startNewObject();
        return;
    }
    if (object.isNil() && m_session.hasJob())
        object = m_session.object().id;
    QStringList people;
    if (const auto known = m_session.people())
        for (const model::Person& person : *known)
            people.append(QString::fromStdString(person.name));
    JobDialog dialog(*objects, object, m_session.logger(), people, this);
    dialog.offerPurpose([this](model::ObjectId of) {
        const auto jobs = m_session.history().jobsOf(of);
        return jobs && !jobs->empty() ? QString::fromStdString(jobs->front().purpose) : QString();
    });
    if (dialog.exec() != QDialog::Accepted)
        return;
    m_session.setLogger(dialog.logger());
    if (const auto made =
            m_session.createJob(dialog.object(), dialog.purpose().toStdString(), dialog.begun());
        !made)
        emit failed(made.error());
    else
        emit jobOpened();
}

void HistoryPage::openJob(model::JobId job)
{
    if (const Status opened = m_session.openJob(job); !opened)
        emit failed(opened.error());
    else
        emit jobOpened();
}

void HistoryPage::compare(model::JobId first, model::JobId second, const std::vector<model::JobId>& between)
{
    m_compare->compare(first, second, between);
    m_stack->setCurrentWidget(m_compare);
    setFocusProxy(m_compare);
    m_compare->setFocus();
}

void HistoryPage::leaveComparison()
{
    m_lists->clearMarks();
    m_stack->setCurrentWidget(m_lists);
    refresh();
    m_lists->setFocus();
}

void HistoryPage::editObject(model::ObjectId id)
{
    const auto object = m_session.history().object(id);
    if (!object) {
        emit failed(object.error());
        return;
    }
    ObjectDialog dialog(*object, this);
    dialog.setTaken(entriesBeside(id));
    connect(&dialog, &ObjectDialog::sameObjectWanted, this, [&] { saySameObjects(id, &dialog); });
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const Status changed = m_session.changeObject(*object, dialog.object()); !changed)
        emit failed(changed.error());
}

std::vector<storage::ObjectEntry> HistoryPage::entriesBeside(model::ObjectId object) const
{
    std::vector<storage::ObjectEntry> entries;
    if (const auto rows = m_session.history().objects())
        for (const storage::ObjectRow& row : *rows) {
            if (row.id != object)
                entries.push_back({row.id, row.name, row.tag, row.place});
            std::copy_if(row.others.begin(), row.others.end(), std::back_inserter(entries),
                         [&](const storage::ObjectEntry& other) { return other.id != object; });
        }
    return entries;
}

void HistoryPage::saySameObjects(model::ObjectId object, QWidget* over)
{
    const auto objects = m_session.history().objects();
    if (!objects) {
        emit failed(objects.error());
        return;
    }
    SameObjectDialog dialog(*objects, object, over);
    if (dialog.exec() != QDialog::Accepted)
        return;
    for (const model::ObjectId entry : dialog.joined())
        if (const Status said = m_session.sayOneObject(entry, object); !said)
            emit failed(said.error());
    for (const model::ObjectId entry : dialog.parted())
        if (const Status said = m_session.sayTwoObjects(entry); !said)
            emit failed(said.error());
}

} // namespace sealwalk::ui
