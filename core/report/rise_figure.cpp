// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/rise_figure.h"

#include "core/analysis/rise_advice.h"
#include "core/report/rate_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

namespace {

constexpr double kSecondsPerMinute = 60.0;

double millibar(double pascal)
{
    return inMillibars(pascals(pascal));
}

Series line(std::string name, const std::vector<double>& minutes, const std::vector<double>& pascal,
            double above, Tone tone, Line kind)
{
    Series series;
    series.name = std::move(name);
    series.x = minutes;
    series.tone = tone;
    series.line = kind;
    for (const double p : pascal)
        series.y.push_back(millibar(p + above));
    return series;
}

/// As many as can be told apart: marks that touch one another hide the line below them.
Series marks(const std::vector<double>& minutes, const std::vector<double>& pascal)
{
    constexpr std::size_t kMost = 40;
    Series series;
    series.name = "measured";
    series.tone = Tone::Chart1;
    series.line = Line::None;
    series.mark = Mark::Circle;
    const std::size_t step = std::max<std::size_t>(1, minutes.size() / kMost);
    for (std::size_t i = 0; i < minutes.size(); i += step) {
        series.x.push_back(minutes[i]);
        series.y.push_back(millibar(pascal[i]));
    }
    series.hollow.assign(series.x.size(), true);
    return series;
}

std::string leakName(const analysis::RiseSummary& rise, const ShownUnit& unit)
{
    return rise.leakRate.si() > 0.0
               ? fmt::format("leak, {} {}", screenRate(unit.number(rise.leakRate)), unit.symbol)
               : "leak: none found";
}

/// What the leak may be where the record does not tell it from outgassing: its part of the curve scaled to
/// both ends of its range, or all of the rise.
Area wedge(const analysis::RiseSummary& rise, const std::vector<double>& minutes)
{
    const analysis::RiseCurves& curves = rise.curves;
    const double start = millibar(curves.start);
    Area area;
    if (rise.leakRate.si() > 0.0) {
        const double end = millibar(curves.leak.back());
        area.x = {0.0, minutes.back(), minutes.back()};
        area.y = {start, start + end * (rise.low / rise.leakRate), start + end * (rise.high / rise.leakRate)};
    } else {
        for (std::size_t i = 0; i < minutes.size(); ++i) {
            area.x.push_back(minutes[i]);
            area.y.push_back(millibar(curves.fit[i]));
        }
        area.x.insert(area.x.end(), {minutes.back(), minutes.front()});
        area.y.insert(area.y.end(), {start, start});
    }
    area.text = rise.runOnFor ? fmt::format("not separable: run {} min longer", analysis::minutesToRunOn(rise))
                              : "not separable";
    return area;
}

/// A symmetric axis for residuals.
Axis residualAxis(const std::vector<double>& residual)
{
    double most = 0.0;
    for (const double r : residual)
        most = std::max(most, std::abs(millibar(r)));
    if (most <= 0.0)
        most = 1e-9;
    const double decade = std::pow(10.0, std::floor(std::log10(most)));
    const double round = std::ceil(most / decade) * decade;
    return {"", -round, round, false, {}};
}

} // namespace

Figure riseFigure(const analysis::RiseSummary& rise, const ShownUnit& unit)
{
    const analysis::RiseCurves& curves = rise.curves;
    Figure figure;
    figure.title = "Pressure rise";
    if (curves.time.empty()) {
        figure.empty = "nothing to plot";
        return figure;
    }
    std::vector<double> minutes;
    for (const double t : curves.time)
        minutes.push_back((t - curves.time.front()) / kSecondsPerMinute);
    figure.x = {"min", 0.0, std::max(minutes.back(), 1e-9), false, {}};
    figure.y.unit = "mbar";

    if (rise.separable) {
        // Leak and walls both begin where the pressure began: each is what it would have risen to alone.
        figure.series.push_back(
            line(leakName(rise, unit), minutes, curves.leak, curves.start, Tone::Chart3, Line::Solid));
        figure.series.push_back(
            line("walls, fading", minutes, curves.outgassing, curves.start, Tone::Chart2, Line::Dashed));
    } else {
        figure.areas.push_back(wedge(rise, minutes));
    }
    figure.series.push_back(line("sum", minutes, curves.fit, 0.0, Tone::Ink, Line::Solid));
    figure.series.push_back(marks(minutes, curves.measured));

    std::vector<double> values;
    for (const Series& series : figure.series)
        values.insert(values.end(), series.y.begin(), series.y.end());
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    constexpr double kFlat =
        0.3; // a rise that is a smaller part of the pressure than that is a flat line from zero
    fitAxis(figure.y, values, values.empty() || *most - *least > kFlat * *most);
    figure.residualAxis = residualAxis(curves.residual);
    Series left = line("measured less sum", minutes, curves.residual, 0.0, Tone::Chart1, Line::None);
    left.mark = Mark::Stem;
    figure.residuals.push_back(std::move(left));
    figure.spoken = fmt::format(
        "pressure from {} to {} mbar in {:.0f} minutes; {}", plainRate(millibar(curves.measured.front())),
        plainRate(millibar(curves.measured.back())), minutes.back(), analysis::nameOf(rise.verdict));
    return figure;
}

std::string riseHeadline(const analysis::RiseSummary& rise, const ShownUnit& unit)
{
    const std::string range = fmt::format("{} … {}", unit.print(rise.low), unit.print(rise.high));
    switch (rise.verdict) {
    case analysis::RiseVerdict::NotSeparable:
        return fmt::format("Not separable: the leak is at most {} air", unit.printWithUnit(rise.high)) +
               (rise.runOnFor ? fmt::format("; run {} min longer", analysis::minutesToRunOn(rise))
                              : "");
    case analysis::RiseVerdict::NoLeakFound:
        return fmt::format("No leak found: only gas that exhausts itself; a leak is below {} air",
                           unit.printWithUnit(rise.high));
    case analysis::RiseVerdict::Leak:
    case analysis::RiseVerdict::LeakAndOutgassing:
        break;
    }
    return fmt::format("{} air ({})", unit.printWithUnit(rise.leakRate), range);
}

} // namespace sealwalk::report
