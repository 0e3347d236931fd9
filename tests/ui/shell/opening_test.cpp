// SPDX-License-Identifier: GPL-3.0-or-later
// What the program comes up with after it was stopped.
#include "core/storage/history_store.h"
#include "tests/support/jobs.h"
#include "tests/ui/shell/window_fixture.h"

#include <QAction>

namespace sealwalk::ui {
namespace {

class Opening : public WindowTest
{
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = "Oven";
        job = tests::ringJob(4);
        job.object = object.id;
        tests::calibrate(job);
        ASSERT_TRUE(session->history().importJob(object, job, {}).has_value());
        ASSERT_TRUE(session->openJob(job.id).has_value());
    }

    /// As after a stop: another window with the settings and the history of the first.
    void startAgain()
    {
        window.reset();
        session = std::make_unique<JobSession>();
        window = std::make_unique<MainWindow>(*session, *settings);
        composePages(*window);
        openAtStart(*window, historyFile());
    }

    model::Job job;
};

// Regression: stopped in the middle of a round, the job had to be found in the list again.
TEST_F(Opening, TheJobThatWasOpenGoesOn)
{
    startAgain();
    ASSERT_TRUE(session->hasJob());
    EXPECT_EQ(session->job().id, job.id);
    EXPECT_EQ(window->stage(), Stage::Spray);
}

TEST_F(Opening, AJobThatWasSentMeanwhileIsFoundInTheHistory)
{
    session->setLogger(QStringLiteral("N. Okono"));
    ASSERT_TRUE(session->submit("done").has_value());
    startAgain();
    EXPECT_FALSE(session->hasJob());
    EXPECT_EQ(window->stage(), Stage::History);
}

TEST_F(Opening, AJobThatWasClosedStaysClosed)
{
    for (QAction* action : window->findChildren<QAction*>())
        if (action->text().remove(QLatin1Char('&')) == QStringLiteral("Close the job"))
            action->trigger();
    ASSERT_FALSE(session->hasJob());
    startAgain();
    EXPECT_FALSE(session->hasJob());
}

} // namespace
} // namespace sealwalk::ui
