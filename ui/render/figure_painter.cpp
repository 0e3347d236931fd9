// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/figure_painter.h"

#include "core/report/rate_text.h"
#include "ui/render/axis_ticks.h"
#include "ui/render/core_words.h"
#include "ui/render/free_room.h"
#include "ui/render/hatch.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

using report::Axis;
using report::Figure;
using report::Line;
using report::Mark;
using report::Series;
using report::Tone;

constexpr double kResidualStrip = 46.0;
constexpr double kResidualGap = 12.0;

QString words(const std::string& text)
{
    return QString::fromStdString(text);
}

QColor inkOf(const Theme& theme, Tone tone)
{
    switch (tone) {
    case Tone::Ink:
        return theme.colour(Role::Ink);
    case Tone::Soft:
        return theme.colour(Role::InkSoft);
    case Tone::Accent:
        return theme.colour(Role::Accent);
    case Tone::Unsure:
        return theme.colour(Role::Unsure);
    case Tone::Chart1:
        return theme.colour(Role::Chart1);
    case Tone::Chart2:
        return theme.colour(Role::Chart2);
    case Tone::Chart3:
        return theme.colour(Role::Chart3);
    case Tone::Chart4:
        return theme.colour(Role::Chart4);
    case Tone::Chart5:
        return theme.colour(Role::Chart5);
    }
    return theme.colour(Role::Ink);
}

QPen penOf(const QColor& colour, double width, Line line)
{
    QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (line == Line::Dashed)
        pen.setDashPattern({5.0, 3.0});
    else if (line == Line::Dotted)
        pen.setDashPattern({1.5, 2.5});
    else if (line == Line::None)
        pen.setStyle(Qt::NoPen);
    return pen;
}

class FigureArtist
{
public:
    FigureArtist(QPainter& painter, const Theme& theme, const Figure& figure, const QRectF& where,
                 const FigureStyle& style)
        : m_painter(painter)
        , m_theme(theme)
        , m_figure(figure)
        , m_style(style)
        , m_face(fontOfPixels(style.text))
        , m_bold(fontOfPixels(style.text, Weight::Bold))
        , m_metrics(m_face)
        , m_where(where)
        , m_area(plotArea(figure, where, style))
    {}

    void draw()
    {
        m_painter.setRenderHint(QPainter::Antialiasing);
        if (!m_figure.empty.empty()) {
            m_painter.setFont(m_face);
            m_painter.setPen(m_theme.colour(Role::InkSoft));
            m_painter.drawText(m_where, Qt::AlignCenter | Qt::TextWordWrap, words(m_figure.empty));
            return;
        }
        frame(m_area);
        axes();
        m_painter.save();
        m_painter.setClipRect(m_area.adjusted(-3, -3, 3, 3));
        shades();
        levelsAndMoments();
        for (const Series& series : m_figure.series)
            curve(series, m_figure.y, m_area);
        flags();
        m_painter.restore();
        texts();
        if (m_figure.residualAxis)
            residuals();
    }

private:
    [[nodiscard]] double px(double value) const
    {
        return m_area.left() + m_area.width() * partOf(m_figure.x, value);
    }
    [[nodiscard]] double py(double value) const { return yOn(m_figure.y, m_area, value); }
    [[nodiscard]] static double yOn(const Axis& axis, const QRectF& area, double value)
    {
        return area.bottom() - area.height() * std::clamp(partOf(axis, value), -0.5, 1.5);
    }

    void frame(const QRectF& area)
    {
        m_painter.setPen(QPen(m_theme.colour(Role::Line), m_style.unit));
        m_painter.setBrush(m_theme.colour(Role::Sheet));
        m_painter.drawRect(area);
    }

