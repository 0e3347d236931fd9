// SPDX-License-Identifier: GPL-3.0-or-later
// Line icons in the theme's ink, crisp at every scale, following the theme by themselves.
#pragma once

#include "ui/render/theme.h"

#include <QIcon>
#include <QPixmap>

namespace sealwalk::render {

/// An icon of resources/icons by its name without ending ("repair"). It paints in the program's theme of the
/// moment; disabled and switched-on buttons get the colours that read on their ground.
QIcon icon(const QString& name, Role ink = Role::Ink);

/// One picture of an icon. `size` in logical pixels; cached by name, size, colour and ratio.
QPixmap iconPixmap(const QString& name, int size, const QColor& ink, double devicePixelRatio);

/// Paints an icon as vectors: for prints and custom widgets.
void paintIcon(QPainter& painter, const QString& name, const QRectF& where, const QColor& ink);

} // namespace sealwalk::render
