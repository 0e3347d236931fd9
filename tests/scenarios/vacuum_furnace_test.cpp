// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 2, a vacuum furnace: a factor of 0.16, grease that is no repair, a feedthrough that leaks
// hot only, and a pressure rise that accounts for what was repaired.
#include "core/analysis/job_balance.h"
#include "core/analysis/job_view.h"
#include "core/analysis/repair_words.h"
#include "tests/scenarios/scenario.h"

#include <cmath>

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 8e-7;
constexpr double kMicron = 0.1333223684; // Pa: a thousandth of a millimetre of mercury

std::vector<double> everyMinute(int minutes)
{
    std::vector<double> times;
    for (int minute = 0; minute <= minutes; ++minute)
        times.push_back(minute);
    return times;
}

/// A straight rise, with a gauge that is not quite steady.
std::vector<double> straight(double micronsPerHour, int minutes)
{
    std::vector<double> pressures;
    for (int minute = 0; minute <= minutes; ++minute)
        pressures.push_back(0.5 + micronsPerHour * kMicron * minute / 60.0 +
                            0.002 * std::sin(7.3 * minute * minute));
    return pressures;
}

LeakRate totalOf(double micronsPerHour)
{
    return pressureRise(cubicMetres(3.8), pascals(micronsPerHour * kMicron), seconds(3600.0));
}

