// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 7, an electron-beam weld chamber: a first set-up too blind for the limit, a second that is
// not, and a leak of the set-up itself that was read as the object's.
#include "core/analysis/job_view.h"
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 1e-7;

std::string entered()
{
    Technician t("Electron-beam weld chamber", "EBW-1", "Ostler's Reach Fabrication", 2500.0);
    t.openJob("new build", 1e-6, 5e-6);
    t.sheet("Foreline", "the left");
    t.joints(JointKind::Hose, "Detector hose ferrule", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::Hose, "Foreline hose", 2, 1, {"at rest", "flexed"});
    t.joints(JointKind::ClampedFlange, "Foreline flange", 3, 2);
    t.sheet("Chamber", "the front");
    t.joints(JointKind::Feedthrough, "Cable plate", 5, 1);
    t.joints(JointKind::ClampedFlange, "Flange", 6, 19);
    t.sheet("Rear", "the rear");
    t.joints(JointKind::WeldSeam, "Weld", 25, 17);
    t.drawn();
    t.setUp({.factor = 0.4, .response = 3.0, .background = kBackground, .detectable = 1e-6});
    const auto blind = analysis::sensitivities(t.job(), t.object(), seconds(15.0));
    EXPECT_EQ(blind.size(), 1U);
    EXPECT_NE(blind.front().advice.find("above"), std::string::npos) << blind.front().advice;
    t.later(120.0);
    t.changeSetup([](model::Setup& setup) { setup.objectState = "foreline valve throttled, pumped longer"; });
    const SetUp throttled{.factor = 0.8, .response = 3.0, .background = kBackground, .detectable = 2e-7};
    t.setUp(throttled);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 5, .background = kBackground, .shown = 6e-7, .delay = 12.0});
    t.spray({.point = 1, .background = kBackground, .shown = 9e-7, .delay = 1.0});
    t.spray({.point = 2, .background = kBackground});
    t.spray({.point = 2,
             .background = kBackground,
             .shown = 2.5e-6,
             .condition = Condition::Flexed,
             .delay = 3.0});
    t.nothingAt({}, kBackground);
    t.round(RoundKind::Repeat, "detector hose taped", {5});
    t.nothingAt({5}, kBackground);
    t.repair({.points = {1}, .defect = "loose", .action = "replace clamp"});
    t.nothingAt({1}, kBackground);
    t.repair({.points = {2}, .defect = "crack", .action = "replace hose"});
    t.spray({.point = 2, .background = kBackground});
    t.spray({.point = 2, .background = kBackground, .condition = Condition::Flexed});
    t.setUp(throttled, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 41U);
    const auto views = analysis::checks(job.job());
    ASSERT_EQ(views.size(), 3U);
    EXPECT_NEAR(views[0].factor->factor, 0.4, 1e-9);
    EXPECT_NEAR(views[1].factor->factor, 0.8, 1e-9);
    EXPECT_FALSE(views[1].change); // another set-up, not a drift
    job.expectRows({
        {.round = 1, .point = 5, .corrected = 6.2e-7},
        {.round = 1, .point = 1, .corrected = 1.0e-6, .verdict = Verdict::CannotSay},
        {.round = 1, .point = 2},
        {.round = 1,
         .point = 2,
         .corrected = 3.0e-6,
         .verdict = Verdict::Over,
         .condition = Condition::Flexed},
        {.round = 2, .point = 5},
        {.round = 3, .point = 1},
        {.round = 4, .point = 2, .condition = Condition::Flexed},
    });
    EXPECT_EQ(job.found(2).condition, Condition::Flexed);
    EXPECT_TRUE(job.job().sketch.joint(job.job().sketch.pointNumbered(1)->joint)->isSetup);
    job.expectClearExcept({});
}

TEST(WeldChamber, SecondSetUpSeesEnoughAndTheHoseWasTheLeak)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("weld_chamber", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
