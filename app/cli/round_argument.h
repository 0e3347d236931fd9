// SPDX-License-Identifier: GPL-3.0-or-later
// The round a command is told of, and times for people.
#pragma once

#include "core/base/result.h"
#include "core/model/job.h"

#include <string>

namespace sealwalk::cli {

/// A round by number ("1") or UUID; empty: the latest. NotFound when the job has none.
Result<const model::Round*> findRound(const model::Job& job, const std::string& round);

/// "2026-03-17 14:05" of the clock on the wall then.
std::string shortTime(const Timestamp& at);

} // namespace sealwalk::cli
