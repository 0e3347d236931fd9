// SPDX-License-Identifier: GPL-3.0-or-later
// What a person decides on the judge page: repairs and the rounds that prove them, verdicts, concessions.
#include "core/analysis/answered.h"
#include "core/analysis/repair_progress.h"
#include "ui/judge/findings_model.h"
#include "ui/judge/judge_page.h"
#include "ui/judge/repair_dialog.h"
#include "ui/judge/repairs_panel.h"
#include "ui/judge/verdict_dialog.h"
#include "ui/widgets/name_first.h"
#include "ui/widgets/page_tabs.h"

#include <QStackedWidget>

#include <algorithm>

namespace sealwalk::ui {

namespace {

VerdictDialog::Surroundings
surroundingsOf(const model::Job& job, const std::vector<analysis::PointFinding>& all, model::PointId judged)
{
    VerdictDialog::Surroundings around;
    around.isSetup = job.sketch.isOfSetup(judged);
    for (const analysis::PointFinding& finding : all)
        if (finding.point != judged &&
            (analysis::isLeakWord(finding.finding) || finding.finding == analysis::Finding::OtherSource))
            around.leaks.emplace_back(finding.point, finding.number);
    return around;
}

} // namespace

/// Said before a form is filled in that could not be stored.
bool JudgePage::takesDecisions()
{
    const model::Job& job = m_session.job();
    if (job.state != model::JobState::Signed)
        return true;
    emit noteRequested(Severity::Caution, tr("Job %1 is signed and stays as it is; what is known later is an "
                                             "amendment (Sign off).")
                                              .arg(job.number));
    return false;
}

void JudgePage::logRepairs()
{
    if (!m_session.hasJob() || !takesDecisions())
        return;
    std::vector<model::PointId> points(m_model->ticked().begin(), m_model->ticked().end());
    if (points.empty()) {
        if (const auto* finding = chosen())
            points.push_back(finding->point);
        else
            return;
    }
    if (!isNamed(m_session, *this))
        return;
    RepairDialog dialog(m_session, points, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const model::Repair repair = dialog.repair();
    const auto stored = m_session.putRepair(repair);
    if (!stored) {
        emit failed(stored.error());
        return;
    }
    m_model->untickAll();
    proveRepair(*stored);
}

void JudgePage::proveRepair(model::RepairId id)
{
    const auto& repairs = m_session.job().repairs;
    const auto repair =
        std::find_if(repairs.begin(), repairs.end(), [&](const model::Repair& r) { return r.id == id; });
    if (repair == repairs.end())
        return;
    const auto again = analysis::pointsToProve(*repair);
    const Status opened = m_session.openRound(model::RoundKind::AfterRepair, repair->action, again, id);
    if (!opened) {
        emit failed(opened.error());
        return;
    }
    QString news = tr("Repair stored. The round that proves it calls %n point(s).", nullptr,
                      static_cast<int>(again.size()));
    if (repair->sprayableFrom && Timestamp::now() < *repair->sprayableFrom)
        news += tr(" It cures: not to be sprayed before %1 %2.")
                    .arg(QString::fromStdString(repair->sprayableFrom->date()),
                         QString::fromStdString(repair->sprayableFrom->timeOfDay().substr(0, 5)));
    emit noteRequested(Severity::News, news);
    emit sprayWanted();
}

void JudgePage::editRepair(model::RepairId id)
{
    if (!isNamed(m_session, *this))
        return;
    const auto& repairs = m_session.job().repairs;
    const auto known =
        std::find_if(repairs.begin(), repairs.end(), [&](const model::Repair& r) { return r.id == id; });
    if (known == repairs.end())
        return;
    // A copy: the record may move while the dialog is open.
    const model::Repair before = *known; // NOLINT(performance-unnecessary-copy-initialization)
    RepairDialog dialog(m_session, before, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const auto stored = m_session.putRepair(dialog.repair(), before); !stored)
        emit failed(stored.error());
}

void JudgePage::showRepairs()
{
    m_repairs->refresh();
    m_lower->setCurrentWidget(m_repairs);
    m_tabs->bringUp(m_lower);
    m_repairs->setFocus();
}

void JudgePage::judgeByHand()
{
    if (chosen() == nullptr || !m_session.hasJob() || !takesDecisions())
        return;
    // A copy: while the dialog asks, newer findings may take the place of the list it stands in.
    const analysis::PointFinding finding = *chosen();
    if (!isNamed(m_session, *this))
        return;
    VerdictDialog dialog(finding, surroundingsOf(m_session.job(), findings(), finding.point), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (auto judgement = dialog.judgement()) {
        if (const model::Reading* reading =
                finding.reading ? m_session.job().reading(*finding.reading) : nullptr)
            judgement->round = reading->round;
        if (const Status stored = m_session.judge(*judgement); !stored)
            emit failed(stored.error());
    }
    if (const auto concession = dialog.concession())
        if (const Status stored = m_session.concede(*concession); !stored)
            emit failed(stored.error());
}

} // namespace sealwalk::ui
