// SPDX-License-Identifier: GPL-3.0-or-later
// Photos and drawings from disk, made fit to lie under a sheet.
#pragma once

#include "core/base/result.h"

#include <QImage>
#include <QSizeF>
#include <QString>

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::render {

/// A picture as it is kept in the history.
struct PictureFile
{
    std::vector<std::uint8_t> bytes;
    std::string extension; ///< "png", "jpg", "svg"
    QSizeF size;           ///< px that the scale of an underlay counts in
};

/// The longest side, px, that is kept; larger pictures are scaled down.
inline constexpr int kLongestSide = 4096;

/// Pages of a PDF file; 1 for any other.
Result<int> pagesOf(const QString& file);

/// Reads PNG, JPEG, BMP, GIF, TIFF or WebP (as far as installed), SVG, or a page (from 0) of a PDF. Refuses
/// what is missing, empty, larger than 200 MB, damaged or of another kind.
Result<PictureFile> readPicture(const QString& file, int page = 0);

/// A kept picture as an image to paint. SVG is drawn larger than its own size, to stay sharp when zoomed.
struct DecodedPicture
{
    QImage image;
    QSizeF size; ///< px that the scale of an underlay counts in
};
Result<DecodedPicture> decodePicture(const std::vector<std::uint8_t>& bytes, const std::string& extension);

} // namespace sealwalk::render
