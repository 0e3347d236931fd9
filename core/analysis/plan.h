// SPDX-License-Identifier: GPL-3.0-or-later
// The order to spray the points of a survey in, with dwell, wait, time and helium.
#pragma once

#include "core/analysis/survey.h"

#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

struct PlannedSpray
{
    int point = 0;
    Duration dwell; ///< helium on
    Duration wait;  ///< helium off, until the next
    std::string because;
    bool operator==(const PlannedSpray&) const = default;
};

struct Plan
{
    std::vector<PlannedSpray> order; ///< every point once
    Duration total;                  ///< dwells and waits; walking and writing come on top
    Volume helium;                   ///< at room pressure and temperature
    bool operator==(const Plan&) const = default;
};

struct PlanOptions
{
    /// Helium while the spray is on, at room pressure: one 5 mm bubble a second, the usual setting for
    /// pinpointing (common practice, no source).
    PumpingSpeed flow = litresPerSecond(0.004 / 60.0);
};

/// Plans a walk: set-up connections first, then view by view from the top down, each point away from the one
/// just sprayed where the height leaves a choice. Dwell: three responses, at least 3 s (95 % of the signal).
/// Wait: until 1 % is left, 4.6 responses; longer when the next point is within the cloud of the last.
/// Sources: helium rises, so a lower spray feeds higher points already done and not those to come (common
/// practice); exponential response.
Plan planWalk(const Survey& survey, const PlanOptions& options = {});

/// The same figures for an order that a person chose; a reason stands only where the order costs something.
/// Numbers that are not in the survey fall out.
Plan planInOrder(const Survey& survey, std::span<const int> order, const PlanOptions& options = {});

} // namespace sealwalk::analysis
