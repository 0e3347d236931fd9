// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 10, the yearly check of a drying oven: no leak, sent back once for what is usually missing,
// and compared with last year's job, on a sketch where one joint was drawn anew.
#include "core/analysis/comparison.h"
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 1e-8;
const SetUp kDetectorOnly{.factor = 1.0, .response = 100.0, .background = kBackground, .detectable = 3e-8};

const analysis::ReviewCheck& checkOf(const std::vector<analysis::ReviewCheck>& checks, std::string_view word)
{
    return *std::find_if(checks.begin(), checks.end(), [&](const auto& c) { return c.word == word; });
}

void lastYear(Technician& t)
{
    t.later(-365.0 * 24.0 * 60.0);
    t.openJob("yearly check", 1e-6, 5e-6);
    t.sheet("Front", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::ClampedFlange, "Flange", 2, 10);
    t.joints(JointKind::ClampedFlange, "Side port", 12, 1);
    t.joints(JointKind::ClampedFlange, "Door port", 13, 2);
    t.sheet("Rear", "the rear");
    t.joints(JointKind::Feedthrough, "Feedthrough", 16, 14);
    t.drawn();
    t.setUp(kDetectorOnly);
    t.round(RoundKind::AsFound, "as found");
    std::vector<int> points;
    const model::Job drawn = t.job();
    for (const model::TestPoint* point : drawn.sketch.activePoints())
        if (point->number != 29)
            points.push_back(point->number);
    t.nothingAt(points, kBackground);
    t.setUp({.factor = 1.0, .response = 100.0, .background = kBackground, .detectable = 1e-6});
    t.nothingAt({29}, kBackground); // the detector was restless by then
    t.setUp(kDetectorOnly, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    t.later(365.0 * 24.0 * 60.0);
}

/// Entered once: the files of both years, and what the comparison says.
struct Entered
{
    std::string before;
    std::string after;
};

Entered entered()
{
    Technician t("Drying oven", "VO-4", "Fennick Optics", 400.0);
    lastYear(t);
    Entered files{t.jobFile(), {}};

    t.openJob("yearly check", 1e-6, 5e-6);
    t.redrawn(12); // it gets the number 30: numbers are never given twice
    t.sheet("Top", "above");
    t.joints(JointKind::Feedthrough, "Cable gland", 31, 1);
    t.drawn();
    t.setUp(kDetectorOnly);
    t.round(RoundKind::AsFound, "as found");
    const model::ReadingId outlier =
        t.spray({.point = 9, .background = kBackground, .shown = 3.0e-5, .isSure = false});
    std::vector<int> points;
    const model::Job drawn = t.job();
    for (const model::TestPoint* point : drawn.sketch.activePoints())
        if (point->number != 9 && point->number != 27 && point->number != 28 && point->number != 31)
            points.push_back(point->number);
    t.nothingAt(points, kBackground);
    t.submit("ready");
    const auto first = t.checks();
    EXPECT_EQ(checkOf(first, "calibration").state, analysis::CheckState::Stops);
    EXPECT_EQ(checkOf(first, "coverage").state, analysis::CheckState::Stops);
    EXPECT_EQ(checkOf(first, "coverage").points.size(), 3U);
    EXPECT_EQ(checkOf(first, "outliers").points.size(), 1U) << checkOf(first, "outliers").answer;
    t.sendBack("no check afterwards; rear gauge, drain and cable gland not sprayed; look at point 9 again");

    t.correct(outlier, 3.0e-8, "typed 3.0e-5 for 3.0e-8");
    t.nothingAt({27, 28, 31}, kBackground);
    t.setUp(kDetectorOnly, CalibrationMoment::After);
    t.submit("completed");
    t.sign("seen and accepted", 0);
    files.after = t.jobFile();
    return files;
}

void checkJob(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 29U);
    job.expectClearExcept({});
    int submitted = 0;
    int returned = 0;
    for (const model::ReviewEntry& entry : job.job().review) {
        submitted += entry.step == model::ReviewStep::Submitted ? 1 : 0;
        returned += entry.step == model::ReviewStep::Returned ? 1 : 0;
    }
    EXPECT_EQ(submitted, 2);
    EXPECT_EQ(returned, 1);
}

/// 26 same, one new point, one moved, one not comparable because last year was too blind there.
void checkComparison(const LookedAt& before, const LookedAt& after)
{
    const model::Sketch& then = before.job().sketch;
    const model::Sketch& now = after.job().sketch;
    const auto proposed = analysis::compare({&then, before.left()}, {&now, after.left()});
    ASSERT_EQ(proposed.matched(analysis::MatchedBy::Place), 1);
    const analysis::KnownPairs said{{{then.pointNumbered(12)->id, now.pointNumbered(30)->id}}, {}};
    const auto comparison = analysis::compare({&then, before.left()}, {&now, after.left()}, said);
    int same = 0;
    int moved = 0;
    int isNew = 0;
    int blind = 0;
    for (const analysis::ComparedPoint& row : comparison.points) {
        const bool isSame = row.change == analysis::Change::Same;
        same += isSame && row.match.by == analysis::MatchedBy::Identity ? 1 : 0;
        moved += isSame && row.match.by == analysis::MatchedBy::Person ? 1 : 0;
        isNew += !row.match.before ? 1 : 0;
        const bool both = row.match.before && row.match.after;
        blind += both && row.change == analysis::Change::NotComparable ? 1 : 0;
    }
    EXPECT_EQ(same, 26);
    EXPECT_EQ(moved, 1);
    EXPECT_EQ(isNew, 1);
    EXPECT_EQ(blind, 1);
}

TEST(DryingOven, IsSentBackOnceAndComparesWithLastYear)
{
    const Entered files = entered();
    const LookedAt before(files.before);
    const LookedAt after(files.after);
    checkJob(after);
    checkComparison(before, after);
    const LookedAt keptBefore(keptFile("drying_oven_last_year", files.before));
    const LookedAt keptAfter(keptFile("drying_oven", files.after));
    checkJob(keptAfter);
    checkComparison(keptBefore, keptAfter);
}

} // namespace
} // namespace sealwalk::scenarios
