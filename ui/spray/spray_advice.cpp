// SPDX-License-Identifier: GPL-3.0-or-later
// The controller's part that listens to the findings: advice shown, taken, or set aside.
#include "ui/spray/spray_advice.h"

#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_words.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

SprayAdvice adviceOf(const analysis::MovedRun& run)
{
    SprayAdvice advice;
    advice.kind = SprayAdvice::Kind::VoidRun;
    advice.readings = run.readings;
    advice.title = SprayController::tr("Background moved, %1 to %2").arg(run.firstPoint).arg(run.lastPoint);
    advice.because = render::inWords(run.because);
    advice.takes =
        SprayController::tr("void all %n, call again", nullptr, static_cast<int>(run.readings.size()));
    advice.stays = SprayController::tr("keep them");
    return advice;
}

std::optional<SprayAdvice> adviceOf(const analysis::JobNextStep& step, const model::Sketch& sketch)
{
    const model::TestPoint* point = sketch.point(step.point);
    if (point == nullptr)
        return std::nullopt;
    const int number = point->number;
    const model::TestPoint* leak = sketch.point(step.other);
    SprayAdvice advice;
    advice.point = step.point;
    advice.because = render::inWords(step.because);
    advice.stays = SprayController::tr("stay, keep as noted");
    switch (step.kind) {
    case analysis::StepKind::LeaveOrder:
        advice.kind = SprayAdvice::Kind::LeaveOrder;
        advice.title = leak == nullptr ? SprayController::tr("Leave the order")
                                       : SprayController::tr("Leave the order after %1").arg(leak->number);
        advice.takes = SprayController::tr("go to %1").arg(number);
        return advice;
    case analysis::StepKind::SealFirst:
        advice.kind = SprayAdvice::Kind::SealFirst;
        advice.title = leak == nullptr ? SprayController::tr("Seal or bag first")
                                       : SprayController::tr("Seal or bag %1 first").arg(leak->number);
        advice.takes = SprayController::tr("sealed, go to %1").arg(number);
        return advice;
    case analysis::StepKind::RepeatGentle:
        advice.kind = SprayAdvice::Kind::RepeatGentle;
        advice.title = SprayController::tr("Spray %1 again, gently").arg(number);
        advice.takes = SprayController::tr("%1 with less helium").arg(number);
        return advice;
    case analysis::StepKind::Spray:
    case analysis::StepKind::Wait:
    case analysis::StepKind::Done:
        break;
    }
    return std::nullopt;
}

} // namespace

void SprayController::lookForAdvice()
{
    std::optional<SprayAdvice> found;
    if (m_session.hasJob() && m_session.job().isOpenForWork() && m_session.currentRound() != nullptr) {
        for (const analysis::MovedRun& run : m_session.movedRuns())
            if (const SprayAdvice advice = adviceOf(run); advice != m_answered) {
                found = advice;
                break;
            }
        if (!found)
            found = adviceOf(m_session.nextStep(), m_session.job().sketch);
        if (found == m_answered)
            found.reset();
    }
    if (found == m_advice)
        return;
    m_advice = found;
    emit advised();
    emit changed();
}

void SprayController::takeAdvice()
{
    if (!m_advice) {
        refuse(tr("There is no advice to take; the walk goes on in order."));
        return;
    }
    if (m_advice->kind == SprayAdvice::Kind::VoidRun) {
        startPrompt(Prompt::VoidRunReason);
        return;
    }
    m_answered = std::exchange(m_advice, std::nullopt);
    callPoint(m_answered->point);
    m_gentle = m_answered->kind == SprayAdvice::Kind::RepeatGentle;
    emit changed();
}

void SprayController::voidRun(const QString& reason)
{
    if (!m_advice || m_advice->kind != SprayAdvice::Kind::VoidRun)
        return;
    const SprayAdvice advice = *m_advice;
    const model::Reading* first = m_session.job().reading(advice.readings.front());
    const model::PointId again = first == nullptr ? model::PointId() : first->point;
    m_advice.reset();
    if (const Status status = m_session.voidReadings(advice.readings, reason.toStdString()); !status) {
        m_advice = advice;
        refuse(render::inWords(status.error()));
        return;
    }
    reload();
    callPoint(again);
    emit said(Weight::News, tr("%n readings are void (%1) and called again.", nullptr,
                               static_cast<int>(advice.readings.size()))
                                .arg(reason));
}

void SprayController::takeHighestAndStore()
{
    if (!m_question.isEmpty() || offered()) // asked once more: yes
        enter();
    else
        refuse(tr("Type the highest value, or press N for no response."));
}

QString SprayController::callInWords() const
{
    if (!m_call)
        return tr("No point is called.");
    QStringList words{stateWord(m_machine.state()), tr("point %1").arg(m_call->number)};
    const model::Sketch& sketch = m_session.job().sketch;
    if (const model::TestPoint* point = sketch.point(m_call->point)) {
        if (const model::Joint* joint = sketch.joint(point->joint))
            words << QString::fromStdString(joint->name);
        words << render::inWords(model::placeText(sketch, *point));
    }
    words << conditionWord(m_condition);
    if (const model::Reading* last = lastStored(); last != nullptr && last->peak) {
        const model::Setup& setup = m_session.job().setup;
        const report::ShownUnit unit = report::shownUnit(setup, setup.detectorUnit);
        words << tr("last stored %1 %2")
                     .arg(render::inFigures(report::screenRate(unit.number(*last->peak))),
                          QString::fromStdString(unit.symbol));
    }
    words.removeAll(QString());
    return words.join(QStringLiteral(", "));
}

} // namespace sealwalk::ui
