// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/detector.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::demo {

void Detector::advance(double dt, double rate)
{
    constexpr double kDisturbanceFades = 40.0; // s
    const double shown = rate / m_day.factor;
    m_fast = shown + (m_fast - shown) * std::exp(-dt / m_day.response);
    m_slow = shown + (m_slow - shown) * std::exp(-dt / m_day.slowResponse);
    m_disturbance *= std::exp(-dt / kDisturbanceFades);
    m_time += dt;
}

double Detector::level() const
{
    return m_day.base + m_day.driftPerSecond * m_time + (1.0 - m_day.slowShare) * m_fast +
           m_day.slowShare * m_slow + m_disturbance;
}

double Detector::readOff(double level)
{
    const double seen =
        level * (1.0 + m_day.gainNoise * m_chance.normal()) + m_day.readNoise * m_chance.normal();
    return std::max(seen, 0.1 * m_day.base);
}

} // namespace sealwalk::demo
