// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "tests/support/jobs.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/spray/spray_page.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <QMessageBox>

namespace sealwalk::ui {
namespace {

/// A job at Spray, its history held by another program, and a reading that waits for it.
class Closing : public WindowTest
{
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = "Oven";
        model::Job job = tests::ringJob(4);
        job.object = object.id;
        tests::calibrate(job);
        ASSERT_TRUE(session->history().importJob(object, job, {}).has_value());
        ASSERT_TRUE(session->openJob(job.id).has_value());
        session->setLogger(QStringLiteral("N. Okono"));
        window->showStage(Stage::Spray);
        m_other.emplace(historyFile().toStdString(), SQLite::OPEN_READWRITE);
        lock.emplace(*m_other, SQLite::TransactionBehavior::IMMEDIATE);
        auto* field = window->findChild<QWidget*>(QStringLiteral("sprayField"));
        ASSERT_NE(field, nullptr);
        for (int tries = 0; tries < 3 && unstored().isEmpty(); ++tries) { // the background is asked first
            QTest::keyClicks(field, QStringLiteral("3.2-9"));
            QTest::keyClick(field, Qt::Key_Return);
        }
        ASSERT_FALSE(unstored().isEmpty());
    }
    [[nodiscard]] QString unstored() const { return window->findChild<SprayPage*>()->unstoredInWords(); }
    /// Presses the button of the question whose words begin so.
    void answer(const QString& words)
    {
        onDialog([words](QDialog& dialog) {
            for (QPushButton* button : dialog.findChildren<QPushButton*>())
                if (button->text().remove(QLatin1Char('&')).startsWith(words))
                    QTest::mouseClick(button, Qt::LeftButton);
        });
    }

    std::optional<SQLite::Transaction> lock;

private:
    std::optional<SQLite::Database> m_other;
};

// Regression: a window closed while a reading waited for another program's lock lost it without a word.
TEST_F(Closing, StaysOpenForAReadingThatWaits)
{
    answer(QStringLiteral("Stay"));
    EXPECT_FALSE(window->close());
    ASSERT_TRUE(waitForDialogs());
    EXPECT_TRUE(window->isVisible());
    lock.reset();
    EXPECT_TRUE(QTest::qWaitFor([this] { return unstored().isEmpty(); }, 20000));
    EXPECT_EQ(session->job().readings.size(), 1u);
    EXPECT_TRUE(window->close()) << "nothing waits any more, nothing is asked";
}

TEST_F(Closing, GoesWithoutItWhenToldTo)
{
    answer(QStringLiteral("Close"));
    EXPECT_TRUE(window->close());
    ASSERT_TRUE(waitForDialogs());
    EXPECT_TRUE(session->job().readings.empty());
}

} // namespace
} // namespace sealwalk::ui
