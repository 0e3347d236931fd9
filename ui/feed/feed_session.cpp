// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/feed_session.h"

#include "ui/feed/feed_link.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr double kNanosecond = 1e-9;
constexpr double kMillisecondsPerSecond = 1000.0;
constexpr double kGapsToSilence = 3.0;
constexpr double kLongestGap = 20.0;     // s; a longer one was a silence, not a habit
constexpr int kLookEvery = 4;            // of the silent time
constexpr int kTurnEvery = 100;          // ms
constexpr double kAway = 0.35;           // s between two turns: the loop was away
constexpr double kKeptWhenFull = 3600.0; // s of trace carried over when the oldest goes

} // namespace

FeedSession::FeedSession(QObject* parent)
    : QObject(parent)
    , m_trace(std::make_shared<report::LongSeries>())
{
    m_clock.start();
    m_retry.setSingleShot(true);
    connect(&m_retry, &QTimer::timeout, this, &FeedSession::connectLink);
    connect(&m_watch, &QTimer::timeout, this, &FeedSession::look);
    m_turns.setInterval(kTurnEvery);
    connect(&m_turns, &QTimer::timeout, this, &FeedSession::turn);
    setPatience({});
}

FeedSession::~FeedSession()
{
    dropLink();
}

void FeedSession::setPatience(const FeedPatience& patience)
{
    m_patience = patience;
    m_watch.setInterval(std::max(1, patience.silentAfter / kLookEvery));
    m_nextRetry = patience.firstRetry;
}

void FeedSession::setBasis(const FlowBasis& basis)
{
    m_basis = basis;
    m_reader = feed::LineReader(m_profile.format, m_basis);
}

void FeedSession::start(const feed::FeedProfile& profile)
{
    dropLink();
    m_retry.stop();
    m_profile = profile;
    m_reader = feed::LineReader(m_profile.format, m_basis);
    m_recent.clear();
    m_read = 0;
    m_refused = 0;
    m_nextRetry = m_patience.firstRetry;
    m_watch.start();
    m_turns.start();
    m_lastTurn = now();
    setState(State::Connecting);
    connectLink();
}

void FeedSession::stop()
{
    dropLink();
    m_retry.stop();
    m_watch.stop();
    m_turns.stop();
    setState(State::Off);
}

double FeedSession::now() const
{
    return static_cast<double>(m_clock.nsecsElapsed()) * kNanosecond;
}

std::vector<feed::Sample> FeedSession::samples(double from, double to) const
{
    std::vector<feed::Sample> result;
    for (std::size_t i = m_trace->indexFrom(from); i < m_trace->size() && m_trace->timeAt(i) <= to; ++i)
        result.push_back({m_trace->timeAt(i), static_cast<double>(m_trace->valueAt(i))});
    return result;
}

std::optional<LeakRate> FeedSession::latest() const
{
    if (!isLive() || m_trace->isEmpty())
        return std::nullopt;
    return LeakRate::fromSi(static_cast<double>(m_trace->valueAt(m_trace->size() - 1)));
}

void FeedSession::connectLink()
{
    dropLink();
    m_openedAt = now();
    m_link = makeLink(m_profile.source, m_profile.format);
    connect(m_link.get(), &FeedLink::linesCame, this, &FeedSession::onLines);
    connect(m_link.get(), &FeedLink::lost, this, &FeedSession::onLost);
    connect(m_link.get(), &FeedLink::ended, this, &FeedSession::onEnded);
    connect(m_link.get(), &FeedLink::opened, this, [this] { m_openedAt = now(); });
    m_link->open();
}

void FeedSession::dropLink()
{
    if (!m_link)
        return;
    m_link->disconnect(this);
    m_link->close();
    m_link.release()->deleteLater(); // it may be the one whose signal brought us here
}

void FeedSession::turn()
{
    const double time = now();
    if (time - m_lastTurn > kAway) {
        m_awayFrom = m_lastTurn;
        m_awayUntil = time;
    }
    m_lastTurn = time;
}

