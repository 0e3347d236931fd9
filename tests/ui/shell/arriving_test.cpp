// SPDX-License-Identifier: GPL-3.0-or-later
// Jobs from elsewhere, and signed ones that were bent, as the window tells of them.
#include "core/exchange/files.h"
#include "core/exchange/job_import.h"
#include "core/transfer/hand_out.h"
#include "tests/support/signed_job.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/session/record_watch.h"
#include "ui/shell/arriving.h"
#include "ui/shell/stage_strip.h"
#include "ui/widgets/note_line.h"

#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QSignalSpy>

namespace sealwalk::ui {

namespace {

class ArrivingTest : public WindowTest
{
protected:
    [[nodiscard]] std::filesystem::path beside(const char* name) const
    {
        return std::filesystem::path(QFileInfo(historyFile()).path().toStdString()) / name;
    }
    bool import(storage::HistoryStore& store, const exchange::JobFile& file) const
    {
        return store.importJob(file.record.object, file.record.job, file.pictures).has_value();
    }
    [[nodiscard]] QString said() const { return window->noteLine().text(); }

    model::Person m_reviewer = exchange::testPerson("Rhea Quill", "reviewer");
};

} // namespace

// Regression: the stage bar said nothing of a signed job whose record no longer matched its signatures.
TEST_F(ArrivingTest, ABentJobIsToldWhereverItIsOpen)
{
    exchange::JobFile bent = exchange::signedFile(31, m_reviewer);
    bent.record.job.readings[0].by = "somebody else";
    ASSERT_TRUE(import(session->history(), bent));
    ASSERT_TRUE(session->openJob(bent.record.job.id));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return window->strip().accessibleDescription().contains(QStringLiteral("not as signed")); }));
    EXPECT_TRUE(window->windowTitle().contains(QStringLiteral("not as signed")))
        << window->windowTitle().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("is not as it was signed"))) << said().toStdString();
    EXPECT_FALSE(window->strip().toolTip().isEmpty());
}

// Property: a job that went on elsewhere is taken in after it was told what that adds, and not without.
TEST_F(ArrivingTest, AJobThatWentOnIsAskedFor)
{
    const exchange::JobFile later = exchange::signedFile(31, m_reviewer);
    exchange::JobFile before = later;
    before.record.job.review.clear();
    before.record.job.signatures.clear();
    before.record.job.state = model::JobState::Open;
    ASSERT_TRUE(import(session->history(), before));
    const std::filesystem::path file = beside("later.sealjob");
    ASSERT_TRUE(exchange::writeFile(file.string(), exchange::packJobFile(later).value()));
    for (const bool wanted : {false, true}) {
        onDialog([wanted](QDialog& dialog) {
            auto& box = dynamic_cast<QMessageBox&>(dialog);
            EXPECT_TRUE(box.text().contains(QStringLiteral("submitted, approved")))
                << box.text().toStdString();
            box.button(wanted ? QMessageBox::Yes : QMessageBox::No)->click();
        });
        openFile(*window, QString::fromStdString(file.string()));
        ASSERT_TRUE(waitForDialogs());
        const auto job = session->history().job(later.record.job.id);
        EXPECT_EQ(job->state, wanted ? model::JobState::Signed : model::JobState::Open);
    }
    ASSERT_TRUE(session->hasJob()); // it is opened, as it is now
    EXPECT_EQ(session->job().id, later.record.job.id);
    EXPECT_EQ(session->job().state, model::JobState::Signed);
}

