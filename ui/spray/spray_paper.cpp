// SPDX-License-Identifier: GPL-3.0-or-later
// The controller's part for readings that were written on paper first: no clock, but a time for each.
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_words.h"
#include "ui/widgets/moment_field.h"

#include <QDateTime>
#include <QRegularExpression>
#include <QTime>

#include <cmath>

namespace sealwalk::ui {

namespace {

/// "1432", "932", "14:32", "9.32"; none for anything else: a rate typed here by mistake is no time.
std::optional<QTime> readTime(const QString& text)
{
    static const QRegularExpression clock(QStringLiteral("^(\\d{1,2})[:.]?(\\d{2})$"));
    const auto found = clock.match(text.trimmed());
    if (!found.hasMatch())
        return std::nullopt;
    const QTime time(found.captured(1).toInt(), found.captured(2).toInt());
    return time.isValid() ? std::optional(time) : std::nullopt;
}

Timestamp stampOf(const QDateTime& at)
{
    return {at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
}

} // namespace

void SprayController::setTranscribing(bool on, QDate day, std::optional<Duration> dwell)
{
    ++m_doings;
    m_paper = {};
    m_paper.isOn = on;
    m_paper.day = day.isValid() ? day : QDate::currentDate();
    m_paper.dwell = dwell;
    m_field = Field::Peak;
    m_beneath = {};
    clearEntry();
    m_delay.reset();
    if (m_machine.isAsking())
        keepTrackOfSpray(false);
    m_machine.call(now()); // a spray that ran is left
    if (m_machine.state() == CallState::Wait)
        m_ticker.start();
    if (m_feed)
        m_feed->close(false);
    emit changed();
}

bool SprayController::asksForPaperTime(const ReadingDraft& draft)
{
    if (!m_paper.isOn || draft.corrects || m_paper.hasTime)
        return false;
    if (m_field == Field::PaperTime) {
        refuse(tr("The time of the last value is asked for; Esc leaves it."));
        return true;
    }
    m_paper.pending = draft;
    m_paper.pending->entry = model::Entry::Transcribed;
    m_paper.pending->dwell = wasSprayed(draft.outcome) ? m_paper.dwell : std::nullopt;
    m_paper.pending->delay = m_delay;
    if (!wasSprayed(draft.outcome)) {        // nobody notes when that was
        constexpr std::int64_t kNext = 1000; // ms, as two of one minute
        storePaper(m_paper.last
                       ? Timestamp{m_paper.last->utcMilliseconds + kNext, m_paper.last->offsetMinutes}
                       : stampOf(QDateTime(m_paper.day, QTime(0, 0))),
                   ", without a time of its own");
        return true;
    }
    m_field = Field::PaperTime;
    clearEntry();
    emit changed();
    return true;
}

std::optional<Timestamp> SprayController::paperTimeOffered() const
{
    if (!m_paper.last)
        return std::nullopt;
    const double pace = std::ceil(inSeconds(analysis::walkTime(m_timing, 1)));
    return Timestamp{m_paper.last->utcMilliseconds + static_cast<std::int64_t>(pace) * 1000,
                     m_paper.last->offsetMinutes};
}

void SprayController::enterPaperTime()
{
    if (!m_paper.pending) {
        m_field = Field::Peak;
        emit changed();
        return;
    }
    Timestamp at;
    const auto offered = paperTimeOffered();
    const bool isAssumed = m_typed.empty() && offered;
    if (isAssumed) {
        at = *offered;
    } else {
        const auto time = readTime(QString::fromStdString(m_typed));
        if (!time) {
            refuse(tr("Type the time on the paper in four digits, as 1432."));
            return;
        }
        at = stampOf(QDateTime(m_paper.day, *time));
        // Two in one minute keep their order; a clock that goes back has passed midnight.
        if (m_paper.last && at.utcMilliseconds <= m_paper.last->utcMilliseconds) {
            constexpr std::int64_t kMinute = 60'000;
            if (m_paper.last->utcMilliseconds - at.utcMilliseconds < kMinute) {
                at.utcMilliseconds = m_paper.last->utcMilliseconds + 1000;
            } else if (m_paper.last->utcMilliseconds - at.utcMilliseconds > 12 * 60 * kMinute) {
                m_paper.day = m_paper.day.addDays(1);
                at = stampOf(QDateTime(m_paper.day, *time));
            } else if (m_paper.doubted != at) { // a slip, or a point that was sprayed again out of order
                m_paper.doubted = at;
                refuse(tr("%1 is before %2, the time typed last; Enter again takes it all the same.")
                           .arg(QString::fromStdString(at.timeOfDay().substr(0, 5)),
                                QString::fromStdString(m_paper.last->timeOfDay().substr(0, 5))));
                return;
            }
        }
    }
    if (at > Timestamp::now()) {
        refuse(tr("This time has not come yet; the sheet is of %1.").arg(m_paper.day.toString(Qt::ISODate)));
        return;
    }
    storePaper(at, isAssumed ? ", its time taken from the usual pace" : "");
}

void SprayController::storePaper(Timestamp at, const std::string& ofTime)
{
    ReadingDraft draft = *m_paper.pending;
    draft.sprayedAt = at;
    // Said before the value, after it, or when the time was asked for.
    draft.delay = m_delay;
    const ReadingDraft said = draftOf(draft.outcome);
    draft.remark = bothWords(said.remark, entryWords() + ofTime);
    draft.shielded = said.shielded;
    m_paper.hasTime = true;
    storeDraft(std::move(draft)); // at once or later; what was typed stands until then
    m_paper.hasTime = false;
}

} // namespace sealwalk::ui
