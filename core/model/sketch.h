// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing of a test object: sheets, joints on sheets, numbered test points on joints.
#pragma once

#include "core/geometry/shape.h"
#include "core/model/enum_names.h"
#include "core/model/ids.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::model {

enum class JointKind
{
    OringSeal,
    MetalGasketFlange,
    ClampedFlange,
    WeldSeam,
    BrazedJoint,
    ThreadedFitting,
    Feedthrough,
    Valve,
    Bellows,
    Hose,
    Viewport,
};

template <>
struct EnumNames<JointKind>
{
    static constexpr std::string_view what = "joint kind";
    static constexpr std::array<std::pair<JointKind, std::string_view>, 11> table{{
        {JointKind::OringSeal, "O-ring seal"},
        {JointKind::MetalGasketFlange, "metal-gasket flange"},
        {JointKind::ClampedFlange, "clamped flange"},
        {JointKind::WeldSeam, "weld seam"},
        {JointKind::BrazedJoint, "brazed joint"},
        {JointKind::ThreadedFitting, "threaded fitting"},
        {JointKind::Feedthrough, "feedthrough"},
        {JointKind::Valve, "valve"},
        {JointKind::Bellows, "bellows"},
        {JointKind::Hose, "hose"},
        {JointKind::Viewport, "viewport"},
    }};
};

/// A picture under a sheet. The picture itself is kept by its SHA-256.
struct Underlay
{
    std::string picture;            ///< lower-case hexadecimal SHA-256
    geometry::Point corner;         ///< lower left corner on the sheet, mm
    double millimetresPerPixel = 1; ///< > 0
    double rotation = 0.0;          ///< radians, counter-clockwise, about the corner
    double opacity = 0.35;          ///< 0 … 1
    bool operator==(const Underlay&) const = default;
};

/// One drawn view of the object.
struct Sheet
{
    SheetId id;
    std::string name;       ///< "Door"
    std::string seenFrom;   ///< "the front", "outside"; clock positions are meaningless without it
    double width = 1200.0;  ///< mm
    double height = 1200.0; ///< mm
    double upDirection = 1.5707963267948966; ///< where up is, radians from the x axis, counter-clockwise
    bool seenFromAbove = false;              ///< a plan: nothing on this sheet is above anything else
    std::optional<Underlay> underlay;
    std::vector<geometry::FreePath> outlines; ///< pale line work for orientation; never a joint
    bool operator==(const Sheet&) const = default;
};

/// Anything that can leak.
struct Joint
{
    JointId id;
    SheetId sheet;
    JointKind kind = JointKind::OringSeal;
    std::string name; ///< "Door seal"
    geometry::Shape shape;
    bool clockwise = true;           ///< the sense in which points are numbered, as seen on the sheet
    double start = 0.0;              ///< where numbering starts, fraction of the outline's length, 0 … 1
    bool isSetup = false;            ///< belongs to the test set-up (detector hose, tee): sprayed first
    bool locked = false;             ///< not moved by accident
    std::string group;               ///< joints drawn in one go share a word; empty: none
    std::string material;            ///< seal material or size, free text
    std::optional<Length> thickness; ///< of the elastomer, for the permeation time
    std::vector<std::string>
        requiredConditions; ///< names of conditions each point asks for, such as "flexed"
    bool operator==(const Joint&) const = default;
};

/// A numbered place on a joint where the probe is held.
struct TestPoint
{
    PointId id;
    int number = 0; ///< > 0, unique in the object, never reused
    JointId joint;
    double along = 0.0;   ///< fraction of the outline's length, 0 … 1
    std::string place;    ///< typed by a person; empty: worked out (clock position or millimetres)
    bool retired = false; ///< no longer sprayed; keeps its number
    bool operator==(const TestPoint&) const = default;
};

struct Sketch
{
    int revision = 1;
    int lastNumber = 0; ///< highest point number ever given in the object
    std::vector<Sheet> sheets;
    std::vector<Joint> joints;
    std::vector<TestPoint> points; ///< in order of number
    bool operator==(const Sketch&) const = default;

    [[nodiscard]] const Sheet* sheet(SheetId id) const;
    [[nodiscard]] const Joint* joint(JointId id) const;
    [[nodiscard]] const TestPoint* point(PointId id) const;
    [[nodiscard]] const TestPoint* pointNumbered(int number) const;
    /// The joint a point lies on; nullptr when the point or its joint is unknown.
    [[nodiscard]] const Joint* jointOf(PointId id) const;
    /// Whether a point belongs to the test set-up, not to the object.
    [[nodiscard]] bool isOfSetup(PointId id) const;
    /// Points on a joint that are not retired, in order along its outline.
    [[nodiscard]] std::vector<const TestPoint*> pointsOn(JointId joint) const;
    [[nodiscard]] std::vector<const Joint*> jointsOn(SheetId sheet) const;
    /// Not retired, in order of number.
    [[nodiscard]] std::vector<const TestPoint*> activePoints() const;
};

/// What one point stands for: the part of the joint nearer to it than to its neighbours.
struct Stretch
{
    PointId point;
    int number = 0;
    double from = 0.0;   ///< mm along the outline; may be below 0 on a closed joint
    double centre = 0.0; ///< mm along the outline, from <= centre <= to
    double to = 0.0;     ///< mm along the outline; may pass the length on a closed joint
    bool operator==(const Stretch&) const = default;
};

/// The stretches of a joint's active points; together they cover the joint. A spot's stretch has no length.
std::vector<Stretch> stretches(const Sketch& sketch, JointId joint);

/// The place of a point on its sheet; none when the point or its joint is unknown.
std::optional<geometry::Point> placeOf(const Sketch& sketch, PointId point);
/// Height of a place in the sheet's up direction, mm; 0 on a plan.
double heightOn(const Sheet& sheet, geometry::Point place);

/// Where a stranger finds the point: what a person typed, else "8 o'clock, seen from the front" on a closed
/// joint or "640 mm from the start" on an open one.
std::string placeText(const Sketch& sketch, const TestPoint& point);
/// The same for whoever has the joint's outline at hand and asks for many points.
std::string placeText(const Sheet* sheet, const Joint& joint, const geometry::Path& outline,
                      const TestPoint& point);

/// Empty when the sketch keeps its promises (unique ids and numbers, every point on a joint, every joint on a
/// sheet, drawable shapes, lastNumber not below any number); otherwise the first sentence that says what is
/// wrong.
std::string complaint(const Sketch& sketch);

} // namespace sealwalk::model
