// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 8, a cryostat jacket: too little room between what can be seen and the limit, a joint that
// leaks cold only, permeation above the limit, and a trapped volume that answers to no helium.
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 2e-9;

std::string entered()
{
    Technician t("Cryostat jacket", "CRY-A", "Brackenmoor Low-Temp Lab", 110.0);
    t.openJob("boils off too fast", 1e-9, 5e-9);
    t.sheet("Neck", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::BrazedJoint, "Brazed joint", 2, 9);
    t.joints(JointKind::BrazedJoint, "Brazed tube joint", 11, 1, {"at rest", "cold"});
    t.joints(JointKind::MetalGasketFlange, "Flange", 12, 8);
    t.sheet("Top plate", "above");
    t.joints(JointKind::OringSeal, "Relief-valve O-ring", 20, 1);
    t.joints(JointKind::Feedthrough, "Feedthrough", 21, 4);
    t.joints(JointKind::ThreadedFitting, "Blind-screw cover inside", 25, 1);
    t.joints(JointKind::WeldSeam, "Jacket weld", 26, 8);
    t.drawn();
    t.later(180.0); // the background decays from 8e-9 as helium leaves the insulation
    const SetUp hose{.factor = 1.0, .response = 73.0, .background = kBackground, .detectable = 8e-10};
    t.setUp(hose);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 11, .background = kBackground});
    t.spray(
        {.point = 11, .background = kBackground, .shown = 8e-9, .condition = Condition::Cold, .delay = 40.0});
    t.spray({.point = 20, .background = kBackground, .shown = 1.3e-8, .delay = 840.0, .dwell = 3600.0});
    t.spray({.point = 20, .background = kBackground, .detail = "short burst", .dwell = 10.0});
    t.spray({.point = 25,
             .background = kBackground,
             .remark = "long tail after pump-down, no helium response: suspected trapped volume"});
    t.nothingAt({}, kBackground);
    t.repair({.points = {11},
              .defect = "crack",
              .action = "fill with epoxy",
              .permanent = false,
              .owner = "lab engineer",
              .dueInDays = 30,
              .cureHours = 24.0});
    t.spray({.point = 11, .background = kBackground});
    t.spray({.point = 11, .background = kBackground, .condition = Condition::Cold});
    t.concede(20, "the owner", 365, "permeation, no defect; metal seal at the next opening");
    t.setUp(hose, CalibrationMoment::After);
    t.submit("ready");
    // 8e-10 is too near a limit of 1e-9 to pass without a word.
    for (const analysis::ReviewCheck& check : t.checks())
        if (check.word == "sensitivity") {
            EXPECT_EQ(check.state, analysis::CheckState::NeedsWord) << check.answer;
        }
    t.sign("asked and answered: the background is helium-soaked, no better to be had");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 33U);
    job.expectRows({
        {.round = 1, .point = 11},
        {.round = 1, .point = 11, .corrected = 6e-9, .verdict = Verdict::Over, .condition = Condition::Cold},
        {.round = 1, .point = 20, .corrected = 1.1e-8, .verdict = Verdict::Over},
        {.round = 1, .point = 25},
        {.round = 2, .point = 11, .condition = Condition::Cold},
    });
    EXPECT_EQ(job.found(11).condition, Condition::Cold);
    EXPECT_TRUE(job.left(11).temporaryRepair);
    EXPECT_EQ(job.left(20).finding, Finding::Permeation);
    EXPECT_EQ(job.left(20).verdict, Verdict::Over);
    EXPECT_TRUE(job.left(20).concession);
    job.expectClearExcept({20});
}

TEST(Cryostat, LeaksColdOnlyAndPermeatesUnderAConcession)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("cryostat", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
