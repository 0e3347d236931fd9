// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 9, a cleanroom load lock: a valve seat tested across, a clamp that was over-tightened.
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 3e-10;

std::string entered()
{
    Technician t("Load lock", "LL-C", "Meridale Wafer Annex", 30.0);
    t.openJob("slow pump-down", 5e-9, 2e-8);
    t.sheet("Front", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::ClampedFlange, "Flange", 2, 12);
    t.joints(JointKind::Valve, "Slit-valve seat", 14, 1, {"shut"});
    t.sheet("Rear", "the rear");
    t.joints(JointKind::ClampedFlange, "Rear flange", 15, 7);
    t.joints(JointKind::ClampedFlange, "Clamp flange 40", 22, 1);
    t.joints(JointKind::Feedthrough, "Feedthrough", 23, 7);
    t.joints(JointKind::Valve, "Vent valve stem", 30, 1);
    t.joints(JointKind::Viewport, "Viewport", 31, 8);
    t.drawn();
    const SetUp turbo{.factor = 0.9, .response = 1.0, .background = kBackground, .detectable = 3e-10};
    t.setUp(turbo);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 14,
             .background = kBackground,
             .shown = 1.8e-8,
             .condition = Condition::Shut,
             .detail = "helium on the transfer side",
             .delay = 2.0});
    t.spray({.point = 22, .background = kBackground, .shown = 6.3e-8, .delay = 1.0});
    t.spray({.point = 30, .background = kBackground});
    t.nothingAt({}, kBackground);
    t.repair({.points = {14}, .defect = "dirt", .action = "clean and re-seat seal"});
    t.spray({.point = 14,
             .background = kBackground,
             .shown = 2e-9 * 0.9 + kBackground,
             .condition = Condition::Shut,
             .detail = "helium on the transfer side"});
    t.repair({.points = {22},
              .defect = "over-tightened",
              .action = "replace seal",
              .material = "new centring ring"});
    t.nothingAt({22}, kBackground);
    t.setUp(turbo, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 38U);
    const std::string across = "helium on the transfer side";
    job.expectRows({
        {.round = 1,
         .point = 14,
         .corrected = 2.0e-8,
         .verdict = Verdict::Over,
         .condition = Condition::Shut,
         .detail = across},
        {.round = 1, .point = 22, .corrected = 7.0e-8, .verdict = Verdict::Over},
        {.round = 1, .point = 30},
        {.round = 2, .point = 14, .corrected = 2e-9, .condition = Condition::Shut, .detail = across},
        {.round = 3, .point = 22},
    });
    EXPECT_EQ(job.left(14).verdict, Verdict::Within);
    job.expectClearExcept({14});
}

TEST(LoadLock, CleansASeatAndReplacesAnOverTightenedRing)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("load_lock", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
