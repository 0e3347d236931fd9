// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/clip.h"
#include "core/editing/edit_history.h"
#include "core/editing/gestures.h"
#include "core/editing/points.h"
#include "core/editing/sheets.h"
#include "tests/core/editing/drawn.h"

#include <map>
#include <random>

namespace sealwalk::editing {
namespace {

/// Somebody who draws at random, wrong gestures included.
class Hand
{
public:
    explicit Hand(unsigned seed)
        : m_random(seed)
    {}

    int upTo(int n) { return n <= 0 ? 0 : std::uniform_int_distribution<int>(0, n - 1)(m_random); }
    double number(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }

    geometry::Shape shape()
    {
        const geometry::Point at{number(-500.0, 500.0), number(-500.0, 500.0)};
        switch (upTo(5)) {
        case 0:
            return geometry::Ring{at, number(-10.0, 200.0)};
        case 1:
            return geometry::RoundedRectangle{at, number(-5.0, 300.0), number(1.0, 300.0), number(0.0, 40.0),
                                              number(-4.0, 4.0)};
        case 2:
            return geometry::Spot{at, 12.0};
        default: {
            geometry::FreePath free{{}, upTo(2) == 0, upTo(2) == 0};
            for (int i = upTo(6); i >= 0; --i)
                free.nodes.push_back({number(-500.0, 500.0), number(-500.0, 500.0)});
            return free;
        }
        }
    }

    Laying laying() { return upTo(2) == 0 ? byNumber(upTo(12)) : byPitch(number(-2.0, 300.0)); }

    Result<Edit> gesture(const model::Sketch& s, const PointSet& readings);

private:
    std::vector<model::JointId> someJoints(const model::Sketch& s)
    {
        std::vector<model::JointId> ids;
        for (const model::Joint& joint : s.joints)
            if (upTo(3) == 0)
                ids.push_back(joint.id);
        return ids;
    }

