// SPDX-License-Identifier: GPL-3.0-or-later
// What the comparison shows of all jobs of the object: the course of points, of a joint and of the total, the
// worst joints, and the jobs between the two compared.
#include "core/report/course_years.h"
#include "core/report/rate_text.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_page.h"
#include "ui/history/joints_model.h"
#include "ui/history/map_side.h"
#include "ui/history/totals_model.h"
#include "ui/render/core_words.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/plot_view.h"
#include "ui/render/sheet_view.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/page_tabs.h"
#include "ui/widgets/switch_row.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kMapNeeds = 400; // px, of one map

/// "118 as left: at least 3.1e−4 from 24 of 24 points"
QString stopText(const report::JointStop& stop, const report::ShownUnit& unit)
{
    const auto rate = [](double value) { return localised(report::screenRate(value)); };
    const auto sum = report::shownSum(stop.leaks, unit);
    QString said;
    if (stop.leaks.isGap())
        return ComparePage::tr("%1: not tested").arg(stop.job);
    if (sum)
        said = stop.leaks.isAtLeast ? ComparePage::tr("at least %1").arg(rate(unit.number(sum->rate)))
                                    : rate(unit.number(sum->rate));
    else if (stop.leaks.state() == analysis::SumState::Below)
        said = ComparePage::tr("below %1").arg(rate(unit.ofHelium(*stop.leaks.below)));
    else
        said = render::inWords(std::string(report::sumWord(stop.leaks.state())));
    return (stop.asLeft ? ComparePage::tr("%1 as left: %2, %3 of %4 points tested")
                        : ComparePage::tr("%1 as found: %2, %3 of %4 points tested"))
        .arg(stop.job)
        .arg(said)
        .arg(stop.leaks.answered)
        .arg(stop.leaks.points);
}

} // namespace

/// The two that are shown are on the course at once, the object's other jobs when they are worked out.
void ComparePage::requestCourse()
{
    takeYears(yearsOf(m_jobs));
    m_courseStop = std::stop_source();
    m_courseWork.request([file = m_session.historyFile(), jobs = m_jobs, asked = m_between,
                          stop = m_courseStop.get_token()] { return workOutYears(file, jobs, asked, stop); });
}

void ComparePage::takeYears(ComparedYears years)
{
    m_years = std::move(years);
    m_stops = report::courseStops(m_years.jobs);
    const report::ShownUnit unit = report::shownUnit(m_jobs->after.job.setup);
    const int joint = m_joints->currentIndex().row();
    m_jointsModel->setRows(analysis::jointHistories(m_years.jobs, m_known), unit);
    if (m_jointsModel->rowCount() > 0)
        m_joints->setCurrentIndex(m_jointsModel->index(std::max(joint, 0), 0));
    m_totalsModel->setRows(m_years.totals, unit);
    if (m_totalsModel->rowCount() > 0)
        m_totals->setCurrentIndex(m_totalsModel->index(m_totalsModel->rowCount() - 1, 0));
}

std::shared_ptr<const ComparedJob> ComparePage::yearOf(model::JobId job) const
{
    const auto found = std::find_if(m_years.jobs.begin(), m_years.jobs.end(),
                                    [&](const auto& one) { return one->job.id == job; });
    return found == m_years.jobs.end() ? nullptr : *found;
}

/// The jobs marked beside the two: a column each, and as many maps as have room.
void ComparePage::showBetween()
{
    std::vector<std::shared_ptr<const ComparedJob>> between;
    for (const model::JobId job : m_between)
        if (auto found = yearOf(job))
            between.push_back(std::move(found));
    std::sort(between.begin(), between.end(),
              [](const auto& a, const auto& b) { return a->job.opened < b->job.opened; });
    m_changes->setBetween(between, m_standing->current() == 1, m_known);
    m_table->setColumnHidden(ChangesModel::Delta, !between.empty());
    giveRoom();
    QHeaderView* head = m_table->horizontalHeader();
    for (int i = 0; i < static_cast<int>(between.size()); ++i) {
        const int column = ChangesModel::ColumnCount + i;
        head->moveSection(head->visualIndex(column), head->visualIndex(ChangesModel::Then) + 1 + i);
        m_table->setColumnWidth(column, m_table->columnWidth(ChangesModel::Then));
        m_table->setItemDelegateForColumn(column, m_table->itemDelegateForColumn(ChangesModel::Then));
    }
    if (m_table->currentIndex().isValid())
        m_table->selectRow(m_table->currentIndex().row()); // with its new columns
    const bool over = m_laying->current() == 1;
    const int index = m_sheets->current();
    const int room = over || index < 0 ? 0 : std::max(0, width() / kMapNeeds - 2);
    const auto shown = std::min<std::size_t>(between.size(), static_cast<std::size_t>(room));
    while (m_middleMaps.size() < shown) {
        auto* map = new MapSide(m_session, m_ruler->parentWidget());
        m_middle->addWidget(map, 1);
        connect(map, &MapSide::pointChosen, this, &ComparePage::choosePoint);
        m_middleMaps.push_back(map);
    }
    qobject_cast<QHBoxLayout*>(m_middle->parent())->setStretchFactor(m_middle, static_cast<int>(shown));
    for (std::size_t i = 0; i < m_middleMaps.size(); ++i) {
        m_middleMaps[i]->setVisible(i < shown);
        if (i < shown)
            m_middleMaps[i]->showSheet(*m_jobs, *between[between.size() - shown + i],
                                       m_standing->current() == 1,
                                       m_jobs->after.job.sketch.sheets[static_cast<std::size_t>(index)]);
    }
    QStringList left;
    for (std::size_t i = 0; i + shown < between.size(); ++i)
        left.append(QString::number(between[i]->job.number));
    m_withoutMap = left.isEmpty() ? QString()
                                  : tr("No room for the map of job %1: it is in the table and on the course.")
                                        .arg(left.join(QStringLiteral(", ")));
}

