// SPDX-License-Identifier: GPL-3.0-or-later
// The course of a joint and of the whole object over the jobs: as found and as left.
#pragma once

#include "core/analysis/joint_history.h"
#include "core/analysis/object_totals.h"
#include "core/report/course_figure.h"

#include <string_view>

namespace sealwalk::report {

/// A joint in one job and standing.
struct JointStop
{
    int job = 0; ///< its number
    Timestamp at;
    bool asLeft = false;
    analysis::LeakSum leaks;
};

/// The joint in every job; as left where one of its points was repaired or tested again.
std::vector<JointStop> jointStops(const analysis::WorkedJobs& jobs, const model::TestObject& object,
                                  const analysis::JointHistory& joint);

/// The sum in the gas shown; none where no leak was located.
std::optional<analysis::LeakSum::Sum> shownSum(const analysis::LeakSum& leaks, const ShownUnit& unit);

/// Why there is no figure of leaks together: "not sized", "in another condition only" …; "no leak where
/// tested" where none was located and not every point has its bound; "no leak located" of the states with a
/// figure.
std::string_view sumWord(analysis::SumState state);

/// Its worst point and the sum of its points. A sum where points were not tested is marked "at least"; where
/// nothing was tested there is a gap, where nothing leaked the hollow sum of what could have hidden, and
/// below any other state without a figure the word that says why.
Figure jointCourse(const analysis::WorkedJobs& jobs, const std::vector<JointStop>& stops,
                   std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit);

/// All leaks together and the pressure rise, both as air, against the limit of the total; gaps, hollow marks
/// and words as in the course of a joint. A rise that is only bounded is hollow.
Figure totalCourse(const analysis::WorkedJobs& jobs, const std::vector<analysis::ObjectTotal>& totals,
                   std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit);

} // namespace sealwalk::report
