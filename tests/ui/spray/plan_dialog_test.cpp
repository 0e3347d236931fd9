// SPDX-License-Identifier: GPL-3.0-or-later
// The order of the walk, proposed and changed by hand, through the real dialog.
#include "tests/support/temporary_history.h"
#include "ui/spray/plan_dialog.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

namespace sealwalk::ui {
namespace {

class PlanOfTheWalk : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(6);
        dialog = std::make_unique<PlanDialog>(history.session);
        dialog->show();
        table = dialog->findChild<QTableWidget*>(QStringLiteral("plan"));
    }
    [[nodiscard]] std::vector<int> shown() const
    {
        std::vector<int> numbers;
        for (int row = 0; row < table->rowCount(); ++row)
            numbers.push_back(table->item(row, 0)->text().toInt());
        return numbers;
    }

    tests::TemporaryHistory history;
    std::unique_ptr<PlanDialog> dialog;
    QTableWidget* table = nullptr;
};

TEST_F(PlanOfTheWalk, OpensInTheRoundsOrderWithTimeAndHelium)
{
    EXPECT_EQ(shown(), (std::vector{1, 2, 3, 4, 5, 6}));
    const QString sums = dialog->findChild<QLabel*>(QStringLiteral("planSums"))->text();
    EXPECT_TRUE(sums.contains(QStringLiteral("6 point"))) << sums.toStdString();
    EXPECT_TRUE(sums.contains(QStringLiteral("min"))) << sums.toStdString();
    EXPECT_TRUE(sums.contains(QStringLiteral("l of helium"))) << sums.toStdString();
}

TEST_F(PlanOfTheWalk, KeysMoveAPointAndTheSessionKeepsTheOrder)
{
    table->setFocus();
    table->selectRow(0);
    QTest::keyClick(table, Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(table, Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(shown(), (std::vector{2, 3, 1, 4, 5, 6}));
    dialog->findChild<QPushButton*>(QStringLiteral("planUp"))->click();
    EXPECT_EQ(shown(), (std::vector{2, 1, 3, 4, 5, 6}));
    EXPECT_FALSE(table->item(1, 4)->text().isEmpty()) << "1 is above 2: the plan says what that costs";
    ASSERT_TRUE(history.session.orderRound(dialog->order()));
    const model::Job& job = history.session.job();
    EXPECT_EQ(job.rounds.front().points[0], job.sketch.pointNumbered(2)->id);
    EXPECT_EQ(job.rounds.front().points.size(), 6U);
}

// From the top of the ring down: 1 stands at 12 o'clock, 4 at 6 o'clock.
TEST_F(PlanOfTheWalk, ProposesFromTheTopDown)
{
    dialog->findChild<QPushButton*>(QStringLiteral("planPropose"))->click();
    ASSERT_EQ(shown().size(), 6U);
    EXPECT_EQ(shown().front(), 1);
    EXPECT_EQ(shown().back(), 4);
}

} // namespace
} // namespace sealwalk::ui
