// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/joints.h"
#include "core/editing/sheets.h"
#include "core/model/cautions.h"
#include "tests/ui/prepare/prepare_page_fixture.h"
#include "ui/prepare/caution_words.h"
#include "ui/prepare/folding_columns.h"
#include "ui/prepare/rise_dialog.h"
#include "ui/prepare/rise_panel.h"
#include "ui/render/setup_view.h"
#include "ui/widgets/moment_field.h"

#include <QCheckBox>
#include <QDateTime>
#include <QLabel>
#include <QShortcut>
#include <QSignalSpy>
#include <QThread>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

// Property: what is asked beside the measurement is kept; a wrong date keeps the dialog open.
TEST_F(PreparePageTest, PartiesPapersAndInstrumentsCanBeSaid)
{
    inDialog("papers", [](QDialog& dialog) {
        typeIn(dialog, "customer", QStringLiteral("Fennick Optics"));
        typeIn(dialog, "witness", QStringLiteral("Jo Marsh"));
        typeIn(dialog, "serial number and drawing", QStringLiteral("BC2-110 rev. C"));
        typeIn(dialog, "procedure", QStringLiteral("LT-4 rev. 2"));
        typeIn(dialog, "left out on purpose", QStringLiteral("water jacket"));
        typeIn(dialog, "helium bottle", QStringLiteral("142 bar left"));
        typeIn(dialog, "why there is no check afterwards", QStringLiteral("leak was lent"));
        typeIn(dialog, "instrument 1", QStringLiteral("gauge"));
        typeIn(dialog, "number of instrument 1", QStringLiteral("G-7"));
        typeIn(dialog, "instrument 1 is due", QStringLiteral("never"));
        for (QCheckBox* tick : dialog.findChildren<QCheckBox*>())
            tick->click();
        store(dialog);
        EXPECT_TRUE(dialog.isVisible()) << "\"never\" is no date";
        typeIn(dialog, "instrument 1 is due", QStringLiteral("2027-03-01"));
        store(dialog);
    });
    const model::Setup& setup = session.job().setup;
    EXPECT_EQ(setup.customer, "Fennick Optics");
    EXPECT_EQ(setup.witness, "Jo Marsh");
    EXPECT_EQ(setup.procedure, "LT-4 rev. 2");
    EXPECT_EQ(setup.excluded, "water jacket");
    EXPECT_EQ(setup.heliumBottle, "142 bar left");
    EXPECT_EQ(setup.noCheckAfterReason, "leak was lent");
    EXPECT_TRUE(setup.dried);
    EXPECT_TRUE(setup.zeroOn);
    ASSERT_EQ(setup.instruments.size(), 1U);
    EXPECT_EQ(setup.instruments[0].identity, "G-7");
    EXPECT_EQ(setup.instruments[0].due->date(), "2027-03-01");
    EXPECT_EQ(session.object().note, "BC2-110 rev. C");
    const model::Setup before = setup;
    inDialog("papers", [](QDialog& dialog) { store(dialog); });
    EXPECT_EQ(session.job().setup, before) << "looking changes nothing";
}

// Regression: what another window changed while the papers were open was put back as it had been.
TEST_F(PreparePageTest, PapersLeaveAloneWhatWasChangedElsewhereMeanwhile)
{
    inDialog("papers", [this](QDialog& dialog) {
        model::Setup theirs = session.job().setup;
        theirs.pointLimit = millibarLitresPerSecond(5e-6);
        theirs.customer = "Fennick Optics";
        ASSERT_TRUE(session.changeSetup(theirs));
        model::TestObject object = session.object();
        object.volume = litres(510);
        ASSERT_TRUE(session.changeObject(session.object(), object));
        typeIn(dialog, "witness", QStringLiteral("Jo Marsh"));
        store(dialog);
    });
    EXPECT_EQ(session.job().setup.pointLimit, millibarLitresPerSecond(5e-6));
    EXPECT_EQ(session.job().setup.customer, "Fennick Optics");
    EXPECT_EQ(session.job().setup.witness, "Jo Marsh");
    EXPECT_EQ(session.object().volume, litres(510));
}

