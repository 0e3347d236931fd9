// SPDX-License-Identifier: GPL-3.0-or-later
// Paints into images and keeps them where SEALWALK_PICTURES names a folder, to be looked at.
#pragma once

#include <QColor>
#include <QImage>
#include <QString>

#include <functional>

class QPainter;

namespace sealwalk::test {

/// A picture of `width` by `height` logical pixels on `ground`.
QImage painted(int width, int height, const QColor& ground, const std::function<void(QPainter&)>& paint,
               double ratio = 1.0);

void keep(const QImage& image, const QString& name);

/// How many pixels in a rectangle differ from `colour` by more than `tolerance` in any channel.
int unlike(const QImage& image, const QRect& where, const QColor& colour, int tolerance = 12);
int like(const QImage& image, const QRect& where, const QColor& colour, int tolerance = 12);

} // namespace sealwalk::test
