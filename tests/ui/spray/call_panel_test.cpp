// SPDX-License-Identifier: GPL-3.0-or-later
// A round logged by keys alone, through the real widgets.
#include "tests/support/jobs.h"
#include "tests/support/temporary_history.h"
#include "ui/spray/call_head.h"
#include "ui/spray/call_panel.h"
#include "ui/spray/entry_field.h"
#include "ui/spray/read_back.h"
#include "ui/spray/walk_model.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QKeyEvent>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace sealwalk::ui {
namespace {

class Spray : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(6);
        controller = std::make_unique<SprayController>(history.session);
        panel = std::make_unique<CallPanel>(history.session, *controller);
        panel->show();
    }

    void type(const QString& keys) { QTest::keyClicks(&panel->field(), keys); }
    void press(Qt::Key key) { QTest::keyClick(&panel->field(), key); }
    void enterValue(const QString& keys)
    {
        type(keys);
        press(Qt::Key_Return);
    }
    [[nodiscard]] int called() const { return controller->call() ? controller->call()->number : 0; }
    [[nodiscard]] const model::Reading& last() const { return history.session.job().readings.back(); }
    [[nodiscard]] std::size_t stored() const { return history.session.job().readings.size(); }

    tests::TemporaryHistory history;
    std::unique_ptr<SprayController> controller;
    std::unique_ptr<CallPanel> panel;
};

TEST_F(Spray, TakesEveryShortFormForTheSameValue)
{
    int wanted = 1;
    for (const char* form : {"3.2e-7", "3,2e-7", "3.2-7", "3.2 7", "32-8"}) {
        EXPECT_EQ(called(), wanted++);
        enterValue(QString::fromLatin1(form));
        ASSERT_EQ(stored(), static_cast<std::size_t>(wanted - 1)) << form;
        EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-7, 1e-18) << form;
    }
    panel->field().insert(QString::fromUtf8("3.2×10^-7"));
    emit panel->field().typedChanged(panel->field().text());
    press(Qt::Key_Return);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-7, 1e-18);
    EXPECT_EQ(last().entered, "3.2×10^-7 mbar l/s");
    EXPECT_TRUE(controller->isFinished());
}

// Regression: "why does it come later?" stood open, and N stored a "no response" for the point that was to be
// put off; + stored it as over range.
TEST_F(Spray, AnOpenQuestionIsAnsweredBeforeAnythingIsStored)
{
    for (const Qt::Key question : {Qt::Key_S, Qt::Key_X, Qt::Key_A, Qt::Key_J}) {
        press(question);
        ASSERT_NE(controller->prompt(), SprayController::Prompt::None);
        type(QStringLiteral("n+"));
        EXPECT_EQ(stored(), 0u);
        EXPECT_NE(controller->prompt(), SprayController::Prompt::None) << "the question stands";
        press(Qt::Key_Escape);
    }
    type(QStringLiteral("n"));
    EXPECT_EQ(stored(), 1u) << "without a question it is the answer for the point";
}

// Regression: without a reference leak the figure being typed stood there as one on the chamber.
TEST_F(Spray, AFigureWithoutAReferenceLeakIsCalledAsShown)
{
    auto* readBack = panel->findChild<ReadBack*>();
    type(QStringLiteral("5e-8"));
    EXPECT_EQ(readBack->accessibleName(), QStringLiteral("As shown, not sized"));
    EXPECT_FALSE(readBack->accessibleDescription().contains(QLatin1String("95 %")));
    press(Qt::Key_Escape);
    history.calibrate();
    type(QStringLiteral("5e-8"));
    EXPECT_EQ(readBack->accessibleName(), QStringLiteral("On the chamber"));
    EXPECT_TRUE(readBack->accessibleDescription().contains(QLatin1String("95 % range")));
}

// Regression: the key of the first rise stood nowhere, and gave no sign of having worked.
TEST_F(Spray, TheFirstRiseHasItsKeyInViewAndSaysWhenItWas)
{
    const auto isOffered = [this] {
        const auto caps = panel->findChildren<QAbstractButton*>();
        return std::any_of(caps.begin(), caps.end(), [](const QAbstractButton* cap) {
            return cap->accessibleName().endsWith(QStringLiteral("(D)"));
        });
    };
    EXPECT_FALSE(isOffered());
    press(Qt::Key_Space);
    EXPECT_TRUE(isOffered());
    QStringList notes;
    QObject::connect(controller.get(), &SprayController::said, controller.get(),
                     [&](SprayController::Weight, const QString& text) { notes.append(text); });
    type(QStringLiteral("d"));
    ASSERT_EQ(notes.size(), 1);
    EXPECT_TRUE(notes.front().startsWith(QStringLiteral("First rise after 0.")));
}

