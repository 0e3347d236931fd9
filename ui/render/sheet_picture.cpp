// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/sheet_picture.h"

#include "ui/render/hatch.h"
#include "ui/render/sheet_layout.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPainterPathStroker>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kTolerance = 0.15; // px; no eye sees it
constexpr double kThinnestBand = 4.0;
constexpr double kCrowdedLength = 14.0; // shorter stretches are too small to insist on a plate
constexpr double kLongestName = 20.0;   // half of it, in sizes of its text
constexpr double kSmallestSpot = 5.0;   // a spot stays visible when zoomed out
constexpr int kMostPieces = 200;        // of a band, to tell where something lies over it

QRectF grown(const QRectF& rect, double by)
{
    return rect.adjusted(-by, -by, by, by);
}

bool meets(const QRectF& visible, const QRectF& room)
{
    return visible.isEmpty() || visible.intersects(room);
}

void textAt(QPainter& painter, QPointF centre, const QString& text)
{
    painter.drawText(QRectF(centre - QPointF(400, 50), QSizeF(800, 100)), Qt::AlignCenter, text);
}

} // namespace

SheetPicture::SheetPicture(std::shared_ptr<const report::MapContent> content, double unitsPerMillimetre,
                           const BandStyle& style, const SheetParts& parts)
    : m_content(std::move(content))
    , m_scale(unitsPerMillimetre)
    , m_style(style)
    , m_parts(parts)
{
    layItems();
    SheetLayout(*this).lay();
    const geometry::Box box = m_content->bounds();
    m_bounds = QRectF(map({box.low.x, box.high.y}), map({box.high.x, box.low.y}));
    for (const Item& item : m_items)
        m_bounds |= item.room;
    const double text = m_style.text;
    for (const Number& number : m_numbers)
        m_bounds |= QRectF(number.centre - QPointF(text, text), QSizeF(2.0 * text, 2.0 * text));
    for (const Plate& plate : m_plates) {
        const QSizeF room = plateRoom(plate.look, m_style.plate);
        m_bounds |= QRectF(plate.centre - QPointF(room.width(), room.height()) / 2.0, room);
        if (!plate.labelRoom.isEmpty())
            m_bounds |= plate.labelRoom;
    }
    const QFontMetricsF metrics(fontOfPixels(text));
    for (const Name& name : m_names) {
        const double half = metrics.horizontalAdvance(name.text) / 2.0;
        m_bounds |= QRectF(name.centre - QPointF(half, text), QSizeF(2.0 * half, 2.0 * text));
    }
    m_bounds = grown(m_bounds, 2.0 * m_style.unit);
}

