// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/band_painter.h"

#include "ui/render/hatch.h"

#include <QPainter>
#include <QPainterPath>
#include <QPen>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

using report::PointState;
using report::Teeth;

// Dashes in units of the grammar (one screen pixel), on and off.
using Dash = QList<qreal>;
const Dash kToothDash{2.5, 4.0};
const Dash kToothDashFew{2.5, 11.0};
const Dash kRungs{2.0, 3.0};
const Dash kBroken{9.0, 4.0};
const Dash kNotSprayed{5.0, 4.0};
const Dash kNoAccess{5.0, 3.0};

constexpr double kHollowWidening = 1.35; // masked and not accessible bands need room for their hatch
constexpr double kMaskedPitch = 4.0;
constexpr double kNoAccessPitch = 7.0;
constexpr double kBeadPitch = 7.5;
constexpr double kCrossPitch = 9.0;

double bodyWidth(const BandStyle& style, const BandLook& look)
{
    switch (look.state) {
    case PointState::Clear:
    case PointState::BelowDetectable:
        return look.width * 0.5;
    case PointState::Masked:
    case PointState::NotAccessible:
        return style.body * kHollowWidening;
    default:
        return look.width;
    }
}

/// Strokes one line many times over, widest first.
class Strokes
{
public:
    Strokes(QPainter& painter, const BandStyle& style, const QPolygonF& line, bool closed)
        : m_painter(painter)
        , m_style(style)
        , m_line(line)
        , m_closed(closed)
    {}

    void operator()(double width, const QColor& colour, const Dash& dash = {}, double dashUnit = 0.0) const
    {
        // Round joins would put a full disc of the pen's width into every dash that bends.
        QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap, dash.isEmpty() ? Qt::RoundJoin : Qt::MiterJoin);
        if (!dash.isEmpty()) {
            const double unit = dashUnit > 0.0 ? dashUnit : m_style.unit;
            Dash inWidths; // QPen counts dashes in pen widths
            for (const qreal d : dash)
                inWidths.append(d * unit / width);
            pen.setDashPattern(inWidths);
        }
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
        if (m_closed)
            m_painter.drawPolygon(m_line);
        else
            m_painter.drawPolyline(m_line);
    }

private:
    QPainter& m_painter;
    const BandStyle& m_style;
    const QPolygonF& m_line;
    bool m_closed;
};

void drawLines(QPainter& painter, const QList<QLineF>& lines, const QColor& colour, double width)
{
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(lines);
}

void beads(QPainter& painter, const BandStyle& style, const QPolygonF& line, double diameter,
           const QColor& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double length = lengthOf(line);
    const double pitch = kBeadPitch * style.unit;
    const int count = std::max(1, static_cast<int>(length / pitch));
    for (int i = 0; i < count; ++i) {
        const QPointF at = placeOn(line, length * (i + 0.5) / count).place;
        painter.drawEllipse(at, diameter / 2.0, diameter / 2.0);
    }
}

void crosses(QPainter& painter, const BandStyle& style, const QPolygonF& line, double width,
             const QColor& colour)
{
    const double length = lengthOf(line);
    const int count = std::max(1, static_cast<int>(length / (kCrossPitch * style.unit)));
    const double r = width * 0.36;
    QList<QLineF> lines;
    for (int i = 0; i < count; ++i) {
        const QPointF at = placeOn(line, length * (i + 0.5) / count).place;
        lines.append(QLineF(at - QPointF(r, r), at + QPointF(r, r)));
        lines.append(QLineF(at + QPointF(r, -r), at + QPointF(-r, r)));
    }
    drawLines(painter, lines, colour, 1.2 * style.unit);
}

QColor bodyColour(const Theme& theme, const BandLook& look)
{
    return look.position ? theme.heat(*look.position) : theme.colour(Role::Sheet);
}

Role outlineRole(const BandLook& look)
{
    switch (look.state) {
    case PointState::BelowDetectable:
        return Role::Unsure;
    case PointState::EchoTakenOut:
    case PointState::OtherSource:
        return Role::Echo;
    case PointState::Masked:
        return Role::Masked;
    case PointState::NotAccessible:
        return Role::NoAccess;
    case PointState::NotSprayed:
        return Role::InkSoft;
    case PointState::Void:
        return Role::Void;
    case PointState::RepairedAwaiting:
        return Role::Repaired;
    case PointState::LeakOver:
    case PointState::Shared:
    case PointState::Answered:
        return look.teeth == Teeth::Full ? Role::Ink : Role::Edge;
    default:
        return Role::Edge;
    }
}

const Dash& outlineDash(PointState state)
{
    static const Dash solid;
    switch (state) {
    case PointState::BelowDetectable:
        return kBroken;
    case PointState::NotAccessible:
        return kNoAccess;
    case PointState::NotSprayed:
        return kNotSprayed;
    default:
        return solid;
    }
}

} // namespace

BandLook lookOf(const report::MapStretch& stretch, const report::MapScale& scale, const BandStyle& style)
{
    BandLook look;
    look.state = stretch.state;
    look.teeth = stretch.teeth;
    look.width = style.width(scale, stretch.rate);
    if (stretch.rate)
        look.position = scale.position(*stretch.rate);
    return look;
}

double bandReach(const BandStyle& style, const BandLook& look)
{
    return bodyWidth(style, look) / 2.0 + style.casing + (look.teeth == Teeth::None ? 0.0 : style.tooth);
}

