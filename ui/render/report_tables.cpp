// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of a report: as wide as their words need, torn only between rows.
#include "ui/render/column_widths.h"
#include "ui/render/line_breaks.h"
#include "ui/render/plate_painter.h"
#include "ui/render/report_pages.h"

#include <algorithm>

namespace sealwalk::render::detail {

namespace {

constexpr double kText = 11.0;
constexpr double kSmall = 9.0;
constexpr double kCellPad = 4.0;
constexpr double kRow = 6.0; // above and below a row's words
constexpr double kTightRow = 4.0;
constexpr double kPlate = 13.0;
constexpr double kPlateRoom = 24.0; // two that overlap
constexpr double kGlyph = 20.0;
constexpr double kShortTitle = 70.0; // px a title asks for on one line

QString words(const std::string& text)
{
    return QString::fromStdString(text);
}

QFont faceOf(const report::Cell& cell)
{
    return printFont(kText, cell.strong ? Weight::Bold : Weight::Normal);
}

/// What stands before the words.
double marksWidth(const report::Cell& cell)
{
    return (cell.plate ? kPlateRoom : 0.0) + (cell.verdict ? kGlyph + 4.0 : 0.0);
}

void widen(ColumnNeed& need, const TextWidths& text, double beside)
{
    need.line = std::max(need.line, text.line + beside);
    need.word = std::max(need.word, text.word + beside);
}

} // namespace

double Pages::rowHeight(const std::vector<report::Cell>& row, const std::vector<double>& edges) const
{
    double most = 0.0;
    for (std::size_t c = 0; c < row.size() && c + 1 < edges.size(); ++c) {
        const report::Cell& cell = row[c];
        const double width = edges[c + 1] - edges[c] - 2.0 * kCellPad - marksWidth(cell);
        const double height = wrappedHeight(words(cell.text), faceOf(cell), width) +
                              wrappedHeight(words(cell.small), printFont(kSmall), width);
        most = std::max({most, height, cell.verdict || cell.plate ? 17.0 : 0.0});
    }
    return most + (m_isTight ? kTightRow : kRow);
}

double Pages::headHeight(const report::ReportTable& table, const std::vector<double>& edges) const
{
    double height = 0.0;
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        height = std::max(height, wrappedHeight(words(table.columns[c].title), printFont(kSmall),
                                                edges[c + 1] - edges[c] - 2.0 * kCellPad));
    return height + 6.0;
}

void Pages::tableHead(const report::ReportTable& table, const std::vector<double>& edges)
{
    const QFont face = printFont(kSmall);
    const double height = headHeight(table, edges);
    const double top = take(height);
    draw([=, this, &table](QPainter& painter) {
        for (std::size_t c = 0; c < table.columns.size(); ++c)
            wrappedText(
                painter,
                QRectF(edges[c] + kCellPad, top + 2, edges[c + 1] - edges[c] - 2.0 * kCellPad, height - 4.0),
                words(table.columns[c].title), face, m_theme.colour(Role::InkFaint),
                (table.columns[c].right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom);
        painter.setPen(QPen(m_theme.colour(Role::Edge), 0.8));
        painter.drawLine(QLineF(edges.front(), top + height - 0.5, edges.back(), top + height - 0.5));
    });
}

void Pages::tableRow(const report::ReportTable& table, const std::vector<report::Cell>& row,
                     const std::vector<double>& edges, double height)
{
    const double top = take(height);
    draw([=, this, &table, &row](QPainter& painter) {
        for (std::size_t c = 0; c < row.size() && c + 1 < edges.size(); ++c) {
            const report::Cell& cell = row[c];
            QRectF room(edges[c] + kCellPad, top + 3, edges[c + 1] - edges[c] - 2.0 * kCellPad, height - 5.0);
            QColor ink = m_theme.colour(Role::Ink);
            if (cell.plate) {
                paintPlate(painter, m_theme,
                           {cell.plate->state, cell.plate->teeth, cell.plate->temporary, cell.plate->overdue,
                            cell.plate->conceded},
                           QPointF(room.left() + kPlate * 0.7, room.top() + 6.5), kPlate);
                room.setLeft(room.left() + kPlateRoom);
            }
            if (cell.verdict) {
                paintLimitGlyph(painter, m_theme, *cell.verdict,
                                QRectF(room.left(), room.top() - 2.0, kGlyph, 17.0));
                room.setLeft(room.left() + kGlyph + 4.0);
                ink = verdictColour(m_theme, *cell.verdict);
            }
            const QFont face = faceOf(cell);
            const Qt::Alignment side = table.columns[c].right ? Qt::AlignRight : Qt::AlignLeft;
            wrappedText(painter, room, words(cell.text), face, ink, side | Qt::AlignTop);
            if (!cell.small.empty())
                wrappedText(painter,
                            room.adjusted(0, wrappedHeight(words(cell.text), face, room.width()), 0, 0),
                            words(cell.small), printFont(kSmall), m_theme.colour(Role::InkFaint),
                            side | Qt::AlignTop);
        }
        painter.setPen(QPen(m_theme.colour(Role::Line), 0.8));
        painter.drawLine(QLineF(edges.front(), top + height - 0.5, edges.back(), top + height - 0.5));
    });
}

std::vector<double> Pages::edgesOf(const report::ReportTable& table) const
{
    constexpr double kSlack = 0.5; // sums of rounded widths
    std::vector<ColumnNeed> needs;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        const report::ReportColumn& column = table.columns[c];
        ColumnNeed need;
        need.share = column.share;
        need.right = column.right;
        const TextWidths title = widthsOf(words(column.title), printFont(kSmall));
        widen(need, {title.word, title.word}, 2.0 * kCellPad + kSlack);
        if (title.line <= kShortTitle)
            need.head = title.line + 2.0 * kCellPad + kSlack;
        for (const std::vector<report::Cell>& row : table.rows)
            if (c < row.size()) {
                const double beside = 2.0 * kCellPad + kSlack + marksWidth(row[c]);
                widen(need, widthsOf(words(row[c].text), faceOf(row[c])), beside);
                widen(need, widthsOf(words(row[c].small), printFont(kSmall)), beside);
            }
        needs.push_back(need);
    }
    std::vector<double> edges{m_metrics.left};
    for (const double width : columnWidths(needs, m_metrics.textWidth()))
        edges.push_back(edges.back() + width);
    return edges;
}

double Pages::beginHeight(const report::ReportTable& table, const std::vector<double>& edges) const
{
    double height = headHeight(table, edges);
    for (std::size_t i = 0; i < std::min<std::size_t>(2, table.rows.size()); ++i)
        height += rowHeight(table.rows[i], edges);
    return height;
}

void Pages::block(const report::ReportTable& table)
{
    if (table.rows.empty()) {
        block(report::Paragraph{table.empty, report::Paragraph::Look::Soft});
        return;
    }
    const std::vector<double> edges = edgesOf(table);
    if (m_y + beginHeight(table, edges) > m_metrics.end())
        newPage();
    tableHead(table, edges);
    std::vector<double> heights;
    for (const std::vector<report::Cell>& row : table.rows)
        heights.push_back(rowHeight(row, edges));
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        // The last row does not go over to a new page alone.
        const bool isLastButOne = i > 1 && i + 2 == table.rows.size();
        if (m_y + heights[i] + (isLastButOne ? heights[i + 1] : 0.0) > m_metrics.end()) {
            newPage();
            tableHead(table, edges); // every page says what its columns are
        }
        tableRow(table, table.rows[i], edges, heights[i]);
    }
    m_y += 4.0;
}

} // namespace sealwalk::render::detail
