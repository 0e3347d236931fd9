// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_range.h"

#include "core/analysis/rise_laws.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kTwoSided = 1.96;
// A room not watched: engineering judgement, 0.6 K standard over an hour or more, less in proportion before.
constexpr double kRoomDrift = 0.6;     // K
constexpr double kRoomHour = 3600.0;   // s
constexpr double kRoomKelvin = 293.15; // K
constexpr double kLoggedShare = 0.3;   // of that drift is left when a thermometer was read
constexpr double kGaugeDrift = 0.002;  // of the rise, standard: zero and gain of the gauge
constexpr double kShapeDoubt = 0.025;  // of the leak, standard
// No real source has exactly one of the shapes. What it still gives at the end of the record is what a wrong
// shape gets wrong; and beside every source there may be a slower one, too small to be seen. Standard, found
// on simulated records of two generators (pressure_rise_coverage_test.cpp is one).
constexpr double kTailDoubtUp = 0.5;   // of the sources' rate at the end
constexpr double kTailDoubtDown = 0.6; // of the same
constexpr double kCompanion = 0.05;    // of what the sources add over the record, downwards only
// u(Q) <= Q/3, the usual rule of the trade, is high/low <= (1 + 2/3)/(1 - 2/3).
constexpr double kWidestSeparable = 5.0;
constexpr double kNoLeakShare = 0.10; // of the rise: a bound as low as this says "no leak found"

struct Span
{
    double lowest;
    double highest;
};

Span spanOf(const CompressedRise& rise)
{
    Span span{rise.bins.front().pressure, rise.bins.front().pressure};
    for (const RiseBin& bin : rise.bins) {
        span.lowest = std::min(span.lowest, bin.pressure);
        span.highest = std::max(span.highest, bin.pressure);
    }
    return span;
}

/// What the room may have done to the pressure over the record, Pa, standard.
double thermalDoubt(const CompressedRise& rise, const RangeOptions& options)
{
    const double drift = kRoomDrift * std::min(1.0, rise.length / kRoomHour);
    const double left = options.temperatureLogged ? kLoggedShare * drift : drift;
    return std::max(0.0, spanOf(rise).highest) * left / kRoomKelvin;
}

/// What the exhausting sources add over the record, Pa, average of the readings.
double sourceRise(const RisePosterior& posterior)
{
    double sum = 0.0;
    double rise = 0.0;
    for (const RiseReading& reading : posterior.readings) {
        sum += reading.weight;
        for (const RiseSource& source : reading.sources)
            rise += reading.weight * source.rise;
    }
    return sum > 0.0 ? rise / sum : 0.0;
}

/// The record `factor` times as long, without noise, if `reading` is the truth; its uncertainties stay.
CompressedRise carriedOn(const CompressedRise& rise, const RisePosterior& posterior,
                         const RiseReading& reading, double factor)
{
    const double leak = reading.leak > 0.0 ? reading.leak : 0.5 * posterior.high;
    const double widen = std::sqrt(posterior.inflation);
    std::vector<SourceCurve> curves;
    for (const RiseSource& source : reading.sources)
        curves.emplace_back(source.shape);
    CompressedRise longer;
    longer.length = factor * rise.length;
    longer.interval = rise.interval;
    longer.samples = static_cast<std::size_t>(factor * static_cast<double>(rise.samples));
    const double step = longer.length / 100.0;
    double last = -step;
    const auto add = [&](double time, double uncertainty) {
        const double x = time / rise.length;
        double value = reading.start + leak * x;
        for (std::size_t i = 0; i < curves.size(); ++i)
            value += reading.sources[i].rise * curves[i].share(x);
        longer.bins.push_back({time, value, widen * uncertainty, 1});
        last = time;
    };
    for (const RiseBin& bin : rise.bins)
        if (bin.time - last >= std::min(step, 0.07 * bin.time))
            add(bin.time, bin.uncertainty);
    for (double time = last + step; time <= longer.length; time += step)
        add(time, rise.bins.back().uncertainty);
    return longer;
}

} // namespace

LeakRange leakRange(const CompressedRise& rise, const RisePosterior& posterior, const RangeOptions& options)
{
    LeakRange range;
    const Span span = spanOf(rise);
    range.rise = span.highest - span.lowest;
    range.middle = posterior.middle;
    range.thermal = thermalDoubt(rise, options);
    const double gauge = kGaugeDrift * range.rise;
    const double relative = std::hypot(kShapeDoubt, options.volumeUncertainty) * posterior.middle;
    const double fixed = std::hypot(range.thermal, gauge, relative);
    const double tail = outgassingRate(posterior, 1.0);
    const double up = kTwoSided * std::hypot(fixed, kTailDoubtUp * tail);
    const double companion = kCompanion * sourceRise(posterior);
    const double down = kTwoSided * std::hypot(fixed, kTailDoubtDown * tail, companion);
    range.high = posterior.middle + std::hypot(posterior.high - posterior.middle, up);
    if (posterior.low > 0.0)
        range.low = std::max(0.0, posterior.middle - std::hypot(posterior.middle - posterior.low, down));
    if (range.low > 0.0 && range.high <= kWidestSeparable * range.low)
        range.verdict = posterior.straight > 0.5 ? RiseVerdict::Leak : RiseVerdict::LeakAndOutgassing;
    else if (range.low <= 0.0 && range.high <= kNoLeakShare * range.rise)
        range.verdict = RiseVerdict::NoLeakFound;
    if (range.verdict == RiseVerdict::NoLeakFound)
        range.middle = 0.0;
    // Where leak and outgassing cannot be told apart, a slower source than any tried may be all there is.
    if (range.verdict == RiseVerdict::NotSeparable)
        range.low = 0.0;
    return range;
}

bool fallsBeyondDoubt(const CompressedRise& rise, const RangeOptions& options)
{
    std::vector<double> time;
    std::vector<double> pressure;
    for (const RiseBin& bin : rise.bins) {
        time.push_back(bin.time);
        pressure.push_back(bin.pressure);
    }
    const auto line = fitLine(time, pressure);
    if (!line)
        return false;
    constexpr double kSure = 3.0; // standard uncertainties
    const Span span = spanOf(rise);
    const double gauge = kGaugeDrift * (span.highest - span.lowest);
    const double noise = line->uncertainty(1) * rise.length;
    return line->parameters[1] * rise.length < -kSure * std::hypot(thermalDoubt(rise, options), gauge, noise);
}

std::optional<Duration> enoughLonger(const CompressedRise& rise, const RisePosterior& posterior,
                                     const RangeOptions& options)
{
    constexpr std::size_t kAsked = 5; // readings
    const std::size_t asked = std::min(kAsked, posterior.readings.size());
    double all = 0.0;
    for (std::size_t i = 0; i < asked; ++i)
        all += posterior.readings[i].weight;
    for (const double factor : {2.0, 3.0, 4.0, 6.0}) {
        double content = 0.0;
        double open = all;
        for (std::size_t i = 0; i < asked && content + open >= 0.5 * all && content < 0.5 * all; ++i) {
            const CompressedRise longer = carriedOn(rise, posterior, posterior.readings[i], factor);
            open -= posterior.readings[i].weight;
            if (leakRange(longer, weighReadings(longer), options).verdict != RiseVerdict::NotSeparable)
                content += posterior.readings[i].weight;
        }
        if (content > 0.0 && content >= 0.5 * all)
            return seconds((factor - 1.0) * rise.length);
    }
    return std::nullopt;
}

} // namespace sealwalk::analysis
