// SPDX-License-Identifier: GPL-3.0-or-later
// Plates: the lettered marks that repeat in shape what a band says. Also the glyph of a value against the
// limit.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/report/map_content.h"
#include "ui/render/theme.h"

#include <QPointF>
#include <QSizeF>

class QPainter;

namespace sealwalk::render {

struct PlateLook
{
    report::PointState state = report::PointState::NotSprayed;
    report::Teeth teeth = report::Teeth::None; ///< of an answered or shared point: how it stands
    bool temporary = false;                    ///< tab T at the upper right corner
    bool overdue = false;                      ///< the tab turns to the colour of "over"
    bool conceded = false;                     ///< seal at the lower right corner
};

PlateLook plateOf(const report::MapStretch& stretch);

/// @param size  nominal height, device units: 18 on maps, 14 in tables
void paintPlate(QPainter& painter, const Theme& theme, const PlateLook& look, QPointF centre, double size);

/// Room a plate takes around its centre, device units.
QSizeF plateRoom(const PlateLook& look, double size);

/// The limit as a level line with the value's block above, below or across it; no block: no answer.
void paintLimitGlyph(QPainter& painter, const Theme& theme, analysis::Verdict verdict, const QRectF& where);

/// Colour of a verdict's words.
QColor verdictColour(const Theme& theme, analysis::Verdict verdict);

} // namespace sealwalk::render
