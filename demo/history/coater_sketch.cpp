// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/coater_sketch.h"

#include "core/base/contract.h"

namespace sealwalk::demo {

using namespace model;
using geometry::Point;
using geometry::Vector;

namespace {

/// Draws joints on the sheets and numbers their points in the order of drawing.
class Drawing
{
public:
    explicit Drawing(Chance& chance)
        : m_chance(chance)
    {}

    Sheet& sheet(const char* name, const char* seenFrom, double width, double height)
    {
        Sheet sheet;
        sheet.id = m_chance.id<SheetId>();
        sheet.name = name;
        sheet.seenFrom = seenFrom;
        sheet.width = width;
        sheet.height = height;
        return m_sketch.sheets.emplace_back(sheet);
    }

    /// A joint on the latest sheet with `count` points; closed ones are numbered from `start` on.
    Joint& joint(const char* name, JointKind kind, const geometry::Shape& shape, int count,
                 double start = 0.0)
    {
        Joint joint;
        joint.id = m_chance.id<JointId>();
        joint.sheet = m_sketch.sheets.back().id;
        joint.kind = kind;
        joint.name = name;
        joint.shape = shape;
        joint.start = start;
        const auto* path = std::get_if<geometry::FreePath>(&shape);
        const bool isOpen = path != nullptr && !path->closed;
        for (int i = 0; i < count; ++i) {
            TestPoint point;
            point.id = m_chance.id<PointId>();
            point.number = ++m_sketch.lastNumber;
            point.joint = joint.id;
            const double along = isOpen ? (i + 0.5) / count : start + static_cast<double>(i) / count;
            point.along = along >= 1.0 ? along - 1.0 : along;
            m_sketch.points.push_back(point);
        }
        return m_sketch.joints.emplace_back(joint);
    }

    void place(int number, const char* text)
    {
        for (TestPoint& point : m_sketch.points)
            if (point.number == number)
                point.place = text;
    }

    Sketch take() { return std::move(m_sketch); }

private:
    Chance& m_chance;
    Sketch m_sketch;
};

geometry::FreePath box(double left, double bottom, double right, double top)
{
    return {{{left, bottom}, {left, top}, {right, top}, {right, bottom}}, true, false};
}

constexpr double kThreeOClock = 0.25;

void drawDoor(Drawing& d)
{
    const Point c{700.0, 700.0};
    Sheet& door = d.sheet("Door", "the front", 1400.0, 1400.0);
    door.outlines = {box(130.0, 60.0, 1240.0, 1340.0), box(30.0, 1080.0, 160.0, 1240.0),
                     box(30.0, 330.0, 160.0, 490.0)};
    Joint& seal = d.joint("Door seal", JointKind::OringSeal,
                          geometry::RoundedRectangle{c, 860.0, 1060.0, 110.0, 0.0}, 24);
    seal.material = "FKM, 8 mm";
    seal.thickness = millimetres(8.0);
    Joint& window =
        d.joint("Door viewport", JointKind::Viewport, geometry::Ring{c + Vector{0.0, 215.0}, 105.0}, 4);
    window.material = "FKM, 2.5 mm";
    window.thickness = millimetres(2.5);
    d.joint("Gland, frame", JointKind::ThreadedFitting, geometry::Spot{c + Vector{-455.0, -590.0}, 26.0}, 1);
    d.place(29, "below the lower hinge");
}

void drawRearWall(Drawing& d)
{
    const Point c{700.0, 600.0};
    Sheet& wall = d.sheet("Rear wall", "outside", 1400.0, 1200.0);
    wall.outlines = {box(60.0, 60.0, 1340.0, 1140.0)};
    const auto ring = [&](double x, double y, double radius) {
        return geometry::Ring{c + Vector{x, y}, radius};
    };
    const auto spot = [&](double x, double y, double radius) {
        return geometry::Spot{c + Vector{x, y}, radius};
    };
    d.joint("Port A, to pump", JointKind::ClampedFlange, ring(-235.0, -150.0, 165.0), 8);
    d.joint("Port B", JointKind::ClampedFlange, ring(110.0, 200.0, 110.0), 4);
    d.joint("Port C", JointKind::ClampedFlange, ring(70.0, -70.0, 52.0), 2, kThreeOClock);
    d.joint("Port D", JointKind::ClampedFlange, ring(380.0, -70.0, 52.0), 2, kThreeOClock);
    d.joint("Rotary feedthrough", JointKind::Feedthrough, ring(-260.0, 250.0, 92.0), 2, kThreeOClock);
    d.joint("Rotary shaft", JointKind::Feedthrough, spot(-260.0, 250.0, 26.0), 1);
    d.joint("Water line in", JointKind::BrazedJoint, spot(40.0, -300.0, 24.0), 1);
    d.joint("Water line out", JointKind::BrazedJoint, spot(270.0, -300.0, 24.0), 1);
    d.joint("Gauge fitting", JointKind::ThreadedFitting, spot(440.0, 120.0, 24.0), 1);
    d.joint("Vent valve", JointKind::Valve, ring(490.0, -300.0, 42.0), 2, kThreeOClock);
    d.place(36, "9 o'clock, behind the pump frame");
    d.place(48, "shaft");
    d.place(51, "thread");
}

void drawFloor(Drawing& d)
{
    const Point c{750.0, 500.0};
    Sheet& floor = d.sheet("Floor and foreline", "above", 1500.0, 1000.0);
    floor.seenFromAbove = true;
    floor.outlines = {box(90.0, 490.0, 1410.0, 960.0)};
    d.joint("Floor weld", JointKind::WeldSeam,
            geometry::FreePath{{c + Vector{-640.0, 10.0}, c + Vector{640.0, 10.0}}, false, false}, 5);
    d.joint("Foreline clamp", JointKind::ClampedFlange, geometry::Spot{c + Vector{-520.0, -190.0}, 55.0}, 1);
    Joint& hose = d.joint(
        "Foreline hose", JointKind::Hose,
        geometry::FreePath{{c + Vector{-420.0, -190.0}, c + Vector{-170.0, -205.0}, c + Vector{0.0, -290.0},
                            c + Vector{180.0, -370.0}, c + Vector{420.0, -380.0}},
                           false,
                           true},
        3);
    hose.requiredConditions = {"at rest", "flexed"};
    d.place(60, "ferrule at the chamber");
}

} // namespace

TestObject coater(Chance& chance)
{
    TestObject object;
    object.id = chance.id<ObjectId>();
    object.name = "Box coater 2 (demo)";
    object.tag = "BC2";
    object.place = "coating workshop (invented)";
    object.note = "Everything about this object is invented: the workshop, the people, the readings.";
    object.volume = litres(480.0);
    object.volumeUncertainty = 0.03;
    object.pointLimit = millibarLitresPerSecond(1e-6);
    object.totalLimit = millibarLitresPerSecond(5e-5);
    object.airSpeed = litresPerSecond(210.0);
    object.pumpBlankOff = millibars(2e-7);
    object.wantedPressure = millibars(2e-6);
    object.scale = {-10, 7};
    object.invented = true;
    const auto created = Timestamp::parse("2025-03-11T08:00:00.000+01:00");
    SEALWALK_EXPECT(created.has_value());
    object.created = *created;
    return object;
}

Sketch coaterSketch(Chance& chance)
{
    Drawing drawing(chance);
    drawDoor(drawing);
    drawRearWall(drawing);
    drawFloor(drawing);
    return drawing.take();
}

} // namespace sealwalk::demo
