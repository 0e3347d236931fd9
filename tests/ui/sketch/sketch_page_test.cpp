// SPDX-License-Identifier: GPL-3.0-or-later
// The sketch stage by mouse and keys, as a technician uses it.
#include "core/editing/joints.h"
#include "core/editing/sense.h"
#include "tests/ui/sketch/table.h"
#include "ui/session/job_session.h"
#include "ui/sketch/blank_print.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPdfDocument>
#include <QPdfWriter>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

namespace sealwalk::ui {
namespace {

using geometry::FreePath;
using geometry::Ring;
using geometry::RoundedRectangle;
using geometry::Spot;

const RoundedRectangle& box(const model::Sketch& sketch, std::size_t joint = 0)
{
    return std::get<RoundedRectangle>(sketch.joints.at(joint).shape);
}

void layByNumber(DrawingTable& table, int number)
{
    editing::Laying laying;
    laying.number = number;
    table.page().desk().setLaying(laying);
    table.key(Qt::Key_Return);
}

TEST(SketchPage, BeginsWithASheetWhenThereIsNone)
{
    DrawingTable table(false);
    auto* button = table.page().findChild<QPushButton*>(QStringLiteral("first-sheet"));
    ASSERT_TRUE(button != nullptr && button->isVisible());
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(table.sketch().sheets.size(), 1u);
    EXPECT_TRUE(table.canvas().isVisible());
    EXPECT_EQ(table.page().progressText(), QStringLiteral("no points yet"));
}

// Regression: a spot was under its own point, which went nowhere when it was dragged.
TEST(SketchPage, ASpotIsDraggedByItsPoint)
{
    DrawingTable table;
    table.key(Qt::Key_S);
    table.click(100.0, 100.0);
    layByNumber(table, 1);
    ASSERT_EQ(table.sketch().points.size(), 1u);
    const auto centre = [&] { return std::get<Spot>(table.sketch().joints.at(0).shape).centre; };
    const geometry::Point before = centre();
    table.key(Qt::Key_V);
    table.drag(before.x, before.y, before.x + 150.0, before.y + 80.0, Qt::AltModifier);
    EXPECT_NEAR(centre().x, before.x + 150.0, 4.0);
    EXPECT_NEAR(centre().y, before.y + 80.0, 4.0);
}

// Regression: a hose dragged from end to end, as other joints are, had one end only.
TEST(SketchPage, AHoseIsDrawnByDraggingToo)
{
    DrawingTable table;
    table.key(Qt::Key_H);
    table.drag(-200.0, 0.0, 200.0, 100.0);
    table.key(Qt::Key_Return);
    ASSERT_EQ(table.sketch().joints.size(), 1u);
    EXPECT_EQ(table.sketch().joints.front().kind, model::JointKind::Hose);
    EXPECT_EQ(std::get<FreePath>(table.sketch().joints.front().shape).nodes.size(), 2u);
}

TEST(SketchPage, DrawsTheDemoDoorByGestures)
{
    DrawingTable table;
    // door seal of sixteen points: dragged roughly, sizes typed, points by Enter
    table.key(Qt::Key_B);
    table.drag(-300.0, 400.0, 300.0, -400.0);
    ASSERT_EQ(table.sketch().joints.size(), 1u);
    table.type("860");
    table.key(Qt::Key_Tab);
    table.type("1060");
    table.key(Qt::Key_Tab);
    table.type("110");
    table.key(Qt::Key_Return);
    EXPECT_EQ(box(table.sketch()).width, 860.0);
    EXPECT_EQ(box(table.sketch()).height, 1060.0);
    EXPECT_EQ(box(table.sketch()).cornerRadius, 110.0);
    layByNumber(table, 16);
    EXPECT_EQ(table.sketch().points.size(), 16u);

    table.key(Qt::Key_R);
    table.drag(0.0, 200.0, 60.0, 200.0);
    layByNumber(table, 6);
    EXPECT_EQ(table.sketch().points.size(), 22u);

    table.key(Qt::Key_W);
    table.click(-400.0, -300.0);
    table.click(400.0, -300.0);
    table.key(Qt::Key_Return);
    layByNumber(table, 5);
    ASSERT_EQ(table.sketch().joints.size(), 3u);
    EXPECT_EQ(table.sketch().joints[2].kind, model::JointKind::WeldSeam);
    EXPECT_EQ(table.sketch().points.size(), 27u);

    table.key(Qt::Key_S);
    table.click(-250.0, 0.0);
    table.click(250.0, 0.0);
    EXPECT_EQ(table.sketch().joints.size(), 5u);
    EXPECT_EQ(table.sketch().points.size(), 29u);
    EXPECT_EQ(model::complaint(table.sketch()), "");
    EXPECT_EQ(table.page().progressText(), QStringLiteral("29 points so far"));
}

TEST(SketchPage, TakesEachGestureBackInOneStep)
{
    DrawingTable table;
    std::vector<model::Sketch> states{table.sketch()};
    const auto keep = [&] {
        ASSERT_NE(table.sketch().joints.size() + table.sketch().points.size() + 100 * states.size(), 0u);
        states.push_back(table.sketch());
    };
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    keep();
    layByNumber(table, 6);
    keep();
    table.key(Qt::Key_V);
    table.drag(150.0, 0.0, 300.0, 50.0); // the right side handle or the band: either is one gesture
    keep();
    table.key(Qt::Key_Right, Qt::ShiftModifier);
    keep();
    const auto same = [](const model::Sketch& a, const model::Sketch& b) {
        return a.sheets == b.sheets && a.joints == b.joints && a.points == b.points &&
               a.lastNumber == b.lastNumber;
    };
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        ASSERT_FALSE(same(states[i], states[i - 1])) << "gesture " << i << " did nothing";
        table.key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_TRUE(same(table.sketch(), states[i - 1])) << "gesture " << i;
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        table.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        EXPECT_TRUE(same(table.sketch(), states[i])) << "gesture " << i;
    }
}

TEST(SketchPage, DrawsByKeysAlone)
{
    DrawingTable table;
    table.canvas().setFocus();
    table.key(Qt::Key_B);
    table.type("300");
    table.key(Qt::Key_Tab);
    table.type("200");
    table.key(Qt::Key_Return);
    ASSERT_EQ(table.sketch().joints.size(), 1u);
    EXPECT_EQ(box(table.sketch()).width, 300.0);
    EXPECT_EQ(box(table.sketch()).height, 200.0);
    table.key(Qt::Key_Return);
    EXPECT_EQ(table.sketch().points.size(), 8u);
    table.key(Qt::Key_Escape);
    table.key(Qt::Key_Escape);
    // next point, away with it
    table.key(Qt::Key_PageDown);
    table.key(Qt::Key_PageDown, Qt::ShiftModifier);
    table.key(Qt::Key_Delete);
    EXPECT_EQ(table.sketch().points.size(), 7u);
    // a weld by lengths and angles, the first node by Space at the place the arrows lead to
    table.key(Qt::Key_W);
    for (int i = 0; i < 5; ++i)
        table.key(Qt::Key_Down);
    table.key(Qt::Key_Space);
    table.type("400");
    table.key(Qt::Key_Tab);
    table.type("0");
    table.key(Qt::Key_Return);
    table.key(Qt::Key_Return);
    ASSERT_EQ(table.sketch().joints.size(), 2u);
    EXPECT_NEAR(geometry::outline(table.sketch().joints[1].shape).length(), 400.0, 1e-6);
}

TEST(SketchPage, EscapeLeavesTheGestureThenTheTool)
{
    DrawingTable table;
    table.key(Qt::Key_B);
    QTest::mousePress(&table.canvas(), Qt::LeftButton, {}, table.at(0.0, 0.0));
    const QPoint to = table.at(200.0, -100.0);
    QMouseEvent move(QEvent::MouseMove, to, table.canvas().mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(&table.canvas(), &move);
    ASSERT_TRUE(table.canvas().tool()->pending().has_value());
    table.key(Qt::Key_Escape);
    EXPECT_FALSE(table.canvas().tool()->pending().has_value());
    QTest::mouseRelease(&table.canvas(), Qt::LeftButton, {}, to);
    EXPECT_TRUE(table.sketch().joints.empty());
    EXPECT_EQ(table.canvas().tool()->title(), QStringLiteral("Rounded rectangle"));
    table.key(Qt::Key_Escape);
    EXPECT_EQ(table.canvas().tool()->title(), QStringLiteral("Select"));
}

TEST(SketchPage, RefusesWhatCannotBeDrawnAndKeepsTheGesture)
{
    DrawingTable table;
    table.key(Qt::Key_B);
    table.type("100");
    table.key(Qt::Key_Tab);
    table.type("100");
    table.key(Qt::Key_Tab);
    table.type("80");
    table.key(Qt::Key_Return);
    EXPECT_TRUE(table.sketch().joints.empty());
    EXPECT_TRUE(table.note().contains(QStringLiteral("corner radius must lie between 0 and half")))
        << table.note().toStdString();

    table.key(Qt::Key_C);
    table.click(0.0, 0.0);
    table.click(100.0, 0.0);
    table.key(Qt::Key_Return);
    EXPECT_TRUE(table.note().contains(QStringLiteral("at least three nodes"))) << table.note().toStdString();
    table.click(50.0, 100.0);
    table.key(Qt::Key_Return);
    EXPECT_EQ(table.sketch().joints.size(), 1u);

    table.hover(-400.0, -400.0);
    table.key(Qt::Key_A);
    EXPECT_TRUE(table.note().contains(QStringLiteral("no joint under the cursor")))
        << table.note().toStdString();
}

TEST(SketchPage, ReshapesByHandlesAndMovesPointsAlong)
{
    DrawingTable table;
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = table.page().desk().sheet();
    joint.shape = RoundedRectangle{{0.0, 0.0}, 400.0, 300.0, 40.0, 0.0};
    editing::Laying laying;
    laying.number = 4;
    table.commit(editing::addJoint(table.sketch(), joint, laying));
    table.page().desk().choose({joint.id});
    const double air = table.canvas().view().toMillimetres(9.8);
    table.drag(200.0 + air, 0.0, 300.0 + air, 0.0, Qt::AltModifier); // right side handle
    EXPECT_NEAR(box(table.sketch()).width, 500.0, 3.0);
    EXPECT_NEAR(box(table.sketch()).centre.x, 50.0, 1.5);
    table.key(Qt::Key_Z, Qt::ControlModifier);
    // the corner handle sets the radius
    const double inset = 40.0 * (1.0 - std::sqrt(0.5));
    const double wider = 100.0 * (1.0 - std::sqrt(0.5));
    table.drag(200.0 - inset, 150.0 - inset, 200.0 - wider, 150.0 - wider);
    EXPECT_NEAR(box(table.sketch()).cornerRadius, 100.0, 8.0);
    table.key(Qt::Key_Z, Qt::ControlModifier);
    // point 1 lies at the top; drag it to the right
    table.drag(0.0, 150.0, 100.0, 150.0);
    const auto place = model::placeOf(table.sketch(), table.sketch().pointNumbered(1)->id);
    EXPECT_NEAR(place->x, 100.0, 3.0);
    EXPECT_NEAR(place->y, 150.0, 1e-6);
    table.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NEAR(model::placeOf(table.sketch(), table.sketch().pointNumbered(1)->id)->x, 0.0, 1e-6);
}

TEST(SketchPage, DraggingABodyMovesItWithItsGroup)
{
    DrawingTable table;
    std::vector<model::JointId> ids;
    for (const double x : {-200.0, 200.0}) {
        model::Joint joint;
        joint.id = model::JointId::create();
        joint.sheet = table.page().desk().sheet();
        joint.shape = Ring{{x, 0.0}, 80.0};
        table.commit(editing::addJoint(table.sketch(), joint));
        ids.push_back(joint.id);
    }
    table.page().desk().choose(ids);
    table.key(Qt::Key_G, Qt::ControlModifier);
    table.page().desk().chooseNothing();
    const double side = 80.0 / std::sqrt(2.0);
    table.drag(-200.0 + side, side, -200.0 + side, side + 120.0, Qt::AltModifier);
    // Alt takes one of the group alone
    EXPECT_NEAR(std::get<Ring>(table.sketch().joints[0].shape).centre.y, 120.0, 3.0);
    EXPECT_EQ(std::get<Ring>(table.sketch().joints[1].shape).centre.y, 0.0);
    table.key(Qt::Key_Z, Qt::ControlModifier);
    table.page().desk().chooseNothing();
    table.drag(-200.0 + side, side, -200.0 + side, side + 120.0);
    EXPECT_NEAR(std::get<Ring>(table.sketch().joints[0].shape).centre.y, 120.0, 3.0);
    EXPECT_NEAR(std::get<Ring>(table.sketch().joints[1].shape).centre.y, 120.0, 3.0);
    table.key(Qt::Key_L);
    const auto before = table.sketch().joints;
    table.key(Qt::Key_Up);
    EXPECT_EQ(table.sketch().joints, before);
    EXPECT_TRUE(table.note().contains(QStringLiteral("locked"))) << table.note().toStdString();
}

TEST(SketchPage, RepeatsInARowByCountAndSpacing)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(-300.0, 0.0, -270.0, 0.0);
    table.key(Qt::Key_P);
    table.type("4");
    table.key(Qt::Key_Tab);
    table.type("150");
    table.key(Qt::Key_Return);
    ASSERT_EQ(table.sketch().joints.size(), 4u);
    EXPECT_NEAR(std::get<Ring>(table.sketch().joints[3].shape).centre.x -
                    std::get<Ring>(table.sketch().joints[0].shape).centre.x,
                450.0, 1e-6);
    table.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(table.sketch().joints.size(), 1u);
}

TEST(SketchPage, CopiesBetweenSheets)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 100.0, 0.0);
    layByNumber(table, 6);
    table.key(Qt::Key_C, Qt::ControlModifier);
    table.key(Qt::Key_T, Qt::ControlModifier);
    ASSERT_EQ(table.sketch().sheets.size(), 2u);
    table.key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(table.sketch().joints.size(), 2u);
    EXPECT_EQ(table.sketch().joints[1].sheet, table.sketch().sheets[1].id);
    EXPECT_EQ(table.sketch().points.size(), 12u);
    EXPECT_EQ(table.sketch().lastNumber, 12);
    table.key(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(table.page().desk().sheet(), table.sketch().sheets[0].id);
}

