// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_files.h"

#include "core/exchange/files.h"
#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "ui/session/job_session.h"

namespace sealwalk::ui {

Result<transfer::Checked> readJobFile(const std::filesystem::path& file)
{
    const auto bytes = exchange::readFile(file.string());
    if (!bytes)
        return fail(bytes.error());
    auto checked = transfer::checkFile(*bytes);
    if (!checked)
        return fail(checked.error().in(file.filename().string()));
    return checked;
}

Result<transfer::TakenIn> takeIn(JobSession& session, const std::filesystem::path& file,
                                 transfer::Checked checked)
{
    const std::string name = file.filename().string();
    if (!session.hasHistory())
        return fail(ErrorCode::NotAllowed, "open or make a history first; the job is taken into it");
    auto taken = transfer::takeIn(session.history(), checked.file, std::move(checked.result));
    if (!taken)
        return fail(taken.error().in(name));
    if (!taken->result.problems.empty())
        return fail(taken->isForked() ? ErrorCode::Conflict : ErrorCode::DamagedFile,
                    name + ": " + taken->result.problems.front());
    if (taken->outcome != transfer::Outcome::Known)
        emit session.historyChanged();
    return taken;
}

Status writeJobFile(const std::filesystem::path& history, model::JobId job, const std::filesystem::path& file,
                    const std::stop_token& stop)
{
    const auto store = storage::HistoryStore::open(history, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto out = transfer::handOut(*store, job);
    if (!out)
        return fail(out.error());
    if (stop.stop_requested())
        return fail(ErrorCode::Cancelled, file.string() + ": not written");
    return exchange::writeFile(file.string(), out->bytes);
}

} // namespace sealwalk::ui