// Property: the set-up is drawn while it is typed, in words too, and is in sight on a page of 1366 by 644.
TEST_F(PreparePageTest, TheSetupIsDrawnWhileItIsTyped)
{
    auto* view = page->findChild<render::SetupView*>();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->accessibleDescription(),
              QStringLiteral("Box coater 2, 480 l; connection not stated; hose, size not stated; "
                             "detector, not named"));
    type("bore of the hose", "25");
    type("helium speed of the pump in parallel", "80 l/s");
    EXPECT_TRUE(view->accessibleDescription().contains(
        QStringLiteral("hose, bore 25 mm, length not stated; pump in parallel, 80 l/s helium")))
        << view->accessibleDescription().toStdString();
    enterCalibration();
    EXPECT_TRUE(view->accessibleDescription().contains(QStringLiteral("reference leak")));
    QCoreApplication::processEvents();
    EXPECT_EQ(view->visibleRegion().boundingRect(), view->rect());
    EXPECT_GE(view->height(), view->heightForWidth(view->width()));
    page->resize(760, 500); // one column: none of it is cut either
    QCoreApplication::processEvents();
    EXPECT_GE(view->height(), view->heightForWidth(view->width()));
}

// Property: from nothing known to a verdict, each step through the fields a person uses.
TEST_F(PreparePageTest, ComesFromNothingKnownToAVerdict)
{
    EXPECT_EQ(verdict(), "Not known yet what can be seen");
    EXPECT_EQ(page->progressText(), QStringLiteral("limit missing"));
    type("limit for one joint", "1e-6");
    EXPECT_EQ(page->progressText(), QStringLiteral("calibration missing"));
    enterCalibration();
    EXPECT_EQ(page->progressText(), QStringLiteral("background missing"));
    enterBackground();
    EXPECT_EQ(page->progressText(), QStringLiteral("ready to start"));
    EXPECT_EQ(verdict().find("Good to start"), 0U) << verdict();
    type("limit for one joint", "1e-9");
    EXPECT_EQ(verdict().find("Cannot pass anything"), 0U) << verdict();
    type("limit for one joint", "3e-9");
    EXPECT_EQ(verdict().find("Start with care"), 0U) << verdict();
    ASSERT_EQ(session.job().calibrations.size(), 1U);
    EXPECT_EQ(session.job().calibrations[0].leak.entered, "1e-7");
    ASSERT_TRUE(session.job().calibrations[0].response);
    EXPECT_DOUBLE_EQ(inSeconds(*session.job().calibrations[0].response), 2.4);
}

// Property: what is entered is on disk at once, in SI, and comes back in another window.
TEST_F(PreparePageTest, KeepsEveryFieldAtOnce)
{
    type("volume", "0.5 m3");
    type("limit for all together", "5e-5");
    type("helium speed of the detector", "2 l/s");
    type("helium speed of the pump in parallel", "18");
    type("bore of the hose", "25");
    type("length of the hose", "120 cm");
    type("helium share at the joint", "50 %");
    type("helium flow", "0.03");
    type("room temperature", "21.4");
    JobSession again;
    ASSERT_TRUE(again.openHistory(session.historyFile(), false));
    ASSERT_TRUE(again.openJob(session.job().id));
    const model::Setup& setup = again.job().setup;
    EXPECT_NEAR(inLitres(setup.volume.value_or(Volume())), 500.0, 1e-9);
    EXPECT_NEAR(inMillibarLitresPerSecond(setup.totalLimit.value_or(LeakRate())), 5e-5, 1e-15);
    EXPECT_NEAR(inLitresPerSecond(setup.detectorSpeed.value_or(PumpingSpeed())), 2.0, 1e-12);
    EXPECT_NEAR(inLitresPerSecond(setup.auxiliarySpeed.value_or(PumpingSpeed())), 18.0, 1e-12);
    EXPECT_NEAR(inMillimetres(setup.hoseDiameter.value_or(Length())), 25.0, 1e-9);
    EXPECT_NEAR(inMillimetres(setup.hoseLength.value_or(Length())), 1200.0, 1e-9);
    EXPECT_NEAR(setup.heliumShare.si(), 0.5, 1e-12);
    EXPECT_NEAR(setup.heliumFlow.value_or(0.0), 0.03, 1e-12);
    EXPECT_NEAR(inDegreesCelsius(setup.roomTemperature), 21.4, 1e-9);
}

