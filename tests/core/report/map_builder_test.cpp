// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/map_builder.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::report {
namespace {

using analysis::Finding;
using analysis::PointFinding;
using analysis::Verdict;

struct Fixture
{
    model::TestObject object;
    model::Job job = tests::ringJob(8);
    std::vector<PointFinding> findings;

    Fixture()
    {
        job.setup.pointLimit = millibarLitresPerSecond(1e-6);
        for (const model::TestPoint& point : job.sketch.points) {
            PointFinding finding;
            finding.point = point.id;
            finding.number = point.number;
            finding.finding = Finding::Clear;
            finding.verdict = Verdict::Within;
            findings.push_back(finding);
        }
    }
    PointFinding& at(int number) { return findings[static_cast<std::size_t>(number - 1)]; }
    [[nodiscard]] model::PointId id(int number) const { return tests::pointNumbered(job, number); }
    [[nodiscard]] MapContent map(const MapOptions& options = {}) const
    {
        return mapOf(job, object, job.sketch.sheets.front().id, findings, options);
    }
};

void leak(PointFinding& finding, double rate, Verdict verdict, Finding word = Finding::Leak)
{
    finding.finding = word;
    finding.verdict = verdict;
    finding.rate = finding.asRead = millibarLitresPerSecond(rate);
}

// Regression: a port whose points were retired stood on the map like one that had been forgotten.
TEST(MapBuilder, AJointWhosePointsAreRetiredIsNotDrawn)
{
    Fixture fixture;
    model::Joint bare = fixture.job.sketch.joints.front();
    bare.id = model::JointId::create();
    fixture.job.sketch.joints.push_back(bare);
    EXPECT_EQ(fixture.map().joints.size(), 2U) << "one that has no points yet is";
    for (model::TestPoint& point : fixture.job.sketch.points)
        point.retired = true;
    const MapContent content = fixture.map();
    ASSERT_EQ(content.joints.size(), 1U);
    EXPECT_EQ(content.joints.front().id, bare.id);
}

// Property: every active point has one stretch, and together they cover the joint.
TEST(MapBuilder, StretchesCoverTheJoint)
{
    const MapContent content = Fixture().map();
    ASSERT_EQ(content.stretches.size(), 8U);
    double length = 0.0;
    for (const MapStretch& stretch : content.stretches) {
        length += stretch.to - stretch.from;
        // On a ring the outside lies away from the centre.
        const geometry::Point centre = content.bounds().centre();
        const geometry::Vector away = (stretch.place - centre).unit();
        EXPECT_NEAR(away.x * stretch.outward.x + away.y * stretch.outward.y, 1.0, 1e-2);
    }
    EXPECT_NEAR(length, content.joints.front().outline.length(), 1e-6);
}

// Property: state, teeth and label say what the finding says; echoes change with the switch.
TEST(MapBuilder, FindingsBecomeStates)
{
    Fixture f;
    leak(f.at(1), 4.6e-4, Verdict::Over);
    leak(f.at(2), 3e-6, Verdict::CannotSay, Finding::Echo);
    f.at(2).of = {f.id(1)};
    leak(f.at(3), 3e-6, Verdict::CannotSay, Finding::Masked);
    f.at(3).of = {f.id(1)};
    leak(f.at(4), 1.1e-6, Verdict::CannotSay);
    f.at(5).awaitsRetest = true;
    MapContent content = f.map();
    EXPECT_EQ(content.stretches[0].state, PointState::LeakOver);
    EXPECT_EQ(content.stretches[0].teeth, Teeth::Full);
    EXPECT_EQ(content.stretches[0].spoken, "point 1, leak, 4.6e-4 millibar litre per second, over the limit");
    EXPECT_EQ(content.stretches[1].state, PointState::Echo);
    EXPECT_TRUE(content.stretches[1].rate.has_value());
    EXPECT_EQ(content.stretches[2].label, "by 1");
    EXPECT_FALSE(content.stretches[2].rate.has_value());
    EXPECT_EQ(content.stretches[3].teeth, Teeth::Few);
    EXPECT_EQ(content.stretches[4].state, PointState::RepairedAwaiting);
    MapOptions options;
    options.echoesTakenOut = true;
    content = f.map(options);
    EXPECT_EQ(content.stretches[1].state, PointState::EchoTakenOut);
    EXPECT_EQ(content.stretches[1].label, "echo of 1");
    EXPECT_FALSE(content.stretches[1].rate.has_value());
    options.judged = false;
    EXPECT_EQ(f.map(options).stretches[2].state, PointState::Answered);
}

// Property: a rate of its own goes with its range, on the map and spoken; what is as read has none.
TEST(MapBuilder, ARateGoesWithItsRange)
{
    Fixture f;
    leak(f.at(1), 4.6e-4, Verdict::Over);
    f.at(1).low = millibarLitresPerSecond(3.5e-4);
    f.at(1).high = millibarLitresPerSecond(6.0e-4);
    leak(f.at(2), 3e-6, Verdict::CannotSay, Finding::Echo);
    f.at(2).rate.reset();
    f.at(2).high = millibarLitresPerSecond(2e-6);
    const MapContent content = f.map();
    ASSERT_TRUE(content.stretches[0].range);
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(content.stretches[0].range->high), 6.0e-4);
    EXPECT_EQ(content.stretches[0].spoken, "point 1, leak, 4.6e-4 millibar litre per second, "
                                           "95 % range 3.5e-4 to 6.0e-4, over the limit");
    EXPECT_TRUE(content.stretches[1].rate);
    EXPECT_FALSE(content.stretches[1].range);
}

