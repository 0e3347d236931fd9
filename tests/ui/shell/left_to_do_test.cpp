// SPDX-License-Identifier: GPL-3.0-or-later
// What the start and the next job say of temporary repairs and concessions that earlier jobs left.
#include "core/storage/history_store.h"
#include "tests/support/temporary_history.h"
#include "ui/shell/temporary_repairs.h"

#include <gtest/gtest.h>

#include <QDate>
#include <QTest>

namespace sealwalk::ui {
namespace {

model::Concession concessionUntil(const model::Job& job, const QDate& day)
{
    model::Concession concession;
    concession.points = {job.sketch.points.front().id};
    concession.grantedBy = "Cleo";
    concession.reason = "spare part ordered";
    concession.until = Timestamp::parseDate(day.toString(Qt::ISODate).toStdString()).value();
    return concession;
}

// Regression: the line of the start named the job only, neither the point nor who has to make it good.
TEST(LeftToDo, AnOverdueRepairNamesItsPointAndItsOwner)
{
    tests::TemporaryHistory history;
    history.startJob(3);
    history.startNextJobOverATemporaryRepair();
    EXPECT_EQ(overdueRepairsNote(history.session),
              QStringLiteral("Overdue temporary repairs: Vessel, point 1, Port: filler, was due 2026-01-31, "
                             "Cleo (job 1)."));
}

// Regression: a concession ran out unseen: neither the start nor the object's next job told of it.
TEST(LeftToDo, AConcessionAtItsEndMeetsTheStartAndTheNextJob)
{
    tests::TemporaryHistory history;
    history.startJob(3);
    const QDate today = QDate::currentDate();
    ASSERT_TRUE(history.session.concede(concessionUntil(history.session.job(), today.addDays(-3))));
    EXPECT_EQ(endingConcessionsNote(history.session), QString()) << "the open job says so on its map";
    QTest::qWait(5); // the next job is opened after it
    ASSERT_TRUE(history.session.createJob(history.session.object().id, "again").has_value());
    const QString ranOut = today.addDays(-3).toString(Qt::ISODate);
    EXPECT_EQ(
        endingConcessionsNote(history.session),
        QStringLiteral("Concessions at their end: point 1, Port: ran out on %1, granted by Cleo (job 1).")
            .arg(ranOut));
    history.session.closeJob();
    EXPECT_TRUE(endingConcessionsNote(history.session).contains(QStringLiteral("Vessel, point 1, Port")));
}

// Property: within a month of its end it is named, before that it is not.
TEST(LeftToDo, AConcessionIsNamedAMonthBeforeItsEnd)
{
    for (const int days : {10, 60}) {
        tests::TemporaryHistory history;
        history.startJob(3);
        const QDate day = QDate::currentDate().addDays(days);
        ASSERT_TRUE(history.session.concede(concessionUntil(history.session.job(), day)));
        history.session.closeJob();
        EXPECT_EQ(endingConcessionsNote(history.session)
                      .contains(QStringLiteral("until ") + day.toString(Qt::ISODate)),
                  days == 10);
    }
}

} // namespace
} // namespace sealwalk::ui