// Property: everything of another history comes, once; what was here, renumbered or clashed is summed up.
TEST_F(ArrivingTest, AWholeHistoryIsTakenIn)
{
    const exchange::JobFile known = exchange::signedFile(31, m_reviewer);
    exchange::JobFile fresh = exchange::unsignedFile(32);
    exchange::JobFile forked = exchange::unsignedFile(33);
    exchange::JobFile other = forked;
    other.record.job.readings.back().by = "somebody else";
    fresh.record.job.number = known.record.job.number;
    const std::filesystem::path from = beside("laptop.sealwalk");
    {
        auto laptop = storage::HistoryStore::open(from, storage::HistoryStore::Mode::Create);
        for (const exchange::JobFile& file : {known, other})
            ASSERT_TRUE(import(*laptop, file));
        ASSERT_TRUE(import(session->history(), known));
        ASSERT_TRUE(import(session->history(), forked));
        ASSERT_TRUE(import(*laptop, fresh));
    }
    QString headline;
    onDialog([&](QDialog& dialog) {
        headline = dialog.findChild<QLabel*>(QStringLiteral("headline"))->text();
        dialog.accept();
    });
    mergeHistory(*window, from);
    ASSERT_TRUE(waitForDialogs());
    EXPECT_TRUE(headline.startsWith(
        QStringLiteral("Jobs that came: 1; that went on: 0; that were here already: 1; not taken in: 1.")))
        << headline.toStdString();
    EXPECT_TRUE(headline.endsWith(QStringLiteral("got another: 1."))) << headline.toStdString();
    EXPECT_EQ(session->history().jobs()->size(), 3U);

    onDialog([&](QDialog& dialog) { // the same again
        headline = dialog.findChild<QLabel*>(QStringLiteral("headline"))->text();
        dialog.accept();
    });
    mergeHistory(*window, from);
    ASSERT_TRUE(waitForDialogs());
    EXPECT_TRUE(headline.startsWith(QStringLiteral("Jobs that came: 0"))) << headline.toStdString();
    EXPECT_FALSE(headline.contains(QStringLiteral("kept their numbers"))) << "regression: nothing had come";

    mergeHistory(*window, historyFile().toStdString());
    EXPECT_TRUE(said().contains(QStringLiteral("This is the history that is open"))) << said().toStdString();
}

// Regression: after Cancel the lists did not show the jobs that had come until then.
TEST_F(ArrivingTest, AMergeThatIsCancelledLeavesWhatCame)
{
    constexpr std::uint64_t kJobs = 25;
    const std::filesystem::path from = beside("laptop.sealwalk");
    {
        auto laptop = storage::HistoryStore::open(from, storage::HistoryStore::Mode::Create);
        for (std::uint64_t seed = 100; seed < 100 + kJobs; ++seed)
            ASSERT_TRUE(import(*laptop, exchange::unsignedFile(seed)));
    }
    const auto here = [&] { return session->history().jobs()->size(); };
    QSignalSpy changed(session.get(), &JobSession::historyChanged);
    mergeHistory(*window, from);
    ASSERT_TRUE(QTest::qWaitFor([&] { return here() > 0; }));
    emit window->noteLine().cancelled();
    EXPECT_FALSE(window->noteLine().isWorking());
    EXPECT_TRUE(said().contains(QStringLiteral("Cancelled"))) << said().toStdString();
    changed.clear();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changed.isEmpty(); }));
    const std::size_t came = here();
    EXPECT_GT(came, 0U);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "nothing is summed up";
    QTest::qWait(100);
    EXPECT_EQ(here(), came) << "it has come to its end";
}

// Regression: a history that could not be opened or read made its signed jobs "not as signed".
TEST_F(ArrivingTest, AJobThatCannotBeCheckedIsNotCalledBent)
{
    const exchange::JobFile whole = exchange::signedFile(31, m_reviewer);
    ASSERT_TRUE(import(session->history(), whole));
    RecordWatch watch(*session);
    watch.setPatience(std::chrono::milliseconds(50));
    const std::filesystem::path file = historyFile().toStdString();
    const std::filesystem::path away = file.string() + ".away";
    const model::JobId job = whole.record.job.id;
    const model::JobId gone = model::JobId::create();
    QSignalSpy told(&watch, &RecordWatch::told);
    int tries = 0;
    QObject::connect(&watch, &RecordWatch::couldNotCheck, &watch, [&] { ++tries; });
    std::filesystem::rename(file, away);
    watch.look({job, gone});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !watch.whyNotChecked(job).empty(); }));
    EXPECT_EQ(watch.wrongWith(job), "");
    EXPECT_TRUE(told.isEmpty());
    EXPECT_GT(tries, 0);
    std::filesystem::rename(away, file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return watch.whyNotChecked(job).empty(); })) << "tried again";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !watch.whyNotChecked(gone).empty(); })) << "never there";
    EXPECT_EQ(watch.wrongWith(job), "");
    EXPECT_EQ(watch.wrongWith(gone), "");
}

} // namespace sealwalk::ui
