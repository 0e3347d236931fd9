// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 1, a surface-science chamber: a leak that is open at half stroke only, one joint repaired
// twice, one held by a temporary repair. Invented; the figures are our practice sheet's.
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 4e-11;

std::string entered()
{
    Technician t("Surface chamber", "PSL-UHV-02", "Pellmere Surface Lab", 45.0);
    t.openJob("base pressure five times that of last year", 2e-10, 1e-9);
    t.sheet("Front", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::MetalGasketFlange, "Flange", 2, 5);
    t.joints(JointKind::Viewport, "Viewport", 7, 2);
    t.place(7, "12 o'clock, seen from the front");
    t.sheet("Rear", "the rear");
    t.joints(JointKind::MetalGasketFlange, "Rear flange", 9, 13);
    t.sheet("Valve", "the front");
    t.joints(JointKind::Valve, "Gate valve bellows", 22, 1, {"open", "half open", "shut"});
    t.joints(JointKind::Valve, "Gate valve bonnet", 23, 1);
    t.joints(JointKind::Feedthrough, "Feedthrough", 24, 4);
    t.joints(JointKind::Viewport, "Sapphire viewport", 28, 1);
    t.joints(JointKind::Bellows, "Bellows", 29, 2);
    t.joints(JointKind::Valve, "Leak valve", 31, 1);
    t.drawn();
    const SetUp behindTheTurbo{
        .factor = 0.98, .response = 2.0, .background = kBackground, .detectable = 3e-11};
    t.setUp(behindTheTurbo);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 1, .background = kBackground, .shown = 4e-11});
    t.spray({.point = 7, .background = kBackground, .shown = 3.2e-9, .delay = 2.0});
    t.spray({.point = 22, .background = kBackground, .condition = Condition::Open});
    t.spray({.point = 22,
             .background = kBackground,
             .shown = 7.5e-10,
             .condition = Condition::HalfOpen,
             .delay = 4.0});
    t.spray({.point = 22, .background = kBackground, .condition = Condition::Shut});
    t.spray({.point = 28, .background = kBackground, .shown = 5e-11});
    t.nothingAt({}, kBackground);

    t.repair({.points = {7}, .defect = "nothing seen", .action = "re-tighten"});
    t.spray({.point = 7, .background = kBackground, .shown = 1.1e-9, .delay = 2.0});
    t.repair({.points = {7},
              .defect = "fibre or hair",
              .action = "replace metal gasket",
              .material = "new copper gasket"});
    t.spray({.point = 7, .background = kBackground, .shown = 4e-11});
    t.repair({.points = {22},
              .defect = "crack",
              .action = "lock valve",
              .material = "locked open, part ordered",
              .permanent = false,
              .owner = "lab manager",
              .dueInDays = 42,
              .disturbed = {23}});
    t.spray({.point = 22, .background = kBackground, .condition = Condition::Open});
    t.nothingAt({23}, kBackground);
    t.setUp(behindTheTurbo, model::CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 31U);
    job.expectRows({
        {.round = 1, .point = 1},
        {.round = 1, .point = 7, .corrected = 3.2e-9, .verdict = Verdict::Over},
        {.round = 1, .point = 22, .condition = Condition::Open},
        {.round = 1,
         .point = 22,
         .corrected = 7.2e-10,
         .verdict = Verdict::Over,
         .condition = Condition::HalfOpen},
        {.round = 1, .point = 22, .condition = Condition::Shut},
        {.round = 1, .point = 28},
        {.round = 2, .point = 7, .corrected = 1.1e-9, .verdict = Verdict::Over},
        {.round = 3, .point = 7},
        {.round = 4, .point = 22, .condition = Condition::Open},
    });
    EXPECT_EQ(job.found(7).finding, Finding::Leak);
    EXPECT_EQ(job.found(22).finding, Finding::Leak);
    EXPECT_EQ(job.found(22).condition, Condition::HalfOpen);
    EXPECT_EQ(job.found(22).verdict, Verdict::Over);
    EXPECT_EQ(job.in(2, 7).verdict, Verdict::Over); // tightening alone did not do it
    EXPECT_TRUE(job.left(22).temporaryRepair);
    job.expectClearExcept({});
    ASSERT_EQ(job.job().repairs.size(), 3U);
    EXPECT_EQ(job.job().repairs.back().due->date(), "2026-04-13");
}

TEST(SurfaceChamber, LeaksAtHalfStrokeOnlyAndIsHeldForSixWeeks)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("surface_chamber", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
