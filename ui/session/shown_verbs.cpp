// SPDX-License-Identifier: GPL-3.0-or-later
// The unit and the gas a job is looked at in. While the job is open for work they are part of its record;
// afterwards they are this window's alone, and the record keeps its own.
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"

#include <utility>

namespace sealwalk::ui {

Status JobSession::showIn(const std::string& unit, model::GasBasis gas)
{
    if (!m_job)
        return fail(ErrorCode::NotAllowed, "no job is open; open or start one first");
    model::Setup setup = m_job->setup;
    setup.unit = unit;
    setup.gasBasis = gas;
    if (m_job->isOpenForWork())
        return changeSetup(setup);
    if (setup == m_job->setup)
        return {};
    if (!m_recorded)
        m_recorded = ShownAs{m_job->setup.unit, m_job->setup.gasBasis};
    m_job->setup = std::move(setup);
    emit setupChanged();
    requestFindings(); // their sentences name rates
    return {};
}

model::Job JobSession::recordedJob() const
{
    model::Job recorded = job();
    if (m_recorded) {
        recorded.setup.unit = m_recorded->unit;
        recorded.setup.gasBasis = m_recorded->gas;
    }
    return recorded;
}

/// Takes the job as it was just read, and goes on showing it as it was looked at, unless work on it goes on.
void JobSession::takeJob(model::Job job)
{
    const auto shown = m_recorded && m_job && m_job->id == job.id && !job.isOpenForWork()
                           ? std::optional(ShownAs{m_job->setup.unit, m_job->setup.gasBasis})
                           : std::nullopt;
    m_job = std::move(job);
    m_workedFrom.reset();
    m_recorded.reset();
    if (!shown)
        return;
    m_recorded = ShownAs{m_job->setup.unit, m_job->setup.gasBasis};
    m_job->setup.unit = shown->unit;
    m_job->setup.gasBasis = shown->gas;
}

} // namespace sealwalk::ui
