// SPDX-License-Identifier: GPL-3.0-or-later
// What is called: keys that move through the walk, and going on after a stop.
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_note.h"
#include "ui/spray/spray_words.h"

#include <QLocale>

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

// Commands

void SprayController::toggleSpray()
{
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    if (m_paper.isOn) {
        refuse(tr("Readings from paper are typed, not sprayed."));
        return;
    }
    if (m_corrects) {
        refuse(tr("A correction is typed, not sprayed; Esc leaves it."));
        return;
    }
    if (m_heldByFeed) { // the round goes on without it
        m_heldByFeed = false;
        m_machine.quiet();
    }
    const bool starts = m_machine.state() != CallState::Spray;
    setTimes();
    if (!m_machine.toggle(now())) {
        m_tooEarly = m_machine.state() == CallState::Wait;
        m_startRefused = m_tooEarly;
        refuse(m_machine.state() == CallState::Hold
                   ? tr("The background moves; wait, or press I to go on anyway.")
                   : tr("Helium of the last point is still clearing; wait, or press I to go on anyway."));
        return;
    }
    ++m_doings;
    m_tooEarly = false;
    m_startRefused = false;
    m_silenceAsked = false;
    if (m_feed && starts)
        m_feed->sprayStarted(m_call->number);
    else if (m_feed)
        m_feed->sprayEnded(true);
    if (starts) {
        m_sprayedAt = Timestamp::now();
        m_delay.reset();
        keepTrackOfSpray(true);
        m_ticker.start();
        if (m_machine.times().dwell > inSeconds(m_timing.dwell))
            emit said(Weight::News, tr("Point %1 answered late before: helium stays on for %2 s.")
                                        .arg(m_call->number)
                                        .arg(QLocale().toString(m_machine.times().dwell, 'f', 0)));
    }
    emit changed();
}

void SprayController::startPrompt(Prompt prompt)
{
    if (prompt == Prompt::VoidReason && m_prompt != prompt)
        (void)aimAtLast(); // the one named in the question, whatever comes meanwhile
    m_prompt = m_prompt == prompt ? Prompt::None : prompt;
    m_typed.clear();
    emit changed();
}

void SprayController::choose(int digit)
{
    const QStringList words = choices();
    if (digit < 1 || digit > words.size()) {
        refuse(tr("Choose 1 to %1, or Esc to leave it.").arg(words.size()));
        return;
    }
    if (m_prompt == Prompt::OtherCondition) {
        m_prompt = Prompt::None;
        setCondition(otherConditions()[static_cast<std::size_t>(digit - 1)]);
        return;
    }
    chooseInWords(words[digit - 1]);
}

bool SprayController::wantsWords(int digit) const
{
    switch (m_prompt) {
    case Prompt::VoidReason:
    case Prompt::VoidRunReason:
    case Prompt::NoAccessReason:
    case Prompt::NotTestedReason:
        return digit == choices().size(); // "other"
    default:
        return false;
    }
}

void SprayController::chooseInWords(const QString& word)
{
    const Prompt prompt = m_prompt;
    m_prompt = Prompt::None;
    switch (prompt) {
    case Prompt::VoidReason:
        voidLast(word);
        break;
    case Prompt::VoidRunReason:
        voidRun(word);
        break;
    case Prompt::NoAccessReason:
        storeWithoutSpray(model::Outcome::NotAccessible, word);
        break;
    case Prompt::NotTestedReason:
        storeWithoutSpray(model::Outcome::NotTested, word);
        break;
    case Prompt::SkipReason:
        if (m_call && !m_corrects)
            skip(word);
        break;
    case Prompt::OtherCondition:
    case Prompt::Jump:
    case Prompt::None:
        break;
    }
    emit changed();
}

/// The reason is on disk at once: a walk goes on after a night or a crash, and its reading says why it came
/// late.
void SprayController::skip(const QString& reason)
{
    const analysis::WalkStep call = *m_call;
    if (const Status kept = m_session.remark(m_session.logger().toStdString(), reason.toStdString(),
                                             call.point, std::string(analysis::kSkipped));
        !kept) {
        emit failed(kept.error());
        return;
    }
    emit said(Weight::News, tr("%1 comes again at the end (%2).").arg(call.number).arg(reason));
    advance();
}

void SprayController::setCondition(model::Condition condition)
{
    m_condition = condition;
    if (m_call && !m_corrects) {
        // The walk's own entry for that condition, so that its reading is found done or open.
        for (const analysis::WalkStep& step : m_walk)
            if (step.point == m_call->point && step.condition == condition)
                m_call = step;
    }
    emit changed();
}