TEST(SketchPage, NumbersWithReadingsStayAndAreRetired)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    layByNumber(table, 6);
    ASSERT_TRUE(table.session().openRound(model::RoundKind::AsFound, "as found").has_value());
    ReadingDraft draft;
    draft.point = table.sketch().pointNumbered(1)->id;
    draft.peak = millibarLitresPerSecond(1e-8);
    draft.background = millibarLitresPerSecond(1e-10);
    ASSERT_TRUE(table.session().store(draft).has_value());
    table.canvas().setFocus();
    table.key(Qt::Key_D);
    EXPECT_TRUE(table.note().contains(QStringLiteral("Point 1"))) << table.note().toStdString();
    EXPECT_TRUE(table.sketch().joints[0].clockwise);
    table.key(Qt::Key_N);
    EXPECT_TRUE(table.note().contains(QStringLiteral("has readings"))) << table.note().toStdString();
    table.page().desk().choosePoint(draft.point);
    table.key(Qt::Key_Delete);
    EXPECT_TRUE(table.sketch().pointNumbered(1)->retired);
    table.page().desk().choosePoint(table.sketch().pointNumbered(2)->id);
    table.key(Qt::Key_Delete);
    EXPECT_EQ(table.sketch().pointNumbered(2), nullptr);
}

