// SPDX-License-Identifier: GPL-3.0-or-later
// With 2,000 points the list of the walk was most of what a reading drew: only what changed is painted anew.
#include "core/editing/joints.h"
#include "tests/ui/spray/spray_page_fixture.h"

#include <QListView>
#include <QPaintEvent>
#include <QScreen>

namespace sealwalk::ui {
namespace {

/// How many pixels of height are painted in a widget.
class PaintedHeight : public QObject
{
public:
    explicit PaintedHeight(QWidget& watched) { watched.installEventFilter(this); }
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint)
            for (const QRect& part : static_cast<QPaintEvent*>(event)->region())
                height += part.height();
        return false;
    }
    int height = 0;
};

class WalkPainting : public SprayPageTest
{
protected:
    WalkPainting()
        : SprayPageTest(60)
    {}
    void SetUp() override
    {
        SprayPageTest::SetUp();
        list = page->findChild<QListView*>(QStringLiteral("walkList"));
        for (int i = 0; i < 30; ++i)
            press(Qt::Key_N);
        settle();
    }
    static void settle() { QTest::qWait(400); } // findings come a moment later

    /// As it stands in the window, part by part.
    [[nodiscard]] QImage standing() const
    {
        const QPoint corner = list->viewport()->mapTo(page.get(), QPoint());
        return page->screen()
            ->grabWindow(page->winId(), corner.x(), corner.y(), list->viewport()->width(),
                         list->viewport()->height())
            .toImage()
            .convertToFormat(QImage::Format_RGB32);
    }
    [[nodiscard]] QImage paintedAnew() const
    {
        return list->viewport()->grab().toImage().convertToFormat(QImage::Format_RGB32);
    }

    QListView* list = nullptr;
};

TEST_F(WalkPainting, AReadingPaintsTheRowsThatChanged)
{
    const int row = list->visualRect(list->model()->index(30, 0)).height();
    ASSERT_GT(list->viewport()->height(), 8 * row);
    PaintedHeight painted(*list->viewport());
    press(Qt::Key_N);
    settle();
    EXPECT_GE(painted.height, 2 * row) << "the one that was called and the one that is";
    EXPECT_LE(painted.height, 5 * row);
}

// Property: what the rows keep of the sketch is forgotten when the sketch changes.
TEST_F(WalkPainting, ARenamedJointIsRenamedInItsRows)
{
    const auto spokenFirst = [this] { return list->model()->index(0, 0).data().toString(); };
    ASSERT_TRUE(spokenFirst().contains(QStringLiteral("Port"))) << spokenFirst().toStdString();
    model::Joint joint = history.session.job().sketch.joints.front();
    joint.name = "Front door";
    const auto renamed = editing::changeJoint(history.session.job().sketch, joint);
    ASSERT_TRUE(renamed && history.session.edit(*renamed));
    EXPECT_TRUE(spokenFirst().contains(QStringLiteral("Front door"))) << spokenFirst().toStdString();
}

// Property: painted part by part is painted right.
TEST_F(WalkPainting, WhatStandsThereIsWhatWouldBePaintedAnew)
{
    const std::pair<const char*, std::function<void()>> acts[] = {
        {"as it came", [] {}},
        {"no response", [this] { press(Qt::Key_N); }},
        {"over the limit", [this] { enterValue(QStringLiteral("3-3")); }},
        {"over the limit, answered", [this] { press(Qt::Key_Return); }},
        {"put off",
         [this] {
             press(Qt::Key_S);
             press(Qt::Key_1);
         }},
        {"void",
         [this] {
             press(Qt::Key_V);
             press(Qt::Key_1);
         }},
        {"another condition", [this] { press(Qt::Key_F); }},
        {"jumped",
         [this] {
             press(Qt::Key_J);
             enterValue(QStringLiteral("50"));
         }},
    };
    for (const auto& [what, act] : acts) {
        act();
        settle();
        EXPECT_EQ(standing(), paintedAnew()) << what;
    }
}

} // namespace
} // namespace sealwalk::ui
