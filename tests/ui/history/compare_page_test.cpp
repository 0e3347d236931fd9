// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"
#include "tests/support/jobs.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_alone.h"
#include "ui/history/compare_page.h"
#include "ui/history/joints_model.h"
#include "ui/history/map_side.h"
#include "ui/history/totals_model.h"
#include "ui/render/plot_view.h"
#include "ui/render/sheet_view.h"
#include "ui/session/job_session.h"
#include "ui/widgets/rate_delegate.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QtTest>

namespace sealwalk::ui {

namespace {

class ComparePageTest : public ::testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        s_folder = std::make_unique<QTemporaryDir>();
        ASSERT_TRUE(demo::writeDemoHistory(file()));
    }
    static void TearDownTestSuite() { s_folder.reset(); }
    static std::string file() { return s_folder->filePath(QStringLiteral("demo.sealwalk")).toStdString(); }

    void SetUp() override
    {
        ASSERT_TRUE(session.openHistory(file(), false));
        before = session.history().findJob("118").value();
        after = session.history().findJob("164").value();
        page = std::make_unique<ComparePage>(session);
        page->resize(1366, 644);
        page->show();
        table = page->findChild<QTableView*>(QStringLiteral("changes"));
        compare(before, after);
    }

    void compare(model::JobId first, model::JobId second)
    {
        QSignalSpy ready(page.get(), &ComparePage::ready);
        page->compare(first, second);
        ASSERT_TRUE(QTest::qWaitFor([&] { return ready.count() > 0; }, 60000));
    }

    [[nodiscard]] const analysis::ComparedPoint* pointNumbered(int number) const
    {
        for (const analysis::ComparedPoint& point : page->changes().comparison().points)
            if ((point.after && point.after->number == number) ||
                (!point.after && point.before && point.before->number == number))
                return &point;
        return nullptr;
    }

    static std::unique_ptr<QTemporaryDir> s_folder;
    JobSession session;
    std::unique_ptr<ComparePage> page;
    QTableView* table = nullptr;
    model::JobId before;
    model::JobId after;
};

std::unique_ptr<QTemporaryDir> ComparePageTest::s_folder;

} // namespace

// Property: the leak that grew in the invented year is the first row, by the decades the scenario put in.
TEST_F(ComparePageTest, PutsTheLargestChangeFirst)
{
    const analysis::ComparedPoint* first = page->changes().at(0);
    ASSERT_NE(first, nullptr);
    ASSERT_TRUE(first->after);
    EXPECT_EQ(first->after->number, 17);
    EXPECT_EQ(first->change, analysis::Change::Grown);
    EXPECT_GT(first->decades.value_or(0.0), 3.0);
    for (int row = 1; row < page->changes().rowCount(); ++row) {
        const auto* above = page->changes().at(row - 1);
        const auto* here = page->changes().at(row);
        if (!above->decades || !here->decades)
            continue;
        EXPECT_GE(std::abs(*above->decades), std::abs(*here->decades)) << row;
    }
}

// Property: a rate goes with its range on both sides, also for a screen reader; a bound has none.
TEST_F(ComparePageTest, ARateGoesWithItsRange)
{
    const ChangesModel& changes = page->changes();
    int ranges = 0;
    for (int row = 0; row < changes.rowCount(); ++row)
        for (const int column : {ChangesModel::Then, ChangesModel::Now}) {
            const analysis::ComparedPoint* point = changes.at(row);
            const auto& side = column == ChangesModel::Then ? point->before : point->after;
            const QModelIndex cell = changes.index(row, column);
            const QString range = cell.data(RateDelegate::RangeRole).toString();
            EXPECT_EQ(!range.isEmpty(), side && side->rate && side->low && side->high) << row;
            const bool isSpoken =
                cell.data(Qt::AccessibleTextRole).toString().contains(QLatin1String("95 %"));
            EXPECT_EQ(isSpoken, !range.isEmpty()) << row;
            ranges += range.isEmpty() ? 0 : 1;
        }
    EXPECT_GT(ranges, 0);
}

