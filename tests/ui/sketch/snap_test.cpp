// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/snap.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::ui {
namespace {

using geometry::Point;

Snapper withRing()
{
    model::Sketch sketch;
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sketch.sheets.push_back(sheet);
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = sheet.id;
    joint.shape = geometry::Ring{{100.0, 50.0}, 40.0};
    sketch.joints.push_back(joint);
    return Snapper(sketch, sheet.id, {});
}

SnapWish wish()
{
    SnapWish w;
    w.reach = 5.0;
    w.grid = 1.0;
    return w;
}

TEST(Snap, TakesTheMiddleOfAnotherJointThenItsRowOrColumn)
{
    const Snapper snapper = withRing();
    EXPECT_EQ(snapper.snap({102.0, 48.0}, wish()).place, (Point{100.0, 50.0}));
    const Snapped column = snapper.snap({102.0, -200.4}, wish());
    EXPECT_EQ(column.place, (Point{100.0, -200.0}));
    EXPECT_EQ(column.guides.size(), 1u);
    EXPECT_EQ(snapper.snap({20.3, -200.4}, wish()).place, (Point{20.0, -200.0}));
}

TEST(Snap, KeepsToDirectionsByFortyFiveDegreesWithShift)
{
    SnapWish w = wish();
    w.anchor = Point{0.0, 0.0};
    w.onlyStraight = true;
    const Point level = withRing().snap({70.0, 9.0}, w).place;
    EXPECT_NEAR(level.y, 0.0, 1e-9);
    const Point diagonal = withRing().snap({70.0, 60.0}, w).place;
    EXPECT_NEAR(diagonal.x, diagonal.y, 1e-9);
}

TEST(Snap, TakesAnEqualLength)
{
    SnapWish w = wish();
    w.anchor = Point{-300.0, -300.0};
    w.lengths = {200.0};
    const Point taken = withRing().snap({-300.0 + 120.0, -300.0 + 163.0}, w).place;
    EXPECT_NEAR(geometry::distance(taken, *w.anchor), 200.0, 1e-9);
}

TEST(Snap, LeavesThePlaceAloneWithAlt)
{
    SnapWish w = wish();
    w.off = true;
    EXPECT_EQ(withRing().snap({101.37, 49.2}, w).place, (Point{101.37, 49.2}));
}

} // namespace
} // namespace sealwalk::ui
