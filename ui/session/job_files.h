// SPDX-License-Identifier: GPL-3.0-or-later
// Job files in and out of the open history.
#pragma once

#include "core/base/result.h"
#include "core/model/ids.h"

#include <filesystem>
#include <string>
#include <vector>

namespace sealwalk::ui {

class JobSession;

struct TakenIn
{
    model::JobId job;
    bool isSigned = false;          ///< by at least one signature that holds
    bool wasHere = false;           ///< the same job was in the history already; nothing was added
    std::vector<std::string> notes; ///< what a person should know, one sentence each
};

/// Checks a job file and takes it into the open history. Refused: anything changed since it was signed, a
/// signature of another key than the person's here, another state of a job that is here already.
Result<TakenIn> takeJobFile(JobSession& session, const std::filesystem::path& file);

/// Writes the open job, whole, with its pictures.
Status writeJobFile(const JobSession& session, const std::filesystem::path& file);

} // namespace sealwalk::ui
