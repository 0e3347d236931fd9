// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as an XLSX workbook, one sheet each: a real table with filter buttons, numbers as numbers, and fills
// that follow the words in the cells.
#pragma once

#include "core/base/timestamp.h"
#include "core/exchange/table.h"

#include <string>
#include <vector>

namespace sealwalk::exchange {

/// The workbook's bytes. `created` goes into its properties, so that the same tables give the same bytes.
/// Refused: tables that checkTable() refuses, two of one title, more than 1 048 000 rows, text over 32 767
/// characters. MachineFailed when the temporary folder is full.
Result<std::string> xlsxOf(const std::vector<Table>& tables, const Timestamp& created);

} // namespace sealwalk::exchange