/// Since when the lines that are read now have come: now, unless the loop was away. A detector speaks at an
/// even pace; all at one moment they would make a spike of a rise.
double FeedSession::beganToCome(double now)
{
    if (m_turns.isActive()) // which of the two comes first after a pause is the dispatcher's affair
        turn();
    const double from = m_awayUntil > 0.0 && now - m_awayUntil < kAway ? m_awayFrom : now;
    m_awayUntil = 0.0;
    return std::max({from, m_lastValueAt, m_openedAt});
}

void FeedSession::onLines(const std::vector<feed::FeedLine>& lines)
{
    const double time = now();
    const double from = beganToCome(time);
    const double step = (time - from) / static_cast<double>(lines.size());
    double came = from;
    bool any = false;
    for (const feed::FeedLine& line : lines) {
        came += step;
        m_recent.push_back(line);
        if (m_recent.size() > kLinesRemembered)
            m_recent.pop_front();
        const auto value = line.isWhole ? m_reader.read(line.text) : Result<feed::LineValue>(fail({}));
        if (!value) {
            ++m_refused;
            continue;
        }
        ++m_read;
        keep(std::min(came, time), value->rate);
        any = true;
    }
    if (!any)
        return;
    m_usualGap = m_lastValueAt > m_openedAt ? std::min(time - m_lastValueAt, kLongestGap) : 0.0;
    m_lastValueAt = time;
    m_nextRetry = m_patience.firstRetry;
    setState(State::Live);
    emit sampled();
}

void FeedSession::keep(double time, LeakRate rate)
{
    if (m_trace->size() >= kMostSamples) {
        auto fresh = std::make_shared<report::LongSeries>();
        const std::size_t least = m_trace->size() - kMostSamples / 2;
        for (std::size_t i = std::max(least, m_trace->indexFrom(time - kKeptWhenFull)); i < m_trace->size();
             ++i)
            fresh->append(m_trace->timeAt(i), m_trace->valueAt(i));
        m_trace = std::move(fresh);
    }
    m_trace->append(time, static_cast<float>(rate.si()));
}

void FeedSession::onLost(const QString& reason)
{
    dropLink();
    setState(State::Lost, reason);
    m_retry.start(m_nextRetry);
    m_nextRetry = std::min(2 * m_nextRetry, m_patience.longestRetry);
}

void FeedSession::onEnded()
{
    dropLink();
    m_watch.stop();
    setState(State::Ended, tr("the recorded file is over"));
}

void FeedSession::look()
{
    const double quiet = (now() - std::max(m_lastValueAt, m_openedAt)) * kMillisecondsPerSecond;
    // A detector that speaks every ten seconds is not silent after five.
    const double patience =
        std::max<double>(m_patience.silentAfter, kGapsToSilence * m_usualGap * kMillisecondsPerSecond);
    if (!m_link || m_retry.isActive() || quiet < patience)
        return;
    if (m_state == State::Live || m_state == State::Connecting)
        setState(State::Silent, m_read == 0 && m_refused > 0 ? tr("none of its lines can be read")
                                                             : tr("connected, but no value comes"));
    // A cable pulled out of the network tells nobody.
    if (m_profile.source.kind == feed::SourceKind::Tcp &&
        quiet >= std::max<double>(m_patience.reopenAfter, 2.0 * patience))
        onLost(tr("the address fell silent"));
}

void FeedSession::setState(State state, const QString& fault)
{
    if (m_state == state && m_fault == fault)
        return;
    const bool wasGone = m_state == State::Lost || m_state == State::Silent || m_state == State::Ended;
    const bool isGone = state == State::Lost || state == State::Silent || state == State::Ended;
    if (isGone && !wasGone)
        m_lostSince = Timestamp::now();
    m_state = state;
    m_fault = fault;
    emit stateChanged();
}

} // namespace sealwalk::ui