// Property: swapping the sides turns every change round.
TEST_F(ComparePageTest, TurnsEveryChangeRoundWhenSidesAreSwapped)
{
    const analysis::ComparedPoint forth = *pointNumbered(17);
    QSignalSpy ready(page.get(), &ComparePage::ready);
    QTest::keyClick(table, Qt::Key_Right);
    ASSERT_TRUE(QTest::qWaitFor([&] { return ready.count() > 0; }, 60000));
    const analysis::ComparedPoint* back = pointNumbered(17);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(back->change, analysis::Change::Shrunk);
    EXPECT_NEAR(back->decades.value_or(0.0), -forth.decades.value_or(0.0), 1e-9);
}

// Property: the course takes five rows and says when it is full.
TEST_F(ComparePageTest, FollowsAtMostFivePoints)
{
    QSignalSpy said(page.get(), &ComparePage::said);
    ASSERT_GE(page->changes().rowCount(), 6);
    for (int row = 0; row < 6; ++row) {
        table->setCurrentIndex(page->changes().index(row, 0));
        QTest::keyClick(table, Qt::Key_Space);
    }
    int followed = 0;
    for (int row = 0; row < page->changes().rowCount(); ++row)
        followed += page->changes().index(row, 0).data(Qt::CheckStateRole).toInt() == Qt::Checked ? 1 : 0;
    EXPECT_EQ(followed, 5);
    EXPECT_EQ(said.count(), 1);
    QTest::keyClick(table, Qt::Key_Escape);
}