// A number that stands in last year's report means the same point this year.
TEST(SketchPage, NumbersReadInAnEarlierJobStayInTheNextOne)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    layByNumber(table, 6);
    ASSERT_TRUE(table.session().openRound(model::RoundKind::AsFound, "as found").has_value());
    ReadingDraft draft;
    draft.point = table.sketch().pointNumbered(3)->id;
    draft.peak = millibarLitresPerSecond(1e-8);
    ASSERT_TRUE(table.session().store(draft).has_value());
    const auto next = table.session().createJob(table.session().object().id, "a year later");
    ASSERT_TRUE(next.has_value());
    ASSERT_TRUE(table.session().openJob(*next).has_value());
    ASSERT_EQ(table.sketch().points.size(), 6u) << "a new job starts from the last sketch";
    table.canvas().setFocus();
    table.page().desk().choose({table.sketch().joints[0].id});
    table.key(Qt::Key_D);
    EXPECT_TRUE(table.note().contains(QStringLiteral("Point 3"))) << table.note().toStdString();
    table.page().desk().choosePoint(draft.point);
    table.key(Qt::Key_Delete);
    EXPECT_TRUE(table.sketch().pointNumbered(3)->retired);
}

TEST(SketchPage, UndoIsOfferedAsSoonAsThereIsSomethingToTakeBack)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    auto* undo = table.page().findChild<QPushButton*>(QStringLiteral("undo"));
    ASSERT_NE(undo, nullptr);
    EXPECT_TRUE(undo->isEnabled());
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_TRUE(table.sketch().joints.empty());
}

