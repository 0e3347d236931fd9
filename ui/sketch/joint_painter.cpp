// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/joint_painter.h"

#include "ui/render/icon.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <unordered_map>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kBody = 7.0;
constexpr double kCasing = 1.5;
constexpr double kSpotLeast = 7.0;   ///< px, so that a spot can be hit at any zoom
constexpr double kNumberRoom = 17.0; ///< px between numbers along a joint

QPointF onScreen(geometry::Point p, double scale)
{
    return {p.x * scale, -p.y * scale};
}

void stroke(QPainter& painter, const DrawnJoint& joint, QPen pen)
{
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    if (joint.spot)
        painter.drawEllipse(joint.line.first(), joint.radius, joint.radius);
    else if (joint.closed)
        painter.drawPolygon(joint.line);
    else
        painter.drawPolyline(joint.line);
}

QPen pen(const QColor& colour, double width, Qt::PenCapStyle cap = Qt::FlatCap)
{
    return {colour, width, Qt::SolidLine, cap};
}

/// Dash lengths are given in device units; QPen counts in pen widths. Round a closed joint they are stretched
/// a little, so that the last one meets the first.
QPen dashed(const DrawnJoint& joint, const QColor& colour, double width, const QList<double>& dashes,
            Qt::PenCapStyle cap = Qt::FlatCap)
{
    QPen result(colour, width, Qt::CustomDashLine, cap);
    const double period = std::accumulate(dashes.begin(), dashes.end(), 0.0);
    double stretch = 1.0;
    if (joint.closed && joint.length > period)
        stretch = joint.length / (std::round(joint.length / period) * period);
    QList<qreal> pattern;
    for (const double dash : dashes)
        pattern.append(dash * stretch / width);
    result.setDashPattern(pattern);
    return result;
}

/// What tells one kind from another inside the hollow band.
void paintKind(QPainter& painter, const DrawnJoint& joint, const QColor& ink, double u)
{
    using Kind = model::JointKind;
    switch (joint.kind) {
    case Kind::OringSeal:
        break;
    case Kind::MetalGasketFlange: // a knife edge
        stroke(painter, joint, pen(ink, 1.0 * u));
        break;
    case Kind::ClampedFlange: // claws
        stroke(painter, joint, dashed(joint, ink, (kBody + 5.0) * u, {2.5 * u, 21.5 * u}));
        break;
    case Kind::WeldSeam: // beads
        stroke(painter, joint, dashed(joint, ink, (kBody + 1.0) * u, {1.0 * u, 5.0 * u}));
        break;
    case Kind::BrazedJoint: // a fillet, dotted
        stroke(painter, joint, dashed(joint, ink, 3.0 * u, {0.01 * u, 6.0 * u}, Qt::RoundCap));
        break;
    case Kind::ThreadedFitting: // turns of a thread
        stroke(painter, joint, dashed(joint, ink, 3.0 * u, {1.2 * u, 2.4 * u}));
        break;
    case Kind::Feedthrough: // pins
        stroke(painter, joint, dashed(joint, ink, 4.5 * u, {0.01 * u, 12.0 * u}, Qt::RoundCap));
        break;
    case Kind::Valve:
        stroke(painter, joint, dashed(joint, ink, 1.4 * u, {8.0 * u, 3.0 * u, 1.5 * u, 3.0 * u}));
        break;
    case Kind::Bellows: // pleats
        stroke(painter, joint, dashed(joint, ink, (kBody + 5.0) * u, {1.0 * u, 3.0 * u}));
        break;
    case Kind::Hose: // ribs, farther apart
        stroke(painter, joint, dashed(joint, ink, (kBody + 3.0) * u, {1.0 * u, 9.0 * u}));
        break;
    case Kind::Viewport: // glass
        stroke(painter, joint, dashed(joint, ink, 2.0 * u, {10.0 * u, 4.0 * u}));
        break;
    }
}

