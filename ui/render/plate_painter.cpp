// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/plate_painter.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace sealwalk::render {

namespace {

using report::PointState;
using report::Teeth;

class PlateArtist
{
public:
    PlateArtist(QPainter& painter, const Theme& theme, QPointF centre, double size)
        : m_painter(painter)
        , m_ground(theme.colour(Role::Plate))
        , m_theme(theme)
        , m_centre(centre)
        , m_size(size)
        , m_r(size / 2.0)
        , m_unit(std::max(0.6, size / 18.0))
    {}

    void draw(const PlateLook& look)
    {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        body(look);
        if (look.temporary)
            tab(look.overdue);
        if (look.conceded)
            seal();
        m_painter.restore();
    }

private:
    void body(const PlateLook& look)
    {
        switch (look.state) {
        case PointState::LeakOver:
            filledDiamond({}, 1.18, "L");
            break;
        case PointState::LeakCannotSay:
            shape(diamond({}, 1.12), m_ground, m_theme.colour(Role::Unsure), 1.6);
            letter("L", m_theme.colour(Role::Unsure), 0.5);
            break;
        case PointState::LeakWithin:
            shape(diamond({}, 0.5), m_theme.colour(Role::Within), m_theme.colour(Role::Within), 0.0);
            break;
        case PointState::Shared: {
            const QColor colour = m_theme.colour(look.teeth == Teeth::Few    ? Role::Unsure
                                                 : look.teeth == Teeth::None ? Role::Within
                                                                             : Role::Over);
            shape(diamond({0.62, 0.0}, 1.0), m_ground, colour, 1.5);
            shape(diamond({-0.42, 0.0}, 1.0), colour, m_ground, 1.0);
            letter("S", m_ground, 0.58, {-0.42, 0.0});
            break;
        }
        case PointState::Echo:
        case PointState::EchoTakenOut: {
            const QColor colour = m_theme.colour(Role::Echo);
            circle(1.0, m_ground, colour, 1.3);
            circle(0.7, Qt::NoBrush, colour, 1.0);
            letter("E", colour, 0.48);
            break;
        }
        case PointState::Masked:
            masked();
            break;
        case PointState::Clear:
            triangle(m_theme.colour(Role::InkSoft), false);
            break;
        case PointState::BelowDetectable:
            triangle(m_theme.colour(Role::Unsure), true);
            break;
        case PointState::Permeation:
            drop();
            break;
        case PointState::Void: {
            const QColor colour = m_theme.colour(Role::Void);
            shape(square(), m_ground, colour, 1.5);
            lines({QLineF(at(-0.9, -0.9), at(0.9, 0.9)), QLineF(at(0.9, -0.9), at(-0.9, 0.9))}, colour, 1.2);
            haloed("V", colour);
            break;
        }
        case PointState::NotAccessible:
            noAccess();
            break;
        case PointState::NotSprayed: {
            QPen pen(m_theme.colour(Role::InkSoft), 1.4 * m_unit, Qt::SolidLine, Qt::FlatCap);
            pen.setDashPattern({2.4 / 1.4, 2.0 / 1.4});
            m_painter.setPen(pen);
            m_painter.setBrush(m_theme.colour(Role::Sheet));
            m_painter.drawEllipse(m_centre, m_r * 0.62, m_r * 0.62);
            break;
        }
        case PointState::RepairedAwaiting:
            repaired();
            break;
        case PointState::OtherSource:
            elsewhere();
            break;
        case PointState::Answered:
            shape(diamond({}, 1.0), m_ground, m_theme.colour(Role::Ink), 2.0);
            circle(0.22, m_theme.colour(Role::Ink), m_theme.colour(Role::Ink), 0.0);
            break;
        }
    }

    [[nodiscard]] QPointF at(double x, double y) const { return m_centre + QPointF(x, y) * m_r; }

    [[nodiscard]] QPainterPath diamond(QPointF offset, double q) const
    {
        QPainterPath path;
        path.addPolygon(QPolygonF{at(offset.x(), -q), at(offset.x() + q, 0), at(offset.x(), q),
                                  at(offset.x() - q, 0), at(offset.x(), -q)});
        return path;
    }

    [[nodiscard]] QPainterPath square() const
    {
        QPainterPath path;
        path.addRect(QRectF(at(-0.9, -0.9), at(0.9, 0.9)));
        return path;
    }

    void shape(const QPainterPath& path, const QColor& fill, const QColor& edge, double width)
    {
        m_painter.setBrush(fill);
        m_painter.setPen(width > 0.0 ? QPen(edge, width * m_unit, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin)
                                     : QPen(Qt::NoPen));
        m_painter.drawPath(path);
    }

