// SPDX-License-Identifier: GPL-3.0-or-later
// The measurements around the walk: set-up, calibration, background, pressure rise.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"
#include "demo/history/chance.h"
#include "demo/history/detector.h"

#include <string>

namespace sealwalk::demo {

inline constexpr const char* kTester = "Tester A";
inline constexpr const char* kReviewer = "Reviewer B";

/// A moment of the demo; `text` is ISO 8601 without seconds' fraction.
Timestamp on(const char* text);
Timestamp later(const Timestamp& at, double seconds);

model::Setup coaterSetup(const model::TestObject& object);

/// The reference leak of the workshop with its certificate of that year.
model::ReferenceLeak referenceLeak(const char* certificate, const char* date, double rate);

/// What the detector shows with the reference leak open at the far port.
model::Calibration systemCheck(const model::Sketch& sketch, const model::ReferenceLeak& leak,
                               model::CalibrationMoment moment, const Timestamp& at, Detector& detector,
                               Chance& chance);

/// A minute and a half of background.
model::BackgroundWatch watch(const Timestamp& at, Detector& detector, Chance& chance);

struct Rise
{
    double air = 0.0;        ///< mbar·l/s that come in
    double outgassing = 0.0; ///< mbar that come off the walls in the end
    double settles = 240.0;  ///< s
};

/// Half an hour with the pumps valved off: the pressure p0 + Q/V·t + B·(1 - exp(-t/settles)) and the gauge's
/// noise.
model::RiseTest riseTest(const model::TestObject& object, const Rise& rise, model::TestMoment moment,
                         const Timestamp& at, Chance& chance);

} // namespace sealwalk::demo
