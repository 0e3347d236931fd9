// SPDX-License-Identifier: GPL-3.0-or-later
// The detector of the demo: how its display follows the helium that comes into the chamber.
#pragma once

#include "demo/history/chance.h"

namespace sealwalk::demo {

/// The day's arrangement. Rates are what the display shows, mbar·l/s, unless said otherwise.
struct DetectorDay
{
    double factor = 1.61;       ///< rate on the chamber over rate shown
    double response = 2.4;      ///< s, to 63 %
    double slowShare = 0.008;   ///< of a response that clears slowly
    double slowResponse = 26.0; ///< s
    double base = 1.5e-9;       ///< background
    double driftPerSecond = 1e-12;
    double noise = 4.8e-10;   ///< of a single value
    double readNoise = 2e-10; ///< of what a person reads off a moving display
    double gainNoise = 0.02;  ///< relative, of a reading
};

class Detector
{
public:
    Detector(const DetectorDay& day, Chance& chance)
        : m_day(day)
        , m_chance(chance)
    {}

    /// Lets `dt` seconds pass while `rate` (mbar·l/s on the chamber) comes in.
    void advance(double dt, double rate);
    /// Something outside the test moves the background, up to `extra` and away again.
    void disturb(double extra) { m_disturbance += extra; }

    [[nodiscard]] double time() const { return m_time; } ///< s since the start of the day
    /// Without noise.
    [[nodiscard]] double level() const;
    /// One value with the display's noise.
    [[nodiscard]] double value() { return level() + m_day.noise * m_chance.normal(); }
    /// `level` as a person reads it off.
    [[nodiscard]] double readOff(double level);

    [[nodiscard]] const DetectorDay& day() const { return m_day; }

private:
    DetectorDay m_day;
    Chance& m_chance;
    double m_time = 0.0;
    double m_fast = 0.0;
    double m_slow = 0.0;
    double m_disturbance = 0.0;
};

} // namespace sealwalk::demo
