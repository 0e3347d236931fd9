// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/setup_painter.h"

#include "ui/render/line_breaks.h"
#include "ui/render/raised_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>
#include <QRegularExpression>

#include <algorithm>
#include <utility>

namespace sealwalk::render {

namespace {

constexpr double kObjectShare = 0.29; // of the width
constexpr double kDetectorShare = 0.27;
constexpr double kTeeShare = 0.78; // of the line, from the object
constexpr double kThin = 1.1;
constexpr double kThick = 1.8;

/// A number and its unit stay in one line.
QString wordsOf(const std::string& text)
{
    static const QRegularExpression beforeUnit(QStringLiteral("(?<=\\d) (?=\\p{L})"));
    return QString::fromStdString(text).replace(beforeUnit, QString(QChar::Nbsp));
}

QPen penOf(const QColor& ink, double width, bool isStated)
{
    QPen pen(ink, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (!isStated)
        pen.setDashPattern({4.0 / width, 3.0 / width});
    return pen;
}

/// A ring with two lines that come together: a pump, its outlet below.
void paintPump(QPainter& painter, QPointF centre, double radius)
{
    painter.drawEllipse(centre, radius, radius);
    const QPointF outlet = centre + QPointF(0.0, radius);
    painter.drawLine(QLineF(outlet, centre + QPointF(-0.8 * radius, -0.6 * radius)));
    painter.drawLine(QLineF(outlet, centre + QPointF(0.8 * radius, -0.6 * radius)));
}

/// Two triangles tip to tip: the valve that the helium of a reference leak comes through.
void paintLeakMark(QPainter& painter, QPointF centre, double size)
{
    const double half = 0.5 * size;
    painter.drawPolygon(QPolygonF({centre, centre + QPointF(-half, -half), centre + QPointF(half, -half)}));
    painter.drawPolygon(QPolygonF({centre, centre + QPointF(-half, half), centre + QPointF(half, half)}));
}

} // namespace

LaidSetup::LaidSetup(report::SetupSketch sketch, double width, const SetupStyle& style)
    : m_sketch(std::move(sketch))
    , m_width(width)
    , m_style(style)
    , m_face(fontOfPixels(style.text))
    , m_strong(fontOfPixels(style.text, Weight::Bold))
{
    for (QFont* face : {&m_face, &m_strong})
        if (!style.shapesText) {
            face->setStyleStrategy(QFont::PreferNoShaping);
            face->setHintingPreference(QFont::PreferNoHinting);
        }
    m_line = QFontMetricsF(m_face).lineSpacing();
    layAbove();
    layMiddle();
    layBelow();
}

double LaidSetup::heightOf(const report::SetupPart& part, double width) const
{
    double height = 0.0;
    for (const std::string& line : part.lines)
        height += static_cast<double>(brokenLines(wordsOf(line), m_strong, width).size()) * m_line;
    return height;
}

/// Sets the part's words from the top of `where` down; returns where they end.
double LaidSetup::addWords(const report::SetupPart& part, QRectF where, Qt::Alignment alignment,
                           bool strongFirst)
{
    double y = where.top();
    for (std::size_t i = 0; i < part.lines.size(); ++i)
        for (const QString& line : brokenLines(wordsOf(part.lines[i]), m_strong, where.width())) {
            m_words.push_back({line, QRectF(where.left(), y, where.width(), m_line), alignment,
                               strongFirst && i == 0, part.isStated});
            y += m_line;
        }
    return y;
}

/// Reference leaks stand over the object, each a little further in, so that no stem crosses words.
void LaidSetup::layAbove()
{
    double y = 2.0;
    const double pitch = 1.7 * m_style.text;
    const double room = kObjectShare * m_width - m_style.text;
    for (const report::SetupPart& leak : m_sketch.leaks) {
        const double x = std::min(static_cast<double>(m_leaks.size() + 1) * pitch, room);
        m_leaks.emplace_back(x, y + 0.5 * m_line);
        const double left = x + m_style.text;
        y = addWords(leak, QRectF(left, y, m_width - left, m_line), Qt::AlignLeft, true);
    }
    m_below = y;
}

void LaidSetup::layMiddle()
{
    const double pad = 0.7 * m_style.text;
    const double objectWidth = kObjectShare * m_width;
    const double detectorWidth = kDetectorShare * m_width;
    const double lineLeft = objectWidth;
    const double lineRight = m_width - detectorWidth;
    const QRectF line(lineLeft + pad, 0.0, lineRight - lineLeft - 2.0 * pad, 0.0);
    const double above = heightOf(m_sketch.connection, line.width());
    const double objectWords = heightOf(m_sketch.object, objectWidth - 2.0 * pad);
    const double detectorWords = heightOf(m_sketch.detector, detectorWidth - 2.0 * pad);
    const double boxes = std::max(objectWords, detectorWords) + 2.0 * pad;
    m_axis = m_below + pad + std::max(0.5 * boxes, above + 5.0);
    const double objectHeight = objectWords + 2.0 * pad;
    const double detectorHeight = detectorWords + 2.0 * pad;
    m_object = QRectF(1.0, m_axis - 0.5 * objectHeight, objectWidth - 2.0, objectHeight);
    m_detector = QRectF(lineRight, m_axis - 0.5 * detectorHeight, detectorWidth - 1.0, detectorHeight);
    m_tee = lineLeft + kTeeShare * (lineRight - lineLeft);

    addWords(m_sketch.object, QRectF(pad, m_axis - 0.5 * objectWords, objectWidth - 2.0 * pad, objectWords),
             Qt::AlignHCenter, true);
    addWords(m_sketch.detector,
             QRectF(lineRight + pad, m_axis - 0.5 * detectorWords, detectorWidth - 2.0 * pad, detectorWords),
             Qt::AlignHCenter, true);
    addWords(m_sketch.connection, line.translated(0.0, m_axis - above - 5.0), Qt::AlignLeft, false);
    // Under the line, before the pump's stem.
    const QRectF under(line.left(), m_axis + 5.0, m_tee - line.left() - 0.5 * pad, 0.0);
    double end = addWords(m_sketch.hose, under, Qt::AlignLeft, false);
    if (m_sketch.linePressure)
        end = addWords(*m_sketch.linePressure, QRectF(under.left(), end, under.width(), 0.0), Qt::AlignLeft,
                       false);
    m_below = std::max({m_object.bottom(), m_detector.bottom(), end});
}

/// Pumps and a leak at the inlet hang below what they are joined to, their words beside them.
void LaidSetup::layBelow()
{
    const double radius = 0.9 * m_style.text;
    const double stem = 0.5 * m_style.text;
    const double beside = radius + 0.5 * m_style.text;
    double end = m_below;
    const double top = m_below + stem;
    if (m_sketch.ownPumps) {
        const double left = m_object.left() + 2.0 * radius + beside;
        end = std::max({end, top + 2.0 * radius,
                        addWords(*m_sketch.ownPumps, QRectF(left, top, m_object.right() - left, m_line),
                                 Qt::AlignLeft, false)});
    }
    if (m_sketch.parallelPump) {
        const double left = m_object.right() + 0.5 * m_style.text;
        end = std::max({end, top + 2.0 * radius,
                        addWords(*m_sketch.parallelPump, QRectF(left, top, m_tee - beside - left, m_line),
                                 Qt::AlignRight, false)});
    }
    double y = top;
    for (const report::SetupPart& leak : m_sketch.leaksAtInlet) {
        const double left = m_detector.left() + 2.0 * m_style.text;
        y = addWords(leak, QRectF(left, y, m_width - left, m_line), Qt::AlignLeft, false);
        end = std::max(end, y);
    }
    m_height = end + 3.0;
}

void LaidSetup::paint(QPainter& painter, const Theme& theme, QPointF corner) const
{
    const QColor ink = theme.colour(Role::Ink);
    const double radius = 0.9 * m_style.text;
    const double top = m_below + 0.5 * m_style.text;
    painter.save();
    painter.translate(corner);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);

