// SPDX-License-Identifier: GPL-3.0-or-later
// The two tables of a job that leave the program: what was found, and every reading as recorded.
#pragma once

#include "core/exchange/job_json.h"
#include "core/exchange/table.h"
#include "core/quantities/leak_rate_unit.h"

namespace sealwalk::exchange {

/// One row per point and round: finding, verdict, rates on the chamber with their 95 % range, or the bound.
/// Rates in `unit`; refused when that is a mass unit (the gas would have to be named).
Result<Table> findingsTable(const JobRecord& record, LeakRateUnit unit);

/// One row per reading in order of storing, corrected and void ones included, with why they fell. Rates as
/// the detector showed them, in `unit`.
Result<Table> readingsTable(const JobRecord& record, LeakRateUnit unit);

} // namespace sealwalk::exchange
