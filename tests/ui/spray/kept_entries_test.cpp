// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured, typed or said stays with its point and its person, whatever happens around it.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/render/sheet_view.h"
#include "ui/spray/distance_view.h"
#include "ui/spray/spray_note.h"
#include "ui/spray/state_bar.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <unistd.h>

#include <QApplication>
#include <QInputDialog>
#include <QLabel>
#include <QSignalSpy>
#include <QTimer>

#include <fstream>

namespace sealwalk::ui {
namespace {

class KeptEntries : public SprayPageTest
{
protected:
    [[nodiscard]] model::PointId point(int number) const
    {
        return history.session.job().sketch.pointNumbered(number)->id;
    }
    [[nodiscard]] CallState state() const { return controller().machine().state(); }
    /// What another window does to the job meanwhile, seen here when this answers.
    template <class Work>
    void elsewhere(Work&& work)
    {
        JobSession other;
        ASSERT_TRUE(other.openHistory(history.file(), false));
        other.setLogger(history.session.logger());
        ASSERT_TRUE(other.openJob(history.session.job().id));
        QSignalSpy seen(&history.session, &JobSession::recordsChanged);
        work(other);
        ASSERT_TRUE(seen.wait(5000));
    }
    static Result<model::Reading> store(JobSession& session, model::PointId point, double rate)
    {
        ReadingDraft draft;
        draft.point = point;
        draft.peak = millibarLitresPerSecond(rate);
        return session.store(draft);
    }
};

// Regression: V and C acted on what another window had stored a second before, under the same name too.
TEST_F(KeptEntries, CorrectingAndVoidingMeanTheReadingOfThisWindow)
{
    enterValue(QStringLiteral("3.2-9"));
    const model::ReadingId own = last().id;
    elsewhere([&](JobSession& other) { ASSERT_TRUE(store(other, point(4), 7e-9)); });
    ASSERT_EQ(stored(), 2u);
    press(Qt::Key_V);
    bool named = false;
    for (const QLabel* label : page->findChildren<QLabel*>())
        named = named || label->text().contains(QString::fromUtf8("1, 3.2e−9"));
    EXPECT_TRUE(named) << "the question says what it is about";
    type(QStringLiteral("3"));
    ASSERT_EQ(history.session.job().voids.size(), 1u);
    EXPECT_EQ(history.session.job().voids.front().reading, own);
    press(Qt::Key_C);
    EXPECT_FALSE(controller().isCorrecting()) << "nothing of this window stands any more";
}

// Regression: while another program held the history the window stood still for five seconds, and the entry
// had to be given once more.
TEST_F(KeptEntries, AnEntryWaitsForAnotherProgramToLetGoOfTheHistory)
{
    SQLite::Database other(history.file().string(), SQLite::OPEN_READWRITE);
    std::optional<SQLite::Transaction> lock(std::in_place, other, SQLite::TransactionBehavior::IMMEDIATE);
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_EQ(stored(), 0u);
    EXPECT_TRUE(controller().isNotStored());
    EXPECT_TRUE(controller().isTryingAgain());
    EXPECT_FALSE(controller().typed().empty()) << "it stays in the field";
    lock.reset();
    EXPECT_TRUE(QTest::qWaitFor([&] { return stored() == 1u; }, 20000));
    EXPECT_FALSE(controller().isNotStored());
    EXPECT_FALSE(controller().isTryingAgain());
    EXPECT_TRUE(controller().typed().empty());

    lock.emplace(other, SQLite::TransactionBehavior::IMMEDIATE);
    enterValue(QStringLiteral("4.4-9"));
    EXPECT_TRUE(controller().isTryingAgain());
    press(Qt::Key_Escape); // no longer meant
    lock.reset();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !controller().isTryingAgain(); }, 20000));
    EXPECT_EQ(stored(), 1u);
}

