// SPDX-License-Identifier: GPL-3.0-or-later
// Small jobs for tests, built in a line or two.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

#include <string>
#include <vector>

namespace sealwalk::tests {

/// Adds a sheet to the sketch and answers its id.
model::SheetId addSheet(model::Sketch& sketch, const std::string& name = "Door");

/// Adds a joint with `points` points evenly along it, numbered on from the sketch's last number.
model::JointId addJoint(model::Sketch& sketch, model::SheetId sheet, model::JointKind kind,
                        const std::string& name, const geometry::Shape& shape, int points);

/// An open job on one sheet: a ring seal "Port" of `points` points and one round "as found" over all of them.
model::Job ringJob(int points);

/// The id of the point with this number; the test ends when there is none.
model::PointId pointNumbered(const model::Job& job, int number);

/// Adds a standing value (mbar·l/s as shown) to the first round and answers its id.
model::ReadingId addValue(model::Job& job, int point, double peak, double background = 1e-10,
                          model::Condition condition = model::Condition::AtRest);

/// A system check before the first reading: `factor` on the chamber for each 1 on the display, and a quiet
/// background watch of noise 2e-11 mbar·l/s around 1e-10.
void calibrate(model::Job& job, double factor = 1.0);
model::Calibration systemCheck(const Timestamp& at, double factor);
model::BackgroundWatch quietWatch(const Timestamp& at);

} // namespace sealwalk::tests