    void axes()
    {
        const double u = m_style.unit;
        m_painter.setFont(m_face);
        const int rows = std::max(2, static_cast<int>(m_area.height() / (m_style.text * 2.4)));
        for (const Tick& tick : ticksOf(m_figure.y, rows)) {
            const double y = py(tick.at);
            if (y < m_area.top() - 1 || y > m_area.bottom() + 1)
                continue;
            m_painter.setPen(QPen(m_theme.colour(Role::SheetGrid), u));
            m_painter.drawLine(QLineF(m_area.left(), y, m_area.right(), y));
            m_painter.setPen(m_theme.colour(Role::InkSoft));
            m_painter.drawText(QRectF(m_where.left(), y - m_style.text,
                                      m_area.left() - 6 * u - m_where.left(), 2 * m_style.text),
                               Qt::AlignRight | Qt::AlignVCenter, tick.text);
        }
        m_painter.setPen(m_theme.colour(Role::InkSoft));
        m_painter.drawText(QPointF(m_where.left(), m_where.top() + m_metrics.ascent()),
                           words(m_figure.y.unit));
        const double bottom = m_figure.residualAxis ? residualArea().bottom() : m_area.bottom();
        const double base = bottom + 4 * u + m_metrics.ascent();
        const QString unit = words(m_figure.x.unit);
        const double unitWidth = unit.isEmpty() ? 0.0 : m_metrics.horizontalAdvance(unit) + 4 * u;
        const int columns = std::max(2, static_cast<int>(m_area.width() / (m_style.text * 5.5)));
        double free = m_where.left();
        for (const Tick& tick : ticksOf(m_figure.x, columns)) {
            const double x = px(tick.at);
            if (x < m_area.left() - 1 || x > m_area.right() + 1)
                continue;
            m_painter.setPen(QPen(m_theme.colour(Role::SheetGrid), u));
            m_painter.drawLine(QLineF(x, m_area.top(), x, m_area.bottom()));
            const double width = m_metrics.horizontalAdvance(tick.text);
            const double most = std::max(m_where.left(), m_where.right() - width - unitWidth);
            const double left = std::clamp(x - width / 2.0, m_where.left(), most);
            if (left < free || left + width < x - 2 * u) // no room left of the unit
                continue;
            free = left + width + 6 * u;
            m_painter.setPen(m_theme.colour(Role::InkSoft));
            m_painter.drawText(QPointF(left, base), tick.text);
        }
        m_painter.setPen(m_theme.colour(Role::InkSoft));
        m_painter.drawText(QPointF(m_where.right() - unitWidth + 4 * u, base), unit);
        m_painter.setPen(QPen(m_theme.colour(Role::Line), u));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(m_area);
    }

    void shades()
    {
        const double u = m_style.unit;
        for (const report::Span& span : m_figure.spans) {
            const QRectF room(QPointF(px(span.from), m_area.top()), QPointF(px(span.to), m_area.bottom()));
            m_painter.fillRect(room, m_theme.colour(Role::AccentWash));
            m_painter.setPen(QPen(m_theme.colour(Role::Accent), 1.5 * u));
            m_painter.drawLine(room.topLeft(), room.bottomLeft());
        }
        for (const report::Strip& strip : m_figure.strips) {
            const QRectF room(QPointF(strip.from ? px(*strip.from) : m_area.left(), py(strip.high)),
                              QPointF(strip.to ? px(*strip.to) : m_area.right(), py(strip.low)));
            if (strip.hatched) {
                m_painter.setPen(QPen(m_theme.colour(Role::Edge), 0.8 * u));
                m_painter.drawLines(hatchLines(QPolygonF(room), 45.0, 6.0 * u));
                m_painter.drawLine(room.topLeft(), room.topRight());
            } else {
                m_painter.fillRect(room, m_theme.colour(Role::AccentWash));
            }
        }
        for (const report::Area& area : m_figure.areas) {
            QPolygonF corners;
            for (std::size_t i = 0; i < std::min(area.x.size(), area.y.size()); ++i)
                corners.append(QPointF(px(area.x[i]), py(area.y[i])));
            m_painter.setPen(QPen(m_theme.colour(Role::Unsure), 1.4 * u));
            m_painter.drawLines(hatchLines(corners, 45.0, 5.0 * u));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawPolygon(corners);
        }
    }

