// SPDX-License-Identifier: GPL-3.0-or-later
// One value from a unit into another, with what had to be assumed for it.
#pragma once

#include "core/quantities/leak_rate_unit.h"

#include <string>
#include <vector>

namespace sealwalk {

struct Conversion
{
    double number = 0.0;
    std::vector<std::string> assumptions; ///< sentences; empty: the conversion is exact
};

/// `number` of `from` in `to`. Refuses units of different kinds, naming both, numbers that are not finite,
/// pressures below vacuum and temperatures below 0 K. `gasName` is used in the assumptions only.
Result<Conversion> convert(double number, const Unit& from, const Unit& to, const FlowBasis& basis = {},
                           std::string_view gasName = {});

} // namespace sealwalk
