// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/sketch.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>
#include <set>
#include <string>

namespace sealwalk::model {
namespace {

using geometry::FreePath;
using geometry::Point;
using geometry::Ring;
using geometry::Spot;

struct Drawn
{
    Sketch sketch;
    JointId joint;
};

Drawn withJoint(geometry::Shape shape, const std::vector<double>& along)
{
    Drawn drawn;
    Sheet sheet;
    sheet.id = SheetId::create();
    sheet.name = "Door";
    sheet.seenFrom = "the front";
    drawn.joint = JointId::create();
    Joint joint;
    joint.id = drawn.joint;
    joint.sheet = sheet.id;
    joint.name = "Seal";
    joint.shape = std::move(shape);
    drawn.sketch.sheets.push_back(sheet);
    drawn.sketch.joints.push_back(joint);
    for (const double a : along)
        drawn.sketch.points.push_back(
            {PointId::create(), ++drawn.sketch.lastNumber, drawn.joint, a, {}, false});
    return drawn;
}

// Property: the stretches of a joint follow each other without gap and are as long as the joint together.
TEST(Stretches, CoverTheJoint)
{
    std::mt19937 random(11);
    std::uniform_real_distribution<double> fraction(0.0, 1.0);
    for (int run = 0; run < 300; ++run) {
        const bool closed = run % 2 == 0;
        const geometry::Shape shape =
            closed ? geometry::Shape(Ring{{0.0, 0.0}, 200.0})
                   : geometry::Shape(FreePath{{{0.0, 0.0}, {500.0, 100.0}, {900.0, 0.0}}, false, false});
        std::vector<double> along;
        for (int i = 0; i < 1 + run % 20; ++i)
            along.push_back(fraction(random));
        const Drawn drawn = withJoint(shape, along);
        const double length = geometry::outline(shape).length();
        const auto parts = stretches(drawn.sketch, drawn.joint);
        ASSERT_EQ(parts.size(), along.size());
        double sum = 0.0;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            EXPECT_LE(parts[i].from, parts[i].centre);
            EXPECT_LE(parts[i].centre, parts[i].to);
            if (i > 0) {
                EXPECT_NEAR(parts[i].from, parts[i - 1].to, 1e-9);
            }
            sum += parts[i].to - parts[i].from;
        }
        EXPECT_NEAR(sum, length, 1e-6);
        if (closed) {
            EXPECT_NEAR(parts.front().from + length, parts.back().to, 1e-6);
        }
    }
}

TEST(Stretches, LeaveRetiredPointsOut)
{
    Drawn drawn = withJoint(Ring{{0.0, 0.0}, 100.0}, {0.0, 0.25, 0.5, 0.75});
    drawn.sketch.points[1].retired = true;
    const auto parts = stretches(drawn.sketch, drawn.joint);
    ASSERT_EQ(parts.size(), 3u);
    const double length = geometry::outline(Ring{{0.0, 0.0}, 100.0}).length();
    EXPECT_NEAR(parts[0].to, length / 4.0, 1e-9); // halfway to the point at a half
}

TEST(Stretches, ASpotHasOneWithoutLength)
{
    const Drawn drawn = withJoint(Spot{{5.0, 5.0}, 12.0}, {0.0});
    const auto parts = stretches(drawn.sketch, drawn.joint);
    ASSERT_EQ(parts.size(), 1u);
    EXPECT_EQ(parts[0].from, parts[0].to);
    EXPECT_EQ(placeOf(drawn.sketch, parts[0].point), (Point{5.0, 5.0}));
}

// Property: twelve points laid evenly on a ring from the top are the twelve hours of a clock face.
TEST(PlaceText, TellsTheHoursOfAClockFace)
{
    std::vector<double> along;
    for (int i = 0; i < 12; ++i)
        along.push_back(i / 12.0);
    Drawn drawn = withJoint(Ring{{300.0, 200.0}, 150.0}, along);
    for (int i = 0; i < 12; ++i) {
        const std::string hour = std::to_string(i == 0 ? 12 : i);
        EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[static_cast<std::size_t>(i)]),
                  hour + " o'clock, seen from the front");
    }
    // With up to the right, what the sheet shows at 3 o'clock is the top.
    drawn.sketch.sheets[0].upDirection = 0.0;
    EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[3]), "12 o'clock, seen from the front");
    EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[0]), "9 o'clock, seen from the front");
}

// Regression: neighbours of sixteen points round a door seal were both at 2 o'clock.
TEST(PlaceText, TellsNeighboursApartByTheHalfHour)
{
    std::vector<double> along;
    for (int i = 0; i < 16; ++i)
        along.push_back(i / 16.0);
    const Drawn drawn = withJoint(Ring{{300.0, 200.0}, 150.0}, along);
    std::set<std::string> places;
    for (const TestPoint& point : drawn.sketch.points)
        places.insert(placeText(drawn.sketch, point));
    EXPECT_EQ(places.size(), 16U);
    EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[2]), "1:30 o'clock, seen from the front");
}

