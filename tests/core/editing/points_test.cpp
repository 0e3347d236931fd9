// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/points.h"
#include "core/editing/sense.h"
#include "tests/core/editing/drawn.h"

namespace sealwalk::editing {
namespace {

std::vector<int> walk(const model::Sketch& sketch)
{
    std::vector<int> numbers;
    for (const model::TestPoint* point : pointsInWalk(sketch, sketch.joints[0]))
        numbers.push_back(point->number);
    return numbers;
}

TEST(Points, AddedGetTheNextNumberWhereTheyAreWanted)
{
    const model::Sketch sketch = withRing(4);
    const model::Sketch next = done(sketch, addPointNear(sketch, sketch.joints[0].id, {80.0, 80.0}, 20.0));
    EXPECT_EQ(walk(next), (std::vector<int>{1, 5, 2, 3, 4}));
    const double half = 100.0 / std::sqrt(2.0);
    expectAt(next, 5, {half, half});
    EXPECT_EQ(addPointNear(sketch, sketch.joints[0].id, {180.0, 0.0}, 20.0).error().message,
              "the place lies 80 mm off Seal; put the cursor on the joint");
    EXPECT_FALSE(addPoint(sketch, sketch.joints[0].id, 1.2).has_value());
}

TEST(Points, ASplitStretchBecomesTwoWithTheirPointsInTheMiddle)
{
    const model::Sketch sketch = withRing(4); // stretches of a quarter, centred on 0, 1/4, 1/2, 3/4
    const model::JointId ring = sketch.joints[0].id;
    const model::Sketch next = done(sketch, splitStretch(sketch, ring, 0.25, {}));
    EXPECT_EQ(walk(next), (std::vector<int>{1, 2, 5, 3, 4}));
    EXPECT_NEAR(next.pointNumbered(2)->along, 0.1875, 1e-9);
    EXPECT_NEAR(next.pointNumbered(5)->along, 0.3125, 1e-9);
    // The stretch of point 1 lies across the start of the outline.
    const model::Sketch across = done(sketch, splitStretch(sketch, ring, 0.95, {}));
    EXPECT_NEAR(across.pointNumbered(5)->along, 0.9125, 1e-9);
    // A point with readings stays where it was sprayed.
    const PointSet readings{sketch.pointNumbered(2)->id};
    const model::Sketch kept = done(sketch, splitStretch(sketch, ring, 0.28, readings), readings);
    EXPECT_EQ(kept.pointNumbered(2)->along, 0.25);
    EXPECT_NEAR(kept.pointNumbered(5)->along, (0.28 + 0.375) / 2.0, 1e-9);
}

TEST(Points, MoveAlongTheirJointAndDropATypedPlace)
{
    model::Sketch sketch = withRing(4);
    sketch = done(sketch, setPlace(sketch, sketch.points[0].id, "under the hinge"));
    const model::Sketch next = done(sketch, movePoint(sketch, sketch.points[0].id, 0.1));
    EXPECT_EQ(next.points[0].along, 0.1);
    EXPECT_EQ(next.points[0].place, "");
    EXPECT_FALSE(movePoint(sketch, sketch.points[0].id, -0.1).has_value());
}

TEST(Points, WithReadingsRetireAndComeBack)
{
    const model::Sketch sketch = withRing(4);
    const PointSet readings{sketch.points[2].id};
    const model::Sketch next = done(sketch, retire(sketch, sketch.points[2].id, readings), readings);
    EXPECT_EQ(next.points.size(), 4u);
    EXPECT_TRUE(next.points[2].retired);
    EXPECT_EQ(walk(next), (std::vector<int>{1, 2, 4}));
    EXPECT_EQ(done(next, restore(next, next.points[2].id)), sketch);
    const model::Sketch gone = done(sketch, retire(sketch, sketch.points[3].id, readings), readings);
    EXPECT_EQ(gone.points.size(), 3u);
    EXPECT_EQ(walk(done(gone, addPoint(gone, gone.joints[0].id, 0.8))), (std::vector<int>{1, 2, 3, 5}));
}

TEST(Points, AreNumberedTheOtherWayAndFromAnotherStart)
{
    const model::Sketch sketch = withRing(4);
    const model::JointId ring = sketch.joints[0].id;
    const model::Sketch reversed = done(sketch, reverseSense(sketch, ring, {}));
    EXPECT_EQ(walk(reversed), (std::vector<int>{1, 2, 3, 4}));
    expectAt(reversed, 1, {0.0, 100.0});
    expectAt(reversed, 2, {-100.0, 0.0});
    const model::Sketch started = done(sketch, startAt(sketch, ring, 0.52, {}));
    expectAt(started, 1, {0.0, -100.0});
    expectAt(started, 2, {-100.0, 0.0});
    const PointSet readings{sketch.points[0].id};
    EXPECT_FALSE(reverseSense(sketch, ring, readings).has_value());
    EXPECT_FALSE(startAt(sketch, ring, 0.5, readings).has_value());
}

TEST(Points, AreRenumberedOnlyBeforeTheFirstReading)
{
    model::Sketch sketch = withRing(4);
    sketch = done(sketch, retire(sketch, sketch.points[0].id, {}));
    sketch = done(sketch, addPoint(sketch, sketch.joints[0].id, 0.9));
    const model::Sketch fresh = done(sketch, renumber(sketch, {}));
    EXPECT_EQ(walk(fresh), (std::vector<int>{1, 2, 3, 4}));
    EXPECT_EQ(fresh.lastNumber, 4);
    EXPECT_EQ(renumber(sketch, {sketch.points[1].id}).error().message,
              "point 3 has readings, so numbers stay; add a point or split a stretch instead");
    const model::Sketch dealt = done(sketch, addPoint(sketch, sketch.joints[0].id, 0.1));
    EXPECT_EQ(walk(dealt), (std::vector<int>{6, 2, 3, 4, 5}));
    EXPECT_EQ(walk(done(dealt, renumberJoint(dealt, dealt.joints[0].id, {}))),
              (std::vector<int>{2, 3, 4, 5, 6}));
}

TEST(Sense, WalkAndOutlineAreInversesOfEachOther)
{
    const model::Sketch sketch = withSheet();
    for (const bool clockwise : {true, false}) {
        for (const double start : {0.0, 0.3, 0.99}) {
            model::Joint ring = jointOn(sketch, geometry::Ring{{0.0, 0.0}, 10.0});
            ring.clockwise = clockwise;
            ring.start = start;
            for (double along = 0.0; along < 1.0; along += 0.07)
                EXPECT_NEAR(alongOf(ring, walkOf(ring, along)), along, 1e-9);
        }
    }
}

} // namespace
} // namespace sealwalk::editing