void ComparePage::showTable()
{
    const int which = m_shown->current();
    m_pages->setCurrentIndex(which);
    for (QToolButton* chip : m_kinds)
        chip->setVisible(which == 0);
    setFocusProxy(m_pages->currentWidget());
    m_pages->currentWidget()->setFocus();
    onRow();
}

void ComparePage::bringUpCourse()
{
    m_tabs->bringUp(m_course);
}

void ComparePage::drawCourse()
{
    if (m_jobs == nullptr)
        return;
    const report::ShownUnit unit = report::shownUnit(m_jobs->after.job.setup);
    const model::Setup& setup = m_jobs->after.job.setup;
    QString aside = m_years.leftOut == 0 ? QString()
                                         : tr("the newest %1 of %2 jobs")
                                               .arg(m_years.jobs.size())
                                               .arg(m_years.jobs.size() + m_years.leftOut);
    if (m_shown->current() == 1) {
        const analysis::JointHistory* joint = m_jointsModel->at(m_joints->currentIndex().row());
        if (joint == nullptr)
            return;
        const auto kind = setup.kindLimits.find(joint->kind);
        const auto stops = report::jointStops(m_years.jobs, m_jobs->object, *joint);
        m_course->setFigure(report::jointCourse(m_years.jobs, stops,
                                                kind == setup.kindLimits.end() ? setup.pointLimit
                                                                               : std::optional(kind->second),
                                                m_jobs->object.scale, unit));
        m_courseHeading->setTitle(tr("Course of %1").arg(QString::fromStdString(joint->name)));
    } else if (m_shown->current() == 2) {
        m_course->setFigure(report::totalCourse(
            m_years.jobs, m_totalsModel->rows(),
            setup.totalLimit ? setup.totalLimit : m_jobs->object.totalLimit, m_jobs->object.scale, unit));
        m_courseHeading->setTitle(tr("Course of the total"));
    } else {
        drawPoints(unit);
        m_courseHeading->setTitle(tr("Course"));
        aside = aside.isEmpty() ? tr("Space adds a row, at most five") : aside;
    }
    m_courseHeading->setAside(aside);
}

void ComparePage::drawPoints(const report::ShownUnit& unit)
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
        points.push_back({*id,
                          std::to_string(number) + " " +
                              m_changes->nameOf(compared).section(QLatin1Char(','), 0, 0).toStdString(),
                          analysis::onePlace(*id, m_known)});
    }
    std::optional<LeakRate> limit;
    if (points.size() == 1)
        limit = m_jobs->after.job.limitOf(points.front().point);
    m_course->setFigure(report::courseFigure(
        m_stops, points, limit ? limit : m_jobs->after.job.setup.pointLimit, m_jobs->object.scale, unit));
}

/// What the course of the total leaves out, and what of the row stands beside its sum.
QString ComparePage::totalText() const
{
    QStringList parts{
        tr("All leaks together and the pressure rise, as air. Hollow: below. A gap: not measured; "
           "a word in its place says why there is no sum")};
    const int row = m_totals->currentIndex().row();
    if (row >= 0 && row < m_totalsModel->rowCount()) {
        const analysis::LeakSum& leaks = m_totalsModel->rows()[static_cast<std::size_t>(row)].leaks;
        if (leaks.otherCondition > 0)
            parts.append(tr("Beside the sum, in another condition only: %1").arg(leaks.otherCondition));
        if (leaks.ofSetup > 0)
            parts.append(tr("Beside the sum, of the set-up: %1").arg(leaks.ofSetup));
        if (leaks.unsized > 0)
            parts.append(tr("Not sized: %1").arg(leaks.unsized));
    }
    return parts.join(QStringLiteral(". ")) + QLatin1Char('.');
}

/// The sentence below the table: of the row, whole.
QString ComparePage::rowText() const
{
    if (m_jobs == nullptr)
        return {};
    if (m_shown->current() == 1) {
        const analysis::JointHistory* joint = m_jointsModel->at(m_joints->currentIndex().row());
        if (joint == nullptr)
            return {};
        const report::ShownUnit unit = report::shownUnit(m_jobs->after.job.setup);
        QStringList parts;
        for (const report::JointStop& stop : report::jointStops(m_years.jobs, m_jobs->object, *joint))
            parts.append(stopText(stop, unit));
        return tr("Sum of its points, %1: %2.")
            .arg(QString::fromStdString(unit.head()), parts.join(QStringLiteral("; ")));
    }
    if (m_shown->current() == 2)
        return totalText();
    const analysis::ComparedPoint* point = m_changes->at(m_table->currentIndex().row());
    QStringList parts{
        m_changes->index(m_table->currentIndex().row(), ChangesModel::Remark).data().toString()};
    if (point != nullptr) {
        const auto id = point->match.after ? point->match.after : point->match.before;
        const QString touched =
            touchText(analysis::lastTouch(m_years.jobs, analysis::onePlace(*id, m_known)));
        if (!touched.isEmpty())
            parts.append(tr("Last touched %1").arg(touched));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(". "));
}

} // namespace sealwalk::ui
