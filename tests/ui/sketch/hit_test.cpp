// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/hit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace sealwalk::ui {
namespace {

using geometry::Point;
using geometry::Ring;
using geometry::RoundedRectangle;

// Property: a handle dragged to where it stands changes nothing.
TEST(Handles, DraggedNowhereLeaveTheShape)
{
    const double air = 7.0;
    for (const geometry::Shape& shape :
         {geometry::Shape(Ring{{10.0, 20.0}, 60.0}),
          geometry::Shape(RoundedRectangle{{10.0, 20.0}, 200.0, 120.0, 30.0, 0.6})}) {
        for (const Handle& handle : handlesOf(shape, air)) {
            if (handle.what == Handle::What::Turn)
                continue;
            const geometry::Shape same = reshaped(shape, handle, handle.place, air, false);
            const geometry::Box a = geometry::outline(shape).bounds();
            const geometry::Box b = geometry::outline(same).bounds();
            EXPECT_NEAR(geometry::distance(a.low, b.low), 0.0, 0.6) << handle.x << handle.y;
            EXPECT_NEAR(geometry::distance(a.high, b.high), 0.0, 0.6);
        }
    }
}

// Property: a side handle moves its own side only, however the box is turned.
TEST(Handles, OfASideLeaveTheOppositeSide)
{
    std::mt19937 random(5);
    std::uniform_real_distribution<double> number(-3.0, 3.0);
    for (int run = 0; run < 100; ++run) {
        const RoundedRectangle box{{5.0, -8.0}, 200.0, 140.0, 20.0, number(random)};
        for (const Handle& handle : handlesOf(box, 0.0)) {
            if (handle.what != Handle::What::Side)
                continue;
            const geometry::Vector out =
                geometry::Vector{static_cast<double>(handle.x), static_cast<double>(handle.y)}.turned(
                    box.rotation);
            const geometry::Shape larger = reshaped(box, handle, handle.place + 30.0 * out, 0.0, false);
            const auto& after = std::get<RoundedRectangle>(larger);
            const auto opposite = [&](const RoundedRectangle& b) {
                return b.centre +
                       geometry::Vector{-handle.x * b.width / 2.0, -handle.y * b.height / 2.0}.turned(
                           b.rotation);
            };
            EXPECT_NEAR(geometry::distance(opposite(box), opposite(after)), 0.0, 1e-9);
            EXPECT_NEAR(after.width, box.width + (handle.x != 0 ? 30.0 : 0.0), 1e-9);
            EXPECT_NEAR(after.height, box.height + (handle.y != 0 ? 30.0 : 0.0), 1e-9);
        }
    }
}

TEST(Hits, FindTheNearestJointWithinReach)
{
    model::Sketch sketch;
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sketch.sheets.push_back(sheet);
    for (const double x : {0.0, 300.0}) {
        model::Joint joint;
        joint.id = model::JointId::create();
        joint.sheet = sheet.id;
        joint.shape = Ring{{x, 0.0}, 100.0};
        sketch.joints.push_back(joint);
    }
    const auto hit = jointNear(sketch, sheet.id, {104.0, 0.0}, 10.0);
    ASSERT_TRUE(hit.has_value());
    EXPECT_EQ(hit->joint, sketch.joints[0].id);
    EXPECT_NEAR(hit->along, 0.25, 1e-3);
    EXPECT_FALSE(jointNear(sketch, sheet.id, {0.0, 0.0}, 10.0).has_value());
    EXPECT_FALSE(jointNear(sketch, model::SheetId::create(), {104.0, 0.0}, 10.0).has_value());
    EXPECT_EQ(jointsWithin(sketch, sheet.id, {-101.0, -101.0}, {101.0, 101.0}).size(), 1u);
    EXPECT_EQ(jointsWithin(sketch, sheet.id, {500.0, 101.0}, {-101.0, -101.0}).size(), 2u);
}

} // namespace
} // namespace sealwalk::ui
