// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/measurement_figures.h"

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"
#include "core/report/rate_text.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

namespace {

constexpr double kRoom = 0.15; // of the highest value, above it

double shown(LeakRate rate, const Unit& unit)
{
    return numberIn(rate, unit).value_or(0.0);
}

Series line(std::string name, std::vector<double> x, std::vector<double> y, Tone tone, Line style)
{
    Series series;
    series.name = std::move(name);
    series.x = std::move(x);
    series.y = std::move(y);
    series.tone = tone;
    series.line = style;
    return series;
}

} // namespace

Figure backgroundFigure(const model::BackgroundWatch& watch, const analysis::BackgroundSummary& summary,
                        double noiseFactor, const Unit& unit)
{
    Figure figure;
    figure.title = "background";
    figure.x.unit = "s";
    figure.y.unit = unit.symbol;
    std::vector<double> values;
    for (const LeakRate value : watch.values)
        values.push_back(shown(value, unit));
    const double level = shown(summary.level, unit);
    const double band = noiseFactor * shown(summary.noise, unit);
    std::vector<double> all = values;
    all.push_back(level + band * (1.0 + kRoom));
    fitAxis(figure.y, all, true);
    fitAxis(figure.x, watch.times, true);
    if (!watch.times.empty())
        figure.x.high = std::max(watch.times.back(), figure.x.low + 1.0);
    Strip strip;
    strip.low = level - band;
    strip.high = level + band;
    strip.text = exactText(noiseFactor) + " × noise";
    figure.strips.push_back(strip);
    figure.series.push_back(line({}, watch.times, values, Tone::Chart1, Line::Solid));
    figure.series.back().width = 1.3;
    if (watch.swing) { // one value, read by eye, has no course and no time: its level runs through
        figure.series.push_back(
            line({}, {figure.x.low, figure.x.high}, {level, level}, Tone::Accent, Line::Solid));
        figure.x.unit = "read by eye";
        figure.x.ticks = {{figure.x.low, {}}};
    } else if (!watch.times.empty()) {
        // The line through the series: the level stands in its middle.
        const double half = (watch.times.back() - watch.times.front()) / 2.0;
        const double slope = shown(summary.driftPerSecond, unit);
        figure.series.push_back(line({}, {watch.times.front(), watch.times.back()},
                                     {level - slope * half, level + slope * half}, Tone::Accent,
                                     Line::Solid));
    }
    figure.spoken =
        "background " + plainRate(level) + ", noise " + plainRate(shown(summary.noise, unit)) + " " + unit.id;
    return figure;
}

} // namespace sealwalk::report
