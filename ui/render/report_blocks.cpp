// SPDX-License-Identifier: GPL-3.0-or-later
// Words, plots, photos and signatures of a report.
#include "ui/render/bar_painter.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/figure_painter.h"
#include "ui/render/map_export.h"
#include "ui/render/picture_file.h"
#include "ui/render/report_pages.h"
#include "ui/render/report_words.h"
#include "ui/render/setup_painter.h"

#include <QImage>

#include <algorithm>

namespace sealwalk::render::detail {

namespace {

constexpr double kText = 11.0;
constexpr double kPlotWidth = 400.0;
constexpr double kBarsHeight = 128.0;
constexpr double kPlotHeight = 280.0;
constexpr double kPlotGap = 18.0;
constexpr double kLeastPlot = 0.75; // of its height, to fill a page
constexpr double kPhotoHeight = 220.0;
constexpr double kRulerHeight = 60.0;
constexpr int kLegendColumns = 3;
constexpr std::size_t kSignatures = 3; // beside one another
constexpr double kSignatureGap = 12.0;

QString words(const std::string& text)
{
    return QString::fromStdString(text);
}

QFont faceOf(const report::Paragraph& paragraph)
{
    return printFont(kText + (paragraph.look == report::Paragraph::Look::Strong ? 1.0 : 0.0),
                     paragraph.look == report::Paragraph::Look::Strong ? Weight::Bold : Weight::Normal);
}

QSizeF sizeIn(const QImage& image, double width)
{
    return image.isNull() ? QSizeF()
                          : QSizeF(image.size()).scaled(QSizeF(width, kPhotoHeight), Qt::KeepAspectRatio);
}

} // namespace

void Pages::block(const report::Paragraph& paragraph)
{
    const QFont face = faceOf(paragraph);
    const double width = m_metrics.textWidth();
    const double height = wrappedHeight(words(paragraph.text), face, width) + 6.0;
    const double top = take(height);
    const QColor ink =
        m_theme.colour(paragraph.look == report::Paragraph::Look::Soft ? Role::InkSoft : Role::Ink);
    draw([=, this, text = words(paragraph.text)](QPainter& painter) {
        wrappedText(painter, QRectF(m_metrics.left, top + 3, width, height), text, face, ink);
    });
}

double Pages::wordsHeight(const std::vector<report::Paragraph>& all, double width) const
{
    double height = 0.0;
    for (const report::Paragraph& paragraph : all)
        height += wrappedHeight(words(paragraph.text), faceOf(paragraph), width) + 5.0;
    return height;
}

void Pages::beside(const std::vector<report::Paragraph>& all, double left, double top, double width)
{
    double y = top + 4.0;
    for (const report::Paragraph& paragraph : all) {
        const QFont face = faceOf(paragraph);
        const double height = wrappedHeight(words(paragraph.text), face, width);
        draw([=, this, text = words(paragraph.text)](QPainter& painter) {
            wrappedText(painter, QRectF(left, y, width, height), text, face, m_theme.colour(Role::Ink));
        });
        y += height + 5.0;
    }
}

void Pages::block(const report::BarBlock& bars)
{
    const double width = m_metrics.textWidth() - kPlotWidth - kPlotGap;
    const double height = std::max(kBarsHeight, wordsHeight(bars.words, width)) + 8.0;
    const double top = take(height);
    draw([=, this, &bars](QPainter& painter) {
        paintBars(painter, m_theme, bars.figure, QRectF(m_metrics.left, top + 4, kPlotWidth, kBarsHeight));
    });
    beside(bars.words, m_metrics.left + kPlotWidth + kPlotGap, top, width);
}

void Pages::block(const report::FigureBlock& figure)
{
    const double width = m_metrics.textWidth() - kPlotWidth - kPlotGap;
    const double room = m_metrics.end() - m_y - 8.0;
    const double least = std::max(kLeastPlot * kPlotHeight, wordsHeight(figure.words, width));
    const double plot = room < least ? kPlotHeight : std::min(room, kPlotHeight);
    const double height = std::max(plot, wordsHeight(figure.words, width)) + 8.0;
    const double top = take(height);
    draw([=, this, &figure](QPainter& painter) {
        FigureStyle style;
        style.text = kText - 1.0;
        style.devicePixelRatio = 4.0; // paper shows more than a screen
        paintFigure(painter, m_theme, figure.figure, QRectF(m_metrics.left, top + 4, kPlotWidth, plot),
                    style);
    });
    beside(figure.words, m_metrics.left + kPlotWidth + kPlotGap, top, width);
}

double Pages::leadHeight(const report::Block& block) const
{
    const double beside = m_metrics.textWidth() - kPlotWidth - kPlotGap;
    if (const auto* map = std::get_if<report::MapBlock>(&block))
        return leastHeight(*map);
    if (const auto* figure = std::get_if<report::FigureBlock>(&block))
        return std::max(kLeastPlot * kPlotHeight, wordsHeight(figure->words, beside)) + 8.0;
    if (const auto* bars = std::get_if<report::BarBlock>(&block))
        return std::max(kBarsHeight, wordsHeight(bars->words, beside)) + 8.0;
    if (const auto* setup = std::get_if<report::SetupBlock>(&block))
        return laidSetup(*setup)->height() + 8.0;
    return 0.0;
}

void Pages::block(const report::ScaleBlock& scale)
{
    const double top = take(kRulerHeight + 6.0);
    draw([=, this, &scale](QPainter& painter) {
        const BandStyle style = BandStyle::print(96.0 / 25.4);
        paintLevelRuler(painter, m_theme, scale.scale,
                        QRectF(m_metrics.left, top, m_metrics.textWidth() - 90.0, kRulerHeight), style);
        wrappedText(painter, QRectF(m_metrics.width - m_metrics.right - 86.0, top, 86.0, kRulerHeight),
                    inReport(scale.scale.head()), printFont(kText), m_theme.colour(Role::InkSoft),
                    Qt::AlignRight | Qt::AlignVCenter);
    });
}

void Pages::block(const report::LegendBlock&)
{
    const double top = take(legendHeight(kLegendColumns) + 6.0);
    draw([=, this](QPainter& painter) {
        paintLegend(painter, QPointF(m_metrics.left, top + 2), m_metrics.textWidth(), kLegendColumns);
    });
}

double Pages::signatureHeight(const report::SignatureBlock& signatures, std::size_t first) const
{
    const double width = (m_metrics.textWidth() - kSignatureGap * (kSignatures - 1)) / kSignatures;
    double height = 0.0;
    for (std::size_t k = first; k < std::min(first + kSignatures, signatures.lines.size()); ++k)
        height = std::max(height,
                          wrappedHeight(words(signatures.lines[k].name), printFont(kText + 1), width) +
                              wrappedHeight(words(signatures.lines[k].small), printFont(kText - 1), width));
    return height + 28.0;
}

double Pages::togetherHeight(const report::Section& section) const
{
    double height = 0.0;
    for (const report::Block& block : section.blocks) {
        if (std::holds_alternative<report::ScaleBlock>(block))
            height += kRulerHeight + 6.0;
        else if (std::holds_alternative<report::LegendBlock>(block))
            height += legendHeight(kLegendColumns) + 6.0;
        else if (const auto* signatures = std::get_if<report::SignatureBlock>(&block))
            for (std::size_t i = 0; i < signatures->lines.size(); i += kSignatures)
                height += signatureHeight(*signatures, i);
        else if (const auto* words = std::get_if<report::Paragraph>(&block); words != nullptr && height > 0.0)
            height += wordsHeight({*words}, m_metrics.textWidth()) + 1.0;
        else
            break;
    }
    // What fills most of a page is better begun where there is room.
    return height < 0.5 * (m_metrics.end() - m_metrics.top) ? height : 0.0;
}

void Pages::block(const report::SignatureBlock& signatures)
{
    const double gap = kSignatureGap;
    const std::size_t columns = kSignatures;
    const double width = (m_metrics.textWidth() - gap * (columns - 1)) / columns;
    for (std::size_t i = 0; i < signatures.lines.size(); i += columns) {
        const double height = signatureHeight(signatures, i);
        const double top = take(height);
        for (std::size_t k = i; k < std::min(i + columns, signatures.lines.size()); ++k) {
            const report::SignatureLine line = signatures.lines[k];
            const double left = m_metrics.left + static_cast<double>(k - i) * (width + gap);
            draw([=, this](QPainter& painter) {
                wrappedText(painter, QRectF(left, top + 4, width, 14), words(line.role), printFont(kText - 1),
                            m_theme.colour(Role::InkFaint));
                wrappedText(painter, QRectF(left, top + 18, width, 30), words(line.name),
                            printFont(kText + 1), m_theme.colour(Role::Ink));
                const double used = wrappedHeight(words(line.name), printFont(kText + 1), width);
                wrappedText(painter, QRectF(left, top + 18 + used, width, 60), words(line.small),
                            printFont(kText - 1), m_theme.colour(Role::InkSoft));
                painter.setPen(QPen(m_theme.colour(Role::Edge), 0.8));
                painter.drawLine(QLineF(left, top + height - 4, left + width, top + height - 4));
            });
        }
    }
}

void Pages::block(const report::PictureBlock& pictures)
{
    constexpr std::size_t kInRow = 2;
    const double width = (m_metrics.textWidth() - kPlotGap) / kInRow;
    for (std::size_t first = 0; first < pictures.photos.size(); first += kInRow) {
        const std::size_t end = std::min(first + kInRow, pictures.photos.size());
        double height = 0.0;
        std::vector<QImage> images;
        for (std::size_t i = first; i < end; ++i) {
            const report::Photo& photo = pictures.photos[i];
            images.push_back(photoOf(photo.sha256));
            const QSizeF size = sizeIn(images.back(), width);
            height = std::max(height, size.height() + 8.0 +
                                          wrappedHeight(words(photo.caption), printFont(kText - 1), width));
        }
        const double top = take(height + 12.0) + 4.0;
        for (std::size_t i = first; i < end; ++i) {
            const double left = m_metrics.left + static_cast<double>(i - first) * (width + kPlotGap);
            drawPhoto(images[i - first], pictures.photos[i], QPointF(left, top), width);
        }
    }
}

std::shared_ptr<const LaidSetup> Pages::laidSetup(const report::SetupBlock& setup) const
{
    return std::make_shared<const LaidSetup>(setup.sketch, m_metrics.textWidth(),
                                             SetupStyle{.text = kText, .shapesText = false});
}

void Pages::block(const report::SetupBlock& setup)
{
    const auto laid = laidSetup(setup);
    const double top = take(laid->height() + 8.0) + 4.0;
    draw([=, this](QPainter& painter) { laid->paint(painter, m_theme, QPointF(m_metrics.left, top)); });
}

QImage Pages::photoOf(const std::string& sha256) const
{
    if (!m_options.pictures)
        return {};
    const Result<model::Picture> found = m_options.pictures(sha256);
    if (!found)
        return {};
    const Result<DecodedPicture> decoded = decodePicture(found->bytes, found->extension);
    return decoded ? decoded->image : QImage();
}

void Pages::drawPhoto(const QImage& image, const report::Photo& photo, QPointF corner, double width)
{
    const QSizeF size = sizeIn(image, width);
    const QString caption = image.isNull() ? spoken("Core", "%1 (photo %2 cannot be shown)")
                                                 .arg(words(photo.caption), words(photo.sha256.substr(0, 12)))
                                           : words(photo.caption);
    draw([=, this](QPainter& painter) {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        if (!image.isNull())
            painter.drawImage(QRectF(corner, size), image);
        wrappedText(painter, QRectF(corner + QPointF(0, size.height() + 4), QSizeF(width, kPhotoHeight)),
                    caption, printFont(kText - 1), m_theme.colour(Role::InkSoft));
    });
}

} // namespace sealwalk::render::detail
