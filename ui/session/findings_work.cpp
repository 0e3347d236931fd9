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
}

void JobSession::requestFindings()
{
    if (!m_job)
        return;
    // The snapshot of a large job takes milliseconds to copy: once per burst of readings, not per reading.
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

std::function<JobSession::Findings()> JobSession::findingsOfNow() const
{
    // Shared, so that the function itself is cheap to copy.
    auto snapshot = std::make_shared<const model::Job>(job());
    return [snapshot, object = this->object(), round = m_round] {
        const model::Job& job = *snapshot;
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
    };
}

} // namespace sealwalk::ui