// Regression: "other" was stored as the reason, which tells a reviewer nothing.
TEST_F(KeptEntries, OtherAsksForTheReasonInWords)
{
    const auto answer = [this](const QString& words, bool takes) {
        QTimer::singleShot(0, page.get(), [words, takes] {
            auto* dialog = qobject_cast<QInputDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            EXPECT_TRUE(dialog->labelText().endsWith(QLatin1Char('?'))) << "it says what it asks";
            dialog->setTextValue(words);
            takes ? dialog->accept() : dialog->reject();
        });
    };
    press(Qt::Key_X);
    answer(QStringLiteral("too late"), false);
    type(QStringLiteral("5"));
    EXPECT_EQ(stored(), 0u);
    answer(QStringLiteral("the owner keeps it shut"), true);
    type(QStringLiteral("5"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().reason, "the owner keeps it shut");
    enterValue(QStringLiteral("3.2-9"));
    press(Qt::Key_V);
    answer(QStringLiteral("key slipped"), true);
    type(QStringLiteral("5"));
    ASSERT_EQ(history.session.job().voids.size(), 1u);
    EXPECT_EQ(history.session.job().voids.front().reason, "key slipped");
}

// Regression: what somebody else had stored could not be corrected at all, though a reviewer asks for it by
// number.
TEST_F(KeptEntries, APointCalledAgainIsTheOneThatIsCorrected)
{
    elsewhere([&](JobSession& other) { ASSERT_TRUE(store(other, point(1), 3.2e-9)); });
    const model::ReadingId wrong = last().id;
    press(Qt::Key_C);
    EXPECT_FALSE(controller().isCorrecting()) << "no point was asked for";
    press(Qt::Key_J);
    enterValue(QStringLiteral("1"));
    press(Qt::Key_C);
    ASSERT_TRUE(controller().isCorrecting());
    controller().remark(QStringLiteral("misread by a decade"));
    enterValue(QStringLiteral("3.2-8"));
    EXPECT_EQ(last().corrects, wrong);
    // Regression: a correction made after the job was sent back stood in the report at the time of the spray.
    EXPECT_EQ(last().reason.rfind("misread by a decade (" + Timestamp::now().date(), 0), 0u) << last().reason;
    EXPECT_EQ(called(), 1) << "back to the call that was left";

    press(Qt::Key_V);
    type(QStringLiteral("3"));
    ASSERT_EQ(history.session.job().voids.size(), 1u);
    EXPECT_EQ(history.session.job().voids.front().reading, last().id);
}

// Property: what the same person stored before a restart can still be corrected.
TEST_F(KeptEntries, AfterARestartTheLastOneOfThePersonIsMeant)
{
    enterValue(QStringLiteral("3.2-9"));
    const model::ReadingId own = last().id;
    ASSERT_TRUE(history.session.openJob(history.session.job().id));
    SprayController again(history.session);
    ASSERT_NE(again.lastStored(), nullptr);
    EXPECT_EQ(again.lastStored()->id, own);
    history.session.setLogger(QStringLiteral("N. Next"));
    EXPECT_EQ(again.lastStored(), nullptr);
}

// Regression: a round opened in another window dropped clock, typed value, background and skips of this one.
TEST_F(KeptEntries, ARoundOpenedElsewhereLeavesTheSprayAlone)
{
    press(Qt::Key_S);
    type(QStringLiteral("1"));
    ASSERT_EQ(called(), 2);
    press(Qt::Key_B);
    enterValue(QStringLiteral("1.5-9"));
    press(Qt::Key_Space);
    type(QStringLiteral("3.2"));
    QSignalSpy said(&controller(), &SprayController::said);
    elsewhere([&](JobSession& other) {
        ASSERT_TRUE(other.openRound(model::RoundKind::Repeat, "elsewhere", {point(5)}));
    });
    EXPECT_EQ(called(), 2);
    EXPECT_EQ(state(), CallState::Spray);
    EXPECT_EQ(controller().typed(), "3.2");
    EXPECT_TRUE(controller().background().has_value());
    EXPECT_TRUE(said.isEmpty()) << "nothing was stopped";
    type(QStringLiteral("-9"));
    press(Qt::Key_Return);
    EXPECT_EQ(called(), 3) << "the skipped point still comes last";
    EXPECT_TRUE(last().dwell.has_value());
}

// Regression: another order of the walk, from wherever, dropped the spray that ran.
TEST_F(KeptEntries, AnotherOrderLeavesTheSprayAlone)
{
    press(Qt::Key_Space);
    elsewhere([&](JobSession& other) {
        auto order = other.currentRound()->points;
        std::reverse(order.begin(), order.end());
        ASSERT_TRUE(other.orderRound(order));
    });
    EXPECT_EQ(called(), 1);
    EXPECT_EQ(state(), CallState::Spray);
    EXPECT_EQ(controller().walk().front().number, 6);
}

// Regression: leaving a point while helium was given went back to GO; its tail was read as the next leak.
TEST_F(KeptEntries, HeliumClearsBeforeAnotherPointIsSprayed)
{
    press(Qt::Key_Space);
    press(Qt::Key_J);
    type(QStringLiteral("5"));
    press(Qt::Key_Return);
    EXPECT_EQ(called(), 5);
    EXPECT_EQ(state(), CallState::Wait);
    // Regression: a Space that came too early was told in the note line only, and the next N stored a point
    // that nobody had sprayed.
    const auto* bar = page->findChild<StateBar*>();
    ASSERT_NE(bar, nullptr);
    EXPECT_FALSE(bar->accessibleDescription().contains(QStringLiteral("not yet")));
    press(Qt::Key_Space);
    EXPECT_EQ(state(), CallState::Wait);
    EXPECT_TRUE(bar->accessibleDescription().contains(QStringLiteral("not yet")));
    press(Qt::Key_I);
    press(Qt::Key_Space);
    EXPECT_EQ(state(), CallState::Spray);
    EXPECT_FALSE(controller().isTooEarly());
}

// Regression: correcting the last value while the next point was sprayed threw that spray away.
TEST_F(KeptEntries, ACorrectionLeavesTheSprayRunning)
{
    enterValue(QStringLiteral("3-9"));
    press(Qt::Key_F);
    press(Qt::Key_Space);
    press(Qt::Key_C);
    EXPECT_EQ(called(), 1);
    EXPECT_EQ(state(), CallState::Spray);
    enterValue(QStringLiteral("4-9"));
    EXPECT_TRUE(last().corrects.has_value());
    EXPECT_EQ(called(), 2);
    EXPECT_EQ(state(), CallState::Spray);
    EXPECT_EQ(controller().condition(), model::Condition::Flexed);
    press(Qt::Key_C);
    press(Qt::Key_Escape);
    EXPECT_EQ(called(), 2);
    enterValue(QStringLiteral("6-9"));
    EXPECT_EQ(last().point, point(2));
    EXPECT_EQ(last().condition, model::Condition::Flexed);
    EXPECT_TRUE(last().dwell.has_value());
    EXPECT_FALSE(last().corrects.has_value());
}

// Regression: a correction dropped the trace, the clean-up, marks, remark and way of entry of the old one.
TEST_F(KeptEntries, ACorrectionKeepsWhatWasMeasured)
{
    ReadingDraft draft;
    draft.point = point(1);
    draft.peak = millibarLitresPerSecond(3e-7);
    draft.background = millibarLitresPerSecond(2e-10);
    draft.dwell = seconds(8.0);
    draft.delay = seconds(1.5);
    draft.cleanUp = seconds(4.0);
    draft.gentle = true;
    draft.confirmed = true;
    draft.outOfTurn = true;
    draft.entry = model::Entry::Transcribed;
    draft.remark = "from the north side";
    draft.trace = "1 then";
    draft.samples = storage::Trace{{0.0, 1.0}, {1e-10F, 2e-10F}};
    draft.sprayedAt = Timestamp{Timestamp::now().utcMilliseconds - 3'600'000, 0};
    ASSERT_TRUE(history.session.store(draft));
    ASSERT_TRUE(history.session.openJob(history.session.job().id)); // as after a restart
    const model::Reading old = last();
    press(Qt::Key_B);
    enterValue(QStringLiteral("9-9")); // of the point that comes, not of this one
    press(Qt::Key_C);
    enterValue(QStringLiteral("3-8"));
    model::Reading wanted = old;
    wanted.id = last().id;
    wanted.sequence = last().sequence;
    wanted.peak = last().peak;
    wanted.entered = "3-8 mbar l/s";
    wanted.corrects = old.id;
    wanted.reason = last().reason;
    EXPECT_EQ(last(), wanted);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3e-8, 1e-18);
    EXPECT_FALSE(last().reason.empty());

    press(Qt::Key_C);
    press(Qt::Key_T);
    press(Qt::Key_N);
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_EQ(last().condition, model::Condition::Taped);
    EXPECT_EQ(last().background, old.background);
    EXPECT_FALSE(last().delay.has_value());
    EXPECT_FALSE(last().confirmed);
}

