// SPDX-License-Identifier: GPL-3.0-or-later
// The controller's part for an entry that another program keeps from being stored: it waits, what is said
// meanwhile goes with it, and it is not dropped without a word.
#include "ui/spray/spray_controller.h"

namespace sealwalk::ui {

EntryUnderWay SprayController::underWay() const
{
    return {{m_round, m_call ? std::optional(m_call->point) : std::nullopt, m_corrects, m_typed, m_doings},
            {m_condition, m_conditionDetail, m_remark, m_shielded,
             m_corrects ? m_correctedBackground : m_background, m_delay, m_confirms, m_gentle, m_stayed}};
}

/// Until the other program lets go; the window goes on meanwhile.
void SprayController::waitForHistory(ReadingDraft draft)
{
    if (!draft.sprayedAt)
        draft.sprayedAt = Timestamp::now(); // when Enter was pressed, not when the lock was gone
    const QString words = inWords(m_session.readingOf(draft));
    m_waiting = Waiting{std::move(draft), underWay(), words};
    m_retry.start();
}

/// Whether something is being answered that may still change the entry, or begin another.
bool SprayController::isBeingAsked() const
{
    return m_dialogs > 0 || m_prompt != Prompt::None || isSideQuestion(m_field);
}

void SprayController::setDialogOpen(bool isOpen)
{
    m_dialogs += isOpen ? 1 : -1;
}

void SprayController::tryAgain()
{
    if (!m_waiting) {
        m_retry.stop();
        return;
    }
    if (isBeingAsked())
        return;
    const EntryUnderWay now = underWay();
    if (!m_session.hasJob() || now.about != m_waiting->entry.about) {
        dropWaiting();
        return;
    }
    if (now.beside != m_waiting->entry.beside) {
        const ReadingDraft said = draftOf(m_waiting->draft.outcome);
        ReadingDraft& draft = m_waiting->draft;
        draft.condition = said.condition;
        draft.conditionDetail = said.conditionDetail;
        draft.remark = said.remark;
        draft.shielded = said.shielded;
        if (draft.corrects)
            draft.reason = said.reason;
        if (now.beside.background != m_waiting->entry.beside.background)
            draft.background = said.background;
        if (now.beside.delay != m_waiting->entry.beside.delay)
            draft.delay = said.delay;
        draft.confirmed = said.confirmed;
        draft.gentle = said.gentle;
        draft.outOfTurn = draft.outOfTurn || now.beside.stayed;
        m_waiting->entry = now;
    }
    keep(m_waiting->draft, JobSession::Waiting::NotAtAll);
}

/// Whoever types, calls, sprays or leaves meanwhile no longer means it; but is told.
void SprayController::dropWaiting()
{
    const QString words = m_waiting->words;
    m_waiting.reset();
    m_retry.stop();
    emit soundWanted(SpraySound::Refused);
    emit said(Weight::Warning,
              tr("Not stored: %1. It waited for another program, and something else was begun.").arg(words));
    emit changed();
}

} // namespace sealwalk::ui
