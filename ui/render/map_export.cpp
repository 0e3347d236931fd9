// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/map_export.h"

#include "core/report/typed_words.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/picture_file.h"
#include "ui/render/report_words.h"
#include "ui/render/sheet_picture.h"

#include <QBuffer>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kWidth = 760.0;
constexpr double kMargin = 24.0;
constexpr double kHead = 46.0;
constexpr double kSheetHead = 26.0;
constexpr double kSheetFoot = 26.0;
constexpr double kTallest = 620.0; // of one sheet
constexpr double kRuler = 62.0;
constexpr double kSpace = 16.0;
constexpr int kLegendColumns = 3;
constexpr double kMetresPerInch = 0.0254;
constexpr double kPixelsPerInch = 96.0;

const Theme& paper()
{
    return Theme::named(ThemeName::Paper);
}

BandStyle printStyle()
{
    return BandStyle::print(kPixelsPerInch / 25.4);
}

struct LegendRow
{
    report::PointState state;
    report::Teeth teeth;
    double rate; ///< mbar·l/s; 0: none
    const char* words;
    bool temporary = false;
    bool conceded = false;
    [[nodiscard]] bool isBadge() const { return temporary || conceded; }
};

constexpr LegendRow kLegend[] = {
    {report::PointState::LeakOver, report::Teeth::Full, 4e-5, "leak, over the limit"},
    {report::PointState::LeakCannotSay, report::Teeth::Few, 1.1e-6, "leak, limit: cannot say"},
    {report::PointState::Shared, report::Teeth::Full, 6e-6, "shared by two neighbours"},
    {report::PointState::Echo, report::Teeth::None, 3e-5, "echo of a larger leak, as read"},
    {report::PointState::EchoTakenOut, report::Teeth::None, 0, "echo, taken out"},
    {report::PointState::Masked, report::Teeth::None, 0, "masked by a larger leak"},
    {report::PointState::LeakWithin, report::Teeth::None, 6e-8, "leak within the limit"},
    {report::PointState::Clear, report::Teeth::None, 0, "clear: no response"},
    {report::PointState::BelowDetectable, report::Teeth::None, 0, "no response, too blind"},
    {report::PointState::Permeation, report::Teeth::None, 3e-7, "permeation"},
    {report::PointState::Void, report::Teeth::None, 0, "void: reading not used"},
    {report::PointState::NotAccessible, report::Teeth::None, 0, "not accessible"},
    {report::PointState::NotSprayed, report::Teeth::None, 0, "not sprayed"},
    {report::PointState::RepairedAwaiting, report::Teeth::None, 0, "repaired, awaiting re-test"},
    {report::PointState::LeakWithin, report::Teeth::None, 0, "tab T on a mark: temporary repair", true},
    {report::PointState::LeakOver, report::Teeth::None, 0, "seal on a mark: conceded", false, true},
    {report::PointState::OtherSource, report::Teeth::None, 0, "other source, trapped gas"},
};
constexpr double kLegendRow = 23.0;

/// The name of a sheet is somebody's own; the side it is seen from may be a word of ours.
QString sheetTitle(const report::MapContent& content)
{
    const std::size_t at = content.title.rfind(", seen from ");
    return at == std::string::npos
               ? QString::fromStdString(content.title)
               : inReport(report::typed(content.title.substr(0, at)) + content.title.substr(at));
}

Status save(const std::filesystem::path& file, const QByteArray& bytes)
{
    QSaveFile out(QString::fromStdString(file.string()));
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit())
        return fail(ErrorCode::MachineFailed,
                    "\"" + file.string() + "\" could not be written: " + out.errorString().toStdString());
    return {};
}

} // namespace