void SheetPicture::layItems()
{
    std::vector<bool> served(m_content->joints.size(), false);
    const auto polygon = [&](const std::vector<geometry::Point>& points) {
        QPolygonF line;
        line.reserve(static_cast<qsizetype>(points.size()));
        for (const geometry::Point p : points)
            line.append(map(p));
        return simplified(line, kTolerance * m_style.unit);
    };
    const auto roomFor = [&](Item& item) {
        item.room = item.radius > 0.0
                        ? grown(QRectF(item.place, item.place), discReach(m_style, item.look, item.radius))
                        : grown(item.line.boundingRect(), bandReach(m_style, item.look));
    };
    const auto spotRadius = [&](const report::MapJoint& joint) {
        return std::max(joint.spotRadius * m_scale, kSmallestSpot * m_style.unit);
    };
    for (const report::MapStretch& stretch : m_content->stretches) {
        const report::MapJoint& joint = m_content->joints[stretch.joint];
        served[stretch.joint] = true;
        Item item;
        item.look = lookOf(stretch, m_content->scale, m_style);
        item.place = map(stretch.place);
        item.outward = QPointF(stretch.outward.x, -stretch.outward.y);
        if (joint.isSpot()) {
            item.radius = spotRadius(joint);
        } else {
            const double length = stretch.to - stretch.from;
            item.closed = joint.outline.isClosed() && length > joint.outline.length() - 1e-6;
            const double gap = item.closed ? 0.0 : std::min(m_style.gap / 2.0 / m_scale, length / 4.0);
            if (item.closed) {
                const auto v = joint.outline.vertices();
                item.line = polygon({v.begin(), v.end()});
            } else {
                item.line = polygon(joint.outline.section(stretch.from + gap, stretch.to - gap));
            }
        }
        if (item.radius <= 0.0) {
            // Far out, a band must not grow thicker than it is long.
            const double length = (stretch.to - stretch.from) * m_scale;
            item.look.width = std::min(item.look.width, std::max(kThinnestBand * m_style.unit, 0.9 * length));
            item.crowded = length < kCrowdedLength * m_style.unit;
        }
        roomFor(item);
        m_items.push_back(std::move(item));
    }
    for (std::size_t j = 0; j < m_content->joints.size(); ++j) {
        const report::MapJoint& joint = m_content->joints[j];
        if (served[j] || joint.outline.isEmpty())
            continue;
        Item item;
        item.look.width = m_style.body;
        item.place = map(joint.outline.vertices().front());
        item.closed = joint.outline.isClosed();
        if (joint.isSpot()) {
            item.radius = spotRadius(joint);
        } else {
            const auto v = joint.outline.vertices();
            item.line = polygon({v.begin(), v.end()});
        }
        roomFor(item);
        m_bare.emplace_back(j, std::move(item));
    }
}

void SheetPicture::paint(QPainter& painter, const Theme& theme, const QRectF& visible) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_parts.outlines)
        paintOutlines(painter, theme);
    const auto paintItem = [&](const Item& item) {
        if (!meets(visible, item.room))
            return;
        if (item.radius > 0.0)
            paintDisc(painter, theme, m_style, item.look, item.place, item.radius);
        else
            paintBand(painter, theme, m_style, item.look, item.line, item.closed);
    };
    for (const auto& bare : m_bare)
        paintItem(bare.second);
    for (const Item& item : m_items)
        paintItem(item);

    paintLeaders(painter, theme, visible); // under the numbers they may cross
    const QFont normal = fontOfPixels(m_style.text);
    const QFont bold = fontOfPixels(m_style.text, Weight::Bold);
    painter.setFont(normal);
    painter.setPen(theme.colour(Role::InkSoft));
    for (const Name& name : m_names)
        if (meets(visible, QRectF(name.centre - QPointF(200, 20), QSizeF(400, 40))))
            textAt(painter, name.centre, name.text);
    for (const bool strong : {false, true}) {
        painter.setFont(strong ? bold : normal);
        painter.setPen(theme.colour(strong ? Role::Ink : Role::InkSoft));
        for (const Number& number : m_numbers) {
            if (number.strong != strong ||
                !meets(visible, QRectF(number.centre - QPointF(20, 20), QSizeF(40, 40))))
                continue;
            if (number.over)
                paintNumberOnGround(painter, theme, number);
            else
                textAt(painter, number.centre, QString::number(m_content->stretches[number.stretch].number));
        }
    }
    paintPlates(painter, theme, visible);
    painter.restore();
}

void SheetPicture::paintOutlines(QPainter& painter, const Theme& theme) const
{
    paintSheetOutlines(painter, theme, m_content->outlines, m_scale, 1.2 * m_style.unit);
}

void SheetPicture::paintLeaders(QPainter& painter, const Theme& theme, const QRectF& visible) const
{
    painter.setPen(QPen(theme.colour(Role::Edge), m_style.unit, Qt::SolidLine, Qt::FlatCap));
    for (const Plate& plate : m_plates)
        if (plate.leader &&
            meets(visible, QRectF(plate.anchor, plate.centre).normalized().adjusted(-1, -1, 1, 1)))
            painter.drawLine(QLineF(plate.anchor, plate.centre));
}

