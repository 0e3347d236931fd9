// SPDX-License-Identifier: GPL-3.0-or-later
// What a reading lacks is seen at once; a delay and the end of the range are typed where they are asked for;
// every condition with a reading and every point put off has its row.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/spray/call_head.h"
#include "ui/spray/read_back.h"
#include "ui/spray/walk_model.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QLocale>

namespace sealwalk::ui {
namespace {

class EntryMarks : public SprayPageTest
{
protected:
    void SetUp() override
    {
        SprayPageTest::SetUp();
        QObject::connect(&controller(), &SprayController::said, page.get(),
                         [this](SprayController::Weight, const QString& text) { said << text; });
    }
    [[nodiscard]] QAbstractItemModel& rows() const
    {
        return *page->findChild<QListView*>(QStringLiteral("walkList"))->model();
    }
    [[nodiscard]] QString row(int at) const
    {
        return rows().index(at, 0).data(Qt::AccessibleTextRole).toString();
    }
    [[nodiscard]] QString gapLine() const
    {
        const auto* line = page->findChild<QLabel*>(QStringLiteral("gapLine"));
        return line == nullptr ? QStringLiteral("no such line") : line->text();
    }
    [[nodiscard]] QString head() const { return page->findChild<CallHead*>()->accessibleDescription(); }
    [[nodiscard]] model::PointId point(int number) const
    {
        return history.session.job().sketch.pointNumbered(number)->id;
    }
    void typeBackground()
    {
        press(Qt::Key_B);
        enterValue(QStringLiteral("1-10"));
    }

    QStringList said;
};

// Regression: a spray shorter than the response time was seen by nobody before the sign-off.
TEST_F(EntryMarks, AShortSprayIsMarkedBeforeAndAfterItIsStored)
{
    typeBackground();
    press(Qt::Key_Space);
    QTest::qWait(120);
    press(Qt::Key_Space);
    EXPECT_TRUE(gapLine().contains(QStringLiteral("shorter than the response"))) << gapLine().toStdString();
    EXPECT_TRUE(gapLine().contains(QStringLiteral("Space sprays again"))) << gapLine().toStdString();
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_EQ(stored(), 1u) << "no key more than before";
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().startsWith(QStringLiteral("1 stored"))) << said.last().toStdString();
    EXPECT_TRUE(said.last().contains(QStringLiteral("shorter than the response")));
    EXPECT_TRUE(row(0).contains(QStringLiteral("marked: sprayed 0."))) << row(0).toStdString();
    EXPECT_FALSE(row(1).contains(QStringLiteral("marked")));
}

// Regression: "no response" without any spray and without a background passed as a whole reading.
TEST_F(EntryMarks, ANoResponseWithoutSprayAndBackgroundIsMarked)
{
    press(Qt::Key_N);
    ASSERT_EQ(stored(), 1u);
    EXPECT_TRUE(said.last().contains(QStringLiteral("no background before it"))) << said.last().toStdString();
    EXPECT_TRUE(row(0).contains(QStringLiteral("no background before it"))) << row(0).toStdString();
    EXPECT_TRUE(row(0).contains(QStringLiteral("spray not timed")));
}

// Regression: a point that had answered after 12 s was asked for 9 s of helium like any other.
TEST_F(EntryMarks, WhereAPointAnsweredLateTheHeliumStaysOnLonger)
{
    typeBackground();
    press(Qt::Key_Space);
    const double usual = controller().machine().times().dwell;
    press(Qt::Key_Space);
    enterValue(QStringLiteral("3.2-9"));
    press(Qt::Key_C); // its clock did not run for twelve seconds in a test
    type(QStringLiteral("d"));
    enterValue(QStringLiteral("12"));
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_EQ(stored(), 2u);
    ASSERT_TRUE(last().delay);
    controller().callPoint(point(1));
    controller().goOnAnyway();
    said.clear();
    press(Qt::Key_Space);
    EXPECT_NEAR(controller().machine().times().dwell, usual + 12.0, 1e-9);
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().contains(QStringLiteral("answered late before"))) << said.last().toStdString();
    press(Qt::Key_Space);
    EXPECT_TRUE(gapLine().contains(QStringLiteral("had answered after 12"))) << gapLine().toStdString();
    // Regression: silence after a short spray was stored at once, and only then said to prove nothing.
    const auto before = stored();
    press(Qt::Key_N);
    EXPECT_EQ(stored(), before) << "asked first";
    EXPECT_TRUE(said.last().contains(QStringLiteral("answered late before"))) << said.last().toStdString();
    press(Qt::Key_N);
    EXPECT_EQ(stored(), before + 1);
}

