// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/history.h"

#include "core/transfer/judged_object.h"

namespace sealwalk::cli {

Result<storage::HistoryStore> openHistory(const Console& console, storage::HistoryStore::Mode mode)
{
    const std::filesystem::path file =
        console.history.empty() ? storage::defaultHistoryFile() : std::filesystem::path(console.history);
    return storage::HistoryStore::open(file, mode);
}

Result<exchange::JobRecord> loadJob(const storage::HistoryStore& store, const std::string& numberOrUuid)
{
    return store.findJob(numberOrUuid).and_then([&](model::JobId id) {
        return transfer::loadJudged(store, id);
    });
}

} // namespace sealwalk::cli
