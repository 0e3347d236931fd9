// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/edit_history.h"
#include "core/editing/points.h"
#include "core/editing/sheets.h"
#include "tests/core/editing/drawn.h"

namespace sealwalk::editing {
namespace {

TEST(Edit, AnswersWhatTakesItBack)
{
    model::Sketch sketch = withRing();
    const model::Sketch before = sketch;
    const Result<Edit> inverse = apply(sketch, addPoint(sketch, sketch.joints[0].id, 0.1).value());
    EXPECT_EQ(sketch.points.size(), 9u);
    ASSERT_TRUE(inverse.has_value());
    EXPECT_TRUE(apply(sketch, *inverse).has_value());
    EXPECT_EQ(sketch, before);
}

TEST(Edit, MadeForAnotherStateIsRefusedAndChangesNothing)
{
    model::Sketch sketch = withRing();
    const Edit stale = addPoint(sketch, sketch.joints[0].id, 0.1).value();
    sketch = done(sketch, addPoint(sketch, sketch.joints[0].id, 0.7));
    const model::Sketch before = sketch;
    const Result<Edit> answer = apply(sketch, stale);
    ASSERT_FALSE(answer.has_value());
    EXPECT_EQ(answer.error().code, ErrorCode::Conflict);
    EXPECT_EQ(sketch, before);
}

TEST(Edit, ThatWouldBreakThePromisesOfTheSketchIsRefused)
{
    model::Sketch sketch = withRing();
    const model::Sketch before = sketch;
    model::Sketch broken = sketch;
    broken.points[1].number = 1;
    const Result<Edit> answer = apply(sketch, difference(sketch, broken, "two ones"));
    ASSERT_FALSE(answer.has_value());
    EXPECT_EQ(answer.error().code, ErrorCode::BadInput);
    EXPECT_EQ(answer.error().message, "point number 1 is given twice");
    EXPECT_EQ(sketch, before);
}

TEST(Edit, NeverTouchesTheIdentityOfAPointWithReadings)
{
    model::Sketch sketch = withRing();
    const model::Sketch before = sketch;
    const PointSet readings{sketch.points[2].id};
    const auto refused = [&](auto change) {
        model::Sketch next = sketch;
        change(next);
        const Result<Edit> answer = apply(sketch, difference(sketch, next, "test"), readings);
        EXPECT_EQ(sketch, before);
        return answer ? std::string("done") : answer.error().message;
    };
    EXPECT_EQ(refused([](model::Sketch& s) { s.points.erase(s.points.begin() + 2); }),
              "point 3 has readings and stays; retire it instead");
    EXPECT_EQ(refused([](model::Sketch& s) { s.points[2].number = ++s.lastNumber; }),
              "point 3 has readings and keeps its number and joint");
}

// Property: the revision is the history's affair and no edit's.
TEST(Edit, LeavesTheRevisionAlone)
{
    model::Sketch sketch = withRing();
    sketch.revision = 7;
    model::Sketch other = sketch;
    other.revision = 12;
    EXPECT_TRUE(difference(sketch, other, "").isEmpty());
    EXPECT_TRUE(apply(sketch, addPoint(sketch, sketch.joints[0].id, 0.3).value()).has_value());
    EXPECT_EQ(sketch.revision, 7);
}

TEST(EditHistory, TakesBackAndBringsAgainOneGestureAtATime)
{
    EditHistory history;
    model::Sketch sketch = withRing();
    std::vector<model::Sketch> states{sketch};
    for (int i = 0; i < 5; ++i) {
        ASSERT_TRUE(history.perform(sketch, addPoint(sketch, sketch.joints[0].id, 0.05 + 0.1 * i).value()));
        states.push_back(sketch);
    }
    EXPECT_EQ(history.undoText(), "point 13 added on Seal");
    for (int i = 4; i >= 0; --i) {
        ASSERT_TRUE(history.undo(sketch).has_value());
        EXPECT_EQ(sketch, states[static_cast<std::size_t>(i)]);
    }
    EXPECT_FALSE(history.canUndo());
    EXPECT_EQ(history.undo(sketch).error().code, ErrorCode::NotFound);
    for (std::size_t i = 1; i < states.size(); ++i) {
        ASSERT_TRUE(history.redo(sketch).has_value());
        EXPECT_EQ(sketch, states[i]);
    }
    EXPECT_FALSE(history.canRedo());
}

TEST(EditHistory, ForgetsWhatWasUndoneWhenSomethingNewIsDone)
{
    EditHistory history;
    model::Sketch sketch = withRing();
    ASSERT_TRUE(history.perform(sketch, addPoint(sketch, sketch.joints[0].id, 0.1).value()).has_value());
    ASSERT_TRUE(history.undo(sketch).has_value());
    ASSERT_TRUE(history.perform(sketch, addPoint(sketch, sketch.joints[0].id, 0.2).value()).has_value());
    EXPECT_FALSE(history.canRedo());
}

TEST(EditHistory, DoesNotRememberWhatChangesNothing)
{
    EditHistory history;
    model::Sketch sketch = withRing();
    ASSERT_TRUE(history.perform(sketch, changeSheet(sketch, sketch.sheets[0]).value()).has_value());
    EXPECT_FALSE(history.canUndo());
    const std::vector<model::JointId> joint{sketch.joints[0].id};
    ASSERT_TRUE(history.perform(sketch, move(sketch, joint, {0.0, 0.0}).value()).has_value());
    EXPECT_FALSE(history.canUndo());
}

TEST(EditHistory, RefusesToTakeBackPointsThatHaveReadingsByNow)
{
    EditHistory history;
    model::Sketch sketch = withSheet();
    const model::Joint ring = jointOn(sketch, geometry::Ring{{0.0, 0.0}, 50.0});
    ASSERT_TRUE(history.perform(sketch, addJoint(sketch, ring, byNumber(4)).value()).has_value());
    const model::Sketch before = sketch;
    const Status undone = history.undo(sketch, {sketch.points[1].id});
    ASSERT_FALSE(undone.has_value());
    EXPECT_EQ(undone.error().message, "point 2 has readings and stays; retire it instead");
    EXPECT_EQ(sketch, before);
    EXPECT_TRUE(history.canUndo());
}

} // namespace
} // namespace sealwalk::editing
