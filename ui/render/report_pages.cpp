// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/report_pages.h"

#include "ui/render/icon.h"
#include "ui/render/line_breaks.h"
#include "ui/render/plate_painter.h"
#include "ui/render/raised_text.h"
#include "ui/render/report_words.h"

#include <QFontMetricsF>

#include <algorithm>
#include <type_traits>

namespace sealwalk::render::detail {

namespace {

constexpr double kText = 11.0;
constexpr double kSmall = 9.0;
constexpr double kTitle = 34.0;
constexpr double kLead = 60.0;    // a title is not left alone at the foot of a page
constexpr double kFewLines = 0.4; // of a page
constexpr double kMuchEmpty = 0.33;

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
    painter.setPen(ink);
    for (const QString& line : lines) {
        double x = where.left();
        if (alignment.testFlag(Qt::AlignRight))
            x = where.right() - raisedWidth(line, font);
        else if (alignment.testFlag(Qt::AlignHCenter))
            x = where.center().x() - 0.5 * raisedWidth(line, font);
        drawRaised(painter, QPointF(x, y), line, font);
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
    layOut();
    const double page = m_metrics.end() - m_metrics.top;
    const double last = m_y - m_metrics.top;
    if (count() < 2 || (last > kFewLines * page && m_emptiest < kMuchEmpty * page))
        return;
    // A few lines on a last page, or a map that just missed its page: rows a little closer may do without.
    std::vector<std::vector<Draw>> wide = std::move(m_pages);
    const double emptiest = m_emptiest;
    m_isTight = true;
    layOut();
    const bool isFuller = m_emptiest < std::min(emptiest, kMuchEmpty * page);
    const bool isBetter = m_pages.size() < wide.size() || (m_pages.size() == wide.size() && isFuller);
    if (!isBetter)
        m_pages = std::move(wide);
}

void Pages::layOut()
{
    m_pages.clear();
    m_emptiest = 0.0;
    newPage();
    statement(m_content.statement);
    for (const report::Section& part : m_content.sections)
        section(part);
}

void Pages::newPage()
{
    if (!m_pages.empty())
        m_emptiest = std::max(m_emptiest, m_metrics.end() - m_y);
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
    const bool isBeside = after + raisedWidth(words(part.note), aside) <= m_metrics.textWidth();
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
            painter.setPen(m_theme.colour(Role::InkSoft));
            drawRaised(painter, QPointF(m_metrics.left + after, base), words(part.note), aside);
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
    title(part, std::max({kLead, togetherHeight(part), firstHeight(part)}));
    const auto isMap = [](const report::Block& one) { return std::holds_alternative<report::MapBlock>(one); };
    for (auto at = part.blocks.begin(); at != part.blocks.end();) {
        const auto end = std::find_if_not(at, part.blocks.end(), isMap);
        if (end != at) {
            maps({at, end});
            at = end;
        } else {
            std::visit(
                [this]<class Kind>(const Kind& value) {
                    if constexpr (!std::is_same_v<Kind, report::MapBlock>)
                        block(value);
                },
                *at++);
        }
    }
    m_y += 4.0;
}

double Pages::firstHeight(const report::Section& part) const
{
    if (part.blocks.empty())
        return 0.0;
    const report::Block& first = part.blocks.front();
    if (const auto* table = std::get_if<report::ReportTable>(&first))
        return table->rows.empty() ? 0.0 : beginHeight(*table, edgesOf(*table));
    return leadHeight(first);
}

void Pages::block(const report::FactList& list)
{
    constexpr double kMostLabel = 130.0;
    constexpr double kBetween = 12.0;
    const double column = m_metrics.textWidth() / 2.0;
    const QFont face = printFont(kText);
    double labelWidth = 0.0;
    for (const report::Fact& fact : list.facts)
        labelWidth = std::max(labelWidth, widthsOf(words(fact.label), face).line + kBetween);
    labelWidth = std::min(labelWidth, kMostLabel);
    // A label, its value, and a line below once the row is full.
    const auto put = [&](const QString& label, const QString& value, QPointF at, double width,
                         double height) {
        draw([=, this](QPainter& painter) {
            wrappedText(painter, QRectF(at.x(), at.y() + 2, labelWidth - 4.0, height), label, face,
                        m_theme.colour(Role::InkFaint));
            wrappedText(painter, QRectF(at.x() + labelWidth, at.y() + 2, width, height), value, face,
                        m_theme.colour(Role::Ink));
        });
    };
    const auto rule = [&](double y) {
        draw([=, this](QPainter& painter) {
            painter.setPen(QPen(m_theme.colour(Role::Line), 0.8));
            painter.drawLine(QLineF(m_metrics.left, y, m_metrics.width - m_metrics.right, y));
        });
    };
    const auto heightOf = [&](const QString& label, const QString& value, double width) {
        return std::max(wrappedHeight(label, face, labelWidth - 4.0), wrappedHeight(value, face, width)) +
               (m_isTight ? 4.0 : 6.0);
    };
    const double width = column - labelWidth - kBetween;
    for (std::size_t i = 0; i < list.facts.size(); i += 2) {
        const std::size_t end = std::min(i + 2, list.facts.size());
        double height = 0.0;
        for (std::size_t k = i; k < end; ++k)
            height =
                std::max(height, heightOf(words(list.facts[k].label), words(list.facts[k].value), width));
        const double top = take(height);
        for (std::size_t k = i; k < end; ++k)
            put(words(list.facts[k].label), words(list.facts[k].value),
                QPointF(m_metrics.left + static_cast<double>(k - i) * column, top), width, height);
        rule(top + height - 0.5);
    }
    if (list.missing.empty())
        return;
    QStringList missing;
    for (const std::string& label : list.missing)
        missing << words(label);
    const QString label = spoken("Core", "Not recorded");
    const QString value = missing.join(QStringLiteral("; ")); // some have a comma of their own
    const double whole = m_metrics.textWidth() - labelWidth;
    const double height = heightOf(label, value, whole);
    const double top = take(height);
    put(label, value, QPointF(m_metrics.left, top), whole, height);
    rule(top + height - 0.5);
}

} // namespace sealwalk::render::detail
