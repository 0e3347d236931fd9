// SPDX-License-Identifier: GPL-3.0-or-later
// What Compare works out away from the window: findings of both jobs first, then of every job on the course.
#pragma once

#include "core/analysis/comparison.h"
#include "core/base/result.h"
#include "core/model/job.h"
#include "core/model/test_object.h"
#include "core/report/course_figure.h"

#include <filesystem>
#include <memory>
#include <stop_token>
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
};

/// As found, and as left where it was repaired; oldest first.
using Course = std::vector<report::CourseStop>;

/// Reads and works out, the two jobs side by side; opens the history for itself, so that it may run in any
/// thread.
Result<std::shared_ptr<const ComparedJobs>> workOutComparison(const std::filesystem::path& history,
                                                              model::JobId before, model::JobId after);

/// The course of the two alone, before the other jobs of the object are worked out.
Course courseOf(const ComparedJobs& compared);

/// The course over the object's newest jobs, those compared among them. Ends early, with what it has, when
/// `stop` asks for it.
Result<Course> workOutCourse(const std::filesystem::path& history, const ComparedJobs& compared,
                             const std::stop_token& stop = {});

} // namespace sealwalk::ui
