// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"

#include <cstdlib>

namespace sealwalk::storage {

std::filesystem::path defaultHistoryFile()
{
    const auto variable = [](const char* name) {
        const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): nothing here sets variables
        return std::filesystem::path(value == nullptr ? "" : value);
    };
    std::filesystem::path data = variable("XDG_DATA_HOME");
    if (data.empty() || data.is_relative())
        data = variable("HOME") / ".local" / "share";
    return data / "sealwalk" / "history.sealwalk";
}

} // namespace sealwalk::storage
