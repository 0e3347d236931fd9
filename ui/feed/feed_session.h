// SPDX-License-Identifier: GPL-3.0-or-later
// The detector's feed while it runs: keeps it connected, reads its lines, holds its trace. Lives on the
// window's thread and never waits.
#pragma once

#include "core/base/timestamp.h"
#include "core/feed/feed_profile.h"
#include "core/feed/line_reader.h"
#include "core/feed/line_splitter.h"
#include "core/feed/response_figures.h"
#include "core/report/long_series.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <deque>
#include <memory>
#include <optional>
#include <vector>

namespace sealwalk::ui {

class FeedLink;

/// How patient a session is; tests are less so.
struct FeedPatience
{
    int firstRetry = 500;     ///< ms to the first try after a loss; twice as long each time
    int longestRetry = 10000; ///< ms
    int silentAfter = 5000;   ///< ms without a value that can be read: said to be silent
    int reopenAfter = 20000;  ///< ms of silence until a network address is called anew
};

class FeedSession : public QObject
{
    Q_OBJECT

public:
    enum class State
    {
        Off,
        Connecting, ///< for the first time
        Live,       ///< values come
        Silent,     ///< connected, but no value came for a while
        Lost,       ///< tries again by itself
        Ended,      ///< a recorded file is over
    };

    /// The trace kept for looking back: 12 hours at 100 values per second.
    static constexpr std::size_t kMostSamples = 4'320'000;
    static constexpr std::size_t kLinesRemembered = 12;

    explicit FeedSession(QObject* parent = nullptr);
    ~FeedSession() override;

    void setPatience(const FeedPatience& patience);
    /// For units that need the gas, from the job's room temperature.
    void setBasis(const FlowBasis& basis);
    [[nodiscard]] const FlowBasis& basis() const { return m_basis; }

    /// Takes this profile's feed from now on. The trace goes on: the time between is a gap.
    void start(const feed::FeedProfile& profile);
    void stop();

    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] bool isOn() const { return m_state != State::Off; }
    [[nodiscard]] bool isLive() const { return m_state == State::Live; }
    [[nodiscard]] const feed::FeedProfile& profile() const { return m_profile; }
    /// Why it is not live, for people; empty when it is.
    [[nodiscard]] const QString& fault() const { return m_fault; }
    /// Since when no value came; only when lost, silent or ended.
    [[nodiscard]] const Timestamp& lostSince() const { return m_lostSince; }

    /// Seconds of the session's steady clock; samples are stamped with it as they come. Those that came while
    /// the window was away, waiting for a disk say, are spread over that time.
    [[nodiscard]] double now() const;
    [[nodiscard]] const std::shared_ptr<report::LongSeries>& trace() const { return m_trace; }
    /// The samples within [from, to].
    [[nodiscard]] std::vector<feed::Sample> samples(double from, double to) const;
    [[nodiscard]] std::optional<LeakRate> latest() const; ///< none unless live

    [[nodiscard]] qint64 linesRead() const { return m_read; }
    [[nodiscard]] qint64 linesRefused() const { return m_refused; }
    /// The last lines as they came, the oldest first; told apart by a running number.
    [[nodiscard]] const std::deque<feed::FeedLine>& recentLines() const { return m_recent; }
    [[nodiscard]] qint64 linesSeen() const { return m_read + m_refused; }

signals:
    void stateChanged();
    void sampled(); ///< new values, after each batch

private:
    void connectLink();
    void dropLink();
    void onLines(const std::vector<feed::FeedLine>& lines);
    void onLost(const QString& reason);
    void onEnded();
    void look();
    void setState(State state, const QString& fault = {});
    void keep(double time, LeakRate rate);
    void turn();
    [[nodiscard]] double beganToCome(double now);

    FeedPatience m_patience;
    feed::FeedProfile m_profile;
    FlowBasis m_basis;
    feed::LineReader m_reader;
    std::unique_ptr<FeedLink> m_link;
    State m_state = State::Off;
    QString m_fault;
    Timestamp m_lostSince;
    QElapsedTimer m_clock;
    QTimer m_retry;
    QTimer m_watch;
    int m_nextRetry = 0;
    QTimer m_turns;
    double m_lastTurn = 0.0;  ///< of the event loop, as far as the timer tells
    double m_awayFrom = 0.0;  ///< the loop was away from then …
    double m_awayUntil = 0.0; ///< … until then; 0: what came meanwhile is taken
    double m_openedAt = 0.0;  ///< the present connection's beginning
    double m_lastValueAt = 0.0;
    double m_usualGap = 0.0; ///< s between the last values of this connection; 0: not known yet
    std::shared_ptr<report::LongSeries> m_trace;
    qint64 m_read = 0;
    qint64 m_refused = 0;
    std::deque<feed::FeedLine> m_recent;
};

} // namespace sealwalk::ui