// Regression: "every point of it has an answer" was said of a round that left points out.
TEST_F(Spray, ARoundDoneSaysHowManyWereLeftOut)
{
    auto* head = panel->findChild<CallHead*>();
    press(Qt::Key_A);
    type(QStringLiteral("1"));
    while (!controller->isFinished()) {
        const std::size_t before = stored();
        type(QStringLiteral("n"));
        ASSERT_GT(stored(), before);
    }
    EXPECT_TRUE(head->accessibleDescription().contains(QStringLiteral("1 left out")))
        << head->accessibleDescription().toStdString();
}

// Regression: a remark typed before its value was nowhere to be seen until the value was stored.
TEST_F(Spray, ARemarkIsSeenBeforeItsValue)
{
    auto* head = panel->findChild<CallHead*>();
    controller->remark(QStringLiteral("from the north side"));
    EXPECT_TRUE(head->accessibleDescription().contains(QStringLiteral("remark: from the north side")));
    type(QStringLiteral("n"));
    EXPECT_FALSE(head->accessibleDescription().contains(QStringLiteral("north")));
}

// The count that matters at the bench: an ordinary reading is its digits and two keys.
TEST_F(Spray, AnOrdinaryReadingTakesItsDigitsAndTwoKeys)
{
    press(Qt::Key_Space);
    EXPECT_EQ(controller->machine().state(), CallState::Spray);
    type(QStringLiteral("32-8"));
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 1u);
    EXPECT_EQ(called(), 2);
    EXPECT_TRUE(last().dwell.has_value());
    EXPECT_EQ(controller->machine().state(), CallState::Wait);
}

// Regression: the figure shown while typing left out the correction for a short dwell and was another one
// than that on record a moment later.
TEST_F(Spray, TheFigureBeforeEnterIsTheOneStored)
{
    press(Qt::Key_Space);
    QTest::qWait(50);
    press(Qt::Key_Space);
    EXPECT_FALSE(controller->readingSoFar().has_value()) << "no number yet";
    type(QStringLiteral("3.2e-8"));
    auto shown = controller->readingSoFar();
    ASSERT_TRUE(shown.has_value());
    ASSERT_TRUE(shown->dwell.has_value());
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(shown->dwell, last().dwell);
    EXPECT_EQ(shown->background, last().background);
    EXPECT_EQ(shown->peak, last().peak);
    EXPECT_EQ(shown->point, last().point);
    EXPECT_EQ(shown->condition, last().condition);
}

// Regression: a display in a unit that needs the gas was refused. Published: 1 mbar·l/s of
// helium at 20 °C is 5178.7498 g/yr of 365 days (M 4.002602, exact R).
TEST_F(Spray, ReadsADisplayInAMassFlow)
{
    model::Setup setup = history.session.job().setup;
    setup.detectorUnit = "g/yr";
    ASSERT_TRUE(history.session.changeSetup(setup).has_value());
    enterValue(QStringLiteral("5.1787-6"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 1e-9, 1e-14);
}

TEST_F(Spray, OneKeySaysNoResponse)
{
    press(Qt::Key_N);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_FALSE(last().peak.has_value());
    EXPECT_EQ(called(), 2);
}

TEST_F(Spray, ZeroAndBareMantissasAreNotStored)
{
    enterValue(QStringLiteral("0"));
    EXPECT_EQ(stored(), 0u);
    press(Qt::Key_Escape);
    enterValue(QStringLiteral("3.2"));
    EXPECT_EQ(stored(), 0u);
    EXPECT_FALSE(controller->question().isEmpty());
    press(Qt::Key_Up);
    press(Qt::Key_Return); // the offer changed: it is shown again
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-8, 1e-18);
}

// Regression: Up from e0 came to stand for e-1, a hundredth of what was shown.
TEST_F(Spray, TheExponentStepsThroughZero)
{
    type(QStringLiteral("3.2e+0"));
    press(Qt::Key_Up);
    ASSERT_TRUE(controller->value());
    EXPECT_NEAR(inMillibarLitresPerSecond(*controller->value()), 32.0, 1e-9);
    press(Qt::Key_Up);
    EXPECT_NEAR(inMillibarLitresPerSecond(*controller->value()), 320.0, 1e-9);
    for (int i = 0; i < 3; ++i)
        press(Qt::Key_Down);
    EXPECT_NEAR(inMillibarLitresPerSecond(*controller->value()), 0.32, 1e-9);
}

TEST_F(Spray, CorrectsTheLastEntryWithTwoKeysAndKeepsTheOld)
{
    enterValue(QStringLiteral("3-7"));
    const model::ReadingId wrong = last().id;
    press(Qt::Key_C);
    EXPECT_EQ(called(), 1);
    // Regression: the program gave a reason of its own that nobody had seen.
    EXPECT_TRUE(panel->findChild<CallHead*>()->accessibleDescription().contains(
        QStringLiteral("because “typed wrong”, M: other")))
        << panel->findChild<CallHead*>()->accessibleDescription().toStdString();
    enterValue(QStringLiteral("3-8"));
    ASSERT_EQ(stored(), 2u);
    EXPECT_TRUE(last().reason.starts_with("typed wrong (")) << last().reason;
    EXPECT_EQ(last().corrects, wrong);
    EXPECT_EQ(last().by, "T. Tester");
    EXPECT_FALSE(last().reason.empty());
    EXPECT_EQ(called(), 2);
}

