// SPDX-License-Identifier: GPL-3.0-or-later
// Four pressure-rise records that are the same on every machine: samples every 10 s of a 100 l chamber, noise
// sigma·sqrt(2)·sin(2 pi (frac(phi i^2) + 0.1)) with phi the golden ratio less 1.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/analysis/rise_laws.h"

namespace sealwalk::tests {

struct RiseSet
{
    double start;        // Pa
    double leak;         // Pa·m³/s
    double amount;       // Pa
    double timeConstant; // s
    double length;       // s
    double noise;        // Pa

    [[nodiscard]] analysis::RiseLaw law() const { return {start, leak / 0.1, amount, timeConstant}; }
};

inline constexpr RiseSet kD1 = {0.5, 2.0e-4, 0.0, 1.0, 600.0, 2e-3};    // leak
inline constexpr RiseSet kD2 = {0.3, 5.0e-5, 0.8, 120.0, 900.0, 3e-3};  // leak and outgassing, separable
inline constexpr RiseSet kD4 = {0.3, 5.0e-5, 0.8, 2000.0, 600.0, 3e-3}; // not separable
// Trapped 2 cm³ at 1e5 Pa behind 1e-8 m³/s, start 0.1 Pa, no leak.
inline constexpr RiseSet kD3 = {
    0.1, 0.0, (1e5 - 0.1) * 2e-6 / (0.1 + 2e-6), 1.0 / (1e-8 * (1 / 0.1 + 1 / 2e-6)), 900.0, 3e-3};

analysis::RiseRecord recordOf(const RiseSet& set);

} // namespace sealwalk::tests
