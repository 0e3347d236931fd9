// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/decade_ruler.h"

#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/render/hatch.h"
#include "ui/render/rate_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace sealwalk::render {

namespace {

constexpr int kSteps = 140;
constexpr double kToothPitch = 6.0;
constexpr double kToothLength = 3.0;
constexpr double kMarkHalf = 6.0; // of a value

/// Draws along an axis: `along` from 0 at the low end to 1 at the high end, `up` is how thick the wedge is.
struct WedgeFrame
{
    QPointF low;              ///< base line at the low end
    QPointF along;            ///< from the low to the high end
    QPointF thick;            ///< unit vector of thickness
    bool teethOnBase = false; ///< on the straight side instead of the slanting one

    [[nodiscard]] QPointF at(double position, double up) const { return low + along * position + thick * up; }
};

LeakRate rateAt(const report::MapScale& scale, double position)
{
    return millibarLitresPerSecond(std::pow(10.0, scale.lowestDecade + scale.decades * position));
}

/// Powers of ten of the unit shown that lie on the scale.
std::vector<int> decadesShown(const report::MapScale& scale)
{
    std::vector<int> result;
    const double low = std::log10(scale.shown(scale.lowest()));
    const double high = std::log10(scale.shown(scale.highest()));
    for (int e = static_cast<int>(std::ceil(low - 1e-9)); e <= static_cast<int>(std::floor(high + 1e-9)); ++e)
        result.push_back(e);
    return result;
}

double positionOfShown(const report::MapScale& scale, double shown)
{
    return scale.position(scale.rateOfShown(shown));
}

QString decadeText(int exponent)
{
    return exponent < 0 ? QStringLiteral("1e\u2212%1").arg(-exponent) : QStringLiteral("1e%1").arg(exponent);
}

/// A bar with ends over the 95 % range of the value pointed at, `aside` from the base line.
void paintRange(QPainter& painter, const Theme& theme, const report::MapScale& scale, const WedgeFrame& frame,
                double aside, double unit, const report::ShownGas::Range& range)
{
    const auto end = [&](LeakRate shown) {
        // Zero has no place on decades; it is at the end of the scale.
        const double number = std::max(scale.number(shown), scale.shown(scale.lowest()));
        return std::clamp(positionOfShown(scale, number), 0.0, 1.0);
    };
    const double low = end(range.low);
    const double high = end(range.high);
    painter.setPen(QPen(theme.colour(Role::Ink), 1.5 * unit, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(frame.at(low, aside), frame.at(high, aside));
    for (const double at : {low, high})
        painter.drawLine(frame.at(at, aside - 3.0 * unit), frame.at(at, aside + 3.0 * unit));
}

void paintWedge(QPainter& painter, const Theme& theme, const report::MapScale& scale, const WedgeFrame& frame,
                double thickness, const BandStyle& style)
{
    const double u = style.unit;
    const auto up = [&](double position) {
        return thickness * style.width(scale, rateAt(scale, position)) / style.bodyMost;
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false); // neighbouring steps would show a seam
    for (int i = 0; i < kSteps; ++i) {
        const double a = static_cast<double>(i) / kSteps;
        const double b = (i + 1.0) / kSteps;
        const double top = up((a + b) / 2.0);
        const QRectF piece = QRectF(frame.at(a, 0.0), frame.at(b, top)).normalized();
        painter.fillRect(piece, theme.heat((a + b) / 2.0));
    }
    painter.restore();
    const double seen =
        scale.smallestDetectable ? std::clamp(scale.position(*scale.smallestDetectable), 0.0, 1.0) : 0.0;
    if (seen > 0.0) {
        const QPolygonF blind{frame.at(0, 0), frame.at(0, up(0)), frame.at(seen, up(seen)),
                              frame.at(seen, 0)};
        painter.setPen(QPen(theme.colour(Role::InkSoft), 1.2 * u, Qt::SolidLine, Qt::FlatCap));
        painter.drawLines(hatchLines(blind, 45.0, 5.0 * u));
    }
    painter.setPen(QPen(theme.colour(Role::Edge), u));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF{frame.at(0, 0), frame.at(0, up(0)), frame.at(seen, up(seen)),
                                  frame.at(1, up(1)), frame.at(1, 0)});
    if (!scale.limit)
        return;
    const double length = std::hypot(frame.along.x(), frame.along.y());
    painter.setPen(QPen(theme.colour(Role::Ink), 2.0 * u, Qt::SolidLine, Qt::FlatCap));
    for (double p = std::max(0.0, scale.position(*scale.limit)) + 3.0 * u / length; p < 1.0;
         p += kToothPitch * u / length) {
        const double from = frame.teethOnBase ? -0.5 * u : up(p) + 0.5 * u;
        const double to = frame.teethOnBase ? from - kToothLength * u : from + kToothLength * u;
        painter.drawLine(QLineF(frame.at(p, from), frame.at(p, to)));
    }
}

QPen dashed(const QColor& colour, double width, double unit)
{
    QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap);
    pen.setDashPattern({2.0 * unit / width, 2.0 * unit / width});
    return pen;
}

bool onScale(double position)
{
    return position >= -1e-9 && position <= 1.0 + 1e-9;
}

} // namespace

