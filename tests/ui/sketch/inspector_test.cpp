// SPDX-License-Identifier: GPL-3.0-or-later
// Regression: in German the panel at the right was cut off: half a switch, the undo button, the numbers of
// the list, the unit of the limit.
#include "core/editing/joints.h"
#include "tests/support/german.h"
#include "tests/ui/sketch/table.h"
#include "ui/session/job_session.h"
#include "ui/sketch/inspector.h"

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QScrollBar>
#include <QTest>

namespace sealwalk::ui {
namespace {

void expectNothingCut(DrawingTable& table, const char* what)
{
    auto* panel = table.page().findChild<Inspector*>();
    ASSERT_NE(panel, nullptr);
    QTest::qWait(0); // layouts asked for by the last change
    const int room = panel->viewport()->width();
    for (const QWidget* part : panel->widget()->findChildren<QWidget*>()) {
        if (!part->isVisible())
            continue;
        const int right = part->mapTo(panel->widget(), QPoint(part->width(), 0)).x();
        EXPECT_LE(right, room) << what << ": " << part->metaObject()->className() << " "
                               << part->accessibleName().toStdString();
        const auto* label = qobject_cast<const QLabel*>(part);
        if (label != nullptr && !label->wordWrap()) {
            EXPECT_GE(label->width(), label->sizeHint().width())
                << what << ": " << label->text().toStdString();
        }
    }
}

void lookAtEachKind(DrawingTable& table)
{
    table.page().resize(1300, 640);
    expectNothingCut(table, "sheet");
    table.key(Qt::Key_B);
    table.drag(-300.0, 300.0, 200.0, -300.0);
    table.key(Qt::Key_Return);
    table.key(Qt::Key_V);
    expectNothingCut(table, "box");
    table.key(Qt::Key_W);
    table.click(-200.0, -350.0);
    table.click(200.0, -350.0);
    table.key(Qt::Key_Return);
    table.key(Qt::Key_Return);
    table.key(Qt::Key_V);
    expectNothingCut(table, "weld");
    table.key(Qt::Key_PageDown, Qt::ShiftModifier);
    expectNothingCut(table, "point");
    table.key(Qt::Key_A, Qt::ControlModifier);
    expectNothingCut(table, "several");
}

TEST(Inspector, ShowsAllOfItselfInEnglish)
{
    DrawingTable table;
    lookAtEachKind(table);
}

TEST(Inspector, ShowsAllOfItselfInGerman)
{
    const tests::InGerman german;
    DrawingTable table;
    lookAtEachKind(table);
}

QComboBox* kindsOf(DrawingTable& table)
{
    return table.page().findChild<QComboBox*>(QStringLiteral("joint-kind"));
}

// Regression: with the box of kinds in hand the letter of a tool made the joint another kind, without a word.
TEST(Inspector, ALetterIsAToolAndNeverAnotherKind)
{
    DrawingTable table;
    table.key(Qt::Key_B);
    table.drag(-300.0, 300.0, 200.0, -300.0);
    table.key(Qt::Key_V);
    ASSERT_EQ(table.sketch().joints.size(), 1u);
    const model::JointKind kind = table.sketch().joints.front().kind;
    QComboBox* kinds = kindsOf(table);
    ASSERT_NE(kinds, nullptr);
    for (const Qt::Key key : {Qt::Key_H, Qt::Key_Escape}) {
        kinds->setFocus();
        QTest::keyClick(kinds, key);
        EXPECT_EQ(table.sketch().joints.front().kind, kind);
        EXPECT_TRUE(table.canvas().hasFocus());
    }
}

// Regression: who had come to the box by Tab and typed the kind's name drew with other tools instead. One
// choice, one step back.
TEST(Inspector, LettersLookThroughTheListOfABoxReachedByTab)
{
    DrawingTable table;
    table.key(Qt::Key_B);
    table.drag(-300.0, 300.0, 200.0, -300.0);
    table.key(Qt::Key_V);
    const model::Joint before = table.sketch().joints.front();
    QComboBox* kinds = kindsOf(table);
    ASSERT_NE(kinds, nullptr);
    kinds->setFocus(Qt::TabFocusReason);
    QTest::keyClick(kinds, Qt::Key_B);
    ASSERT_TRUE(kinds->view()->isVisible());
    QTest::keyClick(kinds->view(), Qt::Key_E);
    EXPECT_EQ(table.sketch().joints.front(), before) << "not before Enter";
    QTest::keyClick(kinds->view(), Qt::Key_Return);
    EXPECT_EQ(table.sketch().joints.front().kind, model::JointKind::Bellows);
    QTest::keyClick(kinds, Qt::Key_Escape);
    EXPECT_TRUE(table.canvas().hasFocus());
    table.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(table.sketch().joints.front(), before);
    kinds->setFocus(Qt::TabFocusReason);
    QTest::mousePress(kinds, Qt::LeftButton);
    kinds->hidePopup();
    QTest::keyClick(kinds, Qt::Key_H);
    EXPECT_EQ(table.sketch().joints.front(), before) << "after the mouse a letter is a tool again";
}

} // namespace
} // namespace sealwalk::ui