// Regression: B during a correction turned it into a new reading.
TEST_F(KeptEntries, TheBackgroundOfACorrectionIsItsOwn)
{
    press(Qt::Key_B);
    enterValue(QStringLiteral("1-10"));
    enterValue(QStringLiteral("3-9"));
    press(Qt::Key_C);
    press(Qt::Key_B);
    enterValue(QStringLiteral("2-10"));
    EXPECT_TRUE(controller().isCorrecting());
    enterValue(QStringLiteral("4-9"));
    EXPECT_TRUE(last().corrects.has_value());
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().background), 2e-10, 1e-20);
    EXPECT_NEAR(inMillibarLitresPerSecond(*controller().background()), 1e-10, 1e-20);
}

// Regression: looking at another point in Judge moved the call, and dropped the spray that ran.
TEST_F(KeptEntries, WhatOtherStagesLookAtDoesNotMoveTheCall)
{
    page->hide();
    history.session.select(point(4));
    EXPECT_EQ(called(), 1);
    page->show();
    history.session.select(point(5));
    EXPECT_EQ(called(), 5) << "chosen on this page it is called";
    press(Qt::Key_Space);
    auto* sheet = page->findChild<render::SheetView*>();
    emit sheet->pointClicked(point(3));
    EXPECT_EQ(called(), 5);
    EXPECT_EQ(state(), CallState::Spray);
    type(QStringLiteral("3-9"));
    press(Qt::Key_Return);
    emit sheet->pointClicked(point(3));
    EXPECT_EQ(called(), 3);
}

