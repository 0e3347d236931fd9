// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/earlier_jobs.h"

#include "core/analysis/approval.h"

#include <algorithm>
#include <utility>

namespace sealwalk::transfer {

namespace {

/// By what had been done at an earlier moment, gone through job by job, the oldest first.
std::vector<storage::OpenRepair> leftOpenAt(const storage::HistoryStore& store, const model::Job& of,
                                            const Timestamp& at)
{
    std::vector<model::Job> jobs;
    if (const auto rows = store.jobsOf(of.object))
        for (const storage::JobRow& row : *rows)
            if (auto job = store.job(row.id))
                jobs.push_back(std::move(*job));
    std::sort(jobs.begin(), jobs.end(),
              [](const model::Job& a, const model::Job& b) { return a.opened < b.opened; });
    const auto isMadeGood = [&](const model::Repair& repair) {
        bool isKnown = false;
        for (const model::Job& job : jobs)
            for (const model::Repair& later : job.repairs) {
                const bool makesGood = later.id == repair.madeGoodBy ||
                                       std::find(later.makesGood.begin(), later.makesGood.end(), repair.id) !=
                                           later.makesGood.end();
                if (makesGood && later.at <= at)
                    return true;
                isKnown = isKnown || later.id == repair.madeGoodBy;
            }
        return repair.madeGoodBy && !isKnown;
    };
    std::vector<storage::OpenRepair> left;
    for (const model::Job& job : jobs)
        for (const model::Repair& repair : job.repairs)
            if (job.id != of.id && repair.at < of.opened && !repair.permanent && !isMadeGood(repair))
                left.push_back({job.id, job.number, repair});
    return left;
}

} // namespace

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
    if (const auto approved = analysis::approvalOf(job))
        return leftOpenAt(store, job, *approved);
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
