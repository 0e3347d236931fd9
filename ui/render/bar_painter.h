// SPDX-License-Identifier: GPL-3.0-or-later
// A side chart drawn with a painter alone: on paper in any thread, and the marks over the chart of a window.
#pragma once

#include "core/report/bars.h"
#include "ui/render/figure_painter.h"
#include "ui/render/theme.h"

#include <QColor>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <functional>

class QPainter;

namespace sealwalk::render {

inline constexpr double kBarShare = 0.62; ///< of the room between two bars

/// The axis of a figure's values, in powers of ten taken out of its labels.
struct BarAxis
{
    double divisor = 1.0;
    double top = 1.0; ///< in units of `divisor`
    double step = 1.0;
    QString title;

    static BarAxis of(const report::BarFigure& figure);
};

/// Where the bars lie. `at` maps a value over the axis's divisor, and a row counted from below, to a place.
struct BarPlace
{
    QRectF whole;
    QRectF plot;
    std::function<QPointF(QPointF)> at;
};

struct BarColours
{
    QColor fill;
    QColor edge;
};
BarColours coloursOf(const report::BarPart& part, const Theme& theme);

/// Whiskers, limits, hatches and words over the bars.
void paintBarMarks(QPainter& painter, const Theme& theme, const report::BarFigure& figure,
                   const BarPlace& place, const FigureStyle& style);

/// The whole side chart; stays vector in PDF and SVG. Qt Charts is not used for it: its scenes belong to the
/// thread of the window, and reports are painted beside that.
void paintBars(QPainter& painter, const Theme& theme, const report::BarFigure& figure, const QRectF& where,
               const FigureStyle& style = {});

} // namespace sealwalk::render