void SprayController::markRise()
{
    if (!m_machine.markRise(now())) {
        refuse(tr("The first rise is marked while helium is on."));
        return;
    }
    m_delay.reset();
    emit said(Weight::News, tr("First rise after %1 s.").arg(QLocale().toString(*m_machine.delay(), 'f', 1)));
    emit changed();
}

void SprayController::goOnAnyway()
{
    m_tooEarly = false;
    if (m_heldByFeed) { // nothing is wrong on the chamber
        m_heldByFeed = false;
        m_machine.quiet();
    } else if (m_machine.goOnAnyway())
        emit said(Weight::Warning, tr("Going on before the helium cleared; the reading is marked."));
    else if (m_advice) {
        m_stayed = m_advice->kind != SprayAdvice::Kind::VoidRun;
        m_answered = std::exchange(m_advice, std::nullopt);
        emit said(Weight::News, m_stayed ? tr("Staying in order; the reading is marked.")
                                         : tr("The readings stay as they are."));
    }
    emit changed();
}

void SprayController::look(int by)
{
    if (m_walk.empty() || asksForTime())
        return;
    std::ptrdiff_t at = by > 0 ? -1 : 0;
    if (m_call)
        for (std::size_t i = 0; i < m_walk.size(); ++i)
            if (m_walk[i].point == m_call->point && m_walk[i].condition == m_call->condition)
                at = static_cast<std::ptrdiff_t>(i);
    const auto count = static_cast<std::ptrdiff_t>(m_walk.size());
    setCall(m_walk[static_cast<std::size_t>(((at + by) % count + count) % count)]);
}

void SprayController::callPoint(model::PointId point)
{
    const analysis::WalkStep* first = nullptr;
    for (const analysis::WalkStep& step : m_walk)
        if (step.point == point && (first == nullptr || (first->isDone() && !step.isDone())))
            first = &step;
    if (asksForTime())
        return;
    if (first != nullptr)
        setCall(*first);
    else
        callInItsRound(point);
}

/// A point that this round does not call is called in the one that does: a repair's round is left that way
/// too.
void SprayController::callInItsRound(model::PointId point)
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    const model::RoundId current =
        m_session.currentRound() == nullptr ? model::RoundId() : m_session.currentRound()->id;
    const model::Round* round = job.round(analysis::roundCalling(job, point, current));
    if (round == nullptr || round->id == current || m_machine.isAsking())
        return;
    const int number = round->number;
    m_session.setCurrentRound(round->id);
    callPoint(point);
    if (m_call)
        emit said(Weight::News, tr("Round %1 again: it calls point %2.").arg(number).arg(m_call->number));
}

std::optional<analysis::OpenRound> SprayController::leftOpen() const
{
    if (!isFinished() || !m_session.hasJob() || !m_session.job().isOpenForWork())
        return std::nullopt;
    const auto open = analysis::openRounds(m_session.job());
    return open.empty() ? std::nullopt : std::optional(open.front());
}

void SprayController::callSelected(model::PointId point)
{
    if (m_machine.isAsking()) {
        if (m_call && m_call->point == point)
            return;
        if (m_call)
            m_session.select(m_call->point);
        refuse(tr("Point %1 is being sprayed; its reading comes first, or J calls another.")
                   .arg(m_call ? m_call->number : 0));
        return;
    }
    callPoint(point);
}

/// A question is open: what would store an answer for the point waits until it is answered or left.
bool SprayController::asksForChoice()
{
    if (m_prompt == Prompt::None)
        return false;
    refuse(tr("Choose one of the numbers, or Esc to leave it."));
    return true;
}

/// A value from paper waits for its time: another call would lose it.
bool SprayController::asksForTime()
{
    if (m_field != Field::PaperTime)
        return false;
    refuse(tr("The time of the last value is asked for; Esc leaves it."));
    return true;
}

void SprayController::remark(const QString& text)
{
    m_remark = text.trimmed().toStdString();
    emit changed();
}

void SprayController::escape()
{
    ++m_doings;
    if (m_prompt != Prompt::None)
        m_prompt = Prompt::None;
    else if (!m_typed.empty())
        clearEntry();
    else if (m_field == Field::PaperTime) {
        m_field = Field::Peak;
        m_paper.pending.reset();
    } else if (isSideQuestion(m_field))
        leaveSideQuestion();
    else if (m_corrects)
        leaveCorrection();
    settle();
    m_notStored = false;
    forgetQuestion();
    emit changed();
}