// Regression: a technician working by keys alone pressed Space a moment too early, sprayed, and had six
// points stored as not timed before it was seen.
TEST_F(EntryMarks, ASprayThatWasRefusedIsAskedAboutWhenNothingAnswered)
{
    typeBackground();
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_EQ(controller().machine().state(), CallState::Wait);
    press(Qt::Key_Space);
    const auto before = stored();
    press(Qt::Key_N);
    EXPECT_EQ(stored(), before);
    EXPECT_TRUE(said.last().contains(QStringLiteral("not timed"))) << said.last().toStdString();
    press(Qt::Key_N);
    EXPECT_EQ(stored(), before + 1) << "pressed again it is meant";
    press(Qt::Key_N);
    EXPECT_EQ(stored(), before + 2) << "the next point was not begun too early";
}

// Property: a whole reading has no mark, and what was not sprayed on purpose has none either.
TEST_F(EntryMarks, AWholeReadingHasNoMark)
{
    model::Setup setup = history.session.job().setup;
    setup.response = seconds(0.05);
    ASSERT_TRUE(history.session.changeSetup(setup));
    typeBackground();
    press(Qt::Key_Space);
    QTest::qWait(120);
    press(Qt::Key_Space);
    EXPECT_TRUE(gapLine().isEmpty()) << gapLine().toStdString();
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_EQ(said.last(), QStringLiteral("1 stored."));
    EXPECT_FALSE(row(0).contains(QStringLiteral("marked"))) << row(0).toStdString();
    press(Qt::Key_A);
    type(QStringLiteral("1"));
    EXPECT_FALSE(row(1).contains(QStringLiteral("marked"))) << row(1).toStdString();
}

// Regression: as spoken a call is point, background, peak, delay; a delay could not be typed at all.
TEST_F(EntryMarks, ADelayIsTypedAsItIsSpoken)
{
    type(QStringLiteral("3.2-8"));
    type(QStringLiteral("d")); // the number stands aside
    EXPECT_TRUE(field().text().isEmpty());
    type(QStringLiteral("1,5"));
    press(Qt::Key_Return);
    EXPECT_EQ(controller().typed(), "3.2-8") << "it stands there again";
    EXPECT_TRUE(head().contains(QStringLiteral("first rise 1.5 s"))) << head().toStdString();
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-8, 1e-18);
    ASSERT_TRUE(last().delay);
    EXPECT_NEAR(inSeconds(*last().delay), 1.5, 1e-9);

    enterValue(QStringLiteral("3.2-8"));
    EXPECT_FALSE(last().delay) << "it belongs to one reading";

    type(QStringLiteral("d")); // before the value as well
    enterValue(QStringLiteral("240"));
    enterValue(QStringLiteral("3.2-8"));
    EXPECT_NEAR(inSeconds(*last().delay), 240.0, 1e-9);

    press(Qt::Key_C); // and corrected
    type(QStringLiteral("d"));
    enterValue(QStringLiteral("24"));
    enterValue(QStringLiteral("3.2-8"));
    EXPECT_TRUE(last().corrects.has_value());
    EXPECT_NEAR(inSeconds(*last().delay), 24.0, 1e-9);
}

// Property: a delay that is none is refused, Esc brings the number back, and the key still stamps while
// helium is on; after it, Enter alone takes the seconds since.
TEST_F(EntryMarks, TheKeyOfTheFirstRiseStampsWhileSpraying)
{
    type(QStringLiteral("3.2-8d"));
    press(Qt::Key_Return);
    EXPECT_EQ(controller().typed(), "") << "nothing typed, nothing sprayed: still asked";
    type(QStringLiteral("1.5.2"));
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_EQ(controller().typed(), "3.2-8");
    press(Qt::Key_Escape);
    press(Qt::Key_Space);
    type(QStringLiteral("3"));
    type(QStringLiteral("d"));
    EXPECT_EQ(controller().typed(), "3") << "stamped, not asked";
    ASSERT_TRUE(controller().machine().delay());
    EXPECT_LT(*controller().machine().delay(), 5.0);
    press(Qt::Key_Escape);
    press(Qt::Key_Space);
    ASSERT_EQ(controller().machine().state(), CallState::Read);
    QTest::qWait(200);
    type(QStringLiteral("d"));
    press(Qt::Key_Return);
    enterValue(QStringLiteral("3-8"));
    ASSERT_EQ(stored(), 1u);
    ASSERT_TRUE(last().delay);
    EXPECT_GE(inSeconds(*last().delay), 0.2);
}

