// SPDX-License-Identifier: GPL-3.0-or-later
// The single tables of a job and what their rows share. Inner header of job_tables.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/exchange/job_tables.h"
#include "core/model/point_numbers.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::exchange::detail {

TableCell rateCell(const std::optional<LeakRate>& rate, LeakRateUnit unit);
std::string joined(const std::vector<std::string>& words, const char* between);
/// What a point is, in four cells that every row shares: number, joint, kind, place.
void addPlace(TableRow& row, const model::Sketch& sketch, model::PointId id);
/// Two cells: the time by the clock on the wall, and how far that clock is from UTC.
void addMoment(TableRow& row, const std::optional<Timestamp>& at);
/// The lines above a table: object, job, limit.
std::vector<std::string> headNotes(const JobRecord& record, LeakRateUnit unit);

Table repairsTable(const JobRecord& record, const std::vector<analysis::PointFinding>& left,
                   LeakRateUnit unit);
Table verdictsTable(const JobRecord& record, const std::vector<std::vector<analysis::PointFinding>>& byRound,
                    LeakRateUnit unit);
Table concessionsTable(const JobRecord& record, LeakRateUnit unit);
Table voidsTable(const JobRecord& record, LeakRateUnit unit);
Table untestedTable(const JobRecord& record, const std::vector<analysis::PointFinding>& left,
                    LeakRateUnit unit);

} // namespace sealwalk::exchange::detail
