// SPDX-License-Identifier: GPL-3.0-or-later
// A watched background as text: one value a line, or time and value; typed, pasted or from a file.
#pragma once

#include "core/base/result.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <optional>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

struct BackgroundSeries
{
    std::vector<double> times; ///< s, from 0, increasing
    std::vector<LeakRate> values;
    std::optional<LeakRate> swing; ///< with a level instead of a series: up and down from it, above 0
};

struct BackgroundOptions
{
    Unit unit = unitOf(LeakRateUnit::MillibarLitrePerSecond); ///< of the values
    double interval = 1.0; ///< s between values when no times are given, above 0
    DecimalMark mark = DecimalMark::Point;
};

/// Each line holds a value, or seconds and a value separated by blank, tab, semicolon, or comma where the
/// decimal mark is a point. Lines that are empty, or start with #, or a first line without numbers, are
/// passed over. Errors (BadInput) name the line: not a number, times that do not increase, some lines with
/// and some without a time, fewer than five values.
/// One line alone may hold the level and its swing as seen: "1e-7 +- 2e-8", with "+/-" or "±" as well.
Result<BackgroundSeries> parseBackground(std::string_view text, const BackgroundOptions& options);

} // namespace sealwalk::exchange