    void levelsAndMoments()
    {
        const double u = m_style.unit;
        for (const report::Level& level : m_figure.levels) {
            const double y = py(level.at);
            m_painter.setPen(penOf(inkOf(m_theme, level.tone), (level.toothed ? 2.0 : 1.5) * u, level.line));
            m_painter.drawLine(QLineF(m_area.left(), y, m_area.right(), y));
            if (!level.toothed)
                continue;
            m_painter.setPen(QPen(inkOf(m_theme, level.tone), 2.0 * u, Qt::SolidLine, Qt::FlatCap));
            for (double x = m_area.left() + 3 * u; x < m_area.right(); x += 6 * u)
                m_painter.drawLine(QLineF(x, y - 1.5 * u, x, y - 4.5 * u));
        }
        for (const report::Moment& moment : m_figure.moments) {
            m_painter.setPen(penOf(m_theme.colour(Role::InkSoft), 1.2 * u, moment.line));
            m_painter.drawLine(QLineF(px(moment.at), m_area.top(), px(moment.at), m_area.bottom()));
        }
    }

    /// Where the word of a moment begins: right of its line, left of it where it would leave the plot.
    [[nodiscard]] double besideMoment(const report::Moment& moment) const
    {
        const double u = m_style.unit;
        const double width = m_metrics.horizontalAdvance(words(moment.text));
        const double right = px(moment.at) + 4 * u;
        return right + width > m_area.right() ? px(moment.at) - 4 * u - width : right;
    }

    /// Long series: an upright stroke from least to greatest per column, joined last to first.
    /// One line for each stretch without a step longer than the series has.
    [[nodiscard]] std::vector<QPolygonF> thinnedLines(const Series& series, const Axis& axis,
                                                      const QRectF& area) const
    {
        std::vector<QPolygonF> lines(1);
        const auto columns = static_cast<std::size_t>(std::max(1.0, area.width() * m_style.devicePixelRatio));
        std::optional<double> last;
        for (const report::LongSeries::Column& column :
             series.samples->thinned(m_figure.x.low, m_figure.x.high, columns)) {
            // What has no logarithm runs along the foot.
            const auto at = [&](double time, float value) {
                const auto y = static_cast<double>(value);
                return QPointF(px(time), yOn(axis, area, axis.logarithmic ? std::max(y, axis.low) : y));
            };
            if (last && series.longestStep > 0.0 && column.from - *last > series.longestStep)
                lines.emplace_back();
            last = column.to;
            QPolygonF& line = lines.back();
            line.append(at(column.from, column.first));
            if (column.least != column.greatest) {
                const double middle = (column.from + column.to) / 2.0;
                line.append(at(middle, column.least));
                line.append(at(middle, column.greatest));
                line.append(at(column.to, column.last));
            }
        }
        return lines;
    }

    void stroke(const QPolygonF& line, const Series& series, const QColor& ink)
    {
        if (series.line == Line::None || line.size() < 2)
            return;
        m_painter.setPen(penOf(ink, series.width * m_style.unit, series.line));
        // Thousands of short joined strokes are drawn far quicker without antialiased joins.
        const bool many = line.size() > 2000;
        m_painter.setRenderHint(QPainter::Antialiasing, !many);
        if (many)
            m_painter.setPen(QPen(ink, 0));
        m_painter.drawPolyline(line);
        m_painter.setRenderHint(QPainter::Antialiasing, true);
    }

    static bool isApart(const Series& series, qsizetype point)
    {
        const auto i = static_cast<std::size_t>(point);
        return i < series.apart.size() && series.apart[i];
    }