void paintLevelRuler(QPainter& painter, const Theme& theme, const report::MapScale& scale,
                     const QRectF& where, const BandStyle& style, const RulerParts& parts)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = style.unit;
    const double text = style.text;
    const QFont normal = fontOfPixels(text);
    const QFont bold = fontOfPixels(text, Weight::Bold);
    const QFontMetricsF metrics(normal);
    const double sideRoom = metrics.horizontalAdvance(decadeText(-10)) / 2.0;
    const double above = (parts.words ? text * 1.4 : 0.0) + 8.0 * u;
    const double below = text * 1.3 + 5.0 * u;
    const double thickness = std::clamp(where.height() - above - below, 6.0 * u, 22.0 * u);
    const double left = where.left() + sideRoom;
    const double width = where.width() - 2.0 * sideRoom;
    const double base = where.top() + above + thickness;
    const WedgeFrame frame{{left, base}, {width, 0.0}, {0.0, -1.0}};
    paintWedge(painter, theme, scale, frame, thickness, style);

    painter.setFont(normal);
    painter.setPen(QPen(theme.colour(Role::InkSoft), u));
    double free = -1e9;
    for (const int e : decadesShown(scale)) {
        const double x = frame.at(positionOfShown(scale, std::pow(10.0, e)), 0).x();
        painter.drawLine(QLineF(x, base, x, base + 4.0 * u));
        const QString words = decadeText(e);
        const double half = metrics.horizontalAdvance(words) / 2.0;
        if (x - half < free)
            continue; // narrow rulers name every other decade
        free = x + half + 3.0 * u;
        painter.drawText(QPointF(x - half, base + 5.0 * u + metrics.ascent()), words);
    }
    const double head = base - thickness - 4.0 * u;
    const double wordLine = head - 3.0 * u;
    std::optional<double> mark; // where the value stands
    if (parts.value)
        mark = frame.at(std::clamp(scale.position(*parts.value), 0.0, 1.0), 0).x();
    // The mark of a value close by would cover a word: it stands beside it then, on the side of what it
    // names.
    const auto besideMark = [&](double x, double wide) {
        // A ruler narrower than its words is no range for std::clamp.
        const double from = std::max(where.left(), std::min(x - wide / 2.0, where.right() - wide));
        if (!mark || *mark < from - kMarkHalf * u || *mark > from + wide + kMarkHalf * u)
            return from;
        const double before = *mark - 1.5 * kMarkHalf * u - wide;
        const double behind = *mark + 1.5 * kMarkHalf * u;
        const bool fitsBefore = before >= where.left();
        const bool fitsBehind = behind + wide <= where.right();
        if (!fitsBefore && !fitsBehind)
            return from;
        return fitsBehind && (*mark < x || !fitsBefore) ? behind : before;
    };
    QRectF limitRoom;
    if (scale.limit && onScale(scale.position(*scale.limit))) {
        const double x = frame.at(scale.position(*scale.limit), 0).x();
        painter.setPen(QPen(theme.colour(Role::Ink), 2.0 * u, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QLineF(x, head, x, base + 4.0 * u));
        if (parts.words) {
            painter.setFont(bold);
            const QString word = inWords("limit");
            const double half = QFontMetricsF(bold).horizontalAdvance(word) / 2.0;
            const double from = besideMark(x, 2.0 * half);
            painter.drawText(QPointF(from, wordLine), word);
            limitRoom = QRectF(from - 4 * u, wordLine - text, 2 * half + 8 * u, text);
        }
    }
    if (scale.smallestDetectable && onScale(scale.position(*scale.smallestDetectable))) {
        const double x = frame.at(scale.position(*scale.smallestDetectable), 0).x();
        painter.setPen(dashed(theme.colour(Role::Ink), u, u));
        painter.drawLine(QLineF(x, head, x, base));
        if (parts.words) {
            painter.setFont(normal);
            painter.setPen(theme.colour(Role::InkSoft));
            for (const QString& word : {inWords("smallest detectable"), inWords("seen")}) {
                const double words = metrics.horizontalAdvance(word);
                const double from = besideMark(x, words);
                if (QRectF(from, wordLine - text, words, text).intersects(limitRoom))
                    continue;
                painter.drawText(QPointF(from, wordLine), word);
                break;
            }
        }
    }
    if (parts.range)
        paintRange(painter, theme, scale, frame, thickness + 5.0 * u, u, *parts.range);
    if (mark) {
        const double x = *mark;
        const double top = base - thickness - 11.0 * u;
        painter.setPen(QPen(theme.colour(Role::Ink), 1.5 * u));
        painter.drawLine(QLineF(x, top, x, base));
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.colour(Role::Ink));
        const double half = kMarkHalf * u;
        painter.drawPolygon(QPolygonF{{x - half, top - 8 * u},
                                      {x + half, top - 8 * u},
                                      {x + half, top - 1 * u},
                                      {x, top + 6 * u},
                                      {x - half, top - 1 * u}});
    }
    painter.restore();
}

