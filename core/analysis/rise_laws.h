// SPDX-License-Identifier: GPL-3.0-or-later
// The classical laws of the pressure-rise test and their fits, each with its covariance.
#pragma once

#include "core/analysis/least_squares.h"
#include "core/quantities/kinds.h"

#include <span>

namespace sealwalk::analysis {

/// p(t) = start + slope·t + amount·(1 - exp(-t/timeConstant)).
struct RiseLaw
{
    double start = 0.0;        ///< Pa
    double slope = 0.0;        ///< Pa/s: leak rate over volume
    double amount = 0.0;       ///< Pa: what the exhausting source adds in the end
    double timeConstant = 1.0; ///< s

    [[nodiscard]] double pressure(double time) const; ///< Pa at `time`, s
    [[nodiscard]] double rate(double time) const;     ///< Pa/s
};

/// The exhausting source a trapped volume makes: exact solution of two volumes joined by a constant
/// conductance.
/// @param trapped, trappedPressure  of the pocket; @param conductance  of its way out, molecular flow
RiseLaw trappedVolume(Volume trapped, Pressure trappedPressure, Conductance conductance, Volume chamber,
                      Pressure start);

/// Leak rate that a chamber without any leak shows while its gas warms: p·V/T·dT/dt.
/// @param warming  K/s
LeakRate thermalPseudoLeak(Pressure pressure, Volume volume, Temperature temperature, double warming);

/// Amount of gas coming in: (V/R)·(p2/T2 - p1/T1)/time. Source: 40 CFR 1065.644.
AmountFlow amountRise(Volume volume, Pressure before, Temperature temperatureBefore, Pressure after,
                      Temperature temperatureAfter, Duration time);

/// Straight line; parameters start (Pa), slope (Pa/s).
Result<LeastSquaresFit> fitLine(std::span<const double> time, std::span<const double> pressure);

/// Source alone; parameters start (Pa), amount (Pa), time constant (s).
Result<LeastSquaresFit> fitExhaustingSource(std::span<const double> time, std::span<const double> pressure);

/// Leak and source; parameters start (Pa), slope (Pa/s), amount (Pa), time constant (s).
Result<LeastSquaresFit> fitLeakAndSource(std::span<const double> time, std::span<const double> pressure);

} // namespace sealwalk::analysis