// Regression: a value typed for one point, its question answered, was stored at the next without one.
TEST_F(KeptEntries, NothingTypedGoesOverToAnotherPoint)
{
    enterValue(QStringLiteral("3-9"));
    enterValue(QStringLiteral("3-9"));
    type(QStringLiteral("3-5"));
    press(Qt::Key_Return);
    ASSERT_FALSE(controller().question().isEmpty());
    controller().remark(QStringLiteral("for point 3"));
    QSignalSpy said(&controller(), &SprayController::said);
    controller().callSelected(point(4));
    EXPECT_EQ(called(), 4);
    EXPECT_TRUE(controller().typed().empty());
    EXPECT_TRUE(controller().question().isEmpty());
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said[0][1].toString().contains(QStringLiteral("remark on point 3")));
    press(Qt::Key_A);
    controller().callSelected(point(5));
    EXPECT_EQ(controller().prompt(), SprayController::Prompt::None);
    type(QStringLiteral("3-5"));
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 2u) << "asked anew";
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 3u);
    EXPECT_EQ(last().point, point(5));
    EXPECT_TRUE(last().remark.empty());
}

// Regression: why a point was put off was asked for and thrown away.
TEST_F(KeptEntries, TheReasonOfASkipStandsWithItsReading)
{
    press(Qt::Key_S);
    type(QStringLiteral("2"));
    for (int i = 0; i < 5; ++i)
        press(Qt::Key_N);
    ASSERT_EQ(called(), 1);
    EXPECT_TRUE(last().remark.empty());
    press(Qt::Key_N);
    EXPECT_EQ(last().point, point(1));
    EXPECT_EQ(last().remark, "came later: in use");
}

