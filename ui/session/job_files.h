// SPDX-License-Identifier: GPL-3.0-or-later
// Job files in and out of a history.
#pragma once

#include "core/base/result.h"
#include "core/model/ids.h"
#include "core/transfer/take_in.h"

#include <filesystem>
#include <stop_token>

namespace sealwalk::ui {

class JobSession;

/// Reads a job file and checks it, signatures and all; touches no session, so it may run beside the window.
Result<transfer::Checked> readJobFile(const std::filesystem::path& file);

/// Takes what was read from `file` into the open history. Refused: anything changed since it was signed, a
/// signature of another key than the person's here, a job that went on both here and elsewhere. What is
/// answered has no problems.
Result<transfer::TakenIn> takeIn(JobSession& session, const std::filesystem::path& file,
                                 transfer::Checked checked);

/// Writes a job of a history, whole, with its pictures; may run beside the window. Stopped, it writes
/// nothing.
Status writeJobFile(const std::filesystem::path& history, model::JobId job, const std::filesystem::path& file,
                    const std::stop_token& stop = {});

} // namespace sealwalk::ui
