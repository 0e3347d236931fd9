// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/history.h"

#include "core/transfer/hand_out.h"

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
        return transfer::loadRecord(store, id);
    });
}

std::vector<model::Repair> carriedRepairs(const storage::HistoryStore& store, const model::Job& job)
{
    std::vector<model::Repair> carried;
    if (const auto open = store.openTemporaryRepairs(job.object))
        for (const storage::OpenRepair& one : *open)
            if (one.job != job.id && one.repair.at < job.opened)
                carried.push_back(one.repair);
    return carried;
}

} // namespace sealwalk::cli