// Property: a wrong entry is explained, changes nothing, and stays to be mended.
TEST_F(PreparePageTest, ExplainsAWrongEntryAndKeepsWhatWasThere)
{
    type("limit for one joint", "1e-6");
    type("limit for one joint", "480 l");
    EXPECT_TRUE(edit("limit for one joint")->isWrong());
    EXPECT_EQ(edit("limit for one joint")->text(), QStringLiteral("480 l"));
    ASSERT_TRUE(session.job().setup.pointLimit);
    EXPECT_NEAR(inMillibarLitresPerSecond(*session.job().setup.pointLimit), 1e-6, 1e-18);
    type("helium share at the joint", "120 %");
    EXPECT_TRUE(edit("helium share at the joint")->isWrong());
}

// Property: the unit shown can change at any time; the value stays, what was typed with a unit stays.
TEST_F(PreparePageTest, ShowsAnotherUnitWithoutChangingTheValue)
{
    type("limit for one joint", "1e-6");
    type("limit for all together", "5e-5 mbar l/s");
    model::Setup setup = session.job().setup;
    setup.unit = "Pa m3/s";
    ASSERT_TRUE(session.changeSetup(setup));
    EXPECT_EQ(edit("limit for one joint")->text(), QString::fromUtf8("1e-7 Pa·m³/s"));
    EXPECT_EQ(edit("limit for all together")->text(), QStringLiteral("5e-5 mbar l/s"));
    EXPECT_NEAR(session.job().setup.pointLimit->si(), 1e-7, 1e-19);
}

// Regression: the dialog shrank by a seventh as soon as a value stood in it, and no key stored from the list.
TEST_F(PreparePageTest, TheBackgroundKeepsItsSizeAndIsStoredByKey)
{
    inDialog("enterBackground", [](QDialog& dialog) {
        QCoreApplication::processEvents();
        const QSize before = dialog.size();
        auto* list = dialog.findChild<QPlainTextEdit*>();
        for (int i = 0; i < 20; ++i) {
            QTest::keyClicks(list, i % 2 == 0 ? QStringLiteral("1.1e-9") : QStringLiteral("9e-10"));
            QTest::keyClick(list, Qt::Key_Return);
        }
        QCoreApplication::processEvents();
        EXPECT_GE(dialog.width(), before.width());
        EXPECT_GE(dialog.height(), before.height());
        for (QShortcut* shortcut : dialog.findChildren<QShortcut*>())
            emit shortcut->activated();
    });
    EXPECT_EQ(session.job().backgrounds.size(), 1u);
}

// Regression: the reference leak of every year was typed anew each year.
TEST_F(PreparePageTest, TakesTheCertificateOfTheJobBefore)
{
    enterCalibration();
    session.closeJob();
    QThread::msleep(2); // the later job is the one opened later
    ASSERT_TRUE(session.createJob(objectId, "yearly check"));
    inDialog("enterCheck", [](QDialog& dialog) {
        const auto labels = dialog.findChildren<QLabel*>();
        EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return label->text().contains(QStringLiteral("as in job 1"));
        })) << "it says where it comes from";
        typeIn(dialog, "shown with the leak shut", QStringLiteral("1e-9"));
        typeIn(dialog, "shown with the leak open", QStringLiteral("6.3e-8"));
        store(dialog);
    });
    ASSERT_EQ(session.job().calibrations.size(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(session.job().calibrations.front().leak.value), 1e-7, 1e-15);
    EXPECT_FALSE(session.job().calibrations.front().response) << "what was measured is measured anew";
}

// Regression: the next yearly job asked for detector and hose from the beginning.
TEST_F(PreparePageTest, TakesTheDetectorOfTheJobBeforeWhenAsked)
{
    auto* asBefore = page->findChild<QPushButton*>(QStringLiteral("asBefore"));
    EXPECT_FALSE(asBefore->isVisible()) << "there is no job before";
    model::Setup setup = session.job().setup;
    setup.detector = "D-12";
    setup.connection = "at the object, alone";
    setup.rangeTop = millibarLitresPerSecond(1e-3);
    setup.response = seconds(100.0);
    ASSERT_TRUE(session.changeSetup(setup));
    session.closeJob();
    QThread::msleep(2); // the later job is the one opened later
    ASSERT_TRUE(session.createJob(objectId, "yearly check"));
    EXPECT_TRUE(session.job().setup.detector.empty()) << "nothing is said for the tester";
    ASSERT_TRUE(asBefore->isVisible());
    asBefore->click();
    EXPECT_EQ(session.job().setup.detector, "D-12");
    EXPECT_EQ(session.job().setup.connection, "at the object, alone");
    EXPECT_EQ(session.job().setup.rangeTop, millibarLitresPerSecond(1e-3));
    EXPECT_FALSE(session.job().setup.response) << "what was measured is measured anew";
    EXPECT_FALSE(asBefore->isVisible());
}