void SheetPicture::paintNumbersOver(QPainter& painter, const Theme& theme, const QPainterPath& covered) const
{
    const QRectF all = covered.boundingRect();
    for (const Number& number : m_numbers) {
        const QRectF room(number.centre - QPointF(1.1, 0.65) * m_style.text,
                          QSizeF(2.2 * m_style.text, 1.3 * m_style.text));
        if (!all.intersects(room) || !covered.intersects(room))
            continue;
        paintNumberOnGround(painter, theme, number);
    }
}

void SheetPicture::paintNumberOnGround(QPainter& painter, const Theme& theme, const Number& number) const
{
    const QString text = QString::number(m_content->stretches[number.stretch].number);
    const QFont font = fontOfPixels(m_style.text, number.strong ? Weight::Bold : Weight::Normal);
    const QFontMetricsF metrics(font);
    QRectF ground(0.0, 0.0, metrics.horizontalAdvance(text) + 4.0 * m_style.unit, metrics.ascent());
    ground.moveCenter(number.centre);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.colour(Role::Sheet));
    painter.drawRoundedRect(ground, 2.0 * m_style.unit, 2.0 * m_style.unit);
    painter.setFont(font);
    painter.setPen(theme.colour(number.strong ? Role::Ink : Role::InkSoft));
    textAt(painter, number.centre, text);
}

void SheetPicture::paintPlates(QPainter& painter, const Theme& theme, const QRectF& visible) const
{
    for (const Plate& plate : m_plates) {
        const QRectF room(plate.centre - QPointF(60, 60), QSizeF(120, 120));
        if (!meets(visible, room | plate.labelRoom))
            continue;
        if (!plate.bracket.isEmpty()) {
            painter.setPen(
                QPen(theme.colour(plate.look.teeth == report::Teeth::Few ? Role::Unsure : Role::Over),
                     1.5 * m_style.unit, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
            painter.setBrush(Qt::NoBrush);
            painter.drawPolyline(plate.bracket);
        }
        paintPlate(painter, theme, plate.look, plate.centre, m_style.plate);
        if (plate.label.text().isEmpty())
            continue;
        painter.setPen(QPen(theme.colour(Role::Edge), m_style.unit));
        painter.setBrush(theme.colour(Role::Plate));
        painter.drawRoundedRect(plate.labelRoom, 2.0 * m_style.unit, 2.0 * m_style.unit);
        if (plate.range.isEmpty()) {
            paintRate(painter, plate.label, plate.labelRoom, Qt::AlignHCenter, m_style.text,
                      theme.colour(Role::Ink));
            continue;
        }
        const double below = m_style.text * kRangeText;
        paintRate(painter, plate.label, plate.labelRoom.adjusted(0, 0, 0, -below), Qt::AlignHCenter,
                  m_style.text, theme.colour(Role::Ink));
        painter.setFont(fontOfPixels(below));
        painter.setPen(theme.colour(Role::InkSoft));
        textAt(painter,
               plate.labelRoom.center() +
                   QPointF(0, (plate.labelRoom.height() - below) / 2.0 - 2.0 * m_style.unit),
               plate.range);
    }
}

std::optional<std::size_t> SheetPicture::hit(QPointF place, double reach) const
{
    for (const Plate& plate : m_plates) {
        const double half = m_style.plate / 2.0;
        if (QRectF(plate.centre - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)).contains(place) ||
            plate.labelRoom.contains(place))
            return plate.stretch;
    }
    for (const Number& number : m_numbers)
        if (QRectF(number.centre - QPointF(8, 7), QSizeF(16, 14)).contains(place))
            return number.stretch;
    std::optional<std::size_t> best;
    double least = reach;
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        const Item& item = m_items[i];
        if (!grown(item.room, reach).contains(place))
            continue;
        double off = 0.0;
        if (item.radius > 0.0) {
            off = QLineF(place, item.place).length() - discReach(m_style, item.look, item.radius);
        } else {
            double nearest = 1e9;
            for (qsizetype k = 1; k < item.line.size(); ++k) {
                const QPointF a = item.line[k - 1];
                const QPointF d = item.line[k] - a;
                const double square = QPointF::dotProduct(d, d);
                const double t =
                    square > 0.0 ? std::clamp(QPointF::dotProduct(place - a, d) / square, 0.0, 1.0) : 0.0;
                nearest = std::min(nearest, QLineF(place, a + d * t).length());
            }
            off = nearest - bandReach(m_style, item.look);
        }
        if (off <= least) {
            least = off;
            best = i;
        }
    }
    return best;
}

