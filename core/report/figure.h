// SPDX-License-Identifier: GPL-3.0-or-later
// A plot as data: axes with units, series, levels, marks. One painter draws them all.
#pragma once

#include "core/report/long_series.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::report {

/// Which ink. Chart tones never mean a verdict.
enum class Tone
{
    Ink,
    Soft,
    Accent,
    Unsure,
    Chart1,
    Chart2,
    Chart3,
    Chart4,
    Chart5,
};

enum class Line
{
    None,
    Solid,
    Dashed,
    Dotted,
};

enum class Mark
{
    None,
    Circle,
    Square,
    Triangle, ///< point down
    Diamond,
    Stem, ///< a line from zero: residuals
};

struct Axis
{
    std::string unit; ///< stands at the axis
    double low = 0.0;
    double high = 1.0;        ///< > low
    bool logarithmic = false; ///< low and high > 0
    struct Tick
    {
        double at = 0.0;
        std::string text;
    };
    std::vector<Tick> ticks; ///< empty: round steps are found
};

struct Series
{
    std::string name; ///< written beside it; empty: not written
    std::vector<double> x;
    std::vector<double> y;
    std::shared_ptr<const LongSeries> samples; ///< instead of x and y
    std::vector<bool> hollow;                  ///< per point: only a bound; empty: none is
    Tone tone = Tone::Chart1;
    Line line = Line::Solid;
    Mark mark = Mark::None;
    double width = 1.8; ///< px
    struct Ends
    {
        double low = 0.0;
        double high = 0.0; ///< not above low: no range is drawn
    };
    std::vector<Ends> ranges = {}; ///< per point: 95 %, drawn as a bar with ends; empty: none has one
    std::vector<bool> apart =
        {};                   ///< per point: a value is missing before it, no line leads to it; empty: none
    double longestStep = 0.0; ///< of `samples`, in x: no line is drawn over a longer one; 0: over any
};

/// A level value across the plot.
struct Level
{
    double at = 0.0;
    std::string text;
    Tone tone = Tone::Ink;
    Line line = Line::Dashed;
    bool toothed = false; ///< a limit
};

/// An upright line across the plot.
struct Moment
{
    double at = 0.0;
    std::string text;
    Line line = Line::Dotted;
};

/// A shaded stretch of time: helium on.
struct Span
{
    double from = 0.0;
    double to = 0.0;
    std::string text;
};

/// A shaded range of values: three times the noise.
struct Strip
{
    double low = 0.0;
    double high = 0.0;
    std::string text;
    bool hatched = false;       ///< below what could be seen
    std::optional<double> from; ///< none: from the left edge
    std::optional<double> to;
};

/// A hatched area, for what cannot be told: corners in order.
struct Area
{
    std::vector<double> x;
    std::vector<double> y;
    std::string text;
};

/// A single place: the highest value held.
struct Flag
{
    double x = 0.0;
    double y = 0.0;
    std::string text;
};

struct Figure
{
    std::string title;  ///< for screen readers and captions
    std::string spoken; ///< what the plot shows, in a sentence with figures
    Axis x;
    Axis y;
    std::vector<Series> series;
    std::vector<Level> levels;
    std::vector<Moment> moments;
    std::vector<Span> spans;
    std::vector<Strip> strips;
    std::vector<Area> areas;
    std::vector<Flag> flags;
    std::optional<Axis> residualAxis; ///< a strip below for `residuals`, on the same x axis
    std::vector<Series> residuals;    ///< named inside the strip
    std::string empty;                ///< said instead of a plot when there is nothing to plot
};

/// Sets an axis to hold all of `values` with a little room; keeps what it has when there are none.
void fitAxis(Axis& axis, const std::vector<double>& values, bool fromZero);

} // namespace sealwalk::report
