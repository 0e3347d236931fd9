// SPDX-License-Identifier: GPL-3.0-or-later
// Measurements of Prepare: when they were made, and made void.
#include "tests/ui/prepare/prepare_page_fixture.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>

namespace sealwalk::ui {

// Regression: the "now" of a record already typed was taken for its beginning, in the midst of the sprays.
TEST_F(PreparePageTest, ARiseRecordThatIsWholeEndsNow)
{
    const Timestamp before = Timestamp::now();
    inDialog("enterRise", [](QDialog& dialog) {
        dialog.findChild<QPlainTextEdit*>()->setPlainText(
            QStringLiteral("time_s,pressure_mbar\n0,1e-3\n60,2e-3\n120,3e-3\n180,4e-3\n240,5e-3\n"));
        store(dialog);
    });
    ASSERT_EQ(session.job().riseTests.size(), 1U);
    const double since = before.secondsSince(session.job().riseTests.front().at);
    EXPECT_GT(since, 200.0);
    EXPECT_LE(since, 240.0);
}

// Regression: a job written on paper last year could be typed in, but its checks and watches became today's.
TEST_F(PreparePageTest, WhatWasMeasuredEarlierKeepsItsDay)
{
    inDialog("enterCheck", [](QDialog& dialog) {
        typeIn(dialog, "certified value", QStringLiteral("1e-7"));
        typeIn(dialog, "date of the certificate", QStringLiteral("2024-10-01"));
        typeIn(dialog, "shown with the leak shut", QStringLiteral("1e-9"));
        typeIn(dialog, "shown with the leak open", QStringLiteral("6.3e-8"));
        typeIn(dialog, "when it was measured", QStringLiteral("2199-01-01 10:00"));
        store(dialog);
        EXPECT_TRUE(dialog.isVisible()) << "not yet";
        typeIn(dialog, "when it was measured", QStringLiteral("2025-03-11"));
        store(dialog);
        EXPECT_TRUE(dialog.isVisible()) << "no time";
        typeIn(dialog, "when it was measured", QStringLiteral("2025-03-11 09:05"));
        typeIn(dialog, "remark", QStringLiteral("valve throttled"));
        store(dialog);
    });
    ASSERT_EQ(session.job().calibrations.size(), 1U);
    const model::Calibration& check = session.job().calibrations.front();
    EXPECT_EQ(check.at.date(), "2025-03-11");
    EXPECT_EQ(check.at.timeOfDay().substr(0, 5), "09:05");
    EXPECT_TRUE(check.note.starts_with("valve throttled; entered ")) << "the record tells both";
    inDialog("enterBackground", [](QDialog& dialog) {
        dialog.findChild<QPlainTextEdit*>()->setPlainText(
            QStringLiteral("1e-9\n1.1e-9\n9e-10\n").repeated(8));
        typeIn(dialog, "when it was measured", QStringLiteral("11.3.2025 0912"));
        store(dialog);
    });
    ASSERT_EQ(session.job().backgrounds.size(), 1U);
    EXPECT_EQ(session.job().backgrounds.front().at.timeOfDay().substr(0, 5), "09:12");
    EXPECT_NE(session.job().backgrounds.front().source.find("typed, entered "), std::string::npos);
    inDialog("enterRise", [](QDialog& dialog) {
        dialog.findChild<QPlainTextEdit*>()->setPlainText(
            QStringLiteral("time_s,pressure_mbar\n0,1e-3\n60,2e-3\n120,3e-3\n180,4e-3\n240,5e-3\n"));
        typeIn(dialog, "when the gas was shut in; now: it ends now", QStringLiteral("2025-03-11 16:00"));
        store(dialog);
    });
    ASSERT_EQ(session.job().riseTests.size(), 1U);
    EXPECT_EQ(session.job().riseTests.front().at.date(), "2025-03-11");
    enterBackground();
    EXPECT_EQ(session.job().backgrounds.back().at.date(), Timestamp::now().date()) << "nothing typed: now";
}

// Regression: the head line of a record had to be typed by hand.
TEST_F(PreparePageTest, ARiseIsTypedAsBareNumbers)
{
    inDialog("enterRise", [](QDialog& dialog) {
        const auto box = [&](const char* name) {
            for (auto* each : dialog.findChildren<QComboBox*>())
                if (each->accessibleName() == QLatin1String(name))
                    return each;
            return static_cast<QComboBox*>(nullptr);
        };
        auto* record = dialog.findChild<QPlainTextEdit*>();
        record->setPlainText(QStringLiteral("time_s,pressure_mbar\n0,1e-3\n60,2e-3\n"));
        EXPECT_FALSE(box("unit of time")->isVisible()) << "the head line says it";
        record->setPlainText(QStringLiteral("0 1e-3\n1 2e-3\n2 3e-3\n3 4e-3\n4 5e-3\n"));
        ASSERT_TRUE(box("unit of time")->isVisible());
        box("unit of time")->setCurrentText(QStringLiteral("min"));
        box("unit of pressure")->setCurrentText(QStringLiteral("Pa"));
        store(dialog);
    });
    ASSERT_EQ(session.job().riseTests.size(), 1U);
    EXPECT_EQ(session.job().riseTests.front().times, (std::vector<double>{0, 60, 120, 180, 240}));
    EXPECT_EQ(session.job().riseTests.front().pressures, (std::vector<double>{1e-3, 2e-3, 3e-3, 4e-3, 5e-3}));
}

// Regression: a wrong measurement could not be taken out again; its consequences stayed in every figure.
TEST_F(PreparePageTest, WhatWasMeasuredWronglyIsMadeVoid)
{
    session.setLogger(QStringLiteral("T. Tester"));
    enterCalibration();
    enterBackground();
    inDialog("enterRise", [](QDialog& dialog) {
        dialog.findChild<QPlainTextEdit*>()->setPlainText(
            QStringLiteral("time_s,pressure_mbar\n0,1e-3\n60,2e-3\n120,3e-3\n180,4e-3\n240,5e-3\n"));
        store(dialog);
    });
    for (const char* button : {"voidCheck", "voidBackground", "voidRise"}) {
        inDialog(button, [&](QDialog& dialog) {
            auto* reason = dialog.findChild<QLineEdit*>(QStringLiteral("voidReason"));
            auto* ok = dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
            EXPECT_FALSE(ok->isEnabled()) << "it takes a reason";
            reason->setText(QStringLiteral("typed a decade off"));
            ok->click();
        });
    }
    const model::Job& job = session.job();
    ASSERT_EQ(job.voidMeasurements.size(), 3U);
    EXPECT_EQ(job.voidMeasurements.back().measurement.uuid(), job.riseTests.front().id.uuid());
    EXPECT_EQ(job.voidMeasurements.back().reason, "typed a decade off");
    EXPECT_EQ(job.voidMeasurements.back().by, session.logger().toStdString());
    EXPECT_TRUE(job.standingCalibrations().empty());
    EXPECT_TRUE(job.standingBackgrounds().empty());
    EXPECT_TRUE(job.standingRiseTests().empty());
    EXPECT_FALSE(page->findChild<QPushButton*>(QStringLiteral("voidCheck"))->isEnabled()) << "void already";
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("riseVerdict"))
                    ->text()
                    .startsWith(QStringLiteral("Void: typed a decade off")));
    enterCalibration();
    EXPECT_EQ(session.job().standingCalibrations().size(), 1U);
    EXPECT_TRUE(page->findChild<QPushButton*>(QStringLiteral("voidCheck"))->isEnabled());
}

} // namespace sealwalk::ui
