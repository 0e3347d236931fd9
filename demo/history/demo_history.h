// SPDX-License-Identifier: GPL-3.0-or-later
// The demo history: one invented box coater, a signed job of last year and the one in progress. Written by
// the program's own code; the readings come from a small simulation of helium and detector, never from
// findings.
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <stop_token>
#include <string_view>

namespace sealwalk::demo {

/// The two invented people of the demo sign with this passphrase. It protects nothing.
inline constexpr std::string_view kDemoPassphrase = "demo passphrase";

/// Writes the demo history to a new file. Refused when `file` exists; nothing is left behind on failure.
Status writeDemoHistory(const std::filesystem::path& file, const std::stop_token& stop = {});

} // namespace sealwalk::demo
