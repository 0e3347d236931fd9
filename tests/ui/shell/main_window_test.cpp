// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/history/history_lists.h"
#include "ui/history/history_page.h"
#include "ui/shell/corner.h"
#include "ui/shell/key_card.h"
#include "ui/shell/stage_field.h"
#include "ui/shell/stage_strip.h"
#include "ui/widgets/note_line.h"

#include <QAccessible>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QSettings>
#include <QShortcut>

#include <set>

namespace sealwalk::ui {

// Regression: a new job of an object that is checked every year was offered as a fault search.
TEST_F(WindowTest, ANewJobIsOfferedWhatTheLastOneWasFor)
{
    makeObject(QStringLiteral("Oven"));
    const model::ObjectId oven = objectId;
    makeObject(QStringLiteral("Fresh"));
    ASSERT_TRUE(session->createJob(oven, "yearly check").has_value());
    onDialog([&](QDialog& dialog) {
        auto* purpose = dialog.findChild<QComboBox*>(QStringLiteral("purpose"));
        auto* object = dialog.findChildren<QComboBox*>().front();
        EXPECT_EQ(purpose->currentText(), QStringLiteral("yearly check"));
        object->setCurrentIndex(1 - object->currentIndex());
        emit object->activated(object->currentIndex());
        EXPECT_EQ(purpose->currentText(), QStringLiteral("fault search"));
        QTest::keyClicks(purpose->lineEdit(), QStringLiteral("after rebuild"));
        object->setCurrentIndex(1 - object->currentIndex());
        emit object->activated(object->currentIndex());
        EXPECT_EQ(purpose->currentText(), QStringLiteral("after rebuild")) << "what was typed stays";
        dialog.reject();
    });
    window->historyPage().startNewJob(oven);
    ASSERT_TRUE(waitForDialogs());
}

// Property: a job that was written on paper is dated by its work, and its record tells when it was entered; a
// wrong day keeps the dialog open.
TEST_F(WindowTest, AJobEnteredAfterwardsKeepsItsDay)
{
    makeObject(QStringLiteral("Oven"));
    onDialog([&](QDialog& dialog) {
        QLineEdit* begun = nullptr;
        for (QLineEdit* field : dialog.findChildren<QLineEdit*>())
            if (field->accessibleName() == QStringLiteral("begun"))
                begun = field;
        ASSERT_NE(begun, nullptr);
        auto* start = dialog.findChild<QPushButton*>(QStringLiteral("store"));
        begun->setText(QStringLiteral("last year"));
        start->click();
        EXPECT_TRUE(dialog.isVisible());
        begun->setText(QStringLiteral("2025-03-11 09:00"));
        start->click();
    });
    window->historyPage().startNewJob(objectId);
    ASSERT_TRUE(waitForDialogs());
    ASSERT_TRUE(session->hasJob());
    EXPECT_EQ(session->job().opened.date(), "2025-03-11");
    ASSERT_EQ(session->job().review.size(), 1U);
    EXPECT_EQ(session->job().review.front().text,
              "The job was entered on " + Timestamp::now().date() + " for work that began on 2025-03-11.");
}

// Property: from an empty history to an open job by keys alone.
TEST_F(WindowTest, LeadsFromAnEmptyHistoryToAnOpenJobByKeysAlone)
{
    EXPECT_EQ(window->windowTitle(), QStringLiteral("Sealwalk"));
    onDialog([this](QDialog& object) {
        EXPECT_EQ(object.objectName(), QStringLiteral("objectDialog"));
        QTest::keyClicks(object.focusWidget(), QStringLiteral("Box coater 2"));
        QTest::keyClick(object.focusWidget(), Qt::Key_Tab);
        QTest::keyClicks(object.focusWidget(), QStringLiteral("BC-2"));
        QTest::keyClick(object.focusWidget(), Qt::Key_Tab);
        QTest::keyClick(object.focusWidget(), Qt::Key_Tab);
        QTest::keyClicks(object.focusWidget(), QStringLiteral("0.48 m3"));
        QTest::keyClick(object.focusWidget(), Qt::Key_Tab);
        QTest::keyClicks(object.focusWidget(), QStringLiteral("1e-6"));
        onDialog([](QDialog& job) {
            EXPECT_EQ(job.objectName(), QStringLiteral("jobDialog"));
            QTest::keyClicks(job.focusWidget(), QStringLiteral("fault search"));
            QTest::keyClick(job.focusWidget(), Qt::Key_Tab);
            QTest::keyClicks(job.focusWidget(), QStringLiteral("A. Brandt"));
            QTest::keyClick(job.focusWidget(), Qt::Key_Return);
        });
        QTest::keyClick(object.focusWidget(), Qt::Key_Return);
    });
    key(Qt::Key_N);
    ASSERT_TRUE(waitForDialogs());
    ASSERT_TRUE(session->hasJob());
    EXPECT_EQ(session->object().name, "Box coater 2");
    EXPECT_EQ(session->object().tag, "BC-2");
    ASSERT_TRUE(session->object().volume);
    EXPECT_DOUBLE_EQ(inLitres(*session->object().volume), 480.0);
    ASSERT_TRUE(session->job().setup.pointLimit);
    EXPECT_NEAR(inMillibarLitresPerSecond(*session->job().setup.pointLimit), 1e-6, 1e-18);
    EXPECT_EQ(session->logger(), QStringLiteral("A. Brandt"));
    EXPECT_TRUE(window->windowTitle().startsWith(QStringLiteral("Box coater 2 – job ")));

    JobSession again;
    ASSERT_TRUE(again.openHistory(historyFile().toStdString(), false));
    EXPECT_EQ(again.history().jobs()->size(), 1U);
}

// Regression: on a screen enlarged to 683 x 384 the window opened as designed, far beyond it; so did one
// whose place was kept at another scaling.
TEST_F(WindowTest, OpensWithinTheScreen)
{
    const QSize screen = window->screen()->availableSize();
    ASSERT_LT(screen.width(), 1366) << "the offscreen display";
    JobSession again;
    const MainWindow first(again, *settings);
    EXPECT_LE(first.width(), screen.width());
    EXPECT_LE(first.height(), screen.height());
    window->resize(2732, 1480);
    window->close(); // keeps its place
    const MainWindow next(again, *settings);
    EXPECT_LE(next.width(), screen.width());
    EXPECT_LE(next.height(), screen.height());
    EXPECT_TRUE(next.windowState().testFlag(Qt::WindowMaximized));
}

// Property: who was logging is known at the next start.
TEST_F(WindowTest, KeepsWhoWasLogging)
{
    session->setLogger(QStringLiteral("N. Ight"));
    JobSession again;
    const MainWindow next(again, *settings);
    EXPECT_EQ(again.logger(), QStringLiteral("N. Ight"));
}

// Regression: Enter in the purpose, as it is offered, starts the job.
TEST_F(WindowTest, StartsAJobByOneEnter)
{
    makeObject(QStringLiteral("Furnace"));
    onDialog([](QDialog& job) { QTest::keyClick(job.focusWidget(), Qt::Key_Return); });
    window->historyPage().startNewJob(objectId);
    ASSERT_TRUE(waitForDialogs());
    ASSERT_TRUE(session->hasJob());
    EXPECT_EQ(session->job().setup.purpose, "fault search");
}

// Property: an entry that cannot be taken keeps the dialog open and the history empty.
TEST_F(WindowTest, DoesNotMakeAnObjectOutOfAWrongEntry)
{
    onDialog([](QDialog& dialog) {
        QTest::keyClicks(dialog.focusWidget(), QStringLiteral("Coater"));
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
        QTest::keyClicks(dialog.focusWidget(), QStringLiteral("480 kg"));
        dialog.findChild<QPushButton*>(QStringLiteral("store"))->click();
        EXPECT_TRUE(dialog.isVisible());
        dialog.reject();
    });
    key(Qt::Key_N);
    ASSERT_TRUE(waitForDialogs());
    EXPECT_TRUE(session->history().objects()->empty());
}

// Property: the theme goes round by F9 and is remembered.
TEST_F(WindowTest, ChangesTheThemeByKeyAndRemembersIt)
{
    const QColor paper = render::Theme::current().colour(render::Role::Panel);
    key(Qt::Key_F9);
    EXPECT_EQ(settings->theme(), render::ThemeName::Slate);
    EXPECT_NE(render::Theme::current().colour(render::Role::Panel), paper);
    EXPECT_EQ(qApp->palette().color(QPalette::Window), render::Theme::current().colour(render::Role::Panel));
    key(Qt::Key_F9);
    EXPECT_EQ(settings->theme(), render::ThemeName::Hall);
    key(Qt::Key_F9);
    EXPECT_EQ(settings->theme(), render::ThemeName::Paper);
    EXPECT_EQ(render::Theme::current().colour(render::Role::Panel), paper);
}

// Property: the key card comes and goes with F1.
TEST_F(WindowTest, ShowsTheKeysOfTheStageOverThePage)
{
    key(Qt::Key_F1);
    ASSERT_NE(window->findChild<KeyCard*>(), nullptr);
    key(Qt::Key_F1);
    EXPECT_EQ(window->findChild<KeyCard*>(), nullptr);
}

// Regression: the card took the keyboard along when it went: the button in hand answered no key any more, and
// after the next dialog the unit of the job was in hand.
TEST_F(WindowTest, TheKeyCardGivesTheKeyboardBack)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    window->showStage(Stage::Prepare);
    auto* limit = window->findChild<QWidget*>(QStringLiteral("pointLimit"));
    ASSERT_NE(limit, nullptr);
    for (const Qt::Key away : {Qt::Key_F1, Qt::Key_Escape}) {
        limit->setFocus();
        QWidget* inHand = QApplication::focusWidget();
        ASSERT_NE(inHand, nullptr);
        key(Qt::Key_F1);
        ASSERT_NE(QApplication::focusWidget(), inHand);
        QTest::keyClick(QApplication::focusWidget(), away);
        EXPECT_EQ(QApplication::focusWidget(), inHand) << away;
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_EQ(window->findChild<KeyCard*>(), nullptr);
    }
}

