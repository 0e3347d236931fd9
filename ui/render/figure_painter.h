// SPDX-License-Identifier: GPL-3.0-or-later
// The one painter of all plots: window, PDF and pictures.
#pragma once

#include "core/report/figure.h"
#include "ui/render/theme.h"

#include <QRectF>

class QPainter;

namespace sealwalk::render {

struct FigureStyle
{
    double text = 11.0;            ///< font size, device units
    double unit = 1.0;             ///< one screen pixel, device units
    double devicePixelRatio = 1.0; ///< columns per device unit when long series are thinned
};

/// Paints `figure` into `where`, axis texts included.
void paintFigure(QPainter& painter, const Theme& theme, const report::Figure& figure, const QRectF& where,
                 const FigureStyle& style = {});

/// The part of `where` that the curves take.
QRectF plotArea(const report::Figure& figure, const QRectF& where, const FigureStyle& style = {});

} // namespace sealwalk::render
