// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 6, a space-simulation chamber: permeation told by its delay and a short burst, a hall full
// of helium, and a pinhole filled under a concession.
#include "core/model/sketch.h"
#include "tests/scenarios/scenario.h"

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 3e-8;

std::string entered()
{
    Technician t("Space-simulation chamber", "TV-6", "Harrow Fen Test Hall", 62000.0);
    t.openJob("acceptance after moving", 1e-6, 2e-5);
    t.sheet("Door", "outside");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::OringSeal, "Door O-ring", 2, 12);
    t.place(5, "arc 120 to 150°, bagged");
    t.place(9, "arc 240 to 270° clockwise from the top, 8 o'clock from outside");
    t.sheet("Side", "the left");
    t.joints(JointKind::ClampedFlange, "Port", 14, 30);
    t.sheet("Nozzles", "above");
    t.joints(JointKind::WeldSeam, "Nozzle weld", 44, 20);
    t.sheet("Shell", "outside");
    t.joints(JointKind::WeldSeam, "Shell weld", 64, 37);
    t.sheet("Upper shell", "above");
    t.joints(JointKind::WeldSeam, "Upper weld section", 101, 9);
    t.joints(JointKind::WeldSeam, "Rear weld section", 110, 31);
    t.drawn();
    const SetUp turbo{.factor = 0.92, .response = 25.0, .background = kBackground, .detectable = 5e-8};
    t.setUp(turbo);

    t.round(RoundKind::AsFound, "first day, bag first");
    t.spray({.point = 5,
             .background = kBackground,
             .shown = 6e-7,
             .condition = Condition::Bagged,
             .delay = 540.0,
             .dwell = 1320.0});
    t.spray({.point = 5, .background = kBackground, .dwell = 8.0, .remark = "short burst: nothing"});
    t.spray({.point = 9, .background = kBackground, .shown = 4.2e-6, .delay = 6.0});
    t.spray({.point = 44, .background = 4e-8, .shown = 1.3e-6, .delay = 8.0});
    const std::vector<int> upper{101, 102, 103, 104, 105, 106, 107, 108, 109};
    double rising = kBackground;
    for (const int point : upper) {
        t.spray({.point = point, .background = rising, .shown = rising + 8e-8});
        rising += 8e-8;
    }
    t.makeVoid(upper, "hall full of helium");
    t.later(14.0 * 60.0);
    t.setUp(turbo, CalibrationMoment::During);
    t.nothingAt({}, kBackground);

    t.judge(5, "permeation", "within", "first rise after nine minutes, nothing on a short burst");
    t.repair({.points = {9},
              .defect = "scratch across the seal",
              .action = "polish seat along the seal",
              .material = "new O-ring",
              .disturbed = {8, 10}});
    t.nothingAt({9, 8, 10}, kBackground);
    t.repair({.points = {44},
              .defect = "pore",
              .action = "fill with epoxy",
              .permanent = false,
              .owner = "plant engineer",
              .dueInDays = 120,
              .cureHours = 24.0});
    t.nothingAt({44}, 4e-8);
    t.concede(44, "the owner", 120, "epoxy until the shutdown, then re-weld");
    t.setUp(turbo, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 140U);
    EXPECT_EQ(job.job().voids.size(), 9U);
    job.expectRows({
        {.round = 1, .point = 5, .corrected = 6.2e-7, .condition = Condition::Bagged},
        {.round = 1, .point = 9, .corrected = 4.5e-6, .verdict = Verdict::Over},
        {.round = 1, .point = 44, .corrected = 1.4e-6, .verdict = Verdict::Over},
        {.round = 1, .point = 101},
        {.round = 1, .point = 109},
        {.round = 2, .point = 9},
        {.round = 3, .point = 44},
    });
    EXPECT_EQ(job.left(5).finding, Finding::Permeation);
    EXPECT_EQ(job.left(5).verdict, Verdict::Within);
    EXPECT_EQ(job.found(109).finding, Finding::Clear);
    // Seen from inside the same place is 4 o'clock: the sheet says which side it is.
    const model::TestPoint* scratch = job.job().sketch.pointNumbered(9);
    EXPECT_NE(model::placeText(job.job().sketch, *scratch).find("from outside"), std::string::npos);
    const model::Repair& epoxy = job.job().repairs.back();
    EXPECT_FALSE(epoxy.permanent);
    EXPECT_EQ(epoxy.sprayableFrom->secondsSince(epoxy.at), 24 * 3600.0);
    EXPECT_TRUE(job.left(44).temporaryRepair);
    EXPECT_TRUE(job.left(44).concession);
    job.expectClearExcept({5});
}

TEST(SpaceSimulation, TellsPermeationFromLeakAndCarriesAConcession)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("space_simulation", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
