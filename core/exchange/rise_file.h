// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a pressure-rise record (CSV): a header line "time_s,pressure_mbar", an optional column
// "temperature_degC", lines of numbers. Comma or semicolon separates, with semicolons the decimal comma is
// allowed; lines starting with # are comments; CRLF and a byte-order mark are fine.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/base/result.h"

#include <string>
#include <string_view>

namespace sealwalk::exchange {

/// Reads a record from text. Columns are known by their names; the part after the first "_" is any unit of
/// time, pressure or temperature. Errors: BadInput, naming the line, counted from 1.
Result<analysis::RiseRecord> parseRise(std::string_view text);

/// Reads a file. Errors as parseRise, with the file named in front; NotFound, MachineFailed.
Result<analysis::RiseRecord> readRiseFile(const std::string& path);

} // namespace sealwalk::exchange
