// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/sheet_layout.h"

#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/render/hatch.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace sealwalk::render {

namespace {

using report::MapStretch;
using report::PointState;
using report::Teeth;

/// No plate and a thin number: nothing to decide here.
bool isQuiet(const MapStretch& stretch)
{
    return !stretch.temporary && !stretch.conceded && stretch.teeth == Teeth::None &&
           (stretch.state == PointState::LeakWithin || stretch.state == PointState::Clear ||
            stretch.state == PointState::NotSprayed);
}

/// Lower chooses first.
int rankOf(const MapStretch& stretch)
{
    if (stretch.teeth == Teeth::Full)
        return 0;
    if (stretch.teeth == Teeth::Few || stretch.state == PointState::LeakCannotSay)
        return 1;
    switch (stretch.state) {
    case PointState::Answered:
        return 2;
    case PointState::Masked:
        return 2;
    case PointState::Echo:
    case PointState::EchoTakenOut:
        return 3;
    case PointState::Permeation:
        return 4;
    case PointState::RepairedAwaiting:
        return 4;
    default:
        return 5;
    }
}

QPointF turned(QPointF v, double degrees)
{
    const double a = degrees * std::numbers::pi / 180.0;
    return {v.x() * std::cos(a) - v.y() * std::sin(a), v.x() * std::sin(a) + v.y() * std::cos(a)};
}

QRectF around(QPointF centre, QSizeF size)
{
    return {centre - QPointF(size.width(), size.height()) / 2.0, size};
}

double lengthOf(QPointF v)
{
    return std::hypot(v.x(), v.y());
}

/// Between a room and a place; 0 within.
double gapTo(const QRectF& room, QPointF place)
{
    return lengthOf({std::max({room.left() - place.x(), 0.0, place.x() - room.right()}),
                     std::max({room.top() - place.y(), 0.0, place.y() - room.bottom()})});
}

double gapTo(const QRectF& room, const QRectF& area)
{
    return lengthOf({std::max({room.left() - area.right(), 0.0, area.left() - room.right()}),
                     std::max({room.top() - area.bottom(), 0.0, area.top() - room.bottom()})});
}

constexpr int kRings = 7;      // how far a plate may move outwards, in steps
constexpr int kRingsQuiet = 4; // for those that may also be left out
constexpr int kRingsRange = 2; // for a range below its value
constexpr std::array<double, 7> kAngles{0.0, 30.0, -30.0, 60.0, -60.0, 90.0, -90.0};

} // namespace

SheetLayout::SheetLayout(SheetPicture& picture)
    : m_picture(picture)
    , m_content(picture.content())
    , m_style(picture.style())
{
    const geometry::Box box = m_content.bounds();
    m_middle = picture.map(box.centre());
}

void SheetLayout::lay()
{
    takeBands();
    std::vector<bool> served(m_content.stretches.size(), false);
    if (m_picture.m_parts.plates)
        layBrackets(served);
    if (m_picture.m_parts.numbers)
        layNumbers(true);
    if (m_picture.m_parts.plates)
        layPlates(served);
    if (m_picture.m_parts.numbers)
        layNumbers(false);
    if (m_picture.m_parts.names)
        layNames();
}

void SheetLayout::takeBands()
{
    const auto take = [&](const SheetPicture::Item& item) {
        if (item.radius > 0.0) {
            const double r = discReach(m_style, item.look, item.radius);
            m_room.take(around(item.place, {2.0 * r, 2.0 * r}));
            return;
        }
        const double length = render::lengthOf(item.line);
        // Three small squares across instead of one large: a large one would stick out where the band runs
        // slantwise and keep numbers away from it.
        const double reach = bandReach(m_style, item.look);
        const double size = reach * 0.7;
        const int count = std::clamp(static_cast<int>(length / size), 1, 200);
        for (int i = 0; i <= count; ++i) {
            const LinePlace at = placeOn(item.line, length * i / count);
            const QPointF aside(at.forward.y(), -at.forward.x());
            for (const double part : {-0.65, 0.0, 0.65})
                m_room.take(around(at.place + aside * part * reach, {size, size}));
        }
    };
    for (const SheetPicture::Item& item : m_picture.m_items)
        take(item);
    for (const auto& bare : m_picture.m_bare)
        take(bare.second);
}

