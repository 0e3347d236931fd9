// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/report_pages.h"

#include "ui/render/icon.h"
#include "ui/render/line_breaks.h"
#include "ui/render/plate_painter.h"
#include "ui/render/report_words.h"

#include <QFontMetricsF>

#include <algorithm>

namespace sealwalk::render::detail {

namespace {

constexpr double kText = 11.0;
constexpr double kSmall = 9.0;
constexpr double kCellPad = 4.0;
constexpr double kPlate = 13.0;
constexpr double kGlyph = 20.0;
constexpr double kTitle = 34.0;
constexpr double kLead = 60.0; // a title is not left alone at the foot of a page

QString words(const std::string& text)
{
    return QString::fromStdString(text);
}

report::ReportContent contentIn(const report::ReportContent& content, const RecordLanguage& language)
{
    const RecordWords record(language);
    return inReport(content);
}

} // namespace

PageMetrics PageMetrics::of(Paper paper)
{
    PageMetrics metrics;
    if (paper == Paper::Letter) {
        metrics.width = 816.0; // 8.5 by 11 inches
        metrics.height = 1056.0;
    }
    return metrics;
}

QFont printFont(double pixels, Weight weight)
{
    QFont font = fontOfPixels(pixels, weight);
    font.setStyleStrategy(QFont::PreferNoShaping);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

double wrappedHeight(const QString& text, const QFont& font, double width)
{
    if (text.isEmpty())
        return 0.0;
    return static_cast<double>(brokenLines(text, font, width).size()) * QFontMetricsF(font).lineSpacing();
}

void wrappedText(QPainter& painter, const QRectF& where, const QString& text, const QFont& font,
                 const QColor& ink, Qt::Alignment alignment)
{
    const QFontMetricsF metrics(font);
    const QStringList lines = brokenLines(text, font, where.width());
    const double height = static_cast<double>(lines.size()) * metrics.lineSpacing();
    double y = where.top() + metrics.ascent();
    if (alignment.testFlag(Qt::AlignVCenter))
        y += 0.5 * (where.height() - height);
    painter.setFont(font);
    painter.setPen(ink);
    for (const QString& line : lines) {
        double x = where.left();
        if (alignment.testFlag(Qt::AlignRight))
            x = where.right() - metrics.horizontalAdvance(line);
        else if (alignment.testFlag(Qt::AlignHCenter))
            x = where.center().x() - 0.5 * metrics.horizontalAdvance(line);
        painter.drawText(QPointF(x, y), line);
        y += metrics.lineSpacing();
    }
}

Pages::Pages(const report::ReportContent& content, const PdfOptions& options)
    : m_content(contentIn(content, options.language))
    , m_options(options)
    , m_theme(Theme::named(ThemeName::Paper))
    , m_metrics(PageMetrics::of(options.paper))
{
    const RecordWords record(m_options.language);
    newPage();
    statement(m_content.statement);
    for (const report::Section& part : m_content.sections)
        section(part);
}

void Pages::newPage()
{
    m_pages.emplace_back();
    m_y = m_metrics.top;
}

double Pages::take(double height)
{
    if (m_y + height > m_metrics.end() && m_y > m_metrics.top)
        newPage();
    const double top = m_y;
    m_y += height;
    return top;
}

void Pages::paint(QPainter& painter, std::size_t page) const
{
    const RecordWords record(m_options.language);
    painter.setRenderHint(QPainter::Antialiasing);
    paintHead(painter);
    for (const Draw& what : m_pages[page]) {
        painter.save();
        what(painter);
        painter.restore();
    }
    paintFoot(painter, page);
}

void Pages::paintHead(QPainter& painter) const
{
    const double left = m_metrics.left;
    const double right = m_metrics.width - m_metrics.right;
    paintIcon(painter, QStringLiteral("app-mark"), QRectF(left, 40, 36, 36), m_theme.colour(Role::Ink));
    wrappedText(painter, QRectF(left + 48, 38, 420, 24), words(m_content.title), printFont(18, Weight::Bold),
                m_theme.colour(Role::Ink));
    constexpr double kAside = 220.0;
    // One line where it has room; else two small ones above the rule.
    const QRectF below(left + 48, 61, right - kAside - left - 48 - 8, 16);
    const bool isLong =
        wrappedHeight(words(m_content.subtitle), printFont(11), below.width()) > below.height();
    wrappedText(painter, isLong ? below.adjusted(0, -3, 0, 0) : below, words(m_content.subtitle),
                printFont(isLong ? kSmall : 11), m_theme.colour(Role::InkSoft));
    // A long date takes two lines, and the state stands below it.
    const double dated = wrappedHeight(words(m_content.date), printFont(11), kAside);
    const double top = std::max(36.0, 60.0 - dated);
    wrappedText(painter, QRectF(right - kAside, top, kAside, dated), words(m_content.date), printFont(11),
                m_theme.colour(Role::InkSoft), Qt::AlignRight | Qt::AlignTop);
    wrappedText(painter, QRectF(right - kAside, top + dated + 2.0, kAside, 16), words(m_content.state),
                printFont(11), m_theme.colour(Role::InkSoft), Qt::AlignRight | Qt::AlignTop);
    painter.setPen(QPen(m_theme.colour(Role::Ink), 2.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QLineF(left, 86, right, 86));
}

void Pages::paintFoot(QPainter& painter, std::size_t page) const
{
    const double left = m_metrics.left;
    const double right = m_metrics.width - m_metrics.right;
    const double top = m_metrics.height - 56.0;
    painter.setPen(QPen(m_theme.colour(Role::Edge), 0.8));
    painter.drawLine(QLineF(left, top, right, top));
    double y = top + 5.0;
    for (const std::string& line : m_content.footer) {
        wrappedText(painter, QRectF(left, y, right - left - 90, 14), words(line), printFont(kSmall),
                    m_theme.colour(Role::InkSoft));
        y += 13.0;
    }
    wrappedText(painter, QRectF(right - 110, top + 5, 110, 14), spoken("Core", "Sealwalk report"),
                printFont(kSmall), m_theme.colour(Role::InkSoft), Qt::AlignRight | Qt::AlignTop);
    wrappedText(painter, QRectF(right - 110, top + 18, 110, 14),
                spoken("Core", "page %1 of %2").arg(page + 1).arg(m_pages.size()), printFont(kSmall),
                m_theme.colour(Role::InkSoft), Qt::AlignRight | Qt::AlignTop);
}

void Pages::statement(const report::Statement& said)
{
    const double width = m_metrics.textWidth();
    const QFont head = printFont(15, Weight::Bold);
    const QFont text = printFont(kText + 1);
    const double inner = width - 74.0;
    const double headHeight = wrappedHeight(words(said.headline), head, inner);
    const double height = headHeight + wrappedHeight(words(said.text), text, inner) + 26.0;
    const double top = take(height + 8.0) + 4.0;
    const QColor colour = verdictColour(m_theme, said.verdict);
    draw([=, this](QPainter& painter) {
        const QRectF box(m_metrics.left, top, width, height);
        painter.setPen(QPen(colour, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
        paintLimitGlyph(painter, m_theme, said.verdict,
                        QRectF(box.left() + 12, box.center().y() - 20, 44, 40));
        wrappedText(painter, QRectF(box.left() + 66, top + 10, inner, headHeight), words(said.headline), head,
                    m_theme.colour(Role::Ink));
        wrappedText(painter, QRectF(box.left() + 66, top + 14 + headHeight, inner, height), words(said.text),
                    text, m_theme.colour(Role::Ink));
    });
}

void Pages::title(const report::Section& part, double following)
{
    const QFont face = printFont(13, Weight::Bold);
    const QFont aside = printFont(kText + 1);
    const double after = QFontMetricsF(face).horizontalAdvance(words(part.title)) + 8.0;
    // A note that has no room beside the title stands below it.
    const bool isBeside =
        after + QFontMetricsF(aside).horizontalAdvance(words(part.note)) <= m_metrics.textWidth();
    const double below = isBeside ? 0.0 : wrappedHeight(words(part.note), aside, m_metrics.textWidth()) + 2.0;
    if (m_y + kTitle + below + following > m_metrics.end())
        newPage();
    const double top = take(kTitle + below);
    draw([=, this, &part](QPainter& painter) {
        const double base = top + 22.0;
        painter.setFont(face);
        painter.setPen(m_theme.colour(Role::Ink));
        painter.drawText(QPointF(m_metrics.left, base), words(part.title));
        if (isBeside) {
            painter.setFont(aside);
            painter.setPen(m_theme.colour(Role::InkSoft));
            painter.drawText(QPointF(m_metrics.left + after, base), words(part.note));
        } else {
            wrappedText(painter, QRectF(m_metrics.left, top + 27, m_metrics.textWidth(), below),
                        words(part.note), aside, m_theme.colour(Role::InkSoft));
        }
        painter.setPen(QPen(m_theme.colour(Role::Ink), 1.4, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(
            QLineF(m_metrics.left, top + below + 29, m_metrics.width - m_metrics.right, top + below + 29));
    });
}

void Pages::section(const report::Section& part)
{
    // A page of its own where what comes first has no room below what is there: a page is not left all but
    // empty.
    const double first =
        part.newPage ? leadHeight(part) : std::max({kLead, togetherHeight(part), firstHeight(part)});
    if (part.newPage && m_y > m_metrics.top && m_y + kTitle + first > m_metrics.end())
        newPage();
    title(part, first);
    for (const report::Block& one : part.blocks)
        std::visit([this](const auto& value) { block(value); }, one);
    m_y += 4.0;
}

void Pages::block(const report::FactList& list)
{
    const double column = m_metrics.textWidth() / 2.0;
    const double labelWidth = 122.0;
    const QFont face = printFont(kText);
    for (std::size_t i = 0; i < list.facts.size(); i += 2) {
        double height = 0.0;
        for (std::size_t k = i; k < std::min(i + 2, list.facts.size()); ++k)
            height =
                std::max(height, wrappedHeight(words(list.facts[k].value), face, column - labelWidth - 12.0));
        height += 6.0;
        const double top = take(height);
        for (std::size_t k = i; k < std::min(i + 2, list.facts.size()); ++k) {
            const report::Fact fact = list.facts[k];
            const double left = m_metrics.left + static_cast<double>(k - i) * column;
            draw([=, this](QPainter& painter) {
                wrappedText(painter, QRectF(left, top + 2, labelWidth, height), words(fact.label), face,
                            m_theme.colour(Role::InkFaint));
                wrappedText(painter, QRectF(left + labelWidth, top + 2, column - labelWidth - 12.0, height),
                            words(fact.value), face, m_theme.colour(Role::Ink));
            });
        }
        draw([=, this](QPainter& painter) {
            painter.setPen(QPen(m_theme.colour(Role::Line), 0.8));
            painter.drawLine(QLineF(m_metrics.left, top + height - 0.5, m_metrics.width - m_metrics.right,
                                    top + height - 0.5));
        });
    }
}

double Pages::rowHeight(const std::vector<report::Cell>& row, const std::vector<double>& edges) const
{
    double most = 0.0;
    for (std::size_t c = 0; c < row.size() && c + 1 < edges.size(); ++c) {
        const report::Cell& cell = row[c];
        const double taken = (cell.plate ? kPlate * 1.6 : 0.0) + (cell.verdict ? kGlyph + 4.0 : 0.0);
        const double width = edges[c + 1] - edges[c] - 2.0 * kCellPad - taken;
        const double height =
            wrappedHeight(words(cell.text), printFont(kText, cell.strong ? Weight::Bold : Weight::Normal),
                          width) +
            wrappedHeight(words(cell.small), printFont(kSmall), width);
        most = std::max({most, height, cell.verdict || cell.plate ? 15.0 : 0.0});
    }
    return most + 6.0;
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
                room.setLeft(room.left() + kPlate * 1.6);
            }
            if (cell.verdict) {
                paintLimitGlyph(painter, m_theme, *cell.verdict,
                                QRectF(room.left(), room.top() - 2.0, kGlyph, 17.0));
                room.setLeft(room.left() + kGlyph + 4.0);
                ink = verdictColour(m_theme, *cell.verdict);
            }
            const QFont face = printFont(kText, cell.strong ? Weight::Bold : Weight::Normal);
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
    double shares = 0.0;
    for (const report::ReportColumn& column : table.columns)
        shares += column.share;
    std::vector<double> edges{m_metrics.left};
    for (const report::ReportColumn& column : table.columns)
        edges.push_back(edges.back() + m_metrics.textWidth() * column.share / shares);
    return edges;
}

double Pages::firstHeight(const report::Section& section) const
{
    if (section.blocks.empty())
        return 0.0;
    const report::Block& block = section.blocks.front();
    if (const auto* table = std::get_if<report::ReportTable>(&block);
        table != nullptr && !table->rows.empty()) {
        const std::vector<double> edges = edgesOf(*table);
        return headHeight(*table, edges) + rowHeight(table->rows.front(), edges);
    }
    return std::holds_alternative<report::FigureBlock>(block) ? leadHeight(section) + 8.0 : 0.0;
}

void Pages::block(const report::ReportTable& table)
{
    if (table.rows.empty()) {
        block(report::Paragraph{table.empty, report::Paragraph::Look::Soft});
        return;
    }
    const std::vector<double> edges = edgesOf(table);
    if (m_y + headHeight(table, edges) + rowHeight(table.rows.front(), edges) > m_metrics.end())
        newPage(); // a head does not stand without a row
    tableHead(table, edges);
    for (const std::vector<report::Cell>& row : table.rows) {
        const double height = rowHeight(row, edges);
        if (m_y + height > m_metrics.end()) {
            newPage();
            tableHead(table, edges); // every page says what its columns are
        }
        tableRow(table, row, edges, height);
    }
    m_y += 4.0;
}

} // namespace sealwalk::render::detail
