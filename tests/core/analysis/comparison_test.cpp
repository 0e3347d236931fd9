// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/comparison.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::analysis {
namespace {

using model::Condition;
using model::PointId;

/// A sheet with one open joint, a metre long, and points numbered from 1 on it.
model::Sketch sketchOf(int points, const char* joint = "Weld")
{
    model::Sketch sketch;
    sketch.sheets.emplace_back();
    sketch.sheets[0].id = model::SheetId::create();
    sketch.sheets[0].name = "Floor";
    model::Joint drawn;
    drawn.id = model::JointId::create();
    drawn.sheet = sketch.sheets[0].id;
    drawn.name = joint;
    drawn.shape = geometry::FreePath{{{0.0, 0.0}, {1000.0, 0.0}}, false, false};
    sketch.joints.push_back(drawn);
    for (int n = 1; n <= points; ++n) {
        model::TestPoint point;
        point.id = PointId::create();
        point.number = n;
        point.joint = drawn.id;
        point.along = (n - 0.5) / points;
        sketch.points.push_back(point);
    }
    sketch.lastNumber = points;
    return sketch;
}

PointFinding sized(double rate, double factor = 1.3)
{
    PointFinding finding;
    finding.finding = Finding::Leak;
    finding.rate = millibarLitresPerSecond(rate);
    finding.low = millibarLitresPerSecond(rate / factor);
    finding.high = millibarLitresPerSecond(rate * factor);
    return finding;
}

PointFinding bounded(Finding word, double bound)
{
    PointFinding finding;
    finding.finding = word;
    finding.bound = millibarLitresPerSecond(bound);
    return finding;
}

PointFinding bare(Finding word)
{
    PointFinding finding;
    finding.finding = word;
    return finding;
}

PointFinding beyond(double least)
{
    PointFinding finding = bare(Finding::Leak);
    finding.atLeast = millibarLitresPerSecond(least);
    return finding;
}

PointFinding flexed(PointFinding finding)
{
    finding.condition = Condition::Flexed;
    return finding;
}

ComparedPoint compareOne(PointFinding before, PointFinding after)
{
    const model::Sketch sketch = sketchOf(1);
    before.point = after.point = sketch.points[0].id;
    return compare({&sketch, {&before, 1}}, {&sketch, {&after, 1}}).points.at(0);
}

// Property: the whole table of what can meet what.
TEST(Comparison, SaysWhatBecameOfAPoint)
{
    struct Row
    {
        PointFinding before;
        PointFinding after;
        Change change;
        std::optional<double> decades;
        bool atLeast;
    };
    const Row table[] = {
        {sized(1e-8), sized(1e-6), Change::Grown, 2.0, false},
        {sized(1e-6), sized(1e-8), Change::Shrunk, -2.0, false},
        {sized(1e-6), sized(1.1e-6), Change::Same, std::log10(1.1), false},
        {bounded(Finding::Clear, 1e-9), sized(1e-6), Change::New, 3.0, true},
        {bounded(Finding::BelowDetectable, 1e-7), sized(1e-6), Change::New, 1.0, true},
        {sized(1e-5), bounded(Finding::Clear, 1e-9), Change::Gone, -4.0, true},
        {sized(1e-5), bounded(Finding::Echo, 1e-7), Change::Gone, -2.0, true},
        {bounded(Finding::Masked, 1e-7), sized(1e-5), Change::New, 2.0, true},
        {bounded(Finding::Clear, 1e-9), bounded(Finding::Clear, 2e-9), Change::Same, std::nullopt, false},
        // a blind moment proves nothing
        {bounded(Finding::BelowDetectable, 1e-6), sized(1e-6), Change::NotComparable, std::nullopt, false},
        {sized(1e-9), bounded(Finding::Clear, 1e-8), Change::NotComparable, std::nullopt, false},
        {bounded(Finding::Clear, 1e-9), bounded(Finding::Masked, 1e-5), Change::NotComparable, std::nullopt,
         false},
        {sized(1e-6), bounded(Finding::Masked, 1e-5), Change::NotComparable, std::nullopt, false},
        {sized(1e-6), bare(Finding::Void), Change::NotComparable, std::nullopt, false},
        {bare(Finding::NotSprayed), sized(1e-6), Change::NotComparable, std::nullopt, false},
        {bare(Finding::NotAccessible), bare(Finding::NotAccessible), Change::NotComparable, std::nullopt,
         false},
        {bounded(Finding::Clear, 1e-9), flexed(sized(1e-6)), Change::NotComparable, std::nullopt, false},
        {flexed(sized(1e-8)), flexed(sized(1e-6)), Change::Grown, 2.0, false},
        // beyond the detector's range a leak is new where it was quiet, and no more can be said
        {bounded(Finding::Clear, 1e-9), beyond(1e-6), Change::New, 3.0, true},
        {beyond(1e-6), bounded(Finding::Clear, 1e-9), Change::Gone, -3.0, true},
        {bounded(Finding::Clear, 1e-5), beyond(1e-6), Change::NotComparable, std::nullopt, false},
        {sized(1e-6), beyond(1e-5), Change::NotComparable, std::nullopt, false},
        {beyond(1e-5), beyond(1e-5), Change::NotComparable, std::nullopt, false},
    };
    int row = 0;
    for (const Row& expected : table) {
        const ComparedPoint got = compareOne(expected.before, expected.after);
        EXPECT_EQ(got.change, expected.change) << row << ": " << got.because;
        EXPECT_EQ(got.decades.has_value(), expected.decades.has_value()) << row;
        EXPECT_NEAR(got.decades.value_or(0.0), expected.decades.value_or(0.0), 1e-12) << row;
        EXPECT_EQ(got.atLeast, expected.atLeast) << row;
        EXPECT_NE(got.because, "") << row;
        ++row;
    }
}

// Property: ranges of both sides add in squares, in decades.
TEST(Comparison, AddsTheRangesOfBothSidesInSquares)
{
    const ComparedPoint got = compareOne(sized(1e-8, 2.0), sized(1e-6, 1.5));
    const double half = std::hypot(std::log10(2.0), std::log10(1.5));
    EXPECT_NEAR(*got.low, 2.0 - half, 1e-12);
    EXPECT_NEAR(*got.high, 2.0 + half, 1e-12);
}

// Property: seen from the other side, everything is turned round.
TEST(Comparison, IsTheSameTheOtherWayRound)
{
    const ComparedPoint there = compareOne(sized(3e-8, 1.4), sized(2e-7, 1.7));
    const ComparedPoint back = compareOne(sized(2e-7, 1.7), sized(3e-8, 1.4));
    EXPECT_EQ(there.change, Change::Grown);
    EXPECT_EQ(back.change, Change::Shrunk);
    EXPECT_NEAR(*there.decades, -*back.decades, 1e-12);
    EXPECT_NEAR(*there.low, -*back.high, 1e-12);
    EXPECT_NEAR(*there.high, -*back.low, 1e-12);
}

// Property: what was moved and renamed is still the same point.
TEST(PointMatching, GoesByIdentityFirst)
{
    const model::Sketch before = sketchOf(3);
    model::Sketch after = before;
    after.joints[0].name = "Seam";
    std::swap(after.points[0].along, after.points[2].along);
    for (const PointMatch& match : matchPoints(before, after)) {
        EXPECT_EQ(match.before, match.after);
        EXPECT_EQ(match.by, MatchedBy::Identity);
    }
}

// Property: a sketch drawn anew: same numbers on the joint of the same name, else the nearest place.
TEST(PointMatching, ProposesWhereTheSketchWasDrawnAnew)
{
    const model::Sketch before = sketchOf(4);
    model::Sketch after = sketchOf(4);
    for (const PointMatch& match : matchPoints(before, after)) {
        EXPECT_EQ(match.by, MatchedBy::Number);
        EXPECT_TRUE(match.isProposal());
    }
    after = sketchOf(4, "Seam");
    after.points[0].number = 11;
    after.lastNumber = 11;
    after.points[1].along += 0.02;
    const auto byPlace = matchPoints(before, after);
    EXPECT_EQ(byPlace.size(), 4U);
    for (const PointMatch& match : byPlace)
        EXPECT_EQ(match.by, MatchedBy::Place);
    EXPECT_EQ(byPlace.back().before, before.points[0].id) << "the one numbered 11 lies where 1 was";
}

// Regression: a port drawn elsewhere under another number was new, and its old place gone, though it kept its
// name; no pair was proposed.
TEST(PointMatching, ProposesTheOnePointLeftOnAJointOfThatName)
{
    model::Sketch before = sketchOf(1, "Pump port");
    model::Sketch after = sketchOf(1, "Pump port");
    after.joints[0].shape = geometry::FreePath{{{0.0, 5000.0}, {1000.0, 5000.0}}, false, false};
    after.points[0].number = 15;
    const auto rows = matchPoints(before, after);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows.front().by, MatchedBy::Name);
    EXPECT_TRUE(rows.front().isProposal());
    after.joints[0].kind = model::JointKind::Viewport;
    EXPECT_EQ(matchPoints(before, after).size(), 2U) << "another kind is another thing";
    after = sketchOf(2, "Pump port");
    after.joints[0].shape = geometry::FreePath{{{0.0, 5000.0}, {1000.0, 5000.0}}, false, false};
    after.points[0].number = 15;
    after.points[1].number = 16;
    EXPECT_EQ(matchPoints(before, after).size(), 3U) << "which of the two is not known";
}

