// SPDX-License-Identifier: GPL-3.0-or-later
// Property: as the window narrows the walk becomes a line, then the sheet a tab; the call takes keys
// throughout.
#include "tests/ui/spray/spray_page_fixture.h"
#include "ui/render/sheet_view.h"
#include "ui/spray/walk_line.h"
#include "ui/spray/walk_panel.h"

#include <QLabel>
#include <QSignalSpy>
#include <QToolButton>

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

// Regression: at 683 x 370, a screen of 1366 x 768 at 200 %, the state bar lay over the field's label and the
// field was half as high as it should be.
TEST_F(NarrowSpray, TheCallAndTheFieldAreWhole)
{
    for (const QSize room : {QSize(683, 272), QSize(640, 256), QSize(900, 400), QSize(1366, 644)}) {
        page->resize(room);
        QTest::qWait(1);
        const auto* panel = page->findChild<CallPanel*>();
        std::vector<std::pair<QRect, QString>> shown;
        for (const QObject* child : panel->children()) {
            const auto* part = qobject_cast<const QWidget*>(child);
            if (part == nullptr || !part->isVisible())
                continue;
            EXPECT_TRUE(panel->rect().contains(part->geometry()))
                << part->accessibleName().toStdString() << ' ' << room.height();
            for (const auto& [other, name] : shown)
                EXPECT_FALSE(other.intersects(part->geometry()))
                    << name.toStdString() << " and " << part->accessibleName().toStdString() << ' '
                    << room.height();
            shown.emplace_back(part->geometry(), part->accessibleName());
        }
        EXPECT_GE(field().height(), 44);
        EXPECT_TRUE(field().isVisible());
    }
}

// Property: whose name stands on the readings is seen at any size, and one click is on the way to another.
TEST_F(NarrowSpray, WhoIsLoggingIsSeen)
{
    history.session.setLogger(QStringLiteral("B. Second"));
    auto* logger = page->findChild<QToolButton*>(QStringLiteral("logger"));
    ASSERT_NE(logger, nullptr);
    for (const QSize room : {QSize(1366, 644), QSize(683, 272)}) {
        page->resize(room);
        QTest::qWait(1);
        EXPECT_EQ(logger->accessibleName(), QStringLiteral("Logging: B. Second"));
        EXPECT_EQ(logger->visibleRegion().boundingRect().size(), logger->size());
        EXPECT_GE(logger->width(), logger->sizeHint().width()) << "its name is whole";
    }
    QSignalSpy wanted(page.get(), &SprayPage::loggerWanted);
    QTest::mouseClick(logger, Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
    history.session.setLogger(QStringLiteral("C. Third"));
    EXPECT_EQ(logger->text(), QStringLiteral("Logging: C. Third"));
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
