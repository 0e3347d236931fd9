// SPDX-License-Identifier: GPL-3.0-or-later
// What a round left open, in the judge stage: threads of what is owed, the next round by one key, a run
// voided together.
#include "tests/support/temporary_history.h"
#include "ui/judge/judge_page.h"
#include "ui/judge/judge_work.h"
#include "ui/judge/open_ends_bar.h"
#include "ui/judge/verdict_dialog.h"
#include "ui/render/sheet_view.h"
#include "ui/widgets/void_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>
#include <QTimer>

namespace sealwalk::ui {
namespace {

constexpr int kPatience = 20000; // ms

class OpenEnds : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(12);
        history.calibrate();
        model::Setup setup = history.session.job().setup;
        setup.response = seconds(2.0);
        ASSERT_TRUE(history.session.changeSetup(setup));
        const Timestamp now = Timestamp::now();
        for (int number = 1; number <= 12; ++number) {
            const bool moved = number == 9 || number == 10;
            ReadingDraft draft;
            draft.point = idOf(number);
            draft.dwell = seconds(8);
            draft.background = millibarLitresPerSecond((moved ? 1e-8 : 1e-10) + 1e-12 * (number % 3));
            draft.peak = *draft.background + millibarLitresPerSecond(number == 3   ? 4e-6
                                                                     : number == 4 ? 4e-7
                                                                                   : 1e-12);
            draft.sprayedAt = Timestamp{now.utcMilliseconds - 60'000 * (13 - number), 0};
            ASSERT_TRUE(history.session.store(draft).has_value());
        }
        page = std::make_unique<JudgePage>(history.session);
        page->resize(1366, 644);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        bar = page->findChild<OpenEndsBar*>();
        table = page->findChild<QTableView*>(QStringLiteral("findings"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !bar->ends().settle.empty() && !bar->ends().moved.empty(); },
                                    kPatience));
    }

    [[nodiscard]] model::PointId idOf(int number) const
    {
        return history.session.job().sketch.pointNumbered(number)->id;
    }

    tests::TemporaryHistory history;
    std::unique_ptr<JudgePage> page;
    OpenEndsBar* bar = nullptr;
    QTableView* table = nullptr;
};

TEST_F(OpenEnds, AMaskedPointShowsWhatItOwesToWhom)
{
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const auto& left = history.session.asLeft();
            return !history.session.isWorkingOut() && left.size() == 12 &&
                   left[3].finding == analysis::Finding::Masked;
        },
        kPatience));
    history.session.select(idOf(4));
    auto* sheet = page->findChild<render::SheetView*>();
    ASSERT_EQ(sheet->threads().size(), 1U);
    EXPECT_EQ(sheet->threads()[0].from, idOf(3));
    EXPECT_EQ(sheet->threads()[0].to, idOf(4));
    EXPECT_TRUE(sheet->threads()[0].text.endsWith(QLatin1Char('%')));
    bool said = false;
    for (const QTextBrowser* words : page->findChildren<QTextBrowser*>())
        said = said || words->toPlainText().contains(QStringLiteral("helium that reached point 3"));
    EXPECT_TRUE(said);
    history.session.select(idOf(7));
    EXPECT_TRUE(sheet->threads().empty());
    emit sheet->pointHovered(idOf(3)); // the leak: who owes it
    ASSERT_EQ(sheet->threads().size(), 1U);
    EXPECT_EQ(sheet->threads()[0].to, idOf(4));
}

TEST_F(OpenEnds, OneKeyMakesTheNextRound)
{
    EXPECT_EQ(page->findChild<QComboBox*>(QStringLiteral("settle"))->currentText(),
              QStringLiteral("tape 3, spray 4"));
    const QSignalSpy spray(page.get(), &JudgePage::sprayWanted);
    table->setFocus();
    QTest::keyClick(table, Qt::Key_T);
    const model::Job& job = history.session.job();
    ASSERT_EQ(job.rounds.size(), 2U);
    EXPECT_EQ(job.rounds.back().points, std::vector{idOf(4)});
    EXPECT_EQ(job.rounds.back().kind, model::RoundKind::Condition);
    EXPECT_EQ(job.rounds.back().title, "tape 3, spray 4");
    EXPECT_EQ(spray.count(), 1);
}

