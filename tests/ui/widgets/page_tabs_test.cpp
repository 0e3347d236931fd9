// SPDX-License-Identifier: GPL-3.0-or-later
// Property: with room every part is in sight, without it exactly one, and nothing is ever left out of reach.
#include "ui/widgets/page_tabs.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QSplitter>
#include <QTabBar>
#include <QTest>

namespace sealwalk::ui {
namespace {

class PageTabsTest : public ::testing::Test
{
protected:
    PageTabsTest()
    {
        auto* body = new QSplitter(Qt::Horizontal);
        auto* right = new QSplitter(Qt::Vertical);
        body->addWidget(left);
        right->addWidget(above);
        right->addWidget(below);
        body->addWidget(right);
        inner = new QLabel(below);
        tabs = std::make_unique<PageTabs>(body,
                                          std::vector<PageTabs::Part>{{QStringLiteral("left"), left},
                                                                      {QStringLiteral("above"), above},
                                                                      {QStringLiteral("below"), below}},
                                          800);
        tabs->resize(1000, 500);
        tabs->show();
    }
    [[nodiscard]] int inSight() const
    {
        return int(left->isVisible()) + int(above->isVisible()) + int(below->isVisible());
    }

    QWidget* left = new QWidget;
    QWidget* above = new QWidget;
    QWidget* below = new QWidget;
    QLabel* inner = nullptr;
    std::unique_ptr<PageTabs> tabs;
};

TEST_F(PageTabsTest, ShowsAllWithRoomAndOneWithout)
{
    EXPECT_EQ(inSight(), 3);
    EXPECT_FALSE(tabs->findChild<QTabBar*>()->isVisible());
    tabs->resize(700, 500);
    EXPECT_TRUE(tabs->isNarrow());
    EXPECT_EQ(inSight(), 1);
    for (int turn = 0; turn < 3; ++turn) {
        tabs->next();
        EXPECT_EQ(inSight(), 1);
    }
    tabs->resize(1000, 500);
    EXPECT_EQ(inSight(), 3);
}

TEST_F(PageTabsTest, TheFrontPartHasThePageForItself)
{
    tabs->resize(700, 500);
    tabs->bringUp(below);
    EXPECT_TRUE(QTest::qWaitFor([&] { return below->width() >= 690 && below->height() >= 400; }));
    tabs->bringUp(left);
    EXPECT_TRUE(QTest::qWaitFor([&] { return left->width() >= 690; }));
}

TEST_F(PageTabsTest, BringsUpThePartThatHoldsAWidget)
{
    tabs->resize(700, 500);
    tabs->bringUp(inner);
    EXPECT_TRUE(below->isVisible());
    EXPECT_FALSE(left->isVisible());
}

TEST_F(PageTabsTest, IsNoWiderThanItsWindowAllows)
{
    left->setMinimumWidth(600);
    above->setMinimumWidth(600);
    tabs->resize(650, 500);
    EXPECT_EQ(tabs->width(), 650);
}

} // namespace
} // namespace sealwalk::ui
