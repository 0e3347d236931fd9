// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_feed.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kMarksKept = 200;
constexpr double kKeptBefore = 60.0;    // s of trace before helium
constexpr double kLongestCut = 600.0;   // s; a value left open over lunch does not fill the history
constexpr double kHighestWithin = 60.0; // s after the spray; what comes later is something else
constexpr double kNow = 2.0;            // s that make up the present level
constexpr double kRecently = 12.0;      // s ago begins what a rise is told against …
constexpr double kRecentlyUntil = 4.0;  // … and ends

} // namespace

void SprayFeed::sprayStarted(int number)
{
    const double now = m_feed.now();
    m_before = feed::backgroundBefore(m_feed.samples(now - feed::kLongestBackgroundWindow, now), now);
    m_marks.push_back({number, now, std::nullopt, false});
    if (m_marks.size() > kMarksKept)
        m_marks.erase(m_marks.begin());
    m_open = true;
    m_lostAt = m_feed.isLive() ? std::nullopt : std::optional(now);
}

void SprayFeed::interrupt()
{
    if (!m_lostAt)
        m_lostAt = m_feed.now();
}

void SprayFeed::sprayEnded(bool byHand)
{
    if (!m_open || m_marks.back().end)
        return;
    m_marks.back().end = m_feed.now();
    m_marks.back().stopped = byHand;
}

void SprayFeed::close(bool isStored)
{
    sprayEnded(false);
    if (m_open && isStored)
        m_cutUntil = m_feed.now();
    m_open = false;
}

std::optional<feed::ResponseFigures> SprayFeed::figures() const
{
    if (!m_open)
        return std::nullopt;
    const Mark& mark = m_marks.back();
    const double until = mark.end ? *mark.end + kHighestWithin : m_feed.now();
    const auto samples = m_feed.samples(mark.start - feed::kLongestBackgroundWindow, until);
    const feed::ResponseFigures figures = feed::responseFigures(samples, mark.start, mark.end);
    if (!figures.highest || !m_lostAt)
        return figures.highest ? std::optional(figures) : std::nullopt;
    const auto after = std::find_if(samples.begin(), samples.end(),
                                    [this](const feed::Sample& sample) { return sample.time > *m_lostAt; });
    feed::ResponseFigures seen =
        feed::responseFigures(std::span(samples.begin(), after), mark.start, std::nullopt);
    if (!seen.delay)
        return std::nullopt;
    seen.highest = figures.highest;
    return seen;
}

bool SprayFeed::knowsCleanUp() const
{
    return m_open && m_marks.back().stopped;
}

std::optional<feed::Level> SprayFeed::levelNow() const
{
    if (!m_feed.isLive())
        return std::nullopt;
    const double now = m_feed.now();
    const auto samples = m_feed.samples(now - feed::kLongestBackgroundWindow, now);
    if (const auto level = feed::levelOf(samples, now - kNow, now))
        return level;
    if (samples.empty())
        return std::nullopt;
    return feed::Level{samples.back().rate, 0.0}; // a slow feed: its last word
}

bool SprayFeed::isBackgroundBack() const
{
    const auto level = levelNow();
    return !level || !m_before || feed::isBack(*m_before, level->rate);
}

bool SprayFeed::isAtZero() const
{
    const auto level = levelNow();
    return level && !(level->rate > 0.0);
}

bool SprayFeed::isBackgroundRising() const
{
    if (!m_feed.isLive())
        return false;
    const double now = m_feed.now();
    const auto samples = m_feed.samples(now - kRecently, now);
    const auto level = feed::levelOf(samples, now - kNow, now);
    const auto recently = feed::levelOf(samples, now - kRecently, now - kRecentlyUntil);
    return level && recently && level->rate > feed::riseThreshold(*recently);
}

storage::Trace SprayFeed::cut() const
{
    storage::Trace trace;
    if (!m_open)
        return trace;
    const Mark& mark = m_marks.back();
    const double now = m_feed.now();
    const double from = std::max({m_cutUntil, mark.start - kKeptBefore, now - kLongestCut});
    for (const feed::Sample& sample : m_feed.samples(from, now)) {
        trace.times.push_back(sample.time - mark.start);
        trace.values.push_back(static_cast<float>(sample.rate));
    }
    return trace;
}

} // namespace sealwalk::ui
