// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/trace_figure.h"

#include "core/analysis/job_view.h"
#include "core/report/rate_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr int kFewestDecades = 3;
constexpr int kTicksAtMost = 5;
constexpr double kShortestGap = 2.0;    // s without a value that are a gap …
constexpr double kGapInIntervals = 5.0; // … and at least so many of the usual intervals
constexpr double kSmallest = 1e-16;     // Pa·m³/s; zero and below have no place on a logarithmic axis
constexpr double kMostDecades = 1e7;    // noise around zero has values of any smallness

std::string words(const char* text)
{
    return QCoreApplication::translate("TraceFigure", text).toStdString();
}

/// Whole decades of the unit shown that hold all of the values, at least kFewestDecades.
report::Axis decadeAxis(double least, double greatest, const report::ShownUnit& unit)
{
    int low = static_cast<int>(std::floor(std::log10(std::max(least, kSmallest) * unit.perSi)));
    int high = static_cast<int>(std::ceil(std::log10(std::max(greatest, kSmallest) * unit.perSi)));
    while (high - low < kFewestDecades)
        high - low == 1 ? --low : ++high;
    report::Axis axis;
    axis.logarithmic = true;
    axis.low = std::pow(10.0, low) / unit.perSi;
    axis.high = std::pow(10.0, high) / unit.perSi;
    const int step = (high - low + kTicksAtMost - 1) / kTicksAtMost;
    for (int e = low; e <= high; e += step)
        axis.ticks.push_back(
            {std::pow(10.0, e) / unit.perSi, QStringLiteral("1e%1%2")
                                                 .arg(e < 0 ? QStringLiteral("\u2212") : QString())
                                                 .arg(std::abs(e))
                                                 .toStdString()});
    return axis;
}

report::Axis timeAxis(double now)
{
    report::Axis axis;
    axis.low = now - kTraceSpan;
    axis.high = now;
    for (const int ago : {60, 45, 30, 15})
        axis.ticks.push_back({now - ago, QStringLiteral("\u2212%1 s").arg(ago).toStdString()});
    axis.ticks.push_back({now, words(QT_TRANSLATE_NOOP("TraceFigure", "now"))});
    return axis;
}

/// Longer than this between two values is a gap.
double longestStep(const std::vector<feed::Sample>& samples)
{
    std::vector<double> apart;
    for (std::size_t i = 1; i < samples.size(); ++i)
        apart.push_back(samples[i].time - samples[i - 1].time);
    double most = kShortestGap;
    if (!apart.empty()) { // a detector may speak seldom
        const auto middle = apart.begin() + static_cast<std::ptrdiff_t>(apart.size() / 2);
        std::nth_element(apart.begin(), middle, apart.end());
        most = std::max(most, kGapInIntervals * *middle);
    }
    return most;
}

/// Where no value came: hatched, and no line is drawn across it.
std::vector<report::Strip> gaps(const std::vector<feed::Sample>& samples, double most, const report::Axis& x,
                                const report::Axis& y)
{
    std::vector<report::Strip> strips;
    const auto add = [&](double from, double to) {
        if (to - from > most)
            strips.push_back({y.low, y.high, {}, true, from, to});
    };
    for (std::size_t i = 1; i < samples.size(); ++i)
        add(samples[i - 1].time, samples[i].time);
    if (!samples.empty())
        add(samples.back().time, x.high);
    return strips;
}

} // namespace

report::Figure traceFigure(const SprayFeed& feed, const report::ShownUnit& unit,
                           std::optional<LeakRate> limit)
{
    const auto& trace = feed.feed().trace();
    const double now = feed.feed().now();
    report::Figure figure;
    figure.title = words(QT_TRANSLATE_NOOP("TraceFigure", "Live trace"));
    figure.x = timeAxis(now);
    const auto range = trace->range(figure.x.low, figure.x.high);
    if (!range) {
        figure.empty = words(QT_TRANSLATE_NOOP("TraceFigure", "no value in the last minute"));
        return figure;
    }
    const auto samples = feed.feed().samples(figure.x.low, figure.x.high);
    double greatest = static_cast<double>(range->greatest);
    if (!(greatest > 0.0)) {
        figure.empty = words(QT_TRANSLATE_NOOP("TraceFigure", "the display shows zero or below"));
        return figure;
    }
    double least = greatest;
    for (const feed::Sample& sample : samples)
        if (sample.rate > 0.0)
            least = std::min(least, sample.rate);
    if (limit) {
        least = std::min(least, limit->si());
        greatest = std::max(greatest, limit->si());
        figure.levels.push_back({limit->si(), words(QT_TRANSLATE_NOOP("TraceFigure", "limit, as shown")),
                                 report::Tone::Ink, report::Line::Dashed, false});
    }
    figure.y = decadeAxis(std::max(least, greatest / kMostDecades), greatest, unit);
    report::Series series;
    series.samples = trace;
    series.longestStep = longestStep(samples);
    figure.strips = gaps(samples, series.longestStep, figure.x, figure.y);
    figure.series.push_back(std::move(series));
    for (const SprayFeed::Mark& mark : feed.marks())
        if (mark.end.value_or(now) > figure.x.low)
            figure.spans.push_back(
                {std::max(mark.start, figure.x.low), mark.end.value_or(now), std::to_string(mark.number)});
    if (const auto figures = feed.figures())
        if (figures->highest->time >= figure.x.low)
            figure.flags.push_back({figures->highest->time, figures->highest->rate, {}});
    const double last = static_cast<double>(trace->valueAt(trace->size() - 1));
    figure.spoken = QCoreApplication::translate("TraceFigure", "last value %1 %2, %3 sprays in view")
                        .arg(QString::fromStdString(report::plainRate(last * unit.perSi)),
                             QString::fromStdString(unit.spoken))
                        .arg(figure.spans.size())
                        .toStdString();
    return figure;
}

std::optional<LeakRate> limitAsShown(const model::Job& job, model::PointId point,
                                     std::optional<LeakRate> background)
{
    const auto limit = job.limitOf(point);
    if (!limit)
        return std::nullopt;
    model::Reading reading;
    reading.point = point;
    reading.at = Timestamp::now();
    reading.peak = limit;
    reading.background = background;
    // Without a dwell the response, and with it the object's volume, plays no part.
    const analysis::CorrectedReading corrected = analysis::correctedReading(job, {}, reading);
    if (corrected.factors.empty())
        return std::nullopt;
    double factor = 1.0;
    for (const analysis::FactorUsed& used : corrected.factors)
        factor *= used.multiplier;
    if (!(factor > 0.0))
        return std::nullopt;
    return *limit / factor + background.value_or(LeakRate());
}

} // namespace sealwalk::ui
