// SPDX-License-Identifier: GPL-3.0-or-later
// The History stage: ways to begin while it is empty, then objects and jobs, and two jobs side by side.
#pragma once

#include "core/base/error.h"
#include "core/model/ids.h"
#include "core/storage/history_store.h"
#include "ui/widgets/note.h"

#include <QWidget>

class QStackedLayout;

namespace sealwalk::ui {

class ComparePage;
class FirstStart;
class HistoryLists;
class JobSession;

class HistoryPage : public QWidget
{
    Q_OBJECT

public:
    explicit HistoryPage(JobSession& session, QWidget* parent = nullptr);

    /// Asks for the facts of a new object, then for its first job.
    void startNewObject();
    /// Asks why and who; nil: the object chosen in the list, else the open job's.
    void startNewJob(model::ObjectId object = {});
    void focusSearch();
    void search(const QString& typed);
    void openJob(model::JobId job);

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void failed(const sealwalk::Error& error);
    /// A job was opened or made: the work goes on in its stages.
    void jobOpened();
    void pictureWanted();
    void jobFileWanted();
    void demoWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// Another window's every reading changes the lists; they are searched when somebody sees them.
    void refreshWhenSeen();
    void refresh();
    void compare(model::JobId first, model::JobId second, const std::vector<model::JobId>& between);
    void leaveComparison();
    void editObject(model::ObjectId object);
    /// All entries but this one.
    [[nodiscard]] std::vector<storage::ObjectEntry> entriesBeside(model::ObjectId object) const;
    void saySameObjects(model::ObjectId object, QWidget* over);

    JobSession& m_session;
    QStackedLayout* m_stack = nullptr;
    FirstStart* m_first = nullptr;
    HistoryLists* m_lists = nullptr;
    ComparePage* m_compare = nullptr;
    bool m_isOld = false; ///< what the lists show
};

} // namespace sealwalk::ui
