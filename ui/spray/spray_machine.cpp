// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_machine.h"

#include <algorithm>

namespace sealwalk::ui {

void SprayMachine::setTimes(const Times& times)
{
    if (m_wait == m_times.wait)
        m_wait = times.wait;
    m_times = times;
}

void SprayMachine::wait(double now, double seconds)
{
    m_state = CallState::Wait;
    m_since = now;
    m_wait = seconds;
}

double SprayMachine::left(double now) const
{
    const double gone = now - m_since;
    if (m_state == CallState::Spray)
        return std::max(0.0, m_times.dwell - gone);
    if (m_state == CallState::Wait)
        return std::max(0.0, m_wait - gone);
    return 0.0;
}

double SprayMachine::progress(double now) const
{
    const double whole = m_state == CallState::Spray  ? m_times.dwell
                         : m_state == CallState::Wait ? m_wait
                                                      : 0.0;
    return whole > 0.0 ? std::clamp(1.0 - left(now) / whole, 0.0, 1.0) : 0.0;
}

std::optional<double> SprayMachine::sprayed(double now) const
{
    if (!m_sprayStart)
        return std::nullopt;
    return m_sprayEnd.value_or(now) - *m_sprayStart;
}

std::optional<double> SprayMachine::sinceStart(double now) const
{
    return m_sprayStart ? std::optional(now - *m_sprayStart) : std::nullopt;
}

bool SprayMachine::toggle(double now)
{
    switch (m_state) {
    case CallState::Go:
    case CallState::Read: // sprayed again before the value was given: the new spray counts
        m_sprayStart = now;
        m_sprayEnd.reset();
        m_endedByClock = false;
        m_delay.reset();
        m_state = CallState::Spray;
        m_since = now;
        return true;
    case CallState::Spray:
        m_sprayEnd = now;
        m_state = CallState::Read;
        m_since = now;
        return true;
    case CallState::Wait:
    case CallState::Hold:
        return false;
    }
    return false;
}

bool SprayMachine::markRise(double now)
{
    if (!m_sprayStart || m_state == CallState::Wait)
        return false;
    m_delay = now - *m_sprayStart;
    if (m_endedByClock && m_sprayEnd) // the helium stayed on, or nothing would rise any more
        m_sprayEnd = std::max(*m_sprayEnd, now);
    return true;
}

bool SprayMachine::keepOnUntil(double delay)
{
    constexpr double kReaction = 1.0; // s
    if (!m_sprayStart || !m_sprayEnd)
        return true;
    if (m_endedByClock)
        m_sprayEnd = std::max(*m_sprayEnd, *m_sprayStart + delay);
    return m_endedByClock || *m_sprayStart + delay <= *m_sprayEnd + kReaction;
}

void SprayMachine::stored(double now, bool answered)
{
    const bool heliumWasOn = m_sprayStart.has_value();
    clearCall();
    if (heliumWasOn) {
        wait(now, answered ? m_times.wait : std::min(m_times.quiet, m_times.wait));
    } else if (m_state != CallState::Wait && m_state != CallState::Hold) {
        m_state = CallState::Go;
    }
}

bool SprayMachine::goOnAnyway()
{
    if (m_state != CallState::Wait && m_state != CallState::Hold)
        return false;
    m_state = CallState::Go;
    m_outOfTurn = true;
    return true;
}

void SprayMachine::hold()
{
    if (m_state != CallState::Go && m_state != CallState::Wait)
        return;
    m_waitsStill = m_state == CallState::Wait;
    m_state = CallState::Hold;
}

void SprayMachine::quiet()
{
    if (m_state == CallState::Hold)
        m_state = m_waitsStill ? CallState::Wait : CallState::Go;
}

void SprayMachine::call(double now)
{
    clearCall();
    if (m_state == CallState::Spray || m_state == CallState::Read)
        wait(now, m_times.wait);
}

void SprayMachine::resume(double now)
{
    clearCall();
    wait(now, m_times.wait);
}

bool SprayMachine::tick(double now)
{
    if (m_state == CallState::Spray && left(now) <= 0.0) {
        // Helium usually stays on until the value is read; what counts as dwell is what was asked for.
        m_state = CallState::Read;
        m_sprayEnd = m_since + m_times.dwell;
        m_endedByClock = true;
        m_since = now;
        return true;
    }
    if (m_state == CallState::Wait && left(now) <= 0.0 && m_clear) {
        m_state = CallState::Go;
        m_since = now;
        return true;
    }
    return false;
}

void SprayMachine::clearCall()
{
    m_sprayStart.reset();
    m_sprayEnd.reset();
    m_endedByClock = false;
    m_delay.reset();
    m_outOfTurn = false;
}

} // namespace sealwalk::ui