TEST_F(OpenEnds, ARunUnderAMovedBackgroundIsVoidedTogether)
{
    EXPECT_EQ(page->findChild<QComboBox*>(QStringLiteral("moved"))->currentText(), QStringLiteral("9, 10"));
    QTimer::singleShot(0, page.get(), [this] {
        auto* dialog = page->findChild<VoidDialog*>();
        ASSERT_NE(dialog, nullptr);
        auto* reason = dialog->findChild<QLineEdit*>(QStringLiteral("voidReason"));
        auto* ok = dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
        reason->clear();
        EXPECT_FALSE(ok->isEnabled()) << "a void needs its reason";
        reason->setText(QStringLiteral("helium bottle vented next door"));
        ok->click();
    });
    table->setFocus();
    QTest::keyClick(table, Qt::Key_V);
    const model::Job& job = history.session.job();
    ASSERT_EQ(job.voids.size(), 2U);
    EXPECT_EQ(job.voids[0].reason, "helium bottle vented next door");
    EXPECT_TRUE(job.isVoid(job.readings[8].id));
    EXPECT_TRUE(job.isVoid(job.readings[9].id));
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar->ends().moved.empty(); }, kPatience));
}

TEST_F(OpenEnds, AJobJustOpenedSaysThatItIsWorkedOut)
{
    auto* sheet = page->findChild<render::SheetView*>();
    const model::JobId job = history.session.job().id;
    history.session.closeJob();
    ASSERT_TRUE(history.session.openJob(job));
    EXPECT_EQ(sheet->notice(), QStringLiteral("working out …"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !history.session.isWorkingOut(); }, kPatience));
    EXPECT_EQ(sheet->notice(), QString());
}

// Regression: an answer that came after its job was closed asked for the job and stopped the program.
TEST_F(OpenEnds, AnAnswerAfterTheJobWasClosedIsForgotten)
{
    const model::JobId job = history.session.job().id;
    bar->refresh();
    history.session.closeJob();
    EXPECT_TRUE(bar->ends().settle.empty());
    ASSERT_TRUE(history.session.openJob(job).has_value());
    const auto other = history.session.createJob(history.session.object().id, "another");
    ASSERT_TRUE(other.has_value());
    bar->refresh();
    QTest::qWait(300); // the answer for the job of before would be here by now
    EXPECT_TRUE(bar->ends().settle.empty());
}

// Regression: advice and notes of the job before were shown until those of the new one were worked out.
TEST_F(OpenEnds, AnotherJobShowsNoBalanceOfTheJobBefore)
{
    auto* work = page->findChild<JudgeWork*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return work->figures().balance.has_value(); }, kPatience));
    page->hide();
    ASSERT_TRUE(history.session.createJob(history.session.object().id, "another").has_value());
    EXPECT_FALSE(work->figures().balance.has_value());
}

// Regression: the verdict was filed with a finding that newer ones had taken the place of meanwhile.
TEST_F(OpenEnds, AVerdictIsOnTheFindingThatWasAskedFor)
{
    const model::RoundId round = history.session.job().rounds.front().id;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !history.session.isWorkingOut() && table->currentIndex().isValid(); }, kPatience));
    history.session.select(idOf(3));
    QTimer::singleShot(0, page.get(), [this] {
        auto* dialog = page->findChild<VerdictDialog*>();
        ASSERT_NE(dialog, nullptr);
        ReadingDraft draft;
        draft.point = idOf(5);
        draft.peak = millibarLitresPerSecond(1e-9);
        ASSERT_TRUE(history.session.store(draft).has_value());
        ASSERT_TRUE(QTest::qWaitFor([&] { return !history.session.isWorkingOut(); }, kPatience));
        auto* finding = dialog->findChildren<QComboBox*>().front();
        finding->setCurrentIndex((finding->currentIndex() + 1) % finding->count());
        for (QLineEdit* field : dialog->findChildren<QLineEdit*>())
            field->setText(QStringLiteral("heard it hiss"));
        for (QPlainTextEdit* field : dialog->findChildren<QPlainTextEdit*>())
            field->setPlainText(QStringLiteral("heard it hiss"));
        EXPECT_TRUE(dialog->judgement().has_value());
        dialog->accept();
    });
    QObject::connect(page.get(), &JudgePage::failed, page.get(),
                     [](const Error& error) { ADD_FAILURE() << error.message; });
    table->setFocus();
    QTest::keyClick(table, Qt::Key_J);
    ASSERT_EQ(history.session.job().judgements.size(), 1U);
    EXPECT_EQ(history.session.job().judgements.front().point, idOf(3));
    EXPECT_EQ(history.session.job().judgements.front().round, round);
}

} // namespace
} // namespace sealwalk::ui
