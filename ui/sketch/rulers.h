// SPDX-License-Identifier: GPL-3.0-or-later
// Millimetres along the top and left edges of the sheet.
#pragma once

#include "ui/render/theme.h"
#include "ui/sketch/sheet_view.h"

#include <QSizeF>

class QPainter;

namespace sealwalk::ui {

/// @param at     where the hand is, px: marked on both
/// @param width  px
void paintRulers(QPainter& painter, const render::Theme& theme, const SheetView& view, QSizeF size,
                 QPointF at, double width);

} // namespace sealwalk::ui