TEST(SketchPage, ZoomsAtTheCursorAndPans)
{
    DrawingTable table;
    const QPointF at(300.0, 200.0);
    const geometry::Point under = table.canvas().view().toSheet(at);
    const double before = table.canvas().view().scale();
    QWheelEvent wheel(at, table.canvas().mapToGlobal(at), {}, {0, 120}, Qt::NoButton, {}, Qt::NoScrollPhase,
                      false);
    QApplication::sendEvent(&table.canvas(), &wheel);
    EXPECT_GT(table.canvas().view().scale(), before);
    EXPECT_NEAR(geometry::distance(table.canvas().view().toSheet(at), under), 0.0, 1e-9);
    QTest::keyPress(&table.canvas(), Qt::Key_Space);
    QTest::mousePress(&table.canvas(), Qt::LeftButton, {}, at.toPoint());
    const QPointF to = at + QPointF(50.0, 30.0);
    QMouseEvent move(QEvent::MouseMove, to, table.canvas().mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(&table.canvas(), &move);
    QTest::mouseRelease(&table.canvas(), Qt::LeftButton, {}, to.toPoint());
    QTest::keyRelease(&table.canvas(), Qt::Key_Space);
    EXPECT_NEAR(geometry::distance(table.canvas().view().toSheet(to), under), 0.0, 1e-9);
    EXPECT_TRUE(table.sketch().joints.empty());
}

// No control without a name: what a screen reader has to go by.
TEST(SketchPage, EveryControlHasANameForScreenReaders)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    for (const QWidget* widget : table.page().findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(&table.page()))
            continue;
        if (qobject_cast<const QLineEdit*>(widget) != nullptr &&
            qobject_cast<const QComboBox*>(widget->parent()) != nullptr)
            continue; // the box around it has the name
        QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
        ASSERT_NE(seen, nullptr);
        EXPECT_FALSE(seen->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
}

TEST(SketchPage, PrintsTheBlankNumberedSheet)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    layByNumber(table, 60);
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("blank.pdf"));
    {
        QPdfWriter writer(file);
        writer.setPageMargins(QMarginsF(15.0, 12.0, 12.0, 12.0), QPageLayout::Millimeter);
        writer.setResolution(600);
        printBlank(writer,
                   {&table.sketch(),
                    {table.page().desk().sheet()},
                    QStringLiteral("Box coater, job 1"),
                    QStringLiteral("mbar·l/s")},
                   nullptr);
    }
    QPdfDocument document;
    document.load(file);
    EXPECT_EQ(document.pageCount(), 3) << "sixty rows of 7 mm under the drawing";
    const QString first = document.getAllText(0).text();
    EXPECT_TRUE(first.contains(QStringLiteral("Sheet 1, seen from the front"))) << first.toStdString();
    EXPECT_TRUE(first.contains(QStringLiteral("Box coater, job 1")));
    EXPECT_TRUE(document.getAllText(2).text().contains(QStringLiteral("60")));
    // Regression: a time was asked for that the sheet had no column for, heads of two columns ran into one
    // another, and the place was cut.
    EXPECT_TRUE(first.contains(QStringLiteral("hh:mm"))) << first.toStdString();
    const QString row = QStringLiteral("o'clock, seen from the front");
    EXPECT_TRUE(first.contains(row)) << first.toStdString();
    std::vector<QRectF> heads;
    for (const QString& head :
         {QStringLiteral("background"), QStringLiteral("highest"), QStringLiteral("first rise"),
          QStringLiteral("time"), QStringLiteral("condition, remark")}) {
        const auto at = first.indexOf(head);
        ASSERT_GE(at, 0) << head.toStdString();
        heads.push_back(document.getSelectionAtIndex(0, static_cast<int>(at), static_cast<int>(head.size()))
                            .boundingRectangle());
    }
    for (std::size_t i = 1; i < heads.size(); ++i)
        EXPECT_LT(heads[i - 1].right(), heads[i].left()) << i;
}

// Regression: only the sheet in view could be printed.
TEST(SketchPage, PrintsEverySheetThatIsWanted)
{
    DrawingTable table;
    table.key(Qt::Key_R);
    table.drag(0.0, 0.0, 150.0, 0.0);
    layByNumber(table, 6);
    model::Sketch sketch = table.sketch();
    model::Sheet rear = sketch.sheets.front();
    rear.id = model::SheetId::create();
    rear.name = "Rear wall";
    sketch.sheets.push_back(rear);
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("blanks.pdf"));
    {
        QPdfWriter writer(file);
        printBlank(writer, {&sketch, {sketch.sheets.front().id, rear.id}, {}, QStringLiteral("mbar·l/s")},
                   nullptr);
    }
    QPdfDocument document;
    document.load(file);
    ASSERT_EQ(document.pageCount(), 2);
    EXPECT_TRUE(document.getAllText(1).text().contains(QStringLiteral("Rear wall")));
}

} // namespace
} // namespace sealwalk::ui
