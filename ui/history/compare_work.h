// SPDX-License-Identifier: GPL-3.0-or-later
// What Compare works out away from the window: findings of both jobs first, then of every job on the course.
#pragma once

#include "core/analysis/comparison.h"
#include "core/analysis/object_totals.h"
#include "core/base/result.h"
#include "core/model/test_object.h"

#include <filesystem>
#include <memory>
#include <stop_token>
#include <vector>

namespace sealwalk::ui {

using ComparedJob = analysis::WorkedJob;

struct ComparedJobs
{
    model::TestObject object;
    ComparedJob before;
    ComparedJob after;
};

/// The object's jobs, the oldest first, and what they add up to.
struct ComparedYears
{
    analysis::WorkedJobs jobs;
    std::vector<analysis::ObjectTotal> totals;
    std::size_t leftOut = 0; ///< older jobs of the object that are not among them
};

/// Reads and works out, the two jobs side by side; opens the history for itself, so that it may run in any
/// thread.
Result<std::shared_ptr<const ComparedJobs>> workOutComparison(const std::filesystem::path& history,
                                                              model::JobId before, model::JobId after);

/// The two alone, before the other jobs of the object are worked out; without totals.
ComparedYears yearsOf(const std::shared_ptr<const ComparedJobs>& compared);

/// The object's newest jobs, with those compared and those in `asked` among them. Ends early, with what it
/// has, when `stop` asks for it.
Result<ComparedYears> workOutYears(const std::filesystem::path& history,
                                   const std::shared_ptr<const ComparedJobs>& compared,
                                   const std::vector<model::JobId>& asked = {},
                                   const std::stop_token& stop = {});

} // namespace sealwalk::ui
