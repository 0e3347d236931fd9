// SPDX-License-Identifier: GPL-3.0-or-later
// The detector's feed seen from the round: which stretch of the trace is whose spray, what it offers for the
// reading, and whether the background is back or moves.
#pragma once

#include "core/storage/history_store.h"
#include "ui/feed/feed_session.h"

#include <optional>
#include <vector>

namespace sealwalk::ui {

class SprayFeed
{
public:
    explicit SprayFeed(FeedSession& feed)
        : m_feed(feed)
    {}

    /// A spray on the trace, in seconds of the feed's clock.
    struct Mark
    {
        int number = 0; ///< of the point
        double start = 0.0;
        std::optional<double> end; ///< none while helium is on
        bool stopped = false;      ///< by hand: helium is known to be off since `end`
    };

    [[nodiscard]] const FeedSession& feed() const { return m_feed; }
    [[nodiscard]] const std::vector<Mark>& marks() const { return m_marks; }

    void sprayStarted(int number);
    void sprayEnded(bool byHand);
    /// The spray that ran counts no more: its reading is stored, or another point is called.
    void close(bool isStored);
    /// Values are missing in the open spray from now on.
    void interrupt();
    [[nodiscard]] bool wasInterrupted() const { return m_open && m_lostAt.has_value(); }
    /// Helium goes onto a point whose reading is not stored yet.
    [[nodiscard]] bool isOpen() const { return m_open; }

    /// What the trace says about the open spray so far; none without one, or when no value came since. When
    /// some are missing: none unless a rise was seen before; then that rise, the highest of all that came,
    /// and nothing of what followed.
    [[nodiscard]] std::optional<feed::ResponseFigures> figures() const;
    /// Clean-up is only known when helium was turned off by hand.
    [[nodiscard]] bool knowsCleanUp() const;

    /// The level of the last seconds; none unless the feed is live.
    [[nodiscard]] std::optional<feed::Level> levelNow() const;
    /// The background is as before the last spray, as far as the feed can tell.
    [[nodiscard]] bool isBackgroundBack() const;
    /// The display shows zero or below: of a detector that was zeroed the background cannot be told.
    [[nodiscard]] bool isAtZero() const;
    /// The level climbs although no helium is given.
    [[nodiscard]] bool isBackgroundRising() const;

    /// The stretch of the trace that belongs to the open spray: from where the last one stored ended, but not
    /// more than a minute before helium, until now. Times count from the start of the spray.
    [[nodiscard]] storage::Trace cut() const;

private:
    FeedSession& m_feed;
    std::vector<Mark> m_marks;
    bool m_open = false;
    std::optional<double> m_lostAt; ///< since when values are missing in the open spray
    double m_cutUntil = 0.0;
    std::optional<feed::Level> m_before; ///< background before the last spray
};

} // namespace sealwalk::ui
