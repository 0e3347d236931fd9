// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/bars.h"

#include "core/report/rate_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::report {

namespace {

/// "point 12" is "12" where there is little room.
std::string shortLabel(const std::string& label)
{
    const std::size_t blank = label.rfind(' ');
    return blank == std::string::npos ? label : label.substr(blank + 1);
}

} // namespace

double BarFigure::highest() const
{
    double most = 0.0;
    for (const Bar& bar : bars) {
        double sum = 0.0;
        for (const BarPart& part : bar.parts)
            sum += part.value;
        most = std::max({most, sum, bar.high.value_or(0.0)});
    }
    for (const Limit& limit : limits)
        most = std::max(most, limit.at);
    return most;
}

BarFigure balanceBars(const analysis::LeakBalance& balance, const MapScale& scale,
                      std::optional<LeakRate> totalLimit)
{
    BarFigure figure;
    figure.title = "Balance of located leaks and pressure rise, as air";
    figure.unit = scale.unit;
    if (balance.leaks.empty() && !balance.total) {
        figure.empty = "no leak with a rate and no pressure-rise test yet";
        return figure;
    }
    Bar located{"located", {}, {}, {}, {}};
    for (const analysis::LeakAsAir& leak : balance.leaks)
        if (leak.inSum())
            located.parts.push_back({scale.number(leak.air),
                                     shortLabel(leak.label),
                                     scale.position(leak.air * (1.0 / std::max(leak.ratio, 1e-12))),
                                     {}});
    if (!located.parts.empty()) {
        located.low = scale.number(balance.locatedLow);
        located.high = scale.number(balance.locatedHigh);
    }
    figure.spoken = fmt::format("located {} {}", plainRate(scale.number(balance.located)), scale.spokenUnit);
    if (balance.unlocated && balance.unlocated->si() > 0.0 &&
        balance.verdict == analysis::BalanceVerdict::Missing) {
        located.parts.push_back({scale.number(*balance.unlocated), "missing", {}, BarPart::Kind::Missing});
        figure.spoken += fmt::format(", missing {}", plainRate(scale.number(*balance.unlocated)));
    }
    figure.bars.push_back(std::move(located));
    if (balance.total) {
        Bar coming{"coming in", {}, {}, {}, {}};
        const LeakRate shown = balance.total->rate.value_or(balance.total->high);
        coming.parts.push_back({scale.number(shown),
                                balance.total->rate ? "pressure rise" : "at most, not separable",
                                {},
                                BarPart::Kind::Hollow});
        if (balance.total->rate) {
            coming.low = scale.number(balance.total->low);
            coming.high = scale.number(balance.total->high);
        }
        figure.spoken += fmt::format(", coming in {}{}", balance.total->rate ? "" : "at most ",
                                     plainRate(scale.number(shown)));
        figure.bars.push_back(std::move(coming));
    }
    if (totalLimit)
        figure.limits.push_back({scale.number(*totalLimit), "limit, total", false});
    return figure;
}

BarFigure loadBars(const LoadOptions& options)
{
    BarFigure figure;
    figure.title = "What makes up the base pressure, now and after the ticked repairs";
    figure.unit = "mbar";
    const analysis::RepairEffect& effect = *options.effect;
    const analysis::LeakBalance& balance = *options.balance;
    if (!options.airSpeed || options.airSpeed->si() <= 0.0) {
        figure.empty = "the pumping speed at the chamber is not known: the base pressure cannot be divided";
        return figure;
    }
    if (!effect.basePressureNow) {
        figure.empty = "no base pressure of this state: it is noted with a pressure rise";
        return figure;
    }
    const auto pressureOf = [&](LeakRate q) { return inMillibars(q / *options.airSpeed); };
    const auto gone = [&](const std::string& label) {
        return std::find(options.repaired.begin(), options.repaired.end(), label) != options.repaired.end();
    };
    const double rest = std::max(0.0, inMillibars(*effect.basePressureNow) - pressureOf(effect.leakNow));
    double located = 0.0;
    for (const analysis::LeakAsAir& leak : balance.leaks)
        if (leak.inSum())
            located += pressureOf(leak.air);
    // What comes in beyond the leaks located belongs to the bar, or it would end before its figure.
    const double unlocated = pressureOf(effect.leakNow) - located;
    // Without a known total nobody can tell the walls from the leaks that were not located.
    const char* others = balance.total && balance.total->rate ? "walls, pump" : "walls, pump, not located";
    const bool missing = balance.verdict == analysis::BalanceVerdict::Missing;
    for (const bool after : {false, true}) {
        if (after && (options.repaired.empty() || !effect.basePressureAfter))
            continue;
        Bar bar{after ? "after" : "now", {}, {}, {}, {}};
        bar.parts.push_back({rest, others, {}, BarPart::Kind::Plain});
        for (const analysis::LeakAsAir& leak : balance.leaks)
            if (leak.inSum() && !(after && gone(leak.label)))
                bar.parts.push_back({pressureOf(leak.air),
                                     shortLabel(leak.label),
                                     options.scale.position(leak.air * (1.0 / std::max(leak.ratio, 1e-12))),
                                     {}});
        if (unlocated > 0.0)
            bar.parts.push_back({unlocated, missing ? "missing" : "not located", {}, BarPart::Kind::Missing});
        const Pressure total = after ? *effect.basePressureAfter : *effect.basePressureNow;
        bar.total = screenRate(inMillibars(total));
        figure.spoken += fmt::format("{}{} {} mbar", figure.spoken.empty() ? "" : ", ", bar.name,
                                     plainRate(inMillibars(total)));
        figure.bars.push_back(std::move(bar));
    }
    if (options.wanted)
        figure.limits.push_back({inMillibars(*options.wanted), "wanted", true});
    return figure;
}

} // namespace sealwalk::report
