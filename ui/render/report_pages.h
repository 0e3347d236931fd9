// SPDX-License-Identifier: GPL-3.0-or-later
// Flows a report's blocks over pages. Inner header of report_pdf.
#pragma once

#include "core/report/report_content.h"
#include "ui/render/report_pdf.h"
#include "ui/render/theme.h"

#include <QPainter>
#include <QRectF>
#include <QString>

#include <functional>
#include <memory>
#include <span>
#include <vector>

namespace sealwalk::render {
class LaidMap;
class LaidSetup;
} // namespace sealwalk::render

namespace sealwalk::render::detail {

using Draw = std::function<void(QPainter&)>;

/// Lengths in px at 96 per inch.
struct PageMetrics
{
    double width = 794.0;
    double height = 1123.0;
    double left = 56.0;
    double right = 56.0;
    double top = 96.0;    ///< below the running head
    double bottom = 66.0; ///< above the foot
    [[nodiscard]] double textWidth() const { return width - left - right; }
    [[nodiscard]] double end() const { return height - bottom; }

    static PageMetrics of(Paper paper);
};

class Pages
{
public:
    Pages(const report::ReportContent& content, const PdfOptions& options);

    [[nodiscard]] std::size_t count() const { return m_pages.size(); }
    [[nodiscard]] const PageMetrics& metrics() const { return m_metrics; }
    void paint(QPainter& painter, std::size_t page) const;

private:
    void layOut();
    void newPage();
    /// Room of this height on the page, on a new one if need be; returns its top.
    double take(double height);
    void draw(Draw what) { m_pages.back().push_back(std::move(what)); }

    void statement(const report::Statement& statement);
    void section(const report::Section& section);
    void title(const report::Section& section, double following);
    /// Least height of a block that cannot be torn; 0 of one that can.
    [[nodiscard]] double leadHeight(const report::Block& block) const;
    [[nodiscard]] double leastHeight(const report::MapBlock& map) const;
    /// Height of a section's first blocks that say one thing only together: scale with legend, signatures
    /// with what was signed; 0 when it begins with another block.
    [[nodiscard]] double togetherHeight(const report::Section& section) const;
    /// The least height with which the section's first block stands under its title.
    [[nodiscard]] double firstHeight(const report::Section& section) const;
    [[nodiscard]] std::vector<double> edgesOf(const report::ReportTable& table) const;
    [[nodiscard]] double signatureHeight(const report::SignatureBlock& signatures, std::size_t first) const;
    void block(const report::FactList& list);
    void block(const report::ReportTable& table);
    void block(const report::Paragraph& paragraph);
    void block(const report::BarBlock& bars);
    void block(const report::FigureBlock& figure);
    /// Maps that follow one another.
    void maps(std::span<const report::Block> blocks);
    void drawMap(const std::shared_ptr<const LaidMap>& laid, const report::MapBlock& map);
    void block(const report::ScaleBlock& scale);
    void block(const report::LegendBlock& legend);
    void block(const report::SignatureBlock& signatures);
    void block(const report::PictureBlock& pictures);
    void block(const report::SetupBlock& setup);
    [[nodiscard]] std::shared_ptr<const LaidSetup> laidSetup(const report::SetupBlock& setup) const;
    [[nodiscard]] QImage photoOf(const std::string& sha256) const;
    void drawPhoto(const QImage& image, const report::Photo& photo, QPointF corner, double width);
    void beside(const std::vector<report::Paragraph>& words, double left, double top, double width);
    [[nodiscard]] double wordsHeight(const std::vector<report::Paragraph>& words, double width) const;
    [[nodiscard]] double headHeight(const report::ReportTable& table, const std::vector<double>& edges) const;
    /// Of a head and its first two rows, which stay together.
    [[nodiscard]] double beginHeight(const report::ReportTable& table,
                                     const std::vector<double>& edges) const;
    void tableHead(const report::ReportTable& table, const std::vector<double>& edges);
    [[nodiscard]] double rowHeight(const std::vector<report::Cell>& row,
                                   const std::vector<double>& edges) const;
    void tableRow(const report::ReportTable& table, const std::vector<report::Cell>& row,
                  const std::vector<double>& edges, double height);
    void paintHead(QPainter& painter) const;
    void paintFoot(QPainter& painter, std::size_t page) const;

    const report::ReportContent m_content; ///< in the language of the options
    const PdfOptions& m_options;
    const Theme& m_theme;
    PageMetrics m_metrics;
    std::vector<std::vector<Draw>> m_pages;
    double m_y = 0.0;
    bool m_isTight = false;  ///< rows closer together
    double m_emptiest = 0.0; ///< px left empty on a page before the last, at the most
};

/// The face of print: no ligatures, so that a search in the file finds every word.
QFont printFont(double pixels, Weight weight = Weight::Normal);
/// Height of a text wrapped to a width.
double wrappedHeight(const QString& text, const QFont& font, double width);
void wrappedText(QPainter& painter, const QRectF& where, const QString& text, const QFont& font,
                 const QColor& ink, Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignTop);

} // namespace sealwalk::render::detail
