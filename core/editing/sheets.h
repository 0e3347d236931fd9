// SPDX-License-Identifier: GPL-3.0-or-later
// Changes to sheets.
#pragma once

#include "core/editing/edit.h"

namespace sealwalk::editing {

/// Adds a sheet; one without an identity is given one. Needs a name of its own and a size above 0 mm.
Result<Edit> addSheet(const model::Sketch& sketch, model::Sheet sheet);
/// Puts `sheet` in the place of the one with the same identity: name, side, size, up, underlay, line work.
Result<Edit> changeSheet(const model::Sketch& sketch, const model::Sheet& sheet);
/// Takes a sheet out with all that is on it. Refused when a point on it has readings.
Result<Edit> removeSheet(const model::Sketch& sketch, model::SheetId id, const PointSet& withReadings);

/// The underlay scaled so that two places on it, seen now at `a` and `b` on the sheet, come to lie `length`
/// mm apart, with `a` staying where it is. Refused when the places are closer than 2 mm or the length is not
/// above 0.
Result<model::Underlay> scaled(const model::Underlay& underlay, geometry::Point a, geometry::Point b,
                               double length);

} // namespace sealwalk::editing