    void circle(double q, const QBrush& fill, const QColor& edge, double width)
    {
        m_painter.setBrush(fill);
        m_painter.setPen(width > 0.0 ? QPen(edge, width * m_unit) : QPen(Qt::NoPen));
        m_painter.drawEllipse(m_centre, m_r * q, m_r * q);
    }

    void lines(const QList<QLineF>& all, const QColor& colour, double width)
    {
        m_painter.setPen(QPen(colour, width * m_unit, Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLines(all);
    }

    void letter(const char* text, const QColor& colour, double height, QPointF offset = {})
    {
        const double pixels = m_size * height;
        // Fonts come in whole pixels only; scaling the painter keeps small letters in proportion.
        constexpr double kDrawn = 32.0;
        m_painter.save();
        m_painter.translate(at(offset.x(), offset.y()));
        m_painter.scale(pixels / kDrawn, pixels / kDrawn);
        m_painter.setFont(fontOfPixels(kDrawn, Weight::Bold));
        m_painter.setPen(colour);
        m_painter.drawText(QRectF(-kDrawn, -kDrawn * 0.86, 2 * kDrawn, 2 * kDrawn * 0.86), Qt::AlignCenter,
                           QLatin1String(text));
        m_painter.restore();
    }

    void filledDiamond(QPointF offset, double q, const char* text)
    {
        shape(diamond(offset, q), m_theme.colour(Role::Over), m_ground, 1.0);
        letter(text, m_ground, 0.58, offset);
    }

    void haloed(const char* text, const QColor& colour)
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_ground);
        m_painter.drawEllipse(m_centre, m_r * 0.58, m_r * 0.58);
        letter(text, colour, 0.5);
    }

    void masked()
    {
        const QColor colour = m_theme.colour(Role::Masked);
        shape(square(), m_ground, colour, 1.5);
        QList<QLineF> corners;
        for (const double v : {0.63, 1.26}) {
            corners.append(QLineF(at(-0.9, -0.9 + v), at(-0.9 + v, -0.9)));
            corners.append(QLineF(at(0.9, 0.9 - v), at(0.9 - v, 0.9)));
        }
        lines(corners, colour, 1.2);
        haloed("M", colour);
    }

    void triangle(const QColor& colour, bool barred)
    {
        QPainterPath path;
        path.addPolygon(QPolygonF{at(-0.66, -0.36), at(0.66, -0.36), at(0.0, 0.66), at(-0.66, -0.36)});
        shape(path, m_ground, colour, 1.4);
        if (barred)
            lines({QLineF(at(-0.86, -0.76), at(0.86, -0.76))}, colour, 2.0);
    }

    void drop()
    {
        QPainterPath path(at(0.0, -1.25));
        path.cubicTo(at(0.5, -0.6), at(1.0, -0.2), at(1.0, 0.15));
        path.arcTo(QRectF(at(-1.0, -0.8), at(1.0, 1.1)), 0.0, -180.0);
        path.cubicTo(at(-1.0, -0.2), at(-0.5, -0.6), at(0.0, -1.25));
        shape(path, m_ground, m_theme.colour(Role::Permeation), 1.5);
        letter("P", m_theme.colour(Role::Permeation), 0.58, {0.0, 0.09});
    }

