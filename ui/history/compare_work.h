// SPDX-License-Identifier: GPL-3.0-or-later
// What Compare works out away from the window: findings of both jobs, and of every job on the course.
#pragma once

#include "core/analysis/comparison.h"
#include "core/base/result.h"
#include "core/model/job.h"
#include "core/model/test_object.h"
#include "core/report/course_figure.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace sealwalk::ui {

struct ComparedJob
{
    model::Job job;
    std::vector<analysis::PointFinding> asFound;
    std::vector<analysis::PointFinding> asLeft;
    std::optional<LeakRate> detectable;

    [[nodiscard]] const std::vector<analysis::PointFinding>& findings(bool left) const
    {
        return left ? asLeft : asFound;
    }
};

struct ComparedJobs
{
    model::TestObject object;
    ComparedJob before;
    ComparedJob after;
    std::vector<report::CourseStop> course; ///< as found, and as left where it was repaired; oldest first
};

/// Reads and works out; opens the history for itself, so that it may run in any thread.
Result<std::shared_ptr<const ComparedJobs>> workOutComparison(const std::filesystem::path& history,
                                                              model::JobId before, model::JobId after);

} // namespace sealwalk::ui