// Regression: a limit widened after the readings was taken without a word here.
TEST_F(PreparePageTest, SaysThatALimitWasChangedAfterAReading)
{
    QStringList notes;
    QObject::connect(page.get(), &PreparePage::noteRequested, page.get(),
                     [&](Severity, const QString& text) { notes.append(text); });
    session.setLogger(QStringLiteral("T. Tester"));
    type("limit for one joint", "1e-6");
    EXPECT_TRUE(notes.isEmpty()) << "it is being agreed";
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = "Door";
    sheet.seenFrom = "the front";
    ASSERT_TRUE(session.edit(editing::addSheet(session.job().sketch, sheet).value()));
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = sheet.id;
    joint.name = "Port";
    joint.shape = geometry::Ring{{600, 600}, 200};
    ASSERT_TRUE(session.edit(
        editing::addJoint(session.job().sketch, joint, editing::Laying{.number = 1, .first = {}}).value()));
    ASSERT_TRUE(session.openRound(model::RoundKind::AsFound, {}));
    ReadingDraft draft;
    draft.point = session.job().sketch.points.front().id;
    draft.outcome = model::Outcome::NoResponse;
    ASSERT_TRUE(session.store(draft));
    type("limit for one joint", "5e-6");
    ASSERT_EQ(notes.size(), 1);
    EXPECT_TRUE(notes.front().contains(QStringLiteral("limit was changed")));
}

// Property: cautions are ticked by name and time; without a name they are not.
TEST_F(PreparePageTest, TicksCautionsOnlyWithAName)
{
    auto* tick = page->findChild<QCheckBox*>(QStringLiteral("cautionsRead"));
    QSignalSpy notes(page.get(), &PreparePage::noteRequested);
    tick->click();
    EXPECT_FALSE(tick->isChecked());
    EXPECT_EQ(notes.count(), 1);
    EXPECT_TRUE(session.job().setup.cautions.empty());
    session.setLogger(QStringLiteral("A. Brandt"));
    tick->click();
    EXPECT_TRUE(tick->isChecked());
    ASSERT_EQ(session.job().setup.cautions.size(), model::cautions().size());
    EXPECT_EQ(session.job().setup.cautions[0].by, "A. Brandt");
    EXPECT_TRUE(session.job().setup.cautions[0].at.isSet());
    tick->click();
    EXPECT_TRUE(session.job().setup.cautions.empty());
}

// Property: a record made of a known leak and known outgassing comes back told apart.
TEST_F(PreparePageTest, JudgesAPressureRise)
{
    QString record = QStringLiteral("time_s,pressure_mbar\n");
    // 480 l with 2e-4 mbar l/s of leak, and walls that give 5e-3 mbar in all with a time of 300 s.
    for (int t = 0; t <= 3600; t += 20) {
        const double pressure = 1e-4 + 2e-4 / 480.0 * t + 5e-3 * (1.0 - std::exp(-t / 300.0));
        record += QStringLiteral("%1,%2\n").arg(t).arg(pressure, 0, 'e', 6);
    }
    QSignalSpy judged(page->findChild<RisePanel*>(), &RisePanel::judged);
    inDialog("enterRise", [&](QDialog& dialog) {
        auto* values = dialog.findChild<QPlainTextEdit*>();
        values->setPlainText(QStringLiteral("time_s,pressure_mbar\n0,1\nx,2\n"));
        EXPECT_FALSE(dialog.findChild<QPushButton*>(QStringLiteral("store"))->isEnabled());
        values->setPlainText(record);
        store(dialog);
    });
    ASSERT_EQ(session.job().riseTests.size(), 1U);
    ASSERT_TRUE(QTest::qWaitFor([&] { return judged.count() > 0; }, 60000));
    EXPECT_EQ(page->findChild<QLabel*>(QStringLiteral("riseVerdict"))->text(),
              QStringLiteral("A leak and outgassing, told apart"));
}

