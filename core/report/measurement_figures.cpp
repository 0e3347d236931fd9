// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/measurement_figures.h"

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"
#include "core/report/rate_text.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

namespace {

constexpr double kSecondsPerMinute = 60.0;
constexpr std::size_t kMostMarks = 40;
constexpr double kRoom = 0.15; // of the highest value, above it

double shown(LeakRate rate, const Unit& unit)
{
    return numberIn(rate, unit).value_or(0.0);
}

std::vector<double> scaled(const std::vector<double>& values, double factor, double offset = 0.0)
{
    std::vector<double> result(values.size());
    std::transform(values.begin(), values.end(), result.begin(),
                   [&](double v) { return (v + offset) * factor; });
    return result;
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

/// Between the highest and the lowest share of the leak that the record allows.
Area wedge(const analysis::RiseSummary& summary, const std::vector<double>& minutes)
{
    Area area;
    const analysis::RiseCurves& curves = summary.curves;
    const double start = curves.start / kPascalsPerMillibar;
    for (std::size_t i = 0; i < minutes.size(); ++i) {
        area.x.push_back(minutes[i]);
        area.y.push_back(curves.fit[i] / kPascalsPerMillibar);
    }
    for (std::size_t i = minutes.size(); i-- > 0;) {
        area.x.push_back(minutes[i]);
        area.y.push_back(start);
    }
    area.text = "not separable";
    if (summary.runOnFor)
        area.text +=
            ": run " + roundedText(std::ceil(summary.runOnFor->si() / kSecondsPerMinute), 3) + " min longer";
    return area;
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
    if (!watch.times.empty()) {
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

Figure riseFigure(const analysis::RiseSummary& summary)
{
    const analysis::RiseCurves& curves = summary.curves;
    const double toMillibar = 1.0 / kPascalsPerMillibar;
    const std::vector<double> minutes = scaled(curves.time, 1.0 / kSecondsPerMinute);
    Figure figure;
    figure.title = "pressure rise";
    figure.x.unit = "min";
    figure.y.unit = "mbar";
    const std::vector<double> measured = scaled(curves.measured, toMillibar);
    fitAxis(figure.x, minutes, false);
    fitAxis(figure.y, measured, true);
    // Marks that touch one another show nothing more than the line does.
    const std::size_t step = std::max<std::size_t>(1, minutes.size() / kMostMarks);
    std::vector<double> markedTimes;
    std::vector<double> marked;
    for (std::size_t i = 0; i < minutes.size(); i += step) {
        markedTimes.push_back(minutes[i]);
        marked.push_back(measured[i]);
    }
    Series points = line("measured", markedTimes, marked, Tone::Chart1, Line::None);
    points.mark = Mark::Circle;
    figure.series.push_back(std::move(points));
    figure.series.push_back(line("sum", minutes, scaled(curves.fit, toMillibar), Tone::Ink, Line::Solid));
    if (summary.separable) {
        figure.series.push_back(
            line("leak", minutes, scaled(curves.leak, toMillibar, curves.start), Tone::Chart3, Line::Solid));
        figure.series.push_back(line("walls", minutes, scaled(curves.outgassing, toMillibar, curves.start),
                                     Tone::Chart2, Line::Dashed));
    } else if (!minutes.empty()) {
        figure.areas.push_back(wedge(summary, minutes));
    }
    Axis residualAxis;
    residualAxis.unit = "mbar";
    const std::vector<double> residual = scaled(curves.residual, toMillibar);
    double largest = 0.0;
    for (const double value : residual)
        largest = std::max(largest, std::abs(value));
    residualAxis.low = largest > 0.0 ? -largest : -1.0;
    residualAxis.high = largest > 0.0 ? largest : 1.0;
    figure.residualAxis = residualAxis;
    Series stems = line({}, minutes, residual, Tone::Soft, Line::None);
    stems.mark = Mark::Stem;
    figure.residuals.push_back(std::move(stems));
    figure.spoken = std::string("pressure rise, ") + analysis::nameOf(summary.verdict);
    return figure;
}

} // namespace sealwalk::report