void paintPoint(QPainter& painter, const render::Theme& theme, const DrawnPoint& point, const JointLook& look)
{
    const double u = look.unit;
    if (point.retired) {
        painter.setPen(pen(theme.colour(Role::InkFaint), 1.2 * u));
        const double r = 3.5 * u;
        painter.drawLine(point.place + QPointF(-r, -r), point.place + QPointF(r, r));
        painter.drawLine(point.place + QPointF(-r, r), point.place + QPointF(r, -r));
    } else if (look.chosen) {
        painter.setPen(pen(theme.colour(Role::Accent), 2.0 * u));
        painter.setBrush(theme.colour(Role::Field));
        painter.drawEllipse(point.place, 4.0 * u, 4.0 * u);
    } else {
        painter.setPen(pen(theme.colour(Role::InkSoft), 1.2 * u));
        painter.setBrush(theme.colour(Role::Sheet));
        painter.drawEllipse(point.place, 2.4 * u, 2.4 * u);
    }
}

} // namespace

QString nameShown(const model::Joint& joint)
{
    const QString name = QString::fromStdString(joint.name);
    const QString said = QCoreApplication::translate("SketchPainter", "set-up");
    return !joint.isSetup || name.contains(said, Qt::CaseInsensitive)
               ? name
               : QCoreApplication::translate("SketchPainter", "%1 (set-up)").arg(name);
}

DrawnJoint laidOut(const model::Sketch& sketch, const model::Joint& joint,
                   const std::vector<const model::TestPoint*>& points, double scale)
{
    DrawnJoint drawn;
    drawn.id = joint.id;
    drawn.kind = joint.kind;
    drawn.name = nameShown(joint);
    drawn.locked = joint.locked;
    const geometry::Path path = geometry::outline(joint.shape);
    drawn.closed = path.isClosed();
    if (const auto* spot = std::get_if<geometry::Spot>(&joint.shape)) {
        drawn.spot = true;
        drawn.radius = std::max(spot->radius * scale, kSpotLeast);
    }
    for (const geometry::Point& vertex : path.vertices())
        drawn.line.append(onScreen(vertex, scale));
    drawn.length = drawn.spot ? 2.0 * std::numbers::pi * drawn.radius : path.length() * scale;
    const QPointF middle = onScreen(path.bounds().centre(), scale);
    if (!drawn.closed && !drawn.spot) {
        const geometry::Station half = path.at(path.length() / 2.0);
        drawn.middle = onScreen(half.place, scale);
        drawn.aside = QPointF(half.left().x, -half.left().y);
        if (QPointF::dotProduct(drawn.aside, middle - drawn.middle) >= 0.0)
            drawn.aside = -drawn.aside;
    }
    drawn.bounds = drawn.line.boundingRect();

    const auto active =
        std::count_if(points.begin(), points.end(), [](const auto* p) { return !p->retired; });
    const double room = active > 0 ? path.length() * scale / static_cast<double>(active) : 0.0;
    const int every = drawn.spot || room >= kNumberRoom ? 1
                      : room > 0.0                      ? static_cast<int>(std::ceil(kNumberRoom / room))
                                                        : 1;
    for (const model::TestPoint* point : points) {
        const geometry::Station station = path.at(point->along * path.length());
        DrawnPoint mark;
        mark.id = point->id;
        mark.number = point->number;
        mark.retired = point->retired;
        mark.place = onScreen(station.place, scale);
        if (!drawn.spot) {
            const geometry::Vector left = station.left();
            QPointF inward(left.x, -left.y);
            if (QPointF::dotProduct(inward, middle - mark.place) < 0.0)
                inward = -inward;
            mark.inward = inward;
        }
        mark.showsNumber = point->number % every == 0;
        drawn.points.push_back(mark);
    }
    if (!drawn.spot && room >= 2.0 * kBody)
        for (const model::Stretch& stretch : model::stretches(sketch, joint.id)) {
            if (!drawn.closed && stretch.to >= path.length())
                continue;
            const geometry::Station station = path.at(stretch.to);
            const QPointF place = onScreen(station.place, scale);
            const QPointF across(station.left().x, -station.left().y);
            drawn.cuts.push_back(place + across * (kBody / 2.0 + 2.0));
            drawn.cuts.push_back(place - across * (kBody / 2.0 + 2.0));
        }
    constexpr double kMargin = 30.0;
    drawn.bounds.adjust(-kMargin, -kMargin, kMargin, kMargin);
    return drawn;
}

