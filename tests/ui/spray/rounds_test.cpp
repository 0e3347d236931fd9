// SPDX-License-Identifier: GPL-3.0-or-later
// From a round that a repair interrupted back to it, by keys.
#include "tests/support/german.h"
#include "tests/ui/spray/spray_page_fixture.h"

#include <QLabel>
#include <QStringList>

namespace sealwalk::ui {
namespace {

class SeveralRounds : public SprayPageTest
{
protected:
    void SetUp() override
    {
        SprayPageTest::SetUp();
        press(Qt::Key_N); // 1
        press(Qt::Key_N); // 2
        first = history.session.currentRound()->id;
        ASSERT_TRUE(history.session.openRound(model::RoundKind::AfterRepair, "clamp",
                                              {history.session.job().sketch.pointNumbered(1)->id}));
        EXPECT_EQ(called(), 1);
    }

    model::RoundId first;
};

// Regression: after the round that proves a repair nothing led back to the round it had interrupted.
TEST_F(SeveralRounds, EnterGoesOnWithTheRoundThatWasInterrupted)
{
    press(Qt::Key_N); // 1 again: this round is done
    ASSERT_TRUE(controller().isFinished());
    ASSERT_TRUE(controller().leftOpen().has_value());
    EXPECT_EQ(controller().leftOpen()->left, 4);
    press(Qt::Key_Return);
    EXPECT_EQ(history.session.currentRound()->id, first);
    EXPECT_EQ(called(), 3);
    for (int point = 3; point <= 6; ++point)
        press(Qt::Key_N);
    EXPECT_TRUE(controller().isFinished());
    EXPECT_FALSE(controller().leftOpen().has_value());
}

// Regression: two repairs opened two rounds, and nothing said in the one that the other still waited.
TEST_F(SeveralRounds, TheOtherRoundsThatWaitAreSaid)
{
    const auto* waiting = page->findChild<QLabel*>(QStringLiteral("roundsWaiting"));
    EXPECT_EQ(waiting->text(), QStringLiteral("Also waits: round 1 (4 call(s))"));
    EXPECT_FALSE(waiting->isHidden());
    history.session.setCurrentRound(first);
    EXPECT_EQ(waiting->text(), QStringLiteral("Also waits: round 2 (1 call(s))"));
    press(Qt::Key_J);
    enterValue(QStringLiteral("1"));
    history.session.setCurrentRound(history.session.job().rounds.back().id);
    press(Qt::Key_N);
    history.session.setCurrentRound(first);
    EXPECT_TRUE(waiting->isHidden()) << "nothing waits besides this one";
}

// Regression: a jump to a point that this round does not call did nothing, without a word.
TEST_F(SeveralRounds, AJumpFindsThePointInTheRoundThatCallsIt)
{
    press(Qt::Key_J);
    enterValue(QStringLiteral("5"));
    EXPECT_EQ(history.session.currentRound()->id, first);
    EXPECT_EQ(called(), 5);
}

// Regression: in German a reading that is none was refused in English.
class GermanSpray : public SprayPageTest
{
protected:
    tests::InGerman german; ///< before the page, which is made in SetUp()
};

TEST_F(GermanSpray, ABadReadingIsRefusedInGerman)
{
    QStringList heard;
    QObject::connect(&controller(), &SprayController::said, page.get(),
                     [&](auto, const QString& sentence) { heard << sentence; });
    const std::size_t before = stored();
    enterValue(QStringLiteral("3,2e"));
    EXPECT_EQ(stored(), before);
    EXPECT_EQ(heard, QStringList(QStringLiteral("Der Exponent fehlt, wie in 3,2e-7.")));
}

} // namespace
} // namespace sealwalk::ui
