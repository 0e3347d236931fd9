// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen from five metres away, and that nothing beneath it can be hit.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/spray/distance_view.h"
#include "ui/spray/touch_field.h"

#include <QImage>
#include <QPointingDevice>

namespace sealwalk::ui {
namespace {

class Distance : public SprayPageTest
{
protected:
    [[nodiscard]] DistanceView* view() const { return page->findChild<DistanceView*>(); }
    [[nodiscard]] QPoint middleOf(const char* name) const
    {
        auto* shown = page->findChild<TouchField*>(QLatin1String(name));
        return shown->mapTo(page->window(), shown->rect().center());
    }
};

/// Height of what differs from the ground in `where`, in pixels.
int inkHeight(const QImage& picture, const QRect& where)
{
    const QRgb ground = picture.pixel(where.topLeft());
    int first = -1;
    int last = -1;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            if (picture.pixel(x, y) != ground) {
                first = first < 0 ? y : first;
                last = y;
            }
    return first < 0 ? 0 : last - first + 1;
}

// Regression: a finger on the distance view went through it to the hidden "No response" and stored one.
TEST_F(Distance, AFingerLeavesItAndStoresNothing)
{
    page->setTouchStrip(true);
    const QPoint finger = middleOf("touchNoResponse");
    static QPointingDevice* screen = QTest::createTouchDevice();
    press(Qt::Key_Z);
    ASSERT_TRUE(view()->isVisible());
    QTest::touchEvent(page->window(), screen).press(0, finger, page->window());
    QTest::touchEvent(page->window(), screen).release(0, finger, page->window());
    QTest::qWait(1);
    EXPECT_EQ(stored(), 0u);
    EXPECT_FALSE(view()->isVisible());
    press(Qt::Key_Z);
    ASSERT_TRUE(view()->isVisible());
    QWidget* hit = page->window()->childAt(finger);
    ASSERT_NE(hit, nullptr);
    QTest::mouseClick(hit, Qt::LeftButton, {}, hit->mapFrom(page->window(), finger));
    EXPECT_EQ(stored(), 0u);
    EXPECT_FALSE(view()->isVisible());
    press(Qt::Key_N); // the keys never left the field
    EXPECT_EQ(stored(), 1u);
}

// Published: 20 arc-minutes at 5 m are 29.1 mm, and a 14 inch panel of 768 lines has 4.41 px to the mm.
// Regression: the seconds were drawn 17 mm high.
TEST_F(Distance, TheClockIsReadAsFarAsTheWord)
{
    DistanceView shown(nullptr);
    shown.resize(1366, 768);
    DistanceShown what;
    what.state.state = CallState::Read; // an even ground
    for (const char* word : {"SPRAY", "WAIT", "SPR\u00dcHEN", "WARTEN"}) {
        for (const char* seconds : {"8", "24", "120"}) {
            what.state.word = QString::fromUtf8(word);
            what.state.figure = QString::fromUtf8(seconds);
            shown.show(what);
            const QImage picture = shown.grab().toImage();
            EXPECT_GE(inkHeight(picture, QRect(1260, 12, 80, 180)), 29.1 * 4.41 - 2)
                << word << ' ' << seconds;
        }
    }
}

} // namespace
} // namespace sealwalk::ui
