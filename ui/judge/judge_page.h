// SPDX-License-Identifier: GPL-3.0-or-later
// The judge stage: map and table as one, balance and load below. Composition only.
#pragma once

#include "ui/session/job_session.h"
#include "ui/widgets/note.h"

#include <QTime>
#include <QWidget>

class QComboBox;
class QGraphicsOpacityEffect;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTimer;

namespace sealwalk::render {
class BarChartView;
}

namespace sealwalk::ui {

class BecausePanel;
class FindingsFilter;
class FindingsModel;
class JudgeWork;
class MapPanel;
class NothingShown;
class OpenEndsBar;
class PageTabs;
class RepairsPanel;

class JudgePage : public QWidget
{
    Q_OBJECT

public:
    explicit JudgePage(JobSession& session, QWidget* parent = nullptr);

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void failed(const sealwalk::Error& error);
    void sprayWanted(); ///< a round was opened
    /// What is decided here stands under a name, and nobody is named at this window yet.
    void nameWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeTable();
    QWidget* makeLower();
    void makeKeys();
    void refresh();
    void refreshFigures();
    [[nodiscard]] static QStringList shownWords();
    void countShown();
    void sayNothingShown();
    void refreshBecause();
    void showWorkingOut();
    void sayWorkingOut();
    void choose(model::PointId point);
    [[nodiscard]] const analysis::PointFinding* chosen() const;
    void showBecause();
    void backToTable();
    void logRepairs();
    void editRepair(model::RepairId repair);
    void proveRepair(model::RepairId repair);
    void showRepairs();
    void judgeByHand();
    [[nodiscard]] bool takesDecisions();
    void copyRows() const;
    [[nodiscard]] const std::vector<analysis::PointFinding>& findings() const;

    JobSession& m_session;
    MapPanel* m_map;
    FindingsModel* m_model;
    FindingsFilter* m_filter;
    JudgeWork* m_work;
    QTableView* m_table = nullptr;
    QComboBox* m_show = nullptr; ///< in the order of FindingsFilter::Show
    QLineEdit* m_find = nullptr;
    NothingShown* m_nothing = nullptr;
    QLabel* m_counts = nullptr;
    OpenEndsBar* m_ends = nullptr;
    QTimer* m_slow = nullptr; ///< work longer than this is worth a word
    QGraphicsOpacityEffect* m_dim = nullptr;
    QTime m_workedOutAt;
    QStackedWidget* m_lower = nullptr;
    PageTabs* m_tabs = nullptr;
    BecausePanel* m_because = nullptr;
    RepairsPanel* m_repairs = nullptr;
    QLabel* m_balanceText = nullptr;
    QLabel* m_loadText = nullptr;
    render::BarChartView* m_balance = nullptr;
    render::BarChartView* m_load = nullptr;
    QPushButton* m_repair = nullptr;
};

} // namespace sealwalk::ui
