// SPDX-License-Identifier: GPL-3.0-or-later
// What a detector's trace says about one spray: background before, highest value, first rise, clean-up. Pure
// functions of samples and the two moments of the spray.
#pragma once

#include "core/quantities/kinds.h"

#include <optional>
#include <span>

namespace sealwalk::feed {

/// One value of the feed. Samples come in order of time; times may repeat.
struct Sample
{
    double time = 0.0; ///< s of any steady clock
    double rate = 0.0; ///< Pa·m³/s as shown
};

/// Level and scatter of a quiet stretch.
struct Level
{
    double rate = 0.0;  ///< median, Pa·m³/s
    double noise = 0.0; ///< 1.4826 × median distance from it: the standard deviation of normal noise
};

inline constexpr std::size_t kFewestForLevel = 3;
inline constexpr double kBackgroundWindow = 5.0;         ///< s before the spray
inline constexpr double kLongestBackgroundWindow = 30.0; ///< s, for feeds of a value every few seconds

/// Median and scatter of the samples within [from, to); none of fewer than kFewestForLevel.
std::optional<Level> levelOf(std::span<const Sample> samples, double from, double to);

/// The background just before `start`: over kBackgroundWindow, or as far back as it takes to have
/// kFewestForLevel samples, at most kLongestBackgroundWindow.
std::optional<Level> backgroundBefore(std::span<const Sample> samples, double start);

/// Above this a sample is no longer background: four times the noise, and at least the twentieth part of the
/// level, because a display of few digits shows no noise at all.
double riseThreshold(const Level& background);

/// The signal is back: `now` is as low as the background before, within its threshold.
bool isBack(const Level& background, double now);

struct ResponseFigures
{
    std::optional<Level> background; ///< none: too few samples before
    std::optional<Sample> highest;   ///< of all samples from the start of the spray on
    std::optional<double> delay;     ///< s from the start to the first of three samples above the background
    std::optional<double> cleanUp;   ///< s from the end of the spray until it was back; none: not yet
    std::optional<double> fallTime;  ///< s, time constant of the fall after the highest; none: not seen
};

/// @param start  helium on
/// @param end    helium off; none while it is on
ResponseFigures responseFigures(std::span<const Sample> samples, double start, std::optional<double> end);

/// Seconds from `from` until the signal stays at or below `level` for three samples; none if it does not.
std::optional<double> timeToFall(std::span<const Sample> samples, double from, double level);

/// Time constant of an exponential fall onto `background`, from `from` on, by least squares over the samples
/// between nine tenths and one tenth of the excess at `from`. None when there are fewer than three, or the
/// signal does not fall.
std::optional<double> fallTime(std::span<const Sample> samples, double from, const Level& background);

} // namespace sealwalk::feed