// Property: a stage that needs a job says so instead of showing nothing.
TEST_F(WindowTest, KeepsStagesShutUntilAJobIsOpen)
{
    makeObject(QStringLiteral("Furnace"));
    for (const Stage stage : kStages) {
        const StageField* field = window->strip().field(stage);
        EXPECT_EQ(field != nullptr && field->isEnabled(), stage == Stage::History)
            << stageTitle(stage).toStdString();
    }
    EXPECT_EQ(window->stage(), Stage::History);
    ASSERT_TRUE(session->createJob(objectId, "check"));
    for (const Stage stage : kStages) {
        const StageField* field = window->strip().field(stage);
        EXPECT_TRUE(field == nullptr || field->isEnabled()) << stageTitle(stage).toStdString();
    }
    session->closeJob();
    EXPECT_EQ(window->stage(), Stage::History);
}

// Regression: every reading of another window searched all objects and jobs here, though nobody saw the
// lists.
TEST_F(WindowTest, TheListsAreSearchedWhenTheyAreSeen)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    window->showStage(Stage::Sketch);
    auto* lists = window->findChild<HistoryLists*>();
    ASSERT_NE(lists, nullptr);
    const int before = lists->jobCount();
    ASSERT_TRUE(session->createJob(objectId, "second check"));
    window->showStage(Stage::Sketch);
    EXPECT_EQ(lists->jobCount(), before);
    window->showStage(Stage::History);
    EXPECT_EQ(lists->jobCount(), 2);
}

