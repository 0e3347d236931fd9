// SPDX-License-Identifier: GPL-3.0-or-later
// What an earlier job of the object has to offer to the open one.
#include "core/storage/history_store.h"
#include "core/transfer/earlier_jobs.h"
#include "ui/session/job_session.h"

#include <algorithm>

namespace sealwalk::ui {

std::optional<model::Job> JobSession::jobBefore() const
{
    return m_job ? transfer::jobBefore(history(), *m_job) : std::nullopt;
}

bool JobSession::jobBeforeExists() const
{
    const auto rows = m_job ? history().jobsOf(m_job->object) : Result<std::vector<storage::JobRow>>();
    return rows && std::any_of(rows->begin(), rows->end(), [this](const storage::JobRow& row) {
               return row.id != m_job->id && row.opened < m_job->opened;
           });
}

} // namespace sealwalk::ui