    std::mt19937 m_random;
    Clip m_clip;
};

Result<Edit> Hand::gesture(const model::Sketch& s, const PointSet& readings)
{
    const model::SheetId sheet =
        s.sheets.empty() ? model::SheetId{}
                         : s.sheets[static_cast<std::size_t>(upTo(static_cast<int>(s.sheets.size())))].id;
    const model::Joint joint =
        s.joints.empty() ? model::Joint{}
                         : s.joints[static_cast<std::size_t>(upTo(static_cast<int>(s.joints.size())))];
    const model::PointId point =
        s.points.empty() ? model::PointId{}
                         : s.points[static_cast<std::size_t>(upTo(static_cast<int>(s.points.size())))].id;
    const geometry::Point at{number(-300.0, 300.0), number(-300.0, 300.0)};
    const double fraction = number(-0.1, 1.1);
    const auto some = someJoints(s);
    switch (upTo(28)) {
    case 0: {
        model::Sheet fresh;
        fresh.name = "Sheet " + std::to_string(upTo(6));
        return addSheet(s, fresh);
    }
    case 1: {
        const model::Sheet* old = s.sheet(sheet);
        model::Sheet changed = old == nullptr ? model::Sheet{} : *old;
        changed.width = number(-50.0, 2000.0);
        return changeSheet(s, changed);
    }
    case 2:
        return upTo(6) == 0 ? removeSheet(s, sheet, readings) : renumber(s, readings);
    case 3:
    case 4:
    case 5: {
        model::Joint fresh = jointOn(s, shape(), upTo(3) == 0 ? "" : "Joint");
        fresh.sheet = sheet;
        fresh.clockwise = upTo(2) == 0;
        fresh.start = number(0.0, 1.0);
        return addJoint(s, fresh, upTo(3) == 0 ? std::nullopt : std::optional(laying()));
    }
    case 6:
        return reshape(s, joint.id, shape());
    case 7: {
        model::Joint changed = joint;
        changed.name = "Renamed";
        changed.kind = model::JointKind::Valve;
        return changeJoint(s, changed);
    }
    case 8:
        return move(s, some, {number(-50.0, 50.0), number(-50.0, 50.0)});
    case 9:
        return rotate(s, some, at, number(-4.0, 4.0));
    case 10:
        return mirror(s, some, at);
    case 11:
        return s.joints.size() > 40 ? removeJoints(s, some, readings)
                                    : copyInRow(s, some, {number(0.0, 9.0), 0.0}, upTo(4));
    case 12:
        return s.joints.size() > 40 ? removeJoints(s, some, readings) : copyOnCircle(s, some, at, upTo(5));
    case 13:
        return group(s, some, upTo(2) == 0 ? "" : freeGroupWord(s));
    case 14:
        return setLocked(s, some, upTo(3) == 0);
    case 15:
        return removeJoints(s, std::vector{joint.id}, readings);
    case 16:
        return layPoints(s, joint.id, laying(), readings);
    case 17:
        return addPoint(s, joint.id, fraction);
    case 18:
        return splitStretch(s, joint.id, fraction, readings);
    case 19:
        return movePoint(s, point, fraction);
    case 20:
        return retire(s, point, readings);
    case 21:
        return restore(s, point);
    case 22:
        return renumberJoint(s, joint.id, readings);
    case 23:
        return reverseSense(s, joint.id, readings);
    case 24:
        return startAt(s, joint.id, fraction, readings);
    case 25:
        m_clip = copyOf(s, some);
        return paste(s, m_clip, sheet, {20.0, 20.0});
    case 26: {
        Flange flange;
        flange.joint = jointOn(s, geometry::Ring{at, 50.0});
        flange.joint.sheet = sheet;
        flange.bolts = upTo(10);
        return drawFlange(s, flange);
    }
    default: {
        PortRow row;
        row.sheet = sheet;
        row.first = at;
        row.count = upTo(4);
        return drawPortRow(s, row);
    }
    }
}

// Property: whatever is drawn, undone and redone, in whatever order: every answered inverse leads back
// exactly, the sketch keeps its promises, points with readings keep number and joint, and no number is given
// twice.
TEST(RandomEdits, AreTakenBackExactlyAndKeepThePromises)
{
    int carriedOut = 0;
    int refused = 0;
    for (unsigned seed = 0; seed < 60; ++seed) {
        Hand hand(seed);
        model::Sketch sketch;
        EditHistory history;
        PointSet readings;
        std::vector<model::Sketch> before; // the sketch before each step that can be undone
        std::map<model::PointId, model::TestPoint> read;
        for (int i = 0; i < 120; ++i) {
            if (hand.upTo(6) == 0 && history.canUndo()) {
                const model::Sketch now = sketch;
                if (history.undo(sketch, readings)) {
                    ASSERT_EQ(sketch, before.back()) << "seed " << seed << ", step " << i;
                    const model::Sketch undone = sketch;
                    ASSERT_TRUE(history.redo(sketch, readings).has_value());
                    ASSERT_EQ(sketch, now);
                    ASSERT_TRUE(history.undo(sketch, readings).has_value());
                    ASSERT_EQ(sketch, undone);
                    before.pop_back();
                } else {
                    ASSERT_EQ(sketch, now);
                }
                continue;
            }
            const model::Sketch was = sketch;
            const Result<Edit> edit = hand.gesture(sketch, readings);
            if (!edit) {
                EXPECT_FALSE(edit.error().message.empty());
                ++refused;
                continue;
            }
            const Status done = history.perform(sketch, *edit, readings);
            ASSERT_TRUE(done.has_value()) << edit->what << ": " << done.error().message << ", seed " << seed;
            if (!edit->isEmpty())
                before.push_back(was);
            ++carriedOut;
            ASSERT_EQ(model::complaint(sketch), "") << edit->what;
            for (const model::TestPoint& point : sketch.points)
                if (was.point(point.id) == nullptr && edit->what.rfind("points numbered", 0) != 0) {
                    ASSERT_GT(point.number, was.lastNumber) << edit->what;
                }
            for (const auto& [id, first] : read) {
                const model::TestPoint* point = sketch.point(id);
                ASSERT_NE(point, nullptr) << edit->what;
                ASSERT_EQ(point->number, first.number) << edit->what;
                ASSERT_EQ(point->joint, first.joint) << edit->what;
            }
            if (!sketch.points.empty() && hand.upTo(25) == 0) {
                const model::TestPoint& point =
                    sketch
                        .points[static_cast<std::size_t>(hand.upTo(static_cast<int>(sketch.points.size())))];
                if (readings.insert(point.id).second)
                    read[point.id] = point;
            }
        }
        while (history.canUndo() && readings.empty()) {
            ASSERT_TRUE(history.undo(sketch).has_value());
            ASSERT_EQ(sketch, before.back());
            before.pop_back();
        }
    }
    EXPECT_GT(carriedOut, 2000);
    EXPECT_GT(refused, 500);
}

} // namespace
} // namespace sealwalk::editing