void paintUprightRuler(QPainter& painter, const Theme& theme, const report::MapScale& scale,
                       const QRectF& where, const BandStyle& style, const RulerParts& parts)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = style.unit;
    const double text = style.text;
    const QFont normal = fontOfPixels(text);
    const QFont bold = fontOfPixels(text, Weight::Bold);
    const QFontMetricsF metrics(normal);
    const double thickness = 18.0 * u;
    const double head = parts.unit ? text * 1.6 : 0.0;
    const double left = where.left() + 8.0 * u;
    const double low = where.bottom() - text * 0.6;
    const double high = where.top() + head + text * 0.6;
    // Teeth stand on the straight side, where no figures are.
    const WedgeFrame frame{{left, low}, {0.0, high - low}, {1.0, 0.0}, true};
    paintWedge(painter, theme, scale, frame, thickness, style);
    const double words = left + thickness + 8.0 * u;
    painter.setFont(normal);
    painter.setPen(theme.colour(Role::InkSoft));
    if (parts.unit) {
        painter.drawText(QPointF(where.left(), where.top() + metrics.ascent()),
                         QString::fromStdString(scale.head()));
    }
    std::vector<QRectF> taken;
    const auto place = [&](double y, const QString& line, const QFont& face, Role role) {
        const QRectF room(words, y - text * 0.6, QFontMetricsF(face).horizontalAdvance(line), text * 1.2);
        for (const QRectF& other : taken)
            if (other.intersects(room))
                return false;
        taken.push_back(room);
        painter.setFont(face);
        painter.setPen(theme.colour(role));
        painter.drawText(QPointF(words, y + (metrics.ascent() - metrics.descent()) / 2.0), line);
        return true;
    };
    if (scale.limit && onScale(scale.position(*scale.limit))) {
        const double y = frame.at(scale.position(*scale.limit), 0).y();
        painter.setPen(QPen(theme.colour(Role::Ink), 2.0 * u, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QLineF(left - 6 * u, y, left + thickness + 5 * u, y));
        if (parts.words)
            place(y, rateLabel(scale.shown(*scale.limit), 1).text() + QLatin1Char(' ') + inWords("limit"),
                  bold, Role::Ink);
    }
    if (scale.smallestDetectable && onScale(scale.position(*scale.smallestDetectable))) {
        const double y = frame.at(scale.position(*scale.smallestDetectable), 0).y();
        painter.setPen(dashed(theme.colour(Role::Ink), u, u));
        painter.drawLine(QLineF(left - 6 * u, y, left + thickness + 5 * u, y));
        if (parts.words) {
            place(y - text * 0.6, inWords("smallest"), normal, Role::InkSoft);
            place(y + text * 0.62, inWords("detectable"), normal, Role::InkSoft);
        }
    }
    for (const int e : decadesShown(scale)) {
        const double p = positionOfShown(scale, std::pow(10.0, e));
        const double y = frame.at(p, 0).y();
        const double from = left + thickness * style.width(scale, rateAt(scale, p)) / style.bodyMost;
        painter.setPen(QPen(theme.colour(Role::Line), u));
        painter.drawLine(QLineF(from + 5 * u, y, left + thickness + 6 * u, y));
        place(y, decadeText(e), normal, Role::InkSoft);
    }
    if (parts.range)
        paintRange(painter, theme, scale, frame, -4.0 * u, u, *parts.range);
    if (parts.value) {
        const double y = frame.at(std::clamp(scale.position(*parts.value), 0.0, 1.0), 0).y();
        painter.setPen(QPen(theme.colour(Role::Ink), 1.5 * u));
        painter.drawLine(QLineF(left - 7 * u, y, left + thickness, y));
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.colour(Role::Ink));
        painter.drawPolygon(
            QPolygonF{{left - 8 * u, y - 5 * u}, {left - 1 * u, y}, {left - 8 * u, y + 5 * u}});
    }
    painter.restore();
}

