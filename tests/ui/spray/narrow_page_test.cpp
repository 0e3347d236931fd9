// SPDX-License-Identifier: GPL-3.0-or-later
// Property: as the window narrows the walk becomes a line, then the sheet a tab; the call takes keys
// throughout.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/render/sheet_view.h"
#include "ui/spray/walk_line.h"
#include "ui/spray/walk_panel.h"

#include <QLabel>

namespace sealwalk::ui {
namespace {

class NarrowSpray : public SprayPageTest
{
protected:
    [[nodiscard]] WalkPanel* walk() const { return page->findChild<WalkPanel*>(); }
    [[nodiscard]] WalkLine* line() const { return page->findChild<WalkLine*>(); }
    [[nodiscard]] QWidget* sheet() const { return page->findChild<render::SheetView*>(); }
    [[nodiscard]] QString lineText() const { return line()->findChild<QLabel*>()->text(); }
};

TEST_F(NarrowSpray, TheWalkBecomesALine)
{
    EXPECT_TRUE(walk()->isVisible());
    EXPECT_FALSE(line()->isVisible());
    page->resize(1000, 500);
    EXPECT_FALSE(walk()->isVisible());
    EXPECT_TRUE(line()->isVisible());
    EXPECT_TRUE(lineText().contains(QStringLiteral("then 2, 3, 4"))) << lineText().toStdString();
    press(Qt::Key_N);
    EXPECT_TRUE(lineText().contains(QStringLiteral("<b>1</b> of 6"))) << lineText().toStdString();
    EXPECT_TRUE(lineText().contains(QStringLiteral("then 3, 4, 5"))) << lineText().toStdString();
}

TEST_F(NarrowSpray, TheSheetIsATabAway)
{
    page->resize(680, 420);
    EXPECT_FALSE(sheet()->isVisible());
    EXPECT_TRUE(field().isVisible());
    page->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
    QTest::keyClick(&field(), Qt::Key_M, Qt::ControlModifier);
    EXPECT_TRUE(sheet()->isVisible());
    QTest::keyClick(sheet(), Qt::Key_M, Qt::ControlModifier);
    EXPECT_TRUE(field().isVisible());
    enterValue(QStringLiteral("3.2e-7"));
    EXPECT_EQ(stored(), 1u);
}

} // namespace
} // namespace sealwalk::ui
