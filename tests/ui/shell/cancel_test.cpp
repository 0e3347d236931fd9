// SPDX-License-Identifier: GPL-3.0-or-later
// The Cancel of long work, by its button and by its key: nothing is written, and the window goes on.
#include "demo/history/demo_history.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/judge/map_panel.h"
#include "ui/session/beside.h"
#include "ui/widgets/note_line.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QMenu>
#include <QMenuBar>
#include <QSet>

namespace sealwalk::ui {

namespace {

class CancelTest : public WindowTest
{
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        ASSERT_TRUE(m_written.isValid());
        const QString file = m_demo.filePath(QStringLiteral("demo.sealwalk"));
        ASSERT_TRUE(demo::writeDemoHistory(file.toStdString()).has_value());
        openHistory(*window, file, false);
        const auto job = session->history().findJob("164");
        ASSERT_TRUE(job.has_value());
        ASSERT_TRUE(session->openJob(*job).has_value());
        window->showStage(Stage::Judge);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !session->isWorkingOut(); }, kPatience));
    }

    /// Starts the work of a menu's action, the file typed into the dialog; returns before any of it came
    /// back.
    void start(const char* words, const QString& name, int kind = 0)
    {
        QTimer::singleShot(0, window.get(), [this, name, kind] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            dialog->selectNameFilter(dialog->nameFilters().at(kind));
            dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(m_written.filePath(name));
            dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Save)->click();
        });
        trigger(words);
    }

    void trigger(const char* words)
    {
        QAction* wanted = nullptr;
        for (QAction* menu : window->menuBar()->actions())
            for (QAction* action : menu->menu()->actions())
                if (action->text() == QString::fromUtf8(words))
                    wanted = action;
        ASSERT_NE(wanted, nullptr) << words;
        wanted->trigger();
    }

    [[nodiscard]] bool endsInTime() const
    {
        return QTest::qWaitFor([this] { return window->findChildren<BesideRun*>().isEmpty(); }, kPatience);
    }

    [[nodiscard]] QStringList written() const
    {
        return QDir(m_written.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    }

    [[nodiscard]] QPushButton* cancelButton() const
    {
        for (auto* button : window->noteLine().findChildren<QPushButton*>())
            if (button->text() == QStringLiteral("Cancel"))
                return button;
        return nullptr;
    }

    [[nodiscard]] QString pathOf(const char* name) const
    {
        return m_written.filePath(QString::fromLatin1(name));
    }

    static constexpr int kPatience = 60000;

private:
    QTemporaryDir m_demo;
    QTemporaryDir m_written;
};

struct Work
{
    const char* action;
    const char* file;
    int kind; ///< which of the dialog's forms
};

constexpr Work kWorks[] = {
    {"&Report as PDF, blank sheet in Sketch …", "report.pdf", 0},
    {"&Export table or map …", "findings.csv", 0},
    {"&Export table or map …", "readings.csv", 1},
    {"&Export table or map …", "tables.xlsx", 2},
    {"&Export table or map …", "map.svg", 3},
    {"&Export table or map …", "map.png", 4},
    {"&Write a job file …", "job.sealjob", 0},
    {"&Back up the history …", "copy.sealwalk", 0},
};

// Regression: both tables were offered under one name, so that the second would have replaced the first.
TEST_F(CancelTest, EveryFormHasItsOwnName)
{
    QStringList names;
    QTimer::singleShot(0, window.get(), [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        const auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        for (const QString& form : dialog->nameFilters()) {
            dialog->selectNameFilter(form);
            emit dialog->filterSelected(form);
            names.append(name->text());
        }
        dialog->reject();
    });
    trigger("&Export table or map …");
    ASSERT_EQ(names.size(), 5);
    EXPECT_EQ(QSet<QString>(names.begin(), names.end()).size(), 5)
        << names.join(QLatin1Char(' ')).toStdString();
    EXPECT_TRUE(names[1].endsWith(QStringLiteral("-readings.csv")));
    EXPECT_TRUE(names[3].endsWith(QStringLiteral(".svg")));
}