double discReach(const BandStyle& style, const BandLook& look, double radius)
{
    return radius + (look.width - style.body) / 2.0 + style.casing +
           (look.teeth == Teeth::None ? 0.0 : style.tooth);
}

void paintBand(QPainter& painter, const Theme& theme, const BandStyle& style, const BandLook& look,
               const QPolygonF& line, bool closed)
{
    const Strokes stroke(painter, style, line, closed);
    const double width = bodyWidth(style, look);
    const double full = width + 2.0 * style.casing;
    const QColor sheet = theme.colour(Role::Sheet);
    const QColor outline = theme.colour(outlineRole(look));
    if (look.teeth != Teeth::None)
        stroke(full + 2.0 * style.tooth, theme.colour(Role::Ink),
               look.teeth == Teeth::Full ? kToothDash : kToothDashFew);
    stroke(full, outline, outlineDash(look.state));
    switch (look.state) {
    case PointState::LeakOver:
    case PointState::LeakCannotSay:
    case PointState::LeakWithin:
    case PointState::Shared:
    case PointState::Answered:
        stroke(width, bodyColour(theme, look));
        break;
    case PointState::Clear:
        stroke(width, theme.coldest());
        break;
    case PointState::BelowDetectable:
        stroke(width, theme.coldest(), kBroken);
        break;
    case PointState::Echo:
        stroke(width, sheet);
        stroke(width, bodyColour(theme, look), kRungs);
        break;
    case PointState::OtherSource:
        stroke(width, sheet);
        stroke(1.2 * style.unit, outline, kNotSprayed);
        break;
    case PointState::EchoTakenOut:
        stroke(width, sheet);
        stroke(1.2 * style.unit, outline, kRungs);
        break;
    case PointState::Permeation:
        stroke(width, sheet);
        beads(painter, style, line, width * 0.72, bodyColour(theme, look));
        break;
    case PointState::Masked:
        stroke(width, sheet);
        drawLines(painter, bandHatch(line, width, kMaskedPitch * style.unit, true), outline,
                  1.6 * style.unit);
        break;
    case PointState::NotAccessible:
        stroke(width, sheet);
        drawLines(painter, bandHatch(line, width, kNoAccessPitch * style.unit, false), outline,
                  1.1 * style.unit);
        break;
    case PointState::NotSprayed:
        stroke(width, sheet);
        break;
    case PointState::Void:
        stroke(width, sheet);
        crosses(painter, style, line, width, outline);
        break;
    case PointState::RepairedAwaiting:
        stroke(width, sheet);
        stroke(1.6 * style.unit, outline);
        break;
    }
}

void paintDisc(QPainter& painter, const Theme& theme, const BandStyle& style, const BandLook& look,
               QPointF centre, double radius)
{
    const double r = radius + (look.width - style.body) / 2.0;
    const QColor sheet = theme.colour(Role::Sheet);
    const QColor outline = theme.colour(outlineRole(look));
    const QPolygonF rim = circlePolygon(centre, r + style.casing / 2.0);
    const Strokes strokeRim(painter, style, rim, true);
    const auto fill = [&](const QColor& colour, double size) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(centre, size, size);
    };
    if (look.teeth != Teeth::None) {
        const QPolygonF outer = circlePolygon(centre, r + style.casing + style.tooth / 2.0);
        Strokes(painter, style, outer, true)(style.tooth, theme.colour(Role::Ink),
                                             look.teeth == Teeth::Full ? kToothDash : kToothDashFew);
    }
    const bool coloured =
        look.position && look.state != PointState::Echo && look.state != PointState::Permeation;
    const bool pale = look.state == PointState::Clear || look.state == PointState::BelowDetectable;
    fill(coloured ? bodyColour(theme, look) : pale ? theme.coldest() : sheet, r);
    strokeRim(style.casing, outline, outlineDash(look.state));
    switch (look.state) {
    case PointState::Echo:
        drawLines(painter, hatchLines(circlePolygon(centre, r), 0.0, 5.0 * style.unit),
                  bodyColour(theme, look), 2.0 * style.unit);
        break;
    case PointState::EchoTakenOut: {
        const QPolygonF inner = circlePolygon(centre, r * 0.5);
        Strokes(painter, style, inner, true)(1.2 * style.unit, outline, kRungs);
        break;
    }
    case PointState::Permeation:
        fill(bodyColour(theme, look), r * 0.55);
        break;
    case PointState::Masked:
        drawLines(painter, hatchLines(circlePolygon(centre, r), 45.0, kMaskedPitch * style.unit), outline,
                  1.6 * style.unit);
        break;
    case PointState::NotAccessible:
        drawLines(painter, hatchLines(circlePolygon(centre, r), -45.0, kNoAccessPitch * style.unit), outline,
                  1.1 * style.unit);
        break;
    case PointState::Void: {
        const double d = r * 0.7;
        drawLines(painter,
                  {QLineF(centre - QPointF(d, d), centre + QPointF(d, d)),
                   QLineF(centre + QPointF(d, -d), centre + QPointF(-d, d))},
                  outline, 1.2 * style.unit);
        break;
    }
    case PointState::RepairedAwaiting: {
        const QPolygonF inner = circlePolygon(centre, r * 0.5);
        Strokes(painter, style, inner, true)(1.6 * style.unit, outline);
        break;
    }
    default:
        break;
    }
}

} // namespace sealwalk::render
