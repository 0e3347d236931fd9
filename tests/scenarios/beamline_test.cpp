// SPDX-License-Identifier: GPL-3.0-or-later
// Worked example 5, a beamline section of 18 m: the far end cannot be judged from the near port; the reviewer
// sends the job back and it is repeated from the other port.
#include "core/analysis/job_view.h"
#include "tests/scenarios/scenario.h"

#include <numeric>

namespace sealwalk::scenarios {
namespace {

constexpr double kBackground = 5e-11;

std::vector<int> numbers(int first, int last)
{
    std::vector<int> all(static_cast<std::size_t>(last - first + 1));
    std::iota(all.begin(), all.end(), first);
    return all;
}

const analysis::ReviewCheck& checkOf(const std::vector<analysis::ReviewCheck>& checks, std::string_view word)
{
    return *std::find_if(checks.begin(), checks.end(), [&](const auto& c) { return c.word == word; });
}

std::string entered()
{
    Technician t("Beamline section", "BL-7-S4", "Dunvarrow Light Hall", 320.0);
    t.openJob("new bellows fitted", 2e-10, 2e-9);
    t.sheet("Near port A", "port A");
    t.joints(JointKind::ClampedFlange, "Detector hose clamp", 1, 1);
    t.isSetup(1);
    t.joints(JointKind::MetalGasketFlange, "Near flange", 2, 39);
    t.place(12, "leak-check groove, 3 o'clock, seen from port A");
    t.sheet("At 7 m", "port A");
    t.joints(JointKind::MetalGasketFlange, "Middle flange", 41, 22);
    t.joints(JointKind::Bellows, "Edge-welded bellows at 7 m", 63, 1, {"at rest", "extended"});
    t.joints(JointKind::MetalGasketFlange, "Flange at 8 m", 64, 13);
    t.sheet("At 15 m", "port A");
    t.joints(JointKind::MetalGasketFlange, "Far flange", 77, 20);
    t.drawn();
    // One display, one noise; the share of the signal falls along the tube and its response grows.
    const double noise = 5e-11 * 0.94;
    const SetUp near{.factor = 0.94,
                     .response = 1.0,
                     .background = kBackground,
                     .detectable = noise / 0.94,
                     .place = "1 m from port A",
                     .points = numbers(1, 40)};
    const SetUp middle{.factor = 0.5,
                       .response = 12.0,
                       .background = kBackground,
                       .detectable = noise / 0.5,
                       .place = "7 m",
                       .points = numbers(41, 76)};
    const SetUp far{.factor = 0.12,
                    .response = 40.0,
                    .background = kBackground,
                    .detectable = noise / 0.12,
                    .place = "15 m",
                    .points = numbers(77, 96)};
    for (const SetUp& place : {near, middle, far})
        t.setUp(place);

    t.round(RoundKind::AsFound, "from port A");
    t.spray({.point = 12, .background = kBackground, .shown = 3.5e-10, .delay = 1.0});
    t.spray({.point = 63, .background = kBackground});
    t.spray({.point = 63,
             .background = kBackground,
             .shown = 9.0e-9,
             .condition = Condition::Extended,
             .detail = "4 mm offset",
             .delay = 16.0});
    t.nothingAt({}, kBackground);
    t.repair({.points = {12}, .defect = "loose", .action = "re-tighten", .material = "in sequence"});
    t.nothingAt({12}, kBackground);
    t.repair({.points = {63},
              .defect = "crack",
              .action = "replace bellows",
              .material = "new bellows",
              .disturbed = {62, 64}});
    t.spray({.point = 63, .background = kBackground});
    t.spray(
        {.point = 63, .background = kBackground, .condition = Condition::Extended, .detail = "4 mm offset"});
    t.nothingAt({62, 64}, kBackground);
    for (const SetUp& place : {near, middle, far})
        t.setUp(place, CalibrationMoment::After);
    t.submit("ready");
    EXPECT_EQ(checkOf(t.checks(), "sensitivity").state, analysis::CheckState::Stops);
    t.sendBack("the far end cannot be judged from port A; repeat it from port B");

    SetUp fromB = far;
    fromB.factor = 0.94;
    fromB.response = 1.0;
    fromB.detectable = noise / 0.94;
    t.setUp(fromB);
    t.round(RoundKind::Repeat, "far end from port B", numbers(77, 96));
    t.nothingAt(numbers(77, 96), kBackground);
    t.setUp(fromB, CalibrationMoment::After);
    t.submit("far end repeated from port B");
    t.sign("seen and accepted");
    return t.jobFile();
}

void check(const LookedAt& job)
{
    job.expectSigned();
    EXPECT_EQ(job.job().sketch.activePoints().size(), 96U);
    job.expectRows({
        {.round = 1, .point = 12, .corrected = 3.2e-10, .verdict = Verdict::Over},
        {.round = 1, .point = 63},
        {.round = 1,
         .point = 63,
         .corrected = 1.8e-8,
         .verdict = Verdict::Over,
         .condition = Condition::Extended,
         .detail = "4 mm offset"},
        {.round = 1, .point = 77, .verdict = Verdict::CannotSay},
        {.round = 1, .point = 81, .verdict = Verdict::CannotSay},
        {.round = 2, .point = 12},
        {.round = 3, .point = 63, .condition = Condition::Extended, .detail = "4 mm offset"},
        {.round = 4, .point = 77},
        {.round = 4, .point = 81},
    });
    for (int point = 77; point <= 81; ++point)
        EXPECT_EQ(job.left(point).finding, Finding::Clear) << point;
    EXPECT_EQ(job.in(1, 79).finding, Finding::BelowDetectable);
    job.expectClearExcept({});
    const auto& review = job.job().review;
    ASSERT_GE(review.size(), 4U);
    EXPECT_EQ(review[0].step, model::ReviewStep::Submitted);
    EXPECT_EQ(review[1].step, model::ReviewStep::Returned);
    EXPECT_EQ(review[2].step, model::ReviewStep::Submitted);
    EXPECT_EQ(review.back().step, model::ReviewStep::Approved);
}

TEST(Beamline, FarEndIsSentBackAndRepeatedFromTheOtherPort)
{
    const std::string bytes = entered();
    check(LookedAt(bytes));
    check(LookedAt(keptFile("beamline", bytes)));
}

} // namespace
} // namespace sealwalk::scenarios