QPainterPath SheetPicture::ringAround(std::size_t stretch, double distance) const
{
    const Item& item = m_items[stretch];
    QPainterPath path;
    if (item.radius > 0.0) {
        const double r = discReach(m_style, item.look, item.radius) + distance;
        path.addEllipse(item.place, r, r);
        return path;
    }
    path.addPolygon(item.line);
    if (item.closed)
        path.closeSubpath();
    QPainterPathStroker stroker;
    stroker.setWidth(2.0 * (bandReach(m_style, item.look) + distance));
    stroker.setCapStyle(Qt::SquareCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(path).simplified();
}

QRectF SheetPicture::numberRoom(std::size_t stretch) const
{
    for (const Number& number : m_numbers)
        if (number.stretch == stretch)
            return {number.centre - QPointF(1.1, 0.65) * m_style.text,
                    QSizeF(2.2 * m_style.text, 1.3 * m_style.text)};
    return {};
}

int SheetPicture::numbersLeftOut() const
{
    return m_parts.numbers ? static_cast<int>(m_items.size() - m_numbers.size()) : 0;
}

double SheetPicture::coveredBy(const QRectF& room, std::size_t own) const
{
    double area = 0.0;
    const auto add = [&](const QRectF& read) {
        const QRectF both = read & room;
        area += both.width() * both.height();
    };
    const auto around = [](QPointF centre, QSizeF size) {
        return QRectF(centre - QPointF(size.width(), size.height()) / 2.0, size);
    };
    const QFontMetricsF metrics(fontOfPixels(m_style.text));
    for (const Number& number : m_numbers)
        if (number.stretch != own)
            add(around(number.centre, {m_style.text, m_style.text}));
    for (const Plate& plate : m_plates) {
        add(around(plate.centre, plateRoom(plate.look, m_style.plate)));
        add(plate.labelRoom);
    }
    const auto addJoint = [&](const Item& item) {
        if (!item.room.intersects(room))
            return;
        if (item.radius > 0.0) {
            const double size = 2.0 * discReach(m_style, item.look, item.radius);
            add(around(item.place, {size, size}));
            return;
        }
        // Squares along the band: it is covered where it runs, not in all of the box around it.
        const double size = 2.0 * bandReach(m_style, item.look);
        const double length = lengthOf(item.line);
        const int count = std::clamp(static_cast<int>(std::ceil(length / size)), 1, kMostPieces);
        for (int piece = 0; piece < count; ++piece)
            add(around(placeOn(item.line, length * (piece + 0.5) / count).place, {size, size}));
    };
    for (std::size_t i = 0; i < m_items.size(); ++i)
        if (i != own)
            addJoint(m_items[i]);
    for (const auto& bare : m_bare)
        addJoint(bare.second);
    const QRectF near = grown(room, kLongestName * m_style.text); // others are not worth measuring
    for (const Name& name : m_names)
        if (near.contains(name.centre))
            add(around(name.centre, {metrics.horizontalAdvance(name.text), m_style.text * 1.2}));
    return area;
}

QPointF SheetPicture::placeOf(std::size_t stretch) const
{
    return m_items[stretch].place;
}

QPointF SheetPicture::outwardOf(std::size_t stretch) const
{
    return m_items[stretch].outward;
}

} // namespace sealwalk::render