// Property: found and left are two answers; the word in the rows is never empty.
TEST_F(ComparePageTest, SwitchesBetweenAsFoundAndAsLeft)
{
    const QAbstractItemModelTester tester(const_cast<ChangesModel*>(&page->changes()),
                                          QAbstractItemModelTester::FailureReportingMode::Warning);
    const int found = page->changes().comparison().count(analysis::Change::Grown);
    QTest::keyClick(table, Qt::Key_F);
    for (int row = 0; row < page->changes().rowCount(); ++row)
        EXPECT_FALSE(page->changes().index(row, ChangesModel::Word).data().toString().isEmpty());
    QTest::keyClick(table, Qt::Key_F);
    EXPECT_EQ(page->changes().comparison().count(analysis::Change::Grown), found);
    QSignalSpy left(page.get(), &ComparePage::left);
    QTest::keyClick(table, Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

// Property: while B is held the right map shows the earlier job at the very place and scale of the later one;
// released, it is as before. Key repeat changes nothing.
TEST_F(ComparePageTest, BlinksInPlaceWhileTheKeyIsHeld)
{
    QTest::qWait(20); // both maps are brought to one scale
    const auto sides = page->findChildren<MapSide*>();
    ASSERT_EQ(sides.size(), 2);
    render::SheetView& left = sides[0]->view();
    render::SheetView& right = sides[1]->view();
    const auto own = right.content()->stretches;
    const double scale = right.pixelsPerMillimetre();
    EXPECT_DOUBLE_EQ(scale, left.pixelsPerMillimetre());
    const QPointF corner = right.toView({0.0, 0.0});
    const auto rates = [](const render::SheetView& view) {
        std::vector<double> all;
        for (const report::MapStretch& stretch : view.content()->stretches)
            all.push_back(stretch.rate ? stretch.rate->si() : -1.0);
        return all;
    };
    const auto later = rates(right);
    ASSERT_NE(later, rates(left));
    QTest::keyPress(table, Qt::Key_B);
    EXPECT_EQ(rates(right), rates(left));
    EXPECT_EQ(right.pixelsPerMillimetre(), scale);
    EXPECT_EQ(right.toView({0.0, 0.0}), corner);
    QKeyEvent again(QEvent::KeyPress, Qt::Key_B, Qt::NoModifier, QString(), true);
    QApplication::sendEvent(table, &again);
    EXPECT_EQ(rates(right), rates(left));
    QTest::keyRelease(table, Qt::Key_B);
    QTest::qWait(20);
    EXPECT_EQ(rates(right), later);
    EXPECT_EQ(right.pixelsPerMillimetre(), scale);
    EXPECT_EQ(right.toView({0.0, 0.0}), corner);
}

// Property: laid over, one map carries the other as narrow lines, stretch by stretch; the key goes back.
TEST_F(ComparePageTest, LaysOneMapOverTheOther)
{
    const auto sides = page->findChildren<MapSide*>();
    ASSERT_EQ(sides.size(), 2);
    const std::size_t earlier = sides[0]->view().content()->stretches.size();
    EXPECT_EQ(sides[1]->view().core(), nullptr);
    QTest::keyClick(table, Qt::Key_O);
    EXPECT_TRUE(sides[0]->isHidden());
    ASSERT_NE(sides[1]->view().core(), nullptr);
    EXPECT_EQ(sides[1]->view().core()->stretches.size(), earlier);
    EXPECT_EQ(sides[1]->view().core()->sheet, sides[1]->view().content()->sheet);
    QTest::keyClick(table, Qt::Key_2); // the next sheet, still laid over
    EXPECT_TRUE(sides[0]->isHidden());
    EXPECT_NE(sides[1]->view().core(), nullptr);
    QTest::keyClick(table, Qt::Key_O);
    EXPECT_FALSE(sides[0]->isHidden());
    EXPECT_EQ(sides[1]->view().core(), nullptr);
}

// Regression: switching between as found and as left lost the row, and with it the course.
TEST_F(ComparePageTest, KeepsTheRowThatIsLookedAt)
{
    for (int row = 0; row < page->changes().rowCount(); ++row)
        if (page->changes().at(row)->after && page->changes().at(row)->after->number == 39)
            table->setCurrentIndex(page->changes().index(row, 0));
    QTest::keyClick(table, Qt::Key_F);
    const analysis::ComparedPoint* kept = page->changes().at(table->currentIndex().row());
    ASSERT_NE(kept, nullptr);
    ASSERT_TRUE(kept->after);
    EXPECT_EQ(kept->after->number, 39);
}

// Property: a job that repaired something stands twice on the course, as found and as left; its name once.
TEST_F(ComparePageTest, TheCourseTellsWhatRepairsDid)
{
    const auto worked = workOutComparison(file(), before, after);
    ASSERT_TRUE(worked.has_value());
    const auto course = report::courseStops(yearsOf(*worked).jobs);
    ASSERT_EQ(course.size(), 3U) << "job 118 as found and as left, job 164";
    EXPECT_EQ(course[0].number, course[1].number);
    EXPECT_LE(course[0].at, course[1].at);
    const model::PointId point = (*worked)->before.job.sketch.pointNumbered(40)->id;
    const report::Figure figure =
        report::courseFigure(course, {{point, "40"}}, {}, (*worked)->object.scale, report::ShownUnit());
    EXPECT_EQ(figure.moments.size(), 2U);
    ASSERT_EQ(figure.series.size(), 1U);
    ASSERT_EQ(figure.series[0].y.size(), 3U);
    EXPECT_GT(figure.series[0].y[0], 100.0 * figure.series[0].y[1]) << "port B was repaired in job 118";
}

// Property: the two jobs compared are shown before the object's other jobs are worked out; these come after,
// and a course that is asked to stop is what it has.
TEST_F(ComparePageTest, TheCourseGrowsByTheObjectsOtherJobs)
{
    auto store = storage::HistoryStore::open(file(), storage::HistoryStore::Mode::ReadWrite);
    ASSERT_TRUE(store.has_value());
    auto record = store->job(before);
    ASSERT_TRUE(record.has_value());
    const Timestamp earlier{record->opened.utcMilliseconds - 1000, 0};
    ASSERT_TRUE(store->createJob(record->object, "an earlier one", earlier).has_value());
    const auto worked = workOutComparison(file(), before, after);
    ASSERT_TRUE(worked.has_value());
    const auto whole = workOutYears(file(), *worked);
    ASSERT_TRUE(whole.has_value());
    ASSERT_EQ(whole->jobs.size(), 3U);
    EXPECT_EQ(whole->jobs.front()->job.opened, earlier) << "oldest first";
    EXPECT_EQ(whole->totals.size(), 4U) << "job 118 as found and as left, and two as found";
    std::stop_source stop;
    stop.request_stop();
    const auto stopped = workOutYears(file(), *worked, {}, stop.get_token());
    ASSERT_TRUE(stopped.has_value());
    EXPECT_EQ(stopped->jobs.size(), 2U);

    QSignalSpy grown(page.get(), &ComparePage::courseReady);
    page->compare(before, after);
    EXPECT_TRUE(QTest::qWaitFor([&] { return grown.count() == 1; }, 20'000));
}

// Regression: both maps stood under the later job's limit, and nobody said that the earlier one had another.
TEST_F(ComparePageTest, SaysThatEachJobHasItsOwnLimit)
{
    auto* words = page->findChild<QLabel*>(QStringLiteral("limits"));
    ASSERT_NE(words, nullptr);
    EXPECT_TRUE(words->isHidden()) << "the invented jobs have the same limit";

    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("copy.sealwalk"));
    ASSERT_TRUE(QFile::copy(QString::fromStdString(file()), copy));
    page.reset();
    ASSERT_TRUE(session.openHistory(copy.toStdString(), false));
    ASSERT_TRUE(session.openJob(after));
    model::Setup setup = session.job().setup;
    setup.pointLimit = millibarLitresPerSecond(5e-6);
    ASSERT_TRUE(session.changeSetup(setup));
    page = std::make_unique<ComparePage>(session);
    page->resize(1366, 644);
    page->show();
    compare(before, after);
    words = page->findChild<QLabel*>(QStringLiteral("limits"));
    EXPECT_TRUE(words->isVisible());
    EXPECT_TRUE(words->text().contains(QStringLiteral("job 118 by 1.0e\u22126")))
        << words->text().toStdString();
    EXPECT_TRUE(words->text().contains(QStringLiteral("job 164 by 5.0e\u22126")))
        << words->text().toStdString();
    EXPECT_TRUE(words->text().contains(QStringLiteral("on the course is that of job 164")));
    compare(after, before);
    words = page->findChild<QLabel*>(QStringLiteral("limits"));
    EXPECT_TRUE(words->text().contains(QStringLiteral("on the course is that of job 118")));
}

// Regression: the boxes of the table took the keyboard only.
TEST_F(ComparePageTest, AClickIntoTheBoxFollowsThePoint)
{
    const QRect cell = table->visualRect(table->model()->index(1, ChangesModel::Point));
    const auto isFollowed = [&] {
        return table->model()->index(1, ChangesModel::Point).data(Qt::CheckStateRole) == Qt::Checked;
    };
    ASSERT_FALSE(isFollowed());
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, {cell.left() + 10, cell.center().y()});
    EXPECT_TRUE(isFollowed());
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, {cell.left() + 60, cell.center().y()});
    EXPECT_TRUE(isFollowed()) << "beside the box a click chooses the row alone";
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, {cell.left() + 10, cell.center().y()});
    EXPECT_FALSE(isFollowed());
}

