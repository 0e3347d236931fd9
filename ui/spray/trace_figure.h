// SPDX-License-Identifier: GPL-3.0-or-later
// The live trace as a plot: the last minute in decades, sprays shaded and numbered, the highest flagged, the
// limit as the detector would show it.
#pragma once

#include "core/report/figure.h"
#include "core/report/shown_unit.h"
#include "ui/spray/spray_feed.h"

#include <optional>

namespace sealwalk::ui {

inline constexpr double kTraceSpan = 60.0; ///< s

/// @param limit  of the called point, as the detector would show it
report::Figure traceFigure(const SprayFeed& feed, const report::ShownUnit& unit,
                           std::optional<LeakRate> limit);

/// The limit of the called point turned back into what the display would show above a background; none when
/// there is no limit, or no check that says how the one follows from the other.
std::optional<LeakRate> limitAsShown(const model::Job& job, model::PointId point,
                                     std::optional<LeakRate> background);

} // namespace sealwalk::ui
