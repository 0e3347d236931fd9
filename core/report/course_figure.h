// SPDX-License-Identifier: GPL-3.0-or-later
// The course of points over the jobs of an object: decades over years.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/analysis/worked_job.h"
#include "core/base/timestamp.h"
#include "core/model/test_object.h"
#include "core/report/figure.h"
#include "core/report/shown_unit.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace sealwalk::report {

/// One state on the way: a job as found, or as left.
struct CourseStop
{
    int number = 0;
    Timestamp at;
    std::vector<analysis::PointFinding> findings;
    std::optional<LeakRate> detectable; ///< what could be seen in that job
    bool asLeft = false;                ///< `findings` are of points that were repaired or tested again alone
};

/// As found, and as left where something was repaired; in order of time. A point that was not tested again
/// has no state as left: its next answer is the next job's, at that job's date.
std::vector<CourseStop> courseStops(const analysis::WorkedJobs& jobs);

struct CoursePoint
{
    model::PointId point;
    std::string name;                     ///< "17 door seal"
    std::set<model::PointId> places = {}; ///< the same place in other drawings
};

/// Axes, jobs, what could be seen in each, and the limit; no series yet. The values are those of the object's
/// scale. Nothing where there is no stop.
Figure courseFrame(const std::vector<CourseStop>& stops, std::optional<LeakRate> limit,
                   const model::DecadeScale& scale, const ShownUnit& unit);
/// Where a moment stands on the axis of a course.
double courseDay(const Timestamp& at);
/// Adds a word at a place, and the room that it needs at the right edge.
void addFlag(Figure& figure, Flag flag);

/// Up to five points, by identity. A bound is drawn hollow; a job without an answer for a point leaves a gap.
/// A leak beyond the detector's range stands at the least it is, one that could not be sized is a word below.
/// Below what could be seen in each job the plot is hatched; `limit` is toothed.
Figure courseFigure(const std::vector<CourseStop>& stops, const std::vector<CoursePoint>& points,
                    std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit);

} // namespace sealwalk::report