// Regression: that the check afterwards was still to be made was first said when the job was sent for review.
TEST_F(Spray, AfterTheLastPointTheCheckAfterwardsIsSaid)
{
    ASSERT_TRUE(history.session.addCalibration(tests::systemCheck(Timestamp::now(), 1.0)));
    while (!controller->isFinished())
        press(Qt::Key_N);
    const auto says = [&] { return panel->findChild<CallHead*>()->accessibleDescription(); };
    EXPECT_TRUE(says().contains(QStringLiteral("afterwards is due"))) << says().toStdString();
    model::Calibration after = history.session.job().calibrations.front();
    after.id = model::CalibrationId::create();
    after.moment = model::CalibrationMoment::After;
    after.at = Timestamp::now();
    ASSERT_TRUE(history.session.addCalibration(after));
    EXPECT_FALSE(says().contains(QStringLiteral("afterwards is due"))) << says().toStdString();
}

TEST_F(Spray, AsksOnceAboutASlip)
{
    enterValue(QStringLiteral("3-9"));
    enterValue(QStringLiteral("3-9"));
    enterValue(QStringLiteral("3-5"));
    EXPECT_EQ(stored(), 2u);
    EXPECT_FALSE(controller->question().isEmpty());
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 3u);
}

TEST_F(Spray, VoidsSkipsJumpsAndNamesWhatCannotBeReached)
{
    enterValue(QStringLiteral("3-9"));
    press(Qt::Key_V);
    type(QStringLiteral("1"));
    EXPECT_EQ(history.session.job().voids.size(), 1u);
    EXPECT_EQ(called(), 1); // queued again
    press(Qt::Key_S);
    type(QStringLiteral("2"));
    EXPECT_EQ(called(), 2);
    press(Qt::Key_J);
    type(QStringLiteral("5"));
    press(Qt::Key_Return);
    EXPECT_EQ(called(), 5);
    press(Qt::Key_A);
    type(QStringLiteral("4"));
    EXPECT_EQ(last().outcome, model::Outcome::NotAccessible);
    EXPECT_FALSE(last().reason.empty());
    EXPECT_EQ(called(), 6);
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_N);
    EXPECT_EQ(called(), 1) << "the skipped point comes last";
}

TEST_F(Spray, KeepsTheBackgroundAndTheCondition)
{
    press(Qt::Key_B);
    enterValue(QStringLiteral("1.5-9"));
    press(Qt::Key_F);
    enterValue(QStringLiteral("4-8"));
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 1.5e-9, 1e-20);
    EXPECT_EQ(last().condition, model::Condition::Flexed);
}

// Regression: the field kept Ctrl+E for moving a caret, and the export did not open.
TEST_F(Spray, TheFieldLeavesTheWindowItsKeys)
{
    for (const int key : {Qt::Key_E, Qt::Key_K, Qt::Key_U, Qt::Key_P}) {
        QKeyEvent asks(QEvent::ShortcutOverride, key, Qt::ControlModifier);
        asks.ignore();
        QCoreApplication::sendEvent(&panel->field(), &asks);
        EXPECT_FALSE(asks.isAccepted()) << key;
    }
}

// Regression: with the value typed, M was refused and the words of the remark went in as keys.
TEST_F(Spray, ARemarkIsAskedForBesideANumberToo)
{
    type(QStringLiteral("3.2-9"));
    QSignalSpy asked(panel.get(), &CallPanel::remarkWanted);
    press(Qt::Key_M);
    EXPECT_EQ(asked.count(), 1);
    EXPECT_EQ(panel->field().text(), QStringLiteral("3.2-9"));
}

TEST_F(Spray, LettersDoNothingWhileANumberStands)
{
    type(QStringLiteral("3n"));
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(panel->field().text(), QStringLiteral("3"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(panel->field().text().isEmpty());
}

TEST_F(Spray, GoesOnAtTheExactPointAfterARestart)
{
    press(Qt::Key_N);
    press(Qt::Key_N);
    press(Qt::Key_Space); // point 3 is being sprayed when the power goes
    JobSession later;
    ASSERT_TRUE(later.openHistory(history.file(), false).has_value());
    ASSERT_TRUE(later.openJob(history.session.job().id).has_value());
    const SprayController again(later);
    ASSERT_TRUE(again.call().has_value());
    EXPECT_EQ(again.call()->number, 3);
    EXPECT_EQ(again.machine().state(), CallState::Wait);
}

TEST_F(Spray, TheWalkIsAnHonestModel)
{
    WalkModel model(history.session, *controller);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    EXPECT_EQ(model.rowCount(), 6);
    press(Qt::Key_N);
    model.refresh();
    EXPECT_EQ(model.calledRow(), 1);
    EXPECT_EQ(model.index(0).data(WalkModel::SignRole).toInt(), WalkModel::NoResponse);
}

} // namespace
} // namespace sealwalk::ui