// Behind them

void SprayController::reload()
{
    const model::Round* round = m_session.currentRound();
    m_walk =
        round == nullptr ? std::vector<analysis::WalkStep>() : analysis::walk(m_session.job(), round->id);
    if (m_session.hasJob()) {
        m_timing = analysis::sprayTiming(m_session.job(), m_session.object());
        m_delays = analysis::EarlierDelays(m_session.job(), m_timing.response);
        setTimes();
    }
    m_skipped = round == nullptr ? std::vector<analysis::SkippedPoint>()
                                 : analysis::skippedPoints(m_session.job(), round->id);
}

void SprayController::setTimes()
{
    const model::Round* round = m_session.currentRound();
    const Duration dwell =
        m_call && round != nullptr ? m_delays.dwellAt(m_call->point, round->id, m_timing) : m_timing.dwell;
    m_machine.setTimes({inSeconds(dwell), inSeconds(m_timing.wait), inSeconds(m_timing.response)});
}

bool SprayController::hasReading() const
{
    return m_call && std::any_of(m_walk.begin(), m_walk.end(), [this](const analysis::WalkStep& step) {
               return step.point == m_call->point && step.condition == m_condition && step.reading != nullptr;
           });
}

QString SprayController::skipReason(model::PointId point) const
{
    for (const analysis::SkippedPoint& each : m_skipped)
        if (each.point == point)
            return QString::fromStdString(each.reason);
    return {};
}

std::optional<analysis::WalkStep> SprayController::callAfter(model::PointId point) const
{
    std::vector<model::PointId> skipped;
    for (const analysis::SkippedPoint& each : m_skipped)
        skipped.push_back(each.point);
    return analysis::nextCall(m_walk, point, skipped);
}

/// A round begins, or another one is walked from now on.
void SprayController::startRound()
{
    ++m_doings;
    // Said before the walk began, that its readings come from paper still holds.
    const bool fromPaper = m_paper.isOn && m_round.isNil() && m_session.currentRound() != nullptr;
    m_round = m_session.currentRound() == nullptr ? model::RoundId() : m_session.currentRound()->id;
    m_storedBefore = 0;
    if (m_session.hasJob())
        for (const model::Reading& reading : m_session.job().readings)
            m_storedBefore = std::max(m_storedBefore, reading.sequence);
    m_background.reset();
    m_backgroundByHand = false;
    m_advice.reset();
    m_answered.reset();
    if (!fromPaper)
        m_paper = {};
    m_field = Field::Peak;
    m_prompt = Prompt::None;
    m_heldByFeed = false;
    m_corrects.reset();
    m_aside = {};
    m_target.reset();
    if (m_machine.isAsking())
        keepTrackOfSpray(false);
    m_machine.call(now()); // helium that was given clears first
    if (m_feed)
        m_feed->close(false);
    m_call.reset();
    clearReading();
    recallShields();
    reload();
    const model::Reading* last = m_session.lastReading();
    setCall(callAfter(last == nullptr ? model::PointId() : last->point));
    if (last == nullptr && m_call && !m_paper.isOn)
        warnOfOldDay();
}

void SprayController::followOrder()
{
    if (!m_machine.isAsking() && m_typed.empty() && !m_corrects && m_field == Field::Peak) {
        const model::Reading* last = m_session.lastReading();
        setCall(callAfter(last == nullptr ? model::PointId() : last->point));
    }
}

/// The record changed under the call: it stays as long as it is still to be made.
void SprayController::followRecord()
{
    reload();
    if (m_call && !m_corrects) {
        const auto same = std::find_if(m_walk.begin(), m_walk.end(), [this](const auto& step) {
            return step.point == m_call->point && step.condition == m_call->condition;
        });
        if (same == m_walk.end())
            m_call.reset();
        else
            m_call = *same;
    } else if (m_corrects) {
        m_call->reading = m_session.job().reading(*m_corrects);
    }
    if (!m_call)
        setCall(callAfter({}));
    emit changed();
}

