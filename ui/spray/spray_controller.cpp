// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_controller.h"

#include "core/analysis/slips.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/shown_unit.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_words.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kTickMilliseconds = 100;
constexpr double kMillisecondsPerSecond = 1000.0;

} // namespace

SprayController::SprayController(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{
    m_clock.start();
    m_ticker.setInterval(kTickMilliseconds);
    connect(&m_ticker, &QTimer::timeout, this, &SprayController::tick);
    const auto restart = [this] {
        m_skipped.clear();
        m_background.reset();
        m_advice.reset();
        m_answered.reset();
        m_paper = {};
        m_machine = SprayMachine();
        m_heldByFeed = false;
        if (m_feed)
            m_feed->close(false);
        clearEntry();
        reload();
        setCall(
            analysis::nextCall(m_walk, lastStored() == nullptr ? model::PointId() : lastStored()->point, {}));
        resumeAfterStop();
    };
    connect(&m_session, &JobSession::jobChanged, this, restart);
    connect(&m_session, &JobSession::roundChanged, this, restart);
    for (const auto signal :
         {&JobSession::sketchChanged, &JobSession::setupChanged, &JobSession::recordsChanged})
        connect(&m_session, signal, this, [this] {
            reload();
            if (m_call) {
                const auto same =
                    std::find_if(m_walk.begin(), m_walk.end(), [this](const analysis::WalkStep& step) {
                        return step.point == m_call->point && step.condition == m_call->condition;
                    });
                m_call = same == m_walk.end() ? std::nullopt : std::optional(*same);
            }
            if (!m_call && !m_corrects)
                setCall(analysis::nextCall(m_walk, {}, m_skipped));
            emit changed();
        });
    connect(&m_session, &JobSession::findingsChanged, this, &SprayController::lookForAdvice);
    connect(&m_session, &JobSession::selectionChanged, this, [this](model::PointId point) {
        if (!m_call || m_call->point != point)
            callPoint(point);
    });
    restart();
}

SprayController::~SprayController() = default;

double SprayController::now() const
{
    return static_cast<double>(m_clock.elapsed()) / kMillisecondsPerSecond;
}

std::optional<LeakRate> SprayController::value() const
{
    EnteredNumber number = entered();
    if (number.state == EnteredNumber::State::Mantissa && m_exponentOffered)
        number = withExponent(number, m_exponent);
    if (number.state != EnteredNumber::State::Complete || !m_session.hasJob())
        return std::nullopt;
    const model::Setup& setup = m_session.job().setup;
    if (!leakRateUnit(setup.detectorUnit))
        return std::nullopt;
    return LeakRate::fromSi(*number.value / report::shownUnit(setup, setup.detectorUnit).perSi);
}

int SprayController::done() const
{
    return static_cast<int>(std::count_if(m_walk.begin(), m_walk.end(),
                                          [](const analysis::WalkStep& step) { return step.isDone(); }));
}

const model::Reading* SprayController::lastStored() const
{
    return m_session.lastReading();
}

QStringList SprayController::choices() const
{
    return choicesFor(m_prompt);
}

// Typing

void SprayController::setTyped(const std::string& typed)
{
    if (typed == m_typed)
        return;
    m_typed = typed;
    m_typedByFeed = false;
    m_question.clear();
    m_questionAnswered = false;
    m_exponentOffered = false;
    emit changed();
}

void SprayController::stepExponent(int by)
{
    const EnteredNumber number = entered();
    if (number.state == EnteredNumber::State::Complete)
        m_typed = withExponent(number, *number.exponent + by).readBack;
    else if (number.state == EnteredNumber::State::Mantissa)
        m_exponent = std::clamp(m_exponent + by, -kLargestEnteredExponent, kLargestEnteredExponent);
    else
        return;
    m_typedByFeed = false;
    m_question.clear();
    m_questionAnswered = false;
    emit changed();
}

void SprayController::enter()
{
    if (m_prompt == Prompt::Jump) {
        const model::TestPoint* point =
            m_session.hasJob() ? m_session.job().sketch.pointNumbered(QString::fromStdString(m_typed).toInt())
                               : nullptr;
        const QString wanted = QString::fromStdString(m_typed);
        m_prompt = Prompt::None;
        clearEntry();
        if (point == nullptr || point->retired)
            refuse(tr("There is no point %1 in this object.").arg(wanted));
        else
            callPoint(point->id);
        return;
    }
    if (m_prompt != Prompt::None) {
        refuse(tr("Choose one of the numbers, or Esc to leave it."));
        return;
    }
    if (m_field == Field::Background)
        enterBackground();
    else if (m_field == Field::PaperTime)
        enterPaperTime();
    else
        enterNumber();
}

void SprayController::enterNumber()
{
    if (!m_call) {
        refuse(m_walk.empty() ? tr("No point is called; Sketch lays points.")
                              : tr("Every point of this round is done; J calls one again."));
        return;
    }
    // The feed's highest stands offered beside the field: Enter takes and stores it.
    if (offered() && !takeHighest())
        return;
    const EnteredNumber number = entered();
    switch (number.state) {
    case EnteredNumber::State::Empty:
        refuse(m_offer.sawNoRise ? tr("The feed saw no rise: press N for no response, or type the value.")
                                 : tr("Type the highest value, or press N for no response."));
        return;
    case EnteredNumber::State::Zero:
        refuse(tr("Nothing is zero: press N for no response."));
        return;
    case EnteredNumber::State::Opened:
        refuse(tr("The exponent is missing, as in 3.2e-7."));
        return;
    case EnteredNumber::State::Wrong:
        refuse(tr("This is not a value; write it as 3.2e-7."));
        return;
    case EnteredNumber::State::Mantissa:
        if (!m_exponentOffered) {
            m_exponentOffered = true; // never stored without an exponent that was seen
            m_question = exponentQuestion();
            emit changed();
            return;
        }
        break;
    case EnteredNumber::State::Complete:
        break;
    }
    const std::optional<LeakRate> rate = value();
    if (!rate) {
        refuse(tr("The detector's unit %1 does not give a leak rate; Prepare sets it.")
                   .arg(QString::fromStdString(m_session.job().setup.detectorUnit)));
        return;
    }
    if (!m_questionAnswered) {
        if (const auto doubt = analysis::slip(m_session.job(), m_session.currentRound()->id, m_call->point,
                                              *rate, m_background)) {
            m_question = QString::fromStdString(*doubt) + QLatin1Char(' ') + tr("Enter again keeps it.");
            m_questionAnswered = true;
            emit soundWanted(SpraySound::Refused);
            emit changed();
            return;
        }
    }
    m_exponent = number.exponent.value_or(m_exponent);
    ReadingDraft draft = draftOf(model::Outcome::Value);
    draft.peak = rate;
    const EnteredNumber shown =
        number.state == EnteredNumber::State::Mantissa ? withExponent(number, m_exponent) : number;
    draft.entered = (number.state == EnteredNumber::State::Complete ? m_typed : shown.readBack) + " " +
                    m_session.job().setup.detectorUnit;
    storeDraft(std::move(draft));
}

QString SprayController::exponentQuestion() const
{
    const QString sign = m_exponent > 0 ? QStringLiteral("+") : QString();
    return tr("Enter again takes e%1; Up and Down change it.").arg(sign + QString::number(m_exponent));
}

void SprayController::enterBackground()
{
    const std::optional<LeakRate> rate = value();
    const EnteredNumber number = entered();
    if (number.state == EnteredNumber::State::Mantissa && !m_exponentOffered) {
        m_exponentOffered = true;
        m_question = exponentQuestion();
        emit changed();
        return;
    }
    if (!rate) {
        refuse(tr("Type the background as in 1.5e-9; B leaves it as it was."));
        return;
    }
    m_background = rate;
    m_backgroundByHand = true;
    m_field = Field::Peak;
    clearEntry();
    emit changed();
}

// Storing

ReadingDraft SprayController::draftOf(model::Outcome outcome) const
{
    ReadingDraft draft;
    draft.point = m_call ? m_call->point : model::PointId();
    draft.outcome = outcome;
    draft.condition = m_condition;
    draft.conditionDetail = m_conditionDetail;
    draft.background = m_background;
    if (const auto sprayed = m_machine.sprayed(now()))
        draft.dwell = seconds(*sprayed);
    if (const auto delay = m_machine.delay())
        draft.delay = seconds(*delay);
    draft.outOfTurn = m_machine.isOutOfTurn() || m_stayed;
    draft.gentle = m_gentle;
    draft.sprayedAt = m_sprayedAt;
    draft.remark = m_remark;
    if (m_corrects) {
        draft.corrects = m_corrects;
        draft.reason = tr("entry corrected").toStdString();
        // What was measured stays; only the number was wrong.
        if (const model::Reading* old = m_session.job().reading(*m_corrects)) {
            draft.dwell = old->dwell;
            draft.delay = old->delay;
            draft.background = m_background ? m_background : old->background;
            draft.sprayedAt = old->at;
            draft.condition = old->condition;
            draft.conditionDetail = old->conditionDetail;
            draft.outOfTurn = old->outOfTurn;
        }
    }
    return draft;
}

void SprayController::storeDraft(ReadingDraft draft)
{
    if (asksForPaperTime(draft))
        return;
    const bool correction = draft.corrects.has_value();
    const int number = m_call ? m_call->number : 0;
    addFeed(draft);
    const auto stored = m_session.store(draft);
    if (!stored) {
        emit soundWanted(SpraySound::Refused);
        emit said(Weight::Error, tr("Not stored: %1").arg(QString::fromStdString(stored.error().message)));
        return; // what was typed stays in the field
    }
    const bool heliumWasOn = m_machine.sprayed(now()).has_value();
    clearEntry();
    m_remark.clear();
    m_sprayedAt.reset();
    m_stayed = false;
    m_gentle = false;
    if (!correction) {
        m_machine.stored(now());
        if (m_feed)
            m_feed->close(true);
        m_backgroundByHand = false;
        if (heliumWasOn)
            keepTrackOfSpray(false);
    }
    const auto limit = m_session.job().limitOf(stored->point);
    const bool over = stored->peak && limit && *stored->peak > *limit;
    emit soundWanted(over ? SpraySound::StoredOver : SpraySound::Stored);
    emit said(Weight::News, correction ? tr("%1 corrected; the old entry stays in the record.").arg(number)
                                       : tr("%1 stored.").arg(number));
    advance();
}

void SprayController::advance()
{
    const model::PointId last = m_call ? m_call->point : model::PointId();
    reload();
    setCall(analysis::nextCall(m_walk, last, m_skipped));
    if (!m_call && !m_walk.empty())
        emit said(Weight::News, tr("Every point of this round is done."));
}

void SprayController::noResponse()
{
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    storeDraft(draftOf(model::Outcome::NoResponse));
}

void SprayController::overRange()
{
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    if (!m_session.job().setup.rangeTop) {
        refuse(tr("The end of the detector's range is not known; Prepare asks for it."));
        return;
    }
    ReadingDraft draft = draftOf(model::Outcome::AboveRange);
    draft.peak = m_session.job().setup.rangeTop;
    storeDraft(std::move(draft));
}

void SprayController::correctLast()
{
    const model::Reading* last = lastStored();
    if (last == nullptr) {
        refuse(tr("Nothing is stored yet that could be corrected."));
        return;
    }
    const model::TestPoint* point = m_session.job().sketch.point(last->point);
    m_corrects = last->id;
    m_field = Field::Peak;
    m_typed.clear();
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

void SprayController::voidLast(const QString& reason)
{
    const model::Reading* last = lastStored();
    if (last == nullptr) {
        refuse(tr("Nothing is stored yet that could be void."));
        return;
    }
    const model::PointId point = last->point;
    const Status status = m_session.voidReadings({last->id}, reason.toStdString());
    if (!status) {
        refuse(QString::fromStdString(status.error().message));
        return;
    }
    reload();
    callPoint(point);
    emit said(Weight::News, tr("The last reading is void (%1) and called again.").arg(reason));
}

} // namespace sealwalk::ui