void SheetLayout::layNumbers(bool strong)
{
    const QFontMetricsF metrics(fontOfPixels(m_style.text, strong ? Weight::Bold : Weight::Normal));
    const double height = m_style.text * 1.05;
    for (std::size_t i = 0; i < m_content.stretches.size(); ++i) {
        const MapStretch& stretch = m_content.stretches[i];
        if (strong == isQuiet(stretch))
            continue;
        const SheetPicture::Item& item = m_picture.m_items[i];
        const QSizeF size(metrics.horizontalAdvance(QString::number(stretch.number)) + m_style.unit, height);
        std::vector<QPointF> candidates;
        const bool roomInside = item.radius > size.width() * 0.75;
        const bool solid = item.look.position || item.look.state == PointState::Masked;
        if (item.radius > 0.0) {
            const double off = discReach(m_style, item.look, item.radius) + 2.0 * m_style.unit;
            if (roomInside && !solid) { // an empty disc carries its own number
                m_picture.m_numbers.push_back({i, item.place, strong});
                continue;
            }
            for (const QPointF side : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
                candidates.push_back(item.place + QPointF(side.x() * (off + size.width() / 2.0),
                                                          side.y() * (off + size.height() / 2.0)));
        } else {
            const double reach = bandReach(m_style, item.look);
            for (const double extra : {1.5, 4.0, 8.0})
                for (const double side : {-1.0, 1.0}) {
                    const QPointF n = item.outward * side;
                    const double half =
                        std::abs(n.x()) * size.width() / 2.0 + std::abs(n.y()) * size.height() / 2.0;
                    candidates.push_back(item.place + n * (reach + half + extra * m_style.unit));
                }
        }
        bool placed = false;
        for (const QPointF& centre : candidates)
            if (isFree(around(centre, size))) {
                m_room.take(around(centre, size));
                m_picture.m_numbers.push_back({i, centre, strong});
                placed = true;
                break;
            }
        if (!placed && strong && !item.crowded && rankOf(stretch) <= 1 && !candidates.empty())
            m_picture.m_numbers.push_back({i, candidates.front(), strong, true});
    }
}

RateLabel SheetLayout::labelOf(const MapStretch& stretch) const
{
    if (!m_picture.m_parts.values)
        return {};
    if (!stretch.label.empty())
        return {inWords(stretch.label), {}};
    if (!stretch.rate)
        return {};
    RateLabel label = rateLabel(m_content.scale.shown(*stretch.rate));
    if (stretch.isAtLeast)
        label.plain.prepend(QStringLiteral("≥ "));
    return label;
}

QString SheetLayout::rangeOf(const MapStretch& stretch) const
{
    if (!m_picture.m_parts.values || !stretch.label.empty() || !stretch.rate || !stretch.range)
        return {};
    const report::MapScale& scale = m_content.scale;
    return inFigures(report::rangeBeside(scale.shown(*stretch.rate), scale.number(stretch.range->low),
                                         scale.number(stretch.range->high)));
}

QSizeF SheetLayout::labelSize(const SheetPicture::Plate& plate) const
{
    if (plate.label.text().isEmpty())
        return {};
    double width = rateWidth(plate.label, m_style.text);
    double height = m_style.text * 1.6;
    if (!plate.range.isEmpty()) {
        const QFontMetricsF metrics(fontOfPixels(m_style.text * kRangeText));
        width = std::max(width, metrics.horizontalAdvance(plate.range));
        height += m_style.text * kRangeText;
    }
    return {width + 8.0 * m_style.unit, height};
}

/// Beside the plate; nothing where there is no label.
QRectF SheetLayout::labelRoom(const SheetPicture::Plate& plate, bool right) const
{
    const QSizeF size = labelSize(plate);
    const double off = plateRoom(plate.look, m_style.plate).width() / 2.0 + 2.0 * m_style.unit;
    const double left = right ? plate.centre.x() + off : plate.centre.x() - off - size.width();
    return {QPointF(left, plate.centre.y() - size.height() / 2.0), size};
}

/// Outwards first, then aside; takes the room when there is some.
bool SheetLayout::findRoom(SheetPicture::Plate& plate, QPointF outward, double first, int rings)
{
    const QSizeF room = plateRoom(plate.look, m_style.plate);
    for (int ring = 0; ring < rings; ++ring)
        for (const double angle : kAngles) {
            const QPointF n = turned(outward, angle);
            plate.centre = plate.anchor + n * (first + ring * m_style.plate * 0.6);
            if (!isFree(around(plate.centre, room)))
                continue;
            const bool rightFirst = n.x() > -0.3;
            for (const bool right : {rightFirst, !rightFirst}) {
                plate.labelRoom = labelRoom(plate, right);
                if (!plate.labelRoom.isEmpty() && !isFree(plate.labelRoom))
                    continue;
                plate.leader = ring > 0 || angle != 0.0;
                m_room.take(around(plate.centre, room));
                if (!plate.labelRoom.isEmpty())
                    m_room.take(plate.labelRoom);
                return true;
            }
        }
    return false;
}

bool SheetLayout::layPlate(SheetPicture::Plate plate, QPointF outward, double reach, bool must)
{
    const double first = reach + m_style.plate * 0.72 + 2.0 * m_style.unit;
    // The range stands below its value where that costs no long way; far out it goes before the value does.
    bool laid = !plate.range.isEmpty() && findRoom(plate, outward, first, kRingsRange);
    if (!laid) {
        plate.range.clear();
        laid = findRoom(plate, outward, first, must ? kRings : kRingsQuiet);
    }
    if (!laid && !must)
        return false;
    if (!laid) {
        plate.leader = false;
        plate.centre = plate.anchor + outward * first;
        plate.labelRoom = labelRoom(plate, outward.x() > -0.3);
    }
    m_picture.m_plates.push_back(std::move(plate));
    return true;
}

void SheetLayout::layBrackets(std::vector<bool>& served)
{
    for (const report::MapBracket& bracket : m_content.brackets) {
        const std::size_t first = bracket.stretches.front();
        const std::size_t last = bracket.stretches.back();
        const report::MapJoint& joint = m_content.joints[m_content.stretches[first].joint];
        double reach = 0.0;
        for (const std::size_t member : bracket.stretches)
            reach = std::max(reach, bandReach(m_style, m_picture.m_items[member].look));
        const double off = reach + 5.0 * m_style.unit;
        const auto middleOf = [&](std::size_t i) {
            return (m_content.stretches[i].from + m_content.stretches[i].to) / 2.0;
        };
        const double from = middleOf(first);
        double to = middleOf(last);
        if (to < from)
            to += joint.outline.length();
        const QPointF side = m_picture.m_items[first].outward;
        const geometry::Vector left = joint.outline.at(from).left();
        const double sign = QPointF::dotProduct(side, QPointF(left.x, -left.y)) >= 0.0 ? 1.0 : -1.0;
        SheetPicture::Plate plate;
        plate.stretch = first;
        plate.look = plateOf(m_content.stretches[first]);
        plate.label = labelOf(m_content.stretches[first]);
        plate.range = rangeOf(m_content.stretches[first]);
        const auto offset = [&](double along, double distance) {
            const geometry::Station station = joint.outline.at(along);
            const geometry::Vector n = sign * station.left();
            return m_picture.map(station.place) + QPointF(n.x, -n.y) * distance;
        };
        constexpr int kPieces = 24;
        plate.bracket.append(offset(from, off - 5.0 * m_style.unit));
        for (int i = 0; i <= kPieces; ++i) {
            const QPointF at = offset(from + (to - from) * i / kPieces, off);
            plate.bracket.append(at);
            m_room.take(around(at, {4.0 * m_style.unit, 4.0 * m_style.unit}));
        }
        plate.bracket.append(offset(to, off - 5.0 * m_style.unit));
        const double half = (from + to) / 2.0;
        const geometry::Vector n = sign * joint.outline.at(half).left();
        plate.anchor = offset(half, off);
        layPlate(plate, QPointF(n.x, -n.y), 0.0, true);
        for (const std::size_t member : bracket.stretches)
            served[member] = true;
    }
}

void SheetLayout::layPlates(const std::vector<bool>& served)
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < m_content.stretches.size(); ++i)
        if (!served[i] && !isQuiet(m_content.stretches[i]))
            order.push_back(i);
    const auto loud = [&](std::size_t i) {
        const MapStretch& s = m_content.stretches[i];
        return std::pair(rankOf(s), s.rate ? -s.rate->si() : 0.0);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return loud(a) < loud(b); });
    for (const std::size_t i : order) {
        const MapStretch& stretch = m_content.stretches[i];
        const SheetPicture::Item& item = m_picture.m_items[i];
        SheetPicture::Plate plate;
        plate.stretch = i;
        plate.look = plateOf(stretch);
        plate.label = labelOf(stretch);
        plate.range = rangeOf(stretch);
        plate.anchor = item.place;
        QPointF outward = item.outward;
        double reach = bandReach(m_style, item.look);
        if (item.radius > 0.0) {
            reach = discReach(m_style, item.look, item.radius);
            const QPointF away = item.place - m_middle;
            outward = lengthOf(away) > 1.0 ? away / lengthOf(away) : QPointF(0.0, -1.0);
        }
        layPlate(std::move(plate), outward, reach, rankOf(stretch) <= 1 && !item.crowded);
    }
}