TEST(PlaceText, TellsMillimetresOnAnOpenJointAndWhatAPersonTyped)
{
    Drawn drawn = withJoint(FreePath{{{0.0, 0.0}, {1000.0, 0.0}}, false, false}, {0.64});
    EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[0]), "640 mm from the start");
    drawn.sketch.points[0].place = "behind the frame";
    EXPECT_EQ(placeText(drawn.sketch, drawn.sketch.points[0]), "behind the frame");
}

// Property: with the outline at hand it says the same, on every shape.
TEST(PlaceText, IsTheSameFromTheOutline)
{
    const geometry::Shape shapes[] = {Ring{{300.0, 200.0}, 150.0}, Spot{{5.0, 5.0}, 12.0},
                                      FreePath{{{0.0, 0.0}, {1000.0, 0.0}}, false, false}};
    for (const geometry::Shape& shape : shapes) {
        Drawn drawn = withJoint(shape, {0.3});
        for (const char* typed : {"", "behind the frame"}) {
            TestPoint& point = drawn.sketch.points[0];
            point.place = typed;
            EXPECT_EQ(
                placeText(&drawn.sketch.sheets[0], drawn.sketch.joints[0], geometry::outline(shape), point),
                placeText(drawn.sketch, point));
        }
    }
}

// Property
TEST(Sketch, KnowsTheJointOfAPointAndWhetherItIsOfTheSetUp)
{
    Drawn drawn = withJoint(Ring{{300.0, 200.0}, 150.0}, {0.3});
    const PointId point = drawn.sketch.points[0].id;
    ASSERT_NE(drawn.sketch.jointOf(point), nullptr);
    EXPECT_EQ(drawn.sketch.jointOf(point)->id, drawn.joint);
    EXPECT_FALSE(drawn.sketch.isOfSetup(point));
    drawn.sketch.joints[0].isSetup = true;
    EXPECT_TRUE(drawn.sketch.isOfSetup(point));
    EXPECT_EQ(drawn.sketch.jointOf(PointId::create()), nullptr);
    EXPECT_FALSE(drawn.sketch.isOfSetup(PointId::create()));
    drawn.sketch.joints.clear();
    EXPECT_FALSE(drawn.sketch.isOfSetup(point)) << "its joint is unknown";
}

TEST(HeightOn, FollowsTheUpDirectionAndIsZeroOnAPlan)
{
    Sheet sheet;
    EXPECT_NEAR(heightOn(sheet, {30.0, 70.0}), 70.0, 1e-9);
    sheet.upDirection = std::numbers::pi;
    EXPECT_NEAR(heightOn(sheet, {30.0, 70.0}), -30.0, 1e-9);
    sheet.seenFromAbove = true;
    EXPECT_EQ(heightOn(sheet, {30.0, 70.0}), 0.0);
}

TEST(Sketch, SaysWhatIsWrongWithIt)
{
    const Drawn good = withJoint(Ring{{0.0, 0.0}, 100.0}, {0.0, 0.5});
    EXPECT_EQ(complaint(good.sketch), "");

    const auto broken = [&](auto change) {
        Sketch sketch = good.sketch;
        change(sketch);
        return complaint(sketch);
    };
    EXPECT_EQ(broken([](Sketch& s) { s.points[1].number = 1; }), "point number 1 is given twice");
    EXPECT_EQ(broken([](Sketch& s) { s.points[1].number = 3; }), "point number 3 lies outside 1 … 2");
    EXPECT_EQ(broken([](Sketch& s) { s.points[0].number = 0; }), "point number 0 lies outside 1 … 2");
    EXPECT_EQ(broken([](Sketch& s) { s.points[0].along = 1.5; }), "point 1 lies off its joint");
    EXPECT_EQ(broken([](Sketch& s) { s.points[0].joint = JointId::create(); }), "point 1 lies on no joint");
    EXPECT_EQ(broken([](Sketch& s) { s.points[1].id = s.points[0].id; }),
              "point 2 has no identity of its own");
    EXPECT_EQ(broken([](Sketch& s) { s.joints[0].sheet = SheetId::create(); }),
              "joint \"Seal\" lies on no sheet");
    EXPECT_EQ(broken([](Sketch& s) {
                  s.joints[0].shape = Ring{{0.0, 0.0}, 0.0};
              }),
              "joint \"Seal\": a ring needs a radius above 0 mm");
}

} // namespace
} // namespace sealwalk::model