// Regression: a needle that rose when the dwell was over was asked for in seconds, and the value typed there
// was taken for them.
TEST_F(EntryMarks, TheKeyOfTheFirstRiseStampsAfterTheDwellToo)
{
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    ASSERT_EQ(controller().machine().state(), CallState::Read);
    type(QStringLiteral("d"));
    EXPECT_EQ(controller().field(), SprayController::Field::Peak);
    enterValue(QStringLiteral("3-8"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_TRUE(last().delay);
    EXPECT_NEAR(last().peak->si(), 3e-9, 1e-12) << "3e-8 mbar l/s";
}

// Regression: a value typed where the seconds were asked for became a first rise of 67 s, nine seconds after
// helium on.
TEST_F(EntryMarks, AFirstRiseLaterThanTheClockIsRefused)
{
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    type(QStringLiteral("3.2-8d"));
    ASSERT_EQ(controller().field(), SprayController::Field::Delay);
    enterValue(QStringLiteral("67"));
    EXPECT_EQ(controller().field(), SprayController::Field::Delay) << "still asked";
    press(Qt::Key_Escape);
    enterValue(QStringLiteral("0.5"));
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inSeconds(*last().delay), 0.5, 1e-9);
}

// Property: a number that stands aside for the first rise is not lost to another key.
TEST_F(EntryMarks, TheNumberBeneathIsKept)
{
    type(QStringLiteral("3.2-8d"));
    ASSERT_TRUE(field().text().isEmpty());
    for (const Qt::Key key : {Qt::Key_N, Qt::Key_C, Qt::Key_J, Qt::Key_B, Qt::Key_Space, Qt::Key_Down})
        press(key);
    type(QStringLiteral("+"));
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(called(), 1);
    EXPECT_EQ(controller().field(), SprayController::Field::Delay);
    type(QStringLiteral("d"));
    EXPECT_EQ(controller().typed(), "3.2-8");
}

// Regression: on paper the first rise had a column, and nowhere to be typed.
TEST_F(EntryMarks, ADelayIsTypedFromPaperToo)
{
    controller().setTranscribing(true, QDate::currentDate().addDays(-1));
    type(QStringLiteral("3.2-8d"));
    enterValue(QStringLiteral("1.5"));
    press(Qt::Key_Return);
    enterValue(QStringLiteral("1432"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inSeconds(last().delay.value_or(seconds(0))), 1.5, 1e-9);
    EXPECT_FALSE(last().dwell);
    enterValue(QStringLiteral("3.2-8")); // or when the time is asked for
    type(QStringLiteral("d"));
    enterValue(QStringLiteral("2.5"));
    press(Qt::Key_B); // the value that waits for its time is not dropped for another field
    press(Qt::Key_C);
    EXPECT_EQ(controller().field(), SprayController::Field::PaperTime);
    enterValue(QStringLiteral("1433"));
    ASSERT_EQ(stored(), 2u);
    EXPECT_NEAR(inSeconds(last().delay.value_or(seconds(0))), 2.5, 1e-9);
}

// Regression: a time before the one above it was refused for good, though a point had been sprayed out of
// order.
TEST_F(EntryMarks, APaperTimeThatGoesBackIsTakenWhenItIsMeant)
{
    controller().setTranscribing(true, QDate::currentDate().addDays(-1));
    enterValue(QStringLiteral("3.2-8"));
    enterValue(QStringLiteral("1432"));
    enterValue(QStringLiteral("3.3-8"));
    enterValue(QStringLiteral("1418"));
    EXPECT_EQ(stored(), 1u) << "asks once";
    press(Qt::Key_Return);
    ASSERT_EQ(stored(), 2u);
    EXPECT_EQ(last().at.timeOfDay().substr(0, 5), "14:18");
}

// Regression: "above range" was refused where Prepare did not know the end of the range.
TEST_F(EntryMarks, AboveAnUnknownRangeAsksForItsEndAndIsKept)
{
    ASSERT_FALSE(history.session.job().setup.rangeTop);
    type(QStringLiteral("+"));
    EXPECT_EQ(stored(), 0u);
    enterValue(QStringLiteral("1-3"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::AboveRange);
    ASSERT_TRUE(history.session.job().setup.rangeTop) << "regression: Prepare did not learn of it";
    EXPECT_EQ(*history.session.job().setup.rangeTop, *last().peak);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 1e-3, 1e-12);
    EXPECT_EQ(last().entered, "1-3 mbar l/s");
    type(QStringLiteral("+"));
    ASSERT_EQ(stored(), 2u) << "asked once";
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 1e-3, 1e-12);
    press(Qt::Key_C);
    type(QStringLiteral("+")); // but corrected when it was wrong
    enterValue(QStringLiteral("1-2"));
    ASSERT_EQ(stored(), 3u);
    EXPECT_TRUE(last().corrects.has_value());
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 1e-2, 1e-12);
    EXPECT_EQ(*history.session.job().setup.rangeTop, *last().peak);
}