// Property: each point is in one row only, whatever is matched.
TEST(PointMatching, UsesEveryPointOnce)
{
    const model::Sketch before = sketchOf(7);
    const model::Sketch after = sketchOf(5, "Seam");
    const KnownPairs known{{{before.points[6].id, after.points[0].id}}, {}};
    const auto rows = matchPoints(before, after, known);
    std::vector<PointId> then;
    std::vector<PointId> now;
    for (const PointMatch& row : rows) {
        if (row.before)
            then.push_back(*row.before);
        if (row.after)
            now.push_back(*row.after);
    }
    EXPECT_EQ(now.size(), 5U);
    EXPECT_EQ(then.size(), 7U);
    std::sort(then.begin(), then.end());
    EXPECT_EQ(std::unique(then.begin(), then.end()), then.end());
    EXPECT_EQ(rows[0].by, MatchedBy::Person);
    EXPECT_EQ(rows[0].before, before.points[6].id);
}

// Property
TEST(Comparison, ShowsPointsThatOnlyOneYearHas)
{
    const model::Sketch before = sketchOf(1);
    model::Sketch after = sketchOf(1, "Elsewhere");
    after.sheets[0].name = "Roof";
    const Comparison got = compare({&before, {}}, {&after, {}});
    ASSERT_EQ(got.points.size(), 2U);
    EXPECT_FALSE(got.points[0].before);
    EXPECT_FALSE(got.points[1].after);
    EXPECT_EQ(got.count(Change::NotComparable), 2);
    EXPECT_EQ(got.matched(MatchedBy::Nothing), 2);
}

} // namespace
} // namespace sealwalk::analysis
