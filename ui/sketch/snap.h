// SPDX-License-Identifier: GPL-3.0-or-later
// Where the hand most likely means: other joints, straight and diagonal directions, equal lengths, whole
// millimetres.
#pragma once

#include "core/model/sketch.h"

#include <optional>
#include <vector>

namespace sealwalk::ui {

/// A pale line that shows why a place was taken.
struct Guide
{
    geometry::Point from;
    geometry::Point to;
};

struct Snapped
{
    geometry::Point place;
    std::vector<Guide> guides;
};

struct SnapWish
{
    double reach = 5.0;                    ///< mm within which something attracts
    double grid = 1.0;                     ///< mm, of whole sizes
    std::optional<geometry::Point> anchor; ///< directions and lengths are counted from here
    bool onlyStraight = false;             ///< Shift: only directions by 45 degrees
    bool off = false;                      ///< Alt: take the place as it is
    std::vector<double> lengths;           ///< mm from the anchor that attract
    std::vector<model::JointId> except;    ///< joints that do not attract, being moved
};

/// What attracts on a sheet; made once per gesture.
class Snapper
{
public:
    Snapper() = default;
    Snapper(const model::Sketch& sketch, model::SheetId sheet, const std::vector<model::JointId>& except);

    [[nodiscard]] Snapped snap(geometry::Point place, const SnapWish& wish) const;

private:
    std::vector<geometry::Point> m_marks; ///< centres, corners, nodes
};

} // namespace sealwalk::ui