// Regression: in a narrow page (scale 2 on a 1920 px screen) the columns stand under each other and none is
// cut.
TEST_F(PreparePageTest, ColumnsFoldWhereThePageIsNarrow)
{
    auto* columns = page->findChild<FoldingColumns*>();
    ASSERT_NE(columns, nullptr);
    EXPECT_FALSE(columns->isFolded());
    QuantityEdit* limit = edit("limit for one joint");
    limit->field()->setFocus();
    page->resize(960, 430);
    ASSERT_TRUE(QTest::qWaitFor([&] { return columns->isFolded(); }));
    EXPECT_EQ(columns->width(), 960);
    for (const char* name : {"limit for one joint", "helium share at the joint"}) {
        QWidget* field = edit(name)->field();
        EXPECT_TRUE(field->isVisibleTo(page.get())) << name;
        EXPECT_GE(field->mapTo(page.get(), QPoint(0, 0)).x(), 0) << name;
        EXPECT_LE(field->mapTo(page.get(), QPoint(field->width(), 0)).x(), 960) << name;
    }
    page->resize(1366, 644);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !columns->isFolded(); }));
    EXPECT_TRUE(limit->field()->isVisible());
}

// Property: a submitted job is shown and cannot be changed.
TEST_F(PreparePageTest, CannotBeChangedOnceSubmitted)
{
    session.setLogger(QStringLiteral("A. Brandt"));
    ASSERT_TRUE(session.submit("done"));
    EXPECT_FALSE(edit("limit for one joint")->isEnabled());
    EXPECT_FALSE(page->findChild<QPushButton*>(QStringLiteral("enterCheck"))->isEnabled());
    EXPECT_FALSE(page->findChild<QCheckBox*>(QStringLiteral("cautionsRead"))->isEnabled());
}

// Regression: a record that could not be over yet was stored, and only the review asked about it.
TEST(RiseDialog, TakesNoRecordThatWouldEndAfterNow)
{
    RiseDialog dialog{model::Job()};
    dialog.show();
    dialog.findChild<QPlainTextEdit*>()->setPlainText(
        QStringLiteral("time_min,pressure_mbar\n0,1e-5\n5,2e-5\n10,3e-5\n15,4e-5\n20,5e-5\n"));
    auto* store = dialog.findChild<QPushButton*>(QStringLiteral("store"));
    ASSERT_TRUE(store->isEnabled());
    auto* begun = dialog.findChild<MomentField*>();
    const auto storeAt = [&](int minutesAgo) {
        begun->field()->setText(QDateTime::currentDateTime()
                                    .addSecs(-60 * minutesAgo)
                                    .toString(QStringLiteral("yyyy-MM-dd HH:mm")));
        begun->field()->setModified(true);
        store->click();
        return dialog.result() == QDialog::Accepted;
    };
    EXPECT_FALSE(storeAt(3));
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(std::ranges::any_of(dialog.findChildren<QLabel*>(), [](const QLabel* label) {
        return label->text().contains(QStringLiteral("not over yet"));
    }));
    EXPECT_TRUE(storeAt(25));
}

// Regression: a record as left, entered without its beginning, was put before the repair in silence, and the
// review found no pressure rise since.
TEST(RiseDialog, AsksWhenARecordAsLeftWouldLieBeforeTheRepair)
{
    model::Job job;
    model::Repair repair;
    repair.at = Timestamp::now();
    repair.at.utcMilliseconds -= 600'000;
    job.repairs.push_back(repair);
    RiseDialog dialog(job);
    dialog.show();
    auto* record = dialog.findChild<QPlainTextEdit*>();
    auto* store = dialog.findChild<QPushButton*>(QStringLiteral("store"));
    record->setPlainText(QStringLiteral("time_min,pressure_mbar\n0,1e-5\n10,3e-5\n20,5e-5\n"));
    store->click();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(std::ranges::any_of(dialog.findChildren<QLabel*>(), [](const QLabel* label) {
        return label->text().contains(QStringLiteral("before the repair"));
    }));
    record->setPlainText(QStringLiteral("time_min,pressure_mbar\n0,1e-5\n1,3e-5\n2,5e-5\n"));
    store->click();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

// Property: without a catalogue the cautions are the core's own words.
TEST(CautionWords, AreThoseOfTheCore)
{
    for (const model::Caution& caution : model::cautions()) {
        EXPECT_EQ(cautionTitle(caution).toStdString(), caution.title);
        EXPECT_EQ(cautionText(caution).toStdString(), caution.text);
    }
}

} // namespace sealwalk::ui
