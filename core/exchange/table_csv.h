// SPDX-License-Identifier: GPL-3.0-or-later
// A table as CSV (RFC 4180): comma, CRLF, UTF-8, numbers with a decimal point in every country.
#pragma once

#include "core/exchange/table.h"

#include <string>

namespace sealwalk::exchange {

/// One heading line, then the rows; notes and highlights stay out. Text that a spreadsheet would run as a
/// formula (it starts with = + - @, tab or carriage return) gets an apostrophe in front; numbers are never
/// touched.
Result<std::string> csvOf(const Table& table);

} // namespace sealwalk::exchange
