// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of a job that leave the program: what is left, what was found round by round, every reading, and
// what people did and decided.
#pragma once

#include "core/exchange/job_json.h"
#include "core/exchange/table.h"
#include "core/quantities/leak_rate_unit.h"

namespace sealwalk::exchange {

struct JobTables
{
    Table asLeft;   ///< one row per point: the latest answer, or that there is none
    Table findings; ///< one row per point and round
    Table readings; ///< one row per reading in order of storing, corrected and void ones included, with why
                    ///< they fell
    Table repairs;
    Table verdicts; ///< by people, each beside what was worked out
    Table concessions;
    Table voids;
    Table untested; ///< points left out, not accessible or not sprayed, each with its reason

    /// Every one, in the order of a workbook's sheets.
    [[nodiscard]] std::vector<Table> all() const
    {
        return {asLeft, findings, readings, repairs, verdicts, concessions, voids, untested};
    }
};

/// Findings carry rates on the chamber with their 95 % range, or the bound; readings what the detector
/// showed. All in `unit`; refused when that is a mass unit (the gas would have to be named).
Result<JobTables> jobTables(const JobRecord& record, LeakRateUnit unit);

} // namespace sealwalk::exchange