// Regression: the map written from Judge was the one as left, whatever was looked at.
TEST_F(CancelTest, TheMapIsTheOneThatIsLookedAt)
{
    auto* map = window->findChild<MapPanel*>();
    ASSERT_NE(map, nullptr);
    const auto written = [&](const QString& name) {
        start("&Export table or map …", name, 3);
        EXPECT_TRUE(endsInTime());
        QFile file(pathOf(name.toLatin1().constData()));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return QString::fromUtf8(file.readAll());
    };
    if (map->asLeft())
        map->toggleStanding();
    EXPECT_TRUE(written(QStringLiteral("found.svg")).contains(QStringLiteral("as found, as read")));
    map->toggleStanding();
    EXPECT_TRUE(written(QStringLiteral("left.svg")).contains(QStringLiteral("as left, as read")));
}

} // namespace

// Property: Cancel leaves nothing behind, says so, and the same work done again afterwards is whole.
TEST_F(CancelTest, LeavesNothingBehindAndTheWindowGoesOn)
{
    QStringList expected;
    for (const Work& work : kWorks) {
        SCOPED_TRACE(work.file);
        start(work.action, QString::fromLatin1(work.file), work.kind);
        ASSERT_TRUE(window->noteLine().isWorking()) << "it goes on beside the window";
        ASSERT_NE(cancelButton(), nullptr);
        EXPECT_TRUE(cancelButton()->isVisible());
        QTest::mouseClick(cancelButton(), Qt::LeftButton);
        EXPECT_FALSE(window->noteLine().isWorking());
        EXPECT_EQ(window->noteLine().text(), QStringLiteral("Cancelled; nothing was written."));
        ASSERT_TRUE(endsInTime());
        EXPECT_EQ(written(), expected);
        // The word may have gone by now, on a slow machine; none may have come that it was written.
        EXPECT_FALSE(window->noteLine().text().contains(QString::fromLatin1(work.file)));

        start(work.action, QString::fromLatin1(work.file), work.kind);
        ASSERT_TRUE(endsInTime());
        EXPECT_TRUE(window->noteLine().text().contains(QString::fromLatin1(work.file)))
            << window->noteLine().text().toStdString();
        expected.append(QString::fromLatin1(work.file));
        expected.sort();
        EXPECT_EQ(written(), expected);
    }
}

// Regression: the key card promised that Esc cancels the work; it did nothing.
TEST_F(CancelTest, EscCancelsToo)
{
    start("&Write a job file …", QStringLiteral("job.sealjob"));
    ASSERT_TRUE(window->noteLine().isWorking());
    key(Qt::Key_Escape);
    EXPECT_FALSE(window->noteLine().isWorking());
    ASSERT_TRUE(endsInTime());
    EXPECT_EQ(written(), QStringList());
}

// Property: a second piece of work waits for the first and says so.
TEST_F(CancelTest, OneAtATime)
{
    start("&Back up the history …", QStringLiteral("copy.sealwalk"));
    ASSERT_TRUE(window->noteLine().isWorking());
    start("&Write a job file …", QStringLiteral("job.sealjob"));
    ASSERT_TRUE(endsInTime());
    EXPECT_EQ(written(), QStringList{QStringLiteral("copy.sealwalk")});
}

// Property: the table that is chosen is the one that is written: findings by round, or every reading.
TEST_F(CancelTest, TheReadingsAreWrittenToo)
{
    start("&Export table or map …", QStringLiteral("readings.csv"), 1);
    ASSERT_TRUE(endsInTime());
    start("&Export table or map …", QStringLiteral("findings.csv"), 0);
    ASSERT_TRUE(endsInTime());
    const auto lines = [this](const char* name) {
        QFile file(pathOf(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().trimmed().split('\n');
    };
    EXPECT_EQ(lines("readings.csv").size(), static_cast<qsizetype>(session->job().readings.size()) + 1);
    EXPECT_NE(lines("readings.csv").front(), lines("findings.csv").front());
}

} // namespace sealwalk::ui
