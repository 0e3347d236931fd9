// SPDX-License-Identifier: GPL-3.0-or-later
// What became of each joint over the jobs of its object, and who touched it last.
#pragma once

#include "core/analysis/point_matching.h"
#include "core/analysis/worked_job.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Where to look first: what was last worked on, or loosened beside that.
struct Touch
{
    Timestamp at;
    int job = 0;            ///< its number
    std::string by;         ///< may be empty
    std::string what;       ///< the action of the repair
    bool disturbed = false; ///< only disturbed by it
    bool operator==(const Touch&) const = default;
};

struct JointHistory
{
    std::set<model::JointId> ids; ///< more than one where it was drawn anew
    std::string name;             ///< in the newest job that has it
    model::JointKind kind = model::JointKind::OringSeal;
    bool isDrawn = true; ///< in the newest job, with points that are sprayed
    int over =
        0; ///< jobs in which a point of it was over the limit of that job, as found; not another source's
    int tested = 0; ///< jobs in which a point of it had an answer, as found or as left
    std::optional<PointFinding>
        largest; ///< as found or as left; a bound only where it never leaked (outweighs())
    int largestJob = 0;
    Timestamp largestAt;
    int repairs = 0;
    std::optional<Touch> touched;
};

/// The last repair that named or disturbed one of these points; none when nobody touched them.
std::optional<Touch> lastTouch(const WorkedJobs& jobs, const std::set<model::PointId>& points);

/// `point` and all that a person said are one with it.
std::set<model::PointId> onePlace(model::PointId point, const KnownPairs& known);

/// Every joint that any of the jobs has, the worst first: by jobs over the limit, then by its largest leak.
/// A joint is the same by its identity; drawn anew, where a person said that one of its points is one of the
/// earlier joint's.
std::vector<JointHistory> jointHistories(const WorkedJobs& jobs, const KnownPairs& known = {});

/// Findings of the points on these joints.
std::vector<PointFinding> findingsOn(const std::set<model::JointId>& joints, const model::Sketch& sketch,
                                     const std::vector<PointFinding>& findings);

} // namespace sealwalk::analysis