std::vector<DrawnJoint> laidOut(const model::Sketch& sketch, model::SheetId sheet, double scale)
{
    std::unordered_map<model::JointId, std::vector<const model::TestPoint*>> pointsOf;
    for (const model::TestPoint& point : sketch.points)
        pointsOf[point.joint].push_back(&point);
    std::vector<DrawnJoint> all;
    for (const model::Joint& joint : sketch.joints)
        if (joint.sheet == sheet)
            all.push_back(laidOut(sketch, joint, pointsOf[joint.id], scale));
    return all;
}

void paintBand(QPainter& painter, const render::Theme& theme, const DrawnJoint& joint, const JointLook& look)
{
    const double u = look.unit;
    const double full = (kBody + 2.0 * kCasing) * u;
    if (look.chosen) {
        QColor halo = theme.colour(Role::Accent);
        halo.setAlphaF(0.18F);
        stroke(painter, joint, pen(halo, 15.0 * u));
    }
    const QColor ink = theme.colour(Role::InkSoft);
    stroke(painter, joint, dashed(joint, ink, full, {5.0 * u, 4.0 * u}));
    QColor inside = theme.colour(Role::Sheet);
    if (look.chosen)
        inside = theme.colour(Role::AccentWash);
    stroke(painter, joint, pen(inside, kBody * u));
    paintKind(painter, joint, ink, u);
    painter.setPen(pen(theme.colour(Role::Sheet), 1.5 * u));
    for (std::size_t i = 0; i + 1 < joint.cuts.size(); i += 2)
        painter.drawLine(joint.cuts[i], joint.cuts[i + 1]);
    if (joint.spot) {
        const double side = std::min(1.15 * joint.radius, 18.0 * u);
        if (joint.radius >= 9.0 * u)
            render::paintIcon(
                painter, iconOf(joint.kind),
                QRectF(joint.line.first() - QPointF(side / 2.0, side / 2.0), QSizeF(side, side)), ink);
    }
}

bool NameRoom::take(const QRectF& box)
{
    if (std::any_of(m_taken.begin(), m_taken.end(),
                    [&](const QRectF& other) { return other.intersects(box); }))
        return false;
    m_taken.append(box);
    return true;
}

