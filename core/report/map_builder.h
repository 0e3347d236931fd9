// SPDX-License-Identifier: GPL-3.0-or-later
// From the record of a job and its findings to the map of one sheet.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"
#include "core/report/map_content.h"

#include <span>
#include <vector>

namespace sealwalk::report {

struct MapOptions
{
    bool echoesTakenOut = false; ///< false: as read
    bool judged = true;          ///< false while spraying: what answered is shown as answered
    std::optional<LeakRate> smallestDetectable;
    std::vector<model::Repair> carried; ///< temporary repairs of earlier jobs, not made good yet
    Timestamp now;                      ///< tells overdue temporary repairs; unset: none is overdue
    double shownPerSi = 10.0;
    std::string unit = "mbar·l/s";
    ShownGas gas;
    std::string spokenUnit = "millibar litre per second";
};

/// The map of a sheet. Points without a finding are drawn as not sprayed; an unknown sheet gives an empty
/// map.
MapContent mapOf(const model::Job& job, const model::TestObject& object, model::SheetId sheet,
                 std::span<const analysis::PointFinding> findings, const MapOptions& options = {});

/// The same without readings: every point not sprayed.
MapContent mapOf(const model::Sketch& sketch, model::SheetId sheet, const MapScale& scale = {});

/// The state a finding is drawn in.
PointState stateOf(const analysis::PointFinding& finding, const MapOptions& options = {});

} // namespace sealwalk::report
