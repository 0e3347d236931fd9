// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the report of a job needs, gathered from the history: the same for the window and the command
// line.
#pragma once

#include "core/exchange/job_json.h"
#include "core/model/picture.h"
#include "core/report/report_builder.h"
#include "core/storage/history_store.h"

#include <vector>

namespace sealwalk::transfer {

struct ReportFacts
{
    exchange::JobRecord record;    ///< of a signed job with the object as it was signed
    report::ReportOptions options; ///< last job, carried repairs, digest, signatures and problems filled in
    std::vector<model::Picture> pictures;
};

/// Reads the job and checks its signatures; `now` tells what is overdue.
Result<ReportFacts> reportFacts(const storage::HistoryStore& store, model::JobId job, const Timestamp& now);

} // namespace sealwalk::transfer
