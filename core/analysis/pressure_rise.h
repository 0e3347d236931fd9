// SPDX-License-Identifier: GPL-3.0-or-later
// Pressure-rise test of an isolated chamber: how much of the rise is a leak, how much is gas that exhausts
// itself.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::analysis {

/// What was logged while the chamber was shut off.
struct RiseRecord
{
    std::vector<double> time; ///< s, strictly increasing; the first need not be 0
    std::vector<double>
        pressure; ///< Pa, absolute, as many; below 0 is a gauge below its zero and taken as read
    std::vector<double> temperature; ///< K, of the gas, as many; empty when not logged
};

struct RiseOptions
{
    Volume volume;                  ///< of everything shut off together, above 0; no default
    double volumeUncertainty = 0.0; ///< relative standard uncertainty of `volume`, 0 to 0.5
    /// Gas temperature the leak rate is stated at. Default: mean of the logged temperatures, else not
    /// corrected.
    std::optional<Temperature> temperature;
};

enum class RiseVerdict
{
    Leak,              ///< a leak; outgassing makes no visible share
    LeakAndOutgassing, ///< both, told apart
    NoLeakFound,       ///< only gas that exhausts itself: desorption or a trapped volume
    NotSeparable,      ///< the record does not carry the difference; `high` is an upper bound all the same
};

/// Curves to draw, all as long as `time`. start + leak + outgassing = fit; measured - fit = residual.
struct RiseCurves
{
    std::vector<double> time;     ///< s on the clock of the record
    std::vector<double> measured; ///< Pa, means of stretches, corrected for temperature when that was logged
    std::vector<double> fit;      ///< Pa
    std::vector<double> leak;     ///< Pa, the rise that is leak
    std::vector<double> outgassing; ///< Pa, the rise that exhausts itself
    std::vector<double> residual;   ///< Pa
    double start = 0.0;             ///< Pa, fitted pressure at the first sample
};

struct RiseSummary
{
    RiseVerdict verdict = RiseVerdict::NotSeparable;
    LeakRate leakRate; ///< best single figure; 0 when no leak was found
    LeakRate low;      ///< 95 % range; 0 when the record is compatible with no leak
    LeakRate high;     ///< 95 % range; an upper bound when not separable
    bool separable = false;
    LeakRate outgassingStart;         ///< of gas that exhausts itself, at the first sample
    LeakRate outgassingEnd;           ///< the same at the last sample
    std::string model;                ///< the reading with most evidence, for people
    double modelBelief = 0.0;         ///< its share of belief, 0 to 1
    std::optional<Duration> runOnFor; ///< how much longer to run, by what is known now; none when separable
    bool runningOnWillDo = false;     ///< that should be enough; else judge again then
    std::vector<std::string> advice;  ///< whole sentences, without figures that carry a unit of leak rate
    RiseCurves curves;
    double noise = 0.0;                     ///< Pa, of one sample, from the record itself
    double rounding = 0.0;                  ///< Pa, step of the display; 0 when not seen
    bool temperatureUsed = false;           ///< the pressures were corrected by logged temperatures
    std::optional<Temperature> temperature; ///< of the gas the rates are stated at, when known
};

/// Judges a record.
/// Errors (BadInput): fewer than 3 samples, times that do not increase, values that are not finite, a
/// temperature below 150 K or above 600 K, a volume that is not above 0; the message names the sample,
/// counted from 1. (NoAnswer): a pressure that never changes, a record whose numbers lie outside what can be
/// computed with.
Result<RiseSummary> analyseRise(const RiseRecord& record, const RiseOptions& options);

/// For people: "leak", "leak and outgassing", "no leak found", "not separable".
const char* nameOf(RiseVerdict verdict);

} // namespace sealwalk::analysis
