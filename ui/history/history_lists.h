// SPDX-License-Identifier: GPL-3.0-or-later
// Objects and jobs, found by typing.
#pragma once

#include "core/storage/history_store.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace sealwalk::ui {

class JobSession;
class JobsModel;
class ObjectsModel;
class PageTabs;
class RecordWatch;

class HistoryLists : public QWidget
{
    Q_OBJECT

public:
    explicit HistoryLists(JobSession& session, QWidget* parent = nullptr);

    /// Reads the lists again; what was chosen stays chosen.
    void refresh();
    void focusSearch();
    void search(const QString& typed);
    void clearMarks();
    /// The object whose row is chosen; nil: all.
    [[nodiscard]] model::ObjectId chosenObject() const;
    [[nodiscard]] bool hasObjects() const; ///< among those listed
    [[nodiscard]] int jobCount() const;

signals:
    void jobWanted(sealwalk::model::JobId job);
    void newJobWanted(sealwalk::model::ObjectId object);
    void newObjectWanted();
    void objectEditWanted(sealwalk::model::ObjectId object);
    /// The oldest and the newest of the marked jobs, and those between them.
    void compareWanted(sealwalk::model::JobId first, sealwalk::model::JobId second,
                       const std::vector<sealwalk::model::JobId>& between);
    void failed(const sealwalk::Error& error);
    void refused(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void showJobs();
    [[nodiscard]] Result<std::vector<storage::JobRow>> found() const;
    [[nodiscard]] Result<std::vector<storage::ObjectRow>>
    wantedOf(std::vector<storage::ObjectRow> objects) const;
    void showWhereFound();
    void lookAtShown(); ///< whether what is signed there is still what was signed
    void showWrong();
    void openChosen();
    void compareMarked();
    void onMarks();

    JobSession& m_session;
    std::vector<storage::JobRow> m_found; ///< by what is typed, on any object
    QLineEdit* m_search = nullptr;
    QLabel* m_nothing = nullptr; ///< said when the search finds no job
    QTableView* m_objects = nullptr;
    QTableView* m_jobs = nullptr;
    PageTabs* m_tabs = nullptr;
    QPushButton* m_compare = nullptr;
    QPushButton* m_edit = nullptr;
    ObjectsModel* m_objectsModel = nullptr;
    bool m_isFilling = false; ///< the jobs are read once it is done
    JobsModel* m_jobsModel = nullptr;
    RecordWatch* m_watch = nullptr;
};

} // namespace sealwalk::ui
