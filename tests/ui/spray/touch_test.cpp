// SPDX-License-Identifier: GPL-3.0-or-later
// A round by touches alone, through the real fields of the strip and its pads.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/spray/touch_field.h"
#include "ui/spray/touch_pad.h"
#include "ui/spray/touch_size.h"

#include <QListView>
#include <QPointingDevice>
#include <QPushButton>

namespace sealwalk::ui {
namespace {

class Touch : public SprayPageTest
{
protected:
    void SetUp() override
    {
        SprayPageTest::SetUp();
        page->setTouchStrip(true);
    }

    /// A finger on the field of that name, which must be in sight and within the page.
    void touch(const QString& name)
    {
        TouchField* found = nullptr;
        for (auto* field : page->findChildren<TouchField*>(name))
            if (field->isVisible())
                found = field;
        ASSERT_NE(found, nullptr) << name.toStdString();
        ASSERT_TRUE(found->isEnabled()) << name.toStdString();
        const QPoint middle = found->mapTo(page.get(), found->rect().center());
        ASSERT_TRUE(page->rect().contains(middle)) << name.toStdString();
        // What lies on top takes the touch; Qt makes a mouse press of one that nobody takes as a touch.
        ASSERT_EQ(page->childAt(middle), found) << name.toStdString();
        static QPointingDevice* screen = QTest::createTouchDevice();
        QTest::touchEvent(page->window(), screen).press(0, middle, page->window());
        QTest::touchEvent(page->window(), screen).release(0, middle, page->window());
        QTest::qWait(1);
    }
    void digits(const QString& keys)
    {
        for (const QChar key : keys)
            touch(QStringLiteral("pad ") +
                  (key == QLatin1Char('-') ? QStringLiteral("e") + QChar(0x2212) : QString(key)));
    }
};

// Property: spray, values, no response, a condition, a void, a skip, a jump and a correction need no key.
TEST_F(Touch, CarriesAWholeRound)
{
    touch(QStringLiteral("touchSpray"));
    EXPECT_EQ(controller().machine().state(), CallState::Spray);
    touch(QStringLiteral("touchSpray"));
    EXPECT_EQ(controller().machine().state(), CallState::Read);
    touch(QStringLiteral("touchValue"));
    digits(QStringLiteral("32-9"));
    touch(QStringLiteral("pad Enter"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 3.2e-8, 1e-18);
    EXPECT_EQ(called(), 2);
    EXPECT_FALSE(page->findChild<TouchPad*>()->isVisible());

    // Helium clears: one touch is not enough to go on, two are.
    EXPECT_EQ(controller().machine().state(), CallState::Wait);
    touch(QStringLiteral("touchSpray"));
    EXPECT_EQ(controller().machine().state(), CallState::Wait);
    touch(QStringLiteral("touchSpray"));
    EXPECT_EQ(controller().machine().state(), CallState::Go);
    touch(QStringLiteral("touchNoResponse"));
    EXPECT_EQ(last().outcome, model::Outcome::NoResponse);
    EXPECT_TRUE(last().outOfTurn);

    touch(QStringLiteral("touchCondition"));
    touch(QStringLiteral("pad flexed"));
    touch(QStringLiteral("touchValue"));
    digits(QStringLiteral("4"));
    touch(QStringLiteral("pad e") + QChar(0x2212));
    digits(QStringLiteral("8"));
    touch(QStringLiteral("pad back"));
    digits(QStringLiteral("9"));
    touch(QStringLiteral("pad Enter"));
    EXPECT_EQ(last().condition, model::Condition::Flexed);
    EXPECT_NEAR(inMillibarLitresPerSecond(*last().peak), 4e-9, 1e-20);

    touch(QStringLiteral("touchVoid")); // the last one: wrong place
    touch(QStringLiteral("pad wrong place"));
    ASSERT_EQ(history.session.job().voids.size(), 1u);
    EXPECT_EQ(called(), 3);
    touch(QStringLiteral("touchVoid"));
    touch(QStringLiteral("pad skip …"));
    touch(QStringLiteral("pad later"));
    EXPECT_EQ(called(), 4);
    touch(QStringLiteral("touchVoid"));
    touch(QStringLiteral("pad no access …"));
    touch(QStringLiteral("pad too hot"));
    EXPECT_EQ(last().outcome, model::Outcome::NotAccessible);
    touch(QStringLiteral("touchVoid"));
    touch(QStringLiteral("pad jump …"));
    digits(QStringLiteral("6"));
    touch(QStringLiteral("pad Enter"));
    EXPECT_EQ(called(), 6);
    touch(QStringLiteral("touchNoResponse"));

    touch(QStringLiteral("touchCorrect"));
    digits(QStringLiteral("5-9"));
    touch(QStringLiteral("pad Enter"));
    EXPECT_TRUE(last().corrects.has_value());
    touch(QStringLiteral("touchNoResponse"));
    touch(QStringLiteral("touchNoResponse"));
    EXPECT_TRUE(controller().isFinished());
}

// Property: an end of the range that nobody knows is asked for with the pad, and Cancel leaves it.
TEST_F(Touch, TypesTheEndOfAnUnknownRange)
{
    enterValue(QStringLiteral("3-9"));
    for (const bool takes : {false, true}) {
        touch(QStringLiteral("touchVoid"));
        touch(QStringLiteral("pad over range"));
        digits(QStringLiteral("1-3"));
        touch(takes ? QStringLiteral("pad Enter") : QStringLiteral("pad Cancel"));
        EXPECT_EQ(controller().field(), SprayController::Field::Peak);
        EXPECT_FALSE(page->findChild<TouchPad*>()->isVisible());
    }
    ASSERT_EQ(stored(), 2u);
    EXPECT_EQ(last().outcome, model::Outcome::AboveRange);
}

// Property: the field itself opens the digits, the exponent is one touch, Cancel leaves everything.
TEST_F(Touch, TypesIntoTheFieldAndTakesItBack)
{
    QTest::mouseClick(&field(), Qt::LeftButton);
    digits(QStringLiteral("3-8"));
    touch(QStringLiteral("touchExponent"));
    EXPECT_EQ(*controller().entered().exponent, -7);
    touch(QStringLiteral("pad Cancel"));
    EXPECT_TRUE(controller().typed().empty());
    EXPECT_EQ(stored(), 0u);
    touch(QStringLiteral("touchVoid"));
    touch(QStringLiteral("pad Cancel"));
    EXPECT_EQ(controller().prompt(), SprayController::Prompt::None);
}

// Regression: Esc took back what was typed and left the pad standing over the sheet.
TEST_F(Touch, EscShutsThePad)
{
    auto* pad = page->findChild<TouchPad*>();
    touch(QStringLiteral("touchValue"));
    digits(QStringLiteral("3"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(pad->isVisible());
    EXPECT_TRUE(controller().typed().empty());
    touch(QStringLiteral("touchVoid"));
    ASSERT_TRUE(pad->isVisible());
    press(Qt::Key_Escape);
    EXPECT_FALSE(pad->isVisible());
    EXPECT_EQ(controller().prompt(), SprayController::Prompt::None);
    touch(QStringLiteral("touchCondition"));
    touch(QStringLiteral("pad background …"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(pad->isVisible());
    EXPECT_EQ(controller().field(), SprayController::Field::Peak);
    press(Qt::Key_Escape); // and without a pad it is the field's own
    EXPECT_EQ(called(), 1);
}

// Property: what was left out on purpose and what is confirmed need no key either.
TEST_F(Touch, SaysNotTestedAndConfirms)
{
    touch(QStringLiteral("touchVoid"));
    touch(QStringLiteral("pad no access …"));
    touch(QStringLiteral("pad not tested …"));
    touch(QStringLiteral("pad no time left"));
    ASSERT_EQ(stored(), 1u);
    EXPECT_EQ(last().outcome, model::Outcome::NotTested);
    enterValue(QStringLiteral("3-8"));
    touch(QStringLiteral("touchCondition"));
    touch(QStringLiteral("pad confirm"));
    EXPECT_TRUE(controller().isConfirming());
    EXPECT_EQ(called(), 2);
}

// Regression: the number typed by keys was the jump's, the pad stayed under its title, and what was touched
// on it afterwards went into the value.
TEST_F(Touch, APadForAJumpGoesWithIt)
{
    auto* pad = page->findChild<TouchPad*>();
    press(Qt::Key_J);
    ASSERT_TRUE(pad->isVisible());
    type(QStringLiteral("4"));
    press(Qt::Key_Return);
    EXPECT_EQ(called(), 4);
    EXPECT_FALSE(pad->isVisible());
    touch(QStringLiteral("touchValue"));
    EXPECT_EQ(pad->accessibleName(), QStringLiteral("What the detector shows"));
}

// Regression: the background was two pads away.
TEST_F(Touch, TakesTheBackground)
{
    touch(QStringLiteral("touchExponent")); // which is the background's while nothing is typed
    EXPECT_EQ(page->findChild<TouchPad*>()->accessibleName(), QStringLiteral("Background, no helium given"));
    digits(QStringLiteral("2-9"));
    touch(QStringLiteral("pad Enter"));
    ASSERT_TRUE(controller().background());
    EXPECT_NEAR(inMillibarLitresPerSecond(*controller().background()), 2e-9, 1e-20);
    EXPECT_EQ(stored(), 0u);
}

// Regression: a delay could be typed by keys only.
TEST_F(Touch, TakesTheDelay)
{
    auto* pad = page->findChild<TouchPad*>();
    touch(QStringLiteral("walk delay"));
    ASSERT_TRUE(pad->isVisible());
    EXPECT_EQ(pad->accessibleName(), QStringLiteral("First rise, seconds after helium on"));
    digits(QStringLiteral("1.5"));
    touch(QStringLiteral("pad Enter"));
    EXPECT_FALSE(pad->isVisible());
    touch(QStringLiteral("touchValue"));
    digits(QStringLiteral("3-9"));
    touch(QStringLiteral("pad Enter"));
    ASSERT_EQ(stored(), 1u);
    ASSERT_TRUE(last().delay);
    EXPECT_NEAR(inSeconds(*last().delay), 1.5, 1e-12);
}

// Regression: a row of the walk was 34 px high and its keys 30, where a glove needs 20 mm.
TEST_F(Touch, TheWalkIsForGlovesToo)
{
    const int least = pixelsOn(page->screen(), kGloveMillimetres);
    auto* list = page->findChild<QListView*>(QStringLiteral("walkList"));
    EXPECT_GE(list->visualRect(list->model()->index(1, 0)).height(), least);
    EXPECT_GE(page->findChild<QPushButton*>(QStringLiteral("orderWalk"))->height(), least);
    EXPECT_GE(page->findChild<QPushButton*>(QStringLiteral("startRound"))->sizeHint().height(), least);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualRect(list->model()->index(1, 0)).center());
    EXPECT_EQ(called(), 2);
    touch(QStringLiteral("walk not tested"));
    touch(QStringLiteral("pad no time left"));
    EXPECT_EQ(last().outcome, model::Outcome::NotTested);
    touch(QStringLiteral("walk jump"));
    digits(QStringLiteral("5"));
    touch(QStringLiteral("pad Enter"));
    EXPECT_EQ(called(), 5);
    page->setTouchStrip(false);
    EXPECT_LT(list->visualRect(list->model()->index(1, 0)).height(), least);
}

// Published: 20 mm for gloves, 3 mm apart. 4.41 px to the millimetre is a 14 inch panel of 768 lines.
TEST_F(Touch, MeasuresFieldsInMillimetresOfTheScreen)
{
    EXPECT_EQ(pixelsOf(20.0, 4.41 * 25.4), 88);
    EXPECT_EQ(pixelsOf(3.0, 4.41 * 25.4), 13);
    EXPECT_EQ(pixelsOf(20.0, 96.0), 76);
    EXPECT_EQ(pixelsOf(20.0, 0.0), 76);  // tells nothing
    EXPECT_EQ(pixelsOf(20.0, 1e6), 157); // tells nonsense
    const int least = pixelsOn(page->screen(), kGloveMillimetres);
    const int gap = pixelsOn(page->screen(), kGloveGapMillimetres);
    std::vector<QRect> places;
    for (auto* shown : page->findChildren<TouchField*>()) {
        if (!shown->isVisible())
            continue;
        EXPECT_GE(shown->width(), least) << shown->objectName().toStdString();
        EXPECT_GE(shown->height(), least) << shown->objectName().toStdString();
        const QRect place(shown->mapTo(page.get(), QPoint()), shown->size());
        for (const QRect& other : places)
            EXPECT_FALSE(place.adjusted(-gap + 1, -gap + 1, gap - 1, gap - 1).intersects(other));
        places.push_back(place);
    }
    EXPECT_EQ(places.size(), 13u);
}

} // namespace
} // namespace sealwalk::ui
