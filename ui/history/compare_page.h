// SPDX-License-Identifier: GPL-3.0-or-later
// Two jobs of one object: two maps on one scale with one ruler between, the changes, and the course.
#pragma once

#include "core/analysis/point_matching.h"
#include "core/base/result.h"
#include "core/report/course_figure.h"
#include "ui/history/compare_work.h"
#include "ui/session/newest_wins.h"

#include <QWidget>

#include <functional>
#include <set>
#include <vector>

class QAbstractItemModel;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QStackedWidget;
class QTableView;
class QToolButton;

namespace sealwalk::render {
class DecadeRuler;
class PlotView;
} // namespace sealwalk::render

namespace sealwalk::ui {

class ChangesModel;
class Heading;
class JobSession;
class JointsModel;
class MapSide;
class PageTabs;
class SwitchRow;
class TotalsModel;

/// The kinds of change as they are filtered by, in the order of their chips.
inline constexpr analysis::Change kChangeKinds[] = {analysis::Change::New,           analysis::Change::Gone,
                                                    analysis::Change::Grown,         analysis::Change::Shrunk,
                                                    analysis::Change::NotComparable, analysis::Change::Same};
/// The least width of the fields that choose the jobs, px.
inline constexpr int kLeastJobWidth = 136;

class ComparePage : public QWidget
{
    Q_OBJECT

public:
    explicit ComparePage(JobSession& session, QWidget* parent = nullptr);
    ~ComparePage() override;

    /// @param between  further jobs of the object: a column each, and a map where there is room
    void compare(model::JobId before, model::JobId after, std::vector<model::JobId> between = {});
    [[nodiscard]] const ChangesModel& changes() const { return *m_changes; }

signals:
    void left();
    void ready();       ///< the figures of the jobs asked for are shown
    void courseReady(); ///< and those of the object's other jobs on the course
    void said(const QString& text);
    void failed(const sealwalk::Error& error);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    using Answer = Result<std::shared_ptr<const ComparedJobs>>;

    QWidget* makeBar();
    QWidget* makeMaps();
    QWidget* makeChanges();
    QTableView* makeTable(QAbstractItemModel* model, const QString& id, const QString& name);
    void makeJointsAndTotals();
    QWidget* makeCourse();
    void deliver(const Answer& answer);
    void requestCourse();
    void fillJobs();
    void compareAgain();
    void drawMaps();
    void equalise();
    void takeYears(ComparedYears years);
    [[nodiscard]] std::shared_ptr<const ComparedJob> yearOf(model::JobId job) const;
    void showBetween();
    void showTable();
    void onReleased(const QPoint& at);
    void giveRoom();
    void bringUpCourse();
    void drawCourse();
    void drawPoints(const report::ShownUnit& unit);
    [[nodiscard]] QString rowText() const;
    [[nodiscard]] QString totalText() const;
    void keepRow(const std::function<void()>& change);
    void onRow();
    void choosePoint(model::PointId point);
    void follow(int row);
    void confirm(int row);
    [[nodiscard]] std::optional<analysis::PointPair> markedPair(const analysis::ComparedPoint& point) const;
    void deny(int row);
    void matchedAnew(int row);
    bool readKnownPairs();
    void swapSides();
    void blink(bool held);
    bool onKey(int key);

    JobSession& m_session;
    QComboBox* m_first = nullptr;
    QComboBox* m_second = nullptr;
    SwitchRow* m_standing = nullptr;
    SwitchRow* m_sheets = nullptr;
    SwitchRow* m_laying = nullptr;
    QToolButton* m_back = nullptr;
    MapSide* m_leftMap = nullptr;
    MapSide* m_rightMap = nullptr;
    QHBoxLayout* m_middle = nullptr; ///< room for the maps of jobs between
    std::vector<MapSide*> m_middleMaps;
    QString m_withoutMap; ///< said of jobs whose maps have no room
    render::DecadeRuler* m_ruler = nullptr;
    QLabel* m_limits = nullptr; ///< over the maps, when the jobs have different ones
    ChangesModel* m_changes = nullptr;
    QTableView* m_table = nullptr;
    SwitchRow* m_shown = nullptr; ///< changes, joints or totals
    QStackedWidget* m_pages = nullptr;
    JointsModel* m_jointsModel = nullptr;
    QTableView* m_joints = nullptr;
    TotalsModel* m_totalsModel = nullptr;
    QTableView* m_totals = nullptr;
    PageTabs* m_tabs = nullptr;
    QHBoxLayout* m_chips = nullptr;
    std::vector<QToolButton*> m_kinds;
    QLabel* m_because = nullptr;
    render::PlotView* m_course = nullptr;
    Heading* m_courseHeading = nullptr;
    std::shared_ptr<const ComparedJobs> m_jobs;
    ComparedYears m_years;
    std::vector<report::CourseStop> m_stops;
    std::vector<model::JobId> m_between; ///< marked beside the two
    analysis::KnownPairs m_known;        ///< what was said of points drawn anew
    std::set<std::size_t> m_followed;    ///< indices into the comparison
    model::JobId m_before;
    model::JobId m_after;
    std::stop_source m_courseStop;
    NewestWins<Answer> m_work;
    NewestWins<Result<ComparedYears>> m_courseWork;
};

} // namespace sealwalk::ui
