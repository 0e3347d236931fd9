// SPDX-License-Identifier: GPL-3.0-or-later
// The controller's part for what is asked beside the value: background, first rise, end of the range; and for
// what the reading still lacks.
#include "core/model/point_numbers.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/spray/spray_controller.h"

#include <QLocale>

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

namespace {

constexpr double kLongestDelay = 36'000.0; // s; ten hours of permeation are no slip of the finger, more are

std::optional<double> readSeconds(const std::string& typed)
{
    bool isNumber = false;
    const double value =
        QString::fromStdString(typed).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
    return isNumber && value >= 0.0 && value <= kLongestDelay ? std::optional(value) : std::nullopt;
}

} // namespace

/// Back to what was being typed before.
void SprayController::leaveSideQuestion()
{
    const Beneath beneath = std::exchange(m_beneath, {});
    m_field = beneath.field;
    m_offeredDelay.reset();
    clearEntry();
    m_typed = beneath.typed;
    m_typedByFeed = beneath.byFeed;
    emit changed();
}

std::optional<LeakRate> SprayController::enteredRate(const QString& otherwise)
{
    if (entered().state == EnteredNumber::State::Mantissa && !m_exponentOffered) {
        m_exponentOffered = true;
        m_question = exponentQuestion();
        emit changed();
        return std::nullopt;
    }
    const std::optional<LeakRate> rate = value();
    if (!rate)
        refuse(otherwise);
    return rate;
}

// Taped off

void SprayController::shield(const QString& numbers)
{
    if (!m_session.hasJob())
        return;
    const auto points = model::readPointNumbers(m_session.job().sketch, numbers.toStdString());
    if (!points) {
        refuse(render::inWords(points.error()));
        return;
    }
    m_shielded = *points;
    m_shieldedIn = m_session.job().id;
    const QString off = shielded();
    if (m_shielded.empty())
        emit said(Weight::News, tr("Nothing is taped off any more."));
    else if (off.isEmpty())
        emit said(Weight::Warning, tr("The point that is called is sprayed, so it counts as open."));
    else
        emit said(Weight::News, tr("Taped off until W says otherwise: %1.").arg(off));
    emit changed();
}

std::vector<model::PointId> SprayController::shieldedFrom(model::PointId called) const
{
    std::vector<model::PointId> points = m_shielded;
    std::erase_if(points, [&](model::PointId point) {
        // The tape is off where it is sprayed, or the condition says "taped"; and a point may be gone by now.
        return point == called || m_session.job().sketch.point(point) == nullptr;
    });
    return points;
}

QString SprayController::shielded() const
{
    return m_session.hasJob()
               ? QString::fromStdString(model::numbersOf(
                     m_session.job().sketch, shieldedFrom(m_call ? m_call->point : model::PointId())))
               : QString();
}

QString SprayController::allShielded() const
{
    return m_session.hasJob() ? QString::fromStdString(model::numbersOf(m_session.job().sketch, m_shielded))
                              : QString();
}

/// Stopped and started again within the hour, what stood offered before the next reading stands offered
/// again.
void SprayController::recallBackground()
{
    if (!m_session.hasJob())
        return;
    constexpr double kStillGood = 3600.0; // s
    const model::Reading* newest = nullptr;
    for (const model::Reading& reading : m_session.job().readings)
        if (reading.entry != model::Entry::Transcribed && (newest == nullptr || newest->at < reading.at))
            newest = &reading;
    const double age = newest == nullptr ? kStillGood : Timestamp::now().secondsSince(newest->at);
    if (age >= 0.0 && age < kStillGood)
        m_background = newest->background;
}

/// After a crash, or in another window, the tape is still where the last readings said. A point that was
/// sprayed itself is never among its own, so two readings tell more than one.
void SprayController::recallShields()
{
    const bool isSameJob = m_session.hasJob() && m_shieldedIn == m_session.job().id;
    if (isSameJob) // another round of the walk: tape does not come off by itself
        return;
    m_shielded.clear();
    m_shieldedIn = m_session.hasJob() ? m_session.job().id : model::JobId();
    if (!m_session.hasJob())
        return;
    const model::Reading* last = nullptr;
    const auto standing = m_session.job().standing(m_round);
    for (auto reading = standing.rbegin(); reading != standing.rend(); ++reading) {
        if ((*reading)->corrects) // it has the tape of an earlier moment
            continue;
        for (const model::PointId& point : (*reading)->shielded)
            if (last == nullptr || point == last->point)
                m_shielded.push_back(point);
        if (std::exchange(last, *reading) != nullptr)
            break;
    }
}

// Background

void SprayController::askBackground()
{
    if (m_field == Field::Background) {
        leaveSideQuestion();
        return;
    }
    if (asksForTime())
        return;
    m_beneath = {};
    m_field = Field::Background;
    m_typed.clear();
    emit changed();
}

void SprayController::enterBackground()
{
    const auto rate = enteredRate(tr("Type the background as in 1.5e-9; B leaves it as it was."));
    if (!rate)
        return;
    if (m_corrects) {
        m_correctedBackground = rate;
    } else {
        m_background = rate;
        m_backgroundByHand = true;
    }
    leaveSideQuestion();
}

// First rise

std::optional<Duration> SprayController::delay() const
{
    if (m_delay || m_corrects)
        return m_delay;
    const auto stamped = m_machine.delay();
    return stamped ? std::optional(seconds(*stamped)) : std::nullopt;
}

