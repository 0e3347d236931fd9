// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/laying.h"
#include "core/editing/points.h"
#include "core/editing/sense.h"
#include "tests/core/editing/drawn.h"

#include <limits>

namespace sealwalk::editing {
namespace {

using geometry::FreePath;
using geometry::Ring;
using geometry::RoundedRectangle;
using geometry::Spot;

TEST(Laying, PutsPointsEvenlyRoundARingClockwiseFromTheTop)
{
    const model::Sketch sketch = withRing(4);
    expectAt(sketch, 1, {0.0, 100.0});
    expectAt(sketch, 2, {100.0, 0.0});
    expectAt(sketch, 3, {0.0, -100.0});
    expectAt(sketch, 4, {-100.0, 0.0});
}

TEST(Laying, FollowsTheSenseAndTheStart)
{
    const model::Sketch sketch = withSheet();
    model::Joint joint = jointOn(sketch, Ring{{0.0, 0.0}, 100.0});
    joint.clockwise = false;
    joint.start = 0.25; // 3 o'clock
    const model::Sketch drawn = done(sketch, addJoint(sketch, joint, byNumber(4)));
    expectAt(drawn, 1, {100.0, 0.0});
    expectAt(drawn, 2, {0.0, 100.0});
    expectAt(drawn, 3, {-100.0, 0.0});
    expectAt(drawn, 4, {0.0, -100.0});
}

TEST(Laying, PutsEachPointOfAnOpenJointInTheMiddleOfAnEqualPart)
{
    const model::Sketch sketch = withSheet();
    model::Joint weld = jointOn(sketch, FreePath{{{0.0, 0.0}, {1000.0, 0.0}}, false, false});
    const model::Sketch drawn = done(sketch, addJoint(sketch, weld, byNumber(5)));
    for (int i = 0; i < 5; ++i)
        expectAt(drawn, i + 1, {100.0 + 200.0 * i, 0.0});
    weld.clockwise = false;
    const model::Sketch reversed = done(sketch, addJoint(sketch, weld, byNumber(5)));
    expectAt(reversed, 1, {900.0, 0.0});
}

TEST(Laying, NumbersAFreeClosedLineAsItIsSeenWhicheverWayItWasDrawn)
{
    const model::Sketch sketch = withSheet();
    const std::vector<geometry::Point> clockwise{{0.0, 0.0}, {0.0, 100.0}, {100.0, 100.0}, {100.0, 0.0}};
    const std::vector<geometry::Point> other{{0.0, 0.0}, {100.0, 0.0}, {100.0, 100.0}, {0.0, 100.0}};
    for (const auto& nodes : {clockwise, other}) {
        const model::Sketch drawn =
            done(sketch, addJoint(sketch, jointOn(sketch, FreePath{nodes, true, false}), byNumber(4)));
        expectAt(drawn, 1, {0.0, 0.0});
        expectAt(drawn, 2, {0.0, 100.0});
        expectAt(drawn, 3, {100.0, 100.0});
        expectAt(drawn, 4, {100.0, 0.0});
    }
}

TEST(Laying, GivesASpotOnePointWhateverIsAskedFor)
{
    const model::Sketch sketch = withSheet();
    const model::Sketch drawn =
        done(sketch, addJoint(sketch, jointOn(sketch, Spot{{5.0, 6.0}, 12.0}), byNumber(9)));
    ASSERT_EQ(drawn.points.size(), 1u);
    expectAt(drawn, 1, {5.0, 6.0});
}

// Property: a pitch is never exceeded, and one point fewer would exceed it.
TEST(Laying, ByPitchUsesTheFewestPointsThatKeepIt)
{
    for (const double length : {10.0, 100.0, 1000.0, 3651.2}) {
        for (const double pitch : {1.0, 7.0, 33.3, 150.0, 5000.0}) {
            const Result<int> count = countOf(byPitch(pitch), length);
            if (length / pitch > kMostPoints) {
                EXPECT_FALSE(count.has_value());
                continue;
            }
            ASSERT_TRUE(count.has_value());
            EXPECT_LE(length / *count, pitch * (1.0 + 1e-9));
            if (*count > 1) {
                EXPECT_GT(length / (*count - 1), pitch);
            }
        }
    }
    EXPECT_EQ(countOf(byPitch(100.0), 1000.0).value(), 10); // not eleven by rounding
    EXPECT_EQ(countOf(byPitch(0.1), 0.3).value(), 3);
}

// Regression: two points on a hose lay a quarter from its ends, not at the ferrules where it leaks.
TEST(Laying, AHoseHasPointsAtItsEnds)
{
    const model::Sketch sketch = withSheet();
    model::Joint hose = jointOn(sketch, FreePath{{{0.0, 0.0}, {300.0, 0.0}}, false, false});
    hose.kind = model::JointKind::Hose;
    const model::Sketch two = done(sketch, addJoint(sketch, hose, byNumber(2)));
    expectAt(two, 1, {0.0, 0.0});
    expectAt(two, 2, {300.0, 0.0});
    const model::Sketch byHundred = done(sketch, addJoint(sketch, hose, byPitch(100.0)));
    ASSERT_EQ(byHundred.points.size(), 4u);
    expectAt(byHundred, 3, {200.0, 0.0});
    EXPECT_EQ(spacing(hose, 4), 100.0);
    const model::Sketch one = done(sketch, addJoint(sketch, hose, byNumber(1)));
    expectAt(one, 1, {150.0, 0.0});
}

TEST(Laying, RefusesNumbersAndPitchesThatMeanNothing)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(countOf(byNumber(0), 100.0).error().message,
              "0 points are asked for; a joint can be given 1 to 2000");
    EXPECT_FALSE(countOf(byNumber(-4), 100.0).has_value());
    EXPECT_FALSE(countOf(byNumber(2001), 100.0).has_value());
    EXPECT_EQ(countOf(byPitch(0.0), 100.0).error().message, "the pitch must be above 0 mm");
    EXPECT_FALSE(countOf(byPitch(-5.0), 100.0).has_value());
    EXPECT_FALSE(countOf(byPitch(nan), 100.0).has_value());
    EXPECT_FALSE(countOf(byPitch(1e-9), 100.0).has_value());
}

TEST(Laying, AnewKeepsTheNumbersThatAreThere)
{
    model::Sketch sketch = withRing(6);
    const model::JointId ring = sketch.joints[0].id;
    sketch = done(sketch, addJoint(sketch, jointOn(sketch, Spot{{300.0, 0.0}, 12.0}, "Gauge"), byNumber(1)));
    const model::PointId first = sketch.points[0].id;
    sketch = done(sketch, layPoints(sketch, ring, byNumber(8), {}));
    EXPECT_EQ(sketch.points[0].id, first);
    std::vector<int> numbers;
    for (const model::TestPoint* point : pointsInWalk(sketch, *sketch.joint(ring)))
        numbers.push_back(point->number);
    EXPECT_EQ(numbers, (std::vector<int>{1, 2, 3, 4, 5, 6, 8, 9}));
    sketch = done(sketch, layPoints(sketch, ring, byNumber(3), {}));
    EXPECT_EQ(sketch.points.size(), 4u);
    EXPECT_EQ(sketch.lastNumber, 9);
    sketch = done(sketch, layPoints(sketch, ring, byNumber(4), {}));
    EXPECT_NE(sketch.pointNumbered(10), nullptr) << "numbers 4 to 9 were given and must not come again";
}

TEST(Laying, IsRefusedOncePointsHaveReadings)
{
    const model::Sketch sketch = withRing(6);
    const Result<Edit> edit = layPoints(sketch, sketch.joints[0].id, byNumber(8), {sketch.points[3].id});
    ASSERT_FALSE(edit.has_value());
    EXPECT_EQ(edit.error().message,
              "point 4 on Seal has readings, so its points cannot be laid anew; add a point or "
              "split a stretch instead");
}

TEST(Laying, BeginsAtAHigherNumberWhenAsked)
{
    const model::Sketch sketch = withRing(4);
    Laying laying = byNumber(3);
    laying.first = 101;
    const model::Sketch drawn =
        done(sketch, addJoint(sketch, jointOn(sketch, Ring{{500.0, 0.0}, 30.0}, "Port"), laying));
    EXPECT_NE(drawn.pointNumbered(101), nullptr);
    EXPECT_EQ(drawn.lastNumber, 103);
    laying.first = 4;
    EXPECT_EQ(
        addJoint(sketch, jointOn(sketch, Ring{{500.0, 0.0}, 30.0}), laying).error().message,
        "number 4 is not above 4, the highest so far, and no number is used twice; the next free one is 5");
}

// Regression: points that were there kept their numbers, and the note said that they were laid.
TEST(Laying, AnewBeginsAtTheNumberAskedFor)
{
    const model::Sketch sketch = withRing(4);
    Laying laying = byNumber(4);
    laying.first = 501;
    const model::Sketch laid = done(sketch, layPoints(sketch, sketch.joints[0].id, laying, {}));
    ASSERT_EQ(laid.points.size(), 4U);
    EXPECT_EQ(laid.points[0].number, 501);
    EXPECT_EQ(laid.points[0].id, sketch.points[0].id);
    EXPECT_EQ(laid.lastNumber, 504);
}

TEST(Laying, CountsUpWhatIsMarkedOnTheObject)
{
    Laying laying = byNumber(3);
    laying.mark = "D09";
    const model::Sketch sketch = withRing(2);
    const model::Sketch laid = done(sketch, layPoints(sketch, sketch.joints[0].id, laying, {}));
    ASSERT_EQ(laid.points.size(), 3U);
    EXPECT_EQ(laid.points[0].place, "D09");
    EXPECT_EQ(laid.points[1].place, "D10");
    EXPECT_EQ(laid.points[2].place, "D11");
    EXPECT_EQ(laid.points[2].number, 3) << "a mark is no number";
    for (const auto& [first, third] : {std::pair{"K01", "K03"},
                                       {"S", "S3"},
                                       {"99", "101"},
                                       {"A-7b", "A-7b3"},
                                       {"P000000000009", "P000000000011"}})
        EXPECT_EQ(markBehind(first, 2), third);
}

} // namespace
} // namespace sealwalk::editing