void paintMarks(QPainter& painter, const render::Theme& theme, const DrawnJoint& joint, const JointLook& look,
                NameRoom* names)
{
    const double u = look.unit;
    QFont text = render::fontOfPixels(11.0 * u);
    for (const DrawnPoint& point : joint.points)
        if (!joint.spot && (look.showsRetired || !point.retired))
            paintPoint(painter, theme, point, look);
    for (const DrawnPoint& point : joint.points) {
        if (!point.showsNumber || (point.retired && !look.showsRetired))
            continue;
        text.setStrikeOut(point.retired);
        painter.setFont(text);
        painter.setPen(theme.colour(point.retired ? Role::InkFaint
                                    : look.chosen ? Role::Ink
                                                  : Role::InkSoft));
        const QString number = QString::number(point.number);
        if (joint.spot) {
            const QPointF at = joint.line.first() + QPointF(joint.radius + (kBody / 2.0 + 3.0) * u, 0.0);
            painter.drawText(QRectF(at + QPointF(0.0, -8.0 * u), QSizeF(40.0 * u, 16.0 * u)),
                             Qt::AlignLeft | Qt::AlignVCenter, number);
            continue;
        }
        const double off = (kBody / 2.0 + 10.0 + (number.size() > 2 ? 2.0 : 0.0)) * u;
        // A new point often stands where one was retired: its number has the other side.
        const QPointF centre = point.place + point.inward * (point.retired ? -off : off);
        painter.drawText(QRectF(centre - QPointF(20.0 * u, 8.0 * u), QSizeF(40.0 * u, 16.0 * u)),
                         Qt::AlignCenter, number);
    }
    if (joint.name.isEmpty())
        return;
    text.setStrikeOut(false);
    painter.setFont(text);
    painter.setPen(theme.colour(Role::InkSoft));
    const QRectF box =
        joint.line.boundingRect().adjusted(-joint.radius, -joint.radius, joint.radius, joint.radius);
    const QString label =
        joint.locked ? joint.name + QCoreApplication::translate("SketchPainter", " (locked)") : joint.name;
    const double wide = QFontMetricsF(text).horizontalAdvance(label);
    // Inside a large joint, above a small one, beside an open one where its numbers are not.
    const bool large = joint.closed && box.height() > 170.0 * u && box.width() > 120.0 * u;
    QPointF at(box.center().x(), box.top() - (look.chosen ? 26.0 : 14.0) * u);
    if (large)
        at = QPointF(box.center().x() + 0.1 * box.width(), box.bottom() - 52.0 * u);
    else if (!joint.closed && !joint.spot)
        at = joint.middle + joint.aside * (16.0 * u + std::abs(joint.aside.x()) * wide / 2.0);
    if (names != nullptr && !names->take(QRectF(at - QPointF(wide / 2.0, 7.0 * u), QSizeF(wide, 14.0 * u))))
        return;
    painter.drawText(QRectF(at - QPointF(150.0 * u, 8.0 * u), QSizeF(300.0 * u, 16.0 * u)), Qt::AlignCenter,
                     label);
}

QString iconOf(model::JointKind kind)
{
    using Kind = model::JointKind;
    switch (kind) {
    case Kind::OringSeal:
        return QStringLiteral("joint-oring");
    case Kind::MetalGasketFlange:
        return QStringLiteral("joint-metal-gasket");
    case Kind::ClampedFlange:
        return QStringLiteral("joint-clamped");
    case Kind::WeldSeam:
        return QStringLiteral("joint-weld");
    case Kind::BrazedJoint:
        return QStringLiteral("joint-brazed");
    case Kind::ThreadedFitting:
        return QStringLiteral("joint-threaded");
    case Kind::Feedthrough:
        return QStringLiteral("joint-feedthrough");
    case Kind::Valve:
        return QStringLiteral("joint-valve");
    case Kind::Bellows:
        return QStringLiteral("joint-bellows");
    case Kind::Hose:
        return QStringLiteral("joint-hose");
    case Kind::Viewport:
        return QStringLiteral("joint-viewport");
    }
    return {};
}

QString nameOf(model::JointKind kind)
{
    static constexpr const char* kNames[] = {
        QT_TRANSLATE_NOOP("JointKind", "O-ring seal"),
        QT_TRANSLATE_NOOP("JointKind", "metal-gasket flange"),
        QT_TRANSLATE_NOOP("JointKind", "clamped flange"),
        QT_TRANSLATE_NOOP("JointKind", "weld seam"),
        QT_TRANSLATE_NOOP("JointKind", "brazed joint"),
        QT_TRANSLATE_NOOP("JointKind", "threaded fitting"),
        QT_TRANSLATE_NOOP("JointKind", "feedthrough"),
        QT_TRANSLATE_NOOP("JointKind", "valve"),
        QT_TRANSLATE_NOOP("JointKind", "bellows"),
        QT_TRANSLATE_NOOP("JointKind", "hose"),
        QT_TRANSLATE_NOOP("JointKind", "viewport"),
    };
    return QCoreApplication::translate("JointKind", kNames[static_cast<std::size_t>(kind)]);
}

} // namespace sealwalk::ui
