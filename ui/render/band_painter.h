// SPDX-License-Identifier: GPL-3.0-or-later
// One stretch of a joint in the band grammar: casing, body by decade, teeth over the limit, filling by state.
// Plain strokes with flat caps, so that screen, SVG and PDF agree; colour repeats what shape already says.
#pragma once

#include "core/report/map_content.h"
#include "ui/render/band_style.h"
#include "ui/render/theme.h"

#include <QPolygonF>

#include <optional>

class QPainter;

namespace sealwalk::render {

struct BandLook
{
    report::PointState state = report::PointState::NotSprayed;
    report::Teeth teeth = report::Teeth::None;
    std::optional<double> position; ///< of the rate on the decade scale; none: no rate colour
    double width = 7.0;             ///< of the body
};

/// How a stretch of a map is to be painted.
BandLook lookOf(const report::MapStretch& stretch, const report::MapScale& scale, const BandStyle& style);

/// A stretch along `line`; a closed line is a whole joint without ends.
void paintBand(QPainter& painter, const Theme& theme, const BandStyle& style, const BandLook& look,
               const QPolygonF& line, bool closed = false);

/// A spot as a disc. The radius is that of the body, swell not included.
void paintDisc(QPainter& painter, const Theme& theme, const BandStyle& style, const BandLook& look,
               QPointF centre, double radius);

/// Radius a disc really takes, casing and teeth included.
double discReach(const BandStyle& style, const BandLook& look, double radius);
/// How far a band reaches from its middle line, casing and teeth included.
double bandReach(const BandStyle& style, const BandLook& look);

} // namespace sealwalk::render