    void curve(const Series& series, const Axis& axis, const QRectF& area)
    {
        const double u = m_style.unit;
        const QColor ink = inkOf(m_theme, series.tone);
        m_painter.setBrush(Qt::NoBrush);
        if (series.samples) {
            for (const QPolygonF& line : thinnedLines(series, axis, area))
                stroke(line, series, ink);
            return;
        }
        QPolygonF line;
        for (std::size_t i = 0; i < std::min(series.x.size(), series.y.size()); ++i)
            line.append(QPointF(px(series.x[i]), yOn(axis, area, series.y[i])));
        // A value that is missing parts the line.
        for (qsizetype from = 0, to = 1; from < line.size(); from = to, ++to) {
            while (to < line.size() && !isApart(series, to))
                ++to;
            stroke(line.mid(from, to - from), series, ink);
        }
        m_painter.setPen(QPen(ink, 1.2 * u, Qt::SolidLine, Qt::FlatCap));
        for (std::size_t i = 0; i < std::min(series.ranges.size(), series.x.size()); ++i)
            range(px(series.x[i]), series.ranges[i], axis, area);
        if (series.mark == Mark::None)
            return;
        const double zero = yOn(axis, area, 0.0);
        for (qsizetype i = 0; i < line.size(); ++i) {
            const bool hollow = static_cast<std::size_t>(i) < series.hollow.size() &&
                                series.hollow[static_cast<std::size_t>(i)];
            mark(series.mark, line[i], ink, hollow, zero);
        }
    }

    /// An upright bar with ends, kept inside the plot; an end outside has no cap.
    void range(double x, const Series::Ends& ends, const Axis& axis, const QRectF& area)
    {
        if (!(ends.high > ends.low))
            return;
        const double half = 4.0 * m_style.unit;
        const auto end = [&](double value) {
            return axis.logarithmic && value <= 0.0 ? area.bottom() + 1.0 : yOn(axis, area, value);
        };
        const double low = end(ends.low);
        const double high = end(ends.high);
        m_painter.drawLine(QLineF(x, std::min(low, area.bottom()), x, std::max(high, area.top())));
        for (const double y : {low, high})
            if (y <= area.bottom() && y >= area.top())
                m_painter.drawLine(QLineF(x - half, y, x + half, y));
    }

    void mark(Mark kind, QPointF at, const QColor& ink, bool hollow, double zero)
    {
        const double r = 4.0 * m_style.unit;
        m_painter.setPen(QPen(ink, 1.4 * m_style.unit));
        m_painter.setBrush(hollow ? QBrush(m_theme.colour(Role::Sheet)) : QBrush(ink));
        switch (kind) {
        case Mark::None:
            break;
        case Mark::Circle:
            if (hollow)
                m_painter.drawEllipse(at, r * 0.58, r * 0.58);
            else
                m_painter.drawEllipse(at, r, r);
            break;
        case Mark::Square:
            m_painter.drawRect(QRectF(at.x() - r, at.y() - r, 2 * r, 2 * r));
            break;
        case Mark::Triangle:
            m_painter.drawPolygon(
                QPolygonF{at + QPointF(-r * 1.2, -r), at + QPointF(r * 1.2, -r), at + QPointF(0, r * 1.2)});
            break;
        case Mark::Diamond:
            m_painter.drawPolygon(QPolygonF{at + QPointF(0, -r * 1.2), at + QPointF(r * 1.2, 0),
                                            at + QPointF(0, r * 1.2), at + QPointF(-r * 1.2, 0)});
            break;
        case Mark::Stem:
            m_painter.drawLine(QLineF(at.x(), zero, at.x(), at.y()));
            break;
        }
    }

    void flags()
    {
        const double u = m_style.unit;
        for (const report::Flag& flag : m_figure.flags) {
            const QPointF at(px(flag.x), py(flag.y));
            m_painter.setPen(Qt::NoPen);
            m_painter.setBrush(m_theme.colour(Role::Chart1));
            m_painter.drawPolygon(QPolygonF{at + QPointF(-4 * u, -9 * u), at + QPointF(4 * u, -9 * u),
                                            at + QPointF(0, -2 * u)});
        }
    }

    /// A word at one of the given places that is free; the first one if none is.
    void place(const QString& text, const std::vector<QPointF>& baselines, const QColor& ink,
               const QFont& face)
    {
        if (text.isEmpty() || baselines.empty())
            return;
        const double width = QFontMetricsF(face).horizontalAdvance(text);
        const auto room = [&](QPointF at) {
            return QRectF(at.x(), at.y() - m_metrics.ascent(), width, m_metrics.height());
        };
        QPointF chosen = baselines.front();
        for (const QPointF& at : baselines)
            if (m_area.adjusted(-1, -1, 1, 1).contains(room(at)) && m_room.isFree(room(at))) {
                chosen = at;
                break;
            }
        m_room.take(room(chosen));
        m_painter.setFont(face);
        m_painter.setPen(ink);
        m_painter.drawText(chosen, text);
    }