void SprayController::firstRise()
{
    // The needle may rise when the dwell is over; a value that stands there already is told with its seconds.
    const bool isReading =
        m_machine.state() == CallState::Read && m_typed.empty() && !delay() && m_field == Field::Peak;
    if (!m_corrects && !m_paper.isOn && (m_machine.state() == CallState::Spray || isReading)) {
        markRise();
        return;
    }
    if (asksForChoice())
        return;
    if (m_field == Field::Delay) {
        leaveSideQuestion();
        return;
    }
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    if (isSideQuestion(m_field))
        leaveSideQuestion();
    m_beneath = {m_field, m_typed, m_typedByFeed};
    clearEntry();
    m_field = Field::Delay;
    m_offeredDelay = m_corrects || m_paper.isOn ? std::nullopt : m_machine.sinceStart(now());
    emit changed();
}

void SprayController::enterDelay()
{
    const std::optional<double> typed = m_typed.empty() ? m_offeredDelay : readSeconds(m_typed);
    if (!typed) {
        refuse(tr("Type the seconds from helium on to the first rise, as in 1.5; Esc leaves it."));
        return;
    }
    const auto since = m_corrects || m_paper.isOn ? std::nullopt : m_machine.sinceStart(now());
    if (constexpr double kReaction = 1.0; since && *typed > *since + kReaction) {
        refuse(tr("Helium went on %1 s ago; the first rise cannot be %2 s after that.")
                   .arg(QLocale().toString(*since, 'f', 0), QLocale().toString(*typed, 'f', 1)));
        return;
    }
    m_delay = seconds(*typed);
    if (!m_corrects && !m_paper.isOn && !m_machine.keepOnUntil(*typed))
        emit said(Weight::Warning,
                  tr("First rise after %1 s, when helium was off again: it came a long way, or "
                     "from a leak elsewhere.")
                      .arg(QLocale().toString(*typed, 'f', 1)));
    else
        emit said(Weight::News, tr("First rise after %1 s.").arg(QLocale().toString(*typed, 'f', 1)));
    leaveSideQuestion();
}

// Above the range

void SprayController::overRange()
{
    if (asksForChoice())
        return;
    if (!m_call) {
        refuse(tr("No point is called."));
        return;
    }
    const auto known = m_session.job().setup.rangeTop;
    const bool isFromHere = known && known == m_rangeEnd; // typed at this round, and may have been mistyped
    if (known && !(isFromHere && m_corrects)) {
        storeAboveRange(*known, {});
    } else if (m_rangeEnd && !m_corrects) {
        storeAboveRange(*m_rangeEnd, {});
    } else if (!asksForTime()) {
        m_beneath = {};
        m_field = Field::RangeEnd;
        clearEntry();
        emit changed();
    }
}

void SprayController::enterRangeEnd()
{
    const auto rate = enteredRate(tr("Type the highest the detector can show, as in 1e-3; Esc leaves it."));
    if (!rate)
        return;
    const EnteredNumber number = entered();
    const std::string typed =
        number.state == EnteredNumber::State::Complete ? m_typed : withExponent(number, m_exponent).readBack;
    const auto before = std::exchange(m_rangeEnd, rate);
    leaveSideQuestion();
    storeAboveRange(*rate, typed + " " + m_session.job().setup.detectorUnit);
    // Prepare asks for the same; next time, and at the next round, it is known.
    model::Setup setup = m_session.job().setup;
    if (setup.rangeTop && setup.rangeTop != before)
        return;
    setup.rangeTop = rate;
    if (const Status kept = m_session.changeSetup(setup); !kept)
        emit failed(kept.error());
}

void SprayController::storeAboveRange(LeakRate end, const std::string& entered)
{
    ReadingDraft draft = draftOf(model::Outcome::AboveRange);
    draft.peak = end;
    draft.entered = entered;
    storeDraft(std::move(draft));
}

// What is lacking

std::vector<analysis::Gap> SprayController::gapsOf(const model::Reading& reading) const
{
    auto gaps = analysis::gapsOf(reading, m_timing.response, m_delays.before(reading));
    if (reading.entry == model::Entry::Transcribed) // paper has no clock
        std::erase(gaps, analysis::Gap::NotTimed);
    return gaps;
}

std::optional<model::Reading> SprayController::gapsAreOf() const
{
    if (!m_call || m_session.currentRound() == nullptr || m_prompt != Prompt::None || m_corrects)
        return std::nullopt;
    const bool isRead = m_machine.state() == CallState::Read;
    if (!isRead && (m_typed.empty() || m_field != Field::Peak))
        return std::nullopt;
    ReadingDraft draft = draftOf(model::Outcome::NoResponse);
    if (m_offer.background)
        draft.background = m_offer.background;
    if (m_paper.isOn)
        draft.entry = model::Entry::Transcribed;
    return m_session.readingOf(draft);
}

QString SprayController::gapsSoFar() const
{
    const auto reading = gapsAreOf();
    if (!reading)
        return {};
    const auto gaps = gapsOf(*reading);
    QStringList cures;
    for (const analysis::Gap gap : gaps)
        cures << (gap == analysis::Gap::NoBackground ? tr("B types it")
                  : gap == analysis::Gap::NotTimed   ? tr("Space sprays")
                                                     : tr("Space sprays again"));
    if (cures.isEmpty())
        return {};
    QString words = gapsInWords(*reading);
    words[0] = words[0].toUpper();
    return tr("%1: %2, or the review will ask.").arg(words, cures.join(QStringLiteral(", ")));
}

QString SprayController::gapsInWords(const model::Reading& reading) const
{
    if (!m_session.hasJob())
        return {};
    QStringList words;
    for (const analysis::Gap gap : gapsOf(reading))
        words << render::inWords(analysis::gapWords(gap, reading, m_timing, m_delays.before(reading)));
    return words.join(QStringLiteral("; "));
}

} // namespace sealwalk::ui