SheetLayout::Drawn SheetLayout::drawn(const report::MapJoint& joint) const
{
    Drawn drawn;
    geometry::Box box = joint.outline.bounds();
    if (joint.isSpot()) {
        const geometry::Vector r{joint.spotRadius, joint.spotRadius};
        box.add(box.centre() + r);
        box.add(box.centre() - r);
    }
    drawn.area = QRectF(m_picture.map({box.low.x, box.high.y}), m_picture.map({box.high.x, box.low.y}));
    if (joint.isSpot())
        return drawn;
    constexpr double kStep = 8.0; // a name is larger than that
    const double length = joint.outline.length();
    constexpr int kMostSteps = 400;
    const int steps = std::clamp(
        static_cast<int>(length * m_picture.unitsPerMillimetre() / (kStep * m_style.unit)), 1, kMostSteps);
    for (int i = 0; i <= steps; ++i)
        drawn.places.push_back(m_picture.map(joint.outline.at(length * i / steps).place));
    return drawn;
}

double SheetLayout::Drawn::gap(const QRectF& room) const
{
    if (places.empty())
        return gapTo(room, area);
    double least = gapTo(room, places.front());
    for (const QPointF& place : places)
        least = std::min(least, gapTo(room, place));
    return least;
}

/// A name that stands nearer to another joint would be taken for that one's.
bool SheetLayout::wouldNameAnother(const QRectF& room, const std::vector<Drawn>& all, std::size_t own)
{
    const double gap = all[own].gap(room);
    for (std::size_t i = 0; i < all.size(); ++i)
        if (i != own && gapTo(room, all[i].area) < gap && all[i].gap(room) < gap)
            return true;
    return false;
}

