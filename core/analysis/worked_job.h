// SPDX-License-Identifier: GPL-3.0-or-later
// A job with its findings worked out, as comparisons over the years take it.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"

#include <memory>
#include <optional>
#include <vector>

namespace sealwalk::analysis {

struct WorkedJob
{
    model::Job job;
    std::vector<PointFinding> asFound;
    std::vector<PointFinding> asLeft;
    std::optional<LeakRate> detectable; ///< what could be seen in the whole job
    std::optional<LeakRate> detectableAtWorst; ///< the same at the least sensitive moment of its points

    [[nodiscard]] const std::vector<PointFinding>& findings(bool left) const
    {
        return left ? asLeft : asFound;
    }
};

/// Jobs of one object, the oldest first.
using WorkedJobs = std::vector<std::shared_ptr<const WorkedJob>>;

} // namespace sealwalk::analysis
