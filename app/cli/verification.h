// SPDX-License-Identifier: GPL-3.0-or-later
// The answer that pack, unpack and verify share.
#pragma once

#include "app/cli/command.h"
#include "core/exchange/job_signing.h"

#include <string>
#include <vector>

namespace sealwalk::cli {

/// "1 reading", "2 readings".
std::string counted(std::size_t number, const char* thing);

/// Prints `done` with what was found; {"ok", "signatures", "problems"} with --json. Answers No when not ok.
Verdict answerVerification(const Console& console, const exchange::Verification& result,
                           const std::string& done);

} // namespace sealwalk::cli
