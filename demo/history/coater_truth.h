// SPDX-License-Identifier: GPL-3.0-or-later
// What is really wrong with the invented coater in each year. Nobody in the demo knows it: the technician
// sees what the detector shows, and the findings are worked out from that.
#pragma once

#include "core/model/reading.h"
#include "core/model/sketch.h"

#include <vector>

namespace sealwalk::demo {

struct TrueLeak
{
    model::PointId nearest; ///< the point on whose stretch it lies
    geometry::Point place;
    model::SheetId sheet;
    double rate = 0.0; ///< helium at 1 bar outside, mbar·l/s
    bool onlyFlexed = false;
    double permeates = 0.0; ///< thickness of the elastomer, mm; 0: an open leak
};

std::vector<TrueLeak> leaksOf2025(const model::Sketch& sketch);
/// After the repairs of 2025: the port seal is new, the weld has its sealant.
std::vector<TrueLeak> leaksAfterRepair(const model::Sketch& sketch);
std::vector<TrueLeak> leaksOf2026(const model::Sketch& sketch);

/// What the leaks that are open at rest let in as air, all together, mbar·l/s.
double airThrough(const std::vector<TrueLeak>& leaks);

} // namespace sealwalk::demo
