// SPDX-License-Identifier: GPL-3.0-or-later
// The leak map as a picture of its own: sheets with titles, scale, limit and marks. Always on paper colours.
#pragma once

#include "core/base/result.h"
#include "core/model/picture.h"
#include "core/report/map_content.h"
#include "ui/render/language.h"
#include "ui/render/sheet_picture.h"

#include <QImage>
#include <QSizeF>

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

class QPainter;

namespace sealwalk::render {

struct MapPage
{
    std::string title;    ///< object and job; what was typed may be marked (core/report/typed_words.h)
    std::string subtitle; ///< round, moment, date
    std::vector<std::shared_ptr<const report::MapContent>> sheets;
    std::vector<QImage> underlays; ///< one per sheet, null where there is none; or empty
    RecordLanguage language;       ///< none: English
};

/// One sheet laid out to a width, in a frame with its title and scale bar. Always on paper colours; made and
/// painted under the RecordWords of whatever it is part of.
class LaidMap
{
public:
    /// @param tallest  px at 96 per inch; the map is made smaller rather than taller
    LaidMap(const std::shared_ptr<const report::MapContent>& content, double width, double tallest);
    [[nodiscard]] double height() const { return m_height; }
    void paint(QPainter& painter, const QImage& underlay, const QRectF& frame) const;

private:
    std::unique_ptr<SheetPicture> m_picture;
    double m_height = 0.0; ///< frame and texts included
};

/// Size the page wants, px at 96 per inch.
QSizeF mapPageSize(const MapPage& page);
void paintMapPage(QPainter& painter, const MapPage& page);

/// The page as an SVG document; text stays text, sized in px.
std::string mapSvg(const MapPage& page);
/// The page as a PNG file. @param dotsPerInch  72 to 1200; kept in it as its physical size
Result<std::string> mapPng(const MapPage& page, double dotsPerInch = 192.0);
/// The same as a file. Replaces the file only when all of it was written.
Status writeMapSvg(const MapPage& page, const std::filesystem::path& file);
Status writeMapPng(const MapPage& page, const std::filesystem::path& file, double dotsPerInch = 192.0);

/// The picture under a sheet; null when it has none, or none that can be shown (PDF pages: the first).
QImage underlayOf(const model::Sheet& sheet,
                  const std::function<Result<model::Picture>(const std::string& sha256)>& pictures);

/// The marks with their words, in `columns` columns; returns the height taken.
double paintLegend(QPainter& painter, QPointF corner, double width, int columns);
double legendHeight(int columns);

} // namespace sealwalk::render
