// SPDX-License-Identifier: GPL-3.0-or-later
// A picture under a sheet, ready to be painted at any zoom.
#pragma once

#include "core/model/sketch.h"
#include "ui/render/picture_file.h"

#include <cstddef>
#include <vector>

class QPainter;

namespace sealwalk::render {

class Theme;

/// A decoded picture and its halves, down to the size of a stamp: painted much smaller than it is, a large
/// picture would cost a full read of it each time, and its thin lines would break up.
class UnderlayPicture
{
public:
    UnderlayPicture() = default;
    explicit UnderlayPicture(const DecodedPicture& picture);

    /// Paints it where the underlay says. Origin: the sheet's; `scale` px per mm. In a dim hall it stays
    /// below the brightest an area may be there, however light the paper in it is.
    void paint(QPainter& painter, const Theme& theme, const model::Underlay& underlay, double scale) const;
    [[nodiscard]] std::size_t bytes() const;

private:
    std::vector<QImage> m_halves; ///< each half as large as the one before; the first is the picture itself
    QSizeF m_size;                ///< px that the scale of an underlay counts in
};

/// How opaque a picture is painted that is to be seen with `opacity` on paper, 0 to 1.
double underlayOpacity(const Theme& theme, double opacity);

} // namespace sealwalk::render
