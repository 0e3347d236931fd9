// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/underlay_picture.h"

#include "ui/render/theme.h"

#include <QPainter>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr int kSmallest = 256;             // px; no halves below it
constexpr double kBrightestInHall = 0.065; // relative luminance; no area may be above 0.07
constexpr double kBrightestInSlate = 0.12; // a page under the sheet does not outshine the bands

/// Relative luminance of white laid over a colour.
double luminanceUnderWhite(const QColor& ground, double opacity)
{
    const auto part = [&](double value) {
        const double mixed = value + opacity * (1.0 - value);
        return mixed <= 0.04045 ? mixed / 12.92 : std::pow((mixed + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(ground.redF()) + 0.7152 * part(ground.greenF()) + 0.0722 * part(ground.blueF());
}

/// The most opaque that white may lie over the sheet.
double mostOpaque(const Theme& theme)
{
    const double brightest = theme.name() == ThemeName::Hall ? kBrightestInHall : kBrightestInSlate;
    double least = 0.0;
    double most = 1.0;
    constexpr int kHalvings = 20;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (least + most) / 2.0;
        (luminanceUnderWhite(theme.colour(Role::Sheet), middle) < brightest ? least : most) = middle;
    }
    return least;
}

} // namespace

double underlayOpacity(const Theme& theme, double opacity)
{
    if (!theme.isDark())
        return opacity;
    // Its whole range, so that the slider keeps its use; steep at first, so that a pale one is still seen.
    const double left = 1.0 - std::clamp(opacity, 0.0, 1.0);
    return mostOpaque(theme) * (1.0 - left * left);
}

UnderlayPicture::UnderlayPicture(const DecodedPicture& picture)
    : m_size(picture.size)
{
    QImage image =
        picture.image.hasAlphaChannel() ? picture.image : picture.image.convertToFormat(QImage::Format_RGB32);
    while (!image.isNull()) {
        m_halves.push_back(image);
        if (std::max(image.width(), image.height()) < 2 * kSmallest)
            break;
        image = image.scaled(std::max(1, image.width() / 2), std::max(1, image.height() / 2),
                             Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
}

void UnderlayPicture::paint(QPainter& painter, const Theme& theme, const model::Underlay& underlay,
                            double scale) const
{
    if (m_halves.empty())
        return;
    const QSizeF size = m_size * underlay.millimetresPerPixel * scale;
    // The smallest that still has a pixel for each of the screen's.
    const double wanted = size.width() * painter.device()->devicePixelRatioF();
    std::size_t use = 0;
    while (use + 1 < m_halves.size() && m_halves[use + 1].width() >= wanted)
        ++use;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(underlayOpacity(theme, underlay.opacity));
    painter.translate(underlay.corner.x * scale, -underlay.corner.y * scale);
    painter.rotate(-qRadiansToDegrees(underlay.rotation));
    painter.drawImage(QRectF(QPointF(0.0, -size.height()), size), m_halves[use]);
    painter.restore();
}

std::size_t UnderlayPicture::bytes() const
{
    std::size_t sum = 0;
    for (const QImage& image : m_halves)
        sum += static_cast<std::size_t>(image.sizeInBytes());
    return sum;
}

} // namespace sealwalk::render
