// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/setup_sketch.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <functional>

namespace sealwalk::report {
namespace {

model::TestObject coater()
{
    model::TestObject object;
    object.name = "Box coater 2";
    return object;
}

// Property: of a set-up nobody described, every part that must be there is said to be unknown, and nothing
// else is drawn.
TEST(SetupSketch, NothingStatedIsNothingDrawn)
{
    const SetupSketch sketch = setupSketch(tests::ringJob(4), coater());
    EXPECT_EQ(sketch.object.lines, (std::vector<std::string>{"Box coater 2", "volume not stated"}));
    EXPECT_FALSE(sketch.connection.isStated);
    EXPECT_FALSE(sketch.hose.isStated);
    EXPECT_FALSE(sketch.detector.isStated);
    EXPECT_FALSE(sketch.ownPumps);
    EXPECT_FALSE(sketch.parallelPump);
    EXPECT_FALSE(sketch.linePressure);
    EXPECT_TRUE(sketch.leaks.empty());
    EXPECT_TRUE(sketch.leaksAtInlet.empty());
    EXPECT_EQ(sketch.spoken(), "Box coater 2, volume not stated; connection not stated; "
                               "hose, size not stated; detector, not named");
}

// Property: each thing stated comes in with its unit, and only that.
TEST(SetupSketch, WhatIsStatedComesWithItsUnit)
{
    struct Row
    {
        std::function<void(model::Setup&)> state;
        std::string said;
    };
    const std::vector<Row> rows = {
        {[](auto& s) { s.volume = litres(480.0); }, "Box coater 2, 480 l"},
        {[](auto& s) { s.connection = "foreline"; }, "; foreline; "},
        {[](auto& s) { s.hoseDiameter = millimetres(25.0); }, "hose, bore 25 mm, length not stated"},
        {[](auto& s) { s.hoseLength = metres(1.2); }, "hose, bore not stated, 1.2 m long"},
        {[](auto& s) { s.linePressure = pascals(0.5); }, "; 0.005 mbar inside; "},
        {[](auto& s) { s.auxiliarySpeed = litresPerSecond(80.0); }, "; pump in parallel, 80 l/s helium; "},
        {[](auto& s) { s.connection = "foreline, pump in parallel"; },
         "; pump in parallel, speed not stated; "},
        {[](auto& s) { s.detector = "LD-04"; }, "; detector LD-04"},
        {[](auto& s) { s.detectorSpeed = litresPerSecond(2.5); }, "detector, not named, 2.5 l/s helium"},
        {[](auto& s) { s.zeroOn = true; }, "detector, not named, zero on"},
    };
    for (const Row& row : rows) {
        model::Job job = tests::ringJob(4);
        row.state(job.setup);
        const std::string spoken = setupSketch(job, coater()).spoken();
        EXPECT_NE(spoken.find(row.said), std::string::npos) << row.said << " in: " << spoken;
    }
    model::Job alone = tests::ringJob(4);
    alone.setup.connection = "foreline, pump in parallel";
    alone.setup.auxiliarySpeed = litresPerSecond(0.0); // there is none: said by its speed
    EXPECT_FALSE(setupSketch(alone, coater()).parallelPump);
    model::TestObject pumped = coater();
    pumped.airSpeed = litresPerSecond(210.0);
    EXPECT_NE(setupSketch(alone, pumped).spoken().find("own pumps, 210 l/s air"), std::string::npos);
}

// Property: a reference leak is drawn once for each place it sat at, however often it was read; one at the
// detector's inlet stands there.
TEST(SetupSketch, EveryPlaceOfAReferenceLeakIsDrawnOnce)
{
    model::Job job = tests::ringJob(4);
    const Timestamp at = Timestamp::parseDate("2026-03-17").value();
    for (const char* place : {"near flange", "far flange", "near flange", ""}) {
        model::Calibration check = tests::systemCheck(at, 1.0);
        check.leak.serial = "RL-11";
        check.leak.value = millibarLitresPerSecond(4.9e-8);
        check.place = place;
        job.calibrations.push_back(check);
    }
    job.calibrations.push_back(job.calibrations.front());
    job.calibrations.back().kind = model::CalibrationKind::DetectorCheck;
    const SetupSketch sketch = setupSketch(job, coater());
    ASSERT_EQ(sketch.leaks.size(), 3U);
    EXPECT_EQ(sketch.leaks[0].lines,
              (std::vector<std::string>{"reference leak RL-11", "4.9 × 10⁻⁸ mbar·l/s, at near flange"}));
    EXPECT_EQ(sketch.leaks[1].lines.back(), "4.9 × 10⁻⁸ mbar·l/s, at far flange");
    EXPECT_EQ(sketch.leaks[2].lines.back(), "4.9 × 10⁻⁸ mbar·l/s, place not stated");
    EXPECT_FALSE(sketch.leaks[2].isStated);
    ASSERT_EQ(sketch.leaksAtInlet.size(), 1U);
    EXPECT_EQ(sketch.leaksAtInlet[0].lines.back(), "4.9 × 10⁻⁸ mbar·l/s");
}

} // namespace
} // namespace sealwalk::report
