// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"

#include <QPainter>

#include <cstdlib>

namespace sealwalk::test {

QImage painted(int width, int height, const QColor& ground, const std::function<void(QPainter&)>& paint,
               double ratio)
{
    QImage image(static_cast<int>(width * ratio), static_cast<int>(height * ratio),
                 QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio);
    image.fill(ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter);
    return image;
}

void keep(const QImage& image, const QString& name)
{
    const QString folder = qEnvironmentVariable("SEALWALK_PICTURES");
    if (!folder.isEmpty())
        image.save(folder + u'/' + name + QStringLiteral(".png"));
}

int like(const QImage& image, const QRect& where, const QColor& colour, int tolerance)
{
    int count = 0;
    const QRect inside = where.intersected(image.rect());
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x) {
            const QColor pixel = image.pixelColor(x, y);
            if (std::abs(pixel.red() - colour.red()) <= tolerance &&
                std::abs(pixel.green() - colour.green()) <= tolerance &&
                std::abs(pixel.blue() - colour.blue()) <= tolerance)
                ++count;
        }
    return count;
}

int unlike(const QImage& image, const QRect& where, const QColor& colour, int tolerance)
{
    const QRect inside = where.intersected(image.rect());
    return inside.width() * inside.height() - like(image, inside, colour, tolerance);
}

} // namespace sealwalk::test
