// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/joint_history.h"
#include "core/analysis/leak_sum.h"
#include "core/analysis/object_totals.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

using tests::pointNumbered;

/// A job on two joints, "Port" with points 1 to 3 and "Weld" with 4 and 5, none of them sprayed.
std::shared_ptr<WorkedJob> untested(int number, const model::Sketch& sketch)
{
    auto worked = std::make_shared<WorkedJob>();
    worked->job.number = number;
    worked->job.opened.utcMilliseconds = 1'000'000LL * number;
    worked->job.sketch = sketch;
    for (const model::TestPoint& point : sketch.points) {
        PointFinding finding;
        finding.point = point.id;
        finding.number = point.number;
        worked->asFound.push_back(finding);
    }
    worked->asLeft = worked->asFound;
    return worked;
}

model::Sketch twoJoints()
{
    model::Sketch sketch = tests::ringJob(3).sketch;
    tests::addJoint(sketch, sketch.sheets[0].id, model::JointKind::WeldSeam, "Weld",
                    geometry::FreePath{{{0.0, 0.0}, {500.0, 0.0}}, false, false}, 2);
    return sketch;
}

PointFinding& at(std::vector<PointFinding>& findings, int number)
{
    return findings[static_cast<std::size_t>(number - 1)];
}

void leaks(PointFinding& finding, double rate, Verdict verdict = Verdict::Over)
{
    finding.finding = Finding::Leak;
    finding.verdict = verdict;
    finding.rate = millibarLitresPerSecond(rate);
    finding.low = millibarLitresPerSecond(rate / 1.5);
    finding.high = millibarLitresPerSecond(rate * 1.5);
    finding.bound.reset();
}

void isQuiet(PointFinding& finding, double bound = 1e-10)
{
    finding.finding = Finding::Clear;
    finding.verdict = Verdict::Within;
    finding.rate.reset();
    finding.bound = millibarLitresPerSecond(bound);
}

model::Repair repair(std::vector<model::PointId> points, std::int64_t at, const char* action)
{
    model::Repair done;
    done.id = model::RepairId::create();
    done.points = std::move(points);
    done.action = action;
    done.by = "A. Fitter";
    done.at.utcMilliseconds = at;
    return done;
}

// Property: a sum says what it holds and what it cannot: untested and masked points make it "at least", a
// quiet joint is below the sum of its bounds, an untested one is a gap and no zero.
TEST(LeakSum, SaysWhatItDoesNotKnow)
{
    const model::TestObject object;
    const auto worked = untested(1, twoJoints());
    std::vector<PointFinding> port(worked->asFound.begin(), worked->asFound.begin() + 3);

    LeakSum sum = leakSum(worked->job, object, port);
    EXPECT_TRUE(sum.isGap());
    EXPECT_FALSE(sum.helium || sum.below || sum.worst);

    for (PointFinding& finding : port)
        isQuiet(finding);
    sum = leakSum(worked->job, object, port);
    ASSERT_TRUE(sum.below);
    EXPECT_NEAR(inMillibarLitresPerSecond(*sum.below), 3e-10, 1e-15);
    EXPECT_FALSE(sum.helium);
    EXPECT_FALSE(sum.isAtLeast);

    leaks(port[0], 2e-6);
    leaks(port[1], 1e-6);
    sum = leakSum(worked->job, object, port);
    ASSERT_TRUE(sum.helium && sum.air && sum.worst);
    EXPECT_NEAR(inMillibarLitresPerSecond(sum.helium->rate), 3e-6, 1e-11);
    EXPECT_LT(sum.helium->low, sum.helium->rate);
    EXPECT_GT(sum.helium->low, millibarLitresPerSecond(3e-6 / 1.5)) << "own parts add in squares";
    EXPECT_LT(sum.helium->high, millibarLitresPerSecond(3e-6 * 1.5));
    EXPECT_EQ(sum.worst->number, 1);
    EXPECT_FALSE(sum.isAtLeast);
    EXPECT_FALSE(sum.below);

    port[2].finding = Finding::Masked;
    EXPECT_TRUE(leakSum(worked->job, object, port).isAtLeast);
    port[2].finding = Finding::NotSprayed;
    EXPECT_TRUE(leakSum(worked->job, object, port).isAtLeast);
    isQuiet(port[2]);
    port[2].awaitsRetest = true; // repaired, not sprayed since
    sum = leakSum(worked->job, object, port);
    EXPECT_TRUE(sum.isAtLeast);
    EXPECT_EQ(sum.answered, 2);
}

