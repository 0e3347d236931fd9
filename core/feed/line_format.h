// SPDX-License-Identifier: GPL-3.0-or-later
// How a line of a detector's feed is read, as the user said once: where the value stands, and what it means.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>

namespace sealwalk::feed {

enum class Separator
{
    Blank, ///< any run of blanks and tabs
    Comma, ///< decimals are then written with a point
    Semicolon,
    Tab,
};

enum class Meaning
{
    Rate,        ///< the number is the leak rate, in `unit`
    LinearVolts, ///< rate = volts · factor + offset, in `unit`
    DecadeVolts, ///< rate = 10 ^ (volts · decadesPerVolt + exponentAtZero), in `unit`
};

struct LineFormat
{
    bool byPattern = false; ///< `pattern` finds the value; otherwise `column`
    Separator separator = Separator::Blank;
    int column = 1;                ///< of the value, the first is 1
    std::string pattern;           ///< see line_pattern.h
    std::optional<int> timeColumn; ///< of a recorded file: seconds, or ISO 8601 with offset
    Meaning meaning = Meaning::Rate;
    std::string unit = "mbar l/s"; ///< of leak rate
    double factor = 1.0;           ///< `unit` per volt
    double offset = 0.0;           ///< `unit` at 0 V
    double decadesPerVolt = 1.0;
    double exponentAtZero = -12.0; ///< the decade at 0 V
    bool operator==(const LineFormat&) const = default;
};

inline constexpr int kMostColumns = 64;

/// One sentence about the first thing that cannot be right.
Status checkFormat(const LineFormat& format);

} // namespace sealwalk::feed
