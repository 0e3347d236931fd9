// SPDX-License-Identifier: GPL-3.0-or-later
// One sheet's leak map as data: where the joints run, what each stretch says, on which scale. Draws nothing.
#pragma once

#include "core/geometry/shape.h"
#include "core/model/sketch.h"
#include "core/quantities/kinds.h"
#include "core/report/shown_gas.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::report {

/// What a stretch of a joint says; each has its own filling and plate.
enum class PointState
{
    LeakOver,
    LeakCannotSay,
    LeakWithin,
    Shared, ///< one leak between neighbours
    Echo,   ///< as read
    EchoTakenOut,
    Masked,
    Clear,
    BelowDetectable,
    Permeation,
    Void,
    NotAccessible,
    NotSprayed,
    RepairedAwaiting,
    Answered,    ///< while spraying: answered, not judged yet
    OtherSource, ///< judged to be no leak of this place: the set-up, trapped gas
};

/// Teeth along a band: how the value stands against the limit.
enum class Teeth
{
    None, ///< within, or nothing to compare
    Few,  ///< cannot say
    Full, ///< over
};

/// The colour scale: whole decades of mbar·l/s, the same for every job of an object.
struct MapScale
{
    int lowestDecade = -10;
    int decades = 7;
    std::optional<LeakRate> limit;
    std::optional<LeakRate> smallestDetectable;
    double shownPerSi = 10.0;                             ///< number shown = SI value times this
    std::string unit = "mbar·l/s";                        ///< as written beside figures
    ShownGas gas;                                         ///< written after the unit at heads
    std::string spokenUnit = "millibar litre per second"; ///< for screen readers

    bool operator==(const MapScale&) const = default;

    /// Place on the scale: 0 at its lower end, 1 at its upper end; may lie outside.
    [[nodiscard]] double position(LeakRate rate) const;
    /// Decades above the smallest detectable leak (or the scale's lower end); never below 0.
    [[nodiscard]] double decadesAboveDetectable(LeakRate rate) const;
    [[nodiscard]] LeakRate lowest() const;
    [[nodiscard]] LeakRate highest() const;
    /// The number of a rate as it is, whatever its gas.
    [[nodiscard]] double number(LeakRate rate) const { return rate.si() * shownPerSi; }
    /// The number of a helium rate in the gas shown, and the way back.
    [[nodiscard]] double shown(LeakRate helium) const { return number(gas.ofHelium(helium)); }
    [[nodiscard]] LeakRate rateOfShown(double shown) const
    {
        return gas.toHelium(LeakRate::fromSi(shown / shownPerSi));
    }
    /// "mbar·l/s He"
    [[nodiscard]] std::string head() const { return unit + ' ' + std::string(gas.symbol()); }
};

struct MapJoint
{
    model::JointId id;
    std::string name;
    geometry::Path outline;
    double spotRadius = 0.0; ///< mm; above 0: a spot, drawn as a disc
    [[nodiscard]] bool isSpot() const { return spotRadius > 0.0; }
};

/// What one point stands for on its joint.
struct MapStretch
{
    model::PointId point;
    int number = 0;
    std::size_t joint = 0; ///< index into MapContent::joints
    double from = 0.0;     ///< mm along the outline
    double to = 0.0;       ///< mm along the outline
    geometry::Point place;
    geometry::Vector outward; ///< unit vector away from the inside of the joint; zero on a spot
    PointState state = PointState::NotSprayed;
    Teeth teeth = Teeth::None;
    std::optional<LeakRate> rate; ///< gives colour and width; none: hollow
    bool isAtLeast = false;       ///< the leak is beyond the detector's range: no smaller than `rate`
    /// 95 %, of the gas shown; none where the rate is as read and so holds helium of other leaks.
    std::optional<ShownGas::Range> range;
    std::string label;      ///< beside the plate instead of a rate: "by 17", "echo of 17"
    bool temporary = false; ///< a temporary repair holds this joint
    bool temporaryOverdue = false;
    bool conceded = false; ///< accepted above the limit by concession
    std::string tip;       ///< a line for the tool tip: place, due date of a temporary repair
    std::string spoken; ///< for screen readers: "point 17, leak, 4.6e-4 millibar litre per second, 95 % range
                        ///< 3.5e-4 to 6.0e-4, over the limit"
};

/// One leak between neighbours: a bracket over their stretches with one plate and one value.
struct MapBracket
{
    std::vector<std::size_t> stretches; ///< indices into MapContent::stretches, in order along the joint
};

struct MapContent
{
    model::SheetId sheet;
    std::string title; ///< "Door, seen from the front"
    double width = 1200.0;
    double height = 1200.0;
    double upDirection = 1.5707963267948966; ///< radians from the x axis, counter-clockwise
    bool seenFromAbove = false;
    std::vector<geometry::FreePath> outlines; ///< pale line work
    std::optional<model::Underlay> underlay;
    std::vector<MapJoint> joints;
    std::vector<MapStretch> stretches;
    std::vector<MapBracket> brackets;
    MapScale scale;

    /// Around everything drawn, mm; the sheet itself when nothing is.
    [[nodiscard]] geometry::Box bounds() const;
    [[nodiscard]] const MapStretch* stretchOf(model::PointId point) const;
};

} // namespace sealwalk::report