// Property: worst first, by jobs over the limit; what was tested counts, what was not does not.
TEST(JointHistories, PutsTheWorstJointFirst)
{
    const model::Sketch sketch = twoJoints();
    WorkedJobs jobs;
    for (int number = 1; number <= 3; ++number) {
        auto worked = untested(number, sketch);
        isQuiet(at(worked->asFound, 1));
        if (number != 2)
            leaks(at(worked->asFound, 4), number * 1e-6);
        if (number == 2) // larger, but within the limit of that job
            leaks(at(worked->asFound, 2), 5e-5, Verdict::Within);
        worked->asLeft = worked->asFound;
        jobs.push_back(worked);
    }
    const auto joints = jointHistories(jobs);
    ASSERT_EQ(joints.size(), 2U);
    EXPECT_EQ(joints[0].name, "Weld");
    EXPECT_EQ(joints[0].over, 2);
    EXPECT_EQ(joints[0].tested, 2);
    EXPECT_EQ(joints[0].largestJob, 3);
    EXPECT_EQ(joints[1].over, 0);
    EXPECT_EQ(joints[1].tested, 3);
    EXPECT_EQ(joints[1].largestJob, 2);
    EXPECT_FALSE(joints[0].touched);
}

// Regression: the largest leak of a joint was beyond the detector's range, and its history showed the bound
// of a quiet year in its place; so it did where the leak had no size, or a person had called a larger echo a
// leak's.
TEST(JointHistories, ALeakBeyondRangeIsLargerThanAQuietYear)
{
    const model::Sketch sketch = twoJoints();
    const auto quiet = untested(1, sketch);
    const auto loud = untested(2, sketch);
    for (const auto& worked : {quiet, loud})
        for (const int point : {1, 2, 3})
            isQuiet(at(worked->asFound, point), 1e-4);
    PointFinding& beyond = at(loud->asFound, 2);
    beyond.finding = Finding::Leak;
    beyond.verdict = Verdict::Over;
    beyond.bound.reset();
    const auto port = [&] {
        return jointHistories({quiet, loud}).front(); // the only one over its limit
    };
    EXPECT_EQ(port().name, "Port");
    ASSERT_TRUE(port().largest);
    EXPECT_EQ(port().largestJob, 2) << "without a size";
    beyond.atLeast = millibarLitresPerSecond(1e-6);
    EXPECT_EQ(port().largestJob, 2);
    EXPECT_EQ(port().largest->atLeast, beyond.atLeast);
    EXPECT_EQ(port().over, 1);
}

// Regression: a leak that a person said is not the object's counted the joint over its limit.
TEST(JointHistories, ALeakFromElsewhereIsNotOverTheLimitHere)
{
    const auto worked = untested(1, twoJoints());
    PointFinding& finding = at(worked->asFound, 1);
    finding.finding = Finding::OtherSource;
    finding.verdict = Verdict::Over;
    finding.judgedByPerson = true;
    for (const JointHistory& joint : jointHistories({worked})) {
        EXPECT_EQ(joint.over, 0) << joint.name;
        EXPECT_FALSE(joint.largest) << joint.name;
    }
}