// Property: the unit chosen is the job's, and stored.
TEST_F(WindowTest, KeepsTheUnitChosenWithTheJob)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    auto* units = window->corner().findChild<QComboBox*>();
    ASSERT_TRUE(units->isEnabled());
    const int index = units->findData(QStringLiteral("Pa m3/s"));
    ASSERT_GE(index, 0);
    units->setCurrentIndex(index);
    emit units->activated(index);
    EXPECT_EQ(session->job().setup.unit, "Pa m3/s");
}

// Property: so is the gas that leaks are shown as.
TEST_F(WindowTest, KeepsTheGasChosenWithTheJob)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    QComboBox* gas = nullptr;
    for (QComboBox* box : window->corner().findChildren<QComboBox*>())
        if (box->accessibleName() == QStringLiteral("gas shown"))
            gas = box;
    ASSERT_NE(gas, nullptr);
    const int index = gas->findText(QStringLiteral("as air"));
    ASSERT_GE(index, 0);
    gas->setCurrentIndex(index);
    emit gas->activated(index);
    EXPECT_EQ(session->job().setup.gasBasis, model::GasBasis::Air);
}

// Property: a failure is told with its remedy and stays in the last ten.
TEST_F(WindowTest, TellsAFailureWithItsRemedy)
{
    window->report(Error{ErrorCode::Conflict, "somebody else changed the sketch"});
    EXPECT_EQ(window->noteLine().severity(), Severity::Error);
    EXPECT_EQ(window->noteLine().text(), QStringLiteral("Somebody else changed the sketch."));
    EXPECT_FALSE(window->noteLine().lastTen().front().aside.isEmpty());
    window->report(Error{ErrorCode::Cancelled, "stopped"});
    EXPECT_EQ(window->noteLine().severity(), Severity::News);
}

