// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/last_time.h"

#include "core/analysis/answered.h"
#include "core/analysis/round_summary.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "core/transfer/known_pairs.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"

namespace sealwalk::ui {

LastTime::LastTime(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_work([this](Left left) {
        m_left = std::move(left);
        emit changed();
    })
{
    connect(&session, &JobSession::jobChanged, this, &LastTime::ask);
    ask();
}

void LastTime::ask()
{
    m_work.drop();
    m_left = {};
    auto last = m_session.jobBefore();
    if (!last)
        return;
    m_work.request([last = std::move(*last), object = m_session.object(), of = m_session.job().id,
                    known = transfer::knownPairs(m_session.history()).value_or(analysis::KnownPairs())] {
        Left left{of, last.number, {}, known};
        for (analysis::PointFinding& finding : analysis::summarise(last, object, analysis::Standing::AsLeft))
            left.findings.emplace(finding.point, std::move(finding));
        return left;
    });
}

const analysis::PointFinding* LastTime::findingAt(model::PointId point) const
{
    const auto at = [this](model::PointId id) {
        const auto found = m_left.findings.find(id);
        return found == m_left.findings.end() ? nullptr : &found->second;
    };
    if (const auto* same = at(point))
        return same;
    for (const auto& [one, other] : m_left.known.same)
        if (one == point || other == point)
            if (const auto* drawnAnew = at(one == point ? other : one))
                return drawnAnew;
    return nullptr;
}

QString LastTime::words(model::PointId point) const
{
    if (!m_session.hasJob() || m_left.of != m_session.job().id)
        return {};
    const analysis::PointFinding* finding = findingAt(point);
    if (finding == nullptr || !analysis::hasAnswer(*finding))
        return {};
    const report::ShownUnit unit = report::shownUnit(m_session.job().setup);
    const auto figure = [&unit](LeakRate rate) {
        return render::inFigures(report::screenRate(unit.ofHelium(rate)));
    };
    if (finding->rate)
        return tr("job %1: %2 on the chamber").arg(m_left.number).arg(figure(*finding->rate));
    if (finding->bound)
        return tr("job %1: below %2 on the chamber").arg(m_left.number).arg(figure(*finding->bound));
    if (finding->atLeast)
        return tr("job %1: at least %2 on the chamber").arg(m_left.number).arg(figure(*finding->atLeast));
    return tr("job %1: %2")
        .arg(m_left.number)
        .arg(render::inWords(std::string(model::name(finding->finding))));
}

} // namespace sealwalk::ui
