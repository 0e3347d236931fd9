// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_files.h"

#include "core/exchange/files.h"
#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "core/transfer/take_in.h"
#include "ui/session/job_session.h"

namespace sealwalk::ui {

Result<TakenIn> takeJobFile(JobSession& session, const std::filesystem::path& file)
{
    const std::string name = file.filename().string();
    if (!session.hasHistory())
        return fail(ErrorCode::NotAllowed, "open or make a history first; the job is taken into it");
    const auto bytes = exchange::readFile(file.string());
    if (!bytes)
        return fail(bytes.error());
    auto checked = transfer::checkFile(*bytes);
    if (!checked)
        return fail(checked.error().in(name));
    auto taken = transfer::takeIn(session.history(), checked->file, std::move(checked->result));
    if (!taken)
        return fail(taken.error().in(name));
    if (!taken->result.problems.empty())
        return fail(taken->isKnown ? ErrorCode::Conflict : ErrorCode::DamagedFile,
                    name + ": " + taken->result.problems.front());
    if (!taken->isKnown)
        emit session.historyChanged();
    return TakenIn{taken->job, !taken->result.signatures.empty(), taken->isKnown,
                   std::move(taken->result.notes)};
}

Status writeJobFile(const JobSession& session, const std::filesystem::path& file)
{
    const auto out = transfer::handOut(session.history(), session.job().id);
    if (!out)
        return fail(out.error());
    return exchange::writeFile(file.string(), out->bytes);
}

} // namespace sealwalk::ui