// Regression: what was put off, and why, was forgotten at the next start.
TEST_F(KeptEntries, ASkippedPointStaysSoAfterARestart)
{
    press(Qt::Key_S);
    type(QStringLiteral("2"));
    ASSERT_EQ(called(), 2);
    JobSession next;
    ASSERT_TRUE(next.openHistory(history.file(), false));
    ASSERT_TRUE(next.openJob(history.session.job().id));
    SprayController again(next);
    ASSERT_TRUE(again.call());
    EXPECT_EQ(again.call()->number, 2);
    const auto off = analysis::skippedPoints(next.job(), next.currentRound()->id);
    ASSERT_EQ(off.size(), 1u);
    EXPECT_EQ(off.front().point, point(1));
    EXPECT_EQ(off.front().reason, "in use");
    press(Qt::Key_J);
    enterValue(QStringLiteral("1"));
    press(Qt::Key_N);
    EXPECT_EQ(last().remark, "came later: in use");
    EXPECT_TRUE(analysis::skippedPoints(history.session.job(), next.currentRound()->id).empty());
}

// Regression: a reading that could not be stored was told in the note line only.
TEST_F(KeptEntries, AReadingThatIsNotOnDiskIsSaidLoud)
{
    std::vector<Error> failures;
    QObject::connect(page.get(), &SprayPage::failed, page.get(),
                     [&](const Error& error) { failures.push_back(error); });
    auto* distance = page->findChild<DistanceView*>();
    if (distance == nullptr)
        distance = page->window()->findChild<DistanceView*>();
    ASSERT_NE(distance, nullptr);
    press(Qt::Key_Z);
    SQLite::Database disk(history.file().string(), SQLite::OPEN_READWRITE);
    {
        const SQLite::Transaction held(disk, SQLite::TransactionBehavior::IMMEDIATE);
        enterValue(QStringLiteral("3-9"));
    }
    ASSERT_EQ(failures.size(), 1u);
    EXPECT_EQ(failures.front().code, ErrorCode::Busy);
    EXPECT_TRUE(failures.front().message.starts_with("not stored: "));
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(controller().typed(), "3-9") << "it can be stored by another Enter";
    EXPECT_TRUE(distance->accessibleDescription().contains(QStringLiteral("NOT STORED")));
    EXPECT_EQ(page->findChild<StateBar*>()->shown().word, QStringLiteral("NOT STORED"));
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 1u);
    EXPECT_FALSE(distance->accessibleDescription().contains(QStringLiteral("NOT STORED")));
    press(Qt::Key_Z);
}

