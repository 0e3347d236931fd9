// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/judge_work.h"

#include "core/analysis/job_rise.h"

namespace sealwalk::ui {

JudgeWork::JudgeWork(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_work([this](JudgeFigures figures) {
        m_figures = std::move(figures);
        emit changed();
    })
{}

void JudgeWork::request(const std::vector<analysis::PointFinding>& findings,
                        const std::set<model::PointId>& ticked, analysis::Standing standing)
{
    if (!m_session.hasJob())
        return;
    m_work.request([job = m_session.job(), object = m_session.object(), standing, findings,
                    marks = std::vector<model::PointId>(ticked.begin(), ticked.end())] {
        JudgeFigures figures;
        const model::RiseTest* test = analysis::riseTestFor(job, standing);
        if (test != nullptr)
            if (auto rise = analysis::judgeRise(*test, job, object))
                figures.rise = std::move(*rise);
        auto balance = analysis::balanceOfJob(job, object, findings, test, figures.rise, marks);
        if (balance)
            figures.balance = std::move(*balance);
        else
            figures.problem = balance.error().message;
        return figures;
    });
}

} // namespace sealwalk::ui
