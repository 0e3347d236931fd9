// SPDX-License-Identifier: GPL-3.0-or-later
// The session's findings: worked out off the window's thread after every change of the record.
#include "core/analysis/round_summary.h"
#include "ui/session/job_session.h"
#include "ui/session/newest_wins.h"

#include <algorithm>
#include <memory>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kManyReadings = 2000;
constexpr int kGatherMilliseconds = 150;

} // namespace

const analysis::PointFinding* JobSession::finding(model::PointId point) const
{
    const auto& all = m_findings.round;
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const analysis::PointFinding& f) { return f.point == point; });
    return found == all.end() ? nullptr : &*found;
}

void JobSession::forgetFindings()
{
    m_findingsWork->drop();
    m_findings = {};
    m_workedFrom.reset();
}

void JobSession::requestFindings(Since since)
{
    if (since == Since::AnyChange)
        m_workedFrom.reset();
    if (!m_job)
        return;
    // The findings of a large job take seconds: once per burst of readings, not per reading.
    m_findingsTimer.start(m_job->readings.size() < kManyReadings ? 0 : kGatherMilliseconds);
    emit workingOut();
}

bool JobSession::isWorkingOut() const
{
    return m_job && (m_findingsTimer.isActive() || m_findingsWork->isBusy());
}

void JobSession::startFindings()
{
    if (m_job)
        m_findingsWork->requestOf([this] {
            m_findingsTimer.stop(); // what came since it was started is in this snapshot
            return findingsOfNow();
        });
}

/// Readings come at the end of a job, one by one: what was copied once stays, and only those that came since
/// go along. A large job is copied for milliseconds, in which the window would stand still.
std::function<JobSession::Findings()> JobSession::findingsOfNow()
{
    if (!m_workedFrom || m_workedFrom->id != m_job->id ||
        m_workedFrom->readings.size() > m_job->readings.size())
        m_workedFrom = std::make_shared<const model::Job>(job());
    const auto known = static_cast<std::ptrdiff_t>(m_workedFrom->readings.size());
    const auto since = std::make_shared<const std::vector<model::Reading>>(m_job->readings.begin() + known,
                                                                           m_job->readings.end());
    return [from = m_workedFrom, since, object = this->object(), round = m_round] {
        if (since->empty())
            return findingsOf(*from, object, round);
        model::Job job = *from;
        job.readings.insert(job.readings.end(), since->begin(), since->end());
        return findingsOf(job, object, round);
    };
}

JobSession::Findings JobSession::findingsOf(const model::Job& job, const model::TestObject& object,
                                            model::RoundId round)
{
    const auto byRound = analysis::findingsByRound(job, object);
    Findings findings;
    for (std::size_t i = 0; i < byRound.size(); ++i)
        if (job.rounds[i].id == round)
            findings.round = byRound[i];
    findings.asFound = analysis::summarise(job, byRound, analysis::Standing::AsFound);
    findings.asLeft = analysis::summarise(job, byRound, analysis::Standing::AsLeft);
    if (job.round(round) != nullptr) {
        findings.next = analysis::jobNextStep(job, object, round, Timestamp::now());
        findings.moved = analysis::jobMovedBackgrounds(job, object, round);
    }
    return findings;
}

} // namespace sealwalk::ui