void SheetLayout::layNames()
{
    std::vector<Drawn> all;
    for (const report::MapJoint& joint : m_content.joints)
        all.push_back(drawn(joint));
    const QFontMetricsF metrics(fontOfPixels(m_style.text));
    for (std::size_t j = 0; j < m_content.joints.size(); ++j) {
        const report::MapJoint& joint = m_content.joints[j];
        if (joint.name.empty())
            continue;
        const QRectF area = all[j].area;
        const QString text = QString::fromStdString(joint.name);
        const QSizeF size(metrics.horizontalAdvance(text) + 2.0 * m_style.unit, m_style.text * 1.2);
        std::vector<QPointF> candidates;
        if (!joint.outline.isClosed() && !joint.isSpot()) {
            for (const double part : {0.5, 0.3, 0.7, 0.15, 0.85})
                for (const double side : {1.0, -1.0}) {
                    const geometry::Station at = joint.outline.at(part * joint.outline.length());
                    const QPointF n = QPointF(at.left().x, -at.left().y) * side;
                    const double half =
                        std::abs(n.x()) * size.width() / 2.0 + std::abs(n.y()) * size.height() / 2.0;
                    for (const double off : {14.0, 26.0, 38.0})
                        candidates.push_back(m_picture.map(at.place) + n * (half + off * m_style.unit));
                }
        }
        const double x = area.center().x();
        const double gap = 14.0 * m_style.unit;
        const double far = 30.0 * m_style.unit;
        const std::array common{
            QPointF(x, area.bottom() - far - gap),
            QPointF(x, area.top() - gap),
            QPointF(x, area.bottom() + gap),
            QPointF(x, area.top() - far),
            QPointF(x, area.bottom() + far),
            QPointF(x, area.center().y()),
            QPointF(area.right() + size.width() / 2.0 + gap, area.center().y()),
            QPointF(area.left() - size.width() / 2.0 - gap, area.center().y()),
        };
        const bool roomy =
            joint.outline.isClosed() && area.height() > 4.0 * far && area.width() > 2.0 * size.width();
        candidates.insert(candidates.end(), common.begin() + (roomy ? 0 : 1), common.end());
        // On a small picture the near places are taken: farther out, and slantwise, before a name is left
        // out.
        for (const double off : {gap, far, 1.8 * far})
            for (const QPointF side : {QPointF(-1, 0), QPointF(1, 0), QPointF(0, 1), QPointF(0, -1),
                                       QPointF(-1, 1), QPointF(1, 1), QPointF(-1, -1), QPointF(1, -1)})
                candidates.emplace_back(x + side.x() * (area.width() / 2.0 + size.width() / 2.0 + off),
                                        area.center().y() +
                                            side.y() * (area.height() / 2.0 + size.height() / 2.0 + off));
        // Left out rather than at another joint: a point tells its joint when it is asked.
        for (const QPointF& centre : candidates) {
            const QRectF room = around(centre, size);
            if (!isFree(room) || wouldNameAnother(room, all, j))
                continue;
            m_room.take(room);
            m_picture.m_names.push_back({text, centre});
            break;
        }
    }
}

} // namespace sealwalk::render
