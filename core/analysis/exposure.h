// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a leak a reading sees: helium's share at the leak while the probe is moved over the stretch,
// and how far the detector follows in that time.
#pragma once

#include "core/analysis/spread.h"
#include "core/analysis/survey_scene.h"

#include <vector>

namespace sealwalk::analysis {

/// Where a place lies as seen from the probe when that comes nearest to it: the same in every air.
struct Bearing
{
    double across = 0.0;  ///< m, to the side
    double above = 0.0;   ///< m; 0 on a plan, where helium has no way up to take
    bool isClose = false; ///< so near that it matters how the probe passes
    bool isSeen = true;   ///< false: only in a condition the reading was not taken in, or taped off then
    double most = 0.0;    ///< freakShare
};

/// Of a leak at `leak` on the stretch of `point`, from every reading of its view, in their order. Readings
/// taken in another condition than the leak's see nothing of it, unless the leak is there in the usual
/// condition, which stays open in the others; nor do those taken while the point was taped off.
std::vector<Bearing> bearings(const Scene& scene, std::size_t point, const Place& leak,
                              std::size_t condition);

/// The rate a leak of 1 at `leak` shows in `reading`, freed of exposure: 1 when the probe rests on the leak
/// for the whole dwell.
double visibleShare(const Scene& scene, const Spread& spread, const Place& leak, const Bearing& bearing,
                    const SceneReading& reading);

/// The largest share of helium that odd draughts and pockets may bring to a leak `across` m to the side of
/// and `above` m over the probe: the upper end of what the far-field laws allow.
double freakShare(double across, double above);

} // namespace sealwalk::analysis
