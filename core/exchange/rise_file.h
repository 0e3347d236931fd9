// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a pressure-rise record (CSV): a header line "time_s,pressure_mbar", an optional column
// "temperature_degC", lines of numbers. Comma or semicolon separates, with semicolons the decimal comma is
// allowed; lines starting with # are comments; CRLF and a byte-order mark are fine.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/base/result.h"
#include "core/quantities/units.h"

#include <optional>
#include <string>
#include <string_view>

namespace sealwalk::exchange {

/// Of numbers without a header line.
struct RiseUnits
{
    Unit time;
    Unit pressure;
};

/// Reads a record from text. Columns are known by their names; the part after the first "_" is any unit of
/// time, pressure or temperature. Errors: BadInput, naming the line, counted from 1.
/// @param bare  units of time and pressure where there is no header line; blanks may part the two numbers of
/// a
///              line then. Without it a header line is asked for.
Result<analysis::RiseRecord> parseRise(std::string_view text,
                                       const std::optional<RiseUnits>& bare = std::nullopt);

/// Whether the text begins with a number: then there is no header line.
bool isBareRise(std::string_view text);

/// Reads a file. Errors as parseRise, with the file named in front; NotFound, MachineFailed.
Result<analysis::RiseRecord> readRiseFile(const std::string& path);

} // namespace sealwalk::exchange
