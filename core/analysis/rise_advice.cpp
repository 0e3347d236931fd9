// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_advice.h"

#include "core/analysis/rise_shapes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kMinute = 60.0;

const char* nameOf(SourceKind kind)
{
    switch (kind) {
    case SourceKind::Exponential:
        return "exponential";
    case SourceKind::Hyperbolic:
        return "hyperbolic";
    case SourceKind::Logarithmic:
        return "logarithmic";
    case SourceKind::PowerLaw:
        return "power-law";
    case SourceKind::Stretched:
        return "stretched exponential";
    }
    return "";
}

/// Upwards to a figure people say: 1, 2, 3 … 10, then fives, then tens.
double roundedUp(double minutes)
{
    const double step = minutes <= 10.0 ? 1.0 : minutes <= 60.0 ? 5.0 : minutes <= 300.0 ? 10.0 : 30.0;
    return std::max(step, step * std::ceil(minutes / step - 1e-9));
}

int percent(double share)
{
    return static_cast<int>(std::lround(100.0 * share));
}

} // namespace

std::string describe(const RiseReading& reading, RiseVerdict verdict)
{
    std::string sources;
    double whole = reading.leak;
    for (const RiseSource& source : reading.sources)
        whole += source.rise;
    std::vector<std::string> names;
    for (const RiseSource& source : reading.sources) {
        const std::string name = nameOf(source.shape.kind);
        if (source.rise > 0.005 * whole && std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    }
    if (names.empty())
        return "straight line";
    for (std::size_t i = 0; i < names.size(); ++i)
        sources += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    sources += names.size() == 1 ? " source" : " sources";
    return verdict == RiseVerdict::NoLeakFound ? sources : "leak and " + sources;
}

long minutesToRunOn(const RiseSummary& summary)
{
    return static_cast<long>(roundedUp(summary.runOnFor->si() / kMinute));
}

std::vector<std::string> riseAdvice(const RiseSummary& summary, const CompressedRise& rise,
                                    const LeakRange& range)
{
    std::vector<std::string> advice;
    const double inflow = summary.leakRate.si() + summary.outgassingEnd.si();
    switch (summary.verdict) {
    case RiseVerdict::Leak:
        // The straight line is all the evidence there is, so its reach is said with it.
        advice.push_back(fmt::format(
            "The pressure rises in a straight line: a leak, or gas coming through seals. Walls that "
            "give off gas evenly for much longer than {} min would look the same: where they may, "
            "run on or pump longer beforehand.",
            static_cast<long>(roundedUp(kLongestSource * rise.length / kMinute))));
        break;
    case RiseVerdict::LeakAndOutgassing:
        if (inflow > 0.0) {
            const int share = percent(summary.leakRate.si() / inflow);
            advice.push_back(
                share >= 100
                    ? "At the end of the record nearly all gas coming in is leak."
                    : fmt::format("At the end of the record {} % of the gas coming in is leak.", share));
        }
        break;
    case RiseVerdict::NoLeakFound:
        advice.emplace_back(
            "The rise exhausts itself: outgassing or a trapped volume, no leak above the upper bound.");
        break;
    case RiseVerdict::NotSeparable:
        advice.push_back(
            fmt::format("Not separable: run on for {} min{}; until then the leak is only known to lie "
                        "below the upper bound.",
                        minutesToRunOn(summary),
                        summary.runningOnWillDo ? "" : " and judge again, or pump longer beforehand"));
        break;
    }
    if (rise.samples < 20)
        advice.push_back(fmt::format("Only {} samples: take at least 20.", rise.samples));
    if (!summary.temperatureUsed && range.thermal > 0.1 * std::max(range.middle, 0.1 * range.rise))
        advice.emplace_back(
            "The room's temperature alone could make a good part of this rise: log it beside the pressure.");
    if (rise.rounding > 0.05 * range.rise)
        advice.push_back(
            fmt::format("The display rounds to {} % of the whole rise: read one more digit or run on.",
                        percent(rise.rounding / range.rise)));
    return advice;
}

} // namespace sealwalk::analysis
