// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/pressure_rise.h"

#include "core/analysis/rise_advice.h"
#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_ensemble.h"
#include "core/analysis/rise_range.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

namespace sealwalk::analysis {

namespace {

constexpr double kColdest =
    150.0; // K; outside, a chamber is no longer at a room's temperature or a number is wrong
constexpr double kHottest = 600.0; // K
constexpr std::size_t kFewest = 3;
constexpr double kRunOnAnyway = 2.0; // lengths of the record, where none up to five is known to do

Status checkRecord(const RiseRecord& record, const RiseOptions& options)
{
    if (!(options.volume.si() > 0.0) || !std::isfinite(options.volume.si()))
        return fail(ErrorCode::BadInput, "the volume must be above 0");
    if (!(options.volumeUncertainty >= 0.0 && options.volumeUncertainty <= 0.5))
        return fail(ErrorCode::BadInput, "the relative uncertainty of the volume must be from 0 to 0.5");
    if (options.temperature &&
        !(options.temperature->si() >= kColdest && options.temperature->si() <= kHottest))
        return fail(ErrorCode::BadInput, "the gas temperature must be from -123 to 327 degC");
    const std::size_t n = record.time.size();
    if (record.pressure.size() != n || (!record.temperature.empty() && record.temperature.size() != n))
        return fail(ErrorCode::BadInput, "times, pressures and temperatures must be equally many");
    if (n < kFewest)
        return fail(
            ErrorCode::BadInput,
            fmt::format("a pressure-rise record needs at least {} samples, this one has {}", kFewest, n));
    for (std::size_t i = 0; i < n; ++i) {
        if (!std::isfinite(record.time[i]) || !std::isfinite(record.pressure[i]))
            return fail(ErrorCode::BadInput,
                        fmt::format("sample {}: time and pressure must be finite numbers", i + 1));
        if (i > 0 && !(record.time[i] > record.time[i - 1]))
            return fail(ErrorCode::BadInput, fmt::format("sample {}: times must increase, {} s follows {} s",
                                                         i + 1, record.time[i], record.time[i - 1]));
        if (!record.temperature.empty() &&
            !(record.temperature[i] >= kColdest && record.temperature[i] <= kHottest))
            return fail(ErrorCode::BadInput,
                        fmt::format("sample {}: the temperature must be from -123 to 327 degC", i + 1));
    }
    return {};
}

/// Mean of the temperatures within a twentieth of the record on either side: the gas follows a room slowly,
/// and the steps of a thermometer must not become steps of pressure.
std::vector<double> smoothed(const RiseRecord& record)
{
    const std::size_t n = record.time.size();
    const double half = (record.time.back() - record.time.front()) / 20.0;
    std::vector<double> sums(n + 1, 0.0);
    for (std::size_t i = 0; i < n; ++i)
        sums[i + 1] = sums[i] + record.temperature[i];
    std::vector<double> result(n);
    std::size_t from = 0;
    std::size_t to = 0;
    for (std::size_t i = 0; i < n; ++i) {
        while (record.time[from] < record.time[i] - half)
            ++from;
        while (to < n && record.time[to] <= record.time[i] + half)
            ++to;
        // Equally many on both sides, or the ends would be drawn towards the middle.
        const std::size_t side = std::min(i - from, to - 1 - i);
        result[i] = (sums[i + side + 1] - sums[i - side]) / static_cast<double>(2 * side + 1);
    }
    return result;
}

std::optional<Temperature> statedTemperature(const RiseRecord& record, const RiseOptions& options)
{
    if (options.temperature || record.temperature.empty())
        return options.temperature;
    return kelvins(std::accumulate(record.temperature.begin(), record.temperature.end(), 0.0) /
                   static_cast<double>(record.temperature.size()));
}

std::vector<double> atOneTemperature(const RiseRecord& record, const RiseOptions& options)
{
    if (record.temperature.empty())
        return record.pressure;
    const double reference = statedTemperature(record, options)->si();
    std::vector<double> pressure = smoothed(record);
    for (std::size_t i = 0; i < pressure.size(); ++i)
        pressure[i] = record.pressure[i] * reference / pressure[i];
    return pressure;
}

/// Curves of the readings' average with the leak at `leak`, Pa over the record.
void draw(RiseCurves& curves, const CompressedRise& rise, const RisePosterior& posterior, double leak,
          double first)
{
    double sum = 0.0;
    for (const RiseReading& reading : posterior.readings)
        sum += reading.weight;
    std::vector<double> outgassing(rise.bins.size(), 0.0);
    for (const RiseReading& reading : posterior.readings)
        for (const RiseSource& source : reading.sources) {
            const SourceCurve curve(source.shape);
            const double amount = reading.weight / sum * source.rise;
            for (std::size_t i = 0; i < rise.bins.size(); ++i)
                outgassing[i] += amount * curve.share(rise.bins[i].time / rise.length);
        }
    double offset = 0.0;
    double weights = 0.0;
    for (std::size_t i = 0; i < rise.bins.size(); ++i) {
        const RiseBin& bin = rise.bins[i];
        const double w = 1.0 / (bin.uncertainty * bin.uncertainty);
        offset += w * (bin.pressure - leak * bin.time / rise.length - outgassing[i]);
        weights += w;
    }
    curves.start = offset / weights;
    curves.outgassing = std::move(outgassing);
    for (std::size_t i = 0; i < rise.bins.size(); ++i) {
        const RiseBin& bin = rise.bins[i];
        curves.time.push_back(first + bin.time);
        curves.measured.push_back(bin.pressure);
        curves.leak.push_back(leak * bin.time / rise.length);
        curves.fit.push_back(curves.start + curves.leak[i] + curves.outgassing[i]);
        curves.residual.push_back(bin.pressure - curves.fit[i]);
    }
}

} // namespace

Result<RiseSummary> analyseRise(const RiseRecord& record, const RiseOptions& options)
{
    if (const Status status = checkRecord(record, options); !status)
        return fail(status.error());
    const std::vector<double> pressure = atOneTemperature(record, options);
    if (std::adjacent_find(pressure.begin(), pressure.end(), std::not_equal_to<>()) == pressure.end())
        return fail(ErrorCode::NoAnswer,
                    "the pressure is the same in all samples, so the gauge does not resolve the "
                    "rise; run on longer or use a finer gauge");
    const CompressedRise rise = compressRise(record.time, pressure);
    const RangeOptions allowances{.temperatureLogged = !record.temperature.empty(),
                                  .volumeUncertainty = options.volumeUncertainty};
    const RisePosterior posterior = weighReadings(rise);
    if (posterior.readings.empty() || fallsBeyondDoubt(rise, allowances))
        return fail(ErrorCode::NoAnswer,
                    "the pressure falls over the record, which no gas coming in can do: the "
                    "gauge drifts, the chamber cools or a valve to the pump is open");
    const LeakRange range = leakRange(rise, posterior, allowances);

    RiseSummary summary;
    const auto rate = [&](double perLength) {
        return pressureRise(options.volume, pascals(perLength), seconds(rise.length));
    };
    summary.verdict = range.verdict;
    summary.separable = range.verdict != RiseVerdict::NotSeparable;
    summary.leakRate = rate(range.middle);
    summary.low = rate(range.low);
    summary.high = rate(range.high);
    summary.noise = rise.noise;
    summary.rounding = rise.rounding;
    summary.temperatureUsed = !record.temperature.empty();
    summary.temperature = statedTemperature(record, options);
    summary.outgassingStart = rate(outgassingRate(posterior, 0.0));
    summary.outgassingEnd = rate(outgassingRate(posterior, 1.0));
    summary.model = describe(posterior.readings.front(), range.verdict);
    summary.modelBelief = posterior.readings.front().weight;
    if (!summary.separable) {
        const auto enough = enoughLonger(rise, posterior, allowances);
        summary.runningOnWillDo = enough.has_value();
        summary.runOnFor = enough.value_or(seconds(kRunOnAnyway * rise.length));
    }
    draw(summary.curves, rise, posterior, range.middle, record.time.front());
    summary.advice = riseAdvice(summary, rise, range);
    if (!std::isfinite(summary.leakRate.si()) || !std::isfinite(summary.high.si()))
        return fail(ErrorCode::NoAnswer, "the numbers of this record lie outside what can be computed with");
    return summary;
}

const char* nameOf(RiseVerdict verdict)
{
    switch (verdict) {
    case RiseVerdict::Leak:
        return "leak";
    case RiseVerdict::LeakAndOutgassing:
        return "leak and outgassing";
    case RiseVerdict::NoLeakFound:
        return "no leak found";
    case RiseVerdict::NotSeparable:
        return "not separable";
    }
    return "";
}

} // namespace sealwalk::analysis
