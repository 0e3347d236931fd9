// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/earlier_jobs.h"

namespace sealwalk::transfer {

std::optional<model::Job> jobBefore(const storage::HistoryStore& store, const model::Job& job)
{
    const auto rows = store.jobsOf(job.object);
    if (!rows)
        return std::nullopt;
    const storage::JobRow* last = nullptr;
    for (const storage::JobRow& row : *rows)
        if (row.id != job.id && row.opened < job.opened && (last == nullptr || last->opened < row.opened))
            last = &row;
    if (last == nullptr)
        return std::nullopt;
    auto loaded = store.job(last->id);
    return loaded ? std::optional(std::move(*loaded)) : std::nullopt;
}

std::vector<storage::OpenRepair> repairsLeftOpen(const storage::HistoryStore& store, const model::Job& job)
{
    std::vector<storage::OpenRepair> left;
    if (const auto open = store.openTemporaryRepairs(job.object))
        for (const storage::OpenRepair& one : *open)
            if (one.job != job.id && one.repair.at < job.opened)
                left.push_back(one);
    return left;
}

std::vector<model::Repair> carriedRepairs(const storage::HistoryStore& store, const model::Job& job)
{
    std::vector<model::Repair> carried;
    for (storage::OpenRepair& one : repairsLeftOpen(store, job))
        carried.push_back(std::move(one.repair));
    return carried;
}

} // namespace sealwalk::transfer
