// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_controller.h"

#include "core/analysis/slips.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_words.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kTickMilliseconds = 100;
constexpr int kRetryMilliseconds = 400; // another program still holds the history
constexpr double kMillisecondsPerSecond = 1000.0;

} // namespace

SprayController::SprayController(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{
    m_clock.start();
    m_ticker.setInterval(kTickMilliseconds);
    connect(&m_ticker, &QTimer::timeout, this, &SprayController::tick);
    m_retry.setInterval(kRetryMilliseconds);
    connect(&m_retry, &QTimer::timeout, this, &SprayController::tryAgain);
    connect(&m_session, &JobSession::jobChanged, this, [this] {
        m_machine = SprayMachine();
        m_rangeEnd.reset();
        startRound();
        recallBackground();
        resumeAfterStop();
    });
    connect(&m_session, &JobSession::roundChanged, this, [this] {
        const model::Round* round = m_session.currentRound();
        if (round == nullptr || round->id != m_round)
            startRound();
        else
            followRecord(); // the same one in another order
    });
    for (const auto signal :
         {&JobSession::sketchChanged, &JobSession::setupChanged, &JobSession::recordsChanged})
        connect(&m_session, signal, this, &SprayController::followRecord);
    connect(&m_session, &JobSession::findingsChanged, this, &SprayController::lookForAdvice);
    connect(&m_session, &JobSession::stateChanged, this, [this] {
        if (m_paper.isOn && m_session.hasJob() && !m_session.job().isOpenForWork())
            setTranscribing(false); // the sheet is typed in
    });
    startRound();
    recallBackground();
    resumeAfterStop();
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

int SprayController::calls() const
{
    return static_cast<int>(std::count_if(m_walk.begin(), m_walk.end(),
                                          [](const analysis::WalkStep& step) { return step.isAsked; }));
}

int SprayController::done() const
{
    return static_cast<int>(std::count_if(m_walk.begin(), m_walk.end(), [](const analysis::WalkStep& step) {
        return step.isAsked && step.isDone();
    }));
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
    forgetQuestion();
    m_exponentOffered = false;
    emit changed();
}

void SprayController::stepExponent(int by)
{
    if (m_field == Field::Delay || m_field == Field::PaperTime)
        return;
    const EnteredNumber number = entered();
    if (number.state == EnteredNumber::State::Complete)
        m_typed = withExponent(number, *number.exponent + by).readBack;
    else if (number.state == EnteredNumber::State::Mantissa)
        m_exponent = std::clamp(m_exponent + by, -kLargestEnteredExponent, kLargestEnteredExponent);
    else
        return;
    m_typedByFeed = false;
    forgetQuestion();
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
    if (asksForChoice())
        return;
    if (const auto open = leftOpen(); open && m_typed.empty()) {
        m_session.setCurrentRound(open->round->id);
        return;
    }
    if (m_field == Field::Background)
        enterBackground();
    else if (m_field == Field::Delay)
        enterDelay();
    else if (m_field == Field::RangeEnd)
        enterRangeEnd();
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
        const auto background = m_corrects ? draftOf(model::Outcome::Value).background : m_background;
        if (const auto doubt = analysis::slip(m_session.job(), m_session.currentRound()->id, m_call->point,
                                              *rate, background, m_corrects)) {
            m_question = render::inWords(*doubt) + QLatin1Char(' ') + tr("Enter again keeps it.");
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

} // namespace sealwalk::ui