// Regression: a reading taken hot stood nowhere in the walk, and its point went on saying that it had one.
TEST_F(EntryMarks, AnotherConditionHasARowOfItsOwn)
{
    enterValue(QStringLiteral("3.2-9"));
    press(Qt::Key_J);
    enterValue(QStringLiteral("1"));
    EXPECT_TRUE(head().contains(QStringLiteral("has a reading")));
    press(Qt::Key_O);
    type(QStringLiteral("1"));
    EXPECT_FALSE(head().contains(QStringLiteral("has a reading"))) << "not in that condition";
    enterValue(QStringLiteral("9-9"));
    ASSERT_EQ(stored(), 2u);
    EXPECT_EQ(last().condition, model::Condition::Hot);
    ASSERT_EQ(rows().rowCount(), 7);
    EXPECT_TRUE(row(1).contains(QStringLiteral("Point 1"))) << row(1).toStdString();
    EXPECT_TRUE(row(1).contains(QStringLiteral("9.0"))) << row(1).toStdString();
    EXPECT_TRUE(row(1).contains(QStringLiteral("hot")));
    EXPECT_EQ(called(), 2);
    bool counted = false;
    for (const QLabel* label : page->findChildren<QLabel*>())
        counted = counted || label->text().contains(QStringLiteral("<b>1</b> of 6"));
    EXPECT_TRUE(counted) << "the calls of the round are as many as before";
}

// Regression: a point that was put off looked like one nobody had come to.
TEST_F(EntryMarks, ASkippedPointShowsItsReason)
{
    press(Qt::Key_S);
    type(QStringLiteral("2"));
    EXPECT_TRUE(row(0).contains(QStringLiteral("later: in use"))) << row(0).toStdString();
    EXPECT_FALSE(row(1).contains(QStringLiteral("later")));
    EXPECT_NE(rows().index(0, 0).data(WalkModel::SignRole), rows().index(1, 0).data(WalkModel::SignRole));
    press(Qt::Key_J);
    enterValue(QStringLiteral("1"));
    press(Qt::Key_N);
    EXPECT_FALSE(row(0).contains(QStringLiteral("later"))) << row(0).toStdString();
}

// Regression: a value typed after a spray that was left stood at the moment of that spray.
TEST_F(EntryMarks, ASprayThatWasLeftGivesNoTime)
{
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    controller().setTranscribing(true, QDate::currentDate().addDays(-1));
    controller().setTranscribing(false);
    QTest::qWait(400);
    const Timestamp before = Timestamp::now();
    enterValue(QStringLiteral("3.2-9"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_FALSE(last().dwell);
    EXPECT_GE(last().at.utcMilliseconds, before.utcMilliseconds);
}

// Regression: "this is not a value" stood there after Esc, and about another point.
TEST_F(EntryMarks, ACautionGoesWithWhatItWasAbout)
{
    QStringList settled;
    ASSERT_GE(page->metaObject()->indexOfSignal("noteSettled(QString)"), 0);
    QObject::connect(page.get(), SIGNAL(noteSettled(QString)), page.get(), SLOT(setWindowTitle(QString)));
    enterValue(QStringLiteral("3.2.2"));
    ASSERT_FALSE(said.isEmpty());
    const QString caution = said.last();
    press(Qt::Key_Escape);
    EXPECT_EQ(page->windowTitle(), caution);
    enterValue(QStringLiteral("0"));
    controller().callPoint(point(3));
    EXPECT_EQ(page->windowTitle(), said.last()) << "also by another call";
}

// Regression: the unit of a rate stood behind the time of a paper reading.
TEST_F(EntryMarks, ATimeHasNoUnitOfARate)
{
    const auto unitShown = [this] {
        for (const QLabel* label : page->findChildren<QLabel*>())
            if (label->isVisible() && label->text().endsWith(QStringLiteral(", He")))
                return true;
        return false;
    };
    EXPECT_TRUE(unitShown());
    controller().setTranscribing(true, QDate::currentDate().addDays(-1));
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_FALSE(unitShown());
    type(QStringLiteral("1432"));
    QTest::keyClick(&field(), Qt::Key_A, Qt::ControlModifier);
    type(QStringLiteral("9"));
    EXPECT_EQ(field().text(), QStringLiteral("9")) << "all of it is replaced";
}

// Regression: field and walk wrote a point where the read-back wrote the decimal sign of the locale.
TEST_F(EntryMarks, OneDecimalSignEverywhere)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    enterValue(QStringLiteral("3.2-9"));
    EXPECT_TRUE(row(0).contains(QStringLiteral("3,2e"))) << row(0).toStdString();
    type(QStringLiteral("4.7"));
    EXPECT_EQ(field().shownText(), QString::fromUtf8("4,7e−9"));
    type(QStringLiteral("-8"));
    EXPECT_EQ(field().shownText(), QString::fromUtf8("4,7e−8"));
    QLocale::setDefault(before);
}

} // namespace
} // namespace sealwalk::ui
