// SPDX-License-Identifier: GPL-3.0-or-later
// The sketch by keys alone.
#include "core/editing/joints.h"
#include "tests/support/german.h"
#include "tests/ui/sketch/table.h"
#include "ui/session/job_session.h"

#include <gtest/gtest.h>

namespace sealwalk::ui {
namespace {

using geometry::FreePath;
using geometry::Spot;

/// A weld of four nodes from the left to the right, chosen.
void drawWeld(DrawingTable& table)
{
    table.key(Qt::Key_W);
    for (const double x : {-300.0, -100.0, 100.0, 300.0})
        table.click(x, 0.0);
    table.key(Qt::Key_Return);
    table.key(Qt::Key_V);
    ASSERT_EQ(table.sketch().joints.size(), 1U);
}

const FreePath& weld(const DrawingTable& table)
{
    return std::get<FreePath>(table.sketch().joints.front().shape);
}

// Regression: Enter after the click put a second fitting with a second point on the same place.
TEST(SketchKeys, EnterAfterTheClickLaysASpotToolDown)
{
    DrawingTable table;
    table.key(Qt::Key_S);
    table.click(50.0, 60.0);
    table.key(Qt::Key_Return);
    EXPECT_EQ(table.sketch().joints.size(), 1U);
    EXPECT_EQ(table.sketch().points.size(), 1U);
    EXPECT_EQ(table.canvas().tool()->title(), QStringLiteral("Select"));
    // and by a second visit there is none on the same place either
    table.key(Qt::Key_S);
    table.click(50.0, 60.0);
    EXPECT_EQ(table.sketch().joints.size(), 1U);
    EXPECT_TRUE(table.note().contains(QLatin1String("there already"))) << table.note().toStdString();
    table.click(150.0, 60.0);
    EXPECT_EQ(table.sketch().joints.size(), 2U);
}

// Regression: who drew in German found "Weld seam" in the list.
TEST(SketchKeys, WhatIsDrawnIsNamedInTheWindowsLanguage)
{
    {
        DrawingTable table;
        drawWeld(table);
        EXPECT_EQ(table.sketch().joints.front().name, "Weld seam");
    }
    const tests::InGerman german;
    DrawingTable table;
    drawWeld(table);
    EXPECT_EQ(table.sketch().joints.front().name, "Schweißnaht");
}

TEST(SketchKeys, EnterAfterTheClickLaysOtherToolsDown)
{
    DrawingTable table;
    drawWeld(table);
    table.key(Qt::Key_Return); // points
    const std::size_t points = table.sketch().points.size();
    ASSERT_GT(points, 1U);
    table.page().takeTool(ToolId::AddPoint);
    table.click(33.0, 0.0);
    ASSERT_EQ(table.sketch().points.size(), points + 1);
    table.key(Qt::Key_Return);
    EXPECT_EQ(table.sketch().points.size(), points + 1);
    EXPECT_EQ(table.canvas().tool()->title(), QStringLiteral("Select"));
    table.page().takeTool(ToolId::AddPoint);
    table.click(33.0, 0.0);
    EXPECT_EQ(table.sketch().points.size(), points + 1) << "two points on one place";
    table.page().takeTool(ToolId::Split);
    table.click(-60.0, 0.0);
    const std::size_t split = table.sketch().points.size();
    EXPECT_EQ(split, points + 2);
    table.key(Qt::Key_Return);
    EXPECT_EQ(table.sketch().points.size(), split);
}

// Regression: nodes could be moved by the mouse only.
TEST(SketchKeys, StepThroughNodesAndMoveThem)
{
    DrawingTable table;
    drawWeld(table);
    table.key(Qt::Key_Escape); // nothing chosen
    table.key(Qt::Key_PageDown);
    table.key(Qt::Key_E);
    table.key(Qt::Key_E);
    EXPECT_TRUE(table.canvas().tool()->title().startsWith(QLatin1String("Node 2 of 4")));
    EXPECT_TRUE(table.canvas().accessibleDescription().contains(QLatin1String("Node 2 of 4")));
    const geometry::Point before = weld(table).nodes[1];
    table.key(Qt::Key_Up);
    table.key(Qt::Key_Right, Qt::ShiftModifier);
    table.key(Qt::Key_Right, Qt::ShiftModifier);
    table.key(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_NEAR(weld(table).nodes[1].x, before.x + 20.0, 1e-9);
    EXPECT_NEAR(weld(table).nodes[1].y, before.y - 99.0, 1e-9);
    EXPECT_EQ(weld(table).nodes[0].y, 0.0);
    table.key(Qt::Key_E, Qt::ShiftModifier);
    table.key(Qt::Key_E, Qt::ShiftModifier); // round to the last
    table.type("-120");
    table.key(Qt::Key_Tab);
    table.type("45.5");
    table.key(Qt::Key_Return);
    EXPECT_EQ(weld(table).nodes[3], (geometry::Point{-120.0, 45.5}));
}

TEST(SketchKeys, AddAndTakeOutNodes)
{
    DrawingTable table;
    drawWeld(table);
    table.key(Qt::Key_E);
    table.key(Qt::Key_Insert);
    ASSERT_EQ(weld(table).nodes.size(), 5U);
    EXPECT_NEAR(weld(table).nodes[1].x, -200.0, 2.0);
    for (int i = 0; i < 3; ++i)
        table.key(Qt::Key_Delete);
    ASSERT_EQ(weld(table).nodes.size(), 2U);
    table.key(Qt::Key_Delete);
    EXPECT_EQ(weld(table).nodes.size(), 2U);
    EXPECT_TRUE(table.note().contains(QLatin1String("at least two nodes"))) << table.note().toStdString();
    table.key(Qt::Key_Escape); // leaves the node, the joint stays chosen
    table.key(Qt::Key_Delete);
    EXPECT_TRUE(table.sketch().joints.empty());
}

TEST(SketchKeys, NodesOfALockedOneStay)
{
    DrawingTable table;
    drawWeld(table);
    table.key(Qt::Key_L);
    table.key(Qt::Key_E);
    EXPECT_TRUE(table.note().contains(QLatin1String("not locked"))) << table.note().toStdString();
    table.key(Qt::Key_Up);
    EXPECT_EQ(weld(table).nodes[0].y, 0.0);
}

// Regression: with a tool in hand an arrow moved 10 mm and Shift 1 mm, other than the key card says, and both
// changed with the zoom.
TEST(SketchKeys, ArrowsMoveTheHandAsTheCardSays)
{
    for (const double zoom : {1.0, 0.02, 8.0}) {
        DrawingTable table;
        table.canvas().zoom(zoom);
        table.key(Qt::Key_W);
        table.key(Qt::Key_Left); // onto whole millimetres
        table.key(Qt::Key_Space);
        table.key(Qt::Key_Right, Qt::ShiftModifier);
        table.key(Qt::Key_Right, Qt::ShiftModifier);
        table.key(Qt::Key_Up);
        table.key(Qt::Key_Space);
        table.key(Qt::Key_Down, Qt::ControlModifier);
        table.key(Qt::Key_Space);
        table.key(Qt::Key_Return);
        ASSERT_EQ(table.sketch().joints.size(), 1U) << zoom;
        ASSERT_EQ(weld(table).nodes.size(), 3U) << zoom;
        EXPECT_NEAR(weld(table).nodes[1].x - weld(table).nodes[0].x, 20.0, 1e-6) << zoom;
        EXPECT_NEAR(weld(table).nodes[1].y - weld(table).nodes[0].y, 1.0, 1e-6) << zoom;
        EXPECT_NEAR(weld(table).nodes[2].y - weld(table).nodes[1].y, -100.0, 1e-6) << zoom;
    }
}

} // namespace
} // namespace sealwalk::ui
