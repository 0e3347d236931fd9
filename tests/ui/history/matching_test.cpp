// SPDX-License-Identifier: GPL-3.0-or-later
// A joint drawn anew between two years: the proposal by place is confirmed or turned down once, and stays so.
#include "core/storage/history_store.h"
#include "tests/support/job_file_at_once.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_page.h"
#include "ui/session/job_session.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

namespace sealwalk::ui {
namespace {

class Matching : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(session.openHistory(folder.filePath(QStringLiteral("a.sealwalk")).toStdString(), true));
        const std::filesystem::path data = std::filesystem::path(SEALWALK_TEST_DATA) / "scenarios";
        const auto first = tests::takeJobFile(session, data / "drying_oven_last_year.sealjob");
        const auto second = tests::takeJobFile(session, data / "drying_oven.sealjob");
        ASSERT_TRUE(first && second);
        before = first->job;
        after = second->job;
        compare(before, after);
    }

    void compare(model::JobId first, model::JobId second)
    {
        page = std::make_unique<ComparePage>(session);
        page->resize(1366, 644);
        page->show();
        table = page->findChild<QTableView*>(QStringLiteral("changes"));
        for (QToolButton* chip : page->findChildren<QToolButton*>(QStringLiteral("kind")))
            chip->setChecked(true); // the same ones are rows too
        QSignalSpy ready(page.get(), &ComparePage::ready);
        page->compare(first, second);
        ASSERT_TRUE(QTest::qWaitFor([&] { return ready.count() > 0; }, 60000));
    }

    [[nodiscard]] int matched(analysis::MatchedBy by) const
    {
        return page->changes().comparison().matched(by);
    }

    void press(Qt::Key key) const
    {
        for (int row = 0; row < page->changes().rowCount(); ++row)
            if (page->changes().at(row)->match.isProposal())
                table->setCurrentIndex(page->changes().index(row, 0));
        QTest::keyClick(table, key);
    }

    QTemporaryDir folder;
    JobSession session;
    std::unique_ptr<ComparePage> page;
    QTableView* table = nullptr;
    model::JobId before;
    model::JobId after;
};

TEST_F(Matching, YConfirmsOnceAndForAllSides)
{
    ASSERT_EQ(matched(analysis::MatchedBy::Place), 1);
    press(Qt::Key_Y);
    EXPECT_EQ(matched(analysis::MatchedBy::Place), 0);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 1);
    compare(before, after);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 1);
    compare(after, before);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 1);
}

TEST_F(Matching, NTurnsTheProposalDownAndIsKept)
{
    const auto rows = page->changes().comparison().points.size();
    press(Qt::Key_N);
    EXPECT_EQ(matched(analysis::MatchedBy::Place), 0);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 0);
    EXPECT_EQ(page->changes().comparison().points.size(), rows + 1) << "two places, a row each";
    compare(after, before);
    EXPECT_EQ(matched(analysis::MatchedBy::Place), 0);
}

// Regression: two places too far from one another to be proposed could not be made one by anybody.
TEST_F(Matching, TwoMarkedPlacesAreMadeOne)
{
    press(Qt::Key_N); // so that nothing is proposed any more
    ASSERT_EQ(matched(analysis::MatchedBy::Place), 0);
    QSignalSpy said(page.get(), &ComparePage::said);
    const auto go = [&](bool then) {
        for (int row = 0; row < page->changes().rowCount(); ++row) {
            const analysis::PointMatch& match = page->changes().at(row)->match;
            if (match.by == analysis::MatchedBy::Nothing && match.before.has_value() == then)
                table->setCurrentIndex(page->changes().index(row, 0));
        }
    };
    go(true);
    QTest::keyClick(table, Qt::Key_Y);
    EXPECT_EQ(said.count(), 1) << "the other place is asked for";
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 0);
    QTest::keyClick(table, Qt::Key_Space);
    go(false);
    QTest::keyClick(table, Qt::Key_Y);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 1);
    compare(after, before);
    EXPECT_EQ(matched(analysis::MatchedBy::Person), 1);
}

} // namespace
} // namespace sealwalk::ui
