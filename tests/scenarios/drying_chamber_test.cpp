// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 4, a drying chamber under regulated records: a wrong number corrected with its reason, a valve
// seat that passes wet and fails dry, the rise before and after.
#include "core/analysis/job_balance.h"
#include "core/analysis/slips.h"
#include "tests/scenarios/scenario.h"

#include <cmath>

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 3e-6;
constexpr double kMicrobar = 0.1; // Pa

void rise(Technician& t, TestMoment moment, double microbar)
{
    std::vector<double> times;
    std::vector<double> pressures;
    for (int half = 0; half <= 60; ++half) {
        times.push_back(half * 0.5);
        pressures.push_back(1.0 + microbar * kMicrobar * half / 60.0 + 0.0005 * std::sin(5.1 * half * half));
    }
    t.rise(moment, times, pressures);
}

std::string entered()
{
    Technician t("Drying chamber", "LD-2", "Quillstone Hall", 9000.0);
    t.openJob("yearly check after sterilisation", 5e-3, 2e-2);
    t.sheet("Door side", "the front");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::ClampedFlange, "Front flange", 2, 5);
    t.joints(JointKind::OringSeal, "Door gasket", 7, 1);
    t.place(7, "lower hinge side");
    t.sheet("Vessel", "the left");
    t.joints(JointKind::ClampedFlange, "Flange", 8, 20);
    t.sheet("Drain", "below");
    t.joints(JointKind::Valve, "Valve", 28, 3);
    t.joints(JointKind::Valve, "Drain valve seat", 31, 1, {"wet", "dried"});
    t.joints(JointKind::ClampedFlange, "Condenser flange", 32, 16);
    t.sheet("Shelves", "the door");
    t.joints(JointKind::Hose, "Shelf-fluid hose", 48, 1, {"at rest", "flexed"});
    t.joints(JointKind::Hose, "Hose", 49, 4);
    t.joints(JointKind::WeldSeam, "Jacket weld", 53, 12);
    t.drawn();
    const SetUp pumps{.factor = 0.22, .response = 26.0, .background = kBackground, .detectable = 3e-5};
    rise(t, TestMoment::AsFound, 12.2);
    t.setUp(pumps);

    t.round(RoundKind::AsFound, "as found");
    const model::ReadingId wrong =
        t.spray({.point = 7, .background = kBackground, .shown = 9.0e-5, .delay = 5.0});
    t.correct(wrong, 9.0e-3, "typed two decades too low");
    t.spray({.point = 31, .background = kBackground, .condition = Condition::Wet});
    t.later(360.0);
    t.spray({.point = 31, .background = 4e-6, .shown = 1.5e-3, .condition = Condition::Dried, .delay = 6.0});
    t.spray({.point = 48, .background = kBackground, .condition = Condition::Flexed});
    t.nothingAt({}, kBackground);
    t.judge(31, "leak", "over", "answered twice, well above the limit each time");

    t.repair({.points = {7}, .defect = "nick", .action = "replace seal", .material = "door gasket"});
    t.nothingAt({7}, kBackground);
    t.repair({.points = {31}, .defect = "dirt", .action = "clean and re-seat seal"});
    t.spray({.point = 31,
             .background = kBackground,
             .shown = kBackground + 2e-4 * 0.22,
             .condition = Condition::Dried});
    rise(t, TestMoment::AsLeft, 2.2);
    t.setUp(pumps, CalibrationMoment::After);
    t.submit("ready");
    t.sign("seen and accepted");
    return t.jobFile();
}

void checkTable(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 64U);
    job.expectRows({
        {.round = 1, .point = 7, .corrected = 4.1e-2, .verdict = Verdict::Over},
        {.round = 1, .point = 31, .condition = Condition::Wet},
        {.round = 1,
         .point = 31,
         .corrected = 6.8e-3,
         .verdict = Verdict::Over,
         .condition = Condition::Dried},
        {.round = 1, .point = 48, .condition = Condition::Flexed},
        {.round = 2, .point = 7},
        {.round = 3, .point = 31, .corrected = 2e-4, .condition = Condition::Dried},
    });
    EXPECT_EQ(job.found(31).condition, Condition::Dried);
    EXPECT_EQ(job.found(31).verdict, Verdict::Over);
    EXPECT_TRUE(job.found(31).judgedByPerson); // the program itself left it open, a third above the limit
    EXPECT_EQ(job.left(31).verdict, Verdict::Within);
    job.expectClearExcept({31});
}

/// The old number stays, with who, when and why.
void checkCorrection(const LookedAt& job)
{
    const auto& readings = job.job().readings;
    const auto right = std::find_if(readings.begin(), readings.end(),
                                    [](const model::Reading& r) { return r.corrects.has_value(); });
    ASSERT_NE(right, readings.end());
    const model::Reading* wrong = job.job().reading(*right->corrects);
    ASSERT_NE(wrong, nullptr);
    EXPECT_EQ(wrong->entered, "9e-05 mbar l/s");
    EXPECT_EQ(right->reason, "typed two decades too low");
    EXPECT_EQ(job.found(7).reading, right->id);
}

void checkRise(const LookedAt& job)
{
    ASSERT_EQ(job.job().riseTests.size(), 2U);
    const double expected[] = {6.1e-2, 1.1e-2};
    for (std::size_t i = 0; i < 2; ++i) {
        const model::RiseTest& test = job.job().riseTests[i];
        analysis::RiseOptions options;
        options.volume = *job.object().volume;
        const auto rise = analysis::analyseRise({test.times, test.pressures, {}}, options);
        ASSERT_TRUE(rise.has_value());
        const auto& findings = i == 0 ? job.found() : job.left();
        const auto balance = analysis::balanceOfJob(job.job(), job.object(), findings, &test, *rise);
        ASSERT_TRUE(balance.has_value());
        EXPECT_NEAR(inMillibarLitresPerSecond(balance->effect.leakNow), expected[i], 0.05 * expected[i]);
        EXPECT_EQ(balance->effect.meetsLimit, i == 1);
    }
}

TEST(DryingChamber, CorrectsWithAReasonAndFailsWhenDry)
{
    const std::string bytes = entered();
    for (const std::string& file : {bytes, keptFile("drying_chamber", bytes)}) {
        const LookedAt job(file);
        checkTable(job);
        checkCorrection(job);
        checkRise(job);
    }
}

} // namespace
} // namespace sealwalk::scenarios
