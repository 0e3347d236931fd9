// SPDX-License-Identifier: GPL-3.0-or-later
// Point numbers as people write them: "6-8, 12 14"; and where a point lies, in few words.
#pragma once

#include "core/base/result.h"
#include "core/model/sketch.h"

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::model {

/// The points meant by numbers and ranges parted by commas or blanks, each once, in the order written. Within
/// a range numbers that the sketch does not have, or has retired, are passed over; one named by itself is
/// refused. Nothing written: no points. Errors: BadInput.
Result<std::vector<PointId>> readPointNumbers(const Sketch& sketch, std::string_view text);

/// Numbers of points as people say them: "3, 7". Points the sketch does not have are passed over.
std::string numbersOf(const Sketch& sketch, const std::vector<PointId>& points);

/// placeText() without the side the sheet is seen from: for narrow rows beside the picture, which says it.
std::string placeOnSheet(const Sketch& sketch, const TestPoint& point);

} // namespace sealwalk::model
