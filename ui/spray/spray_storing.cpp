// SPDX-License-Identifier: GPL-3.0-or-later
// The controller's part that stores: a reading, its correction, its void mark.
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_words.h"

#include <QLocale>

#include <algorithm>

namespace sealwalk::ui {

namespace {

bool isResponse(model::Outcome outcome)
{
    return outcome == model::Outcome::Value || outcome == model::Outcome::AboveRange;
}

} // namespace

// Whose is the last

const model::Reading* SprayController::lastStored() const
{
    if (m_session.currentRound() == nullptr)
        return nullptr;
    // What another window stored meanwhile, perhaps under the same name, is not ours to correct.
    const auto isOwn = [this](const model::Reading* reading) {
        return m_own.contains(reading->id) ||
               (reading->sequence <= m_storedBefore && reading->by == m_session.logger().toStdString());
    };
    const auto standing = m_session.job().standing(m_session.currentRound()->id);
    const auto last = std::find_if(standing.rbegin(), standing.rend(), isOwn);
    return last == standing.rend() ? nullptr : *last;
}

QString SprayController::inWords(const model::Reading& reading) const
{
    const model::TestPoint* point = m_session.job().sketch.point(reading.point);
    const QString number = QString::number(point == nullptr ? 0 : point->number);
    const model::Setup& setup = m_session.job().setup;
    const QString answer = reading.peak
                               ? render::inFigures(report::screenRate(
                                     report::shownUnit(setup, setup.detectorUnit).number(*reading.peak)))
                               : outcomeWord(reading.outcome);
    return number + QStringLiteral(", ") + answer;
}

QString SprayController::targetInWords() const
{
    const model::Reading* target =
        m_target && m_session.hasJob() ? m_session.job().reading(*m_target) : nullptr;
    return target == nullptr ? QString() : inWords(*target);
}

bool SprayController::aimAtLast()
{
    // A point called again was asked for by its number: then that is meant, whoever stored it.
    const model::Reading* meant = nullptr;
    if (m_isCalledAgain && m_call && !m_machine.isAsking())
        for (const analysis::WalkStep& step : m_walk)
            if (step.point == m_call->point && step.condition == m_condition)
                meant = step.reading;
    if (meant == nullptr)
        meant = lastStored();
    m_target = meant == nullptr ? std::nullopt : std::optional(meant->id);
    return m_target.has_value();
}

// Storing

std::optional<model::Reading> SprayController::readingSoFar() const
{
    const auto rate = value() ? value() : offered();
    if (!rate || !m_call || m_field != Field::Peak || m_session.currentRound() == nullptr)
        return std::nullopt;
    ReadingDraft draft = draftOf(model::Outcome::Value);
    draft.peak = rate;
    if (m_offer.background)
        draft.background = m_offer.background;
    return m_session.readingOf(draft);
}

ReadingDraft SprayController::draftOf(model::Outcome outcome) const
{
    if (m_corrects)
        return correctionOf(outcome);
    ReadingDraft draft;
    draft.point = m_call ? m_call->point : model::PointId();
    draft.outcome = outcome;
    draft.condition = m_condition;
    draft.conditionDetail = m_conditionDetail;
    draft.background = m_background;
    if (const auto sprayed = m_machine.sprayed(now()))
        draft.dwell = seconds(*sprayed);
    draft.delay = delay();
    draft.outOfTurn = m_machine.isOutOfTurn() || m_stayed;
    draft.gentle = m_gentle;
    draft.confirmed = m_confirms && isResponse(outcome);
    if (draft.dwell) // else no spray of this call stands, whatever was sprayed and left before
        draft.sprayedAt = m_sprayedAt;
    draft.remark = m_remark;
    draft.shielded = shieldedFrom(draft.point);
    for (const analysis::SkippedPoint& each : m_skipped)
        if (each.point == draft.point)
            draft.remark = bothWords(
                draft.remark, tr("came later: %1").arg(QString::fromStdString(each.reason)).toStdString());
    return draft;
}

QString SprayController::typedWrong()
{
    return tr("typed wrong");
}

/// What was measured stays; only the answer was wrong. A remark made now says why.
ReadingDraft SprayController::correctionOf(model::Outcome outcome) const
{
    ReadingDraft draft;
    const model::Reading* old = m_session.job().reading(*m_corrects);
    draft.point = m_call ? m_call->point : model::PointId();
    draft.outcome = outcome;
    draft.condition = m_condition;
    draft.corrects = m_corrects;
    // It stands at the moment of the spray, as what was seen; when it was corrected is part of why.
    const Timestamp corrected = Timestamp::now();
    draft.reason = (m_remark.empty() ? typedWrong().toStdString() : m_remark) + " (" + corrected.date() +
                   ' ' + corrected.timeOfDay() + ')';
    if (old == nullptr)
        return draft;
    draft.conditionDetail = m_condition == old->condition ? old->conditionDetail : m_conditionDetail;
    draft.sprayedAt = old->at;
    draft.outOfTurn = old->outOfTurn;
    draft.remark = old->remark;
    draft.shielded = old->shielded;
    if (old->entry == model::Entry::Transcribed)
        draft.entry = old->entry;
    draft.background = m_correctedBackground ? m_correctedBackground : old->background;
    if (wasSprayed(outcome)) {
        draft.dwell = old->dwell;
        draft.gentle = old->gentle;
        draft.trace = old->trace;
    }
    if (isResponse(outcome)) {
        draft.delay = m_delay ? m_delay : old->delay;
        draft.cleanUp = old->cleanUp;
        draft.confirmed = old->confirmed;
    }
    return draft;
}

void SprayController::storeDraft(ReadingDraft draft)
{
    if (asksForPaperTime(draft))
        return;
    addFeed(draft);
    m_waiting.reset();
    keep(std::move(draft), JobSession::Waiting::Shortly);
}

void SprayController::keep(ReadingDraft draft, JobSession::Waiting waiting)
{
    const bool correction = draft.corrects.has_value();
    const int number = m_call ? m_call->number : 0;
    const bool wasConfirming = m_confirms;
    const auto stored = m_session.store(draft, waiting);
    if (!stored && stored.error().code == ErrorCode::Busy && m_waiting)
        return; // said already; what was typed still waits
    m_waiting.reset();
    m_retry.stop();
    if (!stored) {
        m_notStored = true;
        if (stored.error().code == ErrorCode::Busy)
            waitForHistory(std::move(draft));
        emit soundWanted(SpraySound::Refused);
        emit failed(stored.error().in(tr("not stored").toStdString()));
        emit changed();
        return; // what was typed stays in the field
    }
    m_own.insert(stored->id);
    m_notStored = false;
    const auto limit = m_session.job().limitOf(stored->point);
    const bool over = stored->peak && limit && *stored->peak > *limit;
    emit soundWanted(over ? SpraySound::StoredOver : SpraySound::Stored);
    if (const QString gaps = gapsInWords(*stored); !gaps.isEmpty() && !correction)
        emit said(Weight::Warning, tr("%1 stored and marked for the review: %2. J calls it again.")
                                       .arg(QString::number(number), gaps));
    else if (wasConfirming && stored->outcome == model::Outcome::NoResponse)
        emit said(Weight::Warning,
                  tr("%1 did not answer again: not confirmed. Its first answer stays; Judge says what it is.")
                      .arg(number));
    else
        emit said(Weight::News, correction
                                    ? tr("%1 corrected; the old entry stays in the record.").arg(number)
                                    : tr("%1 stored.").arg(number));
    if (correction) {
        leaveCorrection();
        return;
    }
    if (m_paper.isOn) { // the next one on the sheet is counted from here
        if (m_paper.last || wasSprayed(stored->outcome)) // else it has no time to count from
            m_paper.last = stored->at;
        m_paper.pending.reset();
        m_field = Field::Peak;
    }
    const bool heliumWasOn = m_machine.sprayed(now()).has_value();
    clearReading();
    m_machine.stored(now(), stored->outcome != model::Outcome::NoResponse);
    if (m_feed)
        m_feed->close(true);
    m_backgroundByHand = false;
    if (heliumWasOn)
        keepTrackOfSpray(false);
    advance();
}

/// What belongs to the reading of one call only.
void SprayController::clearReading()
{
    clearEntry();
    m_remark.clear();
    m_sprayedAt.reset();
    m_delay.reset();
    m_stayed = false;
    m_gentle = false;
    m_confirms = false;
    m_notStored = false;
    m_silenceAsked = false;
    m_startRefused = false;
}

void SprayController::advance()
{
    const model::PointId last = m_call ? m_call->point : model::PointId();
    reload();
    setCall(callAfter(last));
    if (!m_call && !m_walk.empty())
        emit said(Weight::News, tr("Every point of this round is done."));
}

void SprayController::noResponse()
{
    if (asksForChoice())
        return;
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    if (const QString doubt = doubtOfSilence(); !doubt.isEmpty() && !m_silenceAsked) {
        m_silenceAsked = true;
        m_question = doubt + QLatin1Char(' ') + tr("N again stores it all the same.");
        emit soundWanted(SpraySound::Refused);
        emit said(Weight::Warning, m_question);
        emit changed();
        return;
    }
    storeDraft(draftOf(model::Outcome::NoResponse));
}

/// Why silence at this point may be a slip of who works by keys without looking; empty: no doubt.
QString SprayController::doubtOfSilence() const
{
    if (m_corrects || m_paper.isOn)
        return {};
    const auto sprayed = m_machine.sprayed(now());
    if (m_startRefused && !sprayed)
        return tr("Space came while the last point still cleared, so this spray was not timed.");
    const double wanted = m_machine.times().dwell;
    constexpr double kReaction = 0.5; // s
    if (sprayed && *sprayed < wanted - kReaction && wanted > inSeconds(m_timing.dwell))
        return tr("It answered late before and needs %1 s of helium; it had %2 s.")
            .arg(QLocale().toString(wanted, 'f', 0), QLocale().toString(*sprayed, 'f', 0));
    return {};
}

void SprayController::storeWithoutSpray(model::Outcome outcome, const QString& reason)
{
    if (!m_call)
        return;
    ReadingDraft draft = draftOf(outcome);
    draft.reason = reason.toStdString();
    storeDraft(std::move(draft));
}

// Confirming

void SprayController::confirm()
{
    if (m_corrects || m_paper.isOn) {
        refuse(tr("A response is confirmed by a spray; Esc leaves this first."));
        return;
    }
    const auto answered = [](const analysis::WalkStep& step) {
        return step.reading != nullptr && isResponse(step.reading->outcome);
    };
    if (!m_call || !answered(*m_call)) {
        const model::Reading* last = lastStored();
        if (last == nullptr || !isResponse(last->outcome)) {
            refuse(tr("Nothing answered yet that could be confirmed; J calls a point that did."));
            return;
        }
        if (m_machine.isAsking()) {
            refuse(
                tr("Point %1 is being sprayed; its reading comes first.").arg(m_call ? m_call->number : 0));
            return;
        }
        for (const analysis::WalkStep& step : m_walk)
            if (step.point == last->point && step.condition == last->condition) {
                setCall(step);
                break;
            }
        if (!m_call || !answered(*m_call))
            return;
    } else if (m_confirms) {
        m_confirms = false;
        emit changed();
        return;
    }
    m_confirms = true;
    emit said(Weight::News,
              tr("Point %1 once more, from a clean background: its answer is stored as confirmed.")
                  .arg(m_call->number));
    emit changed();
}

// Correcting

void SprayController::correctLast()
{
    if (m_corrects || asksForTime())
        return;
    if (!aimAtLast()) {
        refuse(tr("Nothing that was stored here stands in this round; J calls an older point first."));
        return;
    }
    const model::Reading* last = m_session.job().reading(*m_target);
    // A spray that runs goes on meanwhile, and so does its call afterwards.
    m_aside = Aside{m_call, m_condition, m_conditionDetail, std::exchange(m_remark, {}),
                    std::exchange(m_delay, std::nullopt)};
    m_beneath = {};
    const model::TestPoint* point = m_session.job().sketch.point(last->point);
    m_corrects = last->id;
    m_correctedBackground.reset();
    m_field = Field::Peak;
    clearEntry();
    analysis::WalkStep step;
    step.point = last->point;
    step.number = point == nullptr ? 0 : point->number;
    step.condition = last->condition;
    step.reading = last;
    m_call = step;
    m_condition = last->condition;
    m_session.select(last->point);
    emit changed();
}

/// Back to the call that was left for it.
void SprayController::leaveCorrection()
{
    const Aside aside = std::exchange(m_aside, {});
    const model::PointId corrected = m_call ? m_call->point : model::PointId();
    m_corrects.reset();
    m_delay.reset();
    m_notStored = false;
    m_field = Field::Peak;
    clearEntry();
    reload();
    m_call.reset();
    for (const analysis::WalkStep& step : m_walk)
        if (aside.call && step.point == aside.call->point && step.condition == aside.call->condition)
            m_call = step;
    if (!m_call) { // every point was done, or the point was retired meanwhile
        setCall(callAfter(corrected));
        return;
    }
    m_condition = aside.condition;
    m_conditionDetail = aside.conditionDetail;
    m_remark = aside.remark;
    m_delay = aside.delay;
    m_session.select(m_call->point);
    emit changed();
}

void SprayController::voidLast(const QString& reason)
{
    const model::Reading* target = m_target ? m_session.job().reading(*m_target) : nullptr;
    m_target.reset();
    if (target == nullptr) {
        refuse(tr("Nothing that was stored here stands in this round; J calls an older point first."));
        return;
    }
    const model::PointId point = target->point;
    const QString words = inWords(*target);
    const Status status = m_session.voidReadings({target->id}, reason.toStdString());
    if (!status) {
        emit soundWanted(SpraySound::Refused);
        emit failed(status.error().in(tr("not stored").toStdString()));
        return;
    }
    reload();
    if (!m_machine.isAsking()) // else its turn comes when the present one is stored
        callPoint(point);
    emit said(Weight::News, tr("The reading %1 is void (%2) and called again.").arg(words, reason));
}

} // namespace sealwalk::ui
