// SPDX-License-Identifier: GPL-3.0-or-later
// Common things drawn in one go: a flange with its ring, a door with its seal, a row of ports.
#pragma once

#include "core/editing/joints.h"

namespace sealwalk::editing {

struct Flange
{
    model::Joint joint;        ///< its shape is the ring that seals
    double outerRadius = 75.0; ///< mm, above the seal's
    int bolts = 8;             ///< 0 … 64, drawn as pale holes; none for a clamped flange
    std::optional<Laying> laying = Laying{};
};

/// The seal as a ring, with rim and bolt holes as pale line work of the sheet.
/// The pale lines of a flange: its rim, then its bolt holes.
std::vector<geometry::FreePath> flangeLines(const geometry::Ring& ring, double outerRadius, int bolts);
Result<Edit> drawFlange(const model::Sketch& sketch, const Flange& flange);

struct Door
{
    model::Joint joint;   ///< its shape is the rounded rectangle that seals
    double margin = 40.0; ///< mm from the seal to the edge of the leaf, > 0
    bool hingesLeft = true;
    std::optional<Laying> laying = Laying{};
};

/// The seal as a rounded rectangle, with leaf, two hinges and a handle as pale line work of the sheet.
/// The pale lines of a door: leaf, hinges, handle.
std::vector<geometry::FreePath> doorLines(const geometry::RoundedRectangle& seal, double margin,
                                          bool hingesLeft);
Result<Edit> drawDoor(const model::Sketch& sketch, const Door& door);

struct PortRow
{
    model::SheetId sheet;
    std::string name = "Port"; ///< "Port 1", "Port 2" …
    model::JointKind kind = model::JointKind::ClampedFlange;
    geometry::Point first; ///< centre of the first port
    geometry::Vector step{200.0, 0.0};
    double radius = 25.0; ///< mm, > 0
    int count = 4;        ///< 1 … 200
    std::optional<Laying> laying = Laying{Laying::By::Number, 4, 150.0, std::nullopt};
};

/// A row of rings in one group, numbered port by port.
Result<Edit> drawPortRow(const model::Sketch& sketch, const PortRow& row);

/// A pale circle of line work.
geometry::FreePath paleCircle(geometry::Point centre, double radius);

} // namespace sealwalk::editing
