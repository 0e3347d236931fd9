// SPDX-License-Identifier: GPL-3.0-or-later
// What the controller does with a live feed: offers, keeps traces, holds and goes on.
#include "core/report/shown_unit.h"
#include "ui/feed/feed_words.h"
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_feed.h"

namespace sealwalk::ui {

namespace {

constexpr double kSayZeroEvery = 120.0; // s

/// Three digits, as a detector shows them: "2.93e-4", and "2.50e+1": an exponent without its plus is taken
/// as negative.
std::string asTyped(double number)
{
    const QString text = QString::number(number, 'e', 2);
    const auto e = text.indexOf(QLatin1Char('e'));
    const int exponent = text.mid(e + 1).toInt();
    return text.left(e).toStdString() + (exponent > 0 ? "e+" : "e") + std::to_string(exponent);
}

} // namespace

void SprayController::setFeed(FeedSession& feed)
{
    m_feed = std::make_unique<SprayFeed>(feed);
    m_feedWasLive = feed.isLive();
    connect(&feed, &FeedSession::stateChanged, this, &SprayController::onFeedState);
    onFeedState();
}

bool SprayController::hasFeed() const
{
    return m_feed && m_feed->feed().isOn();
}

void SprayController::onFeedState()
{
    const FeedSession& feed = m_feed->feed();
    if (feed.isOn())
        m_ticker.start(); // the trace moves, and the background is watched
    if (m_feedWasLive && !feed.isLive()) {
        m_feed->interrupt();
        m_machine.hold();
        m_heldByFeed = m_machine.state() == CallState::Hold;
        if (feed.isOn()) {
            emit soundWanted(SpraySound::FeedLost);
            emit said(Weight::Warning, feedStateSentence(feed));
        }
    } else if (!m_feedWasLive && feed.isLive()) {
        emit said(Weight::News, feedStateSentence(feed));
    }
    if (m_heldByFeed && (feed.isLive() || !feed.isOn())) {
        m_heldByFeed = false;
        m_machine.quiet();
    }
    m_feedWasLive = feed.isLive();
    lookAtFeed();
    emit changed();
}

/// Ten times a second while there is a feed.
void SprayController::lookAtFeed()
{
    if (!m_feed)
        return;
    m_machine.setClear(m_feed->isBackgroundBack());
    if (m_machine.state() == CallState::Go && m_feed->isBackgroundRising()) {
        m_machine.hold();
        emit soundWanted(SpraySound::Hold);
        emit changed();
    } else if (m_machine.state() == CallState::Hold && !m_heldByFeed && m_feed->feed().isLive() &&
               !m_feed->isBackgroundRising()) {
        m_machine.quiet();
        emit changed();
    }
    warnOfZero();
    FeedOffer offer;
    const auto figures = m_feed->figures();
    const bool isAsked = m_machine.state() == CallState::Read || m_machine.state() == CallState::Spray;
    if (figures && isAsked && m_session.hasJob() && !m_corrects) {
        offer.atZero = figures->background && !(figures->background->rate > 0.0);
        if (figures->background && !offer.atZero)
            offer.background = LeakRate::fromSi(figures->background->rate);
        if (figures->delay)
            offer.delay = seconds(*figures->delay);
        if (m_feed->knowsCleanUp() && figures->cleanUp)
            offer.cleanUp = seconds(*figures->cleanUp);
        offer.sawNoRise = figures->background && !figures->delay;
        if (!offer.sawNoRise && figures->highest->rate > 0.0)
            offer.peak = LeakRate::fromSi(figures->highest->rate);
    }
    offer.wasLost = isAsked && m_feed->wasInterrupted();
    if (offer == m_offer)
        return;
    m_offer = offer;
    emit offerChanged();
}

/// A detector that was zeroed shows what comes above its background, and no background: nobody would find
/// that in the record later. Said once in a while, as noise swings about zero.
void SprayController::warnOfZero()
{
    if (m_machine.state() != CallState::Go || !m_feed->isAtZero() || !m_session.hasJob())
        return;
    if (m_zeroSaid && now() - *m_zeroSaid < kSayZeroEvery)
        return;
    m_zeroSaid = now();
    emit said(Weight::Warning,
              tr("The detector shows zero or below. If it was zeroed, its background cannot be "
                 "told: B takes it typed, else the reading is marked."));
    emit changed();
}

std::optional<LeakRate> SprayController::offered() const
{
    const bool isFree = m_typed.empty() && m_prompt == Prompt::None && m_field == Field::Peak;
    return isFree && m_machine.state() == CallState::Read ? m_offer.peak : std::nullopt;
}

bool SprayController::takeHighest()
{
    lookAtFeed();
    const FeedOffer& offer = m_offer;
    if (!offer.peak) {
        refuse(!hasFeed()          ? tr("There is no feed; type the highest value.")
               : offer.sawNoRise   ? tr("The feed saw no rise: press N for no response, or type the value.")
               : !m_feed->isOpen() ? tr("The feed's highest is taken after a spray.")
               : offer.wasLost     ? tr("The feed was lost before it saw a rise; type the value.")
                                   : tr("The feed gave no value during this spray; type it."));
        return false;
    }
    const model::Setup& setup = m_session.job().setup;
    if (setup.rangeTop && *offer.peak >= *setup.rangeTop) {
        refuse(tr("The feed reached the end of the detector's range: press + for over range."));
        return false;
    }
    setTyped(asTyped(report::shownUnit(setup, setup.detectorUnit).number(*offer.peak)));
    m_typedByFeed = true;
    emit changed();
    return true;
}

/// What the feed adds to a reading, however its value was given.
void SprayController::addFeed(ReadingDraft& draft)
{
    if (!m_feed || !m_feed->isOpen() || draft.corrects)
        return;
    lookAtFeed();
    const bool answered = draft.outcome == model::Outcome::Value ||
                          draft.outcome == model::Outcome::NoResponse ||
                          draft.outcome == model::Outcome::AboveRange;
    if (!answered)
        return;
    // In the record's language, whatever the window speaks.
    const auto mark = [&draft](std::string_view words) {
        draft.remark += (draft.remark.empty() ? "" : "; ") + std::string(words);
    };
    if (m_offer.background && !m_backgroundByHand)
        draft.background = m_offer.background;
    if (m_offer.atZero && !m_backgroundByHand)
        mark("the display showed zero or below before: no background");
    if (m_offer.wasLost && m_typedByFeed)
        mark("the feed was lost during the spray: the highest it saw");
    if (!draft.delay && draft.outcome != model::Outcome::NoResponse)
        draft.delay = m_offer.delay;
    if (draft.outcome != model::Outcome::NoResponse)
        draft.cleanUp = m_offer.cleanUp;
    const bool saysSo = draft.outcome == model::Outcome::Value        ? m_typedByFeed
                        : draft.outcome == model::Outcome::NoResponse ? m_offer.sawNoRise
                                                                      : false;
    if (saysSo)
        draft.entry = model::Entry::Feed;
    storage::Trace trace = m_feed->cut();
    if (trace.times.empty())
        return;
    draft.trace = std::to_string(m_call ? m_call->number : 0) + " " + Timestamp::now().text();
    draft.samples = std::move(trace);
}

} // namespace sealwalk::ui
