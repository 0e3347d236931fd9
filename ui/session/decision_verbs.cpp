// SPDX-License-Identifier: GPL-3.0-or-later
// What people decide about a job: voids, verdicts, concessions, repairs, and the turns of its review.
#include "core/analysis/review_checks.h"
#include "core/storage/history_store.h"
#include "core/transfer/earlier_jobs.h"
#include "ui/session/job_session.h"
#include "ui/session/record_identity.h"

#include <algorithm>

namespace sealwalk::ui {

Status JobSession::voidReadings(const std::vector<model::ReadingId>& readings, const std::string& reason)
{
    if (!m_job)
        return noJob();
    if (m_logger.isEmpty())
        return unnamed();
    std::vector<model::VoidMark> marks;
    for (const model::ReadingId id : readings)
        if (!m_job->isVoid(id))
            marks.push_back({id, reason, m_logger.toStdString(), Timestamp::now()});
    if (marks.empty())
        return {};
    Status stored = history().addVoid(m_job->id, marks);
    if (stored)
        m_job->voids.insert(m_job->voids.end(), marks.begin(), marks.end());
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

Status JobSession::voidMeasurement(const Uuid& measurement, const std::string& reason)
{
    if (!m_job)
        return noJob();
    if (m_logger.isEmpty())
        return unnamed();
    if (m_job->voidOf(measurement) != nullptr)
        return {};
    model::MeasurementVoid mark{model::MeasurementId(measurement), reason, m_logger.toStdString(),
                                Timestamp::now()};
    Status stored = history().addMeasurementVoid(m_job->id, mark);
    if (stored)
        m_job->voidMeasurements.push_back(std::move(mark));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

// Judge and repair

Status JobSession::judge(model::Judgement judgement)
{
    if (!m_job)
        return noJob();
    if (Status named = giveName(judgement, m_logger); !named)
        return named;
    if (judgement.round.isNil())
        judgement.round = m_round;
    Status stored = history().addJudgement(m_job->id, judgement);
    if (stored)
        m_job->judgements.push_back(std::move(judgement));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

Status JobSession::concede(model::Concession concession)
{
    if (!m_job)
        return noJob();
    if (Status named = giveName(concession, m_logger); !named)
        return named;
    Status stored = history().addConcession(m_job->id, concession);
    if (stored)
        m_job->concessions.push_back(std::move(concession));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

Result<model::RepairId> JobSession::putRepair(model::Repair repair, std::optional<model::Repair> before)
{
    if (!m_job)
        return noJob();
    if (const Status named = giveName(repair, m_logger); !named)
        return fail(named.error());
    const model::RepairId id = repair.id;
    auto known = std::find_if(m_job->repairs.begin(), m_job->repairs.end(),
                              [&](const model::Repair& r) { return r.id == id; });
    if (!before && known != m_job->repairs.end())
        before = *known;
    if (const Status stored = history().putRepair(m_job->id, repair, before); !stored)
        return fail(lookAgainOnConflict(stored).error());
    if (known == m_job->repairs.end())
        m_job->repairs.push_back(std::move(repair));
    else
        *known = std::move(repair);
    m_leftOpen = transfer::repairsLeftOpen(history(), *m_job); // it may make an earlier one good
    (void)afterStoring({}, &JobSession::recordsChanged);
    return id;
}

// Review

Status JobSession::addReview(model::ReviewEntry entry)
{
    if (!m_job)
        return noJob();
    giveIdentity(entry, m_logger);
    Status stored = history().addReview(m_job->id, entry);
    if (!stored)
        return stored;
    const model::JobState before = m_job->state;
    const model::Setup setupBefore = m_job->setup;
    reloadAfterOwnStep();
    emit storedOnDisk(Timestamp::now());
    if (m_job->setup != setupBefore) // opened again for work: shown as its record says
        emit setupChanged();
    emit recordsChanged();
    if (m_job->state != before) {
        emit stateChanged();
        emit historyChanged();
    }
    return {};
}

Status JobSession::submit(const std::string& text)
{
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Submitted;
    entry.text = text;
    return giveName(entry, m_logger).and_then([&] { return addReview(std::move(entry)); });
}

Status JobSession::sendBack(const std::string& by, const std::string& remark)
{
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Returned;
    entry.by = by;
    entry.text = remark;
    if (const Status named = giveName(entry, m_logger); !named)
        return named;
    if (m_job)
        if (const auto why = analysis::whyNotSendBack(*m_job, entry.by, isOnePersonHistory()))
            return fail(ErrorCode::NotAllowed, *why);
    return addReview(std::move(entry));
}

Status JobSession::remark(const std::string& by, const std::string& text, std::optional<model::PointId> point,
                          const std::string& check)
{
    model::ReviewEntry entry;
    entry.by = by;
    entry.text = text;
    entry.point = point;
    entry.check = check;
    return giveName(entry, m_logger).and_then([&] { return addReview(std::move(entry)); });
}

} // namespace sealwalk::ui