// Regression: "not tested" and "confirmed" could only be entered by command line.
TEST_F(KeptEntries, NotTestedAndConfirmedHaveTheirKeys)
{
    press(Qt::Key_K);
    EXPECT_FALSE(controller().isConfirming()) << "nothing answered yet";
    press(Qt::Key_X);
    type(QStringLiteral("3"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::NotTested);
    EXPECT_EQ(last().reason, "under repair");
    EXPECT_EQ(called(), 2);
    enterValue(QStringLiteral("3-8"));
    EXPECT_FALSE(last().confirmed);
    press(Qt::Key_K); // the one just stored, once more
    EXPECT_EQ(called(), 2);
    EXPECT_TRUE(controller().isConfirming());
    enterValue(QStringLiteral("3.1-8"));
    EXPECT_TRUE(last().confirmed);
    EXPECT_FALSE(last().corrects.has_value()) << "both stand";
    EXPECT_EQ(called(), 3);
    EXPECT_FALSE(controller().isConfirming());
    press(Qt::Key_Up);
    press(Qt::Key_K);
    press(Qt::Key_N); // it did not answer again
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_FALSE(last().confirmed);
}

// Regression: a second window said that the first had stopped, and took its note away.
TEST_F(KeptEntries, TheNoteOfARunningProgramIsLeftToIt)
{
    const auto folder = history.file().parent_path();
    const auto notes = [&] {
        int count = 0;
        for (const auto& entry : std::filesystem::directory_iterator(folder))
            count += entry.path().filename().string().find(".spraying-") != std::string::npos ? 1 : 0;
        return count;
    };
    press(Qt::Key_Space);
    ASSERT_EQ(notes(), 1);
    // As if written by a program that still runs: our parent.
    std::filesystem::path own;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().filename().string().find(".spraying-") != std::string::npos)
            own = entry.path();
    const std::string pid = std::to_string(::getpid());
    std::string name = own.string();
    ASSERT_TRUE(name.ends_with("-" + pid));
    name.replace(name.size() - pid.size(), pid.size(), std::to_string(::getppid()));
    std::filesystem::rename(own, name);
    const model::JobId job = history.session.job().id;
    EXPECT_FALSE(takeSprayNote(history.file(), job));
    EXPECT_EQ(notes(), 1);
    // Of one that runs no more it is taken, once.
    std::filesystem::rename(name, own);
    const auto taken = takeSprayNote(history.file(), job);
    ASSERT_TRUE(taken);
    EXPECT_EQ(taken->number, 1);
    EXPECT_EQ(notes(), 0);
    EXPECT_FALSE(takeSprayNote(history.file(), job));
}

// Regression: moved on from a spray, the note stayed, and the next start spoke of a stop that was none.
TEST_F(KeptEntries, AMovedCallLeavesNoNote)
{
    press(Qt::Key_Space);
    press(Qt::Key_Down);
    EXPECT_FALSE(takeSprayNote(history.file(), history.session.job().id));
}

// Property: a note that is no note is passed over, whatever it holds.
TEST_F(KeptEntries, DamagedNotesArePassedOver)
{
    keepSprayNote(history.file(), {history.session.job().id, 3, Timestamp::now()});
    for (const auto& entry : std::filesystem::directory_iterator(history.file().parent_path()))
        if (entry.path().filename().string().find(".spraying-") != std::string::npos)
            std::ofstream(entry.path()) << std::string(5000, '\xff');
    EXPECT_FALSE(takeSprayNote(history.file(), history.session.job().id));
    dropSprayNote(history.file());
}

// Property: what is taped off goes with every reading until it is said otherwise, never with its own point,
// and is there again after a crash.
TEST_F(KeptEntries, TapeStaysOnFromPointToPoint)
{
    const auto say = [&](const QString& text) {
        QTimer::singleShot(0, page.get(), [text] {
            auto* dialog = qobject_cast<QInputDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            dialog->setTextValue(text);
            dialog->accept();
        });
        press(Qt::Key_W);
    };
    say(QStringLiteral("2, 4"));
    EXPECT_EQ(controller().shielded(), QStringLiteral("2, 4"));
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_EQ(last().shielded, (std::vector{point(2), point(4)}));
    EXPECT_EQ(called(), 2);
    EXPECT_EQ(controller().shielded(), QStringLiteral("4")) << "the called one is sprayed";
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_EQ(last().shielded, std::vector{point(4)});

    SprayController later(history.session);
    EXPECT_EQ(later.allShielded(), QStringLiteral("4, 2"));

    say(QStringLiteral("77"));
    EXPECT_EQ(controller().shielded(), QStringLiteral("2, 4")) << "no such point: as it was";
    say({});
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_TRUE(last().shielded.empty());
}

} // namespace
} // namespace sealwalk::ui
