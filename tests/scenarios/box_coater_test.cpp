// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 3, a box coater: helium of a neighbour's job makes a run of points void, a shaft leaks at
// one angle, an O-ring passes wet and fails dry.
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 2e-8;

std::string entered()
{
    Technician t("Box coater", "BX-1200", "Corvane Coatings", 1200.0);
    t.openJob("yearly check", 1e-7, 5e-7);
    t.sheet("Front", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::ClampedFlange, "Front flange", 2, 16);
    t.sheet("Top", "above");
    t.joints(JointKind::ClampedFlange, "Chamber top flange", 18, 3);
    t.joints(JointKind::Feedthrough, "Top feedthrough", 21, 15);
    t.sheet("Drive", "the rear");
    t.joints(JointKind::ClampedFlange, "Rear flange", 36, 5);
    t.joints(JointKind::Feedthrough, "Rotary feedthrough", 41, 1, {"at an angle"});
    t.joints(JointKind::ThreadedFitting, "Water fitting", 42, 10);
    t.sheet("Cathodes", "the left");
    t.joints(JointKind::OringSeal, "Cathode water O-ring", 52, 1, {"wet", "dried"});
    t.joints(JointKind::ClampedFlange, "Cathode flange", 53, 7);
    t.joints(JointKind::ClampedFlange, "Small clamp flange", 60, 1);
    t.joints(JointKind::WeldSeam, "Floor weld", 61, 14);
    t.drawn();
    const SetUp foreline{.factor = 0.65, .response = 2.6, .background = kBackground, .detectable = 1.5e-8};
    t.setUp(foreline);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 18, .background = 2e-8, .shown = 4e-8});
    t.spray({.point = 19, .background = 4e-8, .shown = 7e-8});
    t.spray({.point = 20, .background = 7e-8, .shown = 9e-8});
    t.makeVoid({18, 19, 20}, "background rose: helium of the job next door");
    t.later(60.0);
    t.nothingAt({18, 19, 20}, kBackground);
    t.spray({.point = 41, .background = kBackground, .condition = Condition::Angle, .detail = "0°"});
    t.spray({.point = 41,
             .background = kBackground,
             .shown = 6.7e-7,
             .condition = Condition::Angle,
             .detail = "140°",
             .delay = 1.0});
    t.spray({.point = 52, .background = kBackground, .condition = Condition::Wet});
    t.spray({.point = 52,
             .background = kBackground,
             .shown = 2.8e-7,
             .condition = Condition::Dried,
             .detail = "helium in the circuit",
             .delay = 5.0});
    t.spray({.point = 60, .background = kBackground, .shown = 3.3e-8, .delay = 3.0});
    t.nothingAt({}, kBackground);

    t.repair({.points = {41}, .defect = "hardened seal", .action = "replace seal", .material = "seal set"});
    for (const char* angle : {"0°", "140°"})
        t.spray({.point = 41, .background = kBackground, .condition = Condition::Angle, .detail = angle});
    t.repair({.points = {52}, .defect = "nick", .action = "replace seal", .material = "O-ring"});
    t.spray({.point = 52, .background = kBackground, .condition = Condition::Dried});
    t.setUp(foreline, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 74U);
    EXPECT_EQ(job.job().voids.size(), 3U);
    job.expectRows({
        {.round = 1, .point = 18},
        {.round = 1, .point = 19},
        {.round = 1, .point = 20},
        {.round = 1, .point = 41, .condition = Condition::Angle, .detail = "0°"},
        {.round = 1,
         .point = 41,
         .corrected = 1.0e-6,
         .verdict = Verdict::Over,
         .condition = Condition::Angle,
         .detail = "140°"},
        {.round = 1, .point = 52, .condition = Condition::Wet},
        {.round = 1,
         .point = 52,
         .corrected = 4.0e-7,
         .verdict = Verdict::Over,
         .condition = Condition::Dried,
         .detail = "helium in the circuit"},
        {.round = 1, .point = 60, .corrected = 2.0e-8},
        {.round = 2, .point = 41, .condition = Condition::Angle, .detail = "140°"},
    });
    EXPECT_EQ(job.found(41).verdict, Verdict::Over);
    EXPECT_EQ(job.found(52).condition, Condition::Dried);
    EXPECT_EQ(job.found(52).verdict, Verdict::Over);
    for (const int point : {18, 19, 20})
        EXPECT_EQ(job.found(point).finding, Finding::Clear) << point;
    EXPECT_EQ(job.left(60).verdict, Verdict::Within);
    job.expectClearExcept({60});
}

TEST(BoxCoater, VoidsWhatTheNeighboursHeliumSpoiltAndFindsOneAngle)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("box_coater", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