// Property: a point nobody sprayed is never shown as clear.
TEST(MapBuilder, WithoutAFindingAPointIsNotSprayed)
{
    Fixture f;
    f.findings.erase(f.findings.begin() + 2);
    EXPECT_EQ(f.map().stretches[2].state, PointState::NotSprayed);
    const MapContent bare = mapOf(f.job.sketch, f.job.sketch.sheets.front().id);
    for (const MapStretch& stretch : bare.stretches)
        EXPECT_EQ(stretch.state, PointState::NotSprayed);
    EXPECT_TRUE(mapOf(f.job, f.object, model::SheetId::create(), f.findings).stretches.empty());
}

// Property: one bracket for a leak shared over the start of the ring, in order along it.
TEST(MapBuilder, ASharedLeakOverTheStartHasOneBracket)
{
    Fixture f;
    leak(f.at(1), 6e-6, Verdict::Over, Finding::Shared);
    leak(f.at(8), 6e-6, Verdict::Over, Finding::Shared);
    f.at(1).of = {f.id(8)};
    f.at(8).of = {f.id(1)};
    const MapContent content = f.map();
    ASSERT_EQ(content.brackets.size(), 1U);
    ASSERT_EQ(content.brackets.front().stretches.size(), 2U);
    EXPECT_EQ(content.stretches[content.brackets.front().stretches.front()].number, 8);
    EXPECT_EQ(content.stretches[content.brackets.front().stretches.back()].number, 1);
}

// Property: a temporary repair stays on the map, of this job or an earlier one, and shows when it is overdue.
TEST(MapBuilder, TemporaryRepairsStay)
{
    Fixture f;
    model::Repair repair;
    repair.points = {f.id(3)};
    repair.permanent = false;
    repair.due = Timestamp::parseDate("2026-01-31").value();
    MapOptions options;
    options.carried = {repair};
    options.now = Timestamp::parseDate("2026-01-30").value();
    EXPECT_TRUE(f.map(options).stretches[2].temporary);
    EXPECT_FALSE(f.map(options).stretches[2].temporaryOverdue);
    options.now = Timestamp::parseDate("2026-02-01").value();
    EXPECT_TRUE(f.map(options).stretches[2].temporaryOverdue);
    repair.madeGoodBy = model::RepairId::create();
    f.job.repairs = {repair};
    EXPECT_FALSE(f.map().stretches[2].temporary);
}

// Property: places on the scale follow the logarithm; width grows with decades above what can be seen.
TEST(MapScale, IsLogarithmic)
{
    MapScale scale;
    EXPECT_DOUBLE_EQ(scale.position(millibarLitresPerSecond(1e-10)), 0.0);
    EXPECT_NEAR(scale.position(millibarLitresPerSecond(1e-3)), 1.0, 1e-12);
    EXPECT_NEAR(scale.position(millibarLitresPerSecond(1e-6)), 4.0 / 7.0, 1e-12);
    scale.smallestDetectable = millibarLitresPerSecond(1e-9);
    EXPECT_NEAR(scale.decadesAboveDetectable(millibarLitresPerSecond(1e-6)), 3.0, 1e-12);
    EXPECT_DOUBLE_EQ(scale.decadesAboveDetectable(millibarLitresPerSecond(1e-10)), 0.0);
}

} // namespace
} // namespace sealwalk::report
