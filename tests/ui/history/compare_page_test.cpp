// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_page.h"
#include "ui/session/job_session.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
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

} // namespace sealwalk::ui
