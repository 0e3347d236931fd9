// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_report.h"

#include "core/exchange/job_digest.h"
#include "core/report/report_builder.h"
#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"

namespace sealwalk::ui {

namespace {

using storage::HistoryStore;

std::optional<model::Job> jobBefore(const HistoryStore& store, const model::Job& job)
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

std::vector<model::Repair> repairsLeftOpen(const HistoryStore& store, const model::Job& job)
{
    std::vector<model::Repair> carried;
    if (const auto open = store.openTemporaryRepairs(job.object))
        for (const storage::OpenRepair& one : *open)
            if (one.job != job.id && one.repair.at < job.opened)
                carried.push_back(one.repair);
    return carried;
}

} // namespace

Result<std::shared_ptr<const PreparedReport>> prepareReport(const std::filesystem::path& history,
                                                            model::JobId job)
{
    const auto store = HistoryStore::open(history, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto record = transfer::loadRecord(*store, job);
    if (!record)
        return fail(record.error());
    report::ReportOptions options;
    options.now = Timestamp::now();
    options.lastJob = jobBefore(*store, record->job);
    options.carried = repairsLeftOpen(*store, record->job);
    auto prepared = std::make_shared<PreparedReport>();
    std::vector<std::string> missing; // named by the check below as well
    prepared->pictures = transfer::loadPictures(*store, record->job, missing);
    if (const auto digest =
            exchange::jobDigest(record->object, record->job, exchange::namesOf(prepared->pictures)))
        options.digest = *digest;
    const auto checked = transfer::verifyIn(*store, job);
    if (!checked)
        return fail(checked.error());
    options.problems = checked->problems;
    for (const exchange::CheckedSignature& signature : checked->signatures)
        options.signatures.push_back({signature.signature.id, signature.ok, signature.says});
    prepared->content = report::reportOf(record->job, record->object, options);
    return std::shared_ptr<const PreparedReport>(std::move(prepared));
}

} // namespace sealwalk::ui
