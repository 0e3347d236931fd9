// SPDX-License-Identifier: GPL-3.0-or-later
// Advice, readings from paper, and what stands in the words of the call.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/spray/advice_card.h"

#include <QDate>
#include <QPushButton>

namespace sealwalk::ui {
namespace {

using Advice = SprayPageTest;

/// Twelve readings, three of them on a background four times as high.
void moveTheBackground(tests::TemporaryHistory& history)
{
    const auto points = history.session.job().sketch.activePoints();
    const Timestamp now = Timestamp::now();
    for (int i = 0; i < 12; ++i) {
        ReadingDraft draft;
        draft.point = points[static_cast<std::size_t>(i % 6)]->id;
        draft.background = millibarLitresPerSecond(i >= 8 && i <= 10 ? 4e-10 : 1e-10);
        draft.peak = *draft.background;
        draft.dwell = seconds(6.0);
        draft.sprayedAt = Timestamp{now.utcMilliseconds - 60'000 * (20 - i), now.offsetMinutes};
        ASSERT_TRUE(history.session.store(draft).has_value());
    }
}

// Property: a run on a moved background is shown, voided together with one reason, and called again.
TEST_F(Advice, VoidsARunTogetherAndCallsItAgain)
{
    moveTheBackground(history);
    ASSERT_TRUE(QTest::qWaitFor([&] { return controller().advice().has_value(); }));
    const SprayAdvice advice = *controller().advice();
    ASSERT_EQ(advice.kind, SprayAdvice::Kind::VoidRun);
    ASSERT_EQ(advice.readings.size(), 3u);
    EXPECT_TRUE(page->findChild<AdviceCard*>()->isVisible());
    press(Qt::Key_L);
    EXPECT_TRUE(history.session.job().voids.empty()); // a void is for ever: a reason is asked for first
    type(QStringLiteral("1"));
    ASSERT_EQ(history.session.job().voids.size(), 3u);
    for (const model::VoidMark& mark : history.session.job().voids)
        EXPECT_EQ(mark.reason, "background moved");
    EXPECT_EQ(called(), 3);
    EXPECT_FALSE(controller().advice() && controller().advice()->kind == SprayAdvice::Kind::VoidRun);
}

// Property: set aside it stays away, and nothing is void.
TEST_F(Advice, KeepsARunWhenToldTo)
{
    moveTheBackground(history);
    ASSERT_TRUE(QTest::qWaitFor([&] { return controller().advice().has_value(); }));
    page->findChild<QPushButton*>(QStringLiteral("stayInOrder"))->click();
    EXPECT_FALSE(controller().advice() && controller().advice()->kind == SprayAdvice::Kind::VoidRun);
    press(Qt::Key_N);
    history.settle();
    EXPECT_TRUE(history.session.job().voids.empty());
    EXPECT_FALSE(controller().advice() && controller().advice()->kind == SprayAdvice::Kind::VoidRun);
}

// Property: what was on paper is marked so, carries the paper's time and no dwell, and keeps its order.
TEST_F(Advice, TakesReadingsFromPaper)
{
    const QDate day = QDate::currentDate().addDays(-3);
    controller().setTranscribing(true, day);
    press(Qt::Key_Space); // nothing is sprayed now
    EXPECT_EQ(controller().machine().state(), CallState::Go);
    enterValue(QStringLiteral("3-9"));
    EXPECT_EQ(stored(), 0u);
    for (const char* typed : {"2570", "1.2-8"}) { // no time of day; a rate in the wrong place
        enterValue(QLatin1String(typed));
        EXPECT_EQ(stored(), 0u) << typed;
        press(Qt::Key_Escape);
    }
    enterValue(QStringLiteral("14:32"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().entry, model::Entry::Transcribed);
    EXPECT_EQ(last().at.date(), day.toString(Qt::ISODate).toStdString());
    EXPECT_EQ(last().at.timeOfDay(), "14:32:00");
    EXPECT_FALSE(last().dwell.has_value());
    // Regression: nothing told a reading typed in afterwards from one of its moment.
    EXPECT_TRUE(last().remark.starts_with("entered " + Timestamp::now().date())) << last().remark;
    EXPECT_EQ(last().remark.find("usual pace"), std::string::npos);
    press(Qt::Key_N);
    enterValue(QStringLiteral("932")); // before the one above
    EXPECT_EQ(stored(), 1u);
    press(Qt::Key_Escape);
    enterValue(QStringLiteral("1432"));
    ASSERT_EQ(stored(), 2u);
    EXPECT_GT(last().at, history.session.job().readings.front().at);
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_EQ(called(), 3);
    press(Qt::Key_N);
    press(Qt::Key_Return); // at the usual pace
    ASSERT_EQ(stored(), 3u);
    EXPECT_EQ(last().at.utcMilliseconds % 1000, 0) << "no finer than paper";
    EXPECT_TRUE(last().remark.ends_with(", its time taken from the usual pace")) << last().remark;
    controller().setTranscribing(true, day, seconds(9.0));
    press(Qt::Key_N);
    enterValue(QStringLiteral("1500"));
    ASSERT_TRUE(last().dwell) << "the sheet said how long";
    // Regression: a remark made beside the time took the place of why the point came later.
    const model::PointId skipped = controller().call()->point;
    press(Qt::Key_S);
    press(Qt::Key_1);
    controller().callPoint(skipped);
    press(Qt::Key_N);
    controller().remark(QStringLiteral("a hair on the seal"));
    enterValue(QStringLiteral("1501"));
    EXPECT_EQ(last().point, skipped);
    EXPECT_TRUE(last().remark.starts_with("a hair on the seal; came later: helium hangs there; entered "))
        << last().remark;
    EXPECT_DOUBLE_EQ(inSeconds(*last().dwell), 9.0);
    controller().setTranscribing(false);
    enterValue(QStringLiteral("3-9"));
    EXPECT_EQ(last().entry, model::Entry::Typed);
}

// Regression: a point that was not sprayed was asked for its time, and what was typed next went there.
TEST_F(Advice, WhatWasNotSprayedHasNoTimeOnPaper)
{
    controller().setTranscribing(true, QDate::currentDate().addDays(-3));
    enterValue(QStringLiteral("3-9"));
    enterValue(QStringLiteral("1432"));
    ASSERT_EQ(stored(), 1u);
    const Timestamp before = last().at;
    press(Qt::Key_X);
    press(Qt::Key_1);
    ASSERT_EQ(stored(), 2u);
    EXPECT_EQ(last().outcome, model::Outcome::NotTested);
    EXPECT_EQ(last().at.secondsSince(before), 1.0) << "in its order";
    EXPECT_TRUE(last().remark.ends_with(", without a time of its own")) << last().remark;
    EXPECT_EQ(controller().field(), SprayController::Field::Peak);
}

// Regression: a sheet that began with one not tested counted its times from today, and put them a day later.
TEST_F(Advice, ASheetMayBeginWithWhatWasNotSprayed)
{
    const QDate day = QDate::currentDate().addDays(-3);
    controller().setTranscribing(true, day);
    press(Qt::Key_X);
    press(Qt::Key_1);
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().at.date(), day.toString(Qt::ISODate).toStdString());
    EXPECT_FALSE(controller().paperTimeOffered().has_value());
    enterValue(QStringLiteral("3-9"));
    enterValue(QStringLiteral("0932"));
    ASSERT_EQ(stored(), 2u);
    EXPECT_EQ(last().at.date(), day.toString(Qt::ISODate).toStdString());
    EXPECT_EQ(last().at.timeOfDay(), "09:32:00");
}

// Regression: the mode outlived the sheet, and the job it was of.
TEST_F(Advice, PaperEndsWhenTheJobIsSentForReview)
{
    controller().setTranscribing(true);
    ASSERT_TRUE(history.session.submit("all typed in"));
    EXPECT_FALSE(controller().isTranscribing());
    type(QStringLiteral("3"));
    EXPECT_TRUE(field().text().isEmpty()) << "the job takes no more readings";
}

// Regression: "readings from a paper sheet", said before the first round began, was forgotten with its
// opening.
TEST_F(Advice, PaperSaidBeforeTheWalkHolds)
{
    JobSession& session = history.session;
    ASSERT_TRUE(session.openJob(session.createJob(session.object().id, "again").value()));
    ASSERT_EQ(session.currentRound(), nullptr);
    controller().setTranscribing(true);
    ASSERT_TRUE(session.openRound(model::RoundKind::AsFound, {}));
    EXPECT_TRUE(controller().isTranscribing());
    ASSERT_TRUE(session.openRound(model::RoundKind::Repeat, {}));
    EXPECT_FALSE(controller().isTranscribing()) << "another round is asked about anew";
}

TEST_F(Advice, SaysTheCallInWords)
{
    EXPECT_EQ(controller().callInWords().left(19), QStringLiteral("GO, point 1, Port, "));
    enterValue(QStringLiteral("3-9"));
    EXPECT_TRUE(controller().callInWords().contains(QStringLiteral("last stored 3.0e")));
}

} // namespace
} // namespace sealwalk::ui
