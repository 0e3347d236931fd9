// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/joints.h"
#include "core/storage/history_store.h"
#include "tests/support/temporary_history.h"
#include "ui/session/job_session.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace sealwalk::ui {
namespace {

using tests::TemporaryHistory;

model::PointId pointNumbered(const JobSession& session, int number)
{
    return session.job().sketch.pointNumbered(number)->id;
}

ReadingDraft valueAt(const JobSession& session, int point, double peak)
{
    ReadingDraft draft;
    draft.point = pointNumbered(session, point);
    draft.peak = millibarLitresPerSecond(peak);
    draft.background = millibarLitresPerSecond(1e-10);
    draft.dwell = seconds(6);
    return draft;
}

/// What another program would read from the file now.
model::Job onDisk(const TemporaryHistory& history)
{
    auto store = storage::HistoryStore::open(history.file(), storage::HistoryStore::Mode::ReadOnly);
    EXPECT_TRUE(store.has_value());
    return store->job(history.session.job().id).value();
}

TEST(JobSession, KeepsOnDiskWhatItShows)
{
    TemporaryHistory history;
    history.startJob(4);
    ASSERT_TRUE(history.session.store(valueAt(history.session, 1, 3e-9)).has_value());
    model::Setup setup = history.session.job().setup;
    setup.purpose = "after the move";
    ASSERT_TRUE(history.session.changeSetup(setup).has_value());
    EXPECT_EQ(onDisk(history), history.session.job());
}

TEST(JobSession, UndoAndRedoReachTheDisk)
{
    TemporaryHistory history;
    history.startJob(4);
    const model::Sketch before = history.session.job().sketch;
    const model::JointId joint = before.joints.front().id;
    const auto edit = editing::move(before, std::array{joint}, {10.0, 0.0});
    ASSERT_TRUE(edit.has_value());
    ASSERT_TRUE(history.session.edit(*edit).has_value());
    const model::Sketch after = history.session.job().sketch;
    ASSERT_TRUE(history.session.undo().has_value());
    EXPECT_EQ(onDisk(history).sketch.joints, before.joints);
    ASSERT_TRUE(history.session.redo().has_value());
    EXPECT_EQ(onDisk(history).sketch.joints, after.joints);
    EXPECT_FALSE(history.session.redo().has_value());
}

TEST(JobSession, ACorrectionKeepsTheOldReading)
{
    TemporaryHistory history;
    history.startJob(2);
    const auto wrong = history.session.store(valueAt(history.session, 1, 3e-5));
    ReadingDraft right = valueAt(history.session, 1, 3e-8);
    right.corrects = wrong->id;
    right.reason = "typing slip";
    ASSERT_TRUE(history.session.store(right).has_value());
    const model::Job job = onDisk(history);
    EXPECT_EQ(job.readings.size(), 2u);
    ASSERT_EQ(job.standing(job.rounds.front().id).size(), 1u);
    EXPECT_EQ(job.standing(job.rounds.front().id).front()->peak, right.peak);
}

TEST(JobSession, WorksFindingsOutBehindTheWindow)
{
    TemporaryHistory history;
    history.startJob(3);
    history.calibrate();
    ASSERT_TRUE(history.session.store(valueAt(history.session, 2, 5e-7)).has_value());
    const auto worked = [&] {
        const auto* finding = history.session.finding(pointNumbered(history.session, 2));
        return finding != nullptr && finding->rate.has_value();
    };
    EXPECT_TRUE(QTest::qWaitFor(worked));
    ASSERT_EQ(history.session.findings().size(), 3u);
    const auto* finding = history.session.finding(pointNumbered(history.session, 2));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->verdict, analysis::Verdict::Over);
}

TEST(JobSession, SeesWhatAnotherWindowStored)
{
    TemporaryHistory first;
    first.startJob(3);
    JobSession second;
    ASSERT_TRUE(second.openHistory(first.file(), false).has_value());
    ASSERT_TRUE(second.openJob(first.session.job().id).has_value());
    ASSERT_TRUE(second.store(valueAt(second, 1, 2e-9)).has_value());
    ASSERT_TRUE(first.session.store(valueAt(first.session, 2, 4e-9)).has_value());
    EXPECT_TRUE(QTest::qWaitFor([&] { return first.session.job().readings.size() == 2; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return second.job().readings.size() == 2; }));
}

TEST(JobSession, RefusesToDrawOverAnotherWindowsDrawing)
{
    TemporaryHistory first;
    first.startJob(3);
    JobSession second;
    ASSERT_TRUE(second.openHistory(first.file(), false).has_value());
    ASSERT_TRUE(second.openJob(first.session.job().id).has_value());
    const auto edit = [](const JobSession& session, double by) {
        return *editing::move(session.job().sketch, std::array{session.job().sketch.joints.front().id},
                              {by, 0.0});
    };
    ASSERT_TRUE(first.session.edit(edit(first.session, 10)).has_value());
    const Status refused = second.edit(edit(second, 20));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Conflict);
    EXPECT_FALSE(second.edits().canUndo());
}

TEST(JobSession, SendsTheStateRoundTheReview)
{
    TemporaryHistory history;
    history.startJob(1);
    ASSERT_TRUE(history.session.submit("please look").has_value());
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    ASSERT_TRUE(history.session.sendBack("S. Visor", "check afterwards is missing").has_value());
    EXPECT_EQ(history.session.job().state, model::JobState::Returned);
    EXPECT_EQ(history.session.job().review.size(), 2u);
}

TEST(JobSession, SaysWhatIsMissingWithoutAJobOrRound)
{
    JobSession session;
    EXPECT_FALSE(session.changeSetup({}).has_value());
    TemporaryHistory history;
    EXPECT_EQ(history.session.store({}).error().code, ErrorCode::NotAllowed);
}

} // namespace
} // namespace sealwalk::ui
