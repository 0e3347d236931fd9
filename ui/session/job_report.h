// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the report of a job needs, gathered from the history.
#pragma once

#include "core/base/result.h"
#include "core/model/ids.h"
#include "core/model/picture.h"
#include "core/report/report_content.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace sealwalk::ui {

struct PreparedReport
{
    report::ReportContent content;
    std::vector<model::Picture> pictures;
};

/// Reads, checks and works out; opens the history for itself, so that it may run in any thread.
Result<std::shared_ptr<const PreparedReport>> prepareReport(const std::filesystem::path& history,
                                                            model::JobId job);

} // namespace sealwalk::ui