DecadeRuler::DecadeRuler(Qt::Orientation orientation, QWidget* parent)
    : QWidget(parent)
    , m_orientation(orientation)
{
    setAccessibleName(tr("Decade ruler"));
    setSizePolicy(orientation == Qt::Horizontal ? QSizePolicy::Expanding : QSizePolicy::Fixed,
                  orientation == Qt::Horizontal ? QSizePolicy::Fixed : QSizePolicy::Expanding);
}

void DecadeRuler::setScale(const report::MapScale& scale)
{
    m_scale = scale;
    update();
}

void DecadeRuler::setValue(std::optional<LeakRate> value, std::optional<report::ShownGas::Range> range)
{
    m_parts.value = value;
    m_parts.range = value ? range : std::nullopt;
    QString spoken;
    if (value)
        spoken = rateLabel(m_scale.shown(*value)).text() + u' ' + QString::fromStdString(m_scale.unit);
    if (m_parts.range)
        spoken +=
            QStringLiteral(", 95 %: ") + inFigures(report::plainRange(m_scale.number(m_parts.range->low),
                                                                      m_scale.number(m_parts.range->high)));
    setAccessibleDescription(spoken);
    update();
}

QSize DecadeRuler::sizeHint() const
{
    return m_orientation == Qt::Horizontal ? QSize(430, 62) : QSize(116, 420);
}

QSize DecadeRuler::minimumSizeHint() const
{
    return m_orientation == Qt::Horizontal ? QSize(180, 56) : QSize(110, 140);
}

void DecadeRuler::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const QRectF where = QRectF(rect()).adjusted(2, 2, -2, -2);
    const Theme& theme = Theme::of(this);
    if (m_orientation == Qt::Horizontal)
        paintLevelRuler(painter, theme, m_scale, where, BandStyle::screen(), m_parts);
    else
        paintUprightRuler(painter, theme, m_scale, where, BandStyle::screen(), m_parts);
}

} // namespace sealwalk::render