    void texts()
    {
        const double u = m_style.unit;
        takeCurves();
        for (const report::Level& level : m_figure.levels) {
            const QString text = words(level.text);
            const double y = py(level.at);
            const double width = QFontMetricsF(m_bold).horizontalAdvance(text);
            place(text,
                  {{m_area.left() + 5 * u, y - 6 * u},
                   {m_area.right() - width - 5 * u, y - 6 * u},
                   {m_area.center().x() - width / 2, y - 6 * u},
                   {m_area.left() + 5 * u, y + m_metrics.ascent() + 3 * u}},
                  inkOf(m_theme, level.tone), level.toothed ? m_bold : m_face);
        }
        for (const report::Moment& moment : m_figure.moments)
            place(words(moment.text),
                  {{besideMoment(moment), m_area.top() + m_metrics.ascent() + 3 * u},
                   {besideMoment(moment), m_area.bottom() - 6 * u}},
                  m_theme.colour(Role::InkSoft), m_face);
        for (const report::Span& span : m_figure.spans)
            place(words(span.text), {{px(span.from) + 4 * u, m_area.top() + m_metrics.ascent() + 2 * u}},
                  m_theme.colour(Role::Accent), m_face);
        for (const report::Area& area : m_figure.areas) {
            const double width = m_metrics.horizontalAdvance(words(area.text));
            place(words(area.text), {{m_area.right() - width - 6 * u, m_area.bottom() - 8 * u}},
                  m_theme.colour(Role::Unsure), m_bold);
        }
        for (const report::Strip& strip : m_figure.strips)
            place(words(strip.text),
                  {{m_area.left() + 6 * u, py(strip.high) - 4 * u},
                   {m_area.left() + 6 * u, py(strip.low) + m_metrics.ascent() + 2 * u}},
                  m_theme.colour(Role::InkSoft), m_face);
        for (const report::Flag& flag : m_figure.flags) {
            const double width = m_metrics.horizontalAdvance(words(flag.text));
            place(
                words(flag.text),
                {{px(flag.x) + 7 * u, py(flag.y) - 3 * u}, {px(flag.x) - width - 7 * u, py(flag.y) - 3 * u}},
                m_theme.colour(Role::Chart1), m_face);
        }
        for (const Series& series : m_figure.series)
            seriesName(series);
    }

    void takeCurves()
    {
        constexpr double kStep = 8.0; // px along a stroke
        for (const Series& series : m_figure.series) {
            QPointF before;
            for (std::size_t i = 0; i < std::min(series.x.size(), series.y.size()); ++i) {
                const QPointF at(px(series.x[i]), py(series.y[i]));
                const bool joined =
                    i > 0 && series.line != Line::None && !isApart(series, static_cast<qsizetype>(i));
                const double length = joined ? QLineF(before, at).length() : 0.0;
                const int steps = std::clamp(static_cast<int>(length / kStep), 1, 200);
                for (int k = joined ? 1 : steps; k <= steps; ++k) {
                    const QPointF on = joined ? before + (at - before) * k / steps : at;
                    m_room.take(QRectF(on.x() - 2, on.y() - 2, 4, 4));
                }
                before = at;
            }
        }
    }

    void seriesName(const Series& series)
    {
        const std::size_t count = std::min(series.x.size(), series.y.size());
        if (series.name.empty() || count == 0)
            return;
        const double u = m_style.unit;
        const QString text = words(series.name);
        const double width = m_metrics.horizontalAdvance(text);
        std::vector<QPointF> places;
        for (const double part : {0.97, 0.8, 0.6, 0.4, 0.25, 1.0}) {
            const auto i = static_cast<std::size_t>(part * static_cast<double>(count - 1));
            const QPointF at(px(series.x[i]), py(series.y[i]));
            const double most = m_area.right() - width - 4 * u;
            for (const double off : {-6.0, 16.0, -18.0, 28.0})
                for (const double left : {at.x() - width, at.x() + 6 * u})
                    places.emplace_back(
                        std::clamp(left, m_area.left() + 4 * u, std::max(m_area.left() + 4 * u, most)),
                        at.y() + off * u);
        }
        place(text, places, inkOf(m_theme, series.tone), m_face);
    }

