// SPDX-License-Identifier: GPL-3.0-or-later
// What the stage strip says of a job.
#include "tests/support/temporary_history.h"
#include "ui/shell/stage_progress.h"

#include <gtest/gtest.h>

namespace sealwalk::ui {
namespace {

class StageProgressTest : public ::testing::Test
{
protected:
    StageProgressTest() { history.startJob(6); }

    void answer(int number)
    {
        ReadingDraft draft;
        draft.point = history.session.job().sketch.pointNumbered(number)->id;
        draft.background = millibarLitresPerSecond(1e-10);
        draft.outcome = model::Outcome::NoResponse;
        ASSERT_TRUE(history.session.store(draft).has_value());
    }

    tests::TemporaryHistory history;
};

// Regression: the round after a repair, short and done, said "2 of 2 points" of a job with most points not
// sprayed.
TEST_F(StageProgressTest, AShortRoundThatIsDoneIsNotTheWholeJob)
{
    answer(1);
    const StageProgress first = progressOf(Stage::Spray, history.session);
    EXPECT_EQ(first.text, QStringLiteral("1 of 6 points"));
    ASSERT_TRUE(history.session.openRound(model::RoundKind::AfterRepair, "clamp",
                                          {history.session.job().sketch.pointNumbered(1)->id}));
    EXPECT_EQ(progressOf(Stage::Spray, history.session).text, QStringLiteral("round 2: 0 of 1"));
    answer(1);
    const StageProgress after = progressOf(Stage::Spray, history.session);
    EXPECT_EQ(after.text, QStringLiteral("1 of 6 points"));
    EXPECT_EQ(after.thread, StageProgress::Thread::UnderWay);
}

} // namespace
} // namespace sealwalk::ui