// Regression: a seal redrawn in the job in which it was sprayed stood beside its old self for ever, and what
// a person said of the two was passed over.
TEST(JointHistories, FollowsAJointRedrawnInItsOwnJob)
{
    model::Sketch sketch = twoJoints();
    const auto first = untested(1, sketch);
    const model::JointId old = sketch.joints[0].id;
    for (model::TestPoint& point : sketch.points)
        point.retired = point.joint == old;
    const model::JointId anew = tests::addJoint(sketch, sketch.sheets[0].id, model::JointKind::OringSeal,
                                                "Port, new seal", geometry::Ring{{0, 0}, 100.0}, 3);
    const auto second = untested(2, sketch);
    KnownPairs known;
    known.same = {{sketch.points[0].id, sketch.points.back().id}};
    const auto of = [](const std::vector<JointHistory>& joints, model::JointId id) {
        return *std::find_if(joints.begin(), joints.end(),
                             [&](const JointHistory& joint) { return joint.ids.contains(id); });
    };
    auto joints = jointHistories({first, second}, known);
    EXPECT_EQ(joints.size(), 2U);
    EXPECT_EQ(of(joints, old).ids.size(), 2U);
    EXPECT_EQ(of(joints, old).name, "Port, new seal");
    EXPECT_TRUE(of(joints, old).isDrawn);
    joints = jointHistories({first, second}, {}); // nobody said so: two, of which the old one is gone
    EXPECT_EQ(joints.size(), 3U);
    EXPECT_FALSE(of(joints, old).isDrawn);
    EXPECT_TRUE(of(joints, anew).isDrawn);
}

// Property: the last one who touched a joint, also where it was only disturbed beside another repair.
TEST(JointHistories, KnowsWhatWasTouchedLast)
{
    const model::Sketch sketch = twoJoints();
    const auto first = untested(1, sketch);
    const auto second = untested(2, sketch);
    const auto point = [&](int number) { return pointNumbered(first->job, number); };
    first->job.repairs = {repair({point(1)}, 5000, "replace seal"), repair({point(2)}, 6000, "re-tighten")};
    second->job.repairs = {repair({point(4)}, 9000, "re-weld")};
    second->job.repairs[0].disturbed = {point(3)};
    const WorkedJobs jobs{first, second};
    const auto joints = jointHistories(jobs);
    for (const JointHistory& joint : joints) {
        ASSERT_TRUE(joint.touched) << joint.name;
        EXPECT_EQ(joint.touched->job, 2) << joint.name;
        EXPECT_EQ(joint.touched->what, "re-weld");
        EXPECT_EQ(joint.touched->by, "A. Fitter");
        EXPECT_EQ(joint.touched->disturbed, joint.name == "Port");
        EXPECT_EQ(joint.repairs, joint.name == "Port" ? 2 : 1);
    }
    EXPECT_EQ(lastTouch(jobs, {point(1)})->what, "replace seal");
    EXPECT_FALSE(lastTouch(jobs, {point(5)}));
}

// Property: a joint drawn anew goes on as the same one where a person said that a point of it is the same;
// two joints that stand side by side never become one.
TEST(JointHistories, FollowsAJointThatWasDrawnAnew)
{
    const model::Sketch before = twoJoints();
    const model::Sketch after = twoJoints(); // the same, with other identities
    const auto first = untested(1, before);
    const auto second = untested(2, after);
    isQuiet(at(first->asFound, 1));
    isQuiet(at(second->asFound, 1));
    const WorkedJobs jobs{first, second};
    EXPECT_EQ(jointHistories(jobs).size(), 4U);
    KnownPairs known;
    known.same = {{before.points[0].id, after.points[0].id}};
    auto joints = jointHistories(jobs, known);
    ASSERT_EQ(joints.size(), 3U);
    EXPECT_EQ(joints[0].name, "Port");
    EXPECT_EQ(joints[0].tested, 2);
    EXPECT_TRUE(joints[0].isDrawn);
    known.same.push_back({before.points[1].id, after.points[3].id}); // a point that moved to the weld
    EXPECT_EQ(jointHistories(jobs, known).size(), 3U);
    EXPECT_EQ(onePlace(before.points[0].id, known).size(), 2U);
}

} // namespace
} // namespace sealwalk::analysis