std::string entered()
{
    Technician t("Vacuum furnace", "VF-3", "Tarn Hollow Heat Treat", 3800.0);
    t.openJob("discoloured parts", 1e-4, inMillibarLitresPerSecond(totalOf(10.0)));
    t.sheet("Front", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 2);
    t.isSetup(1);
    t.joints(JointKind::OringSeal, "Door O-ring", 3, 1);
    t.place(3, "7 o'clock, seen from the front");
    t.joints(JointKind::ClampedFlange, "Port", 4, 16);
    t.sheet("Left", "the left");
    t.joints(JointKind::Feedthrough, "Thermocouple gland", 20, 5);
    t.joints(JointKind::ThreadedFitting, "Gas fitting", 25, 8);
    t.sheet("Power", "the rear");
    t.joints(JointKind::Feedthrough, "Power feedthrough B", 33, 1, {"cold", "hot"});
    t.joints(JointKind::ClampedFlange, "Rear port", 34, 6);
    t.sheet("Jacket", "outside");
    t.joints(JointKind::WeldSeam, "Water jacket weld", 40, 1);
    t.joints(JointKind::WeldSeam, "Shell weld", 41, 18);
    t.drawn();
    const SetUp foreline{.factor = 0.16, .response = 4.0, .background = kBackground, .detectable = 2.8e-6};
    t.rise(TestMoment::AsFound, everyMinute(120), straight(28.0, 120));
    t.setUp(foreline);

    t.round(RoundKind::AsFound, "as found");
    t.spray({.point = 3, .background = kBackground, .shown = 4.5e-3, .delay = 2.0});
    t.spray({.point = 21, .background = 9e-7, .shown = 1.2e-4, .delay = 2.0});
    t.spray({.point = 33, .background = kBackground, .condition = Condition::Cold});
    t.spray({.point = 33, .background = 1.1e-6, .shown = 4.0e-5, .condition = Condition::Hot, .delay = 3.0});
    t.spray({.point = 40,
             .background = kBackground,
             .shown = 3.2e-6,
             .detail = "helium in the drained jacket",
             .delay = 90.0,
             .dwell = 240.0});
    t.nothingAt({}, kBackground);

    t.repair({.points = {3}, .defect = "flat", .action = "grease thinly"});
    t.spray({.point = 3, .background = kBackground, .shown = 9.0e-4, .delay = 2.0});
    t.repair({.points = {3},
              .defect = "flat",
              .action = "replace seal",
              .material = "new O-ring",
              .disturbed = {4}});
    t.nothingAt({3, 4}, kBackground);
    t.repair({.points = {21}, .defect = "loose", .action = "replace ferrule", .material = "new ferrule"});
    t.nothingAt({21}, kBackground);
    t.repair({.points = {33}, .defect = "cracked ceramic", .action = "replace seal"});
    t.spray({.point = 33, .background = kBackground, .condition = Condition::Cold});
    t.spray({.point = 33, .background = 1.1e-6, .condition = Condition::Hot});
    t.rise(TestMoment::AsLeft, everyMinute(120), straight(7.0, 120));
    t.setUp(foreline, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void checkTable(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 58U);
    job.expectRows({
        {.round = 1, .point = 3, .corrected = 2.8e-2, .verdict = Verdict::Over},
        {.round = 1, .point = 21, .corrected = 7.4e-4, .verdict = Verdict::Over},
        {.round = 1, .point = 33, .condition = Condition::Cold},
        {.round = 1, .point = 33, .corrected = 2.4e-4, .verdict = Verdict::Over, .condition = Condition::Hot},
        {.round = 1, .point = 40, .corrected = 1.5e-5, .detail = "helium in the drained jacket"},
        {.round = 2, .point = 3, .corrected = 5.6e-3, .verdict = Verdict::Over},
        {.round = 3, .point = 3},
        {.round = 4, .point = 21},
        {.round = 5, .point = 33, .condition = Condition::Hot},
    });
    const auto views = analysis::checks(job.job());
    ASSERT_FALSE(views.empty());
    EXPECT_NEAR(views.front().factor->factor, 0.16, 1e-9);
    EXPECT_EQ(job.in(2, 3).verdict, Verdict::Over); // grease alone
    EXPECT_EQ(job.found(33).condition, Condition::Hot);
    EXPECT_EQ(job.left(40).verdict, Verdict::Within);
    job.expectClearExcept({40});
}

/// As shown, the hot feedthrough would pass.
void checkTrap(const LookedAt& job)
{
    const model::Reading* hot = job.job().reading(*job.found(33).reading);
    EXPECT_LT(*hot->peak, *job.job().setup.pointLimit);
    EXPECT_EQ(job.found(33).verdict, Verdict::Over);
}

analysis::JobBalance balanceOf(const LookedAt& job, const model::RiseTest& test,
                               const std::vector<analysis::PointFinding>& findings)
{
    analysis::RiseOptions options;
    options.volume = *job.object().volume;
    const auto rise = analysis::analyseRise({test.times, test.pressures, test.temperatures}, options);
    EXPECT_TRUE(rise.has_value());
    return analysis::balanceOfJob(job.job(), job.object(), findings, &test, *rise).value();
}

void checkBalance(const LookedAt& job)
{
    ASSERT_EQ(job.job().riseTests.size(), 2U);
    const auto before = balanceOf(job, job.job().riseTests.front(), job.found());
    const auto after = balanceOf(job, job.job().riseTests.back(), job.left());
    const double taken =
        inMillibarLitresPerSecond(before.effect.leakNow) - inMillibarLitresPerSecond(after.effect.leakNow);
    EXPECT_NEAR(taken, 3.0e-2, 0.1e-2); // 21 um less in an hour
    const double located = inMillibarLitresPerSecond(before.balance.located);
    EXPECT_NEAR(located, 2.9e-2, 0.15e-2); // so large a leak passes helium and air nearly alike
    EXPECT_EQ(after.effect.meetsLimit, true);
    EXPECT_EQ(before.effect.meetsLimit, false);
}

TEST(VacuumFurnace, FailsHotPassesWithANewRingAndTheRiseAgrees)
{
    const std::string bytes = entered();
    for (const std::string& file : {bytes, keptFile("vacuum_furnace", bytes)}) {
        const LookedAt job(file);
        checkTable(job);
        checkTrap(job);
        checkBalance(job);
    }
}

TEST(VacuumFurnace, GreaseComesWithItsCaution)
{
    const auto cautions = analysis::repairCautions("grease thinly");
    EXPECT_TRUE(std::any_of(cautions.begin(), cautions.end(), [](const std::string& sentence) {
        return sentence.find("is not repaired") != std::string::npos;
    }));
}

} // namespace
} // namespace sealwalk::scenarios
