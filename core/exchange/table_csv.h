// SPDX-License-Identifier: GPL-3.0-or-later
// A table as CSV (RFC 4180): comma, CRLF, UTF-8, numbers with a decimal point in every country.
#pragma once

#include "core/exchange/table.h"

#include <string>

namespace sealwalk::exchange {

/// Text that no spreadsheet takes for a formula: an apostrophe goes in front of = + - @, tab and carriage
/// return.
std::string neverFormula(std::string text);

/// One heading line, then the rows; notes and highlights stay out. Text is never a formula
/// (neverFormula); numbers are never touched.
Result<std::string> csvOf(const Table& table);

} // namespace sealwalk::exchange