void SprayController::setCall(std::optional<analysis::WalkStep> step)
{
    if (m_corrects) { // what it had put aside is left or gone on with
        m_corrects.reset();
        m_call = m_aside.call;
        m_remark = m_aside.remark;
        m_delay = m_aside.delay;
        m_aside = {};
    }
    const bool another = !step || !m_call || step->point != m_call->point;
    if (another) {
        m_tooEarly = false;
        ++m_doings;
        settle();
        if (!m_remark.empty() && m_call)
            emit said(
                Weight::Warning,
                tr("The remark on point %1 was not kept: nothing was stored there.").arg(m_call->number));
        if (m_machine.isAsking())
            keepTrackOfSpray(false);
        m_machine.call(now());
        if (m_machine.state() == CallState::Wait)
            m_ticker.start();
        clearReading();
        m_prompt = Prompt::None;
        m_field = Field::Peak;
        m_beneath = {};
        m_offeredDelay.reset();
        m_backgroundByHand = false;
        if (m_feed)
            m_feed->close(false);
    }
    m_call = step;
    m_isCalledAgain = m_call && m_call->isDone();
    m_condition = m_call ? m_call->condition : model::Condition::AtRest;
    m_conditionDetail.clear();
    if (m_call)
        m_session.select(m_call->point);
    emit changed();
    if (another)
        warnOfCuring();
}

/// A job typed in afterwards has readings of its day, not of today's.
void SprayController::warnOfOldDay()
{
    constexpr double kWeek = 7.0 * 24.0 * 3600.0; // s
    const Timestamp opened = m_session.job().opened;
    if (Timestamp::now().secondsSince(opened) > kWeek)
        emit said(Weight::Warning,
                  tr("This job is of %1; readings get the time of now. Those of a sheet of paper: "
                     "Job menu, Readings from a paper sheet.")
                      .arg(QString::fromStdString(opened.date())));
}

/// A filler that has not cured pulls into the leak: spraying now proves nothing.
void SprayController::warnOfCuring()
{
    if (!m_call)
        return;
    const Timestamp now = Timestamp::now();
    for (const model::Repair& repair : m_session.job().repairs) {
        const bool isHere =
            std::find(repair.points.begin(), repair.points.end(), m_call->point) != repair.points.end();
        if (isHere && repair.sprayableFrom && now < *repair.sprayableFrom) {
            emit said(Weight::Warning,
                      tr("The repair at point %1 still cures: it may be sprayed from %2 %3.")
                          .arg(m_call->number)
                          .arg(QString::fromStdString(repair.sprayableFrom->date()),
                               QString::fromStdString(repair.sprayableFrom->timeOfDay().substr(0, 5))));
        }
    }
}

void SprayController::tick()
{
    lookAtFeed();
    const CallState before = m_machine.state();
    if (m_machine.tick(now())) {
        m_tooEarly = false;
        if (m_feed && before == CallState::Spray)
            m_feed->sprayEnded(false);
        lookAtFeed();
        if (before == CallState::Spray) {
            emit soundWanted(SpraySound::DwellOver);
        } else if (before == CallState::Wait) {
            emit soundWanted(SpraySound::Go);
        }
        emit changed();
    }
    emit ticked();
    if (m_machine.state() == CallState::Go && !hasFeed())
        m_ticker.stop();
}

void SprayController::forgetQuestion()
{
    m_question.clear();
    m_questionAnswered = false;
    m_silenceAsked = false;
}

void SprayController::clearEntry()
{
    m_typed.clear();
    m_typedByFeed = false;
    forgetQuestion();
    m_exponentOffered = false;
}

void SprayController::refuse(const QString& sentence)
{
    m_caution = sentence;
    emit soundWanted(SpraySound::Refused);
    emit said(Weight::Warning, sentence);
    emit changed();
}

/// A caution is about what was just done; left or gone on from, it would speak of nothing.
void SprayController::settle()
{
    if (!m_caution.isEmpty())
        emit settled(std::exchange(m_caution, {}));
}

// After a crash or a battery change the round goes on at the exact point: what was being sprayed is kept
// aside.

void SprayController::keepTrackOfSpray(bool running)
{
    if (running && m_call)
        keepSprayNote(m_session.historyFile(), {m_session.job().id, m_call->number, Timestamp::now()});
    else
        dropSprayNote(m_session.historyFile());
}

void SprayController::resumeAfterStop()
{
    if (!m_session.hasJob() || m_session.currentRound() == nullptr)
        return;
    const auto note = takeSprayNote(m_session.historyFile(), m_session.job().id);
    if (!note)
        return;
    if (const model::TestPoint* point = m_session.job().sketch.pointNumbered(note->number))
        callPoint(point->id);
    m_machine.resume(now());
    m_ticker.start();
    emit said(Weight::Warning, tr("Stopped %1 while point %2 was sprayed; nothing was stored for it then.")
                                   .arg(QString::fromStdString(note->at.timeOfDay()))
                                   .arg(note->number));
}

} // namespace sealwalk::ui