    void noAccess()
    {
        const QColor colour = m_theme.colour(Role::NoAccess);
        shape(square(), m_ground, m_ground, 0.0);
        QPainterPath path(at(0.2, -0.9));
        path.lineTo(at(-0.9, -0.9));
        path.lineTo(at(-0.9, 0.9));
        path.lineTo(at(0.9, 0.9));
        path.lineTo(at(0.9, -0.2));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(colour, 1.5 * m_unit, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        m_painter.drawPath(path);
        letter("A", colour, 0.58);
    }

    void repaired()
    {
        const QColor colour = m_theme.colour(Role::Repaired);
        circle(1.0, m_ground, colour, 1.5);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(colour);
        m_painter.drawPie(QRectF(at(-1.0, -1.0), at(1.0, 1.0)), 90 * 16, 180 * 16);
        letter("R", colour, 0.5, {0.45, 0.0});
    }

    /// Open towards outside, with an O: what answered is not of this place.
    void elsewhere()
    {
        const QColor colour = m_theme.colour(Role::Echo);
        QPainterPath path;
        path.addPolygon(QPolygonF{at(-0.55, -0.95), at(0.55, -0.95), at(1.1, 0.0), at(0.55, 0.95),
                                  at(-0.55, 0.95), at(-1.1, 0.0), at(-0.55, -0.95)});
        shape(path, m_ground, colour, 1.5);
        letter("O", colour, 0.58);
    }

    /// A round seal with a level bar: the value stands over the limit, and was granted.
    void seal()
    {
        const QPointF middle = at(0.95, 0.85);
        const double r = m_size * 0.3;
        m_painter.setBrush(m_theme.colour(Role::Within));
        m_painter.setPen(QPen(m_ground, 0.8 * m_unit));
        m_painter.drawEllipse(middle, r, r);
        m_painter.setPen(QPen(m_ground, 1.6 * m_unit, Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(middle - QPointF(r * 0.6, 0), middle + QPointF(r * 0.6, 0));
    }

    void tab(bool overdue)
    {
        const QPointF corner = at(0.55, -1.35);
        const double s = m_size * 0.62;
        QPainterPath path(corner);
        path.lineTo(corner + QPointF(s, 0));
        path.lineTo(corner + QPointF(s, s * 0.8));
        path.lineTo(corner + QPointF(s * 0.7, s * 1.05));
        path.lineTo(corner + QPointF(0, s * 1.05));
        path.closeSubpath();
        shape(path, m_theme.colour(overdue ? Role::Over : Role::Temporary), m_ground, 0.8);
        const QPointF middle = (corner + QPointF(s * 0.5, s * 0.5) - m_centre) / m_r;
        letter("T", m_ground, 0.5, middle);
    }

    QPainter& m_painter;
    QColor m_ground;
    const Theme& m_theme;
    QPointF m_centre;
    double m_size;
    double m_r;
    double m_unit;
};

} // namespace

PlateLook plateOf(const report::MapStretch& stretch)
{
    return {stretch.state, stretch.teeth, stretch.temporary, stretch.temporaryOverdue, stretch.conceded};
}

void paintPlate(QPainter& painter, const Theme& theme, const PlateLook& look, QPointF centre, double size)
{
    PlateArtist(painter, theme, centre, size).draw(look);
}

QSizeF plateRoom(const PlateLook& look, double size)
{
    const double wide = look.state == PointState::Shared ? 1.75
                        : look.temporary                 ? 1.9
                        : look.conceded                  ? 1.65
                                                         : 1.25;
    return {size * wide, size * (look.temporary ? 1.5 : look.conceded ? 1.4 : 1.25)};
}

QColor verdictColour(const Theme& theme, analysis::Verdict verdict)
{
    switch (verdict) {
    case analysis::Verdict::Over:
        return theme.colour(Role::Over);
    case analysis::Verdict::CannotSay:
        return theme.colour(Role::Unsure);
    case analysis::Verdict::Within:
        return theme.colour(Role::Within);
    case analysis::Verdict::NoAnswer:
    case analysis::Verdict::NotCounted:
        return theme.colour(Role::InkSoft);
    }
    return theme.colour(Role::InkSoft);
}

void paintLimitGlyph(QPainter& painter, const Theme& theme, analysis::Verdict verdict, const QRectF& where)
{
    // Drawn in a box of 22 by 20, the limit at half height.
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double s = std::min(where.width() / 22.0, where.height() / 20.0);
    painter.translate(where.center().x() - 11.0 * s, where.center().y() - 10.0 * s);
    painter.scale(s, s);
    const QColor colour = verdictColour(theme, verdict);
    painter.setPen(Qt::NoPen);
    switch (verdict) {
    case analysis::Verdict::Over:
        painter.fillRect(QRectF(8, 0, 6, 8), colour);
        break;
    case analysis::Verdict::Within:
        painter.fillRect(QRectF(8, 12, 6, 8), colour);
        break;
    case analysis::Verdict::CannotSay:
        painter.setBrush(theme.colour(Role::Plate));
        painter.setPen(QPen(colour, 1.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.drawRect(QRectF(8, 4, 6, 12));
        break;
    case analysis::Verdict::NoAnswer:
    case analysis::Verdict::NotCounted:
        break;
    }
    QPen level(theme.colour(Role::Ink), 1.5, Qt::SolidLine, Qt::FlatCap);
    if (verdict == analysis::Verdict::NoAnswer || verdict == analysis::Verdict::NotCounted)
        level.setDashPattern({2.0 / 1.5, 2.0 / 1.5});
    painter.setPen(level);
    painter.drawLine(QLineF(1, 10, 21, 10));
    painter.restore();
}

} // namespace sealwalk::render