    painter.setPen(penOf(ink, kThick, true));
    painter.drawRoundedRect(m_object, 6.0, 6.0);
    painter.setPen(penOf(ink, kThin, m_sketch.detector.isStated));
    painter.drawRect(m_detector);
    painter.setPen(penOf(ink, kThick, m_sketch.hose.isStated));
    painter.drawLine(QLineF(m_object.right(), m_axis, m_detector.left(), m_axis));
    painter.setPen(penOf(ink, kThin, true));
    const QPointF tip(m_detector.left() - 1.0, m_axis);
    painter.setBrush(ink);
    painter.drawPolygon(QPolygonF({tip, tip + QPointF(-8.0, -3.5), tip + QPointF(-8.0, 3.5)}));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(penOf(ink, kThin, m_sketch.connection.isStated));
    for (const double x : {m_object.right() + 3.0, m_object.right() + 6.0}) // the flange
        painter.drawLine(QLineF(x, m_axis - 5.0, x, m_axis + 5.0));

    for (std::size_t i = 0; i < m_leaks.size(); ++i) {
        painter.setPen(penOf(ink, kThin, m_sketch.leaks[i].isStated));
        painter.drawLine(QLineF(m_leaks[i].x(), m_leaks[i].y(), m_leaks[i].x(), m_object.top()));
        painter.setPen(penOf(ink, kThin, true));
        painter.setBrush(theme.colour(Role::Sheet));
        paintLeakMark(painter, m_leaks[i], 0.8 * m_style.text);
        painter.setBrush(Qt::NoBrush);
    }
    if (m_sketch.ownPumps) {
        const QPointF centre(m_object.left() + 2.0 * radius, top + radius);
        painter.setPen(penOf(ink, kThin, true));
        painter.drawLine(QLineF(centre.x(), m_object.bottom(), centre.x(), centre.y() - radius));
        paintPump(painter, centre, radius);
    }
    if (m_sketch.parallelPump) {
        const QPointF centre(m_tee, top + radius);
        painter.setPen(penOf(ink, kThin, m_sketch.parallelPump->isStated));
        painter.drawLine(QLineF(centre.x(), m_axis, centre.x(), centre.y() - radius));
        paintPump(painter, centre, radius);
    }
    if (!m_sketch.leaksAtInlet.empty()) {
        const QPointF centre(m_detector.left() + m_style.text, top + 0.5 * m_line);
        painter.setPen(penOf(ink, kThin, true));
        painter.drawLine(QLineF(centre.x(), m_detector.bottom(), centre.x(), centre.y()));
        painter.setBrush(theme.colour(Role::Sheet));
        paintLeakMark(painter, centre, 0.8 * m_style.text);
        painter.setBrush(Qt::NoBrush);
    }

    for (const Words& words : m_words) {
        const QFont& face = words.isStrong ? m_strong : m_face;
        const QFontMetricsF metrics(face);
        painter.setPen(words.isStated ? ink : theme.colour(Role::InkSoft));
        const double width = raisedWidth(words.text, face);
        const double x = words.alignment.testFlag(Qt::AlignRight)     ? words.where.right() - width
                         : words.alignment.testFlag(Qt::AlignHCenter) ? words.where.center().x() - 0.5 * width
                                                                      : words.where.left();
        drawRaised(painter, QPointF(x, words.where.top() + metrics.ascent()), words.text, face);
    }
    painter.restore();
}

} // namespace sealwalk::render
