// SPDX-License-Identifier: GPL-3.0-or-later
// The clock of one call: go, spray, read, wait, hold. Knows moments, not windows.
#pragma once

#include <optional>

namespace sealwalk::ui {

enum class CallState
{
    Go,    ///< ready: the spray may start
    Spray, ///< helium on, dwell running
    Read,  ///< dwell reached: the value is wanted
    Wait,  ///< stored; the clean-up of the last point runs down
    Hold,  ///< the background moves
};

/// All moments are seconds of one steady clock, never going back.
class SprayMachine
{
public:
    struct Times
    {
        double dwell = 6.0; ///< s
        double wait = 9.0;  ///< s
        double quiet = 3.0; ///< s, where nothing answered: a rise on its way would show by then
    };

    void setTimes(const Times& times);
    [[nodiscard]] Times times() const { return m_times; }

    [[nodiscard]] CallState state() const { return m_state; }
    /// Seconds left of dwell or wait; 0 in the other states.
    [[nodiscard]] double left(double now) const;
    /// Share of dwell or wait gone by, 0 … 1.
    [[nodiscard]] double progress(double now) const;
    /// How long helium was on at this point; none before the first spray of this call.
    [[nodiscard]] std::optional<double> sprayed(double now) const;
    /// Seconds since helium went on at this point, whether it is still on or not.
    [[nodiscard]] std::optional<double> sinceStart(double now) const;
    /// First rise after the start of the spray, when it was marked.
    [[nodiscard]] std::optional<double> delay() const { return m_delay; }
    /// The call went on although the wait was not over.
    [[nodiscard]] bool isOutOfTurn() const { return m_outOfTurn; }

    /// Starts the spray (Go, Read) or ends it (Spray). False when that is not possible now: wait or hold
    /// first.
    bool toggle(double now);
    /// Marks the first rise; false when nothing is being sprayed.
    bool markRise(double now);
    /// The first rise was `delay` s after helium on: where the clock ended the dwell, the helium had stayed
    /// on until then. False when a hand had ended it before.
    bool keepOnUntil(double delay);
    /// The reading is stored: the clean-up starts, a short one where nothing answered, or at once the next call
    /// when nothing was sprayed.
    void stored(double now, bool answered = true);
    /// Goes on although the wait is not over or the background moves; noted.
    bool goOnAnyway();
    /// From go or wait; a wait's clock runs on.
    void hold();
    void quiet();
    /// Whether the background is back: the wait ends only then. It is unless somebody says otherwise.
    void setClear(bool clear) { m_clear = clear; }
    [[nodiscard]] bool isClear() const { return m_clear; }
    /// Another point is called: what was sprayed here counts no more, but its helium clears first; a running
    /// wait goes on.
    void call(double now);
    /// Helium is on, or was and its value is wanted.
    [[nodiscard]] bool isAsking() const { return m_state == CallState::Spray || m_state == CallState::Read; }
    /// After a restart: the round goes on with a full wait.
    void resume(double now);
    /// Moves on when dwell or wait is over. True when the state changed.
    bool tick(double now);

private:
    void clearCall();

    void wait(double now, double seconds);

    Times m_times;
    double m_wait = m_times.wait; ///< s, of the present or next wait
    CallState m_state = CallState::Go;
    double m_since = 0.0; ///< start of the present state
    std::optional<double> m_sprayStart;
    std::optional<double> m_sprayEnd;
    bool m_endedByClock = false; ///< not by a hand
    std::optional<double> m_delay;
    bool m_outOfTurn = false;
    bool m_clear = true;
    bool m_waitsStill = false; ///< held out of a wait
};

} // namespace sealwalk::ui
