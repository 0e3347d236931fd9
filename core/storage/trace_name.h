// SPDX-License-Identifier: GPL-3.0-or-later
// What a trace is called. A signature covers the name only, so the name tells what the trace holds.
#pragma once

#include "core/storage/history_store.h"

#include <string>
#include <string_view>

namespace sealwalk::storage {

/// `name`, then "sha256:" and the SHA-256 of the times and values as they are stored, hexadecimal.
std::string tellingName(std::string_view name, const Trace& trace);

/// Whether a name tells what its trace holds; traces of early histories have names that do not.
bool isTelling(std::string_view name);

/// Whether `trace` holds what its telling name says.
bool holdsWhatItSays(const NamedTrace& trace);

} // namespace sealwalk::storage
