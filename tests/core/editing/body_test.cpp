// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/body.h"
#include "core/editing/clip.h"
#include "core/editing/gestures.h"
#include "tests/core/editing/drawn.h"

namespace sealwalk::editing {
namespace {

void expectSame(const std::vector<geometry::FreePath>& lines, const std::vector<geometry::FreePath>& wanted)
{
    ASSERT_EQ(lines.size(), wanted.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        ASSERT_EQ(lines[i].nodes.size(), wanted[i].nodes.size());
        for (std::size_t n = 0; n < lines[i].nodes.size(); ++n)
            EXPECT_NEAR(geometry::distance(lines[i].nodes[n], wanted[i].nodes[n]), 0.0, 1e-5);
    }
}

// Property: the leaf of a door follows its seal by the same margin, in one step that undoes whole.
TEST(Body, OfADoorFollowsTheSealsSizes)
{
    const model::Sketch empty = withSheet();
    Door door;
    door.joint = jointOn(empty, geometry::RoundedRectangle{{500, 600}, 400, 300, 30, 0.2});
    door.margin = 24.0;
    door.laying.reset();
    const model::Sketch drawn = done(empty, drawDoor(empty, door));
    const geometry::RoundedRectangle wanted{{500, 600}, 860, 1060, 110, 0.2};
    const model::Sketch resized = done(drawn, reshapeWithBody(drawn, drawn.joints[0].id, wanted));
    EXPECT_EQ(resized.joints[0].shape, geometry::Shape(wanted));
    expectSame(resized.sheets[0].outlines, doorLines(wanted, 24.0, door.hingesLeft));
    // And once more: the margin is read off the drawing, not remembered.
    const geometry::RoundedRectangle again{{500, 600}, 200, 200, 10, 0.2};
    const model::Sketch smaller = done(resized, reshapeWithBody(resized, resized.joints[0].id, again));
    expectSame(smaller.sheets[0].outlines, doorLines(again, 24.0, door.hingesLeft));
}

model::Sketch flangeAtOrigin()
{
    const model::Sketch empty = withSheet();
    Flange flange;
    flange.joint = jointOn(empty, geometry::Ring{{0, 0}, 100});
    flange.outerRadius = 150.0;
    flange.bolts = 8;
    flange.laying.reset();
    return done(empty, drawFlange(empty, flange));
}

// Property: a flange keeps its margin and its bolts.
TEST(Body, OfAFlangeKeepsItsBolts)
{
    const model::Sketch drawn = flangeAtOrigin();
    const geometry::Ring wanted{{0, 0}, 130};
    const model::Sketch resized = done(drawn, reshapeWithBody(drawn, drawn.joints[0].id, wanted));
    expectSame(resized.sheets[0].outlines, flangeLines(wanted, 180.0, 8));
}

// Regression: a ring that was moved, or deleted, left its flange behind.
TEST(Body, GoesWhereItsJointGoes)
{
    const model::Sketch drawn = flangeAtOrigin();
    const std::vector<model::JointId> ring{drawn.joints[0].id};
    const model::Sketch moved = done(drawn, move(drawn, ring, {250.0, 40.0}));
    expectSame(moved.sheets[0].outlines, flangeLines(geometry::Ring{{250, 40}, 100}, 150.0, 8));
    const model::Sketch back = done(moved, move(moved, ring, {-250.0, -40.0}));
    expectSame(back.sheets[0].outlines, drawn.sheets[0].outlines);
    EXPECT_TRUE(done(moved, removeJoints(moved, ring, {})).sheets[0].outlines.empty());
}

// Regression: the copies of a flange in a row or on a circle were rings without a flange.
TEST(Body, IsCopiedWithItsJoint)
{
    const model::Sketch drawn = flangeAtOrigin();
    const std::vector<model::JointId> ring{drawn.joints[0].id};
    const model::Sketch row = done(drawn, copyInRow(drawn, ring, {400.0, 0.0}, 3));
    std::vector<geometry::FreePath> wanted;
    for (const double x : {0.0, 400.0, 800.0})
        for (const geometry::FreePath& line : flangeLines(geometry::Ring{{x, 0}, 100}, 150.0, 8))
            wanted.push_back(line);
    expectSame(row.sheets[0].outlines, wanted);
    const model::Sketch circle = done(drawn, copyOnCircle(drawn, ring, {0.0, -500.0}, 4));
    EXPECT_EQ(circle.sheets[0].outlines.size(), 4 * drawn.sheets[0].outlines.size());
}

// Regression: a flange that was copied and pasted came as a bare ring.
TEST(Body, IsPastedWithItsJoint)
{
    const model::Sketch drawn = flangeAtOrigin();
    const std::vector<model::JointId> ring{drawn.joints[0].id};
    const Clip clip = copyOf(drawn, ring);
    const model::Sketch pasted = done(drawn, paste(drawn, clip, drawn.sheets[0].id, {40.0, -30.0}));
    std::vector<geometry::FreePath> wanted = drawn.sheets[0].outlines;
    for (const geometry::FreePath& line : flangeLines(geometry::Ring{{40, -30}, 100}, 150.0, 8))
        wanted.push_back(line);
    expectSame(pasted.sheets[0].outlines, wanted);
}

// Property: a mirrored door has its hinges on the other side; mirrored twice it is as it was.
TEST(Body, OfADoorIsMirroredWithItsSeal)
{
    const model::Sketch empty = withSheet();
    Door door;
    door.joint = jointOn(empty, geometry::RoundedRectangle{{500, 600}, 400, 300, 30, 0.0});
    door.margin = 24.0;
    door.laying.reset();
    const model::Sketch drawn = done(empty, drawDoor(empty, door));
    const std::vector<model::JointId> seal{drawn.joints[0].id};
    const model::Sketch once = done(drawn, mirror(drawn, seal, {500, 600}));
    expectSame(once.sheets[0].outlines,
               doorLines(std::get<geometry::RoundedRectangle>(once.joints[0].shape), 24.0, !door.hingesLeft));
    expectSame(done(once, mirror(once, seal, {500, 600})).sheets[0].outlines, drawn.sheets[0].outlines);
}

// Property: lines that were not drawn as the body of this joint are left alone.
TEST(Body, LeavesOtherLinesAlone)
{
    model::Sketch sketch = withRing();
    sketch.sheets[0].outlines.push_back(paleCircle({400, 0}, 150.0));
    sketch.sheets[0].outlines.push_back({{{-200, -200}, {200, -200}, {200, 200}}, true, false});
    const model::Sketch resized =
        done(sketch, reshapeWithBody(sketch, sketch.joints[0].id, geometry::Ring{{0, 0}, 130}));
    EXPECT_EQ(resized.sheets[0].outlines, sketch.sheets[0].outlines);
}

TEST(Body, RefusesWhatReshapeRefuses)
{
    const model::Sketch sketch = withRing();
    EXPECT_FALSE(reshapeWithBody(sketch, sketch.joints[0].id, geometry::Ring{{0, 0}, -1.0}).has_value());
    EXPECT_FALSE(reshapeWithBody(sketch, model::JointId::create(), geometry::Ring{{0, 0}, 50}).has_value());
}

} // namespace
} // namespace sealwalk::editing
