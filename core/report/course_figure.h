// SPDX-License-Identifier: GPL-3.0-or-later
// The course of points over the jobs of an object: decades over years.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/base/timestamp.h"
#include "core/model/test_object.h"
#include "core/report/figure.h"
#include "core/report/shown_unit.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sealwalk::report {

/// One state on the way: a job, or a job as found and then as left.
struct CourseStop
{
    int number = 0;
    Timestamp at;
    std::vector<analysis::PointFinding> findings;
    std::optional<LeakRate> detectable; ///< what could be seen in that job
};

struct CoursePoint
{
    model::PointId point;
    std::string name; ///< "17 door seal"
};

/// Up to five points, by identity. A bound is drawn hollow; a job without an answer for a point leaves a gap.
/// Below what could be seen in each job the plot is hatched; `limit` is toothed.
Figure courseFigure(const std::vector<CourseStop>& stops, const std::vector<CoursePoint>& points,
                    std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit);

} // namespace sealwalk::report