// Property: whatever takes the focus has a name for a screen reader.
TEST_F(WindowTest, NamesEverythingThatTakesTheFocus)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    for (const Stage stage : kStages) {
        if (window->page(stage) == nullptr)
            continue;
        window->showStage(stage);
        for (QWidget* widget : window->findChildren<QWidget*>()) {
            if ((widget->focusPolicy() & Qt::TabFocus) == 0 || !widget->isVisible() ||
                widget->inherits("QMenuBar") || widget->inherits("QTabBar") ||
                widget->inherits("QScrollArea"))
                continue;
            // The field inside a combo box and the like speak for their owner.
            if (widget->focusProxy() != nullptr || widget->inherits("QExpandingLineEdit"))
                continue;
            QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(face, nullptr);
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty())
                << stageKey(stage).toStdString() << ": " << widget->metaObject()->className() << " "
                << widget->objectName().toStdString();
        }
    }
}

// Regression: after Del and Ctrl+Z the note still said that point 1 was retired and offered what had just
// been done; with nothing to take back the note advised to look the name up in History.
TEST_F(WindowTest, SaysWhatWasUndone)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    window->showStage(Stage::Sketch);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->noteLine().text(), QStringLiteral("There is nothing to undo."));
    key(Qt::Key_T, Qt::ControlModifier); // a new sheet
    ASSERT_EQ(session->job().sketch.sheets.size(), 1U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(session->job().sketch.sheets.empty());
    EXPECT_TRUE(window->noteLine().text().startsWith(QLatin1String("Undone: sheet \"Sheet 1\" added.")))
        << window->noteLine().text().toStdString();
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(window->noteLine().text(), QStringLiteral("Done again: sheet \"Sheet 1\" added."));
}

