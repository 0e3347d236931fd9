// SPDX-License-Identifier: GPL-3.0-or-later
// Laying test points along a joint, evenly, by number or by pitch.
#pragma once

#include "core/editing/edit.h"

#include <string>

namespace sealwalk::editing {

struct Laying
{
    enum class By
    {
        Number,
        Pitch
    };
    By by = By::Number;
    int number = 8;       ///< 1 … 2000, when laid by number
    double pitch = 150.0; ///< mm, > 0, when laid by pitch: no two points lie farther apart than this
    /// Number of the joint's first point, above every number ever given; none: points that are there keep
    /// theirs, new ones get the next free ones.
    std::optional<int> first;
    /// What the first point is marked with on the object, "D01": the places of the points laid, counted up.
    /// Empty: nothing is marked there.
    std::string mark = {};
};

/// The mark of the point `steps` behind the one marked `first`: its last digits counted up, as many of them
/// as there are, "D09" to "D10". A mark without a digit at its end gets one from 1 on.
std::string markBehind(const std::string& first, int steps);

/// The most points one joint can be given at once.
inline constexpr int kMostPoints = 2000;

/// How many points the laying makes on a line of `length` mm. A spot has one. Refuses a number or pitch that
/// is out of range.
Result<int> countOf(const Laying& laying, double length);
/// The same on a joint: a hose by pitch has one more, since both its ends have a point.
Result<int> countOn(const model::Joint& joint, const Laying& laying);

/// mm between neighbours when `count` points are laid; 0 on a spot.
double spacing(const model::Joint& joint, int count);

/// Where `count` points of a joint come to lie, as fractions of its outline, in the order of the walk: from
/// its start on a closed joint; on an open one each in the middle of an equal part, but on a hose, which
/// leaks at its ferrules and cracks beside them, from end to end.
std::vector<double> places(const model::Joint& joint, int count);

/// Lays points on a joint anew. Points that are there already keep their identity, and their number unless a
/// first one is asked for, in the order of the walk; what is missing is added with new numbers, what is too
/// many is taken out. Refused when one of them has readings.
Result<Edit> layPoints(const model::Sketch& sketch, model::JointId joint, const Laying& laying,
                       const PointSet& withReadings);

/// Gives the next free number, and remembers that it was given.
int giveNumber(model::Sketch& sketch);

} // namespace sealwalk::editing