    [[nodiscard]] QRectF residualArea() const
    {
        return {m_area.left(), m_area.bottom() + kResidualGap * m_style.unit, m_area.width(),
                kResidualStrip * m_style.unit};
    }

    void residuals()
    {
        const QRectF area = residualArea();
        const Axis& axis = *m_figure.residualAxis;
        const double u = m_style.unit;
        frame(area);
        m_painter.setPen(QPen(m_theme.colour(Role::Edge), u));
        const double zero = yOn(axis, area, 0.0);
        m_painter.drawLine(QLineF(area.left(), zero, area.right(), zero));
        m_painter.setFont(m_face);
        m_painter.setPen(m_theme.colour(Role::InkSoft));
        for (const double end : {axis.high, axis.low}) {
            QString text = figureText(end);
            if (end > 0.0)
                text.prepend(u'+');
            const double y = end > 0.0 ? area.top() : area.bottom();
            m_painter.drawText(QRectF(m_where.left(), y - m_style.text, area.left() - 6 * u - m_where.left(),
                                      2 * m_style.text),
                               Qt::AlignRight | Qt::AlignVCenter, text);
        }
        m_painter.save();
        m_painter.setClipRect(area);
        for (const Series& series : m_figure.residuals)
            curve(series, axis, area);
        m_painter.restore();
        m_painter.setFont(m_face);
        for (const Series& series : m_figure.residuals) {
            const QString name = words(series.name);
            const double width = m_metrics.horizontalAdvance(name) + 4 * u;
            const QRectF room(area.right() - width, area.bottom() - m_metrics.height(), width,
                              m_metrics.height());
            if (!name.isEmpty())
                m_painter.fillRect(room.adjusted(0, 1, -1, -1), m_theme.colour(Role::Sheet));
            m_painter.setPen(m_theme.colour(Role::InkSoft));
            m_painter.drawText(room, Qt::AlignCenter, name);
        }
    }

    static QString figureText(double value)
    {
        const Axis axis{{}, value - std::abs(value), value + std::abs(value), false, {}};
        for (const Tick& tick : ticksOf(axis, 4))
            if (std::abs(tick.at - value) < std::abs(value) * 1e-6)
                return tick.text;
        return inFigures(report::screenRate(value, 1));
    }

    QPainter& m_painter;
    const Theme& m_theme;
    const Figure& m_figure;
    FigureStyle m_style;
    QFont m_face;
    QFont m_bold;
    QFontMetricsF m_metrics;
    QRectF m_where;
    QRectF m_area;
    FreeRoom m_room;
};

} // namespace

QRectF plotArea(const Figure& figure, const QRectF& where, const FigureStyle& style)
{
    const QFontMetricsF metrics(fontOfPixels(style.text));
    const double u = style.unit;
    const double top = figure.y.unit.empty() ? style.text * 0.7 : style.text * 1.6;
    double bottom = style.text * 1.7;
    if (figure.residualAxis)
        bottom += (kResidualStrip + kResidualGap) * u;
    const int rows = std::max(2, static_cast<int>((where.height() - top - bottom) / (style.text * 2.4)));
    double left = figure.residualAxis ? metrics.horizontalAdvance(QStringLiteral("\u22120.0e\u221200")) : 0.0;
    for (const Tick& tick : ticksOf(figure.y, rows))
        left = std::max(left, metrics.horizontalAdvance(tick.text));
    return where.adjusted(left + 8 * u, top, -2 * u, -bottom);
}

void paintFigure(QPainter& painter, const Theme& theme, const Figure& figure, const QRectF& where,
                 const FigureStyle& style)
{
    painter.save();
    FigureArtist(painter, theme, figure, where, style).draw();
    painter.restore();
}

} // namespace sealwalk::render