// Regression: "new" counts leaks; that a point was drawn or retired since was to be found in single rows only.
TEST(CompareAlone, NamesThePointsThatOneJobHas)
{
    const model::Job before = tests::ringJob(4);
    model::Job after = before;
    analysis::Comparison comparison;
    const auto compared = [&] {
        comparison.points.clear();
        for (const analysis::PointMatch& match : analysis::matchPoints(before.sketch, after.sketch))
            comparison.points.emplace_back().match = match;
        return aloneWords(comparison, before, after);
    };
    EXPECT_EQ(compared(), QString());
    after.number = before.number + 1;
    after.sketch.points[1].retired = true;
    EXPECT_EQ(compared(), QStringLiteral("Points only in job %1: 2.").arg(before.number));
    model::TestPoint added = after.sketch.points.front();
    for (int i = 0; i < 9; ++i) {
        added.id = model::PointId::create();
        added.number = 11 + i;
        after.sketch.points.push_back(added);
    }
    EXPECT_TRUE(compared().endsWith(QStringLiteral(" Points only in job %1: 9 of them.").arg(after.number)))
        << compared().toStdString();
}

// Property: keys turn the table to joints and totals, and the course follows what is chosen there.
TEST_F(ComparePageTest, ShowsTheWorstJointsAndTheTotals)
{
    QSignalSpy grown(page.get(), &ComparePage::courseReady);
    page->compare(before, after);
    ASSERT_TRUE(QTest::qWaitFor([&] { return grown.count() == 1; }, 60'000));
    const auto* plot = page->findChild<render::PlotView*>();
    QTest::keyClick(table, Qt::Key_J);
    auto* joints = page->findChild<QTableView*>(QStringLiteral("joints"));
    ASSERT_TRUE(joints->isVisible());
    EXPECT_EQ(joints->model()->index(0, 0).data().toString(), QStringLiteral("Port B"))
        << "over the limit in both years";
    EXPECT_EQ(joints->model()->index(0, JointsModel::Over).data().toString(), QStringLiteral("2 of 2"));
    EXPECT_TRUE(joints->model()
                    ->index(0, JointsModel::Touched)
                    .data()
                    .toString()
                    .startsWith(QStringLiteral("2025-03-12, replace seal")));
    ASSERT_EQ(plot->figure().series.size(), 2U) << "worst point and sum";
    EXPECT_EQ(plot->figure().series[0].x.size(), 3U) << "found, left, found";
    QTest::keyClick(joints, Qt::Key_T);
    auto* totals = page->findChild<QTableView*>(QStringLiteral("totals"));
    ASSERT_TRUE(totals->isVisible());
    EXPECT_GE(totals->model()->rowCount(), 3);
    int row = 0; // other tests have put jobs before it
    while (totals->model()->index(row, TotalsModel::Job).data().toString() != QStringLiteral("118"))
        ASSERT_LT(++row, totals->model()->rowCount());
    const QString sum = totals->model()->index(row, TotalsModel::Sum).data().toString();
    EXPECT_TRUE(sum.startsWith(QStringLiteral("at least"))) << "a point could not be reached";
    EXPECT_EQ(plot->figure().series.size(), 2U) << "sum and pressure rise";
    QTest::keyClick(totals, Qt::Key_C);
    EXPECT_TRUE(table->isVisible());
}

// Property: a third job stands as a map, as a column and on the course; without room for its map it is said.
TEST_F(ComparePageTest, ComparesThreeJobs)
{
    auto store = storage::HistoryStore::open(file(), storage::HistoryStore::Mode::ReadWrite);
    ASSERT_TRUE(store.has_value());
    const auto record = store->job(before);
    ASSERT_TRUE(record.has_value());
    const auto third = store->createJob(record->object, "between",
                                        Timestamp{record->opened.utcMilliseconds + 86'400'000LL * 90, 0});
    ASSERT_TRUE(third.has_value());
    QSignalSpy grown(page.get(), &ComparePage::courseReady);
    page->compare(before, after, {third->id});
    ASSERT_TRUE(QTest::qWaitFor([&] { return grown.count() == 1; }, 60'000));
    const ChangesModel& changes = page->changes();
    ASSERT_EQ(changes.columnCount(), ChangesModel::ColumnCount + 1);
    EXPECT_EQ(changes.headerData(ChangesModel::ColumnCount, Qt::Horizontal, Qt::DisplayRole).toString(),
              QStringLiteral("Job %1").arg(third->number));
    EXPECT_FALSE(changes.index(0, ChangesModel::ColumnCount).data(Qt::DisplayRole).toString().isEmpty());
    const auto shown = [&] {
        int maps = 0;
        for (const MapSide* side : page->findChildren<MapSide*>())
            maps += side->isVisible() ? 1 : 0;
        return maps;
    };
    EXPECT_EQ(shown(), 3);
    QTest::keyClick(table, Qt::Key_O); // laid over: two only
    EXPECT_TRUE(
        page->findChild<QLabel*>(QStringLiteral("limits"))->text().contains(QString::number(third->number)));
    QTest::keyClick(table, Qt::Key_O);
    compare(before, after);
    EXPECT_EQ(changes.columnCount(), static_cast<int>(ChangesModel::ColumnCount));
    EXPECT_EQ(shown(), 2);
}

} // namespace sealwalk::ui