LaidMap::LaidMap(const std::shared_ptr<const report::MapContent>& content, double width, double tallest)
{
    const BandStyle style = printStyle();
    const geometry::Box box = content->bounds();
    const auto scaleFor = [&](double labelsX, double labelsY) {
        const double x = (width - 16.0 - labelsX) / std::max(1.0, box.width());
        const double y = (tallest - kSheetHead - 12.0 - kSheetFoot - labelsY) / std::max(1.0, box.height());
        return std::max(1e-3, std::min(x, y));
    };
    // Labels do not shrink with the sheet: lay out once, see how far they stick out, then give them room.
    double scale = scaleFor(0.0, 0.0);
    m_picture = std::make_unique<SheetPicture>(content, scale, style);
    const QRectF all = m_picture->bounds();
    scale = scaleFor(std::max(0.0, all.width() - box.width() * scale),
                     std::max(0.0, all.height() - box.height() * scale));
    m_picture = std::make_unique<SheetPicture>(content, scale, style);
    m_height = kSheetHead + m_picture->bounds().height() + 12.0 + kSheetFoot;
}

void LaidMap::paint(QPainter& painter, const QImage& underlay, const QRectF& frame) const
{
    const Theme& theme = paper();
    const report::MapContent& content = m_picture->content();
    painter.setPen(QPen(theme.colour(Role::SheetUnder), 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    painter.setPen(theme.colour(Role::Ink));
    painter.setFont(fontOfPixels(11, Weight::Bold));
    painter.drawText(QPointF(frame.left() + 10, frame.top() + 18), sheetTitle(content));
    const QRectF bounds = m_picture->bounds();
    painter.save();
    painter.translate(frame.center().x() - bounds.center().x(),
                      frame.top() + kSheetHead - bounds.top() + 4.0);
    if (!underlay.isNull() && content.underlay) {
        const model::Underlay& under = *content.underlay;
        const double scale = m_picture->unitsPerMillimetre();
        const double k = under.millimetresPerPixel * scale;
        painter.save();
        painter.setOpacity(under.opacity);
        painter.translate(QPointF(under.corner.x, -under.corner.y) * scale);
        painter.rotate(-qRadiansToDegrees(under.rotation));
        const QSizeF size = underlay.deviceIndependentSize() * k;
        painter.drawImage(QRectF(QPointF(0, -size.height()), size), underlay);
        painter.restore();
    }
    m_picture->paint(painter, theme);
    painter.restore();
    paintScaleBar(painter, theme, QPointF(frame.left() + 12, frame.bottom() - 9),
                  m_picture->unitsPerMillimetre(), m_picture->style(), content);
}

double legendHeight(int columns)
{
    const int rows = (static_cast<int>(std::size(kLegend)) + columns - 1) / columns;
    return rows * kLegendRow;
}

double paintLegend(QPainter& painter, QPointF corner, double width, int columns)
{
    const Theme& theme = paper();
    const BandStyle style = printStyle().scaled(0.75);
    const report::MapScale scale;
    int index = 0;
    for (const LegendRow& row : kLegend) {
        const int line = index / columns;
        const QPointF at =
            corner + QPointF((index % columns) * width / columns, line * kLegendRow + kLegendRow / 2.0);
        ++index;
        paintPlate(painter, theme, {row.state, row.teeth, row.temporary, false, row.conceded},
                   at + QPointF(11, 0), 14.0);
        if (!row.isBadge()) {
            report::MapStretch stretch;
            stretch.state = row.state;
            stretch.teeth = row.teeth;
            if (row.rate > 0.0)
                stretch.rate = millibarLitresPerSecond(row.rate);
            painter.setRenderHint(QPainter::Antialiasing);
            paintBand(painter, theme, style, lookOf(stretch, scale, style),
                      QPolygonF{at + QPointF(26, 0), at + QPointF(60, 0)});
        }
        painter.setFont(fontOfPixels(10));
        painter.setPen(theme.colour(Role::Ink));
        painter.drawText(at + QPointF(row.isBadge() ? 34 : 66, 3.6), spoken("Core", row.words));
    }
    return legendHeight(columns);
}

QSizeF mapPageSize(const MapPage& page)
{
    const RecordWords record(page.language);
    double height = kMargin + kHead;
    for (const auto& sheet : page.sheets)
        height += LaidMap(sheet, kWidth - 2.0 * kMargin, kTallest).height() + kSpace;
    height += kRuler + kSpace + legendHeight(kLegendColumns) + kMargin;
    return {kWidth, std::ceil(height)};
}

void paintMapPage(QPainter& painter, const MapPage& page)
{
    const RecordWords record(page.language);
    const Theme& theme = paper();
    painter.setRenderHint(QPainter::Antialiasing);
    double y = kMargin;
    painter.setPen(theme.colour(Role::Ink));
    painter.setFont(fontOfPixels(16, Weight::Bold));
    painter.drawText(QPointF(kMargin, y + 14), inReport(page.title));
    painter.setFont(fontOfPixels(11));
    painter.setPen(theme.colour(Role::InkSoft));
    painter.drawText(QPointF(kMargin, y + 31), inReport(page.subtitle));
    y += kHead;
    const double width = kWidth - 2.0 * kMargin;
    for (std::size_t i = 0; i < page.sheets.size(); ++i) {
        const LaidMap laid(page.sheets[i], width, kTallest);
        laid.paint(painter, i < page.underlays.size() ? page.underlays[i] : QImage(),
                   QRectF(kMargin, y, width, laid.height()));
        y += laid.height() + kSpace;
    }
    if (!page.sheets.empty()) {
        const report::MapScale& scale = page.sheets.front()->scale;
        BandStyle style = printStyle();
        paintLevelRuler(painter, theme, scale, QRectF(kMargin, y, width - 96.0, kRuler - 4.0), style);
        painter.setFont(fontOfPixels(10));
        painter.setPen(theme.colour(Role::InkSoft));
        painter.drawText(QRectF(kMargin + width - 92.0, y, 92.0, kRuler), Qt::AlignRight | Qt::AlignVCenter,
                         inReport(scale.head()));
    }
    y += kRuler + kSpace;
    paintLegend(painter, QPointF(kMargin, y), width, kLegendColumns);
}

QImage underlayOf(const model::Sheet& sheet,
                  const std::function<Result<model::Picture>(const std::string& sha256)>& pictures)
{
    if (!sheet.underlay || sheet.underlay->picture.empty())
        return {};
    const Result<model::Picture> picture = pictures(sheet.underlay->picture);
    if (!picture)
        return {};
    const Result<DecodedPicture> decoded = decodePicture(picture->bytes, picture->extension);
    if (!decoded)
        return {};
    // A drawing is kept sharper than the pixels its scale counts in.
    QImage image = decoded->image;
    image.setDevicePixelRatio(image.width() / decoded->size.width());
    return image;
}

std::string mapSvg(const MapPage& page)
{
    const QSizeF size = mapPageSize(page);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(static_cast<int>(kPixelsPerInch));
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF(QPointF(), size));
    // Qt writes them into the file as they are.
    const RecordWords record(page.language);
    generator.setTitle(inReport(page.title).toHtmlEscaped());
    generator.setDescription(inReport(page.subtitle).toHtmlEscaped());
    QPainter painter(&generator);
    painter.fillRect(QRectF(QPointF(), size), paper().colour(Role::Sheet));
    paintMapPage(painter, page);
    painter.end();
    return bytes.toStdString();
}

Status writeMapSvg(const MapPage& page, const std::filesystem::path& file)
{
    return save(file, QByteArray::fromStdString(mapSvg(page)));
}

Result<std::string> mapPng(const MapPage& page, double dotsPerInch)
{
    const QSizeF size = mapPageSize(page);
    const double factor = dotsPerInch / kPixelsPerInch;
    QImage image((size * factor).toSize(), QImage::Format_RGB32);
    if (image.isNull())
        return fail(ErrorCode::MachineFailed,
                    "the picture is too large for this machine's memory; ask for fewer dots per inch");
    image.fill(paper().colour(Role::Sheet));
    QPainter painter(&image);
    painter.scale(factor, factor);
    paintMapPage(painter, page);
    painter.end();
    const int dotsPerMetre = static_cast<int>(std::lround(dotsPerInch / kMetresPerInch));
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!image.save(&buffer, "PNG"))
        return fail(ErrorCode::MachineFailed, "the picture could not be packed as PNG");
    return bytes.toStdString();
}

Status writeMapPng(const MapPage& page, const std::filesystem::path& file, double dotsPerInch)
{
    return mapPng(page, dotsPerInch).and_then([&](const std::string& bytes) -> Status {
        return save(file, QByteArray::fromStdString(bytes));
    });
}

} // namespace sealwalk::render
