// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a leak a reading sees: helium's share at the leak while the probe is moved over the stretch,
// and how far the detector follows in that time.
#pragma once

#include "core/analysis/spread.h"
#include "core/analysis/survey_scene.h"

#include <vector>

namespace sealwalk::analysis {

/// The rate a leak of 1 at `leak` shows in `reading`, freed of exposure: 1 when the probe rests on the leak
/// for the whole dwell. 0 across views.
double visibleShare(const Scene& scene, const Spread& spread, const Place& leak, std::size_t view,
                    const SceneReading& reading);

/// visibleShare for every reading. Readings taken in another condition than the leak's see nothing of it,
/// unless the leak is there in the usual condition, which stays open in the others.
std::vector<double> visibleShares(const Scene& scene, const Spread& spread, const Place& leak,
                                  std::size_t view, std::size_t condition);

} // namespace sealwalk::analysis