// Property: what the sheet's keys do stands in the menu, for that stage only, and does it.
TEST_F(WindowTest, TellsTheKeysOfTheSheetInTheMenu)
{
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    window->showStage(Stage::Sketch);
    const auto command = [&](const char* text) {
        for (QAction* action : window->findChildren<QAction*>())
            if (action->text().remove(QLatin1Char('&')).section(QLatin1Char('\t'), 0, 0) ==
                QLatin1String(text))
                return action;
        return static_cast<QAction*>(nullptr);
    };
    for (const char* text :
         {"Copy", "Cut", "Paste", "Select all", "Group", "Ungroup", "Lock or unlock", "Mirror", "Turn left",
          "Turn right", "Retire or delete", "Renumber", "Reverse the sense", "Number from here"}) {
        window->showStage(Stage::Sketch);
        ASSERT_NE(command(text), nullptr) << text;
        EXPECT_TRUE(command(text)->isEnabled()) << text;
        window->showStage(Stage::Judge);
        EXPECT_FALSE(command(text)->isEnabled()) << text;
    }
    window->showStage(Stage::Sketch);
    key(Qt::Key_T, Qt::ControlModifier);
    key(Qt::Key_S);
    key(Qt::Key_Space);
    key(Qt::Key_V);
    command("Select all")->trigger();
    command("Lock or unlock")->trigger();
    ASSERT_EQ(session->job().sketch.joints.size(), 1U);
    EXPECT_TRUE(session->job().sketch.joints.front().locked);
    command("Copy")->trigger();
    command("Paste")->trigger();
    EXPECT_EQ(session->job().sketch.joints.size(), 2U);
}

// Property: no two commands share a key.
TEST_F(WindowTest, GivesEachKeyOneMeaning)
{
    std::set<QString> taken;
    for (const QAction* action : window->findChildren<QAction*>()) {
        const QString key = action->shortcut().toString();
        if (key.isEmpty() || !action->isVisible())
            continue;
        EXPECT_TRUE(taken.insert(key).second) << key.toStdString() << " " << action->text().toStdString();
    }
    EXPECT_GE(taken.size(), 15U);
    // Regression: Ctrl+P of the sketch page and of the menu silenced each other.
    makeObject(QStringLiteral("Furnace"));
    ASSERT_TRUE(session->createJob(objectId, "check"));
    for (const Stage stage : kStages) {
        window->showStage(stage);
        std::set<QString> here;
        for (const QAction* action : window->findChildren<QAction*>())
            if (action->isEnabled() && action->isVisible() && !action->shortcut().isEmpty())
                here.insert(action->shortcut().toString());
        for (const QShortcut* shortcut : window->page(stage)->findChildren<QShortcut*>())
            EXPECT_FALSE(here.contains(shortcut->key().toString()))
                << stageKey(stage).toStdString() << " " << shortcut->key().toString().toStdString();
    }
}

// Property: F6 leads through the parts of the window and comes round.
TEST_F(WindowTest, LeadsTheFocusFromPartToPart)
{
    makeObject(QStringLiteral("Furnace"));
    std::set<QWidget*> seen;
    for (int i = 0; i < 6; ++i) {
        key(Qt::Key_F6);
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        seen.insert(QApplication::focusWidget());
    }
    EXPECT_GE(seen.size(), 3U);
    EXPECT_LT(seen.size(), 6U);
}

// Regression: on a wide screen "on disk 14:02:11" was written over the state of the feed.
TEST_F(WindowTest, TheCornerKeepsItsRoomWhateverItSays)
{
    window->resize(1900, 1000);
    QCoreApplication::processEvents();
    const int before = window->corner().sizeHint().width();
    makeObject(QStringLiteral("Vessel")); // stored, which the corner says
    QCoreApplication::processEvents();
    EXPECT_EQ(window->corner().sizeHint().width(), before);
    EXPECT_GE(window->corner().width(), window->corner().minimumSizeHint().width());
}

// Regression: pages that were never shown kept the dividers of no layout at all; next time Judge had two
// rows.
TEST_F(WindowTest, KeepsTheDividersOfPagesThatWereShown)
{
    window->close();
    const QString file = QFileInfo(historyFile()).dir().filePath(QStringLiteral("window.ini"));
    window.reset();
    settings.reset(); // written
    const QSettings kept(file, QSettings::IniFormat);
    for (const QString& key : kept.allKeys())
        if (key.startsWith(QStringLiteral("dividers/"))) {
            EXPECT_TRUE(key.startsWith(QStringLiteral("dividers/history"))) << key.toStdString();
        }
}

} // namespace sealwalk::ui
