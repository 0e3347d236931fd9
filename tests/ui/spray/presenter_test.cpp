// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/spray/distance_view.h"
#include "ui/spray/presenter_dialog.h"

#include <QPushButton>

namespace sealwalk::ui {
namespace {

PresenterKeys usualKeys()
{
    PresenterKeys keys;
    keys.of(PresenterButton::Next) = QKeySequence(Qt::Key_PageDown);
    keys.of(PresenterButton::Back) = QKeySequence(Qt::Key_PageUp);
    keys.of(PresenterButton::Black) = QKeySequence(Qt::Key_Period);
    keys.of(PresenterButton::Start) = QKeySequence(Qt::Key_F5);
    return keys;
}

class PresenterRound : public SprayPageTest
{
protected:
    void SetUp() override
    {
        SprayPageTest::SetUp();
        page->setPresenterKeys(usualKeys());
    }
};

// Property: the four buttons do in each state what the design says.
TEST_F(PresenterRound, DrivesTheCall)
{
    press(Qt::Key_PageDown);
    EXPECT_EQ(controller().machine().state(), CallState::Spray);
    press(Qt::Key_PageUp);
    EXPECT_TRUE(controller().machine().delay().has_value());
    press(Qt::Key_PageDown);
    EXPECT_EQ(controller().machine().state(), CallState::Read);
    press(Qt::Key_PageDown); // no feed, no value
    EXPECT_EQ(stored(), 0u);
    press(Qt::Key_PageUp);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_EQ(controller().machine().state(), CallState::Wait);
    press(Qt::Key_PageDown);
    EXPECT_EQ(controller().machine().state(), CallState::Wait);
    press(Qt::Key_PageDown);
    EXPECT_EQ(controller().machine().state(), CallState::Go);
    press(Qt::Key_Period);
    EXPECT_TRUE(history.session.job().voids.empty());
    press(Qt::Key_Period);
    EXPECT_EQ(history.session.job().voids.size(), 1u);
    auto* distance = page->findChild<DistanceView*>();
    press(Qt::Key_F5);
    EXPECT_TRUE(distance->isVisible());
    press(Qt::Key_F5);
    EXPECT_FALSE(distance->isVisible());
    delete page.release();
}

// Property: Back in WAIT corrects the last; a presenter's full stop is the keyboard's while a number stands.
TEST_F(PresenterRound, CorrectsTheLastAndLeavesTypingAlone)
{
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-9, 1e-20);
    press(Qt::Key_PageUp);
    EXPECT_TRUE(controller().isCorrecting());
}

// Property: each button is learned by pressing it, and a key has one meaning.
TEST(PresenterLearning, TakesTheKeyThatIsPressed)
{
    PresenterDialog dialog({});
    dialog.show();
    const auto learn = [&](int row, Qt::Key key) {
        auto* button = dialog.findChild<QPushButton*>(QStringLiteral("learn") + QString::number(row));
        button->click();
        QTest::keyClick(button, key);
    };
    learn(0, Qt::Key_PageDown);
    learn(1, Qt::Key_PageUp);
    learn(2, Qt::Key_B);
    learn(3, Qt::Key_Escape); // closes nothing while a button is learned
    EXPECT_TRUE(dialog.isVisible());
    PresenterKeys wanted = usualKeys();
    wanted.of(PresenterButton::Black) = QKeySequence(Qt::Key_B);
    wanted.of(PresenterButton::Start) = QKeySequence(Qt::Key_Escape);
    EXPECT_EQ(dialog.keys(), wanted);
    learn(3, Qt::Key_B);
    EXPECT_TRUE(dialog.keys().of(PresenterButton::Black).isEmpty());
    dialog.findChild<QPushButton*>(QStringLiteral("store"))->click();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

} // namespace
} // namespace sealwalk::ui
